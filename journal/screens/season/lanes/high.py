"""The week's mean high, or the day's: tens of degrees at one column, `<` below zero, `^` from a hundred.

Ahead of the day judged stand the highs of most years, where the owner has accepted what they are.
"""

from datetime import date

from journal.record.kinds.weather import Weather
from journal.screens.picture import Ink
from journal.screens.season.cells import COUNT
from journal.screens.season.figures import counted, day_words, temperature
from journal.screens.season.lane import Lane
from journal.screens.season.mark import BLANK, Drawn, Mark, Now, Said, Strip, idle
from journal.screens.season.scene import Scene
from journal.season.history import LAWN


def on_file(scene: Scene) -> bool:
    """Whether any weather was logged up to the date judged."""
    return bool(scene.pasts[LAWN][Weather])


def _highs(scene: Scene, first: int, last: int) -> list[tuple[int, float]]:
    """Each day once: of two entries the one written down later."""
    seen = scene.pasts[LAWN][Weather].between(first, last)
    return list({one.day: one.high_c for one in seen if one.high_c is not None}.items())


def _draw(scene: Scene) -> Drawn:
    cells: list[list[float]] = [[] for _ in range(COUNT)]
    for day, high in _highs(scene, scene.cells.first, scene.cells.last):
        cells[scene.cells.at(day) or 0].append(high)
    marks = [
        _mark(temperature(sum(here) / len(here), scene.metric), Ink.DIM if cell % 2 else Ink.PLAIN)
        if here
        else _ahead(scene, cell)
        for cell, here in enumerate(cells)
    ]
    return Drawn(Strip("High C" if scene.metric else "High F", tuple(marks), _now(scene)))


def _usual(scene: Scene, cell: int) -> float | None:
    """What the high is in most years in the month of a cell that lies ahead; None for one that does not."""
    first, last = scene.cells.span(cell)
    if first <= scene.today:
        return None
    month = date.fromordinal((first + last) // 2).month
    return next((normal.high_c for normal in scene.lawn.normals if normal.month == month), None)


def _ahead(scene: Scene, cell: int) -> Mark:
    usual = _usual(scene, cell)
    return BLANK if usual is None else _mark(temperature(usual, scene.metric), Ink.AHEAD)


def _mark(degrees: int, ink: Ink) -> Mark:
    """Every other cell is dimmed, so that neighbours stay apart."""
    tens = "<" if degrees < 0 else "^" if degrees >= 100 else str(degrees // 10)
    return Mark((str(degrees) if degrees < 0 or degrees >= 100 else f"{degrees:2d}", tens), ink)


def _now(scene: Scene) -> Now:
    recent = _highs(scene, scene.today - 6, scene.today)
    unit = "C" if scene.metric else "F"
    if not recent:
        return Now("–", unit, "this week")
    day, high = recent[-1]
    return Now(
        str(temperature(high, scene.metric)), unit, "today" if day == scene.today else day_words(day, scene.today)
    )


def _words(scene: Scene, cell: int) -> tuple[Said, ...]:
    highs = [temperature(high, scene.metric) for _, high in _highs(scene, *scene.cells.span(cell))]
    unit = "C" if scene.metric else "F"
    if not highs:
        usual = _usual(scene, cell)
        if usual is not None:
            return (Said(f"high of {temperature(usual, scene.metric)} {unit} in most years, as you accepted."),)
        return (idle("no temperature on file."),)
    if len(highs) == 1:
        return (Said(f"high of {highs[0]} {unit}."),)
    total = [high for _, high in _highs(scene, *scene.cells.span(cell))]
    mean = temperature(sum(total) / len(total), scene.metric)
    return (Said(f"highs of {min(highs)} to {max(highs)} {unit}, mean {mean}, {counted(len(highs), 'day')} on file."),)


LANE = Lane(name="High", place=110, draw=_draw, words=_words, weather=True, on_file=on_file)
