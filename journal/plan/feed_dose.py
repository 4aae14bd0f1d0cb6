"""How much nitrogen the next feeding should bring, and of which product."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta
from typing import TypeVar

from journal.facts.citation import Known
from journal.facts.local_rules import LocalRules, Stated
from journal.facts.rounding import over_the_law
from journal.plan.measure import nitrogen
from journal.plan.offer import Spread
from journal.reckon.feed_holds import rest_over
from journal.reckon.feed_months import windows
from journal.reckon.feed_season import last_useful
from journal.reckon.feeding import holds_phosphate, product_for_nitrogen
from journal.reckon.feedings import LEAST_N, nitrogen_left, nitrogen_of_year
from journal.reckon.starter import need_shown
from journal.reckon.threshold import in_force, in_force_by_slow_share
from journal.record.lawn import Lawn
from journal.record.product import Product
from journal.record.unit import Dimension
from journal.season.growth import Window
from journal.season.history import Past
from journal.season.local import (
    barred_without_reason,
    least_slow_share,
    local_rules,
    most_n,
    most_soluble_n,
    slow_enough,
)
from journal.season.stand import new_grass

T = TypeVar("T")

_NOTHING = 1e-9

WATER_IN = "water it in, or feed before rain"
"""What is said with every dose: within two days, by the rule that looks for the water."""


@dataclass(frozen=True, slots=True)
class FeedDose:
    """The nitrogen to aim at in g/m2, and how the product brings it (None without a product).

    `lacking` says why there is no way to bring it with what is in the shed; '' where there is.
    """

    n_g_per_m2: float
    spread: Spread | None
    lacking: str = ""


@dataclass(frozen=True, slots=True)
class Ceiling:
    """The most nitrogen, in g/m2, that may go down at once, and who or what says so."""

    n_g_per_m2: float
    says: str


def dose(past: Past, product: Product | None, first: date, growth: Window) -> FeedDose | None:
    """What is left of the year's nitrogen, shared among the feedings that still fit; None for a product not known."""
    slow = product.slow if product else None
    share = nitrogen_left(past) / feedings_left(past, slow, first, growth)
    soluble = in_force(past.lawn, "feed-dose", "most-soluble-new" if new_grass(past) else "most-soluble")
    soluble = most_soluble_n(past.lawn, soluble)
    most = most_n(past.lawn, in_force(past.lawn, "feed-dose", "most"))
    wanted = min(most, share, soluble / max(_NOTHING, 1 - (slow or 0.0)))
    if product is None:
        return FeedDose(wanted, None)
    if product_for_nitrogen(product, wanted) is None:
        return None
    barred = too_quick(past.lawn, product) or phosphorus_unasked(past, product)
    return FeedDose(wanted, None, barred) if barred else brought(past, product, wanted, *ceilings(past, product))


def brought(past: Past, product: Product, wanted: float, *most: Ceiling) -> FeedDose:
    """So much nitrogen of a product that holds some, within its label's rates and under every ceiling.

    Where the least that its label names is above one of them, or next to nothing is left, there is nothing to spread.
    """
    label = product.rate if product.rate and product.rate.dimension is Dimension.MASS_RATE else None
    lowest = min(most, key=lambda ceiling: ceiling.n_g_per_m2)
    least = label.low * product.nitrogen if label else 0.0
    if over_the_law(least, max(0.0, lowest.n_g_per_m2)):
        return FeedDose(wanted, None, f"{product.name}: its label's least brings {_said(least, past)}; {lowest.says}")
    if over_the_law(LEAST_N, max(0.0, lowest.n_g_per_m2)):
        return FeedDose(wanted, None, f"{product.name}: {lowest.says}")
    rate = min(wanted, lowest.n_g_per_m2) / product.nitrogen
    if label:
        rate = min(max(rate, label.low), label.high)
    n = rate * product.nitrogen
    return FeedDose(n, Spread(product, rate, nitrogen(n, past.lawn), round_down=True))


def ceilings(past: Past, product: Product) -> Iterator[Ceiling]:
    """What a feeding with that product may never go over: the local rule's numbers, and what may do damage."""
    quick = max(_NOTHING, 1 - (product.slow or 0.0))
    fed = nitrogen_of_year(past, past.date.year)
    mostly_slow = 100 * (product.slow or 0.0) >= in_force(past.lawn, "feed-dose", "slow-share")
    once = in_force(past.lawn, "feed-dose", "loss-slow" if mostly_slow else "loss")
    yield Ceiling(once, f"more than {_said(once, past)} at once may burn")
    year = in_force(past.lawn, "feed-year", "loss")
    yield Ceiling(year - fed, f"{_said(fed, past)} went down this year, and {_said(year, past)} is the most")
    rules = local_rules(past.lawn)
    if rules is None:
        return
    if (most := rules.heeds(rules.most_n_g_per_m2)) is not None:
        yield Ceiling(most, f"{_allows(rules, rules.most_n_g_per_m2)} {_said(most, past)} at once")
    if (soluble := rules.heeds(rules.most_soluble_n_g_per_m2)) is not None:
        who = _allows(rules, rules.most_soluble_n_g_per_m2)
        yield Ceiling(soluble / quick, f"{who} {_said(soluble, past)} of soluble nitrogen at once")
    if (by_law := rules.heeds(rules.year_n_g_per_m2)) is not None:
        who = _allows(rules, rules.year_n_g_per_m2)
        yield Ceiling(by_law - fed, f"{_said(fed, past)} went down this year, and {who} {_said(by_law, past)}")


def too_quick(lawn: Lawn, product: Product) -> str:
    """Why a local rule on slow nitrogen speaks against it; '' where none does, or its slow share was never entered."""
    rules, least = local_rules(lawn), least_slow_share(lawn, product)
    if rules is None or least is None or slow_enough(lawn, product):
        return ""
    asks = _who(rules, rules.least_slow_share, "asks")
    return f"{product.name}: {100 * (product.slow or 0.0):.3g} % of its nitrogen is slow; {asks} {100 * least:.3g} %"


def phosphorus_unasked(past: Past, product: Product) -> str:
    """Why a local rule on phosphorus speaks against it on an established lawn; '' where none does or a test asks it."""
    lawn = past.lawn
    if not barred_without_reason(lawn) or not holds_phosphate(product, lawn) or need_shown(past, past.day):
        return ""
    rules = local_rules(lawn)
    wants = "" if rules is None else _who(rules, rules.sowing, "wants")
    return f"{product.name} holds phosphorus; {wants} a soil test that shows the need (`soil p low`), or one without"


def _allows(rules: LocalRules, stated: Stated[float] | None) -> str:
    return _who(rules, stated, "allows")


def _who(rules: LocalRules, stated: Stated[T] | None, does: str) -> str:
    """The place, or the owner, where the number is the owner's own."""
    own = stated is not None and stated.basis.kind is Known.LOCAL_RULE
    return f"your local rule {does}" if own else f"{rules.place} {does}"


def _said(n_g_per_m2: float, past: Past) -> str:
    return nitrogen(n_g_per_m2, past.lawn)


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
