"""The barrier of spring.

Michigan State Univ., 2023: 250 to 500 degree days (F) over 32 F from 15 February; by the last frost it is an estimate.
"""

import pytest

from tests.plan.weeds import SHED, SHORT, grown
from tests.scenario import day, find, the, weather

FIFTY = weather("2026-02-15", 120, "60F 40F 0in")
"""18 degree days each: 252 on 28 February, 504 on 14 March."""


def test_without_weather_it_goes_by_the_last_frost_and_says_so() -> None:
    step = the(grown(), "2026-04-08", "barrier")
    assert (step.state, step.earliest, step.latest) == ("open", day("2026-04-08"), day("2026-05-06"))
    assert step.best == (day("2026-04-15"), day("2026-04-29"))
    assert "an estimate" in step.why
    assert the(grown(), "2026-04-07", "barrier").state == "waiting"
    assert the(grown(), "2026-05-06", "barrier").state == "open"
    assert the(grown(), "2026-05-07", "barrier").state == "missed"
    assert find(grown(), "2026-06-06", "barrier") is None


def test_with_weather_it_goes_by_degree_days() -> None:
    book = grown(*FIFTY)
    assert the(book, "2026-02-27", "barrier").state == "waiting"
    step = the(book, "2026-02-28", "barrier")
    assert (step.state, step.earliest) == ("open", day("2026-02-28"))
    assert step.why.startswith("252 degree days (F) over 32 F since Sun 15 Feb; over at 500")
    assert the(book, "2026-03-13", "barrier").state == "open"
    missed = the(book, "2026-03-14", "barrier")
    assert (missed.state, missed.latest) == ("missed", day("2026-03-13"))


def test_or_by_the_soil_at_50_f_for_five_days() -> None:
    book = grown(*(f"2026-03-{on} weather soil 51F" for on in (20, 22, 24)))
    assert the(book, "2026-03-23", "barrier").state == "waiting"
    step = the(book, "2026-03-24", "barrier")
    assert (step.state, step.earliest) == ("open", day("2026-03-24"))
    assert step.why.startswith("the soil has been warm enough for five days")


def test_how_long_it_will_be_is_told_by_the_last_week() -> None:
    book = grown(*FIFTY)
    step = the(book, "2026-02-22", "barrier")
    assert (step.earliest, step.waits_for) == (day("2026-02-28"), "250 degree days, about Sat 28 Feb")
    assert the(book, "2026-03-01", "barrier").latest == day("2026-03-14")


def test_its_line_is_the_labels_low_rate_and_it_tells_how_long_seed_waits() -> None:
    step = the(grown(), "2026-04-15", "barrier")
    assert step.line == "treat spring-wall 11lb front back"
    assert "no seed after it before Wed 11 Nov" in step.why


def test_done_for_four_weeks() -> None:
    put = grown("2026-04-15 treat spring-wall 11lb front back")
    assert the(put, "2026-04-15", "barrier").state == "done"
    assert the(put, "2026-05-12", "barrier").state == "done"
    assert find(put, "2026-05-13", "barrier") is None


def test_only_where_there_is_a_reason_for_one() -> None:
    bare = {name: facts for name, facts in SHED.items() if name != "spring-wall"}
    assert find(grown(products=bare), "2026-04-15", "barrier") is None
    seen = the(grown("2025-08-01 see crabgrass front", products=bare), "2026-04-15", "barrier")
    assert (seen.zones, seen.line, seen.amount) == (("front",), "", "a barrier, none in the shed")


@pytest.mark.parametrize(
    "line",
    ["2026-04-02 intend seed three-river-blend 2026-05-10 front", "2026-04-12 seed three-river-blend 9lb front"],
)
def test_seed_this_spring_means_no_barrier(line: str) -> None:
    step = the(grown(line), "2026-04-15", "barrier")
    assert (step.state, step.line) == ("barred", "")
    assert step.waits_for.endswith("not this spring")
    assert the(grown(line), "2026-04-15", "barrier", "back").state == "open"


def test_nor_does_it_stand_in_the_way_of_the_seed_meant_for_autumn() -> None:
    meant = "2026-03-01 intend seed three-river-blend 2026-09-05 front"
    step = the(grown(meant), "2026-04-15", "barrier")
    assert step.state == "barred"
    assert step.waits_for == "it would keep seed out to Wed 11 Nov, and seed is meant for Sat 5 Sep"
    short = the(grown(meant, products=SHED | {"spring-wall": SHORT}), "2026-04-15", "barrier")
    assert (short.state, "before Thu 13 Aug" in short.why) == ("open", True)


def test_it_waits_until_last_autumns_grass_is_old_enough() -> None:
    sown = "2025-10-01 seed three-river-blend 9lb front"
    two = grown(sown, "2026-04-18 mow 3in front", "2026-04-25 mow 3in front")
    step = the(two, "2026-04-26", "barrier")
    assert (step.state, step.waits_for) == (
        "waiting",
        "new grass: spring-wall from about Sat 2 May, after 3 mowings from day 21",
    )
    assert the(grown(sown, "2026-04-30 mow 3in front"), "2026-04-30", "barrier").state == "barred"
    three = grown(sown, *(f"2026-04-{on} mow 3in front" for on in (12, 18, 25)))
    assert the(three, "2026-04-26", "barrier").state == "open"


def test_south_of_the_equator_it_is_spring_in_september() -> None:
    south = {"latitude": "-37", "last_frost": "10-20", "first_frost": "05-01", "growth": "10-01 06-05"}
    assert the(grown(lawn=south), "2026-09-22", "barrier").state == "open"
    assert find(grown(lawn=south), "2026-04-15", "barrier") is None


def test_it_says_that_it_is_watered_in_and_by_how_much() -> None:
    assert the(grown(), "2026-04-15", "barrier").amount.endswith("; then water 0.5 in")
    own = SHED | {"spring-wall": SHED["spring-wall"] | {"water_in": "0.3in"}}
    assert the(grown(products=own), "2026-04-15", "barrier").amount.endswith("; then water 0.3 in")


def test_the_day_from_which_young_grass_may_have_it_is_the_same_all_winter_while_nothing_is_mown() -> None:
    sown = grown("2025-10-01 seed three-river-blend 9lb front")
    days = {the(sown, on, "barrier").waits_for for on in ("2026-03-01", "2026-04-09", "2026-04-12", "2026-04-20")}
    assert len(days) == 1
