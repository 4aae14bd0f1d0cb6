"""Reference water use from a day's two temperatures, and the sun that it rests on.

FAO Irrigation and Drainage Paper 56 (1998), equations 21 to 25, 34 and 52 (Hargreaves and Samani). Latitudes are in
degrees, south below zero; the day of the year runs from 1 to 366, and the divisor stays 365 in a leap year.
"""

from functools import lru_cache
from math import acos, cos, pi, radians, sin, sqrt, tan

_SOLAR = 0.0820
"""The solar constant in MJ per m2 and minute."""

MM_PER_MJ = 0.408
"""Depth of water that one MJ per m2 evaporates, in mm."""

_FREEZES_AT = 17.8


def sun_distance(day_of_year: int) -> float:
    """Inverse relative distance of the sun (equation 23)."""
    return 1 + 0.033 * cos(2 * pi * day_of_year / 365)


def declination(day_of_year: int) -> float:
    """Solar declination in radians (equation 24)."""
    return 0.409 * sin(2 * pi * day_of_year / 365 - 1.39)


def sunset_angle(latitude: float, day_of_year: int) -> float:
    """Sunset hour angle in radians (equation 25): 0 where the sun does not rise, pi where it does not set."""
    return acos(max(-1.0, min(1.0, -tan(radians(latitude)) * tan(declination(day_of_year)))))


@lru_cache(maxsize=1024)
def radiation(latitude: float, day_of_year: int) -> float:
    """Radiation above the atmosphere in MJ per m2 and day (equation 21)."""
    place, tilt, angle = radians(latitude), declination(day_of_year), sunset_angle(latitude, day_of_year)
    height = angle * sin(place) * sin(tilt) + cos(place) * cos(tilt) * sin(angle)
    return 24 * 60 / pi * _SOLAR * sun_distance(day_of_year) * height


def daylight(latitude: float, day_of_year: int) -> float:
    """Hours of daylight (equation 34), from geometry alone."""
    return 24 / pi * sunset_angle(latitude, day_of_year)


def reference_mm(low_c: float, high_c: float, latitude: float, day_of_year: int) -> float:
    """Reference water use in mm a day (equation 52); never below 0. Raises ValueError for a low above the high."""
    if low_c > high_c:
        raise ValueError("a day's low can't be above its high.")
    warmth = (low_c + high_c) / 2 + _FREEZES_AT
    return max(0.0, 0.0023 * warmth * sqrt(high_c - low_c) * MM_PER_MJ * radiation(latitude, day_of_year))
