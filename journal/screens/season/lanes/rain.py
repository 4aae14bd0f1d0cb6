"""Rain: a block as high as the cell's rain, full at 2 in; `0` where the gauge was read and held none.

Each date once: a gauge beats the weather, a zone's own gauge beats both; of several zones the wettest shows.
"""

from journal.facts.factors import mm
from journal.record.kinds.weather import Rain, Weather
from journal.screens.picture import Ink
from journal.screens.season.cells import COUNT
from journal.screens.season.figures import block, counted, depth, depth_number, depth_unit
from journal.screens.season.lane import Lane
from journal.screens.season.mark import BLANK, Drawn, Mark, Now, Said, Strip, idle
from journal.screens.season.scene import Scene
from journal.season.water import rain_days

FULL_MM = mm(2)
TRACE_MM = mm(0.05)
"""Less shows as `0`, and is written as 0.0."""


def on_file(scene: Scene) -> bool:
    """Whether any rain, nought included, was logged up to the date judged."""
    return any(past[Rain] for past in scene.pasts.values()) or any(past[Weather] for past in scene.pasts.values())


def _fallen(scene: Scene, first: int, last: int) -> dict[int, float]:
    """Day -> rain in mm, the wettest zone's."""
    found: dict[int, float] = {}
    own = [zone for zone in scene.zones if scene.pasts[zone][Rain]] or list(scene.zones[:1])
    for zone in own:
        for day, fell in rain_days(scene.pasts[zone], first, min(last, scene.today)).items():
            found[day] = max(found.get(day, 0.0), fell)
    return found


def _draw(scene: Scene) -> Drawn:
    sums: list[float | None] = [None] * COUNT
    for day, fell in _fallen(scene, scene.cells.first, scene.cells.last).items():
        cell = scene.cells.at(day) or 0
        sums[cell] = (sums[cell] or 0.0) + fell
    marks = [BLANK if fell is None else _mark(fell) for fell in sums]
    return Drawn(Strip("Rain", tuple(marks), _now(scene)))


def _mark(fell: float) -> Mark:
    return Mark(("0",), Ink.DIM) if fell < TRACE_MM else Mark((block(fell / FULL_MM),), Ink.WATER)


def _now(scene: Scene) -> Now:
    fallen = _fallen(scene, scene.today - 6, scene.today)
    number = depth_number(sum(fallen.values()), scene.metric) if fallen else "–"
    return Now(number, depth_unit(scene.metric), "last 7 d", ink=Ink.WATER)


def _words(scene: Scene, cell: int) -> tuple[Said, ...]:
    fallen = _fallen(scene, *scene.cells.span(cell))
    if not fallen:
        return (idle("no rain on file."),)
    return (
        Said(
            f"{depth(sum(fallen.values()), scene.metric)} of rain, {counted(len(fallen), 'day')} on file.",
            ink=Ink.WATER,
        ),
    )


def _total(scene: Scene) -> Now:
    fallen = _fallen(scene, scene.cells.first, scene.cells.last)
    return Now(depth_number(sum(fallen.values()), scene.metric), depth_unit(scene.metric), "rain")


LANE = Lane(name="Rain", place=120, draw=_draw, words=_words, total=_total, weather=True, on_file=on_file)
