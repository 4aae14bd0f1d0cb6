"""A small lawn in words, and its diary, for scenarios of the plan."""

from collections.abc import Iterable

from journal.record.entry import Entry
from journal.record.kinds.setting import Setting
from journal.season.history import History
from tests.scenario import book, day, numbered

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
        made.append(Setting(date=day(set_up), what=what, name=name, values=known))

    say("lawn", "", LAWN | (lawn or {}))
    for name, values in (ZONES if zones is None else zones).items():
        say("zone", name, values)
    for name, values in (PRODUCTS if products is None else products).items():
        say("product", name, values)
    return numbered(made)


def history(diary: Iterable[Entry], **changes: object) -> History:
    """The book: set-up with any changes, and the diary."""
    return History.of([*settings(**changes), *diary])  # type: ignore[arg-type]


def kept(*lines: str, **changes: object) -> History:
    """The book after these lines were typed, each on the day it begins with: `2026-09-06 seed blend 9lb front`."""
    return book(*sorted(lines), on=history([], **changes))
