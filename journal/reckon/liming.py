"""Lime in doses.

Weight for a lime's strength is the recommended weight x 100 / its calcium carbonate equivalent in percent: Penn State
Agricultural Analytical Services Lab, Home Lawn - Maintain.
"""

import math
from dataclasses import dataclass

_ROUNDING = 1e-9


@dataclass(frozen=True, slots=True)
class Doses:
    """How many equal doses, and grams of the lime itself per m2 in each and in all."""

    count: int
    each_g_per_m2: float
    all_g_per_m2: float


def doses(need_g_per_m2: float, most_g_per_m2: float, strength_percent: float) -> Doses:
    """A recommendation, written for pure calcium carbonate, split into equal doses of a lime of that strength.

    No dose is above the most, neither by the weight of the lime nor by that of the carbonate it stands for: judgment.
    """
    lime = need_g_per_m2 * 100 / strength_percent
    count = math.ceil(max(lime, need_g_per_m2) / most_g_per_m2 - _ROUNDING)
    return Doses(count, lime / count, lime)
