"""Uses as a label counts them, and how long each waits for the next one of the same active.

Passes of one product over one zone on one day are one application; so are marked parts on days running.
"""

import math
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, timedelta
from functools import lru_cache

from journal.facts.actives import active, is_active
from journal.reckon.threshold import in_force
from journal.reckon.uses import Use, kind_of, uses
from journal.record.entry import Entry
from journal.record.lawn import Lawn
from journal.record.product import PROTECTS, Product
from journal.season.history import Past

PARTS_DAYS = 10
"""A job in parts is looked back on so much further, to have the whole of it."""

REPEATS = {
    "pre-emergent": "days-barrier",
    "weed": "days-weed",
    "weed-and-feed": "days-weed",
    "nonselective": "days-nonselective",
    "insect": "days-insect",
    "disease": "days-disease",
}
"""The number of `label-interval` by kind, for a label that was not entered."""

COUNTS = {kind: "most-insect" if kind == "insect" else "most" for kind in PROTECTS}
"""The number of `label-year-count` by kind, likewise."""


@dataclass(frozen=True, slots=True)
class Round:
    """One application of one product of the shed in one zone: every pass and part of it, oldest first."""

    product: Product
    uses: tuple[Use, ...]

    @property
    def name(self) -> str:
        """The product's."""
        return self.product.name

    @property
    def kind(self) -> str:
        """What it is used for: one of PROTECTS."""
        return self.uses[0].kind

    @property
    def date(self) -> date:
        """The day on which it was begun."""
        return self.uses[0].date

    @property
    def day(self) -> int:
        """The same as an ordinal."""
        return self.uses[0].day

    @property
    def last_day(self) -> int:
        """The day (an ordinal) of its last part."""
        return self.uses[-1].day

    @property
    def spot(self) -> bool:
        """Whether only a spot was treated."""
        return self.uses[0].spot

    @property
    def entries(self) -> tuple[Entry, ...]:
        """Those that wrote it down, each once."""
        return tuple(dict.fromkeys(use.entry for use in self.uses))


@dataclass(frozen=True, slots=True)
class TooSoon:
    """An active that came again too soon: after `gap` days, where `wait` were wanted. It may follow on day `over`.

    `number` is the name of the house number that stood in for a blank label; '' where a label said it.
    """

    earlier: Round
    later: Round
    active: str
    gap: int
    wait: int
    number: str

    @property
    def over(self) -> date:
        """From that day on it would not have been too soon."""
        return date.fromordinal(self.earlier.last_day) + timedelta(self.wait)


def rounds(past: Past, since: int) -> tuple[Round, ...]:
    """Those of the zone from that day (an ordinal) on, in the order in which they were begun.

    A product that nobody knows has no label to be judged by and is left out.
    """
    found: list[tuple[Product, list[Use]]] = []
    newest: dict[tuple[str, bool], list[Use]] = {}
    for use in uses(past, since):
        if use.product is None:
            continue
        key = use.name, use.spot
        held = newest.get(key)
        if held is not None and _goes_on(held, use):
            held.append(use)
        else:
            newest[key] = [use]
            found.append((use.product, newest[key]))
    return tuple(Round(product, tuple(passes)) for product, passes in found)


def _goes_on(passes: list[Use], use: Use) -> bool:
    last = passes[-1]
    if use.day == last.day:
        return True
    done = {one.entry.part for one in passes}
    if use.day - last.day != 1 or "" in done | {use.entry.part} or use.entry.part in done:
        return False
    return len({part.partition("/")[2] for part in done | {use.entry.part}}) == 1


def active_names(product: Product) -> tuple[str, ...]:
    """The actives by their standard names, those not known here as the label has them; else the product's own name."""
    return _standard(tuple(one.name for one in product.actives if one.name)) or (product.name,)


@lru_cache(maxsize=512)
def _standard(names: tuple[str, ...]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(active(name).name if is_active(name) else name for name in names))


