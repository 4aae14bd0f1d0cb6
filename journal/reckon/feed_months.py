"""The months' programme on one lawn: its windows in a season, and which of them is to be fed in."""

from dataclasses import dataclass
from datetime import date, timedelta

from journal.facts.feeding import EARLY_AUTUMN, LATE_AUTUMN, ONCE, PASSED_DAYS, SPRING
from journal.facts.grasses import FINE_FESCUE
from journal.facts.mixture import nitrogen_cap
from journal.reckon.feedings import fed_since
from journal.season.growth import Window, in_season
from journal.season.history import Past
from journal.season.local import closed
from journal.season.stand import stand_mix


@dataclass(frozen=True, slots=True)
class FeedingWindow:
    """First and last day; `optional` for a feeding that a healthy lawn can do without."""

    name: str
    first: date
    last: date
    optional: bool = False


def windows(past: Past, season: Window) -> tuple[FeedingWindow, ...]:
    """The windows of one season: the last ends where growth does, and none on a day closed by a local rule."""
    rows = (ONCE,) if nitrogen_cap(stand_mix(past)) is FINE_FESCUE else (SPRING, EARLY_AUTUMN, LATE_AUTUMN)
    found = []
    for row in rows:
        first, last = in_season(past.lawn, season, row.first), min(in_season(past.lawn, season, row.last), season[1])
        while last >= first and closed(past.lawn, last):
            last -= timedelta(1)
        if first <= last:
            found.append(FeedingWindow(row.name, first, last, row.optional))
    return tuple(found)


def window_ahead(past: Past, season: Window, fed: date) -> FeedingWindow | None:
    """The window that runs or comes next and was not fed in, the last feeding being that of `fed`."""
    return next((w for w in windows(past, season) if past.date <= w.last and not w.first <= fed <= w.last), None)


def window_passed(past: Past, season: Window, fed: date) -> FeedingWindow | None:
    """The newest window that closed unfed in the last six weeks, in a book that was kept from its first day on."""
    kept = fed_since(past)
    gone = [w for w in windows(past, season) if not w.optional and w.last < past.date and fed < w.first]
    if not gone or (past.date - gone[-1].last).days > 2 * PASSED_DAYS or (kept is not None and kept > gone[-1].first):
        return None
    return gone[-1]
