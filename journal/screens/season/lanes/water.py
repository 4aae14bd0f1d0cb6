"""Irrigation: a block as high as the cell's water, full at 1.5 in; `?` when watered to a depth not known.

Of several zones the wettest shows. At two columns `!` stands beside it while a standing flag tells of a deficit.
"""

from journal.facts.factors import mm
from journal.line.words import summary
from journal.record.kinds.watering import Watering
from journal.screens.picture import Ink
from journal.screens.season.ahead import ahead, told
from journal.screens.season.cells import COUNT
from journal.screens.season.figures import block, day_words, depth, depth_number, depth_unit
from journal.screens.season.lane import Lane
from journal.screens.season.logged import logged
from journal.screens.season.mark import BLANK, Drawn, Mark, Now, Said, Strip, idle
from journal.screens.season.scene import Scene
from journal.season.water import Irrigation, water_days

STEPS = ("damp", "water")
FULL_MM = mm(1.5)
DEFICIT = ("water-deficit", "water-week")

Days = dict[int, tuple[Irrigation, ...]]


def _days(scene: Scene, zone: str) -> Days:
    return water_days(scene.pasts[zone], scene.cells.first, min(scene.cells.last, scene.today))


def _sum(here: list[Irrigation]) -> float | None:
    """Depth together; None when none of it is known."""
    known = [one.depth_mm for one in here if one.depth_mm is not None]
    return sum(known) if known else None


def _short(scene: Scene) -> int | None:
    """The day from which a standing flag tells of a deficit."""
    rose = [
        flag.rose.toordinal()
        for flag in scene.standing.flags
        if flag.rule in DEFICIT and (not flag.zones or any(zone in scene.zones for zone in flag.zones))
    ]
    return min(rose, default=None)


def _draw(scene: Scene) -> Drawn:
    short = _short(scene)
    window = ahead(scene, STEPS)
    wettest: list[float] = [-1.0] * COUNT
    for zone in scene.zones:
        cells: list[list[Irrigation]] = [[] for _ in range(COUNT)]
        for day, here in _days(scene, zone).items():
            cells[scene.cells.at(day) or 0].extend(here)
        for cell, poured in enumerate(cells):
            if poured:
                total = _sum(poured)
                wettest[cell] = max(wettest[cell], 0.0 if total is None else total)
    marks = [_mark(scene, cell, wettest[cell], short, window) for cell in range(COUNT)]
    return Drawn(Strip("Water", tuple(marks), _now(scene)))


def _mark(scene: Scene, cell: int, poured: float, short: int | None, window: dict[int, Mark]) -> Mark:
    if cell > scene.now:
        return window.get(cell, BLANK)
    missing = short is not None and scene.cells.span(cell)[1] >= short
    if poured < 0:
        return Mark(("!",), Ink.GAP) if missing else BLANK
    high = "?" if poured == 0 else block(poured / FULL_MM)
    return Mark((f"{high}!", high) if missing else (high,), Ink.WATER)


def _week(scene: Scene, zone: str) -> float | None:
    """Irrigation of the last seven days: None when watered to a depth not known, 0 when not at all."""
    here = [one for day in water_days(scene.pasts[zone], scene.today - 6, scene.today).values() for one in day]
    return _sum(here) if here else 0.0


def _now(scene: Scene) -> Now:
    weeks = [_week(scene, zone) for zone in scene.zones]
    known = [week for week in weeks if week is not None]
    if not known:
        return Now("?", depth_unit(scene.metric), "last 7 d", ink=Ink.WATER)
    return Now(depth_number(max(known), scene.metric), depth_unit(scene.metric), "last 7 d", ink=Ink.WATER)


def _words(scene: Scene, cell: int) -> tuple[Said, ...]:
    steps = told(scene, STEPS, cell)
    if cell > scene.now:
        return steps or (idle("not planned so far ahead."),)
    first, last = scene.cells.span(cell)
    totals = [_total(scene, zone, first, min(last, scene.today)) for zone in scene.zones]
    made = [logged(entry, f"{summary(entry, scene.lawn)}.", Ink.WATER) for entry in scene.entries(cell, Watering)]
    poured = [total for total in totals if total]
    said = [Said(f"together {'; '.join(poured)}.", "", Ink.WATER)] if poured else []
    short = _short(scene)
    if short is not None and last >= short:
        said.append(Said(f"short of water since {day_words(short, scene.today)}.", "!", Ink.GAP))
    return (*said, *made, *steps) or (idle("not watered."),)


def _total(scene: Scene, zone: str, first: int, last: int) -> str:
    here = [one for day in water_days(scene.pasts[zone], first, last).values() for one in day]
    if not here:
        return ""
    total = _sum(here)
    words = "depth not known" if total is None else depth(total, scene.metric)
    return f"{zone} {words}{', by the timer' if all(one.assumed for one in here) else ''}"


def _whole(scene: Scene) -> Now:
    """All the water of the cells, of the zone that got most."""
    sums = [_sum([one for day in _days(scene, zone).values() for one in day]) or 0.0 for zone in scene.zones]
    return Now(depth_number(max(sums), scene.metric), depth_unit(scene.metric), "water")


LANE = Lane(name="Water", place=70, draw=_draw, words=_words, total=_whole)
