"""When the next feeding of an established lawn is due: one count for the plan and for what is late."""

import math
from dataclasses import dataclass, replace
from datetime import date, timedelta
from enum import StrEnum

from journal.facts.feeding import GRACE_DAYS, LAST_DAYS, PASSED_DAYS
from journal.facts.house import by_slow_share
from journal.reckon.feed_holds import FEED_HOLDS, Hold, holds, released
from journal.reckon.feed_months import FeedingWindow, window_ahead, window_passed
from journal.reckon.feedings import FeedingDay, fed_since, last_feeding, minimum_gap_days, overdue_days, step_days
from journal.reckon.threshold import in_force
from journal.record.entry import Entry
from journal.season.growth import Window, began, season, season_at_hand
from journal.season.history import Past

FEED_DUE: tuple[type[Entry], ...] = FEED_HOLDS
"""What this file looks at."""

BEST_DAYS = 14
"""The best days of a feeding by the interval: judgment."""


class Counted(StrEnum):
    """From what it is counted."""

    FEEDING = "the last feeding"
    GROWTH = "growth start"
    BOOK = "the book's beginning"
    MONTHS = "the months"


@dataclass(frozen=True, slots=True)
class FeedDue:
    """The next feeding: it opens, is best, and is late from a day on (None: never).

    `since` is the day it is counted from and `number` the `feed-overdue` number that makes it late, if one does. By
    months, `window` runs or comes next, and `passed` closed unfed. `holds` keep it shut on the past's day.
    """

    opens: date
    best: tuple[date, date]
    latest: date
    late_from: date | None
    spared_to: date
    counted: Counted
    since: date
    last: FeedingDay | None
    number: str = ""
    window: FeedingWindow | None = None
    passed: FeedingWindow | None = None
    holds: tuple[Hold, ...] = ()

    def waits(self, on: date) -> bool:
        """Whether it is not to be done that day."""
        return bool(self.holds) or on < self.opens

    def late(self, on: date) -> bool:
        """Whether it may be done that day and should have been done before."""
        if self.waits(on) or on <= self.spared_to:
            return False
        open_still = self.counted is not Counted.MONTHS or self.window is not None
        return (open_still and self.late_from is not None and self.late_from <= on) or self.behind(on)

    def behind(self, on: date) -> bool:
        """By months: whether a window closed unfed so lately that it can be made up for."""
        return self.passed is not None and (on - self.passed.last).days <= PASSED_DAYS


def feeding_season(past: Past) -> Window | None:
    """The season that runs, or the next one."""
    return season_at_hand(past) if began(past) else season(past.lawn, past.date)


def feed_due(past: Past, season: Window) -> FeedDue | None:
    """The next feeding of that season; None when the months' programme has none left."""
    due = _counted(past, season)
    return _with_holds(past, due) if due is not None else None


def feeding_late(past: Past, season: Window) -> FeedDue | None:
    """The same where it is late on the past's day, else None."""
    due = _counted(past, season)
    if due is None or not due.late(past.date):
        return None  # what holds it makes nothing late
    due = _with_holds(past, due)
    return due if due.late(past.date) else None


def _counted(past: Past, season: Window) -> FeedDue | None:
    last = last_feeding(past)
    return _by_months(past, last, season) if past.lawn.feeding == "months" else _by_interval(past, last, season)


def _with_holds(past: Past, due: FeedDue) -> FeedDue:
    free = released(past)
    if free is not None and free > due.opens:
        due = _from(due, free)
    return replace(due, holds=holds(past, due.opens))


def _from(due: FeedDue, opens: date) -> FeedDue:
    """The same once something let go of it: best from there, and not late for two weeks."""
    spared = opens + timedelta(GRACE_DAYS)
    return replace(
        due, opens=opens, best=(opens, max(due.best[1], spared)), latest=max(due.latest, spared),
        late_from=None if due.late_from is None else max(due.late_from, spared + timedelta(1)), spared_to=spared,
    )  # fmt: skip


def _by_interval(past: Past, last: FeedingDay | None, season: Window) -> FeedDue:
    """Counted from the last feeding, from growth start, and from when the book was kept: the latest decides."""
    lawn, kept = past.lawn, fed_since(past)
    offered, overdue = (math.ceil(in_force(lawn, "feed-overdue", name)) for name in ("step-days", "days"))
    usual = (min(offered, overdue), overdue, "days")
    rows = [_row(began(past) or season[0], Counted.GROWTH, last, *usual)]
    if kept is not None:
        rows.append(_row(kept, Counted.BOOK, last, *usual))
    if last is not None:
        name = by_slow_share("feed-overdue", "days", 100 * (last.slow_share or 0.0)).name
        row = _row(last.date, Counted.FEEDING, last, step_days(last, lawn), overdue_days(last, lawn), name)
        rows.append(row)
    decides = max(rows, key=lambda row: row.latest)
    opens = max(row.opens for row in rows)
    latest = max(opens, decides.latest)
    best = (opens, min(latest, opens + timedelta(BEST_DAYS)))
    return replace(decides, opens=opens, best=best, latest=latest, late_from=latest + timedelta(1))


def _row(since: date, counted: Counted, last: FeedingDay | None, offered: int, overdue: int, number: str) -> FeedDue:
    """One count among those of which the latest decides."""
    opens, latest = since + timedelta(offered), since + timedelta(overdue)
    return FeedDue(opens, (opens, latest), latest, None, date.min, counted, since, last, number)


def _by_months(past: Past, last: FeedingDay | None, season: Window) -> FeedDue | None:
    fed = last.date if last else date.min
    ahead, passed = window_ahead(past, season, fed), window_passed(past, season, fed)
    window = ahead or passed
    if window is None:
        return None
    kept = fed_since(past)
    best_to, late_from = window.last - timedelta(LAST_DAYS), window.last - timedelta(LAST_DAYS - 1)
    never = window.optional or (kept is not None and kept > window.first)
    due = FeedDue(
        window.first, (window.first, max(window.first, best_to)), window.last, None if never else late_from, date.min,
        Counted.MONTHS, window.first, last, window=ahead, passed=passed,
    )  # fmt: skip
    free = last.date + timedelta(minimum_gap_days(last, past.lawn)) if last else window.first
    return _from(due, free) if free > window.first else due
