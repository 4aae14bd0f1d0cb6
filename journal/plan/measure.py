"""Quantities in the units of the book: rounded as a person would measure, and spelled for the line or the page."""

import math
from collections.abc import Callable

from journal.facts.rounding import exceeds, reaches
from journal.record.lawn import Lawn
from journal.record.quantity import in_unit, plain
from journal.record.unit import Dimension, unit_for

_HEIGHT_STEP = {"us": 0.25, "metric": 5.0}


def line_height(mm: float, lawn: Lawn) -> str:
    """`2.25in` or `75mm`, as it is."""
    return height(mm, lawn).replace(" ", "")


def line_height_up(mm: float, lawn: Lawn, gap: str = "") -> str:
    """To the next quarter inch or 5 mm, never lower than `mm`; with a gap for the page."""
    return _spelled(
        _rounded(mm, Dimension.LENGTH, lawn, _HEIGHT_STEP[lawn.units], to_more), Dimension.LENGTH, lawn, gap
    )


def line_height_within(mm: float, low: float, high: float, lawn: Lawn, gap: str = "") -> str:
    """To the quarter inch or 5 mm that lies nearest between both, as it is where none does."""
    step = _HEIGHT_STEP[lawn.units] * float(unit_for(Dimension.LENGTH, lawn.units).factor)
    for how in (round, to_more, to_less):
        found = how(mm / step) * step
        if reaches(found, low) and not exceeds(found, high):
            return height(found, lawn).replace(" ", gap)
    return height(mm, lawn).replace(" ", gap)


def height(mm: float, lawn: Lawn) -> str:
    """`2.25 in` or `92 mm`, as measured."""
    return _spelled(in_unit(mm, unit_for(Dimension.LENGTH, lawn.units)), Dimension.LENGTH, lawn, " ", places(lawn))


def places(lawn: Lawn) -> int:
    """Decimals of a height or depth: hundredths of an inch, whole millimetres."""
    return 2 if lawn.units == "us" else 0


def depth(mm: float, lawn: Lawn) -> str:
    """`0.1 in` or `3 mm` of water."""
    return height(mm, lawn)


def rounded_mass(grams: float, lawn: Lawn, *, down: bool) -> float:
    """Pounds or kilograms as one weighs them out: the smaller the amount, the finer."""
    return rounded_mass_by(grams, lawn, to_less if down else round)


def rounded_mass_by(grams: float, lawn: Lawn, how: Callable[[float], int]) -> float:
    """The same, rounded in a way of one's own: a number of steps to a whole one."""
    exact = in_unit(grams, unit_for(Dimension.MASS, lawn.units))
    step = next((step for below, step in _MASS_STEPS[lawn.units] if exact < below), 1.0)
    return _rounded(grams, Dimension.MASS, lawn, step, how)


_MASS_STEPS = {"us": ((2, 0.05), (10, 0.1), (50, 0.5)), "metric": ((1, 0.02), (5, 0.05), (25, 0.2))}


def mass(amount: float, lawn: Lawn, gap: str = " ") -> str:
    """`12.5 lb` or `5.6 kg` for an amount already in that unit; with no gap as the line wants it."""
    return _spelled(amount, Dimension.MASS, lawn, gap)


def mass_rate(g_per_m2: float, lawn: Lawn, gap: str = " ") -> str:
    """`3.5 lb/k` or `17 g/m2`."""
    unit = unit_for(Dimension.MASS_RATE, lawn.units)
    return f"{plain(in_unit(g_per_m2, unit), 2)}{gap}{unit.name}"


def nitrogen(g_per_m2: float, lawn: Lawn) -> str:
    """`0.68 lb N/k` or `3.3 g N/m2`."""
    return mass_rate(g_per_m2, lawn).replace("lb/k", "lb N/k").replace("g/m2", "g N/m2")


def _spelled(number: float, dimension: Dimension, lawn: Lawn, gap: str, places: int = 3) -> str:
    text = f"{number:.{places}f}"
    text = text.rstrip("0").rstrip(".") if "." in text else text
    return f"{text}{gap}{unit_for(dimension, lawn.units).name}"


def _rounded(value: float, dimension: Dimension, lawn: Lawn, step: float, how: Callable[[float], int]) -> float:
    return float(how(in_unit(value, unit_for(dimension, lawn.units)) / step)) * step


def to_more(steps: float) -> int:
    """The next whole step, the same one for a hair above it."""
    return math.ceil(steps - 1e-6)


def to_less(steps: float) -> int:
    """The whole step below, and never none."""
    return max(1, math.floor(steps + 1e-6))
