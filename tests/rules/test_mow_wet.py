"""Mown soon after heavy rain: NC State Extension, Lee County, Lawn Care Essentials, 2015, mows dry grass only."""

import pytest

from tests.scenario import book, later, level, raised

CUT = "2026-06-10 mow 3in front"


@pytest.mark.parametrize(
    ("rain", "expected"),
    [
        ("2026-06-09 rain 0.6in", "note"),
        ("2026-06-09 rain 0.5in", ""),
        ("2026-06-08 rain 2in", ""),
        ("2026-06-10 rain 0.6in", "note"),
        ("2026-06-11 rain 0.6in", ""),
        ("2026-06-09 weather 70F 50F 0.7in", "note"),
        ("2026-06-09 rain 1in since 2026-06-07", ""),
    ],
)
def test_within_a_day_of_half_an_inch(rain: str, expected: str) -> None:
    assert level(book(*sorted([CUT, rain])), "2026-06-11", "mow-wet") == expected


def test_on_one_date_it_asks_for_the_time() -> None:
    note = raised(book(CUT, "2026-06-10 rain 0.6in"), "2026-06-10", "mow-wet")
    assert note is not None
    assert note.headline == "perhaps mown on wet ground"
    assert "time" in note.do
    first = book("2026-06-10 mow 3in front 8:00", "2026-06-10 rain 0.6in 17:00")
    assert level(first, "2026-06-10", "mow-wet") == ""
    after = book("2026-06-10 rain 0.6in 7:00", "2026-06-10 mow 3in front 17:00")
    assert "perhaps" not in (raised(after, "2026-06-10", "mow-wet") or note).headline


def test_with_both_times_24_hours_are_hours() -> None:
    read = "2026-06-09 rain 0.6in 8:00"
    assert level(book(read, "2026-06-10 mow 3in front 8:00"), "2026-06-10", "mow-wet") == "note"
    assert level(book(read, "2026-06-10 mow 3in front 8:01"), "2026-06-10", "mow-wet") == ""


def test_it_clears_with_the_next_cut_or_in_two_weeks() -> None:
    wet = book("2026-06-09 rain 0.6in", CUT)
    assert level(wet, later("2026-06-10", 13), "mow-wet") == "note"
    assert level(wet, later("2026-06-10", 14), "mow-wet") == ""
    assert level(book("2026-06-17 mow 3in front", on=wet), "2026-06-17", "mow-wet") == ""


def test_the_gauge_of_the_zone_beats_the_weather() -> None:
    diary = book("2026-06-09 weather 70F 50F 0.9in", "2026-06-09 rain 0.2in front", CUT)
    assert level(diary, "2026-06-10", "mow-wet") == ""


def test_the_owners_own_rain() -> None:
    diary = book("2026-04-01 set mow-wet rain 1in", "2026-06-09 rain 0.8in", CUT)
    assert level(diary, "2026-06-10", "mow-wet") == ""
