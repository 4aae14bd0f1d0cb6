"""One fact of the ground as a row: its value, on whose authority, and the line that changes it."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from functools import partial

from rich.cells import cell_len

from journal.record.day import MONTHS, MonthDay
from journal.record.kinds.setting import Setting
from journal.screens.paper import Paper
from journal.screens.picture import EMPTY_ROW, Ink, Row, Span, Target
from journal.screens.rows import left, wrapped
from journal.screens.today.ruler import BOUNDARY

WIDE = 110
"""Columns from which on the line itself stands in the row."""
_NAME, _KNOWN, _LINE, _VALUE = 17, 21, 42, 44


class Stand(StrEnum):
    """On whose authority a fact holds."""

    YOURS = "yours"
    DEFAULT = "default"
    WORKED = "worked out"
    MISSING = "not said"


GLYPHS = {Stand.YOURS: "●", Stand.DEFAULT: "○", Stand.WORKED: "≈", Stand.MISSING: "·"}
INKS = {Stand.YOURS: Ink.DONE, Stand.DEFAULT: Ink.DIM, Stand.WORKED: Ink.AHEAD, Stand.MISSING: Ink.LATE}
LEGEND: Row = tuple(
    span
    for stand in Stand
    for span in (Span(f"  {GLYPHS[stand]} ", INKS[stand]), Span(stand.value, Ink.DIM))
)  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Fact:
    """`known` says more of the authority than `stand`; `use` what the book does with it; `line` is for Enter.

    `costs` is what is lost while it is not said, '' where nothing is. `more` are (name, words) for the opened row.
    What is `offered` has its line in the row however little room there is; `shown` is `known` in short, for the row;
    `start` is the line up to the value.
    """

    name: str
    value: str
    stand: Stand
    known: str
    line: str
    use: str = ""
    costs: str = ""
    more: tuple[tuple[str, str], ...] = ()
    offered: bool = False
    shown: str = ""
    start: str = ""

    @property
    def enter(self) -> str:
        """The line for Enter: whole where it says what holds, else without a value, so that none is saved unseen."""
        return self.line if self.stand is Stand.YOURS or self.offered else self.start or self.line


def known_by(setting: Setting | None, as_of: date) -> str:
    """`yours, 1 Apr 2026`: the day of writing, or the one from which on a dated change holds."""
    if setting is None:
        return Stand.YOURS.value
    since = f" from {dated(setting.since, as_of)}" if setting.since else f", {dated(setting.date, as_of)}"
    return f"{Stand.YOURS.value}{since}"


def briefly(known: str, setting: Setting | None, set_up: date | None) -> str:
    """The same for the row: what was said at set-up needs no date."""
    plain = setting is None or (setting.since is None and setting.date == set_up)
    return Stand.YOURS.value if plain else known


def said_on(setting: Setting | None, as_of: date) -> tuple[tuple[str, str], ...]:
    """When a dated change was written down, and the remark that went with it."""
    if setting is None:
        return ()
    written = (("written", f"on {dated(setting.date, as_of)}"),) if setting.since else ()
    return (*written, *((("remark", setting.remark),) if setting.remark else ()))


def dated(day: date, as_of: date) -> str:
    """`3 May`, with the year where it is another."""
    words = f"{day.day} {MONTHS[day.month - 1].title()}"
    return words if day.year == as_of.year else f"{words} {day.year}"


def month_day(day: MonthDay) -> str:
    """`6 May`."""
    return f"{day.day} {MONTHS[day.month - 1].title()}"


def draw_fact(paper: Paper, fact: Fact, *, main: bool = False, indent: int = 0) -> None:
    """The row, so many columns in, which opens to everything that is known of it."""
    wide = paper.width >= WIDE
    known = _KNOWN + (1 if wide else 0)
    room = paper.width - 4 - indent - _NAME - known
    room = max(20, min(_VALUE - indent, room - _LINE) if wide else room)
    missing, offers = fact.stand is Stand.MISSING, fact.offered and not wide
    words = fact.value or (f"no {fact.name}: {fact.costs}" if fact.costs else "")
    value = Ink.DIM if fact.stand is Stand.DEFAULT else Ink.LATE if missing else Ink.PLAIN
    row = (
        Span(" "),
        Span(f"{' ' * indent}{GLYPHS[fact.stand]}", Ink.DIM if missing and not fact.costs else INKS[fact.stand]),
        Span(f" {left(fact.name, _NAME)}", Ink.STRONG if fact.stand is Stand.YOURS else Ink.PLAIN),
        Span(left(words, room), value),
        Span(f" {left(fact.line if offers else fact.shown or fact.known, known)}", Ink.KEY if offers else Ink.DIM),
        Span(f"  {fact.line}" if wide else "", Ink.DIM),
    )
    paper.stop(
        row,
        Target(0, line=fact.enter, name=fact.start or fact.name),
        main=main,
        details=partial(opened, fact, paper.width, cut=cell_len(words) > room),
    )


def opened(fact: Fact, width: int, *, cut: bool) -> list[Row]:
    """Value (where the row has it cut), use, authority and line, a name at the left of each."""
    said = [("is", fact.value if cut else ""), ("without", fact.costs if not fact.value else ""), ("for", fact.use)]
    said += [("known", fact.known), *fact.more, ("Enter" if fact.enter == fact.line else "like", fact.line)]
    return [*named(said, width), EMPTY_ROW]


def named(said: Sequence[tuple[str, str]], width: int) -> list[Row]:
    """(name, words), wrapped: the names at the left, a rule down the side; empty ones are left out."""
    rows: list[Row] = []
    before = ""
    for name, words in said:
        ink = Ink.KEY if name in ("Enter", "like", "line") else Ink.PLAIN
        for line in wrapped(words, max(10, width - 18)):
            label = name if name != before else ""
            before = name
            rows.append((Span("     "), BOUNDARY, Span(f" {left(label, 8)} ", Ink.DIM), Span(line, ink)))
    return rows
