"""The barrier against crabgrass in spring: too late, and let go by.

Michigan State Univ. in the Michigan Ag Connection, 2023: 250 to 500 degree days (F) over 32 F from 15 February.
"""

import pytest

from journal.facts.house import number
from journal.season.history import History
from tests.scenario import LAWN, book, later, lawn, level, raised, weather

PAST, MISSED = "barrier-past", "barrier-missed"
SEEN = "2025-08-01 see crabgrass front"
FIFTY = weather("2026-02-15", 120, "60F 40F 0in")
"""A mean of 50 F from 15 February: 18 degree days each, 252 on day 14 (28 Feb), 504 on day 28 (14 Mar)."""


def kept(*lines: str, **changes: str) -> History:
    toml = LAWN
    for old, new in changes.items():
        toml = toml.replace(old, new)
    return book(*lines, on=lawn(toml=toml, set_up="2025-04-01"))


def test_the_published_window() -> None:
    assert (number(PAST, "from").default, number(PAST, "most").default) == (250, 500)


@pytest.mark.parametrize(("on", "found"), [("2026-03-13", ""), ("2026-03-14", "note")])
def test_late_above_500_degree_days(on: str, found: str) -> None:
    assert level(kept(*FIFTY, f"{on} treat spring-wall 4lb front"), on, PAST) == found


def test_it_stands_sixty_days_and_gives_the_sum() -> None:
    diary = kept(*FIFTY, "2026-04-01 treat spring-wall 4lb front")
    flag = raised(diary, "2026-04-01", PAST)
    assert flag is not None
    assert flag.why.startswith("828 degree days (F) over 32 F from Sun 15 Feb to Wed 1 Apr; the window ends at 500")
    assert (level(diary, later("2026-04-01", 59), PAST), level(diary, later("2026-04-01", 60), PAST)) == ("note", "")


def test_not_the_second_half_of_a_split() -> None:
    split = kept(*FIFTY, "2026-03-05 treat spring-wall 2lb front", "2026-05-05 treat spring-wall 2lb front")
    assert level(split, "2026-05-05", PAST) == ""


def test_not_in_autumn_and_not_without_weather() -> None:
    assert level(kept(*FIFTY, "2026-09-01 treat spring-wall 4lb front"), "2026-09-01", PAST) == ""
    assert level(kept("2026-06-01 treat spring-wall 4lb front"), "2026-06-01", PAST) == ""
    assert level(kept(*FIFTY, "2026-07-01 treat spring-wall 4lb front"), "2026-07-01", PAST) == ""


def test_no_weed_spray_is_a_barrier_and_a_spot_is_none() -> None:
    assert level(kept(*FIFTY, "2026-04-20 treat leaf-off 2floz front"), "2026-04-20", PAST) == ""
    assert level(kept(*FIFTY, "2026-04-20 treat spring-wall 1lb spot 40sqft front"), "2026-04-20", PAST) == ""


def test_the_owners_own_number() -> None:
    diary = kept("2026-01-02 set barrier-past most 900", *FIFTY, "2026-04-01 treat spring-wall 4lb front")
    assert level(diary, "2026-04-01", PAST) == ""


@pytest.mark.parametrize(("soil", "found"), [("59F", ""), ("60F", "note")])
def test_or_by_the_soil_at_60_f_for_five_days(soil: str, found: str) -> None:
    read = [f"2026-04-{on} weather soil {soil}" for on in (10, 12, 14)]
    assert level(kept(*read, "2026-04-14 treat spring-wall 4lb front"), "2026-04-14", PAST) == found
    assert level(kept(*read, "2026-04-13 treat spring-wall 4lb front"), "2026-04-14", PAST) == ""
    cold = [*read, "2026-04-13 weather soil 52F"]
    assert level(kept(*cold, "2026-04-14 treat spring-wall 4lb front"), "2026-04-14", PAST) == ""
    assert level(kept(SEEN, *read), "2026-04-14", MISSED) == ("late" if found else "")


