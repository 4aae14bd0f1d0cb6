"""From one unit to another and back, and conversions in print (the source beside each)."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from journal.record.quantity import in_unit, parse
from journal.record.unit import UNITS, Unit

PAIRS = sorted({(a.name, b.name) for a in UNITS.values() for b in UNITS.values() if a.dimension is b.dimension})
BY_NAME = {unit.name: unit for unit in UNITS.values()}


def converted(number: float, from_unit: Unit, to_unit: Unit) -> float:
    """By way of the base unit, as a float: so quantities are kept."""
    return in_unit(float(Fraction(number) * from_unit.factor + from_unit.offset), to_unit)


def of(text: str, unit: str) -> float:
    """What is written, in another unit."""
    return in_unit(parse(text).value, UNITS[unit])


@given(st.sampled_from(PAIRS), st.floats(1e-3, 1e5))
def test_there_and_back(pair: tuple[str, str], number: float) -> None:
    one, other = BY_NAME[pair[0]], BY_NAME[pair[1]]
    zero = abs(float((one.offset - other.offset) / one.factor)) + abs(float(one.offset / one.factor))
    back = converted(converted(number, one, other), other, one)
    assert back == pytest.approx(number, rel=1e-12, abs=1e-12 * zero)


EXACT = [
    # exact by definition: 1 lb = 453.59237 g, 1 ft = 304.8 mm, 1 gal = 231 cubic inches (NIST SP 811, Handbook 44)
    ("1lb/k", "kg/ha", Fraction(45359237, 100000) * 10 / (1000 * Fraction(3048, 10000) ** 2)),
    ("1lb/k", "lb/acre", Fraction(4356, 100)),
    ("1lb/k", "oz/k", Fraction(16)),
    ("1lb/k", "g/m2", Fraction(45359237, 100000) / (1000 * Fraction(3048, 10000) ** 2)),
    ("1kg/100m2", "kg/ha", Fraction(100)),
    ("1floz/k", "l/ha", Fraction(254, 100) ** 3 * 231 / 128 / (100 * Fraction(3048, 10000) ** 2)),
    ("1gal/k", "gal/acre", Fraction(4356, 100)),
    ("1gal/k", "floz/k", Fraction(128)),
    ("1gal/acre", "floz/acre", Fraction(128)),
    ("1gal/acre", "l/ha", Fraction(254, 100) ** 3 * 231 / (100 * Fraction(3048, 10000) ** 2) / Fraction(4356, 100)),
    ("1acre", "sqft", Fraction(43560)),
    ("1acre", "sqyd", Fraction(4840)),
    ("1ha", "m2", Fraction(10000)),
    ("1gal", "floz", Fraction(128)),
    ("1gal", "cup", Fraction(16)),
    ("1gal", "pt", Fraction(8)),
    ("1yd", "in", Fraction(36)),
    ("1m", "mm", Fraction(1000)),
    ("1in/h", "mm/h", Fraction(254, 10)),
    ("1mph", "km/h", Fraction(1609344, 1000000)),
    ("1wk", "d", Fraction(7)),
    ("98.6F", "C", Fraction(37)),
]


@pytest.mark.parametrize(("text", "unit", "value"), EXACT)
def test_what_holds_by_definition(text: str, unit: str, value: Fraction) -> None:
    assert of(text, unit.casefold()) == pytest.approx(float(value), rel=1e-12)


SOIL_MANUAL = "Moorberg & Crouse, Soils Laboratory Manual, Conversion Factors and Formulas, 2021"
PNW = "Pacific Northwest Weed Management Handbook"
PRODIAMINE = "Label of a pre-emergent granule (active taken as prodiamine from its wording)"
DITHIOPYR = "Label of a pre-emergent granule (active taken as dithiopyr from its wording)"
PATTON = "Crop Science, Establishment of Bermudagrass and Zoysiagrass by Seed, 2004"
HECKMAN = "Heckman et al., Kentucky bluegrass responses to mowing practice and nitrogen fertility management, 2000"
CLIPPINGS = "Univ. of Minnesota Turfgrass Science, Benefits of Recycling Lawn Clippings"
RANCHERS = "Texas A&M AgriLife, Common Conversions"
STARTER = "Influence of phosphorus in starter fertilizer on the establishment of tall fescue (abstract)"

PRINTED = [
    ("1lb/acre", "kg/ha", 1.12, 0.005, SOIL_MANUAL),
    ("1gal/acre", "l/ha", 9.35, 0.005, SOIL_MANUAL),
    ("1gal", "ml", 3785.4, 0.05, RANCHERS),
    ("1acre", "sqft", 43560, 1e-6, f"{PNW}, Weights and Measures"),
    ("225lb/acre", "lb/k", 5.2, 0.05, PRODIAMINE),
    ("345lb/acre", "lb/k", 7.9, 0.05, PRODIAMINE),
    ("250lb/acre", "lb/k", 5.7, 0.05, DITHIOPYR),
    ("500lb/acre", "lb/k", 11.5, 0.05, DITHIOPYR),
    ("32floz/acre", "floz/k", 0.75, 0.75 * 0.03, f"{PNW} (bentazon, 2 pints, rounded up)"),
    ("64floz/acre", "floz/k", 1.5, 0.05, f"{PNW} (bentazon, 4 pints a season)"),
    ("800floz/acre", "floz/k", 18, 0.5, f"{PNW}, Annual Grass Weeds (bensulide, 50 pints)"),
    ("80lb/acre", "lb/k", 1.8, 0.05, f"{PNW}, Annual Grass Weeds"),
    ("180lb/acre", "lb/k", 4.1, 0.05, f"{PNW}, Annual Grass Weeds"),
    ("49kg/ha", "lb/k", 1, 0.005, STARTER),
    ("12kg/ha", "lb/k", 0.25, 0.005, PATTON),
    ("49kg/ha", "lb/k", 1, 0.005, PATTON),
    ("98kg/ha", "lb/k", 2, 0.01, PATTON),
    ("97.6kg/ha", "lb/k", 2, 0.005, HECKMAN),
    ("195.2kg/ha", "lb/k", 4, 0.005, HECKMAN),
    ("294kg/ha", "lb/k", 6, 0.03, CLIPPINGS),
]


@pytest.mark.parametrize(("text", "unit", "printed", "within", "source"), PRINTED)
def test_conversions_in_print(text: str, unit: str, printed: float, within: float, source: str) -> None:
    assert of(text, unit) == pytest.approx(printed, abs=within), source


def test_grubs_of_a_sampling_hole() -> None:
    # 5 to 10 in 950 square centimetres: Nyrop, Villani & Grant, Environmental Entomology 24(3), 1995
    for count, per_foot in ((5, 4.9), (10, 9.8)):
        assert of(f"{count / 0.095:.6f}/m2", "/sqft") == pytest.approx(per_foot, abs=0.05)
