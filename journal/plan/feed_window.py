"""The feeding months of cool-season lawns.

Spring (optional) and the two of late summer and autumn: Univ. of Maryland Extension, Lawn Fertilizer Schedule Table,
2023, their edges turned into dates by judgment. Fine fescue is fed once: the same table.
"""

from dataclasses import dataclass
from datetime import date, timedelta

from journal.facts.grasses import FINE_FESCUE
from journal.facts.mixture import nitrogen_cap
from journal.plan.seed import in_season
from journal.reckon.feedings import FeedingDay
from journal.record.day import MonthDay
from journal.season.growth import Window, northern_day
from journal.season.history import Past
from journal.season.stand import stand_mix

MONTHS_LATE_DAYS = 7
"""A window that is still unfed is late in its last days: judgment."""

MISSED_DAYS = 21
"""So long a missed window stays in view."""


REST_FROM, REST_TO = (6, 15), (8, 14)
"""A lawn that is not irrigated is not fed in high summer: judgment; several programmes print none from June on."""


@dataclass(frozen=True, slots=True)
class MonthWindow:
    """First and last day; `optional` for a feeding that a healthy lawn can do without."""

    name: str
    first: date
    last: date
    optional: bool = False
    missed: bool = False


_SPRING = ("spring", MonthDay(5, 1), MonthDay(6, 10), True)
_EARLY = ("early autumn", MonthDay(8, 20), MonthDay(9, 30), False)
_LATE = ("late autumn", MonthDay(10, 1), MonthDay(11, 10), False)
_ONCE = ("autumn", MonthDay(8, 20), MonthDay(10, 15), False)


def windows(past: Past, season: Window) -> tuple[MonthWindow, ...]:
    """The windows of one season, the last one cut off where growth ends."""
    once = nitrogen_cap(stand_mix(past)) is FINE_FESCUE
    rows = (_ONCE,) if once else (_SPRING, _EARLY, _LATE)
    found = []
    for name, first, last, optional in rows:
        begins, ends = in_season(past.lawn, season, first), min(in_season(past.lawn, season, last), season[1])
        if begins <= ends:
            found.append(MonthWindow(name, begins, ends, optional))
    return tuple(found)


def feeding_window(past: Past, last: FeedingDay | None, season: Window) -> MonthWindow | None:
    """The window to feed in: the one that runs or comes next and is not fed yet; or one just missed."""
    rows = windows(past, season)
    fed = last.date if last else date.min
    coming = [w for w in rows if past.date <= w.last and not w.first <= fed <= w.last]
    if coming:
        return coming[0]
    gone = [w for w in rows if not w.optional and w.last < past.date and fed < w.first]
    kept = past.history.kept_since
    if gone and (past.date - gone[-1].last).days <= MISSED_DAYS and (kept is None or kept <= gone[-1].first):
        newest = gone[-1]
        return MonthWindow(newest.name, newest.first, newest.last, missed=True)
    return None


def rest_over(past: Past, day: date) -> date:
    """The first day from `day` on that is not in the summer rest of a zone without irrigation."""
    zone = past.lawn.zone(past.zone)
    if zone is None or zone.irrigated:
        return day
    while REST_FROM <= _month_and_day(past, day) <= REST_TO:
        day += timedelta(1)
    return day


def _month_and_day(past: Past, day: date) -> tuple[int, int]:
    here = northern_day(past.lawn, day)
    return here.month, here.day