def holders(found: Iterable[Round], name: str) -> tuple[Round, ...]:
    """Those whose product holds that active."""
    return tuple(one for one in found if name in active_names(one.product))


def too_soon(past: Past, within: int) -> tuple[TooSoon, ...]:
    """Every active that came again too soon, by applications of the last so many days; the newest last.

    Both labels count, the longer one; a blank one is stood in for by kind, and decides only where no label does.
    """
    first = past.day - within + 1
    recent = [one for one in rounds(past, first - PARTS_DAYS) if one.last_day >= first]
    if not recent:
        return ()
    back = min(one.day for one in recent) - longest_repeat(past.lawn) - PARTS_DAYS
    every = rounds(past, back)
    return tuple(
        early
        for at, later in enumerate(every)
        if later.last_day >= first
        for earlier in every[:at]
        if (early := _early(past.lawn, earlier, later)) is not None
    )


def _early(lawn: Lawn, earlier: Round, later: Round) -> TooSoon | None:
    names = active_names(later.product)
    shared = next((name for name in active_names(earlier.product) if name in names), None)
    if shared is None or set(earlier.entries) & set(later.entries):
        return None
    gap = _gap(earlier, later)
    if gap is None or (gap == 0 and earlier.name == later.name):
        return None
    labels = [r for one in (earlier, later) if (r := one.product.label.repeat_days) is not None]
    by_label = math.ceil(max(labels, default=0))
    if gap < by_label:
        return TooSoon(earlier, later, shared, gap, by_label, "")
    blank = [REPEATS[one.kind] for one in (earlier, later) if one.product.label.repeat_days is None]
    wait, number = max(((_days(lawn, name), name) for name in blank), default=(0, ""))
    return TooSoon(earlier, later, shared, gap, wait, number) if gap < wait else None


def _gap(earlier: Round, later: Round) -> int | None:
    """The fewest days between two passes over the same ground; None where no ground was met twice."""
    gaps = [
        second.day - first.day
        for first in earlier.uses
        for second in later.uses
        if not _apart(first.entry.part, second.entry.part)
    ]
    return min((gap for gap in gaps if gap >= 0), default=None)


def _apart(one: str, other: str) -> bool:
    """Whether these are different parts of one division of the zone."""
    return bool(one and other) and one != other and one.partition("/")[2] == other.partition("/")[2]


def _days(lawn: Lawn, number: str) -> int:
    return math.ceil(in_force(lawn, "label-interval", number))


def default_repeat(lawn: Lawn, kind: str) -> int:
    """Days before the same active again, for a product of that kind whose label was not entered."""
    return _days(lawn, REPEATS[kind])


def default_count(lawn: Lawn, kind: str) -> int:
    """Uses in a year, likewise."""
    return math.floor(in_force(lawn, "label-year-count", COUNTS[kind]))


def longest_repeat(lawn: Lawn) -> int:
    """No two uses are held apart for longer."""
    labels = [math.ceil(p.label.repeat_days) for p in lawn.products if p.label.repeat_days is not None]
    return max([*labels, *(_days(lawn, name) for name in REPEATS.values())])


def free_again(past: Past, product: Product) -> date | None:
    """The first day on which the label's days leave it free in that zone; None where nothing holds it back.

    A spot holds nothing back.
    """
    kind, names, found = kind_of(product), active_names(product), []
    for one in rounds(past, past.day - longest_repeat(past.lawn) - PARTS_DAYS):
        if one.spot or not set(active_names(one.product)) & set(names):
            continue
        waits = [
            default_repeat(past.lawn, k) if label.repeat_days is None else math.ceil(label.repeat_days)
            for k, label in ((one.kind, one.product.label), (kind, product.label))
        ]
        found.append(one.last_day + max(waits))
    over = max(found, default=past.day)
    return date.fromordinal(over) if over > past.day else None
