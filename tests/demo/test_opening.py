"""What stands in the demo book on the day it is opened, and on some days before."""

from datetime import date
from functools import cache

import pytest

from journal.cli.demo import OPENS
from journal.cli.demo.book import entries
from journal.plan.step import State, Step
from journal.rules.flag import Level
from journal.season.history import History
from journal.standing import Standing, standing

BARRIER_OVER = date(2027, 8, 15)


@cache
def history() -> History:
    return History.of(entries())


@cache
def stands(day: date) -> Standing:
    return standing(history(), day)


def raised(day: date) -> set[tuple[str, str, tuple[str, ...]]]:
    return {(flag.rule, flag.level.value, flag.zones) for flag in stands(day).flags}


def steps(name: str) -> dict[str, Step]:
    """The steps of that name on the opening day, by zone."""
    return {zone: step for step in stands(OPENS).steps if step.step == name for zone in step.zones}


def test_two_zones_are_late_for_the_mower_and_nothing_is_lost() -> None:
    assert ("mow-gap", "late", ("front", "back")) in raised(OPENS)
    counts = stands(OPENS).counts
    assert (counts[Level.HARM], counts[Level.LOSS], counts[Level.LATE]) == (0, 0, 1)


def test_a_few_notes_are_up() -> None:
    notes = {(rule, zones) for rule, level, zones in raised(OPENS) if level == "note"}
    assert {("amount-missing", ("side",)), ("mow-height", ("side",))} <= notes
    assert len(notes) <= 5


def test_the_patch_of_other_seed_is_set_aside_with_its_reason() -> None:
    aside = [flag for flag in stands(OPENS).hidden if flag.rule == "seed-switch"]
    assert [flag.zones for flag in aside] == [("side",)]
    assert "behind the shed" in aside[0].hidden


def test_mowing_is_due_on_two_zones_and_not_yet_on_the_third() -> None:
    mow = steps("mow")
    assert {zone: step.state for zone, step in mow.items()} == {
        "front": State.LATE,
        "back": State.LATE,
        "side": State.WAITING,
    }


def test_seed_is_planned_and_waits_for_the_barrier() -> None:
    seed = steps("seed")
    assert set(seed) == {"front", "back"}
    assert seed["front"].state is State.WAITING
    assert seed["front"].earliest == BARRIER_OVER
    assert "gravel-pit-barrier" in seed["front"].waits_for


def test_the_next_feeding_opens_within_seven_weeks() -> None:
    feed = steps("feed")
    assert set(feed) == {"front", "back", "side"}
    for step in feed.values():
        assert step.state is State.WAITING
        assert step.earliest is not None
        assert 0 < (step.earliest - OPENS).days < 49


@pytest.mark.parametrize(
    ("day", "flag"),
    [
        (date(2024, 10, 25), ("amount-missing", "note", ("front", "back"))),
        (date(2025, 6, 12), ("mow-gap", "late", ("front", "back", "side"))),
        (date(2025, 9, 26), ("mow-first-early", "loss", ("back",))),
        (date(2026, 4, 20), ("seed-switch", "note", ("front", "back", "side"))),
        (date(2026, 4, 28), ("seed-switch", "loss", ("side",))),
        (date(2026, 6, 17), ("mow-gap", "late", ("front", "back"))),
    ],
)
def test_the_mistakes_show_when_they_were_made(day: date, flag: tuple[str, str, tuple[str, ...]]) -> None:
    assert flag in raised(day)


@pytest.mark.parametrize("day", [date(2024, 8, 20), date(2025, 5, 15), date(2026, 3, 20), date(2026, 10, 8)])
def test_an_orderly_day_is_quiet(day: date) -> None:
    assert not [one for one in raised(day) if one[1] in ("harm", "loss", "late")]


def test_a_snooze_hides_the_feeding_that_waits_for_the_renovation() -> None:
    hidden = {flag.rule for flag in stands(date(2025, 9, 4)).hidden}
    assert "feed-overdue" in hidden
