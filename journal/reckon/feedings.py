"""Feedings as a lawn counts them: all the nitrogen of one day, and how long it lasts.

A feeding covers at least half the zone with at least 0.2 lb N per 1,000 sq ft (judgment). A spot, lime, iron or potash
alone is none. A job done in parts on following days is one feeding, on its last day. A feeding without an amount
counts for the interval, not for the dose.
"""

import math
from bisect import bisect_left, bisect_right
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

from journal.facts.factors import g_per_m2
from journal.facts.mixture import nitrogen_cap
from journal.facts.rounding import reaches
from journal.reckon.dose import covered_share, doses, is_spot
from journal.reckon.feeding import holds_nitrogen, holds_phosphate, is_starter, nutrients_mean
from journal.reckon.threshold import in_force, in_force_by_slow_share
from journal.record.entry import Entry
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.treatment import Treatment
from journal.record.lawn import Lawn
from journal.record.product import Product
from journal.record.unit import Dimension
from journal.season.history import NO_DAY, History, Past
from journal.season.local import slow_enough, year_n
from journal.season.stand import stand_mix

FEEDINGS: tuple[type[Entry], ...] = (Feeding, Treatment)
"""What this file looks at."""

LEAST_N = g_per_m2(0.2)
LEAST_SHARE = 0.5
NEAR_DAYS = 100
"""The newest feeding is looked for in so many days first."""
_ROUNDING = 1e-9


@dataclass(frozen=True, slots=True)
class FeedingDay:
    """One feeding of one zone. Nitrogen in g per m2 of what was covered; None when an amount is not known.

    `slow_share` is the slow-release share of the nitrogen, 0 to 1; None when no product says.
    """

    date: date
    n_g_per_m2: float | None
    soluble_n_g_per_m2: float | None
    slow_share: float | None
    entries: tuple[Entry, ...]
    starter: bool

    @property
    def day(self) -> int:
        """The date as an ordinal."""
        return self.date.toordinal()


@dataclass(frozen=True, slots=True)
class _Portion:
    """What one product of one entry brought, as a mean over the zone; None when not known."""

    n: float | None
    soluble: float | None
    slow: float | None
    starter: bool


def feeding_days(past: Past, since: int) -> tuple[FeedingDay, ...]:
    """The feedings of this zone from that day (an ordinal) on, oldest first."""
    groups = _jobs(past, since)
    return tuple(feeding for group in groups if (feeding := _known(group, past)) is not None)


def _known(job: list[Entry], past: Past) -> FeedingDay | None:
    """The same job is asked about over and over, on many days."""
    always = past.history.kept(past.zone, NO_DAY)
    key = "feeding", *(entry.id for entry in job)
    if key not in always:
        always[key] = _feeding(job, past)
    found: FeedingDay | None = always[key]
    return found


def last_feeding(past: Past) -> FeedingDay | None:
    """The newest feeding of this zone."""
    for back in (NEAR_DAYS, 4 * NEAR_DAYS, past.day):
        found = feeding_days(past, past.day - back)
        if found:
            return found[-1]
    return None


def fed_since(past: Past) -> date | None:
    """From which day on feedings that are not logged count as not done: one of nitrogen before the book counts too."""
    return fed_since_in(past.history, past.zone)


def fed_since_in(history: History, zone: str) -> date | None:
    """The same for a zone of a book."""
    begun = history.kept_for(zone)
    if begun is None or history.kept_for(zone, *FEEDINGS) == begun:
        return begun
    fed = _nitrogen_entries(history.on(zone, begun), date.min.toordinal())
    return min(begun, fed[0].date) if fed else begun


def nitrogen_of_year(past: Past, year: int) -> float:
    """All the nitrogen that zone got in a calendar year, in g per m2 of the zone, spots and trifles included."""
    return nitrogen_between(past, date(year, 1, 1).toordinal(), date(year, 12, 31).toordinal())


def nitrogen_between(past: Past, first: int, last: int) -> float:
    """The same from one day (an ordinal) to another, both included."""
    total = 0.0
    for entry in (*past[Feeding].between(first, last), *past[Treatment].between(first, last)):
        lawn = past.history.lawn(entry.date)
        for dose in doses(entry):
            brought = nutrients_mean(dose, entry, lawn)
            total += brought.n if brought else 0.0
    return total


def minimum_gap_days(feeding: FeedingDay, lawn: Lawn) -> int:
    """Days to leave after a feeding: by its slow-release share, shorter in proportion for a small dose, rounded up."""
    base = in_force_by_slow_share(lawn, "feed-too-soon", "days", feeding.slow_share)
    full = in_force(lawn, "feed-too-soon", "full-dose")
    scale = 1.0 if feeding.n_g_per_m2 is None else min(1.0, feeding.n_g_per_m2 / full)
    return math.ceil(base * scale - _ROUNDING)


def step_days(feeding: FeedingDay, lawn: Lawn) -> int:
    """Days from a feeding until the next is offered: by its slow share, before that is late, after the gap it needs."""
    offered = in_force_by_slow_share(lawn, "feed-overdue", "step-days", feeding.slow_share)
    return max(min(math.ceil(offered), overdue_days(feeding, lawn)), minimum_gap_days(feeding, lawn))


def overdue_days(feeding: FeedingDay, lawn: Lawn) -> int:
    """Days from a feeding after which the next one is late, by its slow share."""
    return math.ceil(in_force_by_slow_share(lawn, "feed-overdue", "days", feeding.slow_share))


