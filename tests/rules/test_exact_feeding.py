"""Feedings that come too soon, into heat, rest or frost, dry or washed; and new grass that is not fed.

Gaps by slow release: Virginia Dept. of Conservation and Recreation, 2003; quick nitrogen from 85 F on, and a quarter of
an inch of water after it: Iowa State Univ. Extension, 2013, and Purdue Univ., AY-22, 1998.
"""

import pytest

from journal.season.history import History
from tests.scenario import book, later, lawn, level, raised, typed

SOWN = "2026-09-06"
SEED = f"{SOWN} seed three-river 9lb front"
STARTER = f"{SOWN} feed oat-hill 4lb/k front"
METRIC = ('name = "North Lane"', 'name = "North Lane"\nunits = "metric"')
DRY = ("irrigated = true", "irrigated = false")


def slow(percent: int) -> History:
    return lawn(('slow = "60% of n"', f'slow = "{percent}% of n"'))


# too soon


@pytest.mark.parametrize(
    ("percent", "pounds", "gap"),
    [(14, 9, 28), (15, 9, 42), (49, 9, 42), (50, 9, 56), (79, 9, 56), (80, 9, 84), (14, 4.5, 14), (80, 3, 28)],
)
def test_the_gap_goes_by_the_earlier_feeding(percent: int, pounds: float, gap: int) -> None:
    first = book(f"2026-05-01 feed slow-oak {pounds}lb front", on=slow(percent))
    for days, expected in ((gap - 1, "loss"), (gap, "")):
        again = later("2026-05-01", days)
        assert level(typed(first, f"{again} feed pond-ridge 7lb front"), again, "feed-too-soon") == expected


def test_more_than_a_full_feeding_asks_for_no_longer_a_gap() -> None:
    first = book("2026-05-01 feed pond-ridge 15lb front")
    assert level(typed(first, "2026-05-29 feed pond-ridge 7lb front"), "2026-05-29", "feed-too-soon") == ""


def test_it_stands_until_the_gap_is_over_and_two_passes_of_one_day_are_none() -> None:
    twice = book("2026-05-01 feed pond-ridge 9lb front", "2026-05-20 feed pond-ridge 4lb front")
    assert level(twice, "2026-05-28", "feed-too-soon") == "loss"
    assert level(twice, "2026-05-29", "feed-too-soon") == ""
    passes = book("2026-05-01 feed pond-ridge 4.5lb front", "2026-05-01 feed pond-ridge 4.5lb front")
    assert level(passes, "2026-05-01", "feed-too-soon") == ""


@pytest.mark.parametrize("line", ["feed pond-ridge 1lb spot 40sqft front", "feed pond-ridge 1lb front"])
def test_a_spot_or_a_trifle_comes_never_too_soon(line: str) -> None:
    assert (
        level(book("2026-05-01 feed pond-ridge 9lb front", f"2026-05-05 {line}"), "2026-05-05", "feed-too-soon") == ""
    )


def test_the_other_zone_was_not_fed() -> None:
    diary = book("2026-05-01 feed pond-ridge 4lb/k front back", "2026-05-10 feed pond-ridge 4lb/k back")
    assert level(diary, "2026-05-10", "feed-too-soon") == ""
    assert level(diary, "2026-05-10", "feed-too-soon", zone="back") == "loss"


@pytest.mark.parametrize(("days", "expected"), [(27, "loss"), (28, ""), (33, ""), (56, "")])
def test_the_light_feeding_of_seedlings_is_free_of_the_gap_from_day_28_on(days: int, expected: str) -> None:
    """A full starter with a fifth of its nitrogen slow asks for 34 days."""
    diary = book(SEED, STARTER, f"{later(SOWN, days)} feed pond-ridge 5lb front")
    assert level(diary, later(SOWN, days), "feed-too-soon") == expected


def test_that_is_one_feeding_of_half_a_pound_at_most() -> None:
    heavy = book(SEED, STARTER, f"{later(SOWN, 28)} feed pond-ridge 6lb front")
    assert level(heavy, later(SOWN, 28), "feed-too-soon") == "loss"
    twice = book(
        SEED, STARTER, f"{later(SOWN, 28)} feed pond-ridge 5lb front", f"{later(SOWN, 35)} feed pond-ridge 5lb front"
    )
    assert level(twice, later(SOWN, 35), "feed-too-soon") == "loss"


# asleep


@pytest.mark.parametrize(
    ("on", "expected"),
    [
        ("2026-11-10", ""), ("2026-11-11", "note"), ("2026-12-01", "note"), ("2026-12-02", "loss"),
        ("2027-03-19", "loss"), ("2027-03-20", "note"), ("2027-04-09", "note"), ("2027-04-10", ""),
    ],
)  # fmt: skip
def test_up_to_three_weeks_outside_growth_is_a_note(on: str, expected: str) -> None:
    assert level(book(f"{on} feed pond-ridge 5lb front"), on, "feed-dormant") == expected


@pytest.mark.parametrize("seen", ["dormant", "frozen", "snow"])
def test_resting_or_frozen_is_a_loss_for_thirty_days(seen: str) -> None:
    diary = book(f"2026-07-01 see {seen} front", "2026-07-05 feed pond-ridge 5lb front")
    assert level(diary, "2026-07-05", "feed-dormant") == "loss"
    assert level(diary, "2026-08-03", "feed-dormant") == "loss"
    assert level(diary, "2026-08-04", "feed-dormant") == ""


