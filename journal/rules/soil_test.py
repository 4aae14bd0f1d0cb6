"""Lime or phosphorus put down on the word of no soil test, or of an old one."""

from collections.abc import Iterator
from datetime import timedelta

from journal.reckon.feedings import FEEDINGS
from journal.reckon.phosphate import PHOSPHATE, Reason, phosphates
from journal.reckon.soil_test import newest_test, speaks_until
from journal.reckon.starter import need_shown
from journal.reckon.threshold import in_force
from journal.record.entry import Entry
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.intention import Intention
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.soil import SoilTest
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after, at, kept_since
from journal.rules.words import on
from journal.season.history import Past

STANDS_DAYS = 60


@rule(
    "soil-test-stale",
    levels=(Level.NOTE,),
    watches=(*PHOSPHATE, SoilTest),
    turns=(
        *(after(kind, STANDS_DAYS - 1) for kind in FEEDINGS),
        *(after(kind) for kind in (Seeding, Intention)),
        after(SoilTest, "days"),
        at(kept_since(SoilTest), "days"),
    ),
    basis=(),
)
def soil_test_stale(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """Lime or phosphorus with no soil test in three years."""
    ends = speaks_until(past)
    if ends is None or past.date < ends:
        return ()
    used: dict[str, list[Entry]] = {}
    for name, entry in (*_limes(past), *_phosphorus(past)):
        if entry.date >= ends:
            used.setdefault(name, []).append(entry)
    return tuple(_finding(past, name, entries, n) for name, entries in used.items())


def _limes(past: Past) -> Iterator[tuple[str, Entry]]:
    for entry in past[Feeding].within(STANDS_DAYS):
        product = past.history.lawn(entry.date).product(entry.product)
        if product is not None and product.kind == "lime":
            yield product.name, entry


def _phosphorus(past: Past) -> Iterator[tuple[str, Entry]]:
    """What sowing was a reason for; the rest is asked for its reason instead."""
    near = round(in_force(past.lawn, "phosphate-reason", "seeding-days"))
    for one in phosphates(past, past.day - STANDS_DAYS + 1):
        if not need_shown(past, one.entry.day) and Reason(past, one.entry.day, near).holds:
            yield one.product.name, one.entry


def _finding(past: Past, name: str, entries: list[Entry], n: Numbers) -> Finding:
    newest, last = newest_test(past), entries[-1].date
    clears_on = last + timedelta(STANDS_DAYS)
    tested = f"the newest soil test is of {on(newest.date, past)}" if newest else "no soil test is on file"
    return Finding(
        level=Level.NOTE,
        subject=name,
        headline=f"{name} without a soil test that still speaks",
        why=(
            f"put down {on(last, past)}; {tested}, and one speaks for {n.days('days') / 365:.2g} years; 2 "
            "to 4 are printed too"
        ),
        do="have the soil tested before more of it goes down, and log what the laboratory finds",
        clears=f"a soil test, or {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=(*(entry.id for entry in entries), *((newest.id,) if newest else ())),
    )