def nitrogen_left(past: Past) -> float:
    """What is left of the calendar year's nitrogen for the zone, in g/m2; never below 0."""
    return max(0.0, year_cap(past) - nitrogen_of_year(past, past.date.year))


def year_cap(past: Past) -> float:
    """The most nitrogen of a calendar year in g/m2: by the grass of the zone, or the local rule's where less."""
    return year_n(past.lawn, nitrogen_cap(stand_mix(past)).nitrogen_cap_g_per_m2)


def year_is_fed(past: Past) -> bool:
    """Whether too little is left of the year's nitrogen for another feeding.

    Less than the owner's least, or than the usual fertilizer brings at its label's low rate.
    """
    left = nitrogen_left(past)
    if not reaches(left, in_force(past.lawn, "feed-overdue", "cap-left")):
        return True
    least = least_nitrogen(usual_fertilizer(past))
    return least is not None and least > left


def least_nitrogen(product: Product | None) -> float | None:
    """The nitrogen in g/m2 that a product brings at its label's low rate; None where nothing says."""
    if product is None or product.rate is None or product.rate.dimension is not Dimension.MASS_RATE:
        return None
    return product.rate.low * product.nitrogen


def usual_fertilizer(past: Past) -> Product | None:
    """The plain fertilizer fed last on the zone, else the first in the shed; never a starter or a weed-and-feed.

    One that nothing speaks against goes first: slow enough for a local rule, and without phosphorus.
    """
    lawn = past.lawn

    def plain(product: Product | None) -> bool:
        return product is not None and product.kind == "fertilizer" and not is_starter(product, lawn)

    last = past[Feeding].last_where(lambda feeding: plain(lawn.product(feeding.product)))
    named = [lawn.product(last.product)] if last else []
    found = [product for product in (*named, *lawn.products) if product is not None and plain(product)]
    return min(found, key=lambda product: not _allowed(product, lawn), default=None)


def _allowed(product: Product, lawn: Lawn) -> bool:
    return slow_enough(lawn, product) and not holds_phosphate(product, lawn)


def _nitrogen_entries(past: Past, since: int) -> list[Entry]:
    """Entries that put nitrogen down on the zone or a good part of it, oldest first."""
    tracks = past[Feeding].track, past[Treatment].track
    always = past.history.kept(past.zone, NO_DAY)
    if "nitrogen" not in always:
        found: list[Entry] = sorted((*tracks[0].entries, *tracks[1].entries), key=lambda one: (one.day, one.id))
        bringing = [one for one in found if not is_spot(one) and any(_with_nitrogen(one, past))]
        always["nitrogen"] = [one.day for one in bringing], bringing
    days, entries = always["nitrogen"]
    return list(entries[bisect_left(days, since) : bisect_right(days, past.day)])


def _with_nitrogen(entry: Entry, past: Past) -> Iterator[bool]:
    lawn = past.history.lawn(entry.date)
    for dose in doses(entry):
        product = lawn.product(dose.product)
        yield product is not None and holds_nitrogen(product)


def _jobs(past: Past, since: int) -> list[list[Entry]]:
    """Entries of one day together; parts of one job on following days together."""
    jobs: list[list[Entry]] = []
    for entry in _nitrogen_entries(past, since):
        if jobs and _same_job(jobs[-1][-1], entry):
            jobs[-1].append(entry)
        else:
            jobs.append([entry])
    return jobs


def _same_job(before: Entry, entry: Entry) -> bool:
    apart = entry.day - before.day
    if apart == 0:
        return True
    continued = bool(before.part) and bool(entry.part) and before.part != entry.part
    return apart == 1 and continued and _names(before) == _names(entry)


def _names(entry: Entry) -> frozenset[str]:
    return frozenset(dose.product for dose in doses(entry))


def _feeding(job: list[Entry], past: Past) -> FeedingDay | None:
    covered = min(1.0, sum(covered_share(entry) for entry in job))
    if covered < LEAST_SHARE - _ROUNDING:
        return None
    portions = [portion for entry in job for portion in _portions(entry, past.history.lawn(entry.date))]
    known = [portion.n for portion in portions if portion.n is not None]
    total = sum(known) / covered if len(known) == len(portions) else None
    if total is not None and not reaches(total, LEAST_N):
        return None
    soluble = sum(portion.soluble or 0.0 for portion in portions) / covered
    return FeedingDay(
        date=job[-1].date,
        n_g_per_m2=total,
        soluble_n_g_per_m2=None if total is None else soluble,
        slow_share=_slow_share(portions),
        entries=tuple(job),
        starter=any(portion.starter for portion in portions),
    )


def _portions(entry: Entry, lawn: Lawn) -> Iterator[_Portion]:
    for dose in doses(entry):
        product = lawn.product(dose.product)
        if product is None or not holds_nitrogen(product):
            continue
        brought = nutrients_mean(dose, entry, lawn)
        starter = is_starter(product, lawn)
        if brought is None:
            yield _Portion(None, None, product.slow, starter)
        else:
            yield _Portion(brought.n, brought.soluble_n, product.slow, starter)


def _slow_share(portions: list[_Portion]) -> float | None:
    """Weighted by nitrogen; by product where an amount is missing. A product that says nothing counts as quick."""
    if all(portion.slow is None for portion in portions):
        return None
    weights = [portion.n for portion in portions if portion.n is not None]
    if len(weights) < len(portions) or not sum(weights):
        weights = [1.0] * len(portions)
    return sum(weight * (p.slow or 0.0) for weight, p in zip(weights, portions, strict=True)) / sum(weights)
