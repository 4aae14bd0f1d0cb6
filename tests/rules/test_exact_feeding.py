"""Feedings that come too soon, into heat, rest or frost, dry or washed; and new grass that is not fed.

Gaps by slow release: Virginia Dept. of Conservation and Recreation, 2003; quick nitrogen from 85 F on, and a quarter of
an inch of water after it: Iowa State Univ. Extension, 2013, and Purdue Univ., AY-22, 1998.
"""

import pytest

from journal.season.history import History
from tests.scenario import book, find, judged, later, lawn, level, raised, rules_raised, the, typed, weather

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
        assert " F" not in words and " in " not in words.replace(" in the", "") and "lb" not in words
    assert level(diary, "2026-07-04", "feed-heat") == ""


# watered in, and washed out

FILED = "2026-06-05 rain 0in"
FED = "2026-06-10 feed pond-ridge 5lb front"


def test_no_water_within_two_days_is_a_note_until_it_is_watered_or_two_weeks_are_over() -> None:
    diary = book(FILED, FED)
    assert level(diary, "2026-06-12", "feed-water-in") == ""
    assert level(diary, "2026-06-13", "feed-water-in") == "note"
    assert level(typed(diary, "2026-06-15 water 0.25in front"), "2026-06-15", "feed-water-in") == ""
    kept_up = typed(diary, "2026-06-18 rain 0in")
    assert level(kept_up, "2026-06-23", "feed-water-in") == "note"
    assert level(kept_up, "2026-06-24", "feed-water-in") == ""


@pytest.mark.parametrize(
    "water",
    ["2026-06-10 water 0.25in front", "2026-06-12 rain 0.3in", "2026-06-11 water front", "2026-06-11 water deep front"],
)
def test_water_counts_in_the_owners_favour(water: str) -> None:
    assert level(book(FILED, FED, water), "2026-06-14", "feed-water-in") == ""


def test_where_no_water_is_ever_logged_nothing_is_said() -> None:
    assert level(book(FED), "2026-06-14", "feed-water-in") == ""


def test_a_timer_waters_it_in_whether_or_not_its_depth_is_known() -> None:
    timer = "2026-06-01 schedule front 30min mon thu 6:00"
    for on in (lawn(), lawn(('rate = "0.6 in/h"', 'slope = "none"'))):
        assert level(book(timer, FED, on=on), "2026-06-14", "feed-water-in") == ""


def test_weed_and_feed_is_watered_in_once_its_rain_free_hours_are_over() -> None:
    diary = book(FILED, "2026-06-10 feed green-gate 5lb front")
    assert level(diary, "2026-06-12", "feed-water-in") == ""
    assert level(diary, "2026-06-13", "feed-water-in") == "note"
    early = typed(diary, "2026-06-10 water 0.3in front")
    assert level(early, "2026-06-13", "feed-water-in") == "note"
    assert level(typed(diary, "2026-06-12 water 0.3in front"), "2026-06-13", "feed-water-in") == ""


@pytest.mark.parametrize(
    ("rain", "expected"),
    [
        ("2026-06-10 rain 0.5in", "note"), ("2026-06-11 rain 0.5in", "note"), ("2026-06-11 rain 0.45in", ""),
        ("2026-06-12 rain 1in", ""), ("2026-06-09 rain 1in", ""),
    ],
)  # fmt: skip
def test_half_an_inch_within_a_day_may_wash_it_out(rain: str, expected: str) -> None:
    assert level(book(*sorted((FED, rain))), "2026-06-12", "feed-wash") == expected


def test_rain_before_the_feeding_washed_nothing_out() -> None:
    diary = book("2026-06-10 rain 0.6in 7:00", "2026-06-10 feed pond-ridge 5lb front 9:00")
    assert level(diary, "2026-06-10", "feed-wash") == ""
    unsure = raised(book("2026-06-10 rain 0.6in", FED), "2026-06-10", "feed-wash")
    assert unsure is not None
    assert "log the time" in unsure.do


BARRIER_IN_IT = (
    'actives = ["2,4-d", "dicamba"]', 'actives = ["prodiamine"]\nform = "granule"\n[product.label]\nwater_in = "0.5 in"'
)  # fmt: skip


@pytest.mark.parametrize(("depth", "expected"), [("0.5in", ""), ("0.6in", "note")])
def test_water_that_its_label_asks_for_washes_nothing_out(depth: str, expected: str) -> None:
    diary = book("2026-04-20 feed green-gate 6lb front", f"2026-04-21 water {depth} front", on=lawn(BARRIER_IN_IT))
    assert level(diary, "2026-04-21", "feed-wash") == expected


# new grass


