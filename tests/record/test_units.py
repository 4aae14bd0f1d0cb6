"""Units against the published factors, and against an independent library."""

from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from journal.record.quantity import in_unit, parse, parse_as, write, write_as
from journal.record.refusal import Refusal
from journal.record.unit import METRIC, UNITS, US, Dimension, unit_for

D = Dimension

# unit, its value in the base unit, exact; the publication's own figure stands beside it
EXACT = [
    ("in", "25.4"),  # NIST SP 811 (2008), B.8: inch = 2.54 E-02 m, exact
    ("ft", "304.8"),  # SP 811 B.8: foot = 3.048 E-01 m, exact
    ("yd", "914.4"),  # SP 811 B.8: yard = 9.144 E-01 m, exact
    ("lb", "453.59237"),  # SP 811 B.8: pound (avoirdupois) = 4.535 923 7 E-01 kg; Handbook 44: the same
    ("oz", "28.349523125"),  # Handbook 44 App. C: 1 ounce avoirdupois = 28.349 523 125 g, exact
    ("gal", "3785.411784"),  # Handbook 44 App. C: 1 gallon = 231 cubic inches = 3.785 411 784 L, exact
    ("qt", "946.352946"),  # Handbook 44 App. C: 1 liquid quart = 57.75 cubic inches
    ("pt", "473.176473"),  # Handbook 44 App. C: 1 liquid pint = 28.875 cubic inches = 0.473 176 473 L
    ("cup", "236.5882365"),  # Handbook 44 App. C: 1 cup = 8 fluid ounces = 237 mL rounded
    ("floz", "29.5735295625"),  # Handbook 44 App. C: 1 fluid ounce = 29.573 529 562 5 mL
    ("sqft", "0.09290304"),  # SP 811 B.8: square foot = 9.290 304 E-02 m2, exact
    ("sqyd", "0.83612736"),  # Handbook 44 App. C: 1 square yard = 0.836 127 36 m2
    (
        "acre",
        "4046.8564224",
    ),  # Handbook 44 App. C: 1 acre = 43 560 square feet = 4046.856 422 4 m2 (international foot)
    ("ha", "10000"),  # SP 811 B.8: hectare = 1.0 E+04 m2
    ("mph", "0.44704"),  # SP 811 B.8: mile per hour = 4.4704 E-01 m/s, exact
    ("h", "60"),
    ("wk", "7"),
    ("kg/ha", "0.1"),
    ("l/ha", "0.1"),
    ("kg/100m2", "10"),
    ("g/l", "1"),
    ("mm/h", "1"),
]

# unit, its value as published, rounded so
ROUNDED = [
    ("lb/k", 4.882428, 1e-6),  # SP 811 B.8: pound per square foot = 4.882 428 E+00 kg/m2; a thousandth of it, in g
    ("lb/acre", 0.1120851, 1e-6),  # lb / (43 560 x 9.290 304 E-02 m2): 1.120 851 kg/ha
    ("gal/acre", 0.9353956, 1e-6),  # SP 811 B.9: gallon per acre = 9.353 96 L/ha
    ("floz/k", 0.3183268, 1e-6),  # 29.573 529 562 5 mL on 92.903 04 m2
    ("gal/k", 40.745833, 1e-6),
    ("floz/acre", 0.007307778, 1e-6),
    ("oz/k", 0.3051517, 1e-6),
    ("in/h", 25.4, 0),
    ("km/h", 0.2777778, 1e-7),  # SP 811 B.8: kilometer per hour = 2.777 778 E-01 m/s
    ("lb/gal", 119.8264, 1e-6),  # SP 811 B.8: pound per gallon (U.S.) = 1.198 264 E+02 kg/m3, which is g/L
    ("/sqft", 10.76391, 1e-6),
]


@pytest.mark.parametrize(("name", "value"), EXACT)
def test_the_exact_factors(name: str, value: str) -> None:
    assert UNITS[name].factor == Fraction(value)
    assert UNITS[name].offset == 0


@pytest.mark.parametrize(("name", "value", "within"), ROUNDED)
def test_the_factors_that_are_published_rounded(name: str, value: float, within: float) -> None:
    assert float(UNITS[name].factor) == pytest.approx(value, rel=within, abs=0)


@pytest.mark.parametrize(
    ("text", "celsius"), [("32F", 0.0), ("212F", 100.0), ("-40F", -40.0), ("68F", 20.0), ("50F", 10.0), ("20C", 20.0)]
)
def test_temperatures(text: str, celsius: float) -> None:
    assert parse(text).value == celsius  # SP 811 B.8: t/C = (t/F - 32)/1.8


