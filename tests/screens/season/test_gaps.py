"""A gap shades on the day it passes its number, not before: usual 7 days, late 10, and half again."""

from datetime import date, timedelta

import pytest

from journal.record.entry import Entry
from journal.screens.season.cells import days
from journal.screens.season.gaps import Gap, clock
from journal.screens.season.scene import Scene, scene_of
from tests.screens.season.story import ground, mow, numbered, see, set_, sow, standing


def _scene(as_of: date, *entries: Entry) -> Scene:
    return scene_of(standing(numbered([*ground(), *entries]), as_of), "", days(as_of))


def _gap(as_of: date, *entries: Entry, cut: str = "2027-05-10") -> Gap | None:
    scene = _scene(as_of, mow(cut, 3, "front"), *entries)
    return clock(scene, "front").gap(as_of.toordinal(), date.fromisoformat(cut).toordinal())


@pytest.mark.parametrize(
    ("days_since", "shade"),
    [(0, ""), (7, ""), (8, "░"), (10, "░"), (11, "▒"), (15, "▒"), (16, "▓"), (30, "▓")],
)
def test_in_may_ten_days_are_late(days_since: int, shade: str) -> None:
    found = _gap(date(2027, 5, 10) + timedelta(days_since))
    assert found is not None
    assert (found.days, found.shade) == (days_since, shade)


@pytest.mark.parametrize(("days_since", "shade"), [(13, "░"), (14, "░"), (15, "▒"), (21, "▒"), (22, "▓")])
def test_in_july_fourteen_days_are(days_since: int, shade: str) -> None:
    found = _gap(date(2027, 7, 1) + timedelta(days_since), cut="2027-07-01")
    assert found is not None
    assert found.shade == shade


@pytest.mark.parametrize(("day", "late"), [("2027-10-20", 14), ("2027-10-21", 21), ("2027-11-10", 21)])
def test_as_growth_ends_three_weeks_are(day: str, late: float) -> None:
    found = _gap(date.fromisoformat(day), cut="2027-10-10")
    assert found is not None
    assert found.late == late


def test_the_owners_own_number_holds() -> None:
    found = _gap(date(2027, 5, 22), set_("rule", "mow-gap", days="12d"))
    assert found is not None
    assert (found.days, found.shade) == (12, "░")


def test_no_gap_outside_growth() -> None:
    assert _gap(date(2027, 11, 11), cut="2027-10-10") is None
    assert clock(_scene(date(2027, 11, 11)), "front").quiet(date(2027, 11, 11).toordinal()) == "not growing"


def test_the_first_cut_is_counted_from_two_weeks_of_growth() -> None:
    found = _gap(date(2027, 5, 4), cut="2026-10-20")
    assert found is not None
    assert (found.since, found.cut, found.days) == (date(2027, 4, 24).toordinal(), False, 10)


def test_no_gap_in_a_seedbed_and_none_at_rest() -> None:
    bed = date(2027, 6, 1)
    assert _gap(bed, sow("2027-05-12", 9, "front")) is None
    assert _gap(bed, see("2027-05-15", "dormant", "front")) is None
    assert _gap(bed, see("2027-05-15", "dormant", "front"), see("2027-05-31", "green", "front")) is not None


def test_after_a_rest_it_is_counted_from_green_up() -> None:
    rest = (see("2027-05-15", "dormant", "front"), see("2027-05-28", "green", "front"))
    found = _gap(date(2027, 6, 1), *rest)
    assert found is not None
    assert (found.days, found.cut, found.shade) == (4, False, "")


def test_the_seedbed_ends_with_the_first_cut_from_day_21() -> None:
    cuts = (sow("2027-05-01", 9, "front"), mow("2027-05-28", 3, "front"))
    scene = _scene(date(2027, 6, 6), *cuts)
    watch = clock(scene, "front")
    assert watch.quiet(date(2027, 5, 27).toordinal()) != ""
    assert watch.quiet(date(2027, 5, 28).toordinal()) == ""


def test_nothing_is_late_before_the_book_was_begun() -> None:
    scene = _scene(date(2027, 5, 3))
    assert clock(scene, "front").gap(date(2026, 8, 19).toordinal(), None) is None
