"""When grass grows: by dates, by weather, by what was seen."""

from datetime import date

import pytest

from journal.season.growth import (
    began,
    dormant_open,
    frozen_open,
    growing,
    growth_end,
    growth_window,
    next_start,
    northern_day,
    season_before,
)
from journal.season.history import History, Past
from tests.scenario import book, day, lawn, weather

NO_GROWTH = ('growth = ["04-10", "11-10"]\n', "")
NO_FROSTS = ('last_frost = "05-06"\nfirst_frost = "10-05"\n', "")
SOUTH = (("latitude = 42.3", "latitude = -42.3"), ('growth = ["04-10", "11-10"]', 'growth = ["09-10", "05-10"]'))


def front(history: History, on: str) -> Past:
    return history.on("front", day(on))


def test_the_owners_season_or_the_frosts() -> None:
    assert growth_window(lawn().lawn(day("2026-06-01")), 2026) == (date(2026, 4, 10), date(2026, 11, 10))
    by_frost = lawn(NO_GROWTH).lawn(day("2026-06-01"))
    assert growth_window(by_frost, 2026) == (date(2026, 4, 15), date(2026, 11, 9))
    assert growth_window(lawn(NO_GROWTH, NO_FROSTS).lawn(day("2026-06-01")), 2026) is None


def test_south_of_the_equator_the_season_crosses_the_new_year() -> None:
    south = lawn(*SOUTH)
    here = south.lawn(day("2026-06-01"))
    assert growth_window(here, 2026) == (date(2026, 9, 10), date(2027, 5, 10))
    assert growing(front(south, "2027-01-15"))
    assert not growing(front(south, "2026-07-01"))
    frosts = lawn(
        ("latitude = 42.3", "latitude = -42.3"), NO_GROWTH, ('last_frost = "05-06"', 'last_frost = "10-01"'),
        ('first_frost = "10-05"', 'first_frost = "04-20"'),
    )  # fmt: skip
    assert growth_window(frosts.lawn(day("2026-06-01")), 2026) == (date(2026, 9, 10), date(2027, 5, 25))
    assert str(northern_day(here, date(2027, 1, 15))) == "07-15"
    assert str(northern_day(lawn().lawn(day("2026-06-01")), date(2028, 2, 29))) == "02-28"


@pytest.mark.parametrize(
    ("on", "grows"), [("2026-04-09", False), ("2026-04-10", True), ("2026-11-10", True), ("2026-11-11", False)]
)
def test_both_ends_are_in_the_season(on: str, grows: bool) -> None:
    assert growing(front(lawn(), on)) is grows


def test_the_end_of_this_season_and_the_next_start() -> None:
    assert growth_end(front(lawn(), "2026-01-01")) == date(2026, 11, 10)
    here = lawn().lawn(day("2026-06-01"))
    assert next_start(here, date(2026, 4, 9)) == date(2026, 4, 10)
    assert next_start(here, date(2026, 4, 10)) == date(2027, 4, 10)
    assert season_before(here, date(2026, 4, 9)) == (date(2025, 4, 10), date(2025, 11, 10))


def test_a_warm_spring_begins_it_up_to_three_weeks_early() -> None:
    warm = book(*weather("2026-03-01", 60, "60F 40F 0in"))
    assert not growing(front(warm, "2026-03-19"))
    assert growing(front(warm, "2026-03-20"))
    assert began(front(warm, "2026-06-01")) == date(2026, 3, 20)


def test_a_cold_spring_begins_it_late() -> None:
    cold = book(*weather("2026-03-01", 50, "48F 30F 0in"), *weather("2026-04-20", 12, "62F 42F 0in"))
    assert not growing(front(cold, "2026-04-20"))
    assert began(front(cold, "2026-06-01")) == date(2026, 4, 24)


def test_eight_days_of_ten_are_needed() -> None:
    assert growing(front(book(*weather("2026-10-05", 7, "30F 20F 0in")), "2026-10-11"))
    assert not growing(front(book(*weather("2026-10-05", 8, "30F 20F 0in")), "2026-10-12"))


@pytest.mark.parametrize(("words", "ends"), [("60F 40F 0in", False), ("59F 40F 0in", True)])
def test_it_ends_below_a_mean_of_50(words: str, ends: bool) -> None:
    assert growing(front(book(*weather("2026-10-10", 10, words)), "2026-10-19")) is not ends


@pytest.mark.parametrize(("words", "begins"), [("55F 35F 0in", True), ("54F 35F 0in", False)])
def test_it_begins_at_a_mean_of_45(words: str, begins: bool) -> None:
    assert growing(front(book(*weather("2026-03-20", 30, words)), "2026-04-15")) is begins


def test_before_the_average_first_frost_cold_does_not_end_it() -> None:
    early = book(*weather("2026-09-20", 10, "40F 30F 0in"))
    assert growing(front(early, "2026-09-29"))


def test_a_warm_spell_does_not_reopen_it() -> None:
    diary = book(*weather("2026-10-06", 12, "45F 35F 0in"), *weather("2026-10-18", 20, "75F 60F 0in"))
    assert not growing(front(diary, "2026-10-30"))


def test_a_warm_autumn_on_file_lengthens_it() -> None:
    diary = book(*weather("2026-10-25", 30, "64F 48F 0in"))
    assert growing(front(diary, "2026-11-20"))
    assert not growing(front(diary, "2026-11-27"))


def test_rest_is_seen_and_ends_when_it_is_green_or_in_spring() -> None:
    diary = book("2026-07-20 see dormant front")
    assert not growing(front(diary, "2026-07-20"))
    assert growing(front(diary, "2026-07-19"))
    assert dormant_open(front(book("2026-08-20 mow 3in front", on=diary), "2026-08-21")) is not None
    assert growing(front(book("2026-08-20 see green front", on=diary), "2026-08-20"))
    assert dormant_open(front(diary, "2027-04-09")) is not None
    assert dormant_open(front(diary, "2027-04-10")) is None
    assert dormant_open(diary.on("back", day("2026-08-01"))) is None


def test_frozen_ground_thaws_when_seen_when_mild_or_after_two_weeks() -> None:
    diary = book("2026-12-01 see frozen front")
    assert frozen_open(front(diary, "2026-12-14")) is not None
    assert frozen_open(front(diary, "2026-12-15")) is None
    assert frozen_open(front(book("2026-12-03 see thawed front", on=diary), "2026-12-03")) is None
    mild = book(*weather("2026-12-02", 3, "46F 30F 0in"), on=diary)
    assert frozen_open(front(mild, "2026-12-03")) is not None
    assert frozen_open(front(mild, "2026-12-04")) is None
