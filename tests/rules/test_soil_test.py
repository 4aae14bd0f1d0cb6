"""Lime and phosphorus with no soil test in three years."""

import pytest

from journal.facts.house import number
from journal.season.history import History
from tests.rules.soil_shed import SHED
from tests.scenario import book, later, lawn, level, raised, rules_raised

LIMED = "2026-06-10 feed grey-lime 40lb/k front"


def kept_long() -> History:
    return lawn(toml=SHED, set_up="2020-01-01")


def stale(history: History, on: str = "2026-06-10") -> str:
    return level(history, on, "soil-test-stale")


def test_lime_with_no_test_on_file_in_a_book_kept_for_years() -> None:
    diary = book(LIMED, on=kept_long())
    assert [stale(diary, str(later("2026-06-10", at))) for at in (-1, 0, 59, 60)] == ["", "note", "note", ""]
    flag = raised(diary, "2026-06-10", "soil-test-stale")
    assert flag is not None
    assert "no soil test is on file" in flag.why


@pytest.mark.parametrize(("set_up", "expected"), [("2023-06-12", ""), ("2023-06-11", "note")])
def test_a_younger_book_may_not_know_of_a_test_before_it(set_up: str, expected: str) -> None:
    assert stale(book(LIMED, on=lawn(toml=SHED, set_up=set_up))) == expected


@pytest.mark.parametrize(("days", "expected"), [(1094, ""), (1095, "note")])
def test_a_test_speaks_for_three_years(days: int, expected: str) -> None:
    """Every 3 years: Penn State, Home Lawn - Maintain; Univ. of Missouri, Turf soil test."""
    assert number("soil-test-stale", "days").default == 3 * 365
    tested = f"{later('2026-06-10', -days)} soil ph 5.6 front"
    assert stale(book(tested, LIMED, on=kept_long())) == expected


def test_a_test_that_is_logged_afterwards_clears_it() -> None:
    assert stale(book(LIMED, "2026-06-20 soil ph 5.8", on=kept_long()), "2026-06-20") == ""


def test_the_owners_own_years_count() -> None:
    tested = "2024-06-10 soil ph 5.6 front"
    assert stale(book(tested, LIMED, on=kept_long())) == ""
    assert stale(book(tested, "2026-05-01 set soil-test-stale days 400", LIMED, on=kept_long())) == "note"


def test_a_starter_at_sowing_has_its_reason_and_still_wants_a_test() -> None:
    diary = book("2026-08-20 seed three-river 9lb front", "2026-08-20 feed oat-hill 7lb front", on=kept_long())
    assert rules_raised(diary, "2026-08-21") & {"soil-test-stale", "phosphate-reason"} == {"soil-test-stale"}


def test_plain_nitrogen_wants_none() -> None:
    assert stale(book("2026-06-10 feed pond-ridge 5lb front", on=kept_long())) == ""


def test_lime_that_is_too_much_or_near_urea_is_told_of_that_alone() -> None:
    heavy = book("2026-06-10 feed grey-lime 70lb/k front", on=kept_long())
    assert rules_raised(heavy, "2026-06-11") & {"soil-test-stale", "lime-dose"} == {"lime-dose"}
    near = book(LIMED, "2026-06-12 feed pond-ridge 5lb front", on=kept_long())
    assert rules_raised(near, "2026-06-13") & {"soil-test-stale", "lime-urea"} == {"lime-urea"}
