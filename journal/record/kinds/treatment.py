"""Products against weeds, insects and disease, and wetting agents."""

from dataclasses import dataclass
from typing import Any

from journal.record.dose import Dose
from journal.record.entry import Entry, Verb, entry_kind
from journal.record.kinds.feeding import need_product, one_amount
from journal.record.slot import mark, measure, product
from journal.record.unit import Dimension

TREATMENTS = ("pre-emergent", "weed", "weed-and-feed", "nonselective", "insect", "disease", "wetting")
UNKNOWN = "unknown"
"""The product name of a treatment whose product nobody wrote down."""


@entry_kind(
    "treatment",
    Verb("treat", "weed, insect or disease product", "treat PRODUCT 5.5floz front wind 4mph temp 68F", pin="t"),
    applies=True,
)
@dataclass(frozen=True, slots=True, kw_only=True)
class Treatment(Entry):
    """One product, or several mixed in one tank: the others stand in `also`."""

    product: str = product(TREATMENTS, usual=False)
    amount_g: float | None = measure(Dimension.MASS, dose=True)
    amount_ml: float | None = measure(Dimension.VOLUME, dose=True)
    rate_g_per_m2: float | None = measure(Dimension.MASS_RATE, dose=True)
    rate_ml_per_m2: float | None = measure(Dimension.VOLUME_RATE, dose=True)
    also: tuple[Dose, ...] = ()
    wind_m_s: float | None = measure(Dimension.SPEED, keyword="wind", high=45)
    temp_c: float | None = measure(Dimension.TEMPERATURE, keyword="temp", low=-60, high=60)
    edge_kept: bool = mark("edge kept")
    ready_to_use: bool = mark("rtu")

    @classmethod
    def settle(cls, values: dict[str, Any]) -> None:
        """A treatment names its product, even if only as `unknown`."""
        need_product("treat", values)
        one_amount(values)
