"""What the soil of a zone holds for the roots, and how fast it takes water up, by the word that names the soil."""

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from journal.facts.citation import Basis, memory
from journal.facts.factors import mm
from journal.facts.sources import judgment, published

INCH_PER_FOOT_MM_PER_M = 1000 / 12
"""One inch of water in a foot of soil, in mm per m."""


@dataclass(frozen=True, slots=True)
class Soil:
    """`available_mm_per_m` is water that roots can draw from a metre of soil; `intake_mm_h` and `storage_mm` are what
    it takes up in an hour and what may stand on level ground without running off.
    """

    name: str
    available_mm_per_m: float
    available_basis: Basis
    intake_mm_h: float
    storage_mm: float


_TABLE = published("emswcd")
_BETWEEN = judgment("between two rows of the table", "emswcd")

INTAKE_BASIS: Basis = memory(
    "design values; loamy sand and silt loam between their neighbours; trodden soil takes less"
)
"""Of intake and of what may stand on the surface, of every soil."""


def _soil(name: str, inches_per_foot: float, basis: Basis, intake: float, storage: float) -> Soil:
    return Soil(name, inches_per_foot * INCH_PER_FOOT_MM_PER_M, basis, mm(intake), mm(storage))


SOILS: Mapping[str, Soil] = MappingProxyType(
    {
        soil.name: soil
        for soil in (
            _soil("sand", 0.8, judgment("between coarse and fine sand", "emswcd"), 0.60, 0.40),
            _soil("loamy-sand", 1.0, _BETWEEN, 0.50, 0.36),
            _soil("sandy-loam", 1.2, _TABLE, 0.40, 0.33),
            _soil("loam", 1.8, _TABLE, 0.35, 0.30),
            _soil("silt-loam", 2.0, _TABLE, 0.30, 0.28),
            _soil("clay-loam", 2.2, _TABLE, 0.20, 0.26),
            _soil("clay", 2.4, published("emswcd", note="other tables put clay at or below loam"), 0.10, 0.20),
        )
    }
)

STORAGE_BY_SLOPE: Mapping[str, float] = MappingProxyType({"none": 1.0, "gentle": 0.75, "steep": 0.5})
"""Share of `storage_mm` that stands on a slope: about half is remembered for a steep one, the middle is judgment."""


def storage_mm(soil: Soil, slope: str) -> float:
    """Water that may stand on the surface of that slope (none, gentle or steep) without running off, in mm."""
    return soil.storage_mm * STORAGE_BY_SLOPE[slope]
