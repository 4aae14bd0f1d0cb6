"""The light feeding of new grass: half a pound of nitrogen a month after sowing, K-State Extension in The Kansan, A
tall fescue calendar, 2021. It opens on day 28, is late after day 45 and given up on day 70.
"""

from journal.plan.step import State
from tests.plan.garden import PRODUCTS, kept
from tests.scenario import day, find, judged, later, the, typed

SOWN = "2026-08-20"
SEED = f"{SOWN} seed three-river-blend 9.6lb front"
STARTER = f"{SOWN} feed oat-hill-starter 8.3lb front"
BOOK = kept(SEED, STARTER)
STEP = "seedling-feed"


def test_it_opens_on_day_28_is_late_after_day_45_and_missed_after_day_70() -> None:
    waiting = the(BOOK, later(SOWN, 27), STEP)
    assert (waiting.state, waiting.waits_for) == (State.WAITING, "day 28, Thu 17 Sep")
    step = the(BOOK, later(SOWN, 28), STEP)
    assert (step.state, step.earliest, step.latest) == (State.OPEN, day("2026-09-17"), later(SOWN, 45))
    assert the(BOOK, later(SOWN, 45), STEP).state is State.OPEN
    assert the(BOOK, later(SOWN, 46), STEP).state is State.LATE
    assert the(BOOK, later(SOWN, 70), STEP).state is State.LATE
    missed = the(BOOK, later(SOWN, 71), STEP)
    assert (missed.state, missed.line) == (State.MISSED, "")
    assert missed.why == "not fed by Thu 29 Oct: a light feeding in spring instead"
    assert find(BOOK, later(SOWN, 90), STEP) is None


def test_its_line_is_half_a_pound_of_nitrogen_and_raises_nothing() -> None:
    step = the(BOOK, later(SOWN, 28), STEP)
    assert step.line == "feed pond-ridge 5lb front"
    assert "0.5 lb N/k" in step.amount
    assert [flag.rule for flag in judged(BOOK, later(SOWN, 28), step.line).raised] == []
    done = typed(BOOK, f"{later(SOWN, 28)} {step.line}")
    assert the(done, later(SOWN, 29), STEP).state is State.DONE


def test_a_late_starter_moves_it_and_a_week_later_sown_is_a_week_later_fed() -> None:
    late = kept(SEED, f"{later(SOWN, 10)} feed oat-hill-starter 8.3lb front")
    assert the(late, later(SOWN, 28), STEP).earliest == later(SOWN, 38)
    week = kept(SEED.replace(SOWN, "2026-08-27"))
    assert the(week, "2026-09-10", STEP).earliest == later("2026-08-27", 28)


def test_sown_too_late_it_waits_for_a_light_feeding_in_spring() -> None:
    october = kept("2026-10-10 seed three-river-blend 9.6lb front")
    step = the(october, "2026-10-20", STEP)
    assert (step.state, step.earliest, step.line) == (State.WAITING, None, "")
    assert step.waits_for == "growth ends Tue 10 Nov: a light feeding in spring instead"
    assert the(october, "2026-12-20", STEP).state is State.MISSED


def test_what_bars_it_is_said() -> None:
    on = later(SOWN, 35)
    for line, words in (
        ("see dormant front", "dormant: after `see green`"),
        ("see frozen front", "frozen ground: after `see thawed`, or milder days"),
        ("weather 86F 60F", "a hot day: feed on a cooler one"),
    ):
        step = the(typed(BOOK, f"{on} {line}"), on, STEP)
        assert (step.state, step.waits_for) == (State.WAITING, words)
    closed = kept(SEED, STARTER, lawn={"local_closed": "09-15 03-31"})
    assert the(closed, on, STEP).waits_for == "closed by the local rule"


def test_the_years_nitrogen_that_is_used_leaves_none() -> None:
    much = kept("2026-04-12 feed pond-ridge 10lb/k front", SEED, STARTER)
    step = the(much, later(SOWN, 30), STEP)
    assert (step.state, step.why, step.line) == (State.DONE, "the year's nitrogen is used", "")


def test_a_label_whose_least_is_too_much_has_no_line_and_an_empty_shed_says_how_much() -> None:
    heavy = PRODUCTS | {"pond-ridge": {"kind": "fertilizer", "analysis": "24-0-11", "rate": "4lb/k 5lb/k"}}
    step = the(kept(SEED, STARTER, products=heavy), later(SOWN, 30), STEP)
    assert (step.line, step.amount) == (
        "", "pond-ridge: its label's least brings 0.96 lb N/k; 0.5 lb N/k is the most for seedlings",
    )  # fmt: skip
    seed_only = {"three-river-blend": PRODUCTS["three-river-blend"]}
    assert the(kept(SEED, products=seed_only), later(SOWN, 30), STEP).amount == (
        "0.5 lb N/k: no fertilizer in the shed"
    )


def test_a_spot_and_an_old_stand_have_none() -> None:
    assert find(kept(f"{SOWN} seed three-river-blend 1lb spot 40sqft front"), later(SOWN, 30), STEP) is None
    assert find(kept("2025-08-20 seed three-river-blend 9.6lb front", set_up="2025-01-01"), "2026-06-01", STEP) is None


def test_late_it_says_how_long_it_is_of_use_and_without_a_day_it_was_never_missed_by_the_owner() -> None:
    assert the(BOOK, later(SOWN, 50), STEP).why == "sown Thu 20 Aug; of use to Thu 29 Oct"
    october = kept("2026-10-10 seed three-river-blend 9.6lb front")
    assert the(october, "2026-12-20", STEP).why == "no day for it before growth ends: a light feeding in spring instead"
