"""ZONES: a row a zone, what was not said as `·` and what that costs beneath, what is taken for granted in brackets."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from functools import partial

from journal.line.words import neat
from journal.record.lawn import WHOLE, Lawn
from journal.record.quantity import in_unit
from journal.record.unit import Dimension, unit_for
from journal.record.zone import Zone
from journal.screens.ground.fact import dated
from journal.screens.ground.words import COSTS, example
from journal.screens.paper import Paper, Within
from journal.screens.picture import Ink, Row, Span, Target
from journal.screens.rows import clipped, left, middle, right
from journal.standing import Standing

NOT_SAID = "·"
_MORE_NAMES = ("front", "back", "side", "verge", "bank", "yard")

Opened = Callable[[str], Within]
"""What a zone's row opens to."""


def draw_zones(paper: Paper, standing: Standing, line_of: Callable[[str], str], opened: Opened) -> None:
    """Headings, the zones, and how one more is added."""
    lawn = standing.lawn
    shape = Shape.fitting(lawn, paper.width)
    paper.heading(left("ZONES", shape.name), shape.headings(lawn.units))
    for at, zone in enumerate(lawn.zones):
        unnamed = zone.name == WHOLE and ("zone", WHOLE, "area") not in lawn.said
        paper.stop(
            shape.row(zone, lawn, _stand(zone.name, standing)),
            Target(0, line="zone " if unnamed else "", name=f"zone {zone.name}"),
            lit=1,
            main=at == 0,
            line=None if unnamed else partial(line_of, zone.name),
            beneath=[_lacking(zone, lawn)] if costs(zone, lawn) else (),
            within=opened(zone.name),
        )
    _one_more(paper, lawn)


_COLUMNS = (
    ("sun", 7), ("soil", 11), ("water", 11), ("slope", 7), ("shore", 7), ("trees", 6), ("grass", 6), ("mown by", 9),
    ("stand", 30),
)  # fmt: skip
_LAST = 7
"""The last column that is shown needs no room behind it."""


@dataclass(frozen=True, slots=True)
class Shape:
    """How wide the names and areas are, and how many of the other columns fit."""

    name: int
    area: int
    columns: int

    @classmethod
    def fitting(cls, lawn: Lawn, width: int) -> "Shape":
        """Columns from the left on, as many as fit whole."""
        name = min(16, max(9, *(len(zone) + 1 for zone in lawn.zone_names)))
        area = max(6, *(len(_area(zone, lawn)) for zone in lawn.zones))
        used, count = 1 + name + area + 2, 0
        for _, size in _COLUMNS:
            if used + min(size, _LAST if size < 30 else size) > width:
                break
            used, count = used + size, count + 1
        return cls(name, area, count)

    def headings(self, units: str) -> Row:
        """The units stand in them."""
        area, rate = ("m2", "mm/h") if units == "metric" else ("sq ft", "in/h")
        names = (f"water {rate}" if name == "water" else name for name, _ in _COLUMNS)
        words = "".join(left(name, size) for name, (_, size) in self._shown(names))
        return (Span(f"{right(area, self.area)}  {words}".rstrip(), Ink.DIM),)

    def row(self, zone: Zone, lawn: Lawn, stand: str) -> Row:
        """One zone, its name first."""
        said = {key for what, whose, key in lawn.said if what == "zone" and whose == zone.name}
        near = NOT_SAID if zone.near_water_mm is None else distance(zone.near_water_mm, lawn.units)
        cells = (
            taken(zone.sun, "sun" in said),
            zone.soil or NOT_SAID,
            _water(zone, lawn, said),
            taken(zone.slope, "slope" in said),
            near,
            taken("yes" if zone.trees else "no", "trees" in said),
            "own" if zone.grass else "lawn" if lawn.grass else NOT_SAID,
            taken(zone.mowing, "mowing" in said),
            stand,
        )
        spans = [
            Span(left(clipped(cell, size - 1), size), Ink.DIM if cell.startswith("(") else Ink.PLAIN)
            for cell, (_, size) in self._shown(cells)
        ]
        if spans:
            spans[-1] = Span(spans[-1].text.rstrip(), spans[-1].ink)
        head = Span(left(middle(zone.name, self.name - 1), self.name), Ink.STRONG)
        return Span(" "), head, Span(f"{right(_area(zone, lawn), self.area)}  "), *spans

    def _shown(self, cells: Iterable[str]) -> list[tuple[str, tuple[str, int]]]:
        return list(zip(cells, _COLUMNS, strict=True))[: self.columns]


def _area(zone: Zone, lawn: Lawn) -> str:
    if zone.area_m2 is None:
        return NOT_SAID
    return f"{in_unit(zone.area_m2, unit_for(Dimension.AREA, lawn.units)):,.0f}"


def costs(zone: Zone, lawn: Lawn) -> list[tuple[str, str]]:
    """(what is not said, what is lost by it) for a zone."""
    found = [("area", COSTS["area"])] if zone.area_m2 is None else []
    if not zone.soil:
        found.append(("soil", COSTS["soil"]))
    if zone.irrigated and zone.water_rate_mm_h is None:
        found.append(("rate", COSTS["rate"]))
    if not lawn.grass_of(zone.name):
        found.append(("grass", COSTS["grass"]))
    return found


def _lacking(zone: Zone, lawn: Lawn) -> Row:
    words = "; ".join(f"no {what}: {cost}" for what, cost in costs(zone, lawn))
    return Span("    "), Span("! ", Ink.LATE), Span(words, Ink.DIM)


def _stand(zone: str, standing: Standing) -> str:
    """`growing, sown 6 Sep 2026`."""
    facts = next((one for one in standing.zones if one.zone == zone), None)
    if facts is None:
        return ""
    return f"{facts.stage}, sown {dated(facts.sown_on, standing.as_of)}" if facts.sown_on else facts.stage


def taken(word: str, said: bool) -> str:
    """The word, in brackets where nobody said it."""
    return word if said else f"({word})"


def distance(mm: float, units: str) -> str:
    """`40 ft` or `12 m`."""
    return f"{mm / 1000:,.0f} m" if units == "metric" else f"{mm / 304.8:,.0f} ft"


def _water(zone: Zone, lawn: Lawn, said: set[str]) -> str:
    """Whether there is a timer or a system, the rate over the whole zone, and its circuits' letters."""
    rate = zone.water_rate_mm_h
    words = neat(rate, Dimension.RAIN_RATE, lawn.units).split()[0] if rate is not None else ""
    letters = "".join(f" {circuit.name}" for circuit in zone.circuits)
    if zone.irrigated:
        return clipped(f"{words or NOT_SAID}{letters}", 10)
    return clipped(f"{taken('no', 'irrigated' in said)} {words}".strip(), 10)


def _one_more(paper: Paper, lawn: Lawn) -> None:
    """The line for another zone, under a name that is free."""
    if lawn.zone_names == (WHOLE,):
        return
    name = next((name for name in _MORE_NAMES if name not in lawn.zone_names), "")
    if not name:
        return
    line = f"zone {name} {example('area', lawn)}"
    row = (Span(" "), Span("+ a zone ", Ink.DIM), Span(f" {line}", Ink.KEY))
    paper.stop(row, Target(0, line="zone ", name="one more zone"), lit=1, main=False)
