"""Feedings that are overdue, by the interval or by the months."""

import math
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta

from journal.facts.factors import g_per_m2
from journal.facts.grasses import FINE_FESCUE
from journal.facts.mixture import nitrogen_cap
from journal.facts.sources import judgment
from journal.reckon.dose import doses
from journal.reckon.feeding import holds_nitrogen
from journal.reckon.feedings import FEEDINGS, FeedingDay, feeding_days, last_feeding, minimum_gap_days, nitrogen_of_year
from journal.reckon.threshold import in_force
from journal.record.day import MonthDay
from journal.record.entry import Entry
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Sighting
from journal.record.kinds.weather import Weather
from journal.record.lawn import Lawn
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers, in_words
from journal.rules.turns import after, at, each_year, kept_since, months, seasons
from journal.rules.words import days, on
from journal.season.growth import GROWING, began, dormant_open, frozen_open, northern_day, season_at_hand, southern
from journal.season.history import Past
from journal.season.local import closed
from journal.season.stand import age, stand_mix

HOT_DAYS, HOT_NEEDS = 7, 5
LONGEST_GAP = 370
"""No owner can ask for a longer one."""
FULL_DOSE = g_per_m2(0.9)
NEAR_DAYS = 130
LAST_DAYS = 7
"""A window's last days: the flag rises there."""
STANDS_DAYS = 21
"""So long it stands after the window has closed; then it was missed."""

SUMMER = (MonthDay(6, 15), MonthDay(8, 14))
"""No feeding of a lawn that is not watered."""

EARLY_AUTUMN = (MonthDay(8, 20), MonthDay(9, 30))
LATE_AUTUMN = (MonthDay(10, 1), MonthDay(11, 10))
FINE_FESCUE_AUTUMN = (MonthDay(8, 20), MonthDay(10, 15))

_WINDOWS_BASIS = judgment(
    "publications print some twenty programmes; all have early autumn in common", "virginia-2003", "umd-schedule",
    "purdue-fall-n", "umn-feed",
)  # fmt: skip
_ROUNDING = 1e-9
_SLOW_BANDS = ("days", "days-15", "days-50", "days-80")


@dataclass(frozen=True, slots=True)
class _Due:
    """From which day a feeding is late, in words why, and the numbers that decided."""

    late_from: date
    why: str
    numbers: tuple[str, ...]


def _edges(first_year: tuple[MonthDay, MonthDay]) -> tuple[MonthDay, MonthDay]:
    return first_year[0], first_year[1].shifted(1)


def _lasting(entry: Entry, lawn: Lawn) -> Iterator[int]:
    """The days that a feeding may ask to be left after it: a small dose asks for any number up to the longest gap."""
    products = [lawn.product(dose.product) for dose in doses(entry)]
    if any(product is not None and holds_nitrogen(product) for product in products):
        yield from range(math.ceil(max(in_force(lawn, "feed-too-soon", name) for name in _SLOW_BANDS)) + 1)


@rule(
    "feed-overdue",
    levels=(Level.LATE,),
    watches=(*FEEDINGS, Seeding, *GROWING),
    turns=(
        *(after(kind, *_SLOW_BANDS, reach=_lasting, within=LONGEST_GAP) for kind in FEEDINGS),
        after(Seeding, "seeded-days"),
        after(Sighting, 14),
        after(Weather, *range(HOT_DAYS + 1)),
        at(seasons, *_SLOW_BANDS, "seeded-days", ("-late-days", -1), -LAST_DAYS, STANDS_DAYS),
        at(kept_since, *_SLOW_BANDS),
        at(months),
        at(
            each_year(*_edges(SUMMER), *_edges(EARLY_AUTUMN), *_edges(LATE_AUTUMN), *_edges(FINE_FESCUE_AUTUMN)),
            -LAST_DAYS,
            STANDS_DAYS,
        ),
    ),
    basis=(),
)
def feed_overdue(past: Past, n: Numbers) -> Finding | None:
    """No feeding for too long while the grass grows, or a month's window that goes by unfed."""
    start, kept = began(past), past.history.kept_since
    if start is None or kept is None or dormant_open(past):
        return None
    last = _newest(past)
    if last is not None and past.day - last.day < minimum_gap_days(last, past.lawn):
        return None
    due = _by_months(past, last, kept) if past.lawn.feeding == "months" else _by_interval(past, last, start, kept, n)
    if due is None or past.date < due.late_from or _held(past, n):
        return None
    left = _cap_left(past)
    if left < n["cap-left"]:
        return None
    fed = f"not fed for {days(past.day - last.day)}" if last else "no feeding on file"
    return Finding(
        level=Level.LATE,
        headline=fed,
        why=due.why,
        do=f"feed, at most {in_words(min(FULL_DOSE, left), 'g/m2', past.lawn.units)} of nitrogen",
        clears="a feeding",
        evidence=tuple(entry.id for entry in last.entries) if last else (),
        numbers=due.numbers,
        basis=(_WINDOWS_BASIS,) if past.lawn.feeding == "months" else (),
    )


