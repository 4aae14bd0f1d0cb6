"""How much nitrogen the next feeding should bring, and of which product."""

from dataclasses import dataclass
from datetime import date, timedelta

from journal.plan.measure import nitrogen
from journal.plan.offer import Spread
from journal.reckon.feed_holds import rest_over
from journal.reckon.feed_months import windows
from journal.reckon.feed_season import last_useful
from journal.reckon.feeding import product_for_nitrogen
from journal.reckon.feedings import nitrogen_left
from journal.reckon.threshold import in_force, in_force_by_slow_share
from journal.record.product import Product
from journal.record.unit import Dimension
from journal.season.growth import Window
from journal.season.history import Past
from journal.season.local import most_n, most_soluble_n
from journal.season.stand import new_grass


@dataclass(frozen=True, slots=True)
class FeedDose:
    """The nitrogen to aim at in g/m2, and how the product brings it (None without a product)."""

    n_g_per_m2: float
    spread: Spread | None


def dose(past: Past, product: Product | None, first: date, growth: Window) -> FeedDose | None:
    """What is left of the year's nitrogen, shared among the feedings that still fit; None for a product not known."""
    slow = product.slow if product else None
    share = nitrogen_left(past) / feedings_left(past, slow, first, growth)
    soluble = in_force(past.lawn, "feed-dose", "most-soluble-new" if new_grass(past) else "most-soluble")
    soluble = most_soluble_n(past.lawn, soluble)
    most = most_n(past.lawn, in_force(past.lawn, "feed-dose", "most"))
    wanted = min(most, share, soluble / max(1e-9, 1 - (slow or 0.0)))
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
