"""An owner who does what the plan says, on the day it says so, is never blamed for it."""

from dataclasses import replace
from datetime import date, timedelta

import pytest

from journal.line.read import read
from journal.plan.step import State
from journal.plan.steps import steps
from journal.rules.flag import Level
from journal.season.history import History
from journal.standing import findings, preflight
from tests.plan.garden import kept
from tests.scenario import day

GRAVE = (Level.HARM, Level.LOSS)
DRY = {"front": {"area": "2400sqft"}, "back": {"area": "3100sqft"}}


def _obeyed(book: History, on: date) -> History:
    """The book after every line that is to be done that day was logged; none of them may raise a grave flag."""
    for _ in range(12):
        todo = [step for step in steps(book, on) if step.line and step.state in (State.OPEN, State.LATE)]
        if not todo:
            return book
        draft = read(todo[0].line, book, on).draft
        assert draft is not None
        blamed = [flag for flag in preflight(book, draft, on).raised if flag.level in GRAVE]
        assert blamed == [], f"{on} {todo[0].line}"
        book = book.plus(replace(draft, id=f"8{book.size:06}"))
    raise AssertionError(f"{on}: there is no end of things to do")


OWNERS: dict[str, dict[str, object]] = {
    "watered": {},
    "dry": {"zones": DRY},
    "by months": {"lawn": {"feeding": "months"}},
}


@pytest.mark.parametrize("owner", OWNERS)
def test_who_obeys_is_never_blamed(owner: str) -> None:
    changes = OWNERS[owner]
    book = kept("2026-07-22 intend seed three-river-blend 2026-09-05 front", set_up="2026-07-20", **changes)
    on, late = day("2026-07-20"), []
    while on < day("2027-06-15"):
        book = _obeyed(book, on)
        if on.weekday() == 0:
            late += [f"{on} {flag.rule} {flag.headline}" for flag in findings(book, on) if flag.level is not Level.NOTE]
        on += timedelta(1)
    assert late == []
    assert book.size > 60
