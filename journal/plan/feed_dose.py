"""How much nitrogen the next feeding should bring, and of which product."""

from dataclasses import dataclass
from datetime import date, timedelta

from journal.facts.factors import g_per_m2
from journal.facts.mixture import nitrogen_cap
from journal.plan.feed_window import rest_over, windows
from journal.plan.measure import nitrogen
from journal.plan.offer import Spread
from journal.reckon.feeding import is_starter, product_for_nitrogen
from journal.reckon.feedings import nitrogen_of_year
from journal.reckon.threshold import in_force, in_force_by_slow_share
from journal.record.kinds.feeding import Feeding
from journal.record.product import Product
from journal.record.unit import Dimension
from journal.season.growth import Window
from journal.season.history import Past
from journal.season.stand import new_grass, stand_mix

MOST = g_per_m2(0.9)
"""The most nitrogen in one feeding: Univ. of Maryland Extension, Lawn Fertilizer Schedule Table, 2023."""

MOST_SOLUBLE = g_per_m2(0.7)
"""The most soluble nitrogen in one feeding: Univ. of Maryland Extension, Lawn Fertilizer Schedule Table, 2023."""

MOST_SOLUBLE_NEW = g_per_m2(0.5)
"""The same on new grass: from memory."""


@dataclass(frozen=True, slots=True)
class FeedDose:
    """The nitrogen to aim at in g/m2, and how the product brings it (None without a product)."""

    n_g_per_m2: float
    spread: Spread | None


def nitrogen_used(past: Past) -> float:
    """Nitrogen of the calendar year so far, g/m2."""
    return nitrogen_of_year(past, past.date.year)


def cap_left(past: Past) -> float:
    """What is left of the year's nitrogen for this grass, g/m2; never below 0."""
    return max(0.0, nitrogen_cap(stand_mix(past)).nitrogen_cap_g_per_m2 - nitrogen_used(past))


def usual_product(past: Past) -> Product | None:
    """The plain fertilizer fed last on the zone, else the first in the shed; never a starter or a weed-and-feed."""
    lawn = past.lawn

    def plain(product: Product | None) -> bool:
        return product is not None and product.kind == "fertilizer" and not is_starter(product, lawn)

    last = past[Feeding].last_where(lambda feeding: plain(lawn.product(feeding.product)))
    named = [lawn.product(last.product)] if last else []
    return next((product for product in (*named, *lawn.products) if plain(product)), None)


def last_useful(past: Past, growth: Window) -> date:
    """The last day of the season for a feeding: not in the last three weeks, except by months or if the owner does."""
    if past.lawn.late_fall or past.lawn.feeding == "months":
        return growth[1]
    return growth[1] - timedelta(round(in_force(past.lawn, "feed-overdue", "late-days")))


def dose(past: Past, product: Product | None, first: date, growth: Window) -> FeedDose | None:
    """What is left of the year's nitrogen, shared among the feedings that still fit; None for a product not known."""
    slow = product.slow if product else None
    share = cap_left(past) / feedings_left(past, slow, first, growth)
    soluble = MOST_SOLUBLE_NEW if new_grass(past) else MOST_SOLUBLE
    wanted = min(MOST, share, soluble / max(1e-9, 1 - (slow or 0.0)))
    if product is None:
        return FeedDose(wanted, None)
    rate = product_for_nitrogen(product, wanted)
    if rate is None:
        return None
    if product.rate and product.rate.dimension is Dimension.MASS_RATE:
        rate = min(max(rate, product.rate.low), product.rate.high)
    brought = rate * product.nitrogen
    return FeedDose(brought, Spread(product, rate, nitrogen(brought, past.lawn), round_down=True))


def feedings_left(past: Past, slow: float | None, first: date, growth: Window) -> int:
    """How many feedings fit from that day to the end of the season, itself counted; at least 1.

    By the months' windows, or at the product's shortest interval with the summer rest left out.
    """
    if past.lawn.feeding == "months":
        return max(1, sum(1 for window in windows(past, growth) if window.last >= first))
    every = timedelta(round(in_force_by_slow_share(past.lawn, "feed-overdue", "step-days", slow)))
    count, day, last = 0, rest_over(past, first), last_useful(past, growth)
    while day <= last:
        count, day = count + 1, rest_over(past, day + every)
    return max(1, count)
