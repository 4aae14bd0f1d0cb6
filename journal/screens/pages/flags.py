"""Page 3: everything that is wrong, gravest first, each with its why, what to do, and on what authority."""

import re
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from functools import cache, partial

from rich.cells import cell_len

from journal.facts.safety import one_row
from journal.line.caution import show_safety
from journal.line.say import say
from journal.record.day import spoken
from journal.rules.cards import cards
from journal.rules.flag import Flag
from journal.screens.level import LEVEL_INKS, gravest_first
from journal.screens.newest import by_id
from journal.screens.page import Size
from journal.screens.paper import LastPaper, Paper, Within, press
from journal.screens.picture import EMPTY_ROW, Ink, Picture, Row, Span, Target
from journal.screens.rows import left
from journal.screens.telling import aside_line, beneath, details, hidden_by, snooze_line, told
from journal.screens.title import title_row
from journal.screens.today.steps import short, where
from journal.screens.view import View
from journal.standing import Standing

_LINE = re.compile(r"`([^`]+)`")
_MARK = "└ "
"""Before a flag that stands on the card of a graver one."""


@dataclass(frozen=True, slots=True)
class Flags:
    """What is wrong."""

    number: int = 3
    name: str = "flags"
    keys: tuple[tuple[str, str], ...] = (
        ("Up Down", "flag by flag; in an opened one to the lines that put it out of sight"),
        ("Space", "the flag in full: why, what to do, what clears it, its entries, numbers and basis"),
        ("Enter", "the line that clears it, ready to save; where there is none, the flag in full"),
        ("Delete", "the line that hides it for a week; on one out of sight: bring it back"),
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
    """Flags that stand, card by card, then those out of sight."""
    paper = Paper(view, size.width)
    shown = _of_zone(gravest_first(standing.flags), view.zone)
    hidden = _of_zone(gravest_first(standing.hidden), view.zone)
    rule = min(22, max([12, *(len(flag.rule) for flag in (*shown, *hidden))]))
    ids = {id for flag in (*shown, *hidden) for id in flag.evidence}
    if show_safety(by_id(standing.history, ids).values(), standing.lawn):
        paper.add((Span(" "), Span(one_row(standing.lawn.units), Ink.DIM)))
    if not shown:
        paper.add()
        paper.add((Span(" "), Span("Nothing is flagged", Ink.STRONG), Span(f" on {spoken(view.as_of, view.as_of)}.")))
    words = {flag.id: [*beneath(flag, standing, size.width), EMPTY_ROW] for flag in shown}
    rows = len(paper.rows) + sum(1 + len(more) for more in words.values()) + (len(hidden) + 2 if hidden else 0)
    roomy = not view.open and rows < size.height
    for card in cards(shown):
        for flag in card.flags:
            under = "" if flag is card.head else _MARK
            _draw(paper, flag, standing, _Row(rule, under), words[flag.id] if roomy else [])
    if hidden:
        paper.add()
        paper.heading("OUT OF SIGHT", (Span("  by your own word; Delete brings one back", Ink.DIM),))
        for flag in hidden:
            _draw_hidden(paper, flag, standing, rule)
    return paper


PAPER = LastPaper(build)


@dataclass(frozen=True, slots=True)
class _Row:
    """Columns of the rule's name, and what stands before it."""

    rule: int
    mark: str


def _of_zone(flags: Iterable[Flag], zone: str) -> list[Flag]:
    return [flag for flag in flags if not zone or not flag.zones or zone in flag.zones]


def _draw(paper: Paper, flag: Flag, standing: Standing, shape: _Row, beneath: list[Row]) -> None:
    since = f"{short(flag.rose):>6}" if paper.width < 110 else f"since {short(flag.rose):>6}"
    room = paper.width - 1 - 5 - shape.rule - 1 - 14 - len(since) - 1
    row = (
        Span(" "),
        Span(left(flag.level.value, 5), LEVEL_INKS[flag.level]),
        Span(left(f"{shape.mark}{flag.rule}", shape.rule), Ink.PLAIN if shape.mark else Ink.STRONG),
        Span(f" {left(where(flag.zones, standing.lawn), 13)} "),
        Span(left(flag.headline, max(8, room))),
        Span(f" {since}", Ink.DIM),
    )
    whole = cell_len(flag.headline) <= room
    hiding = (("for a week", snooze_line(flag)), ("for good", aside_line(flag)))
    lines = [(words, Target(0, line=line, name=f"{flag.id} {words}")) for words, line in hiding]
    paper.stop(
        row,
        Target(0, line=advised(flag), flag=flag.id),
        beneath=beneath,
        within=_opened(partial(details, flag, standing, paper.width, whole=whole), "hide", lines, paper),
    )


def _draw_hidden(paper: Paper, flag: Flag, standing: Standing, rule: int) -> None:
    row = (
        Span(" "),
        Span(left(flag.level.value, 5), LEVEL_INKS[flag.level] if flag.level.value == "harm" else Ink.DIM),
        Span(left(flag.rule, rule), Ink.DIM),
        Span(f" {left(where(flag.zones, standing.lawn), 13)} ", Ink.DIM),
        Span(flag.hidden, Ink.DIM),
    )
    entry = hidden_by(flag, standing)
    line, id = (say(entry, standing.lawn), entry.id) if entry is not None else ("", "")
    lines = [("strike or change it", Target(0, line=line, entry=id, name=f"{flag.id} hidden by"))]
    paper.stop(
        row,
        Target(0, line=line, entry=id, flag=flag.id),
        within=_opened(partial(details, flag, standing, paper.width, whole=False), "hidden", lines, paper),
    )


def _opened(said: Callable[[], Sequence[Row]], name: str, lines: Sequence[tuple[str, Target]], paper: Paper) -> Within:
    """The flag in full, and under it lines to stand on; made when it is opened, and once."""

    @cache
    def rows() -> Paper:
        inner = Paper(paper.view, paper.width)
        for row in said():
            inner.add(row)
        for at, (words, target) in enumerate(lines):
            inner.stop(told("" if at else name, f"{words}: ", target.line), target, lit=0)
        inner.add()
        return inner

    return Within(tuple(target for _, target in lines), rows)


def advised(flag: Flag) -> str:
    """The line in the flag's own advice; '' where it names none."""
    found = _LINE.search(flag.do)
    return found[1] if found else ""
