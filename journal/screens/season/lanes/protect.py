"""Products against weeds, insects and disease, and how long they keep the ground closed to seed.

`B` barrier, `W` weed, `I` insect, `D` disease, `w` wetting agent, `?` not in the shed; then `x` to the longest wait.
At two columns a digit says how many tens of days it is closed from there on. A spot closes only itself.
"""

from journal.line.caution import line_shows_safety, show_safety
from journal.line.words import summary
from journal.reckon.dose import doses, is_spot
from journal.record.entry import Entry
from journal.record.kinds.treatment import Treatment
from journal.record.lawn import Lawn
from journal.screens.picture import Ink
from journal.screens.season.ahead import ahead, told
from journal.screens.season.cells import COUNT
from journal.screens.season.figures import counted, day_words, zone_words
from journal.screens.season.lane import Lane
from journal.screens.season.logged import logged
from journal.screens.season.mark import BLANK, Drawn, Mark, Now, Said, Strip, idle, run
from journal.screens.season.scene import Scene
from journal.screens.season.waits import Closed, closures, open_on

STEPS = ("knock-back", "barrier", "broadleaf")
_LETTER = {
    "pre-emergent": "B", "weed": "W", "weed-and-feed": "W", "nonselective": "W", "insect": "I", "disease": "D",
    "wetting": "w",
}  # fmt: skip
CLOSED = run("x", Ink.BARRED, 1.0)


def _letter(lawn: Lawn, entry: Entry) -> str:
    for dose in doses(entry):
        found = lawn.product(dose.product)
        if found is None:
            return "?"
        if found.kind in _LETTER:
            return _LETTER[found.kind]
    return "W"


def _longest(scene: Scene) -> dict[int, Closed]:
    """Entry -> its longest wait. Whatever closes the ground, fed or treated, is a use."""
    found: dict[int, Closed] = {}
    for zone in scene.zones:
        for one in closures(scene, zone):
            found[id(one.entry)] = one
    return found


def _uses(scene: Scene) -> list[Entry]:
    """Treatments, and what was fed that closes the ground."""
    treated = {id(entry): entry for here in scene.by_cell(Treatment) for entry in here}
    fed = {id(one.entry): one.entry for one in _longest(scene).values() if scene.cells.at(one.day) is not None}
    return sorted((treated | fed).values(), key=lambda entry: (entry.day, entry.id))


def cautions(scene: Scene) -> bool:
    """Whether anything shown was put down, or is to be, for which the safety words are meant."""
    planned = any(line_shows_safety(step.line, scene.lawn) for step in scene.standing.steps if step.step in STEPS)
    return planned or show_safety(_uses(scene), scene.lawn)


def _draw(scene: Scene) -> Drawn:
    marks, longest = _closed(scene), _longest(scene)
    for cell, mark in ahead(scene, STEPS).items():
        if marks[cell] is BLANK:
            marks[cell] = mark
    for entry in _uses(scene):
        at = scene.cells.at(entry.day) or 0
        marks[at] = _use(scene.lawn, entry, longest.get(id(entry)), marks[at].fill)
    return Drawn(Strip("Protect", tuple(marks), _now(scene)))


def _use(lawn: Lawn, entry: Entry, closed: Closed | None, fill: str) -> Mark:
    letter = _letter(lawn, entry)
    fill = fill if fill == "x" else " "
    if closed is None:
        return Mark((letter,), Ink.STRONG, fill)
    tens = (closed.opens - closed.day) // 10
    return Mark((f"{letter}{tens if tens < 10 else '+'}", letter), Ink.STRONG, fill)


def _closed(scene: Scene) -> list[Mark]:
    marks = [BLANK] * COUNT
    for zone in scene.zones:
        for one in closures(scene, zone):
            begin = scene.cells.at(max(one.day, scene.cells.first)) or 0
            end = scene.cells.at(min(one.opens - 1, scene.cells.last)) or 0
            marks[begin : end + 1] = [CLOSED] * (end + 1 - begin)
    return marks


def _now(scene: Scene) -> Now:
    opens = max(open_on(closures(scene, zone), scene.today) for zone in scene.zones)
    if opens == scene.today:
        return Now("0", "d", "seed open")
    return Now(str(opens - scene.today), "d", "no seed", ink=Ink.BARRED)


def _words(scene: Scene, cell: int) -> tuple[Said, ...]:
    first, last = scene.cells.span(cell)
    longest = _longest(scene)
    here = [entry for entry in _uses(scene) if first <= entry.day <= last]
    made = [_made(scene, entry, longest.get(id(entry))) for entry in here]
    still = _still(scene, first, last, {id(entry) for entry in here})
    return (*made, *still, *told(scene, STEPS, cell)) or (idle("open to seed; nothing put down."),)


def _made(scene: Scene, entry: Entry, closed: Closed | None) -> Said:
    text = summary(entry, scene.lawn)
    if closed is not None:
        days = counted(closed.opens - closed.day, "day")
        text += f": seed waits to {day_words(closed.opens, scene.today)} ({days}, {closed.by})"
    elif is_spot(entry):
        text += ": a spot, closed for itself alone"
    elif _letter(scene.lawn, entry) == "?":
        text += ": not in the shed, its wait is not known"
    return logged(entry, f"{text}.", Ink.STRONG)


def _still(scene: Scene, first: int, last: int, told_of: set[int]) -> tuple[Said, ...]:
    """What closes the ground in a cell though it was put down before."""
    found: dict[int, tuple[Closed, list[str]]] = {}
    for zone in scene.zones:
        here = [one for one in closures(scene, zone) if one.day <= last and one.opens > first]
        if here and id(here[-1].entry) not in told_of:
            found.setdefault(id(here[-1].entry), (here[-1], []))[1].append(zone)
    return tuple(_still_said(scene, one, zones) for one, zones in found.values())


def _still_said(scene: Scene, one: Closed, zones: list[str]) -> Said:
    until, since = day_words(one.opens, scene.today), day_words(one.day, scene.today)
    text = f"{zone_words(scene.lawn, zones)} closed to seed until {until}: {one.product} of {since} ({one.by})."
    return Said(text, "xxx", Ink.BARRED)


LANE = Lane(name="Protect", place=40, draw=_draw, words=_words)
