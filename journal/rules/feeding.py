"""Feedings that are overdue, by the interval or by the months."""

import math
from collections.abc import Iterator
from datetime import date

from journal.facts.citation import Basis
from journal.facts.feeding import (
    EARLY_AUTUMN,
    GRACE_DAYS,
    GREEN_DAYS,
    HOT_DAYS,
    LAST_DAYS,
    LATE_AUTUMN,
    MONTHS_BASIS,
    ONCE,
    PASSED_DAYS,
    SUMMER_REST,
)
from journal.facts.sources import judgment
from journal.reckon.dose import doses
from journal.reckon.feed_due import FEED_DUE, Counted, FeedDue, feeding_late, feeding_season
from journal.reckon.feed_ground import COLD_DAYS
from journal.reckon.feed_season import last_useful
from journal.reckon.feeding import holds_nitrogen
from journal.reckon.feedings import FEEDINGS, nitrogen_left, year_is_fed
from journal.reckon.threshold import in_force
from journal.record.day import MonthDay
from journal.record.entry import Entry
from journal.record.kinds.intention import Intention
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Sighting
from journal.record.kinds.weather import Weather
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers, in_words
from journal.rules.turns import Site, after, at, closed_days, each_year, fed_since_days, only, seasons
from journal.rules.words import days, on
from journal.season.growth import FROZEN_DAYS, began, month_here
from journal.season.history import Past
from journal.season.local import most_n, most_soluble_n
from journal.season.stand import LAPSES_DAYS

LONGEST_GAP = 370
"""No owner can ask for a longer one."""

SPARED = GRACE_DAYS + 1
"""So many days after what held it has let go it may be late."""

_SLOW_BANDS = ("days", "days-15", "days-50", "days-80")
_HELD_BASIS: tuple[Basis, ...] = (
    judgment("two weeks after green-up, and two more after anything that held a feeding back"),
)


def _edges(*months: tuple[MonthDay, MonthDay]) -> Iterator[MonthDay]:
    for first, last in months:
        yield first
        yield last.shifted(1)


def _gap(entry: Entry, site: Site) -> Iterator[int]:
    """The days that a feeding may ask to be left after it, where they decide: a small dose asks for any number."""
    products = [site.lawn.product(dose.product) for dose in doses(entry)]
    if not any(product is not None and holds_nitrogen(product) for product in products):
        return
    most = [math.ceil(site.number("feed-too-soon", name)) for name in _SLOW_BANDS]
    least = [math.ceil(site.number("feed-overdue", name)) for name in _SLOW_BANDS]
    if site.lawn.feeding == "months":
        yield from range(max(most) + SPARED + 1)
    else:
        yield from range(min(*least, max(most)), max(most) + 1)


def _meant(entry: Entry, site: Site) -> Iterator[int]:
    """From when a sowing meant holds it, to when the intention lapses."""
    if isinstance(entry, Intention) and entry.target is not None:
        ahead = (entry.target - entry.date).days
        gaps = {math.ceil(site.number("feed-too-soon", name)) for name in _SLOW_BANDS}
        yield from sorted({*(ahead - gap for gap in gaps), ahead + LAPSES_DAYS, ahead + LAPSES_DAYS + SPARED})


def _rest(entry: Entry, site: Site) -> Iterator[int]:
    """Dormant and green, frozen and thawed: what they hold, and the grace after it."""
    subject = entry.subject if isinstance(entry, Sighting) else ""
    if subject in ("frozen", "snow"):
        yield from range(FROZEN_DAYS + SPARED + 1)
    elif subject in ("dormant", "green", "thawed"):
        yield from (0, SPARED, GREEN_DAYS, GREEN_DAYS + SPARED)


def _warmth(entry: Entry, site: Site) -> Iterator[int]:
    """A hot day counts in the weeks that hold it, and the grace follows those; a cold one in the days after it."""
    if not isinstance(entry, Weather) or entry.high_c is None or entry.low_c is None:
        return
    if entry.high_c >= site.number("feed-overdue", "hot-high"):
        yield from range(HOT_DAYS + SPARED + 1)
    elif entry.high_c >= site.number("feed-heat", "high") - 0.01:
        yield 0
    elif (entry.high_c + entry.low_c) / 2 < site.number("feed-closed", "frozen-mean"):
        yield from range(COLD_DAYS)


