"""A flag in a few rows of words."""

import re
from datetime import date

from journal.line.words import USUAL, in_words
from journal.record.day import spoken
from journal.rules.flag import Flag
from journal.rules.hiding import Hiding, hiding
from journal.screens.newest import by_id
from journal.screens.picture import Ink, Row, Span
from journal.screens.rows import left, wrapped
from journal.screens.today.ruler import BOUNDARY
from journal.screens.today.steps import short
from journal.season.history import LAWN
from journal.standing import Standing


def clears(flag: Flag, standing: Standing) -> str:
    """What ends it, with the day where one is known and not said already."""
    if flag.clears_on is None or short(flag.clears_on) in flag.clears:
        return flag.clears
    return f"{flag.clears} ({spoken(flag.clears_on, standing.as_of)})"


def clearing(flag: Flag, words: str, as_of: date) -> str:
    """`clears with a mowing`, or `clears on Thu 24 Jun` where it is only the day that ends it."""
    alone = flag.clears_on is not None and flag.clears == spoken(flag.clears_on, as_of)
    return f"clears {'on' if alone else 'with'} {words}"


def facts_of(flag: Flag, standing: Standing) -> list[tuple[str, str]]:
    """(name, words) for everything a flag rests on but its entries: why, what to do, numbers, authority."""
    facts = [("why", flag.why), ("do", flag.do), ("clears", clears(flag, standing))]
    facts += [("number", f"{number.name}: {number.words}, {number.origin}") for number in flag.numbers.values()]
    facts += [("basis", basis.words()) for basis in flag.basis]
    return [(name, words) for name, words in facts if words]


def details(flag: Flag, standing: Standing, width: int, *, whole: bool) -> list[Row]:
    """Why, do, clears, when, entries, numbers, basis: a name at the left of each, a rule down the side.

    The headline comes first unless the `whole` of it stands above.
    """
    facts = facts_of(flag, standing)
    said = [(name, words) for name, words in facts if name in ("why", "do", "clears")]
    said.append(("rose", spoken(flag.rose, standing.as_of)))
    said += [("entry", words) for words in _evidence(flag, standing)]
    said += [(name, words) for name, words in facts if name in ("number", "basis")]
    rows: list[Row] = []
    before = ""
    for name, words in said if whole else [("", flag.headline), *said]:
        for line in wrapped(words, max(10, width - 18)):
            label = name if name != before else ""
            before = name
            rows.append((*_named(label), Span(line, Ink.PLAIN if name else Ink.STRONG)))
    return rows


def _named(label: str) -> Row:
    return Span(" "), Span("    "), BOUNDARY, Span(f" {left(label, 8)} ", Ink.DIM)


def told(label: str, words: str, line: str) -> Row:
    """A line to take, as a row among the details: what it does, then the line."""
    reason = (Span("your reason", Ink.DIM),) if line.endswith(" -- ") else ()
    return *_named(label), Span(words), Span(line, Ink.KEY), *reason


def snooze_line(flag: Flag) -> str:
    """The line that puts the flag out of sight for a week."""
    named, *zones = _meant(flag)
    return " ".join(("snooze", named, "7d", *zones))


def aside_line(flag: Flag) -> str:
    """The line that puts it out of sight for good, up to the reason."""
    return f"{' '.join(('aside', *_meant(flag)))} -- "


_PLAIN = re.compile(r"[\w.,+-]+")


def _meant(flag: Flag) -> tuple[str, ...]:
    """The flag by its id where the rule says several things of a zone; else the rule and the zones."""
    return (flag.id,) if _PLAIN.fullmatch(flag.subject) else (flag.rule, *flag.zones)


def hidden_by(flag: Flag, standing: Standing) -> Hiding | None:
    """The entry that keeps it out of sight; of several zones, that of the first."""
    past = standing.history.on(flag.zones[0] if flag.zones else LAWN, standing.as_of)
    return hiding(flag.rule, flag.subject, flag.level, past)


def _evidence(flag: Flag, standing: Standing) -> list[str]:
    found = by_id(standing.history, flag.evidence)
    said = (in_words(found[id], standing.lawn, standing.as_of) for id in flag.evidence if id in found)
    return [words.replace(f" {USUAL}", "") for words in said]


def beneath(flag: Flag, standing: Standing, width: int) -> list[Row]:
    """Why and what to do, under a flag that is not opened, where there is room for it."""
    rows: list[Row] = []
    ends = clearing(flag, clears(flag, standing), standing.as_of)
    for name, words in (("why", flag.why), ("do", f"{flag.do.rstrip('.')}; {ends}")):
        for at, line in enumerate(wrapped(words, width - 12)):
            rows.append((Span(f"      {left('' if at else name, 4)} ", Ink.DIM), Span(line, Ink.DIM)))
    return rows
