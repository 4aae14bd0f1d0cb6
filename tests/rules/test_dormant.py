"""A lawn left to rest in drought.

Half an inch every four weeks, or 1 to 1.5 in every four to six: Purdue Univ. Turfgrass Science, Maximizing Lawn
Performance Under Drought, and Drought-Stressed Turf, 2015. What was sown this spring is not let rest: Facts and Advice
on Turf Survival in Drought.
"""

from datetime import date

import pytest

from journal.facts.factors import mm
from journal.facts.house import number
from journal.season.history import History
from journal.standing import findings
from tests.scenario import book, day, find, later, lawn, level, raised, rules_raised, weather

RESTS = "2026-06-20 see dormant front"
DRY = weather("2026-06-01", 120, "85F 65F 0in")


def thirst(*lines: str) -> list[str]:
    return [RESTS, *DRY, *lines]


def of(diary: History, on: str | date) -> set[str]:
    """The levels of the flags on thirst that day, leaving out the question."""
    found = findings(diary, day(on))
    return {f.level.value for f in found if f.rule == "dormant-thirst" and not f.subject and "front" in f.zones}


def test_the_published_rescue() -> None:
    assert number("dormant-thirst", "days").default == 4 * 7
    assert number("dormant-thirst", "water").default == pytest.approx(mm(0.5))


def test_late_after_more_than_28_days_without_half_an_inch() -> None:
    diary = book(*thirst())
    assert of(diary, later("2026-06-20", 28)) == set()
    assert of(diary, later("2026-06-20", 29)) == {"late"}


def test_half_an_inch_together_since_clears_it_for_four_weeks() -> None:
    diary = book(*thirst("2026-06-30 rain 0.3in", "2026-07-20 water 0.2in front"))
    assert of(diary, "2026-07-19") == {"late"}
    assert of(diary, "2026-07-20") == set()
    assert of(diary, later("2026-07-20", 28)) == set()
    assert of(diary, later("2026-07-20", 29)) == {"late"}


def test_a_hose_without_a_number_counts_as_enough() -> None:
    diary = book(*thirst("2026-07-20 water front"))
    assert of(diary, "2026-07-21") == set()


def test_what_was_sown_this_season_is_a_loss_from_14_days() -> None:
    spring = book("2026-04-20 seed quick-rye 9lb front", *thirst())
    assert of(spring, later("2026-06-20", 13)) == set()
    assert of(spring, later("2026-06-20", 14)) == {"loss"}
    last_year = book("2025-09-05 seed quick-rye 9lb front", *thirst())
    assert of(last_year, later("2026-06-20", 14)) == set()


def test_saying_again_that_it_is_brown_does_not_start_the_count_anew() -> None:
    diary = book(*thirst("2026-07-10 see dormant front"))
    assert of(diary, later("2026-06-20", 29)) == {"late"}


def test_green_again_clears_it_and_so_does_the_end_of_growth() -> None:
    green = book(*thirst("2026-08-10 see green front"))
    assert of(green, "2026-08-09") == {"late"}
    assert of(green, "2026-08-10") == set()
    winter = book("2026-10-01 see dormant front", *weather("2026-09-20", 20, "60F 52F 0in"), "2026-11-09 rain 0.05in")
    assert of(winter, "2026-11-10") == {"late"}
    assert of(winter, "2026-11-11") == set()


def test_where_no_water_is_on_file_it_is_silent_and_one_note_stands() -> None:
    silent = book(RESTS)
    assert of(silent, "2026-07-25") == set()
    assert level(silent, "2026-07-25", "water-unlogged") == "note"


def test_a_book_begun_in_july_counts_from_then() -> None:
    hot = weather("2026-07-15", 60, "85F 65F 0in")
    young = book("2026-07-16 see dormant front", *hot, on=lawn(set_up="2026-07-15"))
    assert of(young, later("2026-07-16", 28)) == set()
    assert of(young, later("2026-07-16", 29)) == {"late"}


def test_every_28_days_it_asks_whether_it_is_still_brown() -> None:
    diary = book(RESTS)
    asked = [at for at in range(100) if raised(diary, later("2026-06-20", at), "dormant-thirst") is not None]
    assert asked == [*range(28, 35), *range(56, 63), *range(84, 91)]
    note = raised(diary, later("2026-06-20", 28), "dormant-thirst")
    assert note is not None
    assert (note.level, note.subject, note.headline) == ("note", "still brown", "still brown?")
    assert level(book("2026-07-18 see dormant front", on=diary), "2026-07-18", "dormant-thirst") == ""


def test_it_takes_over_from_cut_and_water() -> None:
    dry = lawn(("irrigated = true", 'irrigated = true\nsoil = "loam"'))
    diary = book("2026-06-10 mow 3in front", "2026-06-10 water deep front", *thirst(), on=dry)
    for at in range(60):
        on = later("2026-06-20", at)
        assert rules_raised(diary, on) & {"mow-gap", "water-deficit", "water-week", "feed-overdue"} == set()
        assert find(diary, on, "water") is None


def test_the_owners_own_numbers() -> None:
    diary = book("2026-06-01 set dormant-thirst days 40", *thirst())
    assert of(diary, later("2026-06-20", 40)) == set()
    assert of(diary, later("2026-06-20", 41)) == {"late"}