def test_green_again_and_thawed_it_may_be_fed() -> None:
    green = book("2026-07-01 see dormant front", "2026-07-05 see green front", "2026-07-06 feed pond-ridge 5lb front")
    assert level(green, "2026-07-06", "feed-dormant") == ""
    thawed = book("2026-04-11 see frozen front", "2026-04-13 see thawed front", "2026-04-13 feed pond-ridge 5lb front")
    assert level(thawed, "2026-04-13", "feed-dormant") == ""


def test_lime_and_a_book_without_dates_of_growth_are_left_alone() -> None:
    undated = lawn(
        ('growth = ["04-10", "11-10"]\n', ""), ('last_frost = "05-06"\n', ""), ('first_frost = "10-05"\n', "")
    )
    assert level(book("2026-12-20 feed pond-ridge 5lb front", on=undated), "2026-12-20", "feed-dormant") == ""


def test_in_the_south_july_is_winter() -> None:
    south = lawn(
        ("latitude = 42.3", "latitude = -42.3"), ('growth = ["04-10", "11-10"]', 'growth = ["09-10", "05-10"]')
    )
    assert level(book("2026-07-01 feed pond-ridge 5lb front", on=south), "2026-07-01", "feed-dormant") == "loss"
    assert level(book("2026-12-20 feed pond-ridge 5lb front", on=south), "2026-12-20", "feed-dormant") == ""


# heat


@pytest.mark.parametrize(("high", "expected"), [("84F", ""), ("85F", "loss"), ("95F", "loss")])
def test_quick_nitrogen_from_85_degrees_on(high: str, expected: str) -> None:
    diary = book(f"2026-06-20 weather {high} 66F 0in", "2026-06-20 feed pond-ridge 5lb front")
    assert level(diary, "2026-06-20", "feed-heat") == expected


@pytest.mark.parametrize(("pounds", "expected"), [(2.5, ""), (2.54, ""), (2.56, "loss")])
def test_a_quarter_pound_of_it_is_borne(pounds: float, expected: str) -> None:
    diary = book("2026-06-20 weather 90F 66F 0in", f"2026-06-20 feed pond-ridge {pounds}lb front")
    assert level(diary, "2026-06-20", "feed-heat") == expected


def test_slow_nitrogen_does_not_burn() -> None:
    diary = book("2026-06-20 weather 90F 66F 0in", "2026-06-20 feed slow-oak 6lb front")
    assert level(diary, "2026-06-20", "feed-heat") == ""


@pytest.mark.parametrize(
    ("water", "expected"),
    [
        ("2026-06-20 water 0.25in front", "note"), ("2026-06-21 water 0.25in front", "note"),
        ("2026-06-21 water 0.2in front", "loss"), ("2026-06-22 water 0.25in front", "loss"),
        ("2026-06-21 rain 0.3in", "note"),
    ],
)  # fmt: skip
def test_water_the_same_or_the_next_day_saves_it(water: str, expected: str) -> None:
    diary = book("2026-06-20 weather 90F 66F 0in", "2026-06-20 feed pond-ridge 5lb front", water)
    assert level(diary, "2026-06-23", "feed-heat") == expected


def test_weed_and_feed_waits_for_its_leaves_to_dry_before_it_is_watered() -> None:
    """Water at once would wash the weed product off."""
    diary = book("2026-06-20 weather 90F 66F 0in", "2026-06-20 feed green-gate 5lb front")
    flag = raised(diary, "2026-06-20", "feed-heat")
    assert flag is not None
    assert flag.do == "water 0.25 in as soon as the leaves may get wet, Mon 22 Jun"
    watered = typed(diary, "2026-06-22 water 0.25in front")
    assert level(watered, "2026-06-22", "feed-heat") == "note"
    assert level(watered, "2026-06-22", "wash-off") == ""


def test_the_days_own_high_decides_and_the_day_before_does_not() -> None:
    diary = book(
        "2026-06-19 weather 95F 66F 0in", "2026-06-20 weather 80F 60F 0in", "2026-06-20 feed pond-ridge 5lb front"
    )
    assert level(diary, "2026-06-20", "feed-heat") == ""


def test_a_starter_on_a_watered_seedbed_in_a_hot_week_is_a_note() -> None:
    diary = book(
        "2026-08-20 seed quick-rye 9lb front", "2026-08-20 water 0.1in front", "2026-08-20 weather 88F 66F 0in",
        "2026-08-20 feed oat-hill 4lb/k front",
    )  # fmt: skip
    assert level(diary, "2026-08-20", "feed-heat") == "note"


def test_what_was_read_on_the_line_stands_in_for_a_high_not_yet_known() -> None:
    read = book("2026-06-20 feed pond-ridge 5lb front temp 88F")
    assert level(read, "2026-06-20", "feed-heat") == "loss"
    assert level(typed(read, "2026-06-20 weather 80F 60F 0in"), "2026-06-20", "feed-heat") == ""


def test_heat_stands_two_weeks_and_speaks_celsius_in_a_metric_book() -> None:
    diary = book("2026-06-20 weather 32C 20C 0mm", "2026-06-20 feed pond-ridge 2.4kg front", on=lawn(METRIC))
    flag = raised(diary, "2026-07-03", "feed-heat")
    assert flag is not None
    assert "32 C" in flag.headline
    for words in (flag.headline, flag.why, flag.do, flag.clears):
        for unit in (" F", "lb", " in "):
            assert unit not in words.replace(" in the", ""), words
    assert level(diary, "2026-07-04", "feed-heat") == ""