def test_south_of_the_equator_half_a_year_on() -> None:
    south = {"latitude = 42.3": "latitude = -42.3", '["04-10", "11-10"]': '["10-10", "05-10"]',
             '"05-06"': '"11-06"', '"10-05"': '"04-05"'}  # fmt: skip
    warm = weather("2026-08-15", 120, "60F 40F 0in")
    diary = kept(*warm, "2026-10-01 treat spring-wall 4lb front", **south)
    assert level(diary, "2026-10-01", PAST) == "note"
    assert level(kept(*warm, "2025-09-01 see crabgrass front", **south), "2026-10-01", MISSED) == "late"


@pytest.mark.parametrize(("on", "found"), [("2026-05-06", ""), ("2026-05-07", "late"), ("2026-06-05", "late"),
                                           ("2026-06-06", "")])  # fmt: skip
def test_missed_after_the_last_frost_for_thirty_days(on: str, found: str) -> None:
    assert level(kept(SEEN), on, MISSED) == found


def test_without_weather_it_says_that_it_is_an_estimate() -> None:
    flag = raised(kept(SEEN), "2026-05-10", MISSED)
    assert flag is not None
    assert "an estimate" in flag.why


@pytest.mark.parametrize(("on", "found"), [("2026-03-13", ""), ("2026-03-14", "late"), ("2026-04-12", "late"),
                                           ("2026-04-13", "")])  # fmt: skip
def test_with_weather_missed_when_500_are_passed(on: str, found: str) -> None:
    assert level(kept(SEEN, *FIFTY), on, MISSED) == found


def test_in_a_cold_spring_the_window_stays_open() -> None:
    cold = weather("2026-02-15", 120, "38F 28F 0in")
    assert level(kept(SEEN, *cold), "2026-05-20", MISSED) == ""
    assert level(kept(SEEN, *cold), "2026-06-06", MISSED) == "late"


def test_weather_with_holes_tells_nothing() -> None:
    some = [line for at, line in enumerate(FIFTY) if at % 3]
    assert level(kept(SEEN, *some), "2026-04-01", MISSED) == ""
    assert level(kept(SEEN, *some), "2026-05-07", MISSED) == "late"


def test_only_where_the_weed_was_seen_last_season() -> None:
    assert level(kept(), "2026-05-10", MISSED) == ""
    assert level(kept("2025-08-01 see dandelion front"), "2026-05-10", MISSED) == ""
    assert level(kept("2026-05-01 see crabgrass front"), "2026-05-10", MISSED) == ""
    assert level(kept(SEEN), "2026-05-10", MISSED, zone="back") == ""


@pytest.mark.parametrize("put", ["treat spring-wall 4lb front", "treat unknown by service front"])
def test_not_where_one_went_down(put: str) -> None:
    assert level(kept(SEEN, f"2026-04-20 {put}"), "2026-05-10", MISSED) == ""


def test_not_in_a_book_that_begins_after_it() -> None:
    for begun, found in (("2026-05-06", "late"), ("2026-05-07", "")):
        young = book(SEEN, on=lawn(set_up=begun))
        assert level(young, "2026-05-10", MISSED) == found


@pytest.mark.parametrize("line", ["2026-04-20 seed three-river 9lb front",
                                  "2026-04-20 intend seed three-river 2026-09-05 front",
                                  "2026-05-01 intend seed three-river 2026-05-10 front"])  # fmt: skip
def test_seed_wins(line: str) -> None:
    assert level(kept(SEEN, line), "2026-05-10", MISSED) == ""


def test_nor_while_the_autumn_seeding_is_too_young_for_it() -> None:
    sown, cuts = "2025-10-01 seed three-river 9lb front", ("2026-04-20 mow 3in front", "2026-04-26 mow 3in front")
    assert level(kept(SEEN, sown, *cuts), "2026-05-10", MISSED) == ""
    assert level(kept(SEEN, sown, *cuts, "2026-05-03 mow 3in front"), "2026-05-10", MISSED) == "late"
