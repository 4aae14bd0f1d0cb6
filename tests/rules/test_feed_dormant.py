"""Fed while the grass rests. Publications disagree on feeding as growth ends: Univ. of Minnesota Extension, Rethinking
Late-Fall Nitrogen Fertility for Home Lawns, 2012, is against it, Purdue Univ. Turfgrass Science for it. Three weeks
and the rest are judgment.
"""

import pytest

from tests.scenario import book, later, lawn, level, raised, weather


def fed(on: str, *before: str) -> str:
    return level(book(*before, f"{on} feed pond-ridge 2lb/k front"), on, "feed-dormant")


def test_a_lawn_seen_dormant_is_not_fed_until_it_is_green() -> None:
    assert fed("2026-07-20", "2026-07-10 see dormant front") == "loss"
    assert fed("2026-07-20", "2026-07-10 see dormant front", "2026-07-20 see green front") == ""
    assert fed("2026-07-20", "2026-07-10 see dormant back") == ""


def test_nor_is_frozen_ground() -> None:
    flag = raised(
        book("2026-11-05 see frozen front", "2026-11-06 feed pond-ridge 2lb/k front"), "2026-11-06", "feed-dormant"
    )
    assert flag is not None
    assert (flag.level, flag.headline) == ("loss", "fed on frozen ground")
    assert fed("2026-11-09", "2026-11-05 see frozen front", "2026-11-08 see thawed front") == ""


@pytest.mark.parametrize(
    ("on", "expected"),
    [("2026-11-10", ""), ("2026-11-11", "note"), ("2026-12-01", "note"), ("2026-12-02", "loss"),
     ("2027-03-19", "loss"), ("2027-03-20", "note"), ("2027-04-09", "note"), ("2027-04-10", "")],
)  # fmt: skip
def test_three_weeks_outside_growth_are_a_note(on: str, expected: str) -> None:
    assert fed(on) == expected


def test_the_note_says_that_publications_disagree() -> None:
    flag = raised(book("2026-11-20 feed pond-ridge 2lb/k front"), "2026-11-20", "feed-dormant")
    assert flag is not None
    assert "10 days outside growth; publications disagree" in flag.why


def test_the_weather_on_file_ends_growth_sooner() -> None:
    cold = weather("2026-10-01", 25, "50F 38F 0in")
    assert fed("2026-10-24", *cold) == "note"
    assert fed("2026-10-24") == ""


def test_trifles_and_lime_are_no_feeding_and_nothing_is_known_without_dates() -> None:
    assert level(book("2026-12-10 feed pond-ridge 0.5lb/k front"), "2026-12-10", "feed-dormant") == ""
    unknown = lawn(('growth = ["04-10", "11-10"]\n', ""), ('last_frost = "05-06"\nfirst_frost = "10-05"\n', ""))
    diary = book("2026-12-10 feed pond-ridge 2lb/k front", on=unknown)
    assert level(diary, "2026-12-10", "feed-dormant") == ""


def test_it_stands_thirty_days_and_the_owner_may_move_both_numbers() -> None:
    diary = book("2026-12-10 feed pond-ridge 2lb/k front")
    assert level(diary, later("2026-12-10", 29), "feed-dormant") == "loss"
    assert level(diary, later("2026-12-10", 30), "feed-dormant") == ""
    own = ("2026-01-02 set feed-dormant note-days 35d", "2026-01-02 set feed-dormant stands-days 10d")
    assert fed("2026-12-10", *own) == "note"
    shorter = book(*own, "2026-12-10 feed pond-ridge 2lb/k front")
    assert (level(shorter, "2026-12-19", "feed-dormant"), level(shorter, "2026-12-20", "feed-dormant")) == ("note", "")


def test_a_lawn_in_the_south_grows_at_the_turn_of_the_year() -> None:
    south = lawn(
        ("latitude = 42.3", "latitude = -42.3"), ('growth = ["04-10", "11-10"]', 'growth = ["09-10", "05-10"]')
    )
    for on, expected in (("2026-12-10", ""), ("2026-07-10", "loss"), ("2026-05-20", "note")):
        diary = book(f"{on} feed pond-ridge 2lb/k front", on=south)
        assert level(diary, on, "feed-dormant") == expected
