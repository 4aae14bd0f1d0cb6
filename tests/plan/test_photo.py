"""A picture a month from every point."""

from datetime import date

from journal.plan.step import State
from tests.scenario import book, find, lawn, the

SHOT = "2026-05-01 photo a.jpg from gate front"


def test_no_points_no_step() -> None:
    assert find(lawn(), "2026-06-01", "photo") is None
    assert find(book("2026-05-01 photo a.jpg front"), "2026-07-01", "photo") is None


def test_it_opens_after_thirty_days_and_is_late_after_thirty_five() -> None:
    diary = book(SHOT)
    days = ("2026-05-30", "2026-05-31", "2026-06-05", "2026-06-06")
    assert [the(diary, on, "photo").state for on in days] == [State.WAITING, State.OPEN, State.OPEN, State.LATE]
    step = the(diary, "2026-05-31", "photo")
    assert (step.earliest, step.latest, step.line) == (date(2026, 5, 31), date(2026, 6, 5), "")
    assert step.amount == "log it like photo FILE from gate"


def test_the_point_longest_without_one_decides_and_those_due_are_named() -> None:
    diary = book(SHOT, "2026-05-20 photo b.jpg from roof front")
    step = the(diary, "2026-06-02", "photo")
    assert step.why.startswith("gate: ")
    assert "roof" not in step.why
    assert "roof" in the(diary, "2026-06-25", "photo").why


def test_a_picture_moves_it_on() -> None:
    diary = book(SHOT, "2026-06-02 photo b.jpg from gate front")
    assert the(diary, "2026-06-02", "photo").earliest == date(2026, 7, 2)


def test_it_waits_for_growth_and_for_green_grass() -> None:
    diary = book("2026-10-20 photo a.jpg from gate front")
    winter = the(diary, "2026-12-20", "photo")
    assert (winter.state, winter.earliest, winter.waits_for) == (State.WAITING, date(2027, 4, 10), "growth")
    resting = book(SHOT, "2026-06-01 see dormant front")
    assert the(resting, "2026-06-20", "photo").state is State.WAITING


def test_the_owners_own_months_count() -> None:
    assert the(book("2026-04-01 set photo-gap step-days 14", SHOT), "2026-05-15", "photo").state is State.OPEN
