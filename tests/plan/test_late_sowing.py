"""Sown late: growth ends before the seedlings can be cut or fed, and nothing of it is late in winter."""

from datetime import date

import pytest

from journal.plan.step import State
from journal.plan.steps import due, steps
from tests.scenario import book, find, later, lawn, level, the


def sown(on: str | date, *more: str, units: str = "front") -> str:
    return " ".join((f"{on} seed three-river 9lb", *more, units))


@pytest.mark.parametrize("on", ["2026-10-14", "2026-10-20", "2026-10-31"])
def test_the_first_cut_of_a_late_sowing_waits_for_spring(on: str) -> None:
    diary = book(sown(on))
    for days in (1, 8, 28, 29, 60, 120):
        cut = the(diary, later(on, days), "first-mow")
        assert cut.state is State.WAITING
        assert (str(cut.earliest), str(cut.latest)) == ("2027-04-24", "2027-05-01")
    assert the(diary, "2027-04-24", "first-mow").state is State.OPEN
    assert the(diary, "2027-05-02", "first-mow").state is State.LATE


def test_sown_in_good_time_it_is_cut_in_the_same_autumn() -> None:
    cut = the(book(sown("2026-09-06")), "2026-10-01", "first-mow")
    assert (str(cut.earliest), cut.state) == ("2026-10-04", State.WAITING)


APART = {"barrier", "broadleaf", "knock-back", "soil-test", "photo", "last-mow"}
"""Steps with a season of their own, whenever it was sown."""


@pytest.mark.parametrize("month", range(12))
def test_no_step_of_a_sowing_was_due_before_it_or_is_late_before_it_opens(month: int) -> None:
    days = [later("2026-01-03", 5 * at) for at in range(73)]
    for on in (one for one in days if one.month == month + 1):
        diary = book(sown(on))
        for ahead in (0, 3, 8, 15, 22, 29, 43, 57, 71, 100, 150, 200, 260, 330):
            for step in steps(diary, later(on, ahead)):
                if step.zones != ("front",) or step.step in APART:
                    continue
                said = f"sown {on}, {ahead} days on: {step}"
                assert step.latest is None or step.latest >= on, said
                opened = step.earliest is None or step.earliest <= later(on, ahead)
                assert step.state is not State.LATE or opened, said


def test_no_starter_is_asked_for_once_nothing_grows() -> None:
    diary = book(sown("2026-11-05"))
    for on in ("2026-11-13", "2026-11-26"):
        assert level(diary, on, "starter-missing") == ""
        starter = the(diary, on, "starter")
        assert (starter.state, starter.waits_for) == (State.WAITING, "growth")
    assert the(diary, "2026-11-27", "starter").state is State.MISSED


def test_it_is_asked_for_while_it_grows() -> None:
    diary = book(sown("2026-10-25"))
    assert level(diary, "2026-11-02", "starter-missing") == "late"
    assert the(diary, "2026-11-02", "starter").state is State.LATE
    assert level(diary, "2026-11-11", "starter-missing") == ""


def test_dormant_seed_gets_its_starter_in_spring_and_is_never_late() -> None:
    diary = book(sown("2026-12-01", "dormant"))
    assert (the(diary, "2027-03-01", "starter").state, str(the(diary, "2027-03-01", "starter").earliest)) == (
        State.WAITING, "2027-04-10",
    )  # fmt: skip
    for on in ("2027-04-10", "2027-04-20", "2027-05-01"):
        assert the(diary, on, "starter").state is State.OPEN
        assert level(diary, on, "starter-missing") == ""
    assert the(diary, "2027-05-02", "starter").state is State.MISSED


def test_an_owner_who_logs_few_cuts_has_a_lawn_after_a_year() -> None:
    diary = book(sown("2025-09-06"), "2025-10-10 mow 3in front", on=lawn(set_up="2025-01-01"))
    assert the(diary, "2026-09-05", "established").state is State.WAITING
    done = the(diary, "2026-09-06", "established")
    assert (done.state, done.why) == (State.DONE, "established Sun 6 Sep")
    assert find(diary, "2026-10-05", "established") is None


def test_nor_is_a_first_cut_waited_for_after_a_year() -> None:
    diary = book(sown("2025-09-06"), on=lawn(set_up="2025-01-01"))
    assert the(diary, "2026-09-05", "first-mow").state is State.LATE
    assert find(diary, "2026-09-06", "first-mow") is None
    assert the(diary, "2026-09-06", "mow").state is State.LATE


def test_a_barred_sowing_is_among_what_is_due_where_it_is_meant() -> None:
    diary = book("2026-05-01 treat spring-wall 7lb front", "2026-08-01 intend seed three-river 2026-09-06 front")
    on = later("2026-08-25", 0)
    barred = the(diary, on, "seed")
    assert (barred.state, str(barred.earliest), str(barred.meant)) == (State.BARRED, "2026-11-27", "2026-09-06")
    assert barred in due(steps(diary, on), on, 14)
    assert barred not in due(steps(diary, on), on, 7)


def test_the_day_of_being_a_lawn_is_the_same_before_and_after_growth_begins() -> None:
    diary = book(sown("2026-09-25"), "2026-10-25 mow 3in front", "2026-11-03 mow 3in front")
    days = {the(diary, on, "established").earliest for on in ("2027-02-01", "2027-04-09", "2027-04-12", "2027-04-20")}
    assert days == {later("2027-04-24", 0)}
