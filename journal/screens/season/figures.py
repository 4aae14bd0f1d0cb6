"""Numbers as the grid and the pane write them: inches or millimetres, pounds or grams, Fahrenheit or Celsius."""

from collections.abc import Collection
from datetime import date

from journal.facts.factors import g_per_m2, mm
from journal.record.day import MONTHS
from journal.record.lawn import Lawn

INCH = mm(1)
LB_PER_K = g_per_m2(1)
METRIC_FULL_N = 5.0
"""Grams a square metre that fill the block of a feeding in a metric book; a pound per 1,000 sq ft in the other."""
_ROUNDING = 1e-9
_SMALL = str.maketrans("0123456789", "⁰¹²³⁴⁵⁶⁷⁸⁹")
BLOCKS = "▁▂▃▄▅▆▇█"


def is_metric(lawn: Lawn) -> bool:
    """Whether the book is kept in metric units."""
    return lawn.units == "metric"


def block(share: float) -> str:
    """A block as high as the share of its full measure, 1 to 8 eighths; anything at all shows as one."""
    return BLOCKS[min(7, max(0, round(share * 8) - 1))]


def tenths(value: float) -> str:
    """One small digit for tenths of a whole, `+` from a whole on."""
    return small(str(round(value * 10))) if round(value * 10) < 10 else "+"


def small(digits: str) -> str:
    """Raised digits: `3⁵` is three and five tenths, and neighbours stay apart."""
    return digits.translate(_SMALL)


def height_number(height_mm: float, metric: bool) -> str:
    """`3.0` or, where that was meant, `2.25` inches; `75` millimetres."""
    if metric:
        return f"{height_mm:.0f}"
    inches = f"{height_mm / INCH:.2f}"
    return inches.removesuffix("0")


def height_texts(height_mm: float, metric: bool) -> tuple[str, ...]:
    """For a cell. Inches: what follows the point raised, tenths alone where there is less room, then whole inches.

    Millimetres: `75`, then with the last digit raised, then tens. `+` where one place is not enough.
    """
    if metric:
        number = height_number(height_mm, metric)
        tens = str(int(height_mm / 10 + 0.5 + _ROUNDING))
        return f"{number:<3}", f"{number[:-1]}{small(number[-1])}", tens, "+"
    whole, _, part = height_number(height_mm, metric).partition(".")
    full, _, tenth = f"{height_mm / INCH + _ROUNDING:.1f}".partition(".")
    near = str(int(height_mm / INCH + 0.5 + _ROUNDING))
    return whole if part == "0" else f"{whole}{small(part)}", f"{full}{small(tenth)}", near, "+"


def depth_number(depth_mm: float, metric: bool) -> str:
    """`0.3` inches, `8` millimetres."""
    return (
        f"{depth_mm:.0f}" if metric else f"{depth_mm / INCH:.1f}" if depth_mm < 10 * INCH else f"{depth_mm / INCH:.0f}"
    )


def depth_unit(metric: bool) -> str:
    """The unit of water and rain."""
    return "mm" if metric else "in"


def depth(depth_mm: float, metric: bool) -> str:
    """`0.3 in`, `8 mm`."""
    return f"{depth_number(depth_mm, metric)} {depth_unit(metric)}"


def nitrogen_number(n_g_per_m2: float, metric: bool) -> str:
    """`0.4` pounds per 1,000 sq ft, `2.1` grams a square metre."""
    return f"{n_g_per_m2:.1f}" if metric else f"{n_g_per_m2 / LB_PER_K:.1f}"


def nitrogen(n_g_per_m2: float, metric: bool) -> str:
    """`0.4 lb N/k`, `2.1 g N/m2`."""
    return f"{nitrogen_number(n_g_per_m2, metric)} {'g N/m2' if metric else 'lb N/k'}"


def temperature(celsius: float, metric: bool) -> int:
    """Whole degrees of the book's scale."""
    return round(celsius) if metric else round(celsius * 9 / 5 + 32)


def day_words(day: int, today: int) -> str:
    """`22 Apr`, with the year when it is not this one's."""
    when = date.fromordinal(day)
    words = f"{when.day} {MONTHS[when.month - 1].title()}"
    return words if when.year == date.fromordinal(today).year else f"{words} {when.year}"


def short_day(day: int) -> str:
    """`22 Apr`, whatever the year."""
    when = date.fromordinal(day)
    return f"{when.day} {MONTHS[when.month - 1].title()}"


def counted(number: int, one: str, many: str = "") -> str:
    """`1 day`, `11 days`."""
    return f"{number} {one if number == 1 else many or one + 's'}"


def zone_words(lawn: Lawn, zones: Collection[str]) -> str:
    """`front, back`, or `all zones` where there are several and all are meant."""
    every = len(lawn.zones) > 1 and set(zones) == set(lawn.zone_names)
    return "all zones" if every else ", ".join(zones)
