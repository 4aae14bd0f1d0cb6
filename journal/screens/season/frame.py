"""Which stretch of time a view shows, and what it is called."""

from collections.abc import Sequence

from journal.screens.season.cells import COUNT, Cells, days, weeks, year_days, year_weeks
from journal.screens.season.lane import Lane
from journal.screens.season.layout import Layout
from journal.screens.season.scene import Scene
from journal.screens.view import View
from journal.standing import Standing

FIRST_ROW = 1
"""Where the cursor comes in: on Mow."""


def lane_of(view: View, shown: Sequence[Lane]) -> Lane | None:
    """The lane under the cursor; over years the one that `top` holds, where flags, which have no years, give way."""
    at = max(FIRST_ROW, view.top) if view.years else view.row
    return shown[min(at, len(shown) - 1)] if at >= 0 else None


def year_of(view: View, standing: Standing) -> int:
    """The year of the row under the cursor: rows are years back from the date judged."""
    return max(1, standing.as_of.year - max(0, view.row))


def cells_of(view: View, standing: Standing) -> Cells:
    """The cells of the row under the cursor."""
    if view.years:
        return cells_of_year(view, standing, year_of(view, standing))
    return days(standing.as_of) if view.days else weeks(standing.as_of)


def cells_of_year(view: View, standing: Standing, year: int) -> Cells:
    """The weeks of a year, or its days about the date judged."""
    return year_days(standing.as_of, year) if view.days else year_weeks(year)


def cursor_cell(view: View, scene: Scene, plan: Layout) -> int:
    """The cell under the cursor, else the one now; never one that is left out."""
    cell = view.cell if view.cell >= 0 and view.row >= 0 else scene.now
    return max(plan.hidden, min(COUNT - 1, cell))


def same_day(view: View, standing: Standing, other: View) -> int:
    """The cell of another view that holds the day under the cursor; -1 (now) where it holds none."""
    if view.row < 0 or view.cell < 0:
        return -1
    cells, others = cells_of(view, standing), cells_of(other, standing)
    first, last = cells.span(min(view.cell, COUNT - 1))
    today = standing.as_of.toordinal()
    found = others.at(today if first <= today <= last else first)
    return -1 if found is None else found


def title_words(view: View, lane: str) -> str:
    """`Season · all zones · weeks`, and over the years the lane too."""
    rows = f"{lane} by year" if view.years else ""
    cells = "days" if view.days else "" if view.years else "weeks"
    return " · ".join(part for part in ("Season", view.zone or "all zones", rows, cells) if part)
