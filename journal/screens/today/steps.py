"""DO and NOT YET: the plan on one day ruler."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date

from rich.cells import cell_len

from journal.plan.step import State, Step
from journal.record.day import MONTHS, spoken
from journal.record.lawn import Lawn
from journal.screens.paper import Paper
from journal.screens.picture import Ink, Row, Span, Target
from journal.screens.rows import filled, left, middle, text, wrapped
from journal.screens.today.ruler import BOUNDARY, Ruler, closed, reason
from journal.screens.today.waiting import Wait, parted, waits
from journal.standing import Standing

WORDS = {State.LATE: "late", State.OPEN: "open", State.WAITING: "soon", State.MISSED: "miss", State.BARRED: "wait"}
INKS = {
    State.LATE: Ink.LATE,
    State.OPEN: Ink.DONE,
    State.WAITING: Ink.DIM,
    State.MISSED: Ink.LOSS,
    State.BARRED: Ink.BARRED,
}


@dataclass(frozen=True, slots=True)
class Columns:
    """Widths of: what and where, why, how much (0: none)."""

    what: int
    why: int
    much: int

    @classmethod
    def fitting(cls, width: int, ruler: Ruler, whats: Iterable[str], muches: Iterable[str]) -> "Columns":
        """What the ruler leaves; the first column and the last are no wider than they have to be."""
        room = width - 7 - ruler.width
        longest = max((cell_len(what) for what in whats), default=8)
        what = max(8, min(longest, room * 2 // 5))
        if width < 110:
            return cls(what, max(0, room - what - 1), 0)
        much = max(8, min(max((cell_len(much) for much in muches), default=0), room * 3 // 10))
        return cls(what, room - what - much - 2, much)


def do(steps: tuple[Step, ...], as_of: date) -> tuple[Step, ...]:
    """What is open, late or missed, and what opens within days."""
    return tuple(step for step in steps if step.state is not State.DONE and not closed(step, as_of))


def not_yet(steps: tuple[Step, ...], as_of: date) -> tuple[Step, ...]:
    """What must wait."""
    return tuple(step for step in steps if closed(step, as_of))


def of_zone(steps: tuple[Step, ...], zone: str) -> tuple[Step, ...]:
    """Steps that concern the zone; '' is all."""
    return tuple(step for step in steps if not zone or not step.zones or zone in step.zones)


def short(day: date) -> str:
    """`3 May`."""
    return f"{day.day} {MONTHS[day.month - 1].title()}"


def where(zones: tuple[str, ...], lawn: Lawn) -> str:
    """`front, back`; `all` for every one of several; '' when no zone is named or there is only one."""
    if len(lawn.zones) < 2:
        return ""
    return "all" if set(zones) >= set(lawn.zone_names) else ", ".join(zones)


def draw_steps(paper: Paper, standing: Standing, ruler: Ruler, room: int, *, named: bool, airy: bool) -> None:
    """Both groups, with the boundary running through them; `airy` parts them by a row. `room` is for what waits."""
    steps = of_zone(standing.steps, paper.view.zone)
    first, waiting = do(steps, standing.as_of), waits(not_yet(steps, standing.as_of), standing.lawn)
    near, far = parted(waiting, standing.as_of, room)
    columns = Columns.fitting(
        paper.width,
        ruler,
        (
            *(_what(step, step.zones, standing.lawn) for step in first),
            *(_what(wait.first, wait.zones, standing.lawn) for wait in near),
        ),
        (*(_much(step, shut=False) for step in first), *(_much(wait.first, shut=True) for wait in near)),
    )
    paper.heading(left("DO", 5), _headings(columns) + ruler.heading(named=named))
    for step in first:
        _draw(paper, Wait((step,)), standing, ruler, columns)
    if not first:
        paper.add(_nothing("nothing is due", paper.width, ruler))
    if airy:
        paper.add((Span(" " * (paper.width - ruler.width)), *ruler.blank()))
    paper.heading(left("NOT YET", 7), (Span(" " * (paper.width - 8 - ruler.width)), *ruler.blank()))
    for wait in near:
        _draw(paper, wait, standing, ruler, columns)
    if far:
        _draw_far(paper, far, standing, ruler)
    if not waiting:
        paper.add(_nothing("nothing has to wait", paper.width, ruler))


def _headings(columns: Columns) -> Row:
    if not columns.much:
        return (Span(" " * (columns.what + columns.why + 2)),)
    words = f"{' ' * columns.what} {left('why', columns.why)} {left('how much', columns.much)} "
    return text(words, Ink.DIM)


def _nothing(words: str, width: int, ruler: Ruler) -> Row:
    return (Span(" "), Span(left(words, width - ruler.width - 1), Ink.DIM), *ruler.blank())


def _draw(paper: Paper, wait: Wait, standing: Standing, ruler: Ruler, columns: Columns) -> None:
    step = wait.first
    shut = closed(step, standing.as_of)
    word = "wait" if shut else WORDS.get(step.state, "")
    ink = Ink.BARRED if shut else INKS.get(step.state, Ink.PLAIN)
    what = _what(step, wait.zones, standing.lawn)
    why = _why(step, columns, shut=shut)
    named = left(middle(what, columns.what), columns.what)
    row = [Span(" "), Span(left(word, 5), ink), Span(named, Ink.PLAIN if shut else Ink.STRONG)]
    row.append(Span(f" {left(why, columns.why)}"))
    if columns.much:
        row.append(Span(f" {left(_much(step, shut=shut), columns.much)}"))
    row.append(Span(" "))
    row += ruler.row(step, standing.history, standing.lawn.units)
    paper.stop(row, Target(0, line=step.line), details=lambda: _opened(wait, standing, paper.width, ruler))


def _draw_far(paper: Paper, far: Sequence[Wait], standing: Standing, ruler: Ruler) -> None:
    """What opens in a month or later, with its day: a row or two for all, each in full under Space."""
    said = [f"{_what(wait.first, wait.zones, standing.lawn)} {_opens(wait.first, standing.as_of)}" for wait in far]
    rows = joined(said, paper.width - 7)
    more = [(Span("      "), Span(words, Ink.DIM)) for words in rows[1:]]
    paper.stop(
        (Span(" "), Span(left("then", 5), Ink.BARRED), Span(rows[0], Ink.DIM)),
        Target(0),
        details=lambda: [row for wait in far for row in _opened(wait, standing, paper.width, ruler, named=True)],
        beneath=more,
    )


def joined(words: Sequence[str], width: int) -> list[str]:
    """Put one behind the other, none broken over two rows unless it is longer than one."""
    rows: list[str] = []
    for one in words:
        if rows and cell_len(rows[-1]) + 3 + cell_len(one) <= width:
            rows[-1] += f" · {one}"
        else:
            rows.append(left(one, width).rstrip())
    return rows


def _opens(step: Step, as_of: date) -> str:
    if step.earliest is None:
        return ""
    return short(step.earliest) + (f" {step.earliest.year}" if step.earliest.year != as_of.year else "")


def _opened(wait: Wait, standing: Standing, width: int, ruler: Ruler, *, named: bool = False) -> list[Row]:
    """The details of each step, beside the boundary where there is room for both; `named` with what it is."""
    room = width - ruler.width
    wide = width if room < 56 else room
    named = named or len(wait.steps) > 1
    rows: list[Row] = []
    for step in wait.steps:
        if named:
            rows.append((Span("      "), BOUNDARY, Span(f" {_what(step, step.zones, standing.lawn)}", Ink.STRONG)))
        rows += _details(step, wide, standing.as_of)
    return rows if wide == width else [(*filled(row, room), *ruler.blank()) for row in rows]


def _what(step: Step, zones: tuple[str, ...], lawn: Lawn) -> str:
    return f"{step.title or step.step} {where(zones, lawn)}".strip()


def _why(step: Step, columns: Columns, *, shut: bool) -> str:
    """Half a sentence; how much goes with it where it has no column of its own and there is room."""
    much = bool(columns.much)
    if shut:
        words = reason(step) or step.why
        if not much and step.earliest is not None:
            return f"until {short(step.earliest)}: {words}" if words else f"until {short(step.earliest)}"
        return words
    both = ", ".join(words for words in (step.why, step.amount) if words)
    return step.why if much or (step.why and cell_len(both) > columns.why) else both


def _much(step: Step, *, shut: bool) -> str:
    if shut:
        return f"opens {short(step.earliest)}" if step.earliest is not None else "no day known yet"
    return step.amount


def _details(step: Step, width: int, as_of: date) -> list[Row]:
    """The whole of it in words, a fact a row."""
    facts = [("why", step.why), ("waits for", step.waits_for), ("amount", step.amount), ("when", _when(step, as_of))]
    rows: list[Row] = []
    for name, words in facts:
        for at, line in enumerate(wrapped(words, max(10, width - 20))):
            rows.append((Span("      "), BOUNDARY, Span(f" {left(name if not at else '', 10)} ", Ink.DIM), Span(line)))
    if step.line:
        rows.append(
            (Span("      "), BOUNDARY, Span(f" {left('line', 10)} ", Ink.DIM), Span(step.line, Ink.KEY),
             Span("   Enter puts it below", Ink.DIM))
        )  # fmt: skip
    return rows


def _when(step: Step, as_of: date) -> str:
    parts = []
    if step.earliest is not None:
        parts.append(f"from {spoken(step.earliest, as_of)}")
    if step.best is not None:
        parts.append(f"best {short(step.best[0])} to {short(step.best[1])}")
    if step.latest is not None:
        parts.append(f"by {spoken(step.latest, as_of)}")
    return ", ".join(parts)
