"""How much seed to weigh out, and how much of it is alive.

Seed from the bag is pure live seed over its share of the bag: LSU AgCenter, Pure Live Seed Calculation; Penn State
Center for Turfgrass Science, Calculating the Price of Pure Live Seed.
"""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class SeedAmount:
    """Grams of pure live seed, grams from the bag, and these per square metre."""

    live_g: float
    bulk_g: float
    bulk_g_per_m2: float


def at_bulk_rate(rate_g_per_m2: float, area_m2: float, live_share: float) -> SeedAmount:
    """For a rate of seed as it comes from the bag; `live_share` is above 0, to 1."""
    bulk = rate_g_per_m2 * area_m2
    return SeedAmount(bulk * live_share, bulk, rate_g_per_m2)


def at_live_rate(rate_g_per_m2: float, area_m2: float, live_share: float) -> SeedAmount:
    """For a rate of pure live seed."""
    return at_bulk_rate(rate_g_per_m2 / live_share, area_m2, live_share)
