"""Every ready line is complete as it stands, and logging it moves its step on."""

from dataclasses import replace
from datetime import date, timedelta

import pytest

from journal.line.read import read
from journal.plan.step import State, Step
from journal.plan.steps import steps
from journal.season.history import History
from tests.plan.garden import PRODUCTS, ZONES, kept
from tests.plan.renovation import story
from tests.scenario import day

TO_DO = (State.OPEN, State.LATE)
MAY_BE_USUAL = {"clippings", "minutes"}
"""What a line may leave to the usual."""


def _again(step: Step, after: History, on: date) -> list[Step]:
    """What the plan still says of that step in its zones."""
    return [found for found in steps(after, on) if found.step == step.step and set(found.zones) & set(step.zones)]


def check(book: History, on: date) -> int:
    """Read every ready line of that day, log those that are due, and see their steps move on; how many there were."""
    count = 0
    for step in steps(book, on):
        if not step.line:
            continue
        reading = read(step.line, book, on)
        assert reading.problem is None, f"{on} {step.line}: {reading.problem}"
        draft = reading.draft
        assert draft is not None
        assert draft.zones == (() if draft.lawnwide else step.zones)
        assert set(draft.assumed) <= MAY_BE_USUAL, f"{on} {step.line} leaves {draft.assumed} open"
        count += 1
        if step.state in TO_DO:
            left = _again(step, book.plus(replace(draft, id="9")), on)
            assert step not in left, f"{on} {step.line} changes nothing"
            if step.step != "damp":
                assert all(found.state not in TO_DO for found in left), f"{on} {step.line} leaves the step to do"
    return count


@pytest.mark.parametrize("start", range(4))
def test_every_ready_line_of_a_renovation_can_be_logged_as_it_stands(start: int) -> None:
    book = story()
    on, count = day("2026-06-29") + timedelta(start), 0
    while on < day("2027-06-30"):
        count += check(book, on)
        on += timedelta(4)
    assert count > 100


CHANGES: dict[str, dict[str, object]] = {
    "areas not known": {"zones": {"front": {}, "back": {}}},
    "one area not known": {"zones": {"front": ZONES["front"], "back": {}}},
    "metric": {"lawn": {"units": "metric", "height": "75mm"}},
    "no water rate": {"zones": {"front": {"area": "2400sqft", "irrigated": "yes"}}},
    "no rates on the labels": {
        "products": {name: {k: v for k, v in facts.items() if k != "rate"} for name, facts in PRODUCTS.items()}
    },
    "fed by months": {"lawn": {"feeding": "months"}},
    "not irrigated": {"zones": {"front": {"area": "240m2"}, "back": {"area": "90m2"}}},
    "an empty shed": {"products": {}},
    "a lawn in the south": {
        "lawn": {"latitude": "-37", "last_frost": "10-20", "first_frost": "05-01", "growth": "10-01 06-05"}
    },
}


@pytest.mark.parametrize("name", CHANGES)
def test_ready_lines_hold_for_other_lawns(name: str) -> None:
    books = [
        kept(set_up="2026-03-01", **CHANGES[name]),
        kept("2026-04-20 mow 3in front", "2026-05-02 height 5.2in front", set_up="2026-03-01", **CHANGES[name]),
    ]
    if name != "an empty shed":
        sown = ("2026-09-06 seed three-river-blend 4lb/k front", "2026-09-30 height 3.7in front")
        books.append(kept(*sown, set_up="2026-03-01", **CHANGES[name]))
        books.append(kept("2026-05-10 seed three-river-blend spot front", set_up="2026-03-01", **CHANGES[name]))
    count = 0
    for book in books:
        on = day("2026-04-01")
        while on < day("2026-12-10"):
            count += check(book, on)
            on += timedelta(9)
        count += check(book, day("2026-05-02"))
    assert count > 10
