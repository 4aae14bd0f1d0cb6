"""Sowing and the young stand: `S` sown, `~` keep damp, `e` seen emerged, `-` new grass, `E` established.

The lane follows the youngest stand of the zones shown.
"""

from journal.line.words import summary
from journal.reckon.dose import doses, total_g
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Sighting
from journal.record.unit import POUND
from journal.screens.picture import Ink
from journal.screens.season.ahead import ahead, told
from journal.screens.season.cells import COUNT
from journal.screens.season.figures import counted, day_words, zone_words
from journal.screens.season.lane import Lane
from journal.screens.season.logged import logged
from journal.screens.season.mark import BLANK, Drawn, Mark, Now, Said, Strip, heaviest, idle, run
from journal.screens.season.scene import Scene
from journal.screens.season.sowings import Sowing, stage

STEPS = ("seed",)
DAMP, WAITS = run("~", Ink.SEED, 2.0), run("_", Ink.SEED, 1.5)
YOUNG = run("-", Ink.SEED, 1.0)


def _stand(one: Sowing, day: int) -> Mark:
    """What the cell that ends on a day shows of a stand sown before it."""
    if day < one.zero:
        return WAITS
    if one.established is not None and day >= one.established:
        return BLANK
    return DAMP if day <= one.damp_to else YOUNG


def _zone(scene: Scene, zone: str) -> tuple[Mark, ...]:
    marks = []
    for cell in range(COUNT):
        first, last = scene.cells.span(cell)
        one = scene.sowing(zone, last)
        if one is None:
            marks.append(BLANK)
        elif one.established is not None and first <= one.established <= min(last, scene.today):
            marks.append(Mark(("E",), Ink.SEED, weight=4.0))
        elif one.emerged is not None and first <= one.emerged <= last:
            marks.append(Mark(("e",), Ink.SEED, _stand(one, last).fill, weight=5.0))
        else:
            marks.append(BLANK if cell > scene.now and _old(one, last) else _stand(one, last))
    return tuple(marks)


def _old(one: Sowing, day: int) -> bool:
    """Whether a stand not yet known to be established is at least 56 days old: no more is known of it ahead."""
    return day > one.zero + 56


def _draw(scene: Scene) -> Drawn:
    window = ahead(scene, STEPS)
    marks = list(heaviest([_zone(scene, zone) for zone in scene.zones]))
    for cell, here in enumerate(scene.by_cell(Seeding)):
        if here:
            marks[cell] = _sown(scene, here, marks[cell])
    for cell, mark in window.items():
        if marks[cell] is BLANK:
            marks[cell] = mark
    return Drawn(Strip("Seed", tuple(marks), _now(scene)))


def _sown(scene: Scene, here: list[Seeding], under: Mark) -> Mark:
    grams = [total_g(dose, entry, scene.lawn) for entry in here for dose in doses(entry)]
    fill = under.fill if under.fill != "E" else " "
    if None in grams:
        return Mark(("S",), Ink.STRONG, fill)
    amount = round(sum(g for g in grams if g is not None) / (1000 if scene.metric else float(POUND)))
    if not amount:
        return Mark(("S",), Ink.STRONG, fill)
    return Mark((f"S{amount}", f"S{amount if amount < 10 else '+'}", "S"), Ink.STRONG, fill)


def _youngest(scene: Scene, day: int) -> Sowing | None:
    return max(
        (one for zone in scene.zones if (one := scene.sowing(zone, day))), key=lambda one: one.sown, default=None
    )


def _now(scene: Scene) -> Now:
    youngest = _youngest(scene, scene.today)
    if youngest is None:
        return Now("–", "", "none sown")
    days = scene.today - youngest.sown
    return (
        Now(str(days), "d", _SHORT[stage(youngest, scene.today)]) if days < 1000 else Now(str(days // 365), "yr", "old")
    )


_SHORT = {
    "waits for spring": "dormant", "established": "settled", "keep damp": "keep damp", "seedbed": "seedbed",
    "new grass": "new grass",
}  # fmt: skip


def _words(scene: Scene, cell: int) -> tuple[Said, ...]:
    first, last = scene.cells.span(cell)
    day = scene.past_end(cell) if cell <= scene.now else last
    made = [logged(entry, f"sown: {summary(entry, scene.lawn)}.", Ink.STRONG) for entry in scene.entries(cell, Seeding)]
    made += [
        logged(entry, f"emerged: {summary(entry, scene.lawn)}.", Ink.SEED)
        for entry in scene.entries(cell, Sighting)
        if entry.subject == "emerged"
    ]
    found: dict[Sowing, list[str]] = {}
    for zone in scene.zones:
        one = scene.sowing(zone, day)
        if one is not None:
            found.setdefault(one, []).append(zone)
    stands = [_stand_said(scene, one, zones, first, day) for one, zones in found.items()]
    return (*made, *stands, *told(scene, STEPS, cell)) or (idle("none sown."),)


def _stand_said(scene: Scene, one: Sowing, zones: list[str], first: int, day: int) -> Said:
    where, when = zone_words(scene.lawn, zones), day_words(one.sown, scene.today)
    days = counted(day - one.sown, "day")
    name = stage(one, day)
    if name == "established":
        since = one.established or day
        how = "became established" if first <= since else "established"
        text = f"{where} {how} {day_words(since, scene.today)}; sown {when}."
        return Said(text, "E", Ink.SEED) if first <= since else idle(text)
    words = {
        "keep damp": f"keep damp to {day_words(one.damp_to, scene.today)}",
        "seedbed": "a seedbed until the first cut",
        "new grass": "new grass until 56 days and 3 cuts",
        "waits for spring": f"lies until spring, counted from {day_words(one.zero, scene.today)}",
    }[name]
    mark = {"keep damp": "~~~", "waits for spring": "___"}.get(name, "---")
    return Said(f"{where} sown {when}, {days} ago: {words}.", mark, Ink.SEED)


LANE = Lane(name="Seed", place=50, draw=_draw, words=_words)
