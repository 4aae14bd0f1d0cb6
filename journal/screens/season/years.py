"""The same weeks of one year under those of another: the cursor's lane, with the feeding under it."""

from collections.abc import Sequence
from dataclasses import replace

from journal.screens.season.board import Line
from journal.screens.season.frame import cells_of_year, year_of
from journal.screens.season.lane import Lane, drawn
from journal.screens.season.mark import Strip
from journal.screens.season.scene import Scene, scene_of
from journal.screens.view import View
from journal.standing import Standing

LEAST_PANE = 6
BESIDE = "Feed"
"""The lane that goes with every other: most of what is seen follows from it."""


def oldest_year(standing: Standing) -> int:
    """The year of the oldest entry, or that of the date judged."""
    oldest = standing.history.oldest
    return min(oldest.year, standing.as_of.year) if oldest else standing.as_of.year


def scene_of_axis(standing: Standing, view: View, scene: Scene) -> Scene:
    """Over years the axis is that of the year judged, whatever year the cursor stands in."""
    if not view.years:
        return scene
    return scene_of(standing, view.zone, cells_of_year(view, standing, standing.as_of.year))


def year_lines(
    standing: Standing, view: View, scene: Scene, shown: Sequence[Lane], lane: Lane, room: int
) -> list[Line]:
    """The year under the cursor and its neighbours, the oldest at the top, in `room` rows with the pane's."""
    if view.open:
        here = year_of(view, standing)
        return [Line(scene, _strip(lane, scene, here), standing.as_of.year - here, here=view.row >= 0)]
    beside = next((one for one in shown if one.name == BESIDE and one is not lane), None)
    each = 1 if beside is None else 2
    newest, oldest = standing.as_of.year, oldest_year(standing)
    fit = max(1, min(newest - oldest + 1, (room - 1 - LEAST_PANE) // each))
    here = max(oldest, min(newest, year_of(view, standing)))
    top = min(newest - fit + 1, here)
    found: list[Line] = []
    for year in range(top, top + fit):
        of_year = scene if year == here else scene_of(standing, view.zone, cells_of_year(view, standing, year))
        found.append(Line(of_year, _strip(lane, of_year, year), newest - year, here=year == here and view.row >= 0))
        if beside is not None:
            found.append(Line(of_year, _strip(beside, of_year, None)))
    return found


def _strip(lane: Lane, scene: Scene, year: int | None) -> Strip:
    """The lane's row under the year's name, or its own, with the year's total at the right."""
    return scene.once(("year", lane.name, year), lambda: _summed(lane, scene, year))


def _summed(lane: Lane, scene: Scene, year: int | None) -> Strip:
    strip = drawn(lane, scene).strip
    return replace(strip, label=str(year) if year is not None else strip.label, now=lane.total(scene))
