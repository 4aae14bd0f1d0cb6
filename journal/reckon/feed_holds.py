"""What holds a feeding back on a lawn, from when it no longer does, and what let go of it lately."""

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum

from journal.facts.feeding import GRACE_DAYS, GREEN_DAYS, HOT_DAYS, HOT_NEEDS, SUMMER_REST
from journal.reckon.feed_ground import frozen_ground, hot_day
from journal.reckon.feedings import FEEDINGS, usual_fertilizer
from journal.reckon.threshold import in_force, in_force_by_slow_share
from journal.record.entry import Entry
from journal.record.kinds.intention import Intention
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.weather import Weather
from journal.season.growth import GROWING, dormant_open, frozen_open, green_up, northern_day, thawed_on
from journal.season.history import Past
from journal.season.local import closed, local_rules
from journal.season.stand import day_zero, given_up, intentions

FEED_HOLDS: tuple[type[Entry], ...] = (*FEEDINGS, Seeding, Intention, *GROWING)
"""What this file looks at."""

SPARED_DAYS = GRACE_DAYS + 1
"""What held it so many days ago and no later no longer counts."""

_DAY = timedelta(1)
_A_YEAR = 366


class Held(StrEnum):
    """Why."""

    RESTING = "dormant"
    FROZEN = "frozen"
    GREEN = "green again"
    SEEDED = "new grass"
    SUMMER = "summer rest"
    CLOSED = "closed"
    SOWING = "sowing meant"
    HOT = "hot week"
    HOT_DAY = "hot day"
    COLD = "frozen by the weather"


@dataclass(frozen=True, slots=True)
class Hold:
    """One thing that holds it. `day` is the day it rests on (seen dormant, sowing meant), where there is one.

    `until` is the first day on which it no longer does; None when nobody can say.
    """

    why: Held
    until: date | None
    day: date | None = None


def holds(past: Past, opens: date) -> tuple[Hold, ...]:
    """What holds it on the past's day, or on the day it would open where that is later; the weightiest first."""
    day = max(past.date, opens)
    found = [hold for hold in (_resting(past), _frozen(past)) if hold is not None]
    if not found and (heat := _heat(past)) is not None and heat > day:
        found.append(Hold(Held.HOT, heat))
    if not found and day == past.date and (today := _weather(past)) is not None:
        found.append(today)
    return (*found, *_one_after_another(past, day))


def _one_after_another(past: Past, day: date) -> list[Hold]:
    """Holds with an end, each from where the one before lets go."""
    found: list[Hold] = []
    while True:
        hold = next((hold for look in _DATED if (hold := look(past, day)) is not None), None)
        if hold is None or any(hold.why is one.why for one in found):
            return found
        found.append(hold)
        if hold.until is None:
            return found
        day = hold.until


def released(past: Past) -> date | None:
    """The newest day, up to the past's own, on which something ceased to hold a feeding back."""
    green, zero = green_up(past), day_zero(past)
    frost, heat = thawed_on(past), _heat(past)
    lapsed = given_up(past, "seed")
    ends = [
        green.date + timedelta(GREEN_DAYS) if green else None,
        frost,
        zero + _seeded(past) if zero else None,
        _rest_ended(past),
        _reopened(past),
        lapsed,
        heat,
    ]
    return max((day for day in ends if day is not None and day <= past.date), default=None)


def rest_over(past: Past, day: date) -> date:
    """The first day from `day` on that is not in the summer rest of a zone without irrigation."""
    while not _irrigated(past) and _in_rest(past, day):
        day += _DAY
    return day


def _irrigated(past: Past) -> bool:
    zone = past.lawn.zone(past.zone)
    return zone is not None and zone.irrigated


def _in_rest(past: Past, day: date) -> bool:
    return SUMMER_REST[0] <= northern_day(past.lawn, day) <= SUMMER_REST[1]


def _let_go(past: Past, holds_on: Callable[[Past, date], bool]) -> date | None:
    """The first free day after the newest that was not, if it lies no further back than the grace."""
    if holds_on(past, past.date):
        return None
    back = (past.date - at * _DAY for at in range(SPARED_DAYS))
    return next((day for day in back if holds_on(past, day - _DAY)), None)


def _rest_ended(past: Past) -> date | None:
    return None if _irrigated(past) else _let_go(past, _in_rest)


def _reopened(past: Past) -> date | None:
    return _let_go(past, _is_closed) if local_rules(past.lawn) else None


def _is_closed(past: Past, day: date) -> bool:
    return closed(past.lawn, day)


def _seeded(past: Past) -> timedelta:
    return timedelta(round(in_force(past.lawn, "feed-overdue", "seeded-days")) + 1)


def _resting(past: Past) -> Hold | None:
    seen = dormant_open(past)
    return Hold(Held.RESTING, None, seen.date) if seen else None


def _frozen(past: Past) -> Hold | None:
    seen = frozen_open(past)
    return Hold(Held.FROZEN, None, seen.date) if seen else None


def _green(past: Past, day: date) -> Hold | None:
    seen = green_up(past)
    until = seen.date + timedelta(GREEN_DAYS) if seen else day
    return Hold(Held.GREEN, until, seen.date) if seen and day < until else None


def _new(past: Past, day: date) -> Hold | None:
    zero = day_zero(past)
    return Hold(Held.SEEDED, zero + _seeded(past), zero) if zero and day < zero + _seeded(past) else None


def _summer(past: Past, day: date) -> Hold | None:
    until = rest_over(past, day)
    return Hold(Held.SUMMER, until) if until > day else None


def _shut(past: Past, day: date) -> Hold | None:
    if not closed(past.lawn, day):
        return None
    ahead = (day + at * _DAY for at in range(_A_YEAR))
    return Hold(Held.CLOSED, next((free for free in ahead if not closed(past.lawn, free)), None))


def _sowing(past: Past, day: date) -> Hold | None:
    """Shortly before sowing the starter is the feeding: one now would come too close to it."""
    meant = next((one.target for one in intentions(past, "seed") if one.target), None)
    if meant is None:
        return None
    product = usual_fertilizer(past)
    gap = in_force_by_slow_share(past.lawn, "feed-too-soon", "days", product.slow if product else None)
    until = meant + _seeded(past)
    return Hold(Held.SOWING, until, meant) if meant - timedelta(gap) <= day < until else None


_DATED: tuple[Callable[[Past, date], Hold | None], ...] = (_new, _summer, _green, _shut, _sowing)


def _weather(past: Past) -> Hold | None:
    """What the day's own weather holds, to the next day."""
    if frozen_ground(past) is not None:
        return Hold(Held.COLD, past.date + _DAY)
    return Hold(Held.HOT_DAY, past.date + _DAY) if hot_day(past) else None


def _heat(past: Past) -> date | None:
    """The day after the newest one of the last weeks whose own week was hot; tomorrow while it lasts."""
    limit = in_force(past.lawn, "feed-overdue", "hot-high")
    seen = past.lawnwide(Weather).since(past.day - SPARED_DAYS - HOT_DAYS)
    highs = {entry.day: entry.high_c for entry in seen if entry.high_c is not None}
    if not any(high >= limit for high in highs.values()):
        return None
    for last in range(past.day, past.day - SPARED_DAYS - 1, -1):
        week = [high for day, high in highs.items() if last - HOT_DAYS < day <= last]
        if len(week) >= HOT_NEEDS and sum(week) / len(week) >= limit:
            return date.fromordinal(last + 1)
    return None
