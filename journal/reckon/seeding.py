"""Seed by the label: how much of the bag is pure live seed, and what must be spread for a rate."""

from collections.abc import Mapping
from dataclasses import dataclass

from journal.facts.grasses import grass
from journal.facts.mixture import is_unknown, shares
from journal.record.product import Product
from journal.record.unit import Dimension


@dataclass(frozen=True, slots=True)
class SowingRate:
    """Grams from the bag per m2 for overseeding; `by_label` False where it is what is published for the grasses."""

    g_per_m2: float
    by_label: bool


def sowing_rate(product: Product, mix: Mapping[str, float]) -> SowingRate | None:
    """The middle of the label's range, else of what is published for overseeding each grass of the mix.

    None where neither is known, or where pure live seed is meant and the bag's share of it is not known.
    """
    if product.rate and product.rate.dimension is Dimension.MASS_RATE:
        bulk = bulk_rate_g_per_m2((product.rate.low + product.rate.high) / 2, product)
        return None if bulk is None else SowingRate(bulk, by_label=True)
    published = _published_rate(mix)
    return None if published is None else SowingRate(published, by_label=False)


def _published_rate(mix: Mapping[str, float]) -> float | None:
    if is_unknown(mix):
        return None
    total = weight = 0.0
    for name, percent in shares(mix).items():
        span = grass(name).overseed_rate_g_per_m2
        if span is None:
            return None
        total += percent * (span.low + span.high) / 2
        weight += percent
    return total / weight if weight else None


def pure_live_share(purity: float, germination: float) -> float:
    """Pure live seed as a share of the bag, 0 to 1, from two percentages."""
    return purity / 100 * germination / 100


def bulk_rate_g_per_m2(rate_g_per_m2: float, product: Product) -> float | None:
    """Grams of seed from the bag per m2 for a rate in the basis that the product states.

    None where the rate means pure live seed and the label's purity or germination is not known.
    """
    if product.rate_basis != "pls":
        return rate_g_per_m2
    if not product.purity or not product.germination:
        return None
    return rate_g_per_m2 / pure_live_share(product.purity, product.germination)


def bulk_g(rate_g_per_m2: float, area_m2: float, product: Product) -> float | None:
    """Grams of seed from the bag for an area at a rate in the product's own basis."""
    rate = bulk_rate_g_per_m2(rate_g_per_m2, product)
    return None if rate is None else rate * area_m2
