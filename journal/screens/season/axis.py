"""Two rows above the grid: the months (or Mondays), and a line with their ticks and `▼` at the date judged."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from journal.record.day import MONTHS
from journal.screens.picture import Ink, Row, Span
from journal.screens.season.cells import COUNT, Cells
from journal.screens.season.figures import day_words
from journal.screens.season.layout import LABEL, Layout
from journal.screens.season.scene import Scene


@dataclass(frozen=True, slots=True)
class Tick:
    """A cell in which something begins; names from the longest to the shortest. `faint`: it began before."""

    cell: int
    names: tuple[str, ...]
    faint: bool = False


def ticks(cells: Cells) -> list[Tick]:
    """Mondays where a cell is a day, else first days of months."""
    return _mondays(cells) if cells.by_day else _months(cells)


def _months(cells: Cells) -> list[Tick]:
    found: list[Tick] = []
    for cell in range(COUNT):
        last = date.fromordinal(cells.starts[cell + 1] - 1)
        begins = last.replace(day=1).toordinal() >= cells.starts[cell]
        if begins or cell == 0:
            found.append(Tick(cell, _names(last), not begins))
    return found


def _names(day: date) -> tuple[str, ...]:
    month = MONTHS[day.month - 1].title()
    if day.month != 1:
        return (month,)
    return f"{month} {day.year}", f"{month} {day:%y}", f"'{day:%y}", month


def _mondays(cells: Cells) -> list[Tick]:
    return [
        Tick(
            cell,
            (
                f"Mon {day.day} {MONTHS[day.month - 1].title()}",
                f"{day.day} {MONTHS[day.month - 1].title()}",
                str(day.day),
            ),
        )
        for cell in range(COUNT)
        for day in (date.fromordinal(cells.starts[cell]),)
        if day.weekday() == 0
    ]


def names_row(found: Sequence[Tick], plan: Layout) -> str:
    """The names over the grid's own columns: each whole, with a blank before the next, or not at all."""
    text = ""
    for index, tick in enumerate(found):
        column = (tick.cell - plan.hidden) * plan.cell
        end = (found[index + 1].cell - plan.hidden) * plan.cell - 1 if index + 1 < len(found) else plan.grid
        name = next((name for name in tick.names if column + len(name) <= end), "")
        if name and column >= len(text):
            text += " " * (column - len(text)) + name
    return text.ljust(plan.grid)


def axis_rows(scene: Scene, plan: Layout, *, years: bool) -> tuple[Row, Row]:
    """Names, then the line: dotted where it is known that the grass does not grow. Over years no year is named."""
    return scene.once(("axis", plan, years), lambda: _axis_rows(scene, plan, years=years))


def _axis_rows(scene: Scene, plan: Layout, *, years: bool) -> tuple[Row, Row]:
    found = ticks(scene.cells)
    if years:
        found = [
            Tick(tick.cell, tick.names[-1:] if tick.names[-1].isalpha() else tick.names, tick.faint) for tick in found
        ]
    begins = {tick.cell for tick in found if not tick.faint}
    pieces: list[Span] = []
    for cell in range(plan.hidden, COUNT):
        line = "┄" if scene.idle_season(cell) else "─"
        here = cell == scene.now and scene.cells.at(scene.today) is not None
        head = "▼" if here else "┬" if cell in begins else line
        text, ink = head + line * (plan.cell - 1), Ink.KEY if here else Ink.RULE
        if here and plan.cell > 1:
            pieces += [Span(head, ink), Span(line * (plan.cell - 1), Ink.RULE)]
        elif pieces and pieces[-1].ink is ink:
            pieces[-1] = Span(pieces[-1].text + text, ink)
        else:
            pieces.append(Span(text, ink))
    margin = Span(" " * LABEL)
    return (
        (margin, Span(names_row(found, plan), Ink.DIM)),
        (margin, *pieces, *(() if years else _now(scene, plan))),
    )


def _now(scene: Scene, plan: Layout) -> tuple[Span, ...]:
    if not plan.now:
        return ()
    words = day_words(scene.today, scene.today)
    return (Span(f" {'on':>4} {words}" if plan.now > 6 else f"{words:>{plan.now}}", Ink.DIM),)
