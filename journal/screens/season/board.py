"""The rows of the grid: lanes, with zones under them and the weather below, as many as there is room for."""

from collections.abc import Sequence
from dataclasses import dataclass

from journal.screens.season.lane import Lane, drawn
from journal.screens.season.mark import Strip
from journal.screens.season.scene import Scene

LEAST_PANE = 4
"""Rows of the pane, its title among them, that the weather leaves."""
ROOMY_PANE = 9
"""Rows the pane keeps before zones get rows of their own."""
NO_STOP = -1


@dataclass(frozen=True, slots=True)
class Line:
    """A row of the grid (no strip: a rule); which stop of the cursor it is, if any, and whether it stands there."""

    scene: Scene
    strip: Strip | None = None
    stop: int = NO_STOP
    here: bool = False


def lane_lines(scene: Scene, shown: Sequence[Lane], room: int, under: Lane | None, *, opened: bool) -> list[Line]:
    """The lanes in `room` rows, the pane's and the cursor's among them. Opened: only the lane under the cursor."""
    if opened and under is not None:
        return [_line(scene, under, shown, under)]
    work = [lane for lane in shown if not lane.weather]
    weather = [lane for lane in shown if lane.weather]
    spare = room - 1 - len(work)
    if spare < len(weather) + 1 + LEAST_PANE:
        weather = [lane for lane in weather if lane is under]
    spare -= len(weather) + 1 if weather else 0
    found: list[Line] = []
    for lane in work:
        found.append(_line(scene, lane, shown, under))
        zones = drawn(lane, scene).zones
        if spare - len(zones) >= ROOMY_PANE:
            spare -= len(zones)
            found += [Line(scene, zone) for zone in zones]
    if weather:
        found += [Line(scene), *(_line(scene, lane, shown, under) for lane in weather)]
    return found


def _line(scene: Scene, lane: Lane, shown: Sequence[Lane], under: Lane | None) -> Line:
    return Line(scene, drawn(lane, scene).strip, shown.index(lane), here=lane is under)
