"""Nothing comes up. Most is up in 2 to 3 weeks (Iowa State Univ. Extension, How should I water a newly seeded lawn?),
bluegrass 7 to 14 days later (NC State Univ., Quick reference: seeding a new lawn).
"""

import pytest

from journal.facts.house import number
from tests.scenario import book, later, lawn, level, raised

SOWN = "2026-08-20"
RYE, BLUE = f"{SOWN} seed quick-rye 9lb front", f"{SOWN} seed three-river 6lb front"


def test_the_days_are_those_in_print() -> None:
    assert number("not-emerged", "days").default == 3 * 7
    assert number("not-emerged", "days-bluegrass").default == 4 * 7


@pytest.mark.parametrize(("seed", "due"), [(RYE, 21), (BLUE, 28)])
def test_due_on_day_21_or_28_with_bluegrass(seed: str, due: int) -> None:
    diary = book(seed)
    assert [level(diary, later(SOWN, due + at), "not-emerged") for at in (-1, 0)] == ["", "late"]
    assert [level(diary, later(SOWN, at), "not-emerged") for at in (56, 57)] == ["late", ""]


@pytest.mark.parametrize("sign", ["see emerged front", "mow 3in front", "height 1.6in front"])
def test_seen_cut_or_measured_it_is_up(sign: str) -> None:
    diary = book(RYE, f"{later(SOWN, 23)} {sign}")
    assert [level(diary, later(SOWN, at), "not-emerged") for at in (22, 23)] == ["late", ""]


def test_old_grass_cut_in_the_first_days_is_no_sign() -> None:
    assert level(book(RYE, f"{later(SOWN, 3)} mow 3in front"), later(SOWN, 21), "not-emerged") == "late"


def test_it_says_by_when_to_sow_again_while_time_is_left() -> None:
    early = raised(book(RYE), later(SOWN, 21), "not-emerged")
    assert early is not None
    assert early.do.endswith("sow again by Tue 29 Sep")  # 42 days before 10 November
    late = raised(book(RYE), "2026-09-30", "not-emerged")
    assert late is not None
    assert "under 42 days of growth are left" in late.do


def test_nothing_is_asked_once_nothing_grows_or_of_a_spot() -> None:
    assert level(book("2026-10-10 seed quick-rye 9lb front"), "2026-11-10", "not-emerged") == "late"
    assert level(book("2026-10-10 seed quick-rye 9lb front"), "2026-11-11", "not-emerged") == ""
    spot = book(f"{SOWN} seed quick-rye 0.5lb spot 40sqft front")
    assert level(spot, later(SOWN, 25), "not-emerged") == ""


def test_dormant_seed_is_counted_from_spring() -> None:
    diary = book("2026-12-01 seed quick-rye 9lb front")
    assert [level(diary, later("2027-04-10", at), "not-emerged") for at in (20, 21)] == ["", "late"]


def test_a_book_begun_later_is_asked_later() -> None:
    diary = book(RYE, on=lawn(set_up="2026-09-01"))
    assert level(diary, "2026-09-15", "not-emerged") == ""
    assert level(diary, "2026-09-21", "not-emerged") == ""
    assert level(diary, "2026-09-22", "not-emerged") == "late"


def test_the_owners_own_days() -> None:
    assert level(book("2026-08-01 set not-emerged days 14", RYE), later(SOWN, 14), "not-emerged") == "late"
