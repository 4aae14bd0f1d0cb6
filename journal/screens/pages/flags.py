"""Page 3: everything that is wrong, gravest first, each with its why, what to do, and on what authority."""

import re
from collections.abc import Iterable
from dataclasses import dataclass

from rich.cells import cell_len

from journal.record.day import spoken
from journal.rules.flag import Flag
from journal.screens.level import LEVEL_INKS, gravest_first
from journal.screens.page import Size
from journal.screens.paper import LastPaper, Paper, press
from journal.screens.picture import EMPTY_ROW, Ink, Picture, Row, Span, Target
from journal.screens.rows import left
from journal.screens.telling import beneath, details
from journal.screens.title import title_row
from journal.screens.today.steps import short, where
from journal.screens.view import View
from journal.standing import Standing

_LINE = re.compile(r"`([^`]+)`")


@dataclass(frozen=True, slots=True)
class Flags:
    """What is wrong."""

    number: int = 3
    name: str = "flags"
    keys: tuple[tuple[str, str], ...] = (
        ("Up Down", "flag by flag"),
        ("Space", "the flag in full: why, what to do, what clears it, its entries, numbers and basis"),
        ("Enter", "the line that clears it, ready to save; where there is none, the flag in full"),
        ("3", "the next zone, then all again"),
    )

    def draw(self, standing: Standing, view: View, size: Size) -> Picture:
        """The whole page."""
        about = f"Flags · {view.zone or 'all zones'}"
        return PAPER(standing, view, size).picture(title_row(standing, view, size.width, about), size, view)

    def press(self, key: str, standing: Standing, view: View, size: Size) -> View | None:
        """Walk, open, scroll."""
        return press(key, PAPER(standing, view, size), view, size)


PAGE = Flags()


def build(standing: Standing, view: View, size: Size) -> Paper:
    """Flags that stand, then those out of sight."""
    paper = Paper(view, size.width)
    shown = _of_zone(gravest_first(standing.flags), view.zone)
    hidden = _of_zone(gravest_first(standing.hidden), view.zone)
    rule = max([12, *(len(flag.rule) for flag in (*shown, *hidden))])
    if not shown:
        paper.add()
        paper.add((Span(" "), Span("Nothing is flagged", Ink.STRONG), Span(f" on {spoken(view.as_of, view.as_of)}.")))
    words = {flag.id: [*beneath(flag, standing, size.width), EMPTY_ROW] for flag in shown}
    rows = sum(1 + len(more) for more in words.values()) + (len(hidden) + 2 if hidden else 0)
    roomy = not view.open and rows < size.height
    for flag in shown:
        _draw(paper, flag, standing, min(22, rule), words[flag.id] if roomy else [])
    if hidden:
        paper.add()
        paper.heading("OUT OF SIGHT", (Span("  by your own word; each comes back or can be taken back", Ink.DIM),))
        for flag in hidden:
            _draw_hidden(paper, flag, standing, min(22, rule))
    return paper


PAPER = LastPaper(build)


def _of_zone(flags: Iterable[Flag], zone: str) -> list[Flag]:
    return [flag for flag in flags if not zone or not flag.zones or zone in flag.zones]


def _draw(paper: Paper, flag: Flag, standing: Standing, rule: int, beneath: list[Row]) -> None:
    since = f"{short(flag.rose):>6}" if paper.width < 110 else f"since {short(flag.rose):>6}"
    room = paper.width - 1 - 5 - rule - 1 - 14 - len(since) - 1
    row = (
        Span(" "),
        Span(left(flag.level.value, 5), LEVEL_INKS[flag.level]),
        Span(left(flag.rule, rule), Ink.STRONG),
        Span(f" {left(where(flag.zones, standing.lawn), 13)} "),
        Span(left(flag.headline, max(8, room))),
        Span(f" {since}", Ink.DIM),
    )
    whole = cell_len(flag.headline) <= room
    paper.stop(
        row,
        Target(0, line=advised(flag), flag=flag.id),
        details=lambda: [*details(flag, standing, paper.width, whole=whole), EMPTY_ROW],
        beneath=beneath,
    )


def _draw_hidden(paper: Paper, flag: Flag, standing: Standing, rule: int) -> None:
    row = (
        Span(" "),
        Span(left(flag.level.value, 5), Ink.DIM),
        Span(left(flag.rule, rule), Ink.DIM),
        Span(f" {left(where(flag.zones, standing.lawn), 13)} ", Ink.DIM),
        Span(flag.hidden, Ink.DIM),
    )
    paper.stop(
        row, Target(0, flag=flag.id), details=lambda: [*details(flag, standing, paper.width, whole=False), EMPTY_ROW]
    )


def advised(flag: Flag) -> str:
    """The line in the flag's own advice; '' where it names none."""
    found = _LINE.search(flag.do)
    return found[1] if found else ""
