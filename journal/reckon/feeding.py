"""Plant food per area: nitrogen, its soluble part, phosphate and potash, from a product and how much was put down.

The three numbers of an analysis are N, P2O5 and K2O in percent by weight, not the elements P and K: Purdue Univ.,
AY-22, Fertilizing Established Lawns, 1998.
"""

from dataclasses import dataclass

from journal.reckon.dose import mean_g_per_m2
from journal.reckon.threshold import in_force
from journal.record.dose import Dose
from journal.record.entry import Entry
from journal.record.lawn import Lawn
from journal.record.product import Product

FEEDING_KINDS = ("starter", "fertilizer", "weed-and-feed")
"""Kinds that hold nitrogen even where the owner has not copied the analysis."""


@dataclass(frozen=True, slots=True)
class Nutrients:
    """Grams per square metre. A product that says nothing of slow release is taken as wholly soluble."""

    n: float
    soluble_n: float
    p2o5: float
    k2o: float


def nutrients(product: Product, g_per_m2: float) -> Nutrients | None:
    """What so much of a product brings; None where its analysis is not known."""
    if product.analysis is None:
        return None
    n, p, k = (percent / 100 * g_per_m2 for percent in product.analysis)
    return Nutrients(n, n * (1 - (product.slow or 0.0)), p, k)


def product_for_nitrogen(product: Product, n_g_per_m2: float) -> float | None:
    """Grams of product per square metre that bring so much nitrogen; None for a product without any."""
    return n_g_per_m2 / product.nitrogen if product.nitrogen else None


def nutrients_mean(dose: Dose, entry: Entry, lawn: Lawn) -> Nutrients | None:
    """What a dose brought, spread over the whole of the zones named; None where amount, area or analysis is missing."""
    product, rate = lawn.product(dose.product), mean_g_per_m2(dose, entry, lawn)
    return None if product is None or rate is None else nutrients(product, rate)


def holds_nitrogen(product: Product) -> bool:
    """True with any N in the analysis; without an analysis a starter, fertilizer or weed-and-feed is taken to."""
    return product.nitrogen > 0 if product.analysis is not None else product.kind in FEEDING_KINDS


def holds_phosphate(product: Product, lawn: Lawn) -> bool:
    """True above the P2O5 percentage from which a product is a phosphorus fertilizer.

    More than 0.67 %: Vermont Agency of Agriculture, Phosphorous Fertilizer Information - Turf.
    """
    return product.analysis is not None and product.analysis[1] > in_force(lawn, "starter-missing", "phosphate")


def is_starter(product: Product, lawn: Lawn) -> bool:
    """True for a product of the kind starter, or one whose P2O5 is at least half of its N and above 0.67 %.

    No law sets a number for a starter: the half is judgment.
    """
    if product.kind == "starter":
        return True
    share = in_force(lawn, "starter-missing", "phosphate-share") / 100
    return (
        product.analysis is not None
        and product.nitrogen > 0
        and holds_phosphate(product, lawn)
        and product.analysis[1] >= share * product.analysis[0]
    )
