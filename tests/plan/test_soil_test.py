"""When to have the soil tested."""

from datetime import date

import pytest

from journal.plan.step import State
from tests.scenario import book, lawn, the


def test_without_one_on_file_it_is_offered_and_never_late() -> None:
    step = the(lawn(), "2026-05-01", "soil-test")
    assert (step.state, step.why, step.line) == (State.OPEN, "no soil test on file", "")
    assert "soil ph 6.1" in step.amount
    assert the(lawn(set_up="2020-01-01"), "2026-05-01", "soil-test").state is State.OPEN


@pytest.mark.parametrize(("on", "state"), [("2026-05-01", State.WAITING), ("2026-05-02", State.OPEN)])
def test_three_years_after_the_last(on: str, state: State) -> None:
    """Penn State, Home Lawn - Maintain; Univ. of Missouri, Turf soil test."""
    step = the(book("2023-05-03 soil ph 6.4 p low front", on=lawn(set_up="2023-01-01")), on, "soil-test")
    assert (step.state, step.earliest) == (state, date(2026, 5, 2))


def test_six_weeks_before_a_sowing_that_is_meant() -> None:
    diary = book(
        "2023-12-01 soil ph 6.4 p low front", "2026-06-01 intend seed three-river 2026-12-20 front",
        on=lawn(set_up="2023-01-01"),
    )  # fmt: skip
    states = {on: the(diary, on, "soil-test").state for on in ("2026-10-10", "2026-10-11", "2026-11-08", "2026-11-09")}
    assert list(states.values()) == [State.WAITING, State.OPEN, State.OPEN, State.LATE]
    step = the(diary, "2026-10-11", "soil-test")
    assert step.best == (date(2026, 10, 11), date(2026, 11, 8))
    assert "sowing meant for" in step.why


def test_a_test_that_still_speaks_on_that_day_is_enough() -> None:
    diary = book(
        "2025-05-01 soil ph 6.4 p low front", "2026-06-01 intend seed three-river 2026-09-05 front",
        on=lawn(set_up="2025-01-01"),
    )  # fmt: skip
    assert the(diary, "2026-08-20", "soil-test").state is State.WAITING


def test_a_test_of_the_whole_lawn_counts_and_logging_one_moves_it_on() -> None:
    after = book("2026-05-01 soil ph 6.4 p low")
    assert the(after, "2026-05-02", "soil-test").earliest == date(2029, 4, 30)


def test_the_owners_own_years_count() -> None:
    diary = book("2026-01-02 set soil-test-stale days 730", "2026-05-01 soil ph 6.4")
    assert the(diary, "2026-05-02", "soil-test").earliest == date(2028, 4, 30)


def test_less_than_two_weeks_before_the_sowing_its_answer_comes_too_late_to_be_pressed_for() -> None:
    diary = book("2026-07-22 intend seed three-river 2026-09-05 front")
    assert the(diary, "2026-08-22", "soil-test").state is State.LATE
    step = the(diary, "2026-08-23", "soil-test")
    assert (step.state, step.why) == (State.OPEN, "no soil test on file")
