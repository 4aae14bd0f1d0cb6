"""A point from which no picture was taken for a while."""

import pytest

from journal.season.history import History
from journal.standing import findings
from tests.scenario import book, day, later, lawn, level, rules_raised

SHOT = "2026-05-01 photo a.jpg from gate front"


def gap(history: History, on: str) -> str:
    return level(history, on, "photo-gap")


def test_after_five_weeks_of_growth_until_the_next_picture() -> None:
    diary = book(SHOT)
    assert [gap(diary, str(later("2026-05-01", at))) for at in (35, 36, 95, 96)] == ["", "note", "note", ""]
    assert gap(book("2026-06-20 photo b.jpg from gate front", on=diary), "2026-06-20") == ""


def test_another_point_does_not_clear_it() -> None:
    diary = book(SHOT)
    assert gap(book("2026-06-20 photo b.jpg from roof front", on=diary), "2026-06-20") == "note"
    assert gap(book("2026-06-20 photo b.jpg from Gate front", on=diary), "2026-06-20") == ""  # letters' size is none


def test_each_point_has_a_flag_of_its_own() -> None:
    diary = book(SHOT, "2026-05-02 photo b.jpg from front-door front")
    found = {f.id for f in findings(diary, day("2026-06-20")) if f.rule == "photo-gap"}
    assert found == {"photo-gap/front/gate", "photo-gap/front/front-door"}


def test_a_picture_from_no_point_asks_for_nothing() -> None:
    assert gap(book("2026-05-01 photo a.jpg front"), "2026-07-01") == ""


def test_winter_does_not_count() -> None:
    diary = book("2026-10-20 photo a.jpg from gate front")
    assert "photo-gap" not in rules_raised(diary, "2026-12-20")
    assert [gap(diary, on) for on in ("2027-05-15", "2027-05-16")] == ["", "note"]


def test_nor_a_lawn_at_rest() -> None:
    assert gap(book(SHOT, "2026-06-01 see dormant front"), "2026-06-20") == ""


@pytest.mark.parametrize(("on", "expected"), [("2026-07-06", ""), ("2026-07-07", "note")])
def test_nor_the_time_before_the_book(on: str, expected: str) -> None:
    assert gap(book(SHOT, on=lawn(set_up="2026-06-01")), on) == expected


def test_the_owners_own_days_count() -> None:
    assert gap(book("2026-05-01 set photo-gap days 60", SHOT), "2026-06-20") == ""
