"""Fertilizer, lime and supplements as they were put down, beside the range of rates on their labels.

Passes of one product over the same ground on one day count together; each part, share or spot is ground of its own.
Products against weeds, insects or disease are not among them: their label's rate is law.
"""

from dataclasses import dataclass
from datetime import date

from journal.reckon.dose import doses, is_spot, rate_g_per_m2, rate_ml_per_m2
from journal.reckon.protection import is_protective
from journal.record.entry import Entry
from journal.record.kinds.feeding import Feeding
from journal.record.product import Product, Range
from journal.record.unit import Dimension
from journal.season.history import Past


@dataclass(frozen=True, slots=True)
class Rated:
    """One product on one piece of ground on one day, at a rate in the unit of its label's range (g/m2 or mL/m2).

    `light` is True where a line said that it was meant to be light.
    """

    product: Product
    label: Range
    date: date
    rate: float
    light: bool
    entries: tuple[Entry, ...]


_Ground = tuple[date, str, str, float | None, str]
"""Day, product, part, share, and the entry of a spot."""


def put_downs(past: Past, since: int) -> tuple[Rated, ...]:
    """Those of the zone from that day (an ordinal) on whose rate is known and whose label says one, oldest first."""
    found: dict[_Ground, Rated] = {}
    for entry in past[Feeding].since(since):
        lawn = past.history.lawn(entry.date)
        for dose in doses(entry):
            product = lawn.product(dose.product)
            if product is None or product.rate is None or is_protective(product):
                continue
            by_mass = product.rate.dimension is Dimension.MASS_RATE
            rate = (rate_g_per_m2 if by_mass else rate_ml_per_m2)(dose, entry, lawn)
            if rate is None:
                continue
            key = (entry.date, product.name, entry.part, entry.share, entry.id if is_spot(entry) else "")
            one = found.get(key) or Rated(product, product.rate, entry.date, 0.0, False, ())
            found[key] = Rated(
                product, product.rate, entry.date, one.rate + rate, one.light or entry.light, (*one.entries, entry)
            )
    return tuple(found.values())
