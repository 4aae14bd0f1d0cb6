"""Sowing."""

from dataclasses import dataclass
from typing import Any

from journal.record.entry import Entry, Verb, entry_kind
from journal.record.kinds.feeding import need_product, one_amount
from journal.record.slot import mark, measure, product
from journal.record.unit import Dimension


@entry_kind("seeding", Verb("seed", "sow", "seed PRODUCT 9lb front"), applies=True)
@dataclass(frozen=True, slots=True, kw_only=True)
class Seeding(Entry):
    """Overseeding unless `new` (bare soil); `slit` into grooves; `dormant` after growth has ended."""

    product: str = product(("seed",))
    amount_g: float | None = measure(Dimension.MASS, dose=True)
    rate_g_per_m2: float | None = measure(Dimension.MASS_RATE, dose=True)
    new: bool = mark("new")
    slit: bool = mark("slit")
    dormant: bool = mark("dormant")

    @classmethod
    def settle(cls, values: dict[str, Any]) -> None:
        """A sowing names its seed."""
        need_product("seed", values)
        one_amount(values)
