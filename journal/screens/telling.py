"""A flag in a few rows of words."""

from journal.record.day import spoken
from journal.rules.flag import Flag
from journal.screens.picture import Ink, Row, Span
from journal.screens.rows import left, wrapped
from journal.screens.today.steps import short
from journal.standing import Standing


def clears(flag: Flag, standing: Standing) -> str:
    """What ends it, with the day where one is known and not said already."""
    if flag.clears_on is None or short(flag.clears_on) in flag.clears:
        return flag.clears
    return f"{flag.clears} ({spoken(flag.clears_on, standing.as_of)})"


def beneath(flag: Flag, standing: Standing, width: int) -> list[Row]:
    """Why and what to do, under a flag that is not opened, where there is room for it."""
    rows: list[Row] = []
    for name, words in (("why", flag.why), ("do", f"{flag.do.rstrip('.')}; clears with {clears(flag, standing)}")):
        for at, line in enumerate(wrapped(words, width - 12)):
            rows.append((Span(f"      {left('' if at else name, 4)} ", Ink.DIM), Span(line, Ink.DIM)))
    return rows
