"""What one zone got between two days: plant food, seed, water and money, and what of it could not be counted.

All per square metre of the whole zone, spots and trifles included.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date

from journal.reckon.dose import doses, is_spot, mean_g_per_m2, total_g, total_ml, treated_m2
from journal.reckon.feeding import Nutrients, holds_nitrogen, nutrients
from journal.reckon.money import zone_costs
from journal.record.dose import Dose
from journal.record.entry import Entry
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.treatment import UNKNOWN, Treatment
from journal.record.kinds.watering import Watering
from journal.record.lawn import Lawn
from journal.season.history import Past
from journal.season.water import Irrigation, rain_days, water_days


@dataclass(frozen=True, slots=True)
class Sums:
    """Nutrients and seed in g per m2 of the zone, water and rain in mm, cost in money.

    `rain_on_file` tells a dry year from one in which nobody wrote the rain down.
    """

    n: float
    soluble_n: float
    p2o5: float
    k2o: float
    seed: float
    water_mm: float
    rain_mm: float
    cost: float
    rain_on_file: bool


@dataclass(frozen=True, slots=True)
class NitrogenRow:
    """An entry that put nitrogen down; g per m2 of the zone, None where not known."""

    entry: Entry
    product: str
    n_g_per_m2: float | None


@dataclass(frozen=True, slots=True)
class Uncounted:
    """Something that was logged and that no sum holds, and why."""

    entry: Entry
    what: str
    why: str


@dataclass(frozen=True, slots=True)
class _Portion:
    """One product of one entry as it came to the zone; `why` is '' where all of it could be counted."""

    entry: Entry
    dose: Dose
    with_nitrogen: bool
    brought: Nutrients | None
    seed: float
    why: str


@dataclass(frozen=True, slots=True)
class Gathered:
    """All that came to a zone in a time, ready to be summed over any part of it. Rain by day (an ordinal).

    `spots` are waterings of a spot, which are no water on the zone.
    """

    portions: tuple[_Portion, ...]
    waterings: tuple[Irrigation, ...]
    spots: tuple[Watering, ...]
    rain: Mapping[int, float]
    costs: tuple[tuple[Entry, float | None], ...]

    def sums(self, first: date, last: date) -> Sums:
        """From one day to the other, both included."""
        begin, end = first.toordinal(), last.toordinal()
        portions = [one for one in self.portions if begin <= one.entry.day <= end]
        brought = [one.brought for one in portions if one.brought is not None]
        rain = [depth for day, depth in self.rain.items() if begin <= day <= end]
        return Sums(
            n=sum((one.n for one in brought), 0.0),
            soluble_n=sum((one.soluble_n for one in brought), 0.0),
            p2o5=sum((one.p2o5 for one in brought), 0.0),
            k2o=sum((one.k2o for one in brought), 0.0),
            seed=sum((one.seed for one in portions), 0.0),
            water_mm=sum((one.depth_mm or 0.0 for one in self.waterings if begin <= one.day <= end), 0.0),
            rain_mm=sum(rain, 0.0),
            cost=sum((part or 0.0 for entry, part in self.costs if begin <= entry.day <= end), 0.0),
            rain_on_file=bool(rain),
        )

    def nitrogen(self, first: date, last: date) -> tuple[NitrogenRow, ...]:
        """Every entry that put nitrogen down, oldest first; the products of one tank count together."""
        by_entry: dict[str, list[_Portion]] = {}
        for one in self.portions:
            if one.with_nitrogen and first <= one.entry.date <= last:
                by_entry.setdefault(one.entry.id, []).append(one)
        return tuple(_nitrogen_row(group) for group in by_entry.values())

    def uncounted(self, first: date, last: date) -> tuple[Uncounted, ...]:
        """What was logged and is in no sum, oldest first; a watering of no known depth once, however often it ran."""
        found = [Uncounted(one.entry, one.dose.product, one.why) for one in self.portions if one.why]
        days = first.toordinal(), last.toordinal()
        dry = {one.entry.id: one.entry for one in self.waterings if one.depth_mm is None and _in(one.day, days)}
        found += [
            Uncounted(entry, "cost", "an area is not known, so it can't be split among its zones.")
            for entry, part in self.costs
            if part is None
        ]
        found += [Uncounted(entry, entry.kind, "only a spot was watered.") for entry in self.spots]
        found = [one for one in found if first <= one.entry.date <= last]
        found += [Uncounted(entry, entry.kind, "how much water it gave is not known.") for entry in dry.values()]
        return tuple(sorted(found, key=lambda one: (one.entry.day, one.entry.id)))


def gathered(past: Past, first: date, last: date) -> Gathered:
    """What the zone of this past got from one day to the other, both included, none after the past's own."""
    begin, end = first.toordinal(), min(last, past.date).toordinal()
    return Gathered(
        portions=tuple(portion for entry in _applied(past, begin, end) for portion in _portions(entry, past)),
        waterings=tuple(one for day in water_days(past, begin, end).values() for one in day),
        spots=tuple(entry for entry in past[Watering].between(begin, end) if is_spot(entry)),
        rain=rain_days(past, begin, end),
        costs=tuple(zone_costs(past.history, past.zone, begin, end)),
    )


def _in(day: int, days: tuple[int, int]) -> bool:
    return days[0] <= day <= days[1]


def _applied(past: Past, first: int, last: int) -> list[Entry]:
    found: list[Entry] = [entry for kind in (Feeding, Treatment, Seeding) for entry in past[kind].between(first, last)]
    return sorted(found, key=lambda entry: (entry.day, entry.id))


def _portions(entry: Entry, past: Past) -> Iterator[_Portion]:
    lawn = past.history.lawn(entry.date)
    for dose in doses(entry):
        product = lawn.product(dose.product)
        grams = mean_g_per_m2(dose, entry, lawn)
        brought = nutrients(product, grams) if product is not None and grams is not None else None
        seed = grams if isinstance(entry, Seeding) and grams is not None else 0.0
        with_nitrogen = product is not None and holds_nitrogen(product)
        yield _Portion(entry, dose, with_nitrogen, brought, seed, _why_not(dose, entry, lawn))


def _why_not(dose: Dose, entry: Entry, lawn: Lawn) -> str:
    """Why what a dose brought is not in the sums; '' where it is, or where it brings nothing that they hold."""
    product = lawn.product(dose.product)
    if not dose.said:
        return "no amount was written down."
    if dose.product == UNKNOWN or product is None:
        return "what it was is not known." if dose.product == UNKNOWN else "it is not in the shed."
    if product.analysis is None and holds_nitrogen(product):
        return f"its analysis is not in the shed: set {product.name} analysis 24-0-10."
    sums_hold_it = isinstance(entry, Seeding) or any(product.analysis or ())
    if mean_g_per_m2(dose, entry, lawn) is not None:
        return ""
    if not sums_hold_it and (total_g(dose, entry, lawn) or total_ml(dose, entry, lawn)):
        return ""
    if sums_hold_it and (dose.amount_ml is not None or dose.rate_ml_per_m2 is not None):
        return "it was measured by volume, and an analysis counts by weight."
    if is_spot(entry) and treated_m2(entry, lawn) is None:
        return "the size of the spot is not known."
    return "an area is not known, so what came on each part of the lawn is not either."


def _nitrogen_row(group: list[_Portion]) -> NitrogenRow:
    """Of one entry; nothing is known of the whole where a product of it can't be counted."""
    known = [portion.brought.n for portion in group if portion.brought is not None]
    names = " + ".join(portion.dose.product for portion in group)
    return NitrogenRow(group[0].entry, names, sum(known) if len(known) == len(group) else None)
