"""Products against weeds, insects and disease as they were put down: which they are, how strongly, and whether sprayed.

Passes of one product over one zone on one day are one application: what they brought counts together, on the ground
that they covered together. A spot stands for itself.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date

from journal.reckon.dose import covered_share, doses, is_spot, rate_g_per_m2, rate_ml_per_m2
from journal.record.dose import Dose
from journal.record.entry import Entry
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.treatment import UNKNOWN, Treatment
from journal.record.lawn import Lawn
from journal.record.product import PROTECTS, Product
from journal.record.unit import Dimension
from journal.season.history import Past

PROTECTED: tuple[type[Entry], ...] = (Treatment, Feeding)
"""What this file looks at: weed-and-feed and a starter with an active are logged as feedings too."""


@dataclass(frozen=True, slots=True)
class Application:
    """One product on one zone on one day, at a rate in the unit of its label's rate (g/m2 or mL/m2)."""

    product: Product
    date: date
    rate: float
    spot: bool
    entries: tuple[Entry, ...]


Pass = tuple[Entry, float]
"""An entry, and the rate that it brought where it went."""


def is_protective(product: Product) -> bool:
    """Whether a label against weeds, insects or disease governs it, by its kind or by an active that it holds."""
    return product.kind in PROTECTS or bool(product.actives)


def applications(past: Past, since: int) -> tuple[Application, ...]:
    """Those of the zone from that day (an ordinal) on whose rate is known and whose label says one, oldest first."""
    passes: dict[tuple[date, str], list[Pass]] = {}
    found: list[Application] = []
    for entry in sorted((e for kind in PROTECTED for e in past[kind].since(since)), key=lambda e: (e.day, e.id)):
        lawn = past.history.lawn(entry.date)
        for product, rate in _rates(entry, lawn):
            if is_spot(entry):
                found.append(Application(product, entry.date, rate, True, (entry,)))
            else:
                passes.setdefault((entry.date, product.name), []).append((entry, rate))
    for (day, name), held in passes.items():
        known = past.history.lawn(day).product(name)
        if known is not None:
            entries = tuple(dict.fromkeys(entry for entry, _ in held))
            found.append(Application(known, day, together(held), False, entries))
    return tuple(sorted(found, key=lambda one: (one.date, one.entries[-1].id)))


def together(passes: Sequence[Pass]) -> float:
    """All of it on the ground they covered; no less than passes over the same marked part brought there."""
    shares = [covered_share(entry) for entry, _ in passes]
    mean = sum(rate * share for (_, rate), share in zip(passes, shares, strict=True)) / min(1.0, sum(shares))
    whole = sum(rate for (entry, rate), share in zip(passes, shares, strict=True) if share == 1.0)
    by_part: dict[str, float] = {}
    for entry, rate in passes:
        if entry.part:
            by_part[entry.part] = by_part.get(entry.part, 0.0) + rate
    return max(mean, *(rate for _, rate in passes), *(whole + rate for rate in by_part.values()))


def _rates(entry: Entry, lawn: Lawn) -> Iterator[tuple[Product, float]]:
    for dose in doses(entry):
        product = lawn.product(dose.product)
        if product is None or product.rate is None or not is_protective(product):
            continue
        by_mass = product.rate.dimension is Dimension.MASS_RATE
        rate = (rate_g_per_m2 if by_mass else rate_ml_per_m2)(dose, entry, lawn)
        if rate is not None:
            yield product, rate


def wind_limit(entry: Treatment, lawn: Lawn) -> float | None:
    """The lowest wind in m/s that any label in the tank allows; None where none says."""
    products = (lawn.product(dose.product) for dose in doses(entry))
    limits = [p.label.wind_max_m_s for p in products if p is not None and p.label.wind_max_m_s is not None]
    return min(limits, default=None)


def protects(entry: Treatment, lawn: Lawn) -> bool:
    """Whether anything in it is such a product; one that nobody knows is taken for one."""
    products = [(dose.product, lawn.product(dose.product)) for dose in doses(entry)]
    return any(name == UNKNOWN or product is None or is_protective(product) for name, product in products)


def sprayed(entry: Treatment, lawn: Lawn) -> bool:
    """Whether any of it went out as a spray. What says neither is taken for one: a spray drifts further."""
    return entry.ready_to_use or any(_is_spray(dose, lawn.product(dose.product)) for dose in doses(entry))


def _is_spray(dose: Dose, product: Product | None) -> bool:
    if dose.amount_ml is not None or dose.rate_ml_per_m2 is not None:
        return True
    if product is not None and (product.form or product.liquid):
        return product.liquid
    return dose.amount_g is None and dose.rate_g_per_m2 is None
