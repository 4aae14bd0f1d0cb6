"""The step `last-mow`: half an inch lower, Univ. of Maryland Extension; the same height, Ask Extension 158965."""

from journal.plan.step import State
from tests.plan.garden import kept
from tests.scenario import day, find, the, typed

MOWN = "2026-10-20 mow 3in front back"


def test_it_comes_in_the_last_week_of_growth() -> None:
    book = kept(MOWN)
    assert find(book, "2026-10-20", "last-mow") is None
    step = the(book, "2026-10-21", "last-mow")
    assert (step.state, step.earliest, step.latest) == (State.WAITING, day("2026-11-04"), day("2026-11-10"))
    assert step.why == "growth ends about Tue 10 Nov"
    assert the(book, "2026-11-04", "last-mow").state is State.OPEN
    assert find(book, "2026-11-11", "last-mow") is None


def test_it_says_how_low_and_that_advice_differs() -> None:
    step = the(kept(MOWN), "2026-11-04", "last-mow")
    assert (
        step.amount == "cut as long as it grows, at the usual 3 in, or 2.5 in as some advise; mulch or rake the leaves"
    )
    assert step.line == ""  # the weekly cut has the line


def test_a_cut_of_that_week_is_the_last() -> None:
    book = typed(kept(MOWN), "2026-11-05 mow 2.5in front")
    assert the(book, "2026-11-06", "last-mow").state is State.DONE
    assert the(book, "2026-11-06", "last-mow", "back").state is State.OPEN


def test_new_grass_that_was_never_cut_a_service_and_a_resting_lawn_have_none() -> None:
    assert find(kept("2026-10-01 seed three-river-blend 9lb front"), "2026-11-05", "last-mow") is None
    assert find(kept(MOWN, "2026-10-25 see dormant front"), "2026-11-05", "last-mow") is None
    zones = {"front": {"area": "2400sqft", "mowing": "service"}}
    assert find(kept(zones=zones), "2026-11-05", "last-mow") is None


def test_growth_that_the_weather_ended_is_over() -> None:
    cold = [f"2026-10-{at:02} weather 44F 34F 0in" for at in range(10, 32)]
    assert find(kept(MOWN, *cold), "2026-11-05", "last-mow") is None
