"""Lime: how much at once, and how near quick nitrogen."""

import pytest

from journal.facts.house import number
from journal.rules.numbers import in_words
from journal.season.history import History
from tests.rules.soil_shed import SHED
from tests.scenario import book, later, lawn, level, raised


def limed(*lines: str) -> History:
    return book(*lines, on=lawn(toml=SHED))


def dose(history: History, on: str = "2026-06-10") -> str:
    return level(history, on, "lime-dose")


@pytest.mark.parametrize(
    ("rate", "expected"), [(50, ""), (51, ""), (51.1, "note"), (100, "note"), (102, "note"), (102.1, "loss")]
)
def test_a_note_above_50_and_a_loss_above_100_pounds(rate: float, expected: str) -> None:
    """50: Virginia 452-717, Oregon State. 100: Penn State, Home Lawn - Maintain. Two in a hundred are rounding."""
    assert dose(limed(f"2026-06-10 feed grey-lime {rate}lb/k front")) == expected


def test_the_published_numbers() -> None:
    assert in_words(number("lime-dose", "most").default, "g/m2", "us") == "50 lb/k"
    assert in_words(number("lime-dose", "loss").default, "g/m2", "us") == "100 lb/k"


def test_it_stands_for_sixty_days() -> None:
    diary = limed("2026-06-10 feed grey-lime 60lb/k front")
    assert [dose(diary, str(later("2026-06-10", at))) for at in (-1, 0, 59, 60)] == ["", "note", "note", ""]


@pytest.mark.parametrize(("apart", "expected"), [(29, "note"), (30, "")])
def test_what_goes_down_within_thirty_days_counts_together(apart: int, expected: str) -> None:
    first = later("2026-06-10", -apart)
    diary = limed(f"{first} feed grey-lime 40lb/k front", "2026-06-10 feed grey-lime 40lb/k front")
    assert dose(diary) == expected


def test_two_halves_of_one_dose_are_that_dose() -> None:
    halves = ("2026-06-10 feed grey-lime 45lb/k part 1/2 front", "2026-06-11 feed grey-lime 45lb/k part 2/2 front")
    assert dose(limed(*halves), "2026-06-11") == ""
    one = limed("2026-06-10 feed grey-lime 60lb/k part 1/2 front")
    flag = raised(one, "2026-06-10", "lime-dose")
    assert flag is not None
    assert flag.headline == "60 lb/k of lime at once"


def test_a_spot_and_an_unknown_amount_are_let_pass() -> None:
    assert dose(limed("2026-06-10 feed grey-lime 5lb spot 10sqft front")) == ""
    assert dose(limed("2026-06-10 feed grey-lime front", "2026-06-10 feed grey-lime 40lb/k front")) == ""


def test_the_owners_own_number_counts() -> None:
    assert dose(limed("2026-05-01 set lime-dose most 25lb/k", "2026-06-10 feed grey-lime 30lb/k front")) == "note"


def urea(history: History, on: str) -> str:
    return level(history, on, "lime-urea")


@pytest.mark.parametrize("order", [("grey-lime 40lb/k", "pond-ridge 5lb"), ("pond-ridge 5lb", "grey-lime 40lb/k")])
@pytest.mark.parametrize(("apart", "expected"), [(0, "note"), (13, "note"), (14, "")])
def test_lime_and_quick_nitrogen_within_two_weeks(order: tuple[str, str], apart: int, expected: str) -> None:
    second = later("2026-06-10", apart)
    diary = limed(f"2026-06-10 feed {order[0]} front", f"{second} feed {order[1]} front")
    assert urea(diary, str(second)) == expected
    assert urea(diary, str(later(second, 13))) == expected
    assert urea(diary, str(later(second, 14))) == ""


def test_the_day_before_the_second_says_nothing() -> None:
    diary = limed("2026-06-10 feed grey-lime 40lb/k front", "2026-06-14 feed pond-ridge 5lb front")
    assert (urea(diary, "2026-06-13"), urea(diary, "2026-06-14")) == ("", "note")


@pytest.mark.parametrize(
    ("sources", "expected"),
    [
        ('["urea"]', "note"), ('["ammonium sulfate"]', "note"), ('["polymer-coated urea"]', "note"),
        ('["methylene urea"]', ""), ('["potassium nitrate"]', ""), ('["methylene urea", "urea"]', "note"),
    ],
)  # fmt: skip
def test_a_source_that_is_neither_urea_nor_ammonium_is_let_pass(sources: str, expected: str) -> None:
    shed = SHED.replace('n_source = ["methylene urea", "potassium nitrate"]', f"n_source = {sources}")
    diary = book("2026-06-10 feed grey-lime 40lb/k front", "2026-06-12 feed dune-gold 4lb/k front", on=lawn(toml=shed))
    assert urea(diary, "2026-06-12") == expected


def test_wholly_slow_nitrogen_is_let_pass() -> None:
    slow = SHED.replace('slow = "60% of n"', 'slow = "100% of n"')
    diary = book("2026-06-10 feed grey-lime 40lb/k front", "2026-06-12 feed slow-oak 4lb/k front", on=lawn(toml=slow))
    assert urea(diary, "2026-06-12") == ""


def test_the_owners_own_days_between_them() -> None:
    pair = ("2026-06-10 feed grey-lime 40lb/k front", "2026-06-28 feed pond-ridge 5lb front")
    assert urea(limed(*pair), "2026-06-28") == ""
    assert urea(limed("2026-05-01 set lime-urea days 30d", *pair), "2026-06-28") == "note"


def test_too_much_lime_beside_urea_is_one_card() -> None:
    diary = limed("2026-06-10 feed grey-lime 70lb/k front", "2026-06-12 feed pond-ridge 5lb front")
    assert (dose(diary, "2026-06-12"), urea(diary, "2026-06-12")) == ("note", "")
