"""How near a zone lies to water, and how far from it a local rule wants fertilizer kept."""

from dataclasses import dataclass

from journal.facts.citation import Known
from journal.facts.local_rules import LocalRules, Stated
from journal.reckon.threshold import in_force
from journal.record.lawn import Lawn
from journal.record.quantity import plain
from journal.season.local import local_rules


@dataclass(frozen=True, slots=True)
class WaterEdge:
    """Distances in mm. `stated` is the local rule's, confirmed or not; None where none speaks to owners."""

    distance_mm: float
    stated: Stated[float] | None

    @property
    def broken(self) -> bool:
        """Whether a confirmed rule reaches into the zone: what is fed there has to keep its edge."""
        return self.stated is not None and self.stated.confirmed and self.distance_mm < self.stated.value

    def place(self, rules: LocalRules | None) -> str:
        """Who asks for it."""
        own = self.stated is not None and self.stated.basis.kind is Known.LOCAL_RULE
        return "your local rule" if own or rules is None else rules.place

    @staticmethod
    def say(mm: float, lawn: Lawn) -> str:
        """`25 ft` or `7.6 m`."""
        return f"{plain(mm / 304.8, 3)} ft" if lawn.units == "us" else f"{plain(mm / 1000, 2)} m"


def wants_edge(lawn: Lawn, zone: str) -> bool:
    """Whether what is fed on that zone is asked whether its edge was kept."""
    edge = water_edge(lawn, zone)
    return edge is not None and (edge.broken or edge.distance_mm <= in_force(lawn, "feed-buffer", "distance"))


def water_edge(lawn: Lawn, zone: str) -> WaterEdge | None:
    """Of a zone that is marked near water; None for any other."""
    found = lawn.zone(zone)
    if found is None or found.near_water_mm is None:
        return None
    rules = local_rules(lawn)
    distance = rules.heeds(rules.buffer_mm) if rules is not None else None
    stated = rules.buffer_mm if rules is not None and distance else None
    return WaterEdge(found.near_water_mm, stated)
