"""Worked checks in print that lie across several reckonings, each with its publication beside it."""

import pytest

from journal.reckon.calls import reckonings
from journal.reckon.cut_height import cut_range, two_thirds_mm
from journal.reckon.degree_days import average
from journal.reckon.feedings import nitrogen_of_year
from journal.record.quantity import in_unit, parse
from journal.record.unit import UNITS
from journal.season.growth import growing
from journal.season.history import Past
from tests.reckon.called import figures
from tests.reckon.seattle import seattle
from tests.scenario import LAWN, book, day, lawn, the, weather

CORNELL = "Cornell Gardening, The 'One-Third Rule'"
CORNELL_TIPS = "Cornell Univ. lawn care tips, reprinted 2010"
PURDUE = "Purdue Univ. (Reicher & Throssell), AY-8, Mowing, Thatching, Aerifying, and Rolling Turf, 1998"
PATTON = "Purdue Univ. (Patton), Use growing degree days to better time your application, Turf magazine"
FIDANZA = "Fidanza, Dernoeden & Zhang, Crop Science 36, 1996"
IOWA = "Iowa State Univ. Extension, When can I stop mowing the lawn in the fall?, 2021"
PNW = "Pacific Northwest Weed Management Handbook, Annual Grass Weeds"
KIMBALL = "Kimball Area (newspaper column): corn gluten meal, about 4 lb of nitrogen a year"
ALBANY = "Albany County (Wyoming) Weed and Pest, Calibrating your sprayer"
LB_PER_K = float(UNITS["lb/k"].factor)

GLUTEN = f"""{LAWN}
[[product]]
name = "yellow-meal"
kind = "pre-emergent"
analysis = "10-0-0"
actives = ["corn gluten meal"]
form = "granule"
"""


def standing(inches: float) -> Past:
    """The front lawn on a day of May on which it was measured that high."""
    return book(f"2026-05-20 height {inches}in front").on("front", day("2026-05-20"))


@pytest.mark.parametrize(
    ("stands", "cut", "source"), [(4.5, 3, CORNELL), (1.5, 1, CORNELL_TIPS)], ids=["cut at 3", "cut at 1"]
)
def test_a_third_goes_at_most(stands: float, cut: float, source: str) -> None:
    two_thirds = two_thirds_mm(standing(stands))
    assert two_thirds is not None
    assert two_thirds == pytest.approx(cut * 25.4, rel=1e-12), source


def test_from_four_inches_three_may_be_left() -> None:
    # a quarter goes, less than a third: PURDUE
    two_thirds = two_thirds_mm(standing(4))
    assert two_thirds is not None
    assert two_thirds < 3 * 25.4, PURDUE
    assert cut_range(standing(4)).holds(3 * 25.4), PURDUE


def test_the_plan_goes_no_lower() -> None:
    grown = book("2026-05-10 mow 2.5in front", "2026-05-20 height 4.5in front")
    said = the(grown, "2026-05-20", "mow")
    assert said.amount == "cut at 3 in, no lower: two thirds of the 4.5 in that stand, then down every 2 to 4 days", (
        CORNELL
    )
    lower = book("2026-05-10 mow 3in front", "2026-05-20 height 4in front")
    assert the(lower, "2026-05-20", "mow").amount == "cut at 3 in", PURDUE


def test_a_week_of_highs_of_48_ends_the_growth_of_the_year() -> None:
    # central Iowa, 12 November: IOWA
    long_autumn = lawn(('growth = ["04-10", "11-10"]', 'growth = ["04-10", "11-30"]'))
    mild = book(*weather("2026-10-20", 17, "62F 44F 0in"), on=long_autumn)
    cold = book(*weather("2026-11-06", 7, "48F 32F 0in"), on=mild)
    assert growing(cold.on("front", day("2026-11-05")))
    assert not growing(cold.on("front", day("2026-11-12"))), IOWA
    still_mild = book(*weather("2026-11-06", 7, "62F 44F 0in"), on=mild)
    assert growing(still_mild.on("front", day("2026-11-12"))), IOWA


