"""Starter, water, first cut, bagging and the day the lawn is established: all counted from the sowing as logged."""

import pytest

from journal.plan.step import State
from tests.plan.garden import PRODUCTS, kept
from tests.scenario import day, find, the, typed

SOWN = "2026-09-06 seed three-river-blend 9.6lb front"
RYE = PRODUCTS | {"three-river-blend": {"kind": "seed", "mix": "perennial ryegrass 100%", "rate": "4lb/k 4lb/k"}}


@pytest.mark.parametrize(
    ("as_of", "state"),
    [
        ("2026-09-06", State.OPEN),
        ("2026-09-13", State.OPEN),
        ("2026-09-14", State.LATE),
        ("2026-09-27", State.LATE),
        ("2026-09-28", State.MISSED),
    ],
)
def test_starter_is_for_the_first_week(as_of: str, state: State) -> None:
    step = the(kept(SOWN), as_of, "starter")
    assert step.state is state
    assert (step.earliest, step.latest) == (day("2026-09-06"), day("2026-09-13"))


def test_a_starter_of_the_week_before_is_the_starter() -> None:
    assert the(kept("2026-08-30 feed oat-hill-starter 8lb front", SOWN), "2026-09-06", "starter").state is State.DONE
    sooner = kept("2026-08-29 feed oat-hill-starter 8lb front", SOWN)
    assert the(sooner, "2026-09-06", "starter").state is not State.DONE


def test_another_fertilizer_is_not_the_starter() -> None:
    step = the(kept(SOWN, "2026-09-07 feed pond-ridge 7lb front"), "2026-09-08", "starter")
    assert step.state is State.WAITING
    assert step.waits_for.startswith("too soon after the last feeding")


def test_the_starter_s_dose_stays_gentle_and_within_the_label() -> None:
    step = the(kept(SOWN), "2026-09-06", "starter")
    assert step.line == "feed oat-hill-starter 8.3lb front"
    assert step.amount == "8.3 lb oat-hill-starter (3.5 lb/k, 0.62 lb N/k), 0.3 bag"


def test_where_the_soil_has_phosphorus_enough_plain_nitrogen_is_the_starter() -> None:
    tested = kept("2026-08-01 soil ph 6.4 p high", SOWN)
    step = the(tested, "2026-09-06", "starter")
    assert step.line.startswith("feed pond-ridge ")
    assert the(typed(tested, "2026-09-07 feed pond-ridge 7lb front"), "2026-09-08", "starter").state is State.DONE


def test_without_a_starter_in_the_shed_it_says_what_is_wanted() -> None:
    shed = {name: facts for name, facts in PRODUCTS.items() if facts["kind"] != "starter"}
    step = the(kept(SOWN, products=shed), "2026-09-06", "starter")
    assert step.line == ""
    assert step.amount == "a starter, none in the shed; about 0.5 lb N/k"


def test_damp_is_twice_a_day_and_moves_to_tomorrow() -> None:
    book = kept(SOWN)
    step = the(book, "2026-09-08", "damp")
    assert (step.state, step.latest, step.line) == (State.OPEN, day("2026-09-08"), "water 10min front")
    assert step.amount == "twice today, 10 min (0.1 in)"
    book = typed(book, "2026-09-08 water 10min front")
    assert the(book, "2026-09-08", "damp").amount == "once more today, 10 min (0.1 in)"
    book = typed(book, "2026-09-08 water 10min front")
    step = the(book, "2026-09-08", "damp")
    assert (step.state, step.earliest) == (State.WAITING, day("2026-09-09"))


def test_rain_is_water_too() -> None:
    assert the(kept(SOWN, "2026-09-08 rain 0.12in"), "2026-09-08", "damp").state is State.WAITING
    assert the(kept(SOWN, "2026-09-07 rain 0.3in"), "2026-09-08", "damp").state is State.WAITING
    assert the(kept(SOWN, "2026-09-08 rain 0.05in"), "2026-09-08", "damp").state is State.OPEN


def test_a_dry_yesterday_is_late_in_a_book_that_keeps_water() -> None:
    assert the(kept(SOWN), "2026-09-08", "damp").state is State.OPEN
    watered = kept(SOWN, "2026-09-06 water 10min front", "2026-09-06 water 10min front")
    assert the(watered, "2026-09-08", "damp").state is State.LATE
    assert the(typed(watered, "2026-09-07 water 10min front"), "2026-09-08", "damp").state is State.OPEN


def test_a_timer_does_the_watering() -> None:
    timer = ("2026-09-05 schedule front 10min 6:00", "2026-09-05 schedule front 10min 15:00")
    assert the(kept(SOWN, *timer), "2026-09-08", "damp").state is State.WAITING


def test_bluegrass_is_kept_damp_a_week_longer() -> None:
    assert the(kept(SOWN), "2026-10-03", "damp").title == "keep damp"
    assert the(kept(SOWN), "2026-10-04", "damp").title == "taper water"
    assert the(kept(SOWN, products=RYE), "2026-09-26", "damp").title == "keep damp"
    assert the(kept(SOWN, products=RYE), "2026-09-27", "damp").title == "taper water"


def test_seedlings_of_an_inch_and_a_half_are_weaned() -> None:
    book = kept(SOWN, "2026-09-20 height 1.6in front")
    step = the(book, "2026-09-21", "damp")
    assert (step.state, step.title) == (State.OPEN, "taper water")
    step = the(typed(book, "2026-09-21 water 25min front"), "2026-09-22", "damp")
    assert (step.state, step.earliest) == (State.WAITING, day("2026-09-23"))


