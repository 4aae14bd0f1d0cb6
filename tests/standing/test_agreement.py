"""What is called late can be done: a flag of feeding or mowing and its step never contradict each other."""

from datetime import date, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from journal.plan.step import State, Step
from journal.plan.steps import steps
from journal.record.entry import Entry
from journal.rules.declare import RULES
from journal.rules.judge import judged
from journal.season.history import History
from journal.standing import preflight
from tests.plan.renovation import story
from tests.rules.seasons import BEGINS, LAWNS, SPAN, entries, kept, lawns, numbered
from tests.scenario import book, draft, later, lawn, weather

STEPS = {
    "feed-overdue": ("feed",),
    "starter-missing": ("starter",),
    "seedling-feed": ("seedling-feed",),
    "mow-gap": ("mow", "first-mow"),
}
FED_WRONG = ("feed-closed", "feed-dormant", "feed-heat", "feed-too-soon", "feed-dose")
"""What obeying a flag of feeding may never raise."""
TO_DO = (State.OPEN, State.LATE)

DRY = lawn(("irrigated = true", "irrigated = false"))
MONTHS = lawn(('name = "North Lane"', 'name = "North Lane"\nfeeding = "months"'))
SEASONS = {
    "a lawn that rests and turns green": book(
        "2026-04-20 feed pond-ridge 7lb front", "2026-05-02 mow 3in front", "2026-06-20 see dormant front",
        "2026-08-01 see green front", "2026-09-20 see frozen front", "2026-09-29 see thawed front",
    ),
    "hot and dry, not watered": book(
        "2026-04-20 feed pond-ridge 5lb front", "2026-05-02 mow 3in front", *weather("2026-05-20", 40, "90F 70F 0in"),
        "2026-07-20 rain 2in", on=DRY,
    ),
    "hot, by months": book(*weather("2026-09-10", 30, "90F 70F 0in"), "2026-08-05 feed slow-oak 9lb front", on=MONTHS),
    "a sowing meant and given up": book(
        "2026-04-12 feed pond-ridge 5lb front", "2026-05-01 intend seed three-river 2026-06-20 front",
    ),
    "a sowing carried out": book(
        "2026-04-12 feed pond-ridge 5lb front", "2026-05-01 intend seed three-river 2026-06-05 front",
        "2026-06-04 seed three-river 9lb front",
    ),
    "an early spring": book(*weather("2026-03-01", 70, "64F 44F 0in"), "2026-03-25 mow 3in front"),
    "sown in August and not fed": book(
        "2026-08-03 feed pond-ridge 3lb/k front", "2026-08-20 seed three-river 9lb front",
        *weather("2026-08-30", 8, "88F 66F 0in"), *weather("2026-10-05", 3, "86F 60F 0in"),
        "2026-10-10 see frozen front", "2026-10-13 see thawed front",
    ),
    "sown in spring, one wrong feeding": book(
        "2026-04-15 seed three-river 9lb front", "2026-04-18 feed pond-ridge 2lb/k front",
        *weather("2026-04-22", 6, "34F 22F 0in"), "2026-05-04 feed oat-hill 3lb/k front",
    ),
    "sown late, an early spring": book(
        "2026-09-28 seed three-river 9lb front", *weather("2027-03-01", 70, "64F 44F 0in")
    ),
    "own numbers": book(
        "2026-01-02 set feed-overdue days 20", "2026-01-02 set feed-overdue days-50 30",
        "2026-01-02 set mow-gap days 4", "2026-04-25 feed slow-oak 9lb front",
    ),
}  # fmt: skip


def _contradictions(book: History, on: date) -> list[str]:
    zones = book.lawn(on).zone_names
    late = [(rule, zone) for rule in STEPS for zone in zones if judged(RULES[rule], book.on(zone, on))]
    plan = steps(book, on) if late else ()
    return [f"{on} {rule} {zone}: {found}" for rule, zone in late if (found := _shut(rule, zone, plan)) is not None]


def _shut(rule: str, zone: str, plan: tuple[Step, ...]) -> str | None:
    """The steps of what the flag asks for, where they say otherwise."""
    mine = [step for step in plan if step.step in STEPS[rule] and zone in step.zones]
    if any(step.state in TO_DO for step in mine):
        return None
    return "; ".join(f"{step.step} {step.state} {step.waits_for}" for step in mine)


def _blamed(book: History, on: date) -> list[str]:
    """What would be said of the lines by which the flags of feeding are obeyed."""
    zones = book.lawn(on).zone_names
    wanted = {rule for rule in STEPS if rule != "mow-gap" for zone in zones if judged(RULES[rule], book.on(zone, on))}
    found = []
    for step in steps(book, on) if wanted else ():
        if step.line and step.state is State.LATE and any(step.step in STEPS[rule] for rule in wanted):
            flags = preflight(book, draft(book, f"{on} {step.line}"), on).raised
            found += [f"{on} {step.line}: {flag.rule} {flag.level}" for flag in flags if flag.rule in FED_WRONG]
    return found


@pytest.mark.parametrize("name", SEASONS)
def test_obeying_a_flag_of_feeding_raises_no_other(name: str) -> None:
    assert [word for ahead in range(0, 520, 2) for word in _blamed(SEASONS[name], later("2026-03-01", ahead))] == []


@settings(max_examples=12, derandomize=True)
@given(lawns, entries(), st.integers(0, 10))
def test_nor_in_any_book(name: str, made: list[Entry], start: int) -> None:
    any_book = kept(name, numbered(made))
    days = range(start, SPAN + 90, 11)
    assert [word for ahead in days for word in _blamed(any_book, BEGINS + timedelta(ahead))] == []


@pytest.mark.parametrize("name", SEASONS)
def test_what_is_late_can_be_done_on_every_day_of_a_season(name: str) -> None:
    found = [word for ahead in range(520) for word in _contradictions(SEASONS[name], later("2026-03-01", ahead))]
    assert found == []


def test_what_is_late_can_be_done_in_a_renovation() -> None:
    told = story()
    assert [w for ahead in range(400) for w in _contradictions(told, later("2026-06-28", ahead))] == []


@settings(max_examples=15, derandomize=True)
@given(lawns, entries(), st.integers(0, 12))
def test_what_is_late_can_be_done_in_any_book(name: str, made: list[Entry], start: int) -> None:
    any_book = kept(name, numbered(made))
    on, found = BEGINS + timedelta(start), []
    while on < BEGINS + timedelta(SPAN + 90):
        found += _contradictions(any_book, on)
        on += timedelta(13)
    assert found == []


@pytest.mark.parametrize("name", LAWNS)
def test_nothing_logged_at_all(name: str) -> None:
    assert [w for ahead in range(0, 500, 3) for w in _contradictions(LAWNS[name], BEGINS + timedelta(ahead))] == []
