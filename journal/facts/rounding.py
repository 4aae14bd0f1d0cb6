"""How far a measure may lie beside a threshold before it counts as another."""

from journal.facts.factors import LB_PER_K_G_M2

SLACK = 0.02
"""What is measured or weighed out in other units comes out a little off, like 75 mm for 3 in: judgment."""


def reaches(value: float, limit: float) -> bool:
    """Whether a height, depth or amount is as much as that, but for the rounding of units."""
    return value >= limit * (1 - SLACK)


def exceeds(value: float, limit: float) -> bool:
    """Whether it is more than that, by more than the rounding of units."""
    return value > limit * (1 + SLACK)


def over_the_law(g_per_m2: float, limit_g_per_m2: float) -> bool:
    """Whether an amount is above a limit set by law: both rounded to two decimals of lb per 1,000 sq ft, no slack."""
    amount, limit = (round(value / float(LB_PER_K_G_M2), 2) for value in (g_per_m2, limit_g_per_m2))
    return amount > limit