def test_the_first_cut_ends_the_watering() -> None:
    assert the(kept(SOWN, "2026-10-05 mow 3in bag front"), "2026-10-05", "damp").state is State.DONE


def test_the_first_cut_is_for_day_28() -> None:
    book = kept(SOWN)
    assert the(book, "2026-10-03", "first-mow").state is State.WAITING
    step = the(book, "2026-10-04", "first-mow")
    assert (step.state, step.line) == (State.OPEN, "mow 3in bag front")
    assert step.latest == day("2026-11-01")
    assert the(book, "2026-11-02", "first-mow").state is State.LATE
    assert the(kept(SOWN, products=RYE), "2026-10-19", "first-mow").state is State.LATE


def test_tall_grass_may_be_cut_sooner_if_measured_from_day_14() -> None:
    old = kept(SOWN, "2026-09-19 height 3.8in front")
    assert the(old, "2026-09-20", "first-mow").state is State.WAITING
    tall = kept(SOWN, "2026-09-20 height 3.6in front")
    assert the(tall, "2026-09-20", "first-mow").state is State.OPEN
    assert the(typed(tall, "2026-09-20 mow 3in bag front"), "2026-09-20", "first-mow").state is State.DONE


def test_a_cut_too_soon_is_not_the_first_cut() -> None:
    assert the(kept(SOWN, "2026-09-16 mow 3in front"), "2026-09-20", "first-mow").state is State.WAITING


def test_very_tall_grass_is_late_and_cut_by_a_third_only() -> None:
    step = the(kept(SOWN, "2026-10-01 height 6in front"), "2026-10-02", "first-mow")
    assert step.state is State.LATE
    assert step.line == "mow 4in bag front"
    assert step.amount == "cut at 4 in, no lower: two thirds of the 6 in that stand, then down every 2 to 4 days, bag"


def test_the_weekly_cut_begins_after_the_first() -> None:
    assert find(kept(SOWN), "2026-10-01", "mow") is None
    book = kept(SOWN, "2026-10-05 mow 3in bag front")
    assert the(book, "2026-10-12", "mow").line == "mow 3in bag front"


def test_bagging_lasts_four_weeks_from_the_first_cut() -> None:
    book = kept(SOWN, "2026-10-05 mow 3in bag front", "2026-10-14 mow 3in bag front")
    assert the(book, "2026-11-01", "bag").state is State.OPEN
    assert the(book, "2026-11-02", "bag").state is State.DONE
    assert find(kept(SOWN), "2026-09-20", "bag") is None


def test_established_needs_eight_weeks_and_three_mowings() -> None:
    book = kept(SOWN, "2026-10-05 mow 3in bag front", "2026-10-14 mow 3in bag front")
    step = the(book, "2026-10-20", "established")
    assert step.waits_for == "day 56 (Sun 1 Nov) and 1 more mowing"
    assert the(book, "2026-11-02", "established").waits_for == "1 more mowing"
    book = typed(book, "2026-11-03 mow 3in bag front")
    assert the(book, "2026-11-03", "established").state is State.DONE


def test_sown_a_week_later_everything_moves_a_week() -> None:
    later = kept(SOWN.replace("09-06", "09-13"))
    for name in ("starter", "first-mow", "established"):
        now, then = the(kept(SOWN), "2026-09-14", name), the(later, "2026-09-14", name)
        assert now.earliest is not None
        assert then.earliest is not None
        assert (then.earliest - now.earliest).days == 7, name


def test_dormant_seed_counts_from_spring() -> None:
    book = kept("2026-11-25 seed three-river-blend 9.6lb front dormant")
    for name in ("starter", "damp"):
        step = the(book, "2026-12-20", name)
        assert (step.state, step.earliest) == (State.WAITING, day("2027-04-10")), name
    assert the(book, "2027-04-12", "starter").state is State.OPEN
    assert the(book, "2027-05-08", "first-mow").state is State.OPEN


def test_a_spot_changes_nothing_for_the_zone() -> None:
    book = kept("2026-04-25 seed three-river-blend 0.2lb spot 20sqft front")
    for name in ("starter", "first-mow", "established"):
        assert find(book, "2026-05-01", name) is None, name
    assert the(book, "2026-05-01", "mow").state is State.OPEN


def test_a_spot_is_kept_damp_too() -> None:
    book = kept("2026-04-25 seed three-river-blend 0.2lb spot 20sqft front")
    step = the(book, "2026-05-01", "damp")
    assert (step.state, step.title, step.line) == (State.OPEN, "damp spot", "water spot front")
    once = typed(book, f"2026-05-01 {step.line}")
    assert the(once, "2026-05-01", "damp").amount == "once more today"
    assert the(typed(once, f"2026-05-01 {step.line}"), "2026-05-01", "damp").state is State.WAITING
    assert find(book, "2026-05-23", "damp") is None
    assert the(book, "2026-05-22", "damp").state is State.OPEN


def test_what_lies_before_the_book_is_not_called_missed() -> None:
    book = kept(SOWN, lawn={"kept_since": "2026-10-01"})
    assert find(book, "2026-10-02", "starter") is None
    assert the(kept(SOWN), "2026-10-02", "starter").state is State.MISSED
