"""Sown too late, or at a hard time.

Six to eight weeks of growth are wanted: Oregon State Univ. Extension, EC 1550, 2022; late May to mid-August usually
fails: Iowa State Univ. Extension, Establishing a Lawn from Seed.

Growth of the lawn here ends on 10 November and begins on 10 April.
"""

import pytest

from journal.facts.house import number
from tests.scenario import LAWN, book, judged, later, lawn, level, raised

FALL = "2026-11-10"
RYE, BLUE, FESCUE = "quick-rye", "three-river", "stone-wall"


def sown(on: object, seed: str = RYE, *more: str) -> str:
    return " ".join((f"{on} seed {seed}", *more, "9lb front"))


def test_the_numbers_are_those_in_print() -> None:
    assert number("seed-short-season", "loss-days").default == 6 * 7  # EC 1550: 6 to 8 weeks
    assert number("seed-short-season", "note-days").default == 8 * 7
    assert number("seed-short-season", "bluegrass-days").default == 7  # NC State: 7 to 14 days longer
    assert number("seed-short-season", "bluegrass-days").basis.citations[0].key == "ncsu-seeding"


@pytest.mark.parametrize(("left", "expected"), [(56, ""), (55, "note"), (42, "note"), (41, "loss"), (1, "loss")])
def test_days_of_growth_left(left: int, expected: str) -> None:
    on = later(FALL, -left)
    assert level(book(sown(on)), on, "seed-short-season") == expected


@pytest.mark.parametrize(("left", "expected"), [(63, ""), (62, "note"), (49, "note"), (48, "loss")])
def test_a_week_more_with_half_or_more_bluegrass(left: int, expected: str) -> None:
    on = later(FALL, -left)
    assert level(book(sown(on, BLUE)), on, "seed-short-season") == expected
    assert level(book(sown(on, FESCUE)), on, "seed-short-season") == ("" if left >= 56 else "note")


def test_it_is_told_before_it_is_sown() -> None:
    found = judged(book(), "2026-10-15", "seed quick-rye 9lb front")
    assert "seed-short-season" in {flag.rule for flag in found.raised}


def test_seedlings_seen_clear_it() -> None:
    diary = book(sown("2026-10-10"), "2026-10-19 see emerged front")
    assert level(diary, "2026-10-18", "seed-short-season") == "loss"
    assert level(diary, "2026-10-19", "seed-short-season") == ""


def test_in_winter_it_is_quiet_and_asks_again_for_the_first_weeks_of_spring() -> None:
    diary = book(sown("2026-10-10"))
    for on, expected in (
        ("2026-11-10", "loss"), ("2026-11-11", ""), ("2027-04-09", ""), ("2027-04-10", "loss"), ("2027-05-09", "loss"),
        ("2027-05-10", ""),
    ):  # fmt: skip
        assert level(diary, on, "seed-short-season") == expected, on
    flag = raised(diary, "2027-04-20", "seed-short-season")
    assert flag is not None
    assert flag.clears_on == later("2027-05-10", 0)
    assert "see emerged" in flag.do


def test_it_never_stands_for_more_than_sixty_days_at_once() -> None:
    diary = book("2026-09-01 set seed-short-season note-days 90", sown("2026-09-01"))
    assert level(diary, later("2026-09-01", 59), "seed-short-season") == "note"
    assert level(diary, later("2026-09-01", 60), "seed-short-season") == ""


@pytest.mark.parametrize("line", [sown("2026-11-11"), sown("2027-03-01"), sown("2026-10-25", RYE, "dormant")])
def test_dormant_seed_has_no_short_season(line: str) -> None:
    assert level(book(line), line[:10], "seed-short-season") == ""


