"""Readers of the options of reckonings about water and weather. Bounds are judgment: beyond them nobody can mean it."""

from journal.record.quantity import parse_as
from journal.record.refusal import Refusal
from journal.record.unit import Dimension

MOST_DEPTH, MOST_RATE = "1000mm", "1000mm/h"
"""The deepest watering and the fastest sprinkler or soil that are believed."""

_COLDEST_C, _HOTTEST_C = -60, 60


def air_temperature(text: str) -> float:
    """Reads a temperature of the air with its unit, into C."""
    value = parse_as(text, Dimension.TEMPERATURE).value
    if not _COLDEST_C <= value <= _HOTTEST_C:
        raise Refusal(text, "no air is as cold or as hot: -76F to 140F (-60C to 60C) is wanted.")
    return value
