"""A small lawn in words, and its diary, for scenarios of the plan."""

from collections.abc import Iterable
from dataclasses import replace
from datetime import date

from journal.line.read import read
from journal.plan.step import Step
from journal.plan.steps import steps
from journal.record.entry import Entry
from journal.record.kinds.setting import Setting
from journal.season.history import History

LAWN: dict[str, str] = {
    "name": "North Lane",
    "latitude": "42.3",
    "last_frost": "05-06",
    "first_frost": "10-05",
    "growth": "04-10 11-10",
    "grass": "kentucky bluegrass, perennial ryegrass",
}
ZONES: dict[str, dict[str, str]] = {
    "front": {"area": "2400sqft", "irrigated": "yes", "rate": "0.6in/h"},
    "back": {"area": "3100sqft", "irrigated": "yes", "rate": "0.6in/h"},
}
PRODUCTS: dict[str, dict[str, str]] = {
    "three-river-blend": {
        "kind": "seed", "mix": "kentucky bluegrass 50%, perennial ryegrass 50%", "rate": "3lb/k 5lb/k",
    },
    "oat-hill-starter": {
        "kind": "starter", "analysis": "18-24-6", "slow": "20% of n", "rate": "3lb/k 4lb/k", "bag": "25lb",
    },
    "pond-ridge": {
        "kind": "fertilizer", "analysis": "24-0-11", "slow": "40% of n", "rate": "2lb/k 4lb/k", "bag": "50lb",
    },
}  # fmt: skip


def day(text: str) -> date:
    """`2026-09-06`."""
    return date.fromisoformat(text)


def settings(
    lawn: dict[str, str] | None = None,
    zones: dict[str, dict[str, str]] | None = None,
    products: dict[str, dict[str, str]] | None = None,
    set_up: str = "2026-01-01",
) -> list[Entry]:
    """What the owner set up, on that day."""
    made: list[Entry] = []

    def say(what: str, name: str, values: dict[str, str]) -> None:
        known = tuple((key, words) for key, words in values.items() if words)
        made.append(Setting(id=f"0{len(made):03}", date=day(set_up), what=what, name=name, values=known))

    say("lawn", "", LAWN | (lawn or {}))
    for name, values in (ZONES if zones is None else zones).items():
        say("zone", name, values)
    for name, values in (PRODUCTS if products is None else products).items():
        say("product", name, values)
    return made


def history(diary: Iterable[Entry], **changes: object) -> History:
    """The book: set-up with any changes, and the diary."""
    return History.of([*settings(**changes), *diary])  # type: ignore[arg-type]


def find(book: History, as_of: str, name: str, zone: str = "front") -> Step | None:
    """That step of that zone on that day, or None."""
    found = [step for step in steps(book, day(as_of)) if step.step == name and zone in step.zones]
    assert len(found) <= 1, found
    return found[0] if found else None


def the(book: History, as_of: str, name: str, zone: str = "front") -> Step:
    """The same, where it must be there."""
    found = find(book, as_of, name, zone)
    assert found is not None, f"no step {name} for {zone} on {as_of}"
    return found


def kept(*lines: str, **changes: object) -> History:
    """The book after these lines were typed, each on the day it begins with: `2026-09-06 seed blend 9lb front`."""
    book = history([], **changes)
    for line in sorted(lines):
        book = typed(book, line)
    return book


def typed(book: History, line: str) -> History:
    """The book with one more line, which must be readable."""
    on, _, text = line.partition(" ")
    reading = read(text, book, day(on))
    assert reading.draft is not None, f"{line}: {reading.problem}"
    return book.plus(replace(reading.draft, id=f"1{book.size:05}"))