def test_seedlings_not_fed_are_late_from_day_46_to_day_70() -> None:
    sown = "2026-08-12"
    diary = book(f"{sown} seed quick-rye 9lb front", f"{sown} feed oat-hill 4lb/k front")
    assert level(diary, later(sown, 45), "seedling-feed") == ""
    assert level(diary, later(sown, 46), "seedling-feed") == "late"
    assert level(diary, later(sown, 70), "seedling-feed") == "late"
    assert level(diary, later(sown, 71), "seedling-feed") == ""


@pytest.mark.parametrize(("days", "counts"), [(20, False), (21, True), (45, True)])
def test_a_feeding_from_day_21_on_is_that_feeding(days: int, counts: bool) -> None:
    sown = "2026-08-12"
    diary = book(f"{sown} seed quick-rye 9lb front", f"{later(sown, days)} feed pond-ridge 2.4lb front")
    assert level(diary, later(sown, 46), "seedling-feed") == ("" if counts else "late")


def test_never_in_the_last_week_of_growth_nor_in_closed_dates() -> None:
    late = book("2026-09-10 seed quick-rye 9lb front", "2026-09-10 feed oat-hill 4lb/k front")
    assert level(late, "2026-11-03", "seedling-feed") == "late"
    assert level(late, "2026-11-04", "seedling-feed") == ""
    assert level(late, "2026-11-29", "seedling-feed") == ""
    bound = lawn(('name = "North Lane"', 'name = "North Lane"\nlocal_closed = ["10-20", "03-31"]'))
    shut = book(SEED.replace("three-river", "quick-rye"), STARTER, on=bound)
    assert level(shut, "2026-10-22", "seedling-feed") == ""


def test_not_within_four_weeks_of_a_late_starter() -> None:
    sown = "2026-08-12"
    diary = book(f"{sown} seed quick-rye 9lb front", f"{later(sown, 20)} feed oat-hill 4lb/k front")
    assert level(diary, later(sown, 47), "seedling-feed") == ""
    assert level(diary, later(sown, 48), "seedling-feed") == "late"


def test_not_before_the_seedlings_are_up() -> None:
    sown = "2026-08-12"
    lines = (f"{sown} seed quick-rye 9lb front", f"{sown} feed oat-hill 4lb/k front")
    up = book(*lines, f"{later(sown, 50)} see emerged front")
    assert level(up, later(sown, 50), "seedling-feed") == "late"


@pytest.mark.parametrize("sown", ["2026-08-05", "2026-08-20", "2026-09-06", "2026-09-20"])
def test_a_new_stand_hears_of_one_feeding_at_a_time(sown: str) -> None:
    """The starter to day 21, the light feeding to day 70, then the usual ones."""
    wants = {"starter-missing", "seedling-feed", "feed-overdue"}
    diary = book("2026-04-20 feed pond-ridge 7lb front", f"{sown} seed three-river 9lb front")
    for at in range(100):
        said = rules_raised(diary, later(sown, at)) & wants
        assert len(said) <= 1, (at, said)
        allowed = (
            {"starter-missing"} if at <= 21 else {"seedling-feed"} if at < 70 else {"seedling-feed", "feed-overdue"}
        )
        assert said <= allowed, (at, said)


# obeying one flag never raises another

BLAMES = {
    "feed-closed",
    "feed-dormant",
    "feed-heat",
    "feed-too-soon",
    "feed-dose",
    "feed-year",
    "starter-wrong",
    "phosphate-reason",
}


@pytest.mark.parametrize(
    "lines",
    [
        ("2026-04-20 feed pond-ridge 9lb front",),
        ("2026-04-20 feed slow-oak 9lb front", "2026-06-20 feed slow-oak 9lb front"),
        (SEED,), (SEED, STARTER), (f"{later(SOWN, -20)} feed pond-ridge 9lb front", SEED),
        (SEED, f"{later(SOWN, 15)} feed oat-hill 4lb/k front"),
        ("2026-06-28 see dormant front", "2026-08-20 see green front"),
    ],
)  # fmt: skip
def test_whoever_feeds_on_the_day_it_is_called_late_is_not_blamed(lines: tuple[str, ...]) -> None:
    diary = book(*lines, *weather("2026-06-01", 90, "82F 62F 0in"), *weather("2026-07-10", 12, "91F 70F 0in"))
    for at in range(0, 250):
        day = later("2026-04-10", at)
        if not rules_raised(diary, day) & {"feed-overdue", "starter-missing", "seedling-feed"}:
            continue
        steps = [step for name in ("feed", "starter", "seedling-feed") if (step := find(diary, day, name)) is not None]
        ready = [step for step in steps if step.line and step.state.value in ("open", "late")]
        assert ready, day
        for step in ready:
            said = {flag.rule for flag in judged(diary, day, step.line).raised}
            assert said & BLAMES == set(), (day, step.line, said)
