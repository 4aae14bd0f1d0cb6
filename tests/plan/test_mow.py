"""The weekly cut."""

import pytest

from journal.plan.step import State
from tests.plan.garden import ZONES, kept
from tests.scenario import day, find, judged, later, the


@pytest.mark.parametrize(
    ("mown", "as_of", "state"),
    [
        ("2026-05-04", "2026-05-10", State.WAITING),
        ("2026-05-04", "2026-05-11", State.OPEN),
        ("2026-05-04", "2026-05-14", State.OPEN),
        ("2026-05-04", "2026-05-15", State.LATE),
        ("2026-07-04", "2026-07-18", State.OPEN),
        ("2026-07-04", "2026-07-19", State.LATE),
        ("2026-10-22", "2026-11-10", State.OPEN),
    ],
)
def test_every_seven_days_and_late_by_the_month(mown: str, as_of: str, state: State) -> None:
    assert the(kept(f"{mown} mow 3in front"), as_of, "mow").state is state


def test_a_gap_that_runs_into_a_quicker_month_is_late_sooner() -> None:
    book = kept("2026-08-22 mow 3in front")
    assert the(book, "2026-08-31", "mow").latest == day("2026-09-01")


def test_the_first_cut_of_the_year_is_two_weeks_into_growth() -> None:
    book = kept()
    assert find(book, "2026-03-01", "mow") is None
    step = the(book, "2026-04-01", "mow")
    assert (step.state, step.earliest) == (State.WAITING, day("2026-04-24"))
    assert the(book, "2026-04-24", "mow").state is State.OPEN
    assert the(book, "2026-05-04", "mow").state is State.OPEN
    assert the(book, "2026-05-05", "mow").state is State.LATE


def test_a_book_begun_in_july_is_not_told_off_for_april() -> None:
    book = kept(set_up="2026-07-15")
    assert the(book, "2026-07-15", "mow").state is State.OPEN
    assert the(book, "2026-07-29", "mow").state is State.OPEN
    assert the(book, "2026-07-30", "mow").state is State.LATE


def test_the_usual_height_unless_it_was_a_scalp() -> None:
    assert the(kept("2026-05-04 mow 3.5in front"), "2026-05-12", "mow").line == "mow 3.5in front"
    assert the(kept("2026-05-04 mow 1.5in front"), "2026-05-12", "mow").line == "mow 3in front"


def test_never_more_than_a_third_off() -> None:
    mown = "2026-05-04 mow 3in front"
    assert the(kept(mown, "2026-05-14 height 4.5in front"), "2026-05-14", "mow").line == "mow 3in front"
    step = the(kept(mown, "2026-05-14 height 5in front"), "2026-05-16", "mow")
    assert step.line == "mow 3.5in front"
    assert step.amount == "cut at 3.5 in, no lower: two thirds of the 5 in that stand, then down every 2 to 4 days"
    assert the(kept(mown, "2026-05-14 height 5in front"), "2026-05-17", "mow").line == "mow 3.25in front"


def test_a_dormant_lawn_is_left_alone() -> None:
    book = kept("2026-07-01 mow 3in front", "2026-07-10 see dormant front")
    step = the(book, "2026-08-01", "mow")
    assert (step.state, step.line) == (State.WAITING, "")
    assert "dormant since Fri 10 Jul" in step.waits_for
    green = kept("2026-07-01 mow 3in front", "2026-07-10 see dormant front", "2026-08-20 see green front")
    step = the(green, "2026-08-21", "mow")
    assert (step.state, step.earliest) == (State.WAITING, day("2026-08-27"))
    assert step.why == "green again 1 d ago, Thu 20 Aug"
    assert the(green, "2026-08-31", "mow").state is State.OPEN
    assert the(green, "2026-09-01", "mow").state is State.LATE


def test_a_service_s_mowing_is_no_step() -> None:
    zones = {"front": ZONES["front"] | {"mowing": "service"}}
    assert find(kept(zones=zones), "2026-05-20", "mow") is None


def test_after_the_end_of_growth_there_is_nothing_to_mow() -> None:
    book = kept("2026-11-08 mow 3in front")
    assert find(book, "2026-11-09", "mow") is None
    assert find(book, "2026-12-01", "mow") is None


def test_without_frost_dates_the_plan_is_silent() -> None:
    book = kept("2026-05-04 mow 3in front", lawn={"growth": "", "last_frost": "", "first_frost": ""})
    assert find(book, "2026-05-20", "mow") is None
    assert find(book, "2026-05-20", "feed") is None


def test_the_owner_s_own_days_go_first() -> None:
    book = kept("2026-05-01 set mow-gap step-days 5d", "2026-05-04 mow 3in front")
    assert the(book, "2026-05-09", "mow").state is State.OPEN


def test_a_first_cut_says_what_to_do_where_it_stands_tall() -> None:
    step = the(kept(), "2026-04-24", "mow")
    assert step.amount == "cut at 3 in, or at two thirds of the height where it is taller, then down every 2 to 4 days"
    assert the(kept("2026-05-04 mow 3in front"), "2026-05-12", "mow").amount == "cut at 3 in"


def test_tall_grass_comes_down_in_steps_of_a_few_days() -> None:
    tall = kept("2026-05-14 height 8in front", "2026-05-14 mow 5.5in front")
    step = the(tall, "2026-05-15", "mow")
    assert (step.state, step.earliest) == (State.WAITING, day("2026-05-16"))
    assert the(tall, "2026-05-16", "mow").line == "mow 3.75in front"
    down = kept(
        "2026-05-14 height 8in front", "2026-05-14 mow 5.5in front", "2026-05-16 mow 3.75in front",
        "2026-05-18 mow 3in front",
    )  # fmt: skip
    assert the(down, "2026-05-19", "mow").earliest == day("2026-05-25")


def test_a_late_cut_is_raised_by_what_must_have_grown_and_comes_down_again() -> None:
    late = kept("2026-05-04 mow 3in front")
    assert the(late, "2026-05-14", "mow").line == "mow 3in front"
    step = the(late, "2026-05-18", "mow")
    assert (step.state, step.line) == (State.LATE, "mow 3.5in front")
    assert step.amount == "cut at 3.5 in, no lower: two thirds of what stands by estimate, then down every 2 to 4 days"


def test_what_is_offered_is_never_called_too_much_or_too_low() -> None:
    for height in ("2.5in", "3in", "3.5in", "5in", "6in"):
        book = kept(f"2026-05-04 mow {height} front")
        for gap in range(1, 30):
            on = later("2026-05-04", gap)
            step = the(book, on, "mow")
            if step.state is State.WAITING:
                continue
            raised = {flag.rule for flag in judged(book, on, step.line).raised}
            assert raised & {"mow-one-third", "mow-too-low", "mow-height"} == set(), f"{height} {on} {step.line}"


def test_after_more_than_three_weeks_it_says_what_to_do_where_it_stands_tall() -> None:
    """Nobody knows how tall it is by then: what it said the week before is not taken back."""
    diary = kept("2026-05-20 mow 3in front", "2026-05-27 mow 3in front")
    assert the(diary, "2026-06-14", "mow").amount.startswith("cut at 3.5 in, no lower")
    long = the(diary, "2026-06-21", "mow")
    assert long.amount == "cut at 3 in, or at two thirds of the height where it is taller, then down every 2 to 4 days"
