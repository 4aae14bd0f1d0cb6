"""The step `sharpen`: every 10 hours of use, K-State Research & Extension, 2020; twelve cuts are common practice."""

from journal.plan.step import State
from journal.plan.steps import steps
from tests.plan.garden import kept
from tests.scenario import day, find, later, the, typed


def cuts(count: int, words: str = "mow 3in front") -> list[str]:
    return [f"{later('2026-04-20', 7 * at)} {words}" for at in range(count)]


def test_after_twelve_cuts_it_is_open_and_its_line_names_no_zone() -> None:
    worn = kept(*cuts(12))
    step = the(worn, later("2026-04-20", 78), "sharpen")
    assert (step.state, step.line, step.zones) == (State.OPEN, "sharpen", ("front", "back"))
    assert step.why == "12 cuts, no sharpening logged"
    on = later("2026-04-20", 78)
    assert find(typed(worn, f"{on} sharpen"), on, "sharpen") is None


def test_it_is_told_three_cuts_ahead() -> None:
    assert find(kept(*cuts(8)), later("2026-04-20", 50), "sharpen") is None
    step = the(kept(*cuts(9)), later("2026-04-20", 57), "sharpen")
    assert (step.state, step.waits_for, step.line) == (State.WAITING, "3 more cuts", "")
    assert step.earliest == later("2026-04-20", 56 + 21)


def test_hours_count_where_they_are_kept() -> None:
    step = the(kept(*cuts(8, "mow 3in 80min front")), later("2026-04-20", 50), "sharpen")
    assert (step.state, step.why) == (State.OPEN, "8 cuts, 10.7 h of them timed, no sharpening logged")


def test_two_weeks_before_the_first_cut_of_new_grass() -> None:
    sown = kept("2026-08-25 seed three-river-blend 9lb front")
    assert find(sown, "2026-09-07", "sharpen") is None
    step = the(sown, "2026-09-08", "sharpen")
    assert (step.state, step.line, step.zones) == (State.OPEN, "sharpen", ("front",))
    assert step.why == "before the first cut of new grass, from Tue 22 Sep"
    assert find(typed(sown, "2026-09-08 sharpen"), "2026-09-08", "sharpen") is None


def test_winter_and_a_service() -> None:
    assert find(kept(*cuts(30)), "2026-12-01", "sharpen") is None
    zones = {"front": {"area": "2400sqft", "mowing": "service"}}
    assert find(kept(*cuts(14), zones=zones), "2026-08-01", "sharpen") is None


def test_it_is_open_from_the_cut_that_wore_the_blade_out_and_stays_so() -> None:
    for count in (12, 13, 16):
        step = the(kept(*cuts(count)), later("2026-04-20", 7 * count), "sharpen")
        assert step.earliest == later("2026-04-20", 77)


def test_one_blade_is_told_once_though_the_zones_have_reasons_of_their_own() -> None:
    worn = kept(*cuts(22, "mow 3in back"), "2026-09-06 seed three-river-blend 9lb front")
    found = [step for step in steps(worn, day("2026-09-26")) if step.step == "sharpen"]
    assert [(step.state, step.zones, step.line) for step in found] == [(State.OPEN, ("front", "back"), "sharpen")]
