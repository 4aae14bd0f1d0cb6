"""Sow a week late, and every later date moves by a week."""

from datetime import timedelta

import pytest

from journal.plan.step import Step
from tests.plan.garden import kept
from tests.scenario import find, later

WEEK = timedelta(7)
STEPS = {"starter": 3, "damp": 5, "keep-off": 5, "first-mow": 20, "bag": 40, "established": 45}
"""Each with a day after sowing on which it stands in the plan."""


def _sown(on: str) -> tuple[str, ...]:
    return (f"{on} seed three-river-blend 9.6lb front", f"{later(on, 28)} mow 3in bag front")


def _at(on: str, name: str, days: int) -> Step:
    book = kept(*_sown(on)) if days > 28 else kept(_sown(on)[0])
    step = find(book, later(on, days), name)
    assert step is not None, name
    return step


@pytest.mark.parametrize("name", STEPS)
def test_all_dates_of_the_step_move(name: str) -> None:
    early, late = (_at(on, name, STEPS[name]) for on in ("2026-08-20", "2026-08-27"))
    assert early.earliest is not None
    assert late.earliest == early.earliest + WEEK
    assert early.state is late.state
    assert late.latest == (early.latest + WEEK if early.latest else None)
    assert late.best == ((early.best[0] + WEEK, early.best[1] + WEEK) if early.best else None)


@pytest.mark.parametrize(
    ("name", "at", "first", "last"),
    [
        ("starter", 0, 0, 7), ("damp", 5, 5, 5), ("first-mow", 5, 28, 56), ("bag", 40, 28, 55),
        ("established", 40, 56, None),
    ],
)  # fmt: skip
def test_each_counts_from_the_sowing_as_logged(name: str, at: int, first: int, last: int | None) -> None:
    step = _at("2026-08-20", name, at)
    assert step.earliest == later("2026-08-20", first)
    if last is not None:
        assert step.latest == later("2026-08-20", last)
