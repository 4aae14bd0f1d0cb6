"""A flag in a few rows of words."""

from journal.line.words import USUAL, in_words
from journal.record.day import spoken
from journal.rules.flag import Flag
from journal.screens.newest import by_id
from journal.screens.picture import Ink, Row, Span
from journal.screens.rows import left, wrapped
from journal.screens.today.ruler import BOUNDARY
from journal.screens.today.steps import short
from journal.standing import Standing


def clears(flag: Flag, standing: Standing) -> str:
    """What ends it, with the day where one is known and not said already."""
    if flag.clears_on is None or short(flag.clears_on) in flag.clears:
        return flag.clears
    return f"{flag.clears} ({spoken(flag.clears_on, standing.as_of)})"


def facts_of(flag: Flag, standing: Standing) -> list[tuple[str, str]]:
    """(name, words) for everything a flag rests on but its entries: why, what to do, numbers, authority."""
    facts = [("why", flag.why), ("do", flag.do), ("clears", clears(flag, standing))]
    facts += [("number", f"{number.name}: {number.words}, {number.origin}") for number in flag.numbers.values()]
    facts += [("basis", basis.words()) for basis in flag.basis]
    return [(name, words) for name, words in facts if words]


def details(flag: Flag, standing: Standing, width: int, *, whole: bool) -> list[Row]:
    """Why, do, clears, when, entries, numbers, basis: a name at the left of each, a rule down the side.

    The headline comes first unless the `whole` of it stands above; last, how to put the flag out of sight.
    """
    facts = facts_of(flag, standing)
    said = [(name, words) for name, words in facts if name in ("why", "do", "clears")]
    said.append(("rose", spoken(flag.rose, standing.as_of)))
    said += [("entry", words) for words in _evidence(flag, standing)]
    said += [(name, words) for name, words in facts if name in ("number", "basis")]
    if not flag.hidden:
        said.append(("hide", hiding_line(flag)))
    rows: list[Row] = []
    before = ""
    for name, words in said if whole else [("", flag.headline), *said]:
        for line in wrapped(words, max(10, width - 18)):
            label = name if name != before else ""
            before = name
            ink = Ink.STRONG if not name else Ink.KEY if name == "hide" else Ink.PLAIN
            rows.append((Span("     "), BOUNDARY, Span(f" {left(label, 8)} ", Ink.DIM), Span(line, ink)))
    return rows


def hiding_line(flag: Flag) -> str:
    """The line that puts the flag out of sight for a week."""
    return " ".join(("snooze", flag.rule, "7d", *flag.zones))


def _evidence(flag: Flag, standing: Standing) -> list[str]:
    found = by_id(standing.history, flag.evidence)
    said = (in_words(found[id], standing.lawn, standing.as_of) for id in flag.evidence if id in found)
    return [words.replace(f" {USUAL}", "") for words in said]


def beneath(flag: Flag, standing: Standing, width: int) -> list[Row]:
    """Why and what to do, under a flag that is not opened, where there is room for it."""
    rows: list[Row] = []
    for name, words in (("why", flag.why), ("do", f"{flag.do.rstrip('.')}; clears with {clears(flag, standing)}")):
        for at, line in enumerate(wrapped(words, width - 12)):
            rows.append((Span(f"      {left('' if at else name, 4)} ", Ink.DIM), Span(line, Ink.DIM)))
    return rows
