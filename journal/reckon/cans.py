"""What cans set out on the lawn tell of its sprinklers."""

from collections.abc import Sequence

QUARTER_NEEDS = 4
"""Cans without which there is no driest quarter."""

_PLACES = 9
"""Decimals of a percentage: what lies behind them, a nought below nought too, is the noise of binary fractions."""


def mean(depths: Sequence[float]) -> float:
    """The mean depth, in the unit of the depths."""
    return sum(depths) / len(depths)


def rate_per_h(depths: Sequence[float], minutes: float) -> float:
    """Mean depth an hour, in the unit of the depths."""
    return 60 * mean(depths) / minutes


def uniformity_low_quarter(depths: Sequence[float]) -> float:
    """Mean of the driest quarter as percent of the mean of all (DU); a quarter of n cans is n / 4 rounded.

    Grabow, CRAN package spreval 1.1.0.
    """
    driest = sorted(depths)[: max(1, round(len(depths) / 4))]
    return 100 * mean(driest) / mean(depths)


def uniformity_christiansen(depths: Sequence[float]) -> float:
    """100 % less the mean departure from the mean as percent of the mean (CU). Grabow, CRAN package spreval 1.1.0."""
    middle = mean(depths)
    found = 100 * (1 - sum(abs(depth - middle) for depth in depths) / (len(depths) * middle))
    return round(found, _PLACES) + 0.0


def minutes_for(depth: float, rate_per_h: float) -> float:
    """Minutes that put down a depth at a rate an hour, both in one unit of length."""
    return depth / rate_per_h * 60


def scheduling_coefficient(depths: Sequence[float]) -> float:
    """How many times longer it must run for the driest can to get the depth: mean over least."""
    return mean(depths) / min(depths)


def run_time_multiplier(uniformity_percent: float) -> float:
    """How many times longer it must run for most of the lawn to get the depth: 1 / (0.4 + 0.6 DU), from memory."""
    return 1 / (0.4 + 0.6 * uniformity_percent / 100)
