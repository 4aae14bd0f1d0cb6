"""What the work that comes next takes from the shelf: seed for a sowing that is meant, fertilizer for a feeding due."""

import math
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum

from journal.reckon.dose import doses, is_spot, rate_g_per_m2
from journal.reckon.feed_due import feeding_season
from journal.reckon.feed_months import window_ahead
from journal.reckon.feed_season import last_useful
from journal.reckon.feedings import (
    FEEDINGS,
    fed_since,
    last_feeding,
    minimum_gap_days,
    step_days,
    usual_fertilizer,
    year_is_fed,
)
from journal.reckon.seeding import sowing_rate
from journal.reckon.threshold import in_force
from journal.record.entry import Entry
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.intention import Intention
from journal.record.kinds.seeding import Seeding
from journal.record.product import Product
from journal.record.unit import Dimension
from journal.season.growth import GROWING, Window, began, growing
from journal.season.history import Past
from journal.season.remembered import remembered
from journal.season.stand import day_zero, intentions, mix_of, sown

NEEDS: tuple[type[Entry], ...] = (*FEEDINGS, Seeding, Intention, *GROWING)
"""What this file looks at."""


class For(StrEnum):
    """What it is needed for."""

    SOWING = "the sowing meant"
    FEEDING = "the next feeding"


@dataclass(frozen=True, slots=True)
class Need:
    """Grams of a product for one zone. `day` is the one meant, or that on which the feeding opened."""

    product: Product
    grams: float
    why: For
    day: date


@remembered
def needs(past: Past) -> tuple[Need, ...]:
    """What the zone's next open work needs, as far as product, rate and area are known."""
    zone = past.lawn.zone(past.zone)
    if zone is None or not zone.area_m2:
        return ()
    wanted = [one for one in (_sowing(past), _feeding(past)) if one is not None]
    return tuple(Need(product, rate * zone.area_m2, why, day) for product, rate, why, day in wanted)


_Wanted = tuple[Product, float, For, date]


def _sowing(past: Past) -> _Wanted | None:
    meant = next(iter(intentions(past, "seed")), None)
    if meant is None or meant.target is None:
        return None
    ahead = math.ceil(in_force(past.lawn, "stock-short", "ahead-days"))
    if (meant.target - past.date).days > ahead:
        return None
    last = sown(past)
    name = meant.product or (last.product if last else "")
    product = past.lawn.product(name) if name else None
    rate = sowing_rate(product, mix_of(past.lawn, name)) if product else None
    return None if product is None or rate is None else (product, rate.g_per_m2, For.SOWING, meant.target)


def _feeding(past: Past) -> _Wanted | None:
    """From when the plan opens it; of what was fed last, else at the label's low rate."""
    growth = feeding_season(past)
    if growth is None or began(past) is None or not growing(past) or past.date > last_useful(past, growth):
        return None
    opens = _opens_by_months(past, growth) if past.lawn.feeding == "months" else _opens(past)
    if opens is None or past.date < opens or year_is_fed(past):
        return None
    product = usual_fertilizer(past)
    rate = _usual_rate(past, product) if product else None
    return None if product is None or rate is None else (product, rate, For.FEEDING, opens)


def _opens(past: Past) -> date | None:
    lawn, start, kept = past.lawn, began(past), fed_since(past)
    if start is None or kept is None:
        return None
    offered, overdue = (math.ceil(in_force(lawn, "feed-overdue", name)) for name in ("step-days", "days"))
    found = [day + timedelta(min(offered, overdue)) for day in (start, kept)]
    last = last_feeding(past)
    if last is not None:
        found.append(last.date + timedelta(step_days(last, lawn)))
    return max([*found, *_of_age(past)])


def _opens_by_months(past: Past, growth: Window) -> date | None:
    """The first day of the window that runs unfed, once the gap after the last feeding is over."""
    last = last_feeding(past)
    window = window_ahead(past, growth, last.date if last else date.min)
    if window is None:
        return None
    gap = [last.date + timedelta(minimum_gap_days(last, past.lawn))] if last else []
    return max([window.first, *gap, *_of_age(past)])


def _of_age(past: Past) -> list[date]:
    """From when a sown zone is fed like any other."""
    zero = day_zero(past)
    days = math.ceil(in_force(past.lawn, "feed-overdue", "seeded-days")) + 1
    return [] if zero is None else [zero + timedelta(days)]


def _usual_rate(past: Past, product: Product) -> float | None:
    label = product.rate if product.rate and product.rate.dimension is Dimension.MASS_RATE else None
    last = past[Feeding].last_where(lambda one: one.product == product.name and not is_spot(one))
    used = rate_g_per_m2(doses(last)[0], last, past.history.lawn(last.date)) if last else None
    if used is not None:
        return min(max(used, label.low), label.high) if label else used
    return label.low if label else None
