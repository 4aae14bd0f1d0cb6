"""How fast a lawn gets taller, month by month."""

from journal.facts.citation import Basis, memory
from journal.facts.factors import mm

LEAST_A_WEEK = tuple(mm(inches) for inches in (0, 0, 0, 0.5, 1.0, 0.7, 0, 0, 0.7, 0.3, 0, 0))
"""Growth in mm a week that a cool-season lawn makes at the least, January to December of the northern half."""

LEAST_BASIS: Basis = memory("the low end of growth at 40 to 43 degrees north, a month at a time")


def least_a_day_mm(month: int, *, southern: bool) -> float:
    """The least growth in mm a day in that month (1 to 12); six months on in the south."""
    return LEAST_A_WEEK[(month - 1 + (6 if southern else 0)) % 12] / 7
