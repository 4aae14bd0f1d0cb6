"""Degree days: warmth above a base, summed over days. All temperatures of one call are in one unit, and so is the sum.

A sum in Celsius times 1.8 is the sum in Fahrenheit; nothing is ever added to it.
"""

from math import asin, cos, pi

F_PER_C = 1.8
"""Degree days in Fahrenheit for one in Celsius."""


def average(low: float, high: float, base: float) -> float:
    """One day by the simple mean: (high + low) / 2 less the base, never below 0. Purdue, Virginia Tech, Ohio State."""
    return max(0.0, (low + high) / 2 - base)


def capped(low: float, high: float, base: float, cap: float) -> float:
    """One day with each temperature set between base and cap first ("86/50"). Iowa State Univ., Agronomy 541."""
    return (max(base, min(cap, low)) + max(base, min(cap, high))) / 2 - base


def sine(low: float, high: float, base: float) -> float:
    """One day by a single sine wave through low and high: also the warm hours of a day with a cool mean."""
    mean, swing = (low + high) / 2, (high - low) / 2
    if low >= base:
        return mean - base
    if high <= base:
        return 0.0
    angle = asin((base - mean) / swing)
    return ((mean - base) * (pi / 2 - angle) + swing * cos(angle)) / pi