@rule(
    "feed-overdue",
    levels=(Level.LATE,),
    watches=FEED_DUE,
    turns=(
        *(after(kind, *_SLOW_BANDS, reach=_gap, within=LONGEST_GAP) for kind in FEEDINGS),
        after(Seeding, "seeded-days", ("seeded-days", SPARED)),
        only(Sighting, _rest, FROZEN_DAYS + SPARED + 1),
        only(Weather, _warmth, HOT_DAYS + SPARED + 1),
        after(Intention, reach=_meant),
        at(seasons, *_SLOW_BANDS, "seeded-days", ("seeded-days", SPARED), ("-late-days", -1), -LAST_DAYS, PASSED_DAYS),
        at(fed_since_days, *_SLOW_BANDS),
        at(each_year(MonthDay(1, 1))),
        at(each_year(*_edges(SUMMER_REST)), SPARED),
        at(
            each_year(*_edges(*((row.first, row.last) for row in (EARLY_AUTUMN, LATE_AUTUMN, ONCE)))),
            -LAST_DAYS,
            PASSED_DAYS,
        ),
        at(closed_days, -LAST_DAYS, SPARED, PASSED_DAYS),
    ),
    basis=(),
)
def feed_overdue(past: Past, n: Numbers) -> Finding | None:
    """No feeding for too long while the grass grows, or a month's window that goes by unfed."""
    window = feeding_season(past)
    if window is None or began(past) is None or past.kept_since() is None:
        return None
    if past.date > last_useful(past, window):
        return None
    due = feeding_late(past, window)
    if due is None or year_is_fed(past):
        return None
    by_months = due.counted is Counted.MONTHS
    if due.number:
        n.days(due.number)
    last = due.last
    most = min(most_n(past.lawn, in_force(past.lawn, "feed-dose", "most")), nitrogen_left(past))
    soluble = most_soluble_n(past.lawn, in_force(past.lawn, "feed-dose", "most-soluble"))
    quick = f", {in_words(soluble, 'g/m2', past.lawn.units)} of it soluble" if soluble < most else ""
    return Finding(
        level=Level.LATE,
        headline=f"not fed for {days(past.day - last.day)}" if last else "no feeding on file",
        why=_why_by_months(past, due) if by_months else _why(past, due, n),
        do=f"feed, at most {in_words(most, 'g/m2', past.lawn.units)} of nitrogen{quick}",
        clears="a feeding",
        evidence=tuple(entry.id for entry in last.entries) if last else (),
        numbers=(due.number,),
        basis=(*((MONTHS_BASIS,) if by_months else ()), *(_HELD_BASIS if due.spared_to > date.min else ())),
    )


def _why(past: Past, due: FeedDue, n: Numbers) -> str:
    since = {
        Counted.GROWTH: f"growth began {on(due.since, past)}, nothing fed since",
        Counted.BOOK: f"the book was begun {on(due.since, past)}, nothing fed since",
        Counted.FEEDING: f"fed {on(due.since, past)}{_slow(due)}",
    }[due.counted]
    return (
        f"{since}; more than {days(n.days(due.number))} is overdue. The habit is 6 to 8 weeks; no bulletin confirms "
        f"it, and some want nothing from {month_here(past.lawn, 'June')} to {month_here(past.lawn, 'August')}"
    )


def _slow(due: FeedDue) -> str:
    if due.number == _SLOW_BANDS[0] or due.last is None:
        return ""
    return f", {100 * (due.last.slow_share or 0):.0f} % of its nitrogen slow"


def _why_by_months(past: Past, due: FeedDue) -> str:
    late = due.late_from is not None and due.late_from <= past.date
    window = due.passed if due.passed is not None and not late else due.window or due.passed
    if window is None:
        raise AssertionError("by months there is a window")
    closes = "closes" if past.date <= window.last else "closed"
    return f"the window from {on(window.first, past)} {closes} {on(window.last, past)}, and nothing was fed in it"
