"""An inch a week, where no weather is on file: a rule of thumb, Texas A&M AgriLife, Collin County."""

import pytest

from journal.facts.factors import mm
from journal.facts.house import number
from tests.scenario import book, later, lawn, level, raised, rules_raised, weather

WATERED = "2026-06-20 water 0.9in front"


def test_the_published_inch() -> None:
    assert number("water-week", "water").default == pytest.approx(mm(1))


def test_under_an_inch_in_seven_days_of_summer_is_a_note() -> None:
    diary = book("2026-06-08 water 1in front", WATERED)
    assert level(diary, "2026-06-15", "water-week") == ""  # the inch of the 8th lies seven days back
    assert level(diary, "2026-06-16", "water-week") == "note"
    note = raised(diary, "2026-06-27", "water-week")
    assert note is not None
    assert note.headline == "0.9 in of water in 7 days"
    assert "rule of thumb" in note.why


def test_rain_counts_and_an_inch_clears_it() -> None:
    short = book("2026-06-08 water 0.5in front")
    assert level(short, "2026-06-12", "water-week") == "note"
    assert level(book("2026-06-12 rain 0.5in", on=short), "2026-06-12", "water-week") == ""
    assert level(book("2026-06-12 water 0.5in front", on=short), "2026-06-12", "water-week") == ""


@pytest.mark.parametrize(
    ("on", "expected"), [("2026-05-31", ""), ("2026-06-01", "note"), ("2026-08-31", "note"), ("2026-09-01", "")]
)
def test_from_june_to_august_only(on: str, expected: str) -> None:
    assert level(book(f"{later(on, -3)} water 0.2in front"), on, "water-week") == expected


def test_in_the_south_from_december() -> None:
    south = lawn(
        ("latitude = 42.3", "latitude = -42.3"), ('growth = ["04-10", "11-10"]', 'growth = ["09-10", "05-10"]')
    )
    assert level(book("2026-12-10 water 0.2in front", on=south), "2026-12-12", "water-week") == "note"
    assert level(book("2026-06-10 water 0.2in front", on=south), "2026-06-12", "water-week") == ""


def test_where_weather_is_on_file_the_account_tells() -> None:
    seen = book("2026-06-08 water 0.5in front", *weather("2026-06-01", 10, "75F 55F 0in"))
    assert level(seen, "2026-06-12", "water-week") == ""


def test_a_zone_that_nobody_irrigates_and_one_without_a_diary_of_water() -> None:
    dry = lawn(("irrigated = true", "irrigated = false"))
    assert level(book("2026-06-08 rain 0.1in", on=dry), "2026-06-12", "water-week") == ""
    assert rules_raised(lawn(), "2026-06-12") & {"water-week", "water-unlogged"} == {"water-unlogged"}
    once = book("2026-06-08 water 0.5in front")
    assert rules_raised(once, "2026-06-21") & {"water-week", "water-unlogged"} == {"water-week"}
    assert rules_raised(once, "2026-06-22") & {"water-week", "water-unlogged"} == {"water-unlogged"}


def test_a_timer_a_hose_and_a_deep_watering_are_taken_for_enough() -> None:
    for line in ("2026-06-01 schedule front 5min 6:00", "2026-06-08 water front", "2026-06-08 water deep front"):
        assert level(book("2026-06-07 water 0.1in front", line), "2026-06-12", "water-week") == "", line


def test_a_book_begun_in_july_has_a_week() -> None:
    young = book("2026-07-16 water 0.3in front", on=lawn(set_up="2026-07-15"))
    assert level(young, "2026-07-21", "water-week") == ""
    assert level(young, "2026-07-22", "water-week") == "note"


@pytest.mark.parametrize("line", ["2026-06-05 see dormant front", "2026-06-01 seed three-river 9lb front"])
def test_a_resting_lawn_and_new_grass_are_left_alone(line: str) -> None:
    assert level(book("2026-06-08 water 0.3in front", line), "2026-06-12", "water-week") == ""


def test_the_owners_own_inch() -> None:
    diary = book("2026-05-01 set water-week water 0.5in", "2026-06-08 water 0.5in front")
    assert level(diary, "2026-06-12", "water-week") == ""