def _newest(past: Past) -> FeedingDay | None:
    """The newest feeding, looked for in the last months first."""
    near = feeding_days(past, past.day - NEAR_DAYS)
    return near[-1] if near else last_feeding(past)


def _by_interval(past: Past, last: FeedingDay | None, start: date, kept: date, n: Numbers) -> _Due:
    """Late after so many days by the last feeding's slow share; from growth start or the book's beginning 56."""
    usual = timedelta(n.days("days") + 1)
    found = [
        _Due(start + usual, f"growth began {on(start, past)}, nothing fed since", ("days",)),
        _Due(kept + usual, f"the book was begun {on(kept, past)}, nothing fed since", ("days",)),
    ]
    if last is not None:
        name = _band(last)
        why = f"fed {on(last.date, past)}"
        if name != "days":
            why += f", {100 * (last.slow_share or 0):.0f} % of its nitrogen slow"
        found.append(_Due(last.date + timedelta(n.days(name) + 1), why, (name,)))
    due = max(found, key=lambda one: one.late_from)
    return _Due(
        due.late_from,
        f"{due.why}; more than {days(n.days(due.numbers[0]))} is overdue. The habit is 6 to 8 weeks; no bulletin "
        "confirms it, and some want nothing from June to August",
        due.numbers,
    )


def _band(feeding: FeedingDay) -> str:
    slow = 100 * (feeding.slow_share or 0.0) + _ROUNDING
    return next((f"days-{least}" for least in (80, 50, 15) if slow >= least), "days")


def _by_months(past: Past, last: FeedingDay | None, kept: date) -> _Due | None:
    """The window whose last week has come, until three weeks after it closed; None when it was fed, or not watched."""
    for first, end in _windows(past):
        late_from = end - timedelta(LAST_DAYS - 1)
        if not late_from <= past.date <= end + timedelta(STANDS_DAYS):
            continue
        if kept > first or (last is not None and last.date >= first):
            continue
        closes = "closes" if past.date <= end else "closed"
        why = f"the window from {on(first, past)} {closes} {on(end, past)}, and nothing was fed in it"
        return _Due(late_from, why, ())
    return None


def _windows(past: Past) -> Iterator[tuple[date, date]]:
    """First and last day of each window near the day, never past the season's end nor into closed dates."""
    window = season_at_hand(past)
    fescue = nitrogen_cap(stand_mix(past)) == FINE_FESCUE
    for first, last in (FINE_FESCUE_AUTUMN,) if fescue else (EARLY_AUTUMN, LATE_AUTUMN):
        if southern(past.lawn):
            first, last = first.half_a_year_on(), last.half_a_year_on()
        start, end = first.on(past.date.year), last.on(past.date.year)
        if window is not None:
            end = min(end, window[1])
        while end > start and closed(past.lawn, end):
            end -= timedelta(1)
        yield start, end


def _held(past: Past, n: Numbers) -> bool:
    """Whether anything speaks against feeding on the day: it then waits, and nothing is late."""
    if frozen_open(past) or closed(past.lawn, past.date):
        return True
    days_old = age(past)
    if days_old is not None and 0 <= days_old <= n.days("seeded-days"):
        return True
    return _hot(past, n) or _dry_summer(past) or _too_late(past, n)


def _hot(past: Past, n: Numbers) -> bool:
    highs = [w.high_c for w in past.lawnwide(Weather).within(HOT_DAYS) if w.high_c is not None]
    return len(highs) >= HOT_NEEDS and sum(highs) / len(highs) >= n["hot-high"]


def _dry_summer(past: Past) -> bool:
    zone = past.lawn.zone(past.zone)
    return (zone is None or not zone.irrigated) and SUMMER[0] <= northern_day(past.lawn, past.date) <= SUMMER[1]


def _cap_left(past: Past) -> float:
    """Nitrogen that the calendar year still allows, in g/m2."""
    return nitrogen_cap(stand_mix(past)).nitrogen_cap_g_per_m2 - nitrogen_of_year(past, past.date.year)


def _too_late(past: Past, n: Numbers) -> bool:
    """The last days of growth; by the months' programme they hold the last window."""
    if past.lawn.late_fall or past.lawn.feeding == "months":
        return False
    window = season_at_hand(past)
    return window is not None and (window[1] - past.date).days < n["late-days"]
