"""Whether what went down is what the label asks: a spreader or sprayer that is off shows in the amounts used.

One product on one zone on one day is one application, in however many passes; a part or a share of a zone is judged
by itself. Spots are left out, and so is what a service put down with its own machine. Where the shed has no rate of a
feeding's label, its nitrogen tells whether the amount or the area can be right.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

from journal.facts.calibration import OFF_PERCENT
from journal.facts.factors import g_per_m2
from journal.reckon.dose import covered_share, doses, is_spot, rate_g_per_m2, rate_ml_per_m2
from journal.reckon.feeding import FEEDING_KINDS
from journal.record.entry import Entry
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.treatment import Treatment
from journal.record.lawn import Lawn
from journal.record.product import Product, Range
from journal.record.unit import Dimension
from journal.season.history import History

SANE_N = (g_per_m2(0.2), g_per_m2(1.5))
"""Nitrogen at once that lies outside comes from a slip in the amount or the area, most likely: judgment."""

_NOISE = 1e-9


@dataclass(frozen=True, slots=True)
class SpreadCheck:
    """An application outside its range: `by_label`, else what its nitrogen may come to. Rates in g or mL per m2.

    `off_percent` is how far it is from the nearer end: below 0 for too little. `light` where the owner meant that.
    """

    entries: tuple[Entry, ...]
    product: str
    zones: tuple[str, ...]
    rate: float
    range: Range
    by_label: bool
    off_percent: float
    light: bool


@dataclass(frozen=True, slots=True)
class _Pass:
    """One entry's product on one zone; `rate` None where it can't be known."""

    entry: Entry
    product: str
    rate: float | None
    range: Range
    by_label: bool

    @property
    def application(self) -> tuple[str, int, str]:
        """What it belongs to: the product's of that day, or its own where it covered a part of the zone."""
        return self.product, self.entry.day, "" if covered_share(self.entry) == 1 else self.entry.id


def spread_checks(history: History, first: date, last: date) -> tuple[SpreadCheck, ...]:
    """What was put down too thickly or too thinly between two days, both included, oldest first."""
    zones: dict[tuple[_Pass, ...], list[str]] = {}
    for zone in history.lawn(last).zone_names:
        for passes in _applications(history, zone, first, last):
            zones.setdefault(passes, []).append(zone)
    found = [check for passes, names in zones.items() if (check := _check(passes, tuple(names))) is not None]
    return tuple(sorted(found, key=lambda check: (check.entries[0].day, check.entries[0].id, check.product)))


def _applications(history: History, zone: str, first: date, last: date) -> list[tuple[_Pass, ...]]:
    past = history.on(zone, last)
    begin, end = first.toordinal(), last.toordinal()
    entries: list[Entry] = [*past[Feeding].between(begin, end), *past[Treatment].between(begin, end)]
    found: dict[tuple[str, int, str], list[_Pass]] = {}
    for entry in sorted(entries, key=lambda entry: (entry.day, entry.id)):
        for one in _passes(entry, history.lawn(entry.date)):
            found.setdefault(one.application, []).append(one)
    return [tuple(passes) for passes in found.values()]


def _passes(entry: Entry, lawn: Lawn) -> Iterator[_Pass]:
    if is_spot(entry) or entry.by_service:
        return
    for dose in doses(entry):
        product = lawn.product(dose.product)
        wanted = None if product is None else product.rate or _sane(product)
        if product is not None and wanted is not None:
            rate = rate_g_per_m2 if wanted.dimension is Dimension.MASS_RATE else rate_ml_per_m2
            yield _Pass(entry, dose.product, rate(dose, entry, lawn), wanted, product.rate is not None)


def _sane(product: Product) -> Range | None:
    """The rates at which a feeding brings an amount of nitrogen that can be meant."""
    if product.kind not in FEEDING_KINDS or not product.nitrogen:
        return None
    low, high = (n / product.nitrogen for n in SANE_N)
    return Range(low, high, Dimension.MASS_RATE)


def _check(passes: tuple[_Pass, ...], zones: tuple[str, ...]) -> SpreadCheck | None:
    """None inside the range and a little beside it; with a pass of unknown amount only too much can be told."""
    known = [one.rate for one in passes if one.rate is not None]
    rate, wanted = sum(known), passes[-1].range
    nearer = wanted.high if rate > wanted.high else max(rate, wanted.low)
    off = (rate / nearer - 1) * 100 if nearer else 0.0
    if abs(off) <= OFF_PERCENT + _NOISE or not known or (off < 0 and len(known) < len(passes)):
        return None
    entries = tuple(dict.fromkeys(one.entry for one in passes if one.rate is not None))
    light = off < 0 and any(isinstance(entry, Feeding) and entry.light for entry in entries)
    return SpreadCheck(entries, passes[-1].product, zones, rate, wanted, passes[-1].by_label, off, light)
