"""A named part of the lawn."""

import re
from dataclasses import dataclass

from journal.record.quantity import parse_as
from journal.record.refusal import Refusal
from journal.record.term import grass_names, listed, measured, one_of, positive, term, yes_no
from journal.record.unit import Dimension


@dataclass(frozen=True, slots=True)
class Circuit:
    """One sprinkler circuit: its share of the zone in percent and its rate in mm/h."""

    name: str
    share: float
    rate_mm_h: float


_TAKEN = ("ON", "BY", "IN")
"""Words that begin something else on the line."""


def _circuits(text: str) -> tuple[Circuit, ...]:
    """`A 60% 0.5in/h; B 40% 0.9in/h`."""
    found: list[Circuit] = []
    for item in listed(text):
        parts = item.split()
        if len(parts) != 3:
            raise Refusal(item, "a circuit is written like A 60% 0.5in/h.")
        name = parts[0].upper()
        if not re.fullmatch(r"[A-Z][A-Z0-9]?", name) or name in _TAKEN:
            raise Refusal(parts[0], "a circuit's name is a letter, with another or a digit behind it if need be.")
        if any(name == circuit.name for circuit in found):
            raise Refusal(parts[0], "this circuit is named twice.")
        share = parse_as(parts[1], Dimension.PERCENT, Dimension.NUMBER).value
        rate = parse_as(parts[2], Dimension.RAIN_RATE).value
        if not share or not rate:
            raise Refusal(parts[1] if not share else parts[2], "more than nothing is wanted here.")
        found.append(Circuit(name, share, rate))
    if abs(sum(c.share for c in found) - 100) > 1:
        raise Refusal(text, "the circuits' shares must add up to 100 %.")
    return tuple(found)


@dataclass(frozen=True, slots=True, kw_only=True)
class Zone:
    """Area in m2, water rate in mm/h, distances in mm. None or '' where the owner has not said."""

    name: str
    area_m2: float | None = term("area", positive(Dimension.AREA), "2400sqft")
    sun: str = term("sun", one_of("full", "part", "shade"), "full", "full")
    irrigated: bool = term("irrigated", yes_no, "yes", False)
    soil: str = term(
        "soil",
        one_of("sand", "loamy-sand", "sandy-loam", "loam", "silt-loam", "clay-loam", "clay"),
        "loam",
        "",
    )
    rate_mm_h: float | None = term("rate", positive(Dimension.RAIN_RATE), "0.6in/h")
    near_water_mm: float | None = term("near_water", measured(Dimension.LENGTH), "30ft")
    trees: bool = term("trees", yes_no, "yes", False)
    slope: str = term("slope", one_of("none", "gentle", "steep"), "gentle", "none")
    out_of_view: bool = term("out_of_view", yes_no, "no", False)
    mowing: str = term("mowing", one_of("self", "service"), "self", "self")
    grass: tuple[str, ...] = term("grass", grass_names, "kentucky bluegrass, perennial ryegrass", ())
    circuits: tuple[Circuit, ...] = term("circuits", _circuits, "A 60% 0.5in/h; B 40% 0.9in/h", ())

    @property
    def water_rate_mm_h(self) -> float | None:
        """Rate over the whole zone: the circuits' by share where there are any."""
        if self.circuits:
            return sum(c.share * c.rate_mm_h for c in self.circuits) / 100
        return self.rate_mm_h