def test_a_spot_is_a_note_and_other_growth_other_days() -> None:
    spot = "2026-10-20 seed quick-rye 0.5lb spot 40sqft front"
    assert level(book(spot), "2026-10-20", "seed-short-season") == "note"
    mild = lawn(("11-10", "12-10"))
    assert level(book(sown("2026-10-20"), on=mild), "2026-10-20", "seed-short-season") == "note"
    unknown = lawn(('growth = ["04-10", "11-10"]\n', ""), ('last_frost = "05-06"\nfirst_frost = "10-05"\n', ""))
    assert level(book(sown("2026-10-20"), on=unknown), "2026-10-20", "seed-short-season") == ""


@pytest.mark.parametrize(
    ("on", "expected"),
    [
        ("2026-04-10", "note"), ("2026-05-19", "note"), ("2026-05-20", "note"),
        ("2026-05-31", "note"), ("2026-06-01", "loss"), ("2026-07-31", "loss"), ("2026-08-01", "note"),
        ("2026-08-10", "note"), ("2026-08-11", ""), ("2026-09-20", ""),
    ],
)  # fmt: skip
def test_the_time_of_year(on: str, expected: str) -> None:
    assert level(book(sown(on)), on, "seed-season") == expected


def test_half_a_year_on_in_the_south() -> None:
    south = lawn(
        ("latitude = 42.3", "latitude = -42.3"), ('growth = ["04-10", "11-10"]', 'growth = ["10-10", "05-10"]')
    )
    for on, expected in (("2026-11-20", "note"), ("2026-12-01", "loss"), ("2027-01-31", "loss"), ("2027-02-12", "")):
        assert level(book(sown(on), on=south), on, "seed-season") == expected, on


def test_spring_seed_says_that_the_barrier_waits() -> None:
    flag = raised(book(sown("2026-04-20")), "2026-04-20", "seed-season")
    assert flag is not None
    assert "barrier" in flag.why
    assert any("memory" in basis.words() for basis in flag.basis)


def test_the_season_clears_when_seedlings_are_seen_or_after_sixty_days() -> None:
    seen = book(sown("2026-06-10"), "2026-06-19 see emerged front")
    assert [level(seen, on, "seed-season") for on in ("2026-06-18", "2026-06-19")] == ["loss", ""]
    unseen = book(sown("2026-06-10"))
    assert [level(unseen, later("2026-06-10", at), "seed-season") for at in (59, 60)] == ["loss", ""]


def test_a_spot_in_summer_is_a_note() -> None:
    assert level(book("2026-06-10 seed quick-rye 0.5lb spot 40sqft front"), "2026-06-10", "seed-season") == "note"


def test_a_spot_does_not_hide_what_is_graver() -> None:
    both = book(sown("2026-06-10"), "2026-06-12 seed quick-rye 0.5lb spot 40sqft front")
    assert level(both, "2026-06-12", "seed-season") == "loss"


def test_ryegrass_sown_dormant_may_sprout_in_a_warm_spell() -> None:
    # Purdue Univ. Turfgrass Science, How late can you seed?
    diary = book(sown("2026-12-01"))
    flag = raised(diary, "2026-12-01", "seed-season")
    assert flag is not None
    assert (flag.level, "warm spell" in flag.why) == ("note", True)
    assert level(book(sown("2026-12-01", BLUE)), "2026-12-01", "seed-season") == "note"
    assert level(book(sown("2026-12-01", FESCUE)), "2026-12-01", "seed-season") == ""
    assert level(book(sown("2027-03-20")), "2027-04-10", "seed-season") == ""
    own = book("2026-12-01 set seed-season rye-share 60", sown("2026-12-01", BLUE))
    assert level(own, "2026-12-01", "seed-season") == ""


def test_warm_season_seed_is_not_judged_by_this() -> None:
    warm = LAWN + '\n[[product]]\nname = "south-run"\nkind = "seed"\nmix = [{grass="bermudagrass", percent=98}]\n'
    for on in ("2026-06-10", "2026-10-20"):
        diary = book(sown(on, "south-run"), on=lawn(toml=warm))
        assert level(diary, on, "seed-season") == level(diary, on, "seed-short-season") == ""
