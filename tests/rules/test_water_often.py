"""Watering on too many days.

Once a week, thoroughly, after the first mowings: Iowa State Univ. Extension, How should I water a newly seeded lawn?
"""

from journal.season.history import History
from tests.scenario import book, later, lawn, level, raised

WEEK = "2026-06-10"


def daily(count: int, words: str = "water 20min front", first: str = WEEK, on: History | None = None) -> History:
    return book(*(f"{later(first, at)} {words}" for at in range(count)), on=on)


def test_the_fourth_date_of_a_week_is_a_note_the_next_day() -> None:
    assert level(daily(3), later(WEEK, 3), "water-often") == ""
    assert level(daily(4), later(WEEK, 3), "water-often") == ""  # the running day is not judged
    note = raised(daily(4), later(WEEK, 4), "water-often")
    assert note is not None
    assert note.headline == "watered on 4 days of the last 7"
    assert level(daily(4), later(WEEK, 7), "water-often") == "note"
    assert level(daily(4), later(WEEK, 8), "water-often") == ""


def test_cycles_on_one_morning_are_one_date() -> None:
    lines = [f"{later(WEEK, 2 * at)} water 8min front" for at in range(3) for _ in range(3)]
    assert level(book(*lines), later(WEEK, 5), "water-often") == ""


def test_a_sip_does_not_count_nor_water_of_unknown_depth() -> None:
    assert level(daily(6, "water 0.09in front"), later(WEEK, 6), "water-often") == ""
    assert level(daily(6, "water 0.1in front"), later(WEEK, 6), "water-often") == "note"
    assert level(daily(6, "water front"), later(WEEK, 6), "water-often") == ""


def test_a_timer_is_never_blamed() -> None:
    assert level(book(f"{WEEK} schedule front 20min 6:00"), later(WEEK, 8), "water-often") == ""


def test_a_seedbed_and_a_sown_spot_want_it() -> None:
    sown = book("2026-06-05 seed quick-rye 9lb front")
    assert level(daily(7, on=sown), later(WEEK, 7), "water-often") == ""
    spot = book("2026-06-05 seed quick-rye 0.5lb spot 20sqft front")
    assert level(daily(7, on=spot), later(WEEK, 7), "water-often") == ""
    old = book("2026-05-01 seed quick-rye 0.5lb spot 20sqft front")
    assert level(daily(7, on=old), later(WEEK, 7), "water-often") == "note"


def test_the_48_hours_after_a_feeding_or_a_barrier_want_it() -> None:
    fed = book(f"{WEEK} feed pond-ridge 5lb front")
    assert level(daily(6, on=fed), later(WEEK, 6), "water-often") == ""  # three of six are wanted
    assert level(daily(7, on=fed), later(WEEK, 7), "water-often") == "note"
    barrier = book(f"{WEEK} treat spring-wall 7lb front")
    assert level(daily(6, on=barrier), later(WEEK, 6), "water-often") == ""
    leaf = book(f"{later(WEEK, -1)} treat leaf-off 2floz front")
    assert level(daily(6, on=leaf), later(WEEK, 6), "water-often") == "note"


def test_the_owners_own_dates() -> None:
    own = book("2026-05-01 set water-often dates 5x")
    assert level(daily(5, on=own), later(WEEK, 5), "water-often") == ""
    assert level(daily(6, on=own), later(WEEK, 6), "water-often") == "note"
    assert level(daily(4, on=lawn()), later(WEEK, 4), "water-often", "back") == ""
