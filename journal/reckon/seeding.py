"""Seed by the label: how much of the bag is pure live seed, and what must be spread for a rate."""

from journal.record.product import Product


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
