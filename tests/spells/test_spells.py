"""Flags of the past: when each rose and how it ended."""

from datetime import date

import pytest

from journal.rules.flag import Level
from journal.season.history import History
from journal.spells import End, Spell, first_day, spells
from journal.standing import standing
from tests.scenario import book, day, lawn, weather


def of(history: History, rule: str, until: str = "2026-12-31", zone: str = "front") -> list[Spell]:
    """That rule's spells in that zone, oldest first."""
    return [one for one in spells(history, day(until)) if one.rule == rule and zone in one.zones]


def on(year: int, month: int, day_: int) -> date:
    return date(year, month, day_)


def test_a_gap_rises_on_day_eleven_and_clears_on_the_day_of_the_cut() -> None:
    diary = book("2026-05-20 mow 3in front", "2026-06-01 mow 3in front", "2026-06-14 mow 3in front")
    (may, june) = of(diary, "mow-gap", "2026-06-20")[-2:]
    assert (may.rose, may.cleared, may.ended) == (on(2026, 5, 31), on(2026, 6, 1), End.CLEARED)
    assert (june.rose, june.cleared, june.ended) == (on(2026, 6, 12), on(2026, 6, 14), End.CLEARED)
    assert [stage.level for stage in june.stages] == [Level.LATE]
    assert june.stages[0].headline == "not mown for 11 days"


def test_what_stands_has_not_cleared() -> None:
    diary = book("2026-06-01 mow 3in front")
    (gap,) = [one for one in of(diary, "mow-gap", "2026-06-20") if one.cleared is None]
    assert (gap.rose, gap.ended) == (on(2026, 6, 12), None)
    (flag,) = [flag for flag in standing(diary, day("2026-06-20")).by_zone if flag.id == "mow-gap/front"]
    assert gap.rose == flag.rose


def test_a_gap_that_winter_ends_has_lapsed() -> None:
    diary = book("2026-10-15 mow 3in front")
    gap = of(diary, "mow-gap")[-1]
    assert gap.ended is End.LAPSED
    assert gap.cleared == on(2026, 11, 11)


def test_a_gap_that_rest_ends_has_lapsed() -> None:
    diary = book("2026-06-01 mow 3in front", "2026-06-15 see dormant front")
    gap = next(one for one in of(diary, "mow-gap") if one.rose == on(2026, 6, 12))
    assert (gap.cleared, gap.ended) == (on(2026, 6, 15), End.LAPSED)


def test_a_cut_on_the_day_that_growth_ends_clears_and_does_not_lapse() -> None:
    diary = book("2026-10-15 mow 3in front", "2026-11-11 mow 3in front")
    gap = next(one for one in of(diary, "mow-gap") if one.cleared == on(2026, 11, 11))
    assert gap.ended is End.CLEARED


def test_a_worse_level_is_a_stage_of_the_same_flag() -> None:
    diary = book(
        "2026-08-25 seed quick-rye 9lb front", "2026-08-26 water 5min front",
        *weather("2026-08-25", 20, "80F 60F 0in"),
    )  # fmt: skip
    dry = of(diary, "seedbed-dry")[0]
    assert len(dry.stages) > 1
    assert [stage.since for stage in dry.stages] == sorted(stage.since for stage in dry.stages)
    assert dry.stages[0].since == dry.rose
    assert dry.gravest is Level.LOSS


def test_days_out_of_sight_are_told_and_the_flag_stands_all_the_same() -> None:
    diary = book("2026-06-01 mow 3in front", "2026-06-14 snooze mow-gap 3d front", "2026-06-20 mow 3in front")
    gap = next(one for one in of(diary, "mow-gap") if one.rose == on(2026, 6, 12))
    assert gap.cleared == on(2026, 6, 20)
    (unseen,) = gap.unseen
    assert (unseen.since, unseen.until) == (on(2026, 6, 14), on(2026, 6, 17))
    assert unseen.why == "snoozed until Wed 17 Jun"


def test_set_aside_it_is_out_of_sight_to_the_end() -> None:
    diary = book("2026-06-01 mow 3in front", "2026-06-14 aside mow-gap front -- a meadow", "2026-06-20 mow 3in front")
    gap = next(one for one in of(diary, "mow-gap") if one.rose == on(2026, 6, 12))
    (unseen,) = gap.unseen
    assert (unseen.since, unseen.until) == (on(2026, 6, 14), None)
    assert "a meadow" in unseen.why


def test_hidden_and_then_worse_it_shows_again() -> None:
    diary = book(
        "2026-08-25 seed quick-rye 9lb front", "2026-08-26 water 5min front",
        *weather("2026-08-25", 20, "80F 60F 0in"), "2026-08-27 snooze seedbed-dry 14d front",
    )  # fmt: skip
    dry = of(diary, "seedbed-dry")[0]
    assert (dry.unseen[0].since, dry.unseen[0].until) == (on(2026, 8, 27), on(2026, 8, 28))


def test_what_holds_for_two_zones_alike_is_told_once() -> None:
    diary = book("2026-06-01 mow 3in front back", "2026-06-14 mow 3in front back")
    gap = next(one for one in of(diary, "mow-gap") if one.rose == on(2026, 6, 12))
    assert (gap.id, gap.zones) == ("mow-gap/front+back", ("front", "back"))
    apart = book("2026-06-01 mow 3in front back", "2026-06-14 mow 3in front", "2026-06-15 mow 3in back")
    assert {one.zones for one in spells(apart, day("2026-06-20")) if one.rule == "mow-gap"} >= {("front",), ("back",)}


def test_seen_from_an_earlier_day_nothing_later_is_known() -> None:
    diary = book("2026-06-01 mow 3in front", "2026-06-14 mow 3in front")
    gap = of(diary, "mow-gap", "2026-06-13")[-1]
    assert (gap.rose, gap.cleared) == (on(2026, 6, 12), None)


def test_looking_ahead_nothing_more_is_done() -> None:
    gap = of(book("2026-06-01 mow 3in front"), "mow-gap", "2026-12-31")[-1]
    assert (gap.rose, gap.ended) == (on(2026, 6, 12), End.LAPSED)


def test_since_a_day_what_was_over_is_left_out_and_what_stood_is_whole() -> None:
    diary = book("2026-05-20 mow 3in front", "2026-06-01 mow 3in front", "2026-06-14 mow 3in front")
    found = [one for one in spells(diary, day("2026-06-20"), day("2026-06-13")) if one.rule == "mow-gap"]
    assert [one.rose for one in found if "front" in one.zones] == [on(2026, 6, 12)]


@pytest.mark.parametrize("until", ["2025-12-31", "2020-01-01"])
def test_before_the_book_was_there_is_nothing_to_tell(until: str) -> None:
    assert spells(lawn(), day(until)) == ()
    assert spells(History.of([]), day(until)) == ()


def test_a_book_begins_with_its_oldest_line() -> None:
    assert first_day(lawn()) == on(2026, 1, 1)
    assert first_day(book("2025-09-06 mow 3in front")) == on(2025, 9, 6)


def test_a_zone_that_came_later_has_no_past_before_it() -> None:
    diary = book("2026-06-10 zone side 900sqft from 2026-06-10", "2026-06-01 mow 3in front")
    assert all(one.rose >= on(2026, 6, 10) for one in spells(diary, day("2026-12-31")) if "side" in one.zones)