def test_growth_of_the_same_day_over_another_base() -> None:
    # 58 and 40 F bring nothing over 50 F (PATTON), and 17 over 32 F
    assert (average(40, 58, 50), average(40, 58, 32)) == (0, 17), PATTON


def test_twelve_degrees_celsius_are_53_point_6_fahrenheit() -> None:
    assert in_unit(parse("12C").value, UNITS["f"]) == pytest.approx(53.6, rel=1e-12), FIDANZA
    span = "--from 2015-04-01 --to 2015-05-31"
    ask = next(one for one in reckonings() if one.name == "degree-days").read
    celsius, fahrenheit = (
        ask(f"--base {base} {span}".split()).answer(seattle()).as_json()["degree_days_f"] for base in ("12C", "53.6F")
    )
    assert celsius is not None
    assert celsius > 0
    assert celsius == pytest.approx(fahrenheit, rel=1e-9)


def test_corn_gluten_meal_feeds() -> None:
    found = figures("spread --analysis 10-0-0 --amount 20lb --area 1000sqft")
    assert found["n_lb_per_1000sqft"] == pytest.approx(2.0, rel=1e-12), PNW
    once = book("2026-04-05 treat yellow-meal 20lb/k front", on=lawn(toml=GLUTEN))
    twice = book("2026-08-15 treat yellow-meal 20lb/k front", on=once)
    for diary, pounds in ((once, 2.0), (twice, 4.0)):
        fed = nitrogen_of_year(diary.on("front", day("2026-09-01")), 2026)
        assert fed / LB_PER_K == pytest.approx(pounds, rel=1e-9), KIMBALL


def test_a_boom_of_222_inches_at_five_miles_an_hour() -> None:
    # 3.75 gal a minute; five miles an hour are 440 ft in that minute: 20 gal an acre, ALBANY
    swath = figures("area --rect 440ft,18.5ft")["sqft"]
    found = figures(f"calibrate-sprayer --caught 3.75gal --area {swath:g}sqft")
    assert found["gal_per_acre"] == pytest.approx(20, abs=0.1), ALBANY
    assert found["gal_per_acre"] == pytest.approx(20.0676, abs=1e-4)


@pytest.mark.parametrize(
    ("rate", "ounces", "milliliters"),
    [("64floz/acre", 1.5, 43), ("32floz/acre", 0.75, None), ("16floz/acre", 0.367, None)],
    ids=["4 pints", "2 pints", "16 fl oz"],
)
def test_a_rate_by_the_acre_on_a_thousand_square_feet(rate: str, ounces: float, milliliters: float | None) -> None:
    # PNW's own figures round up by as much as 2 %; 16 fl oz is a year's limit of 560 g/ha out of 4 lb a gallon
    found = figures(f"spray --rate {rate} --area 1000sqft --carrier 1gal/k --tank 4gal")["product_floz"]
    assert found == pytest.approx(ounces, rel=0.025), PNW
    if milliliters is not None:
        assert parse(f"{found}floz").value == pytest.approx(milliliters, abs=0.5), PNW


def test_a_years_limit_by_the_hectare_and_by_the_acre() -> None:
    # 560 g/ha in two to four uses: HortScience 53(11), 2018; labels print it as 0.5 lb an acre
    assert in_unit(parse("0.56kg/ha").value, UNITS["lb/acre"]) == pytest.approx(0.4996, abs=5e-5)


def test_a_bag_over_its_printed_area_and_the_rate_by_the_acre_agree() -> None:
    # 50 lb over 8,772 sq ft, and 250 lb an acre: label of a pre-emergent granule holding dithiopyr
    by_bag = figures("calibrate-spreader --caught 50lb --area 8772sqft")["rate_lb_per_1000sqft"]
    assert by_bag == pytest.approx(in_unit(parse("250lb/acre").value, UNITS["lb/k"]), abs=0.05)
    assert by_bag == pytest.approx(5.7, abs=0.005)
