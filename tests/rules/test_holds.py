"""What holds a feeding or a cut back, and the time an owner has once it has let go."""

import pytest

from journal.plan.step import State
from tests.scenario import book, day, later, lawn, level, raised, the, weather

FED = "2026-04-20 feed pond-ridge 7lb front"
RESTED = (FED, "2026-05-20 mow 3in front", "2026-06-05 see dormant front")
DRY = ("irrigated = true", "irrigated = false")


def test_after_green_up_a_cut_counts_from_there() -> None:
    diary = book(*RESTED, "2026-07-10 see green front")
    step = the(diary, "2026-07-10", "mow")
    assert (step.state, step.earliest) == (State.WAITING, day("2026-07-17"))
    assert level(diary, "2026-07-24", "mow-gap") == ""
    assert level(diary, "2026-07-25", "mow-gap") == "late"
    assert the(diary, "2026-07-25", "mow").state is State.LATE


def test_a_green_that_closes_nothing_moves_nothing() -> None:
    diary = book(FED, "2026-05-20 mow 3in front", "2026-05-28 see green front")
    assert level(diary, "2026-05-31", "mow-gap") == "late"
    again = book(*RESTED, "2026-07-10 see green front", "2026-07-20 see green front")
    assert level(again, "2026-07-25", "mow-gap") == "late"


def test_a_cut_after_green_up_counts_as_ever() -> None:
    diary = book(*RESTED, "2026-07-10 see green front", "2026-07-14 mow 3in front")
    assert the(diary, "2026-07-15", "mow").earliest == day("2026-07-21")


@pytest.mark.parametrize("on", ["2026-06-10", "2026-07-01", "2026-07-09"])
def test_no_cut_opens_inside_a_rest(on: str) -> None:
    assert the(book(*RESTED), on, "mow").earliest is None


def test_a_lawn_just_green_again_is_not_fed_for_two_weeks_and_late_two_weeks_later() -> None:
    diary = book(*RESTED, "2026-07-10 see green front")
    step = the(diary, "2026-07-23", "feed")
    assert (step.state, step.earliest) == (State.WAITING, day("2026-07-24"))
    assert step.waits_for == "green again since Fri 10 Jul: let it recover to Fri 24 Jul"
    assert the(diary, "2026-07-24", "feed").state is State.OPEN
    assert level(diary, "2026-08-07", "feed-overdue") == ""
    assert level(diary, "2026-08-08", "feed-overdue") == "late"
    assert the(diary, "2026-08-08", "feed").state is State.LATE


def test_before_an_intended_sowing_no_feeding_is_late() -> None:
    meant = book(FED, "2026-06-10 intend seed three-river 2026-07-05 front")
    step = the(meant, "2026-06-20", "feed")
    assert (step.state, step.waits_for) == (State.WAITING, "sowing meant for Sun 5 Jul: starter then")
    assert level(book(FED), "2026-06-20", "feed-overdue") == "late"
    assert level(meant, "2026-06-20", "feed-overdue") == ""
    given_up = later("2026-07-05", 14)
    assert level(meant, later(given_up, 14), "feed-overdue") == ""
    assert level(meant, later(given_up, 15), "feed-overdue") == "late"


def test_two_weeks_after_heat() -> None:
    hot = book(FED, *weather("2026-06-20", 7, "88F 70F 0in"), *weather("2026-06-27", 60, "70F 55F 0.2in"))
    assert the(hot, "2026-06-26", "feed").state is State.WAITING
    first_mild = next(later("2026-06-26", at) for at in range(20) if the(
        hot, later("2026-06-26", at), "feed").state is not State.WAITING)  # fmt: skip
    assert level(hot, later(first_mild, 14), "feed-overdue") == ""
    assert level(hot, later(first_mild, 15), "feed-overdue") == "late"


def test_two_weeks_after_a_thaw() -> None:
    diary = book(FED, "2026-06-10 see frozen front", "2026-06-20 see thawed front")
    assert level(diary, "2026-07-04", "feed-overdue") == ""
    assert level(diary, "2026-07-05", "feed-overdue") == "late"


def test_a_late_flag_is_held_by_the_summer_rest_though_it_stood_before() -> None:
    diary = book("2026-04-10 feed pond-ridge 7lb front", on=lawn(DRY))
    assert level(diary, "2026-06-14", "feed-overdue") == "late"
    step = the(diary, "2026-07-01", "feed")
    assert (step.state, step.earliest) == (State.WAITING, day("2026-08-15"))
    assert the(diary, "2026-08-29", "feed").state is State.OPEN
    assert the(diary, "2026-08-30", "feed").state is State.LATE


def test_a_dry_spell_holds_the_cut_and_says_so() -> None:
    dry = book("2026-06-20 mow 3in front", *weather("2026-06-15", 25, "80F 60F 0in"), on=lawn(DRY))
    step = the(dry, "2026-07-05", "mow")
    assert (step.state, step.earliest, step.line) == (State.WAITING, None, "")
    assert step.waits_for == ("too dry to grow: under 0.5 in of water in 21 d and not irrigated; cut again after rain")
    assert level(dry, "2026-07-05", "mow-gap") == ""
    watered = book("2026-06-20 mow 3in front", *weather("2026-06-15", 25, "80F 60F 0in"))
    assert the(watered, "2026-07-05", "mow").state is State.LATE


@pytest.mark.parametrize("percent", [15, 50, 80])
def test_a_band_of_slow_nitrogen_begins_at_its_percentage(percent: int) -> None:
    slow = lawn(('slow = "60% of n"', f'slow = "{percent}% of n"'))
    diary = book("2026-04-20 feed slow-oak 7lb front", on=slow)
    days = {15: 70, 50: 84, 80: 112}[percent]
    assert level(diary, later("2026-04-20", days), "feed-overdue") == ""
    late = raised(diary, later("2026-04-20", days + 1), "feed-overdue")
    assert late is not None
    assert f"{percent} % of its nitrogen slow" in late.why
    assert late.numbers[f"days-{percent}"].words == f"{days} d"