PINT = {
    "in": "inch", "ft": "foot", "yd": "yard", "mm": "mm", "cm": "cm", "m": "m", "lb": "pound", "oz": "ounce",
    "g": "g", "kg": "kg",
    "floz": "US_fluid_ounce", "cup": "cup", "pt": "US_pint", "qt": "US_liquid_quart", "gal": "US_liquid_gallon",
    "ml": "ml", "l": "l", "sqft": "foot**2", "sqyd": "yard**2", "acre": "43560*foot**2", "m2": "m**2", "ha": "hectare",
    "lb/k": "pound/(1000*foot**2)", "oz/k": "ounce/(1000*foot**2)", "lb/acre": "pound/(43560*foot**2)",
    "g/m2": "g/m**2",
    "kg/ha": "kg/hectare", "kg/100m2": "kg/(100*m**2)", "floz/k": "US_fluid_ounce/(1000*foot**2)",
    "gal/k": "US_liquid_gallon/(1000*foot**2)", "floz/acre": "US_fluid_ounce/(43560*foot**2)",
    "gal/acre": "US_liquid_gallon/(43560*foot**2)", "ml/m2": "ml/m**2", "l/ha": "l/hectare", "in/h": "inch/hour",
    "mm/h": "mm/hour", "mph": "mile/hour", "km/h": "km/hour", "m/s": "m/s", "min": "minute", "h": "hour", "d": "day",
    "wk": "week", "/sqft": "1/foot**2", "/m2": "1/m**2", "lb/gal": "pound/US_liquid_gallon", "g/l": "g/l",
}  # fmt: skip
PINT_BASE = {
    D.LENGTH: "mm", D.MASS: "g", D.VOLUME: "ml", D.AREA: "m**2", D.MASS_RATE: "g/m**2", D.VOLUME_RATE: "ml/m**2",
    D.RAIN_RATE: "mm/hour", D.SPEED: "m/s", D.MINUTES: "minute", D.DAYS: "day", D.COUNT_RATE: "1/m**2", D.ACTIVE: "g/l",
}  # fmt: skip


@pytest.fixture(scope="module")
def registry() -> pint.UnitRegistry:
    return pint.UnitRegistry()


def test_an_independent_library_agrees_on_every_unit_both_know(registry: pint.UnitRegistry) -> None:
    ours = {unit.name for unit in UNITS.values() if unit.dimension in PINT_BASE}
    assert ours == set(PINT)
    for name, theirs in PINT.items():
        unit = UNITS[name]
        expected = registry(theirs).to(PINT_BASE[unit.dimension]).magnitude
        assert float(unit.factor) == pytest.approx(expected, rel=1e-12), name
    for value in (-40.0, 0.0, 68.0, 98.6):
        expected = registry.Quantity(value, "degF").to("degC").magnitude
        assert parse(f"{value}F").value == pytest.approx(expected, abs=1e-12)


@given(st.sampled_from(sorted(UNITS)), st.floats(1e-6, 1e6))
def test_there_and_back_is_the_same_number(name: str, number: float) -> None:
    unit = UNITS[name]
    base = float(Fraction(number) * unit.factor + unit.offset)
    assert in_unit(base, unit) == pytest.approx(number, rel=1e-12, abs=1e-12 * (abs(float(unit.offset)) + 1))


MEASURED = st.one_of(
    st.floats(1e-9, 1e9), st.just(0.0), st.integers(0, 10**9).map(float), st.integers(1, 10**6).map(lambda n: n / 64)
)


@given(MEASURED, st.sampled_from(sorted(Dimension)), st.sampled_from(["us", "metric"]))
def test_what_is_written_is_read_back_to_the_last_bit(value: float, dimension: Dimension, system: str) -> None:
    text = write(value, dimension, system)
    assert parse(text).value == value
    assert parse(text).dimension is dimension
    assert len(text) <= 40


@given(st.floats(-273.15, 1e4).map(lambda v: v if abs(v) > 1e-9 else 0.0), st.sampled_from(["us", "metric"]))
def test_temperatures_below_nought_are_read_back_too(value: float, system: str) -> None:
    assert parse(write(value, D.TEMPERATURE, system)).value == value


@given(st.integers(1, 4000).map(lambda n: n / 8), st.sampled_from(sorted(UNITS)))
def test_what_was_typed_is_written_as_it_was_typed(number: float, name: str) -> None:
    unit = UNITS[name]
    systems = [s for s, units in (("us", US), ("metric", METRIC)) if units.get(unit.dimension, "") == name]
    value = parse(f"${number}" if name == "$" else f"{number}{name}").value
    for system in systems:
        assert write(value, unit.dimension, system) == f"{number:.10g}{unit.name}"
        assert unit_for(unit.dimension, system) == unit


