"""Units of measure with exact factors. Inside everything is metric: mm, g, mL, m2, C, m/s, minutes.

Factors: NIST Special Publication 811 (2008), Appendix B, and NIST Handbook 44, Appendix C: the inch is 25.4 mm,
the pound 453.59237 g, the US gallon 231 cubic inches, all exact.
"""

from dataclasses import dataclass
from enum import StrEnum
from fractions import Fraction


class Dimension(StrEnum):
    """What a quantity measures; the value after the colon is the unit it is kept in."""

    LENGTH = "mm"
    MASS = "g"
    VOLUME = "ml"
    AREA = "m2"
    MASS_RATE = "g/m2"
    VOLUME_RATE = "ml/m2"
    RAIN_RATE = "mm/h"
    TEMPERATURE = "C"
    SPEED = "m/s"
    MINUTES = "min"
    DAYS = "d"
    PERCENT = "%"
    PPM = "ppm"
    COUNT_RATE = "/m2"
    TIMES = "x"
    MONEY = "$"
    BAGS = "bag"
    NUMBER = ""
    ACTIVE = "g/l"


@dataclass(frozen=True, slots=True)
class Unit:
    """`value in base unit = number * factor + offset`, both exact."""

    name: str
    dimension: Dimension
    factor: Fraction
    offset: Fraction = Fraction(0)


INCH = Fraction(254, 10)
FOOT = INCH * 12
POUND = Fraction(45359237, 100000)
OUNCE = POUND / 16
SQUARE_FOOT = (FOOT / 1000) ** 2
ACRE = SQUARE_FOOT * 43560
THOUSAND = SQUARE_FOOT * 1000
GALLON = INCH**3 * 231 / 1000
FLUID_OUNCE = GALLON / 128
MILE = FOOT * 5280 / 1000

D = Dimension
_TABLE: tuple[tuple[str, Dimension, Fraction | int], ...] = (
    ('in inch inches "', D.LENGTH, INCH),
    ("ft feet foot", D.LENGTH, FOOT),
    ("yd", D.LENGTH, FOOT * 3),
    ("mm", D.LENGTH, 1),
    ("cm", D.LENGTH, 10),
    ("m", D.LENGTH, 1000),
    ("lb lbs", D.MASS, POUND),
    ("oz", D.MASS, OUNCE),
    ("g", D.MASS, 1),
    ("kg", D.MASS, 1000),
    ("floz", D.VOLUME, FLUID_OUNCE),
    ("cup cups", D.VOLUME, FLUID_OUNCE * 8),
    ("pt", D.VOLUME, FLUID_OUNCE * 16),
    ("qt", D.VOLUME, FLUID_OUNCE * 32),
    ("gal", D.VOLUME, GALLON),
    ("ml", D.VOLUME, 1),
    ("l", D.VOLUME, 1000),
    ("sqft ft2", D.AREA, SQUARE_FOOT),
    ("sqyd", D.AREA, SQUARE_FOOT * 9),
    ("acre acres", D.AREA, ACRE),
    ("m2 sqm", D.AREA, 1),
    ("ha", D.AREA, 10000),
    ("lb/k lb/1000sqft", D.MASS_RATE, POUND / THOUSAND),
    ("oz/k", D.MASS_RATE, OUNCE / THOUSAND),
    ("lb/acre", D.MASS_RATE, POUND / ACRE),
    ("g/m2", D.MASS_RATE, 1),
    ("kg/ha", D.MASS_RATE, Fraction(1, 10)),
    ("kg/100m2", D.MASS_RATE, 10),
    ("floz/k", D.VOLUME_RATE, FLUID_OUNCE / THOUSAND),
    ("gal/k", D.VOLUME_RATE, GALLON / THOUSAND),
    ("floz/acre", D.VOLUME_RATE, FLUID_OUNCE / ACRE),
    ("gal/acre", D.VOLUME_RATE, GALLON / ACRE),
    ("ml/m2", D.VOLUME_RATE, 1),
    ("l/ha", D.VOLUME_RATE, Fraction(1, 10)),
    ("in/h", D.RAIN_RATE, INCH),
    ("mm/h", D.RAIN_RATE, 1),
    ("mph", D.SPEED, MILE / 3600),
    ("km/h kmh", D.SPEED, Fraction(10, 36)),
    ("m/s", D.SPEED, 1),
    ("min", D.MINUTES, 1),
    ("h hr hrs hour hours", D.MINUTES, 60),
    ("d day days", D.DAYS, 1),
    ("wk week weeks", D.DAYS, 7),
    ("%", D.PERCENT, 1),
    ("ppm", D.PPM, 1),
    ("/sqft", D.COUNT_RATE, 1 / SQUARE_FOOT),
    ("/m2", D.COUNT_RATE, 1),
    ("x", D.TIMES, 1),
    ("$", D.MONEY, 1),
    ("bag bags", D.BAGS, 1),
    ("lb/gal", D.ACTIVE, POUND * 1000 / GALLON),
    ("g/l", D.ACTIVE, 1),
)

UNITS: dict[str, Unit] = {
    name: Unit(names.split()[0], dimension, Fraction(factor))
    for names, dimension, factor in _TABLE
    for name in names.split()
}
UNITS["c"] = Unit("C", D.TEMPERATURE, Fraction(1))
UNITS["f"] = Unit("F", D.TEMPERATURE, Fraction(5, 9), Fraction(-160, 9))

US: dict[Dimension, str] = {
    D.LENGTH: "in", D.MASS: "lb", D.VOLUME: "floz", D.AREA: "sqft", D.MASS_RATE: "lb/k", D.VOLUME_RATE: "floz/k",
    D.RAIN_RATE: "in/h", D.TEMPERATURE: "f", D.SPEED: "mph", D.COUNT_RATE: "/sqft", D.ACTIVE: "lb/gal",
}  # fmt: skip
METRIC: dict[Dimension, str] = {
    D.LENGTH: "mm", D.MASS: "kg", D.VOLUME: "ml", D.AREA: "m2", D.MASS_RATE: "g/m2", D.VOLUME_RATE: "ml/m2",
    D.RAIN_RATE: "mm/h", D.TEMPERATURE: "c", D.SPEED: "m/s", D.COUNT_RATE: "/m2", D.ACTIVE: "g/l",
}  # fmt: skip


def unit_for(dimension: Dimension, system: str) -> Unit:
    """The unit a book of that system ("us" or "metric") writes this dimension in."""
    chosen = (METRIC if system == "metric" else US).get(dimension)
    return UNITS[chosen] if chosen else _ALIKE[dimension]


_ALIKE: dict[Dimension, Unit] = {
    dimension: next((u for u in UNITS.values() if u.dimension is dimension), Unit("", dimension, Fraction(1)))
    for dimension in Dimension
}
