"""Areas of plane figures, in m2, from lengths in mm. Euclid's, and the circle's of Archimedes."""

import math


def rectangle_m2(length_mm: float, width_mm: float) -> float:
    """A right-angled four-sided figure."""
    return length_mm * width_mm / 1e6


def circle_m2(radius_mm: float) -> float:
    """A circle, from its middle to its rim."""
    return math.pi * radius_mm**2 / 1e6


def triangle_m2(base_mm: float, height_mm: float) -> float:
    """Half of base times height; the height stands at right angles on the base."""
    return base_mm * height_mm / 2 / 1e6