def test_a_value_can_be_written_in_one_unit_only() -> None:
    assert write_as(25.4, UNITS["in"]) == "1in"
    assert write_as(4.5, UNITS["$"]) == "$4.5"


@pytest.mark.parametrize(
    ("text", "value", "dimension"),
    [("3in", 76.2, D.LENGTH), ("3 in", 76.2, D.LENGTH), ("1/4in", 6.35, D.LENGTH), ("1/4 in", 6.35, D.LENGTH),
     (".5in", 12.7, D.LENGTH),
     ("5.in", 127.0, D.LENGTH), ("3IN", 76.2, D.LENGTH), ("+3in", 76.2, D.LENGTH), ("2400 sq ft", 222.967296, D.AREA),
     ("2400 ft²", 222.967296, D.AREA), ("5.5 fl oz", 162.65441259375, D.VOLUME), ("68 °F", 20.0, D.TEMPERATURE),
     ("0.6 in/h", 15.24, D.RAIN_RATE), ("$31", 31.0, D.MONEY), ("$4.50", 4.5, D.MONEY), ("40 %", 40.0, D.PERCENT),
     ("2x", 2.0, D.TIMES), ("1.5bag", 1.5, D.BAGS), ("2 bags", 2.0, D.BAGS), ("6.1", 6.1, D.NUMBER),
     ("0in", 0.0, D.LENGTH),
     ("4/sqft", 43.05564166683889, D.COUNT_RATE), ("2h", 120.0, D.MINUTES), ("1.5wk", 10.5, D.DAYS)],
)  # fmt: skip
def test_a_quantity_is_read(text: str, value: float, dimension: Dimension) -> None:
    assert parse(text).value == value
    assert parse(text).dimension is dimension


@pytest.mark.parametrize(
    ("text", "why", "suggestion"),
    [("", "not a number", ""), ("in", "not a number", ""), ("in3", "not a number", ""), ("-3in", "below zero", ""),
     ("-0.1lb", "below zero", ""),
     ("3inn", "not a unit", "in"), ("3 quarts", "not a unit", ""), ("1/0in", "divided by nothing", ""),
     ("3in4", "not a unit", "in"),
     ("1e3in", "not a unit", ""), ("nan", "not a number", ""), ("infin", "not a number", ""),
     ("2,55555sqft", "not a unit", "sqft"),
     ("9999999999m", "too large", ""), ("9" * 400 + "in", "too long", ""), ("9" * 5000 + "in", "too long", ""),
     ("$3in", "money", ""),
     ("$-3", "below zero", ""), ("--3in", "not a number", ""), ("3..in", "not a unit", "in"),
     ("3\u200bin", "not a unit", "in")],
)  # fmt: skip
def test_what_is_no_quantity_is_refused_with_its_word(text: str, why: str, suggestion: str) -> None:
    with pytest.raises(Refusal) as caught:
        parse(text)
    assert why in caught.value.why
    assert caught.value.suggestion == suggestion
    assert text.startswith(caught.value.word)


@pytest.mark.parametrize(
    ("text", "dimension", "why"),
    [("12", D.MASS, "12lb"), ("12in", D.MASS, "wrong kind"), ("12oz", D.VOLUME, "5.5floz"),
     ("12floz", D.MASS, "12lb"), ("4lb", D.MASS_RATE, "4lb/k")],
)  # fmt: skip
def test_a_unit_of_the_wrong_kind_is_refused_with_an_example(text: str, dimension: Dimension, why: str) -> None:
    with pytest.raises(Refusal) as caught:
        parse_as(text, dimension)
    assert caught.value.word == text
    assert why in caught.value.why


def test_a_unit_of_every_system_belongs_to_its_dimension() -> None:
    for units in (US, METRIC):
        for dimension, name in units.items():
            assert UNITS[name].dimension is dimension
    for dimension in Dimension:
        for system in ("us", "metric"):
            assert unit_for(dimension, system).dimension is dimension


@pytest.mark.parametrize(
    ("text", "same"),
    [("2,400sqft", "2400sqft"), ("12,345,678m2", "12345678m2"), ("2,5kg", "2.5kg"), ("0,25in", "0.25in"),
     ("1 1/4in", "1.25in"), ('3"', "3in")],
)  # fmt: skip
def test_commas_and_mixed_fractions_as_people_write_them(text: str, same: str) -> None:
    assert parse(text).value == parse(same).value
