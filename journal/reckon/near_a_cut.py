"""Cuts and leaf-applied weed products keep a distance in time: the label's days, else the house numbers."""

import math
from dataclasses import dataclass
from datetime import date

from journal.reckon.protection import PROTECTED
from journal.reckon.threshold import in_force
from journal.reckon.uses import Use, uses
from journal.record.entry import Entry
from journal.record.kinds.mowing import Mowing
from journal.record.lawn import Lawn
from journal.record.product import Label
from journal.season.history import Past
from journal.season.hours import Within, days_of, within_hours

NEAR_A_CUT: tuple[type[Entry], ...] = (Mowing, *PROTECTED)
"""What this file looks at."""

LONGEST_DAYS = 30
"""No label keeps a mower off for longer."""

_FLOWER_HOURS = 48


@dataclass(frozen=True, slots=True)
class TooNear:
    """A cut too near a use. `number` is `before` (the cut came first) or `after`; `wait` is its days."""

    use: Use
    mowing: Mowing
    number: str
    wait: int
    by_label: bool
    sure: bool

    @property
    def day(self) -> int:
        """The later of both (an ordinal)."""
        return max(self.use.day, self.mowing.day)


def wait_days(use: Use, lawn: Lawn, number: str) -> tuple[int, bool]:
    """Days without a cut `before` or `after` it, and whether its label says so."""
    return label_wait_days(use.label, lawn, number)


def label_wait_days(label: Label, lawn: Lawn, number: str) -> tuple[int, bool]:
    """The same of a label."""
    stated = label.mow_before_days if number == "before" else label.mow_after_days
    days = in_force(lawn, "mow-near-treatment", number) if stated is None else stated
    return min(LONGEST_DAYS, math.ceil(days)), stated is not None


def wants_distance(use: Use) -> bool:
    """Whether it works through leaves that a cut would take away: not a spot's."""
    return use.against_weeds and use.on_leaves and not use.spot


def too_near(past: Past, since: int) -> tuple[TooNear, ...]:
    """Every cut too near a use, both on that day (an ordinal) or later or up to a month before."""
    applied = [use for use in uses(past, since - LONGEST_DAYS) if wants_distance(use)]
    if not applied:
        return ()
    found = []
    for mowing in past[Mowing].since(since - LONGEST_DAYS):
        for use in applied:
            one = _too_near(past, use, mowing)
            if one is not None and one.day >= since:
                found.append(one)
    return tuple(found)


def _too_near(past: Past, use: Use, mowing: Mowing) -> TooNear | None:
    gap = mowing.day - use.day
    if gap == 0:
        return _same_day(past, use, mowing)
    number = "after" if gap > 0 else "before"
    wait, by_label = wait_days(use, past.lawn, number)
    if abs(gap) >= wait or (gap < 0 and _for_the_bees(past, mowing)):
        return None
    return TooNear(use, mowing, number, wait, by_label, sure=True)


def _same_day(past: Past, use: Use, mowing: Mowing) -> TooNear | None:
    """Whichever came first: too near both ways, unless the label of one lets it."""
    asked = {number: wait_days(use, past.lawn, number) for number in ("after", "before")}
    if use.time is not None and mowing.time is not None:
        number = "after" if mowing.time >= use.time else "before"
        possible = [number]
    else:
        possible = ["after", "before"]
    if "before" in possible and _for_the_bees(past, mowing):
        possible.remove("before")
    wanting = [number for number in possible if asked[number][0] > 0]
    if not wanting:
        return None
    number = min(wanting, key=lambda name: (not asked[name][1], name))
    sure = len(wanting) == len(possible) and (len(possible) == 2 or use.time is not None)
    return TooNear(use, mowing, number, *asked[number], sure=sure)


def _for_the_bees(past: Past, mowing: Mowing) -> bool:
    """Whether it took the flower heads off before an insect product, as is advised."""
    soon = uses(past, mowing.day)
    return any(
        use.kind == "insect"
        and within_hours(mowing.date, mowing.time, use.date, use.time, _FLOWER_HOURS) is not Within.NO
        for use in soon
        if use.day - mowing.day <= days_of(_FLOWER_HOURS)
    )


def cut_from(past: Past) -> tuple[date, Use] | None:
    """The first day on which a cut is not too near what was put down, and what that was; None where nothing waits."""
    found: tuple[date, Use] | None = None
    for use in uses(past, past.day - LONGEST_DAYS):
        if not wants_distance(use):
            continue
        free = use.day + wait_days(use, past.lawn, "after")[0]
        if free > past.day and (found is None or free >= found[0].toordinal()):
            found = date.fromordinal(free), use
    return found


def days_without_a_cut(use: Use, lawn: Lawn) -> int:
    """Days after it through which no cut is asked for; -1 where it may be mown at any time."""
    return wait_days(use, lawn, "after")[0] if wants_distance(use) else -1
