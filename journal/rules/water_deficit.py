"""A root zone that has used up its water, by the account from the weather on file."""

from datetime import timedelta

from journal.facts.irrigation import CHECKBOOK_BASIS, COEFFICIENT_BASIS
from journal.reckon.root_zone import FRESH_DAYS, ROOT_ZONE, Balance, balance, soaking_on_file
from journal.reckon.watering import HOLDS, kept_off, water_from
from journal.record.kinds.weather import Weather
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after
from journal.rules.words import length, on
from journal.season.growth import GROWING, frozen_open, growing
from journal.season.history import Past
from journal.season.stand import STAND, new_grass
from journal.season.water import timer_ran, water_days, water_on_file

ON_FILE_DAYS = 14
TIMER_DAYS = 7


@rule(
    "water-deficit",
    levels=(Level.LATE, Level.NOTE),
    watches=(*STAND, *GROWING, *ROOT_ZONE, *HOLDS),
    turns=(after(Weather, *range(FRESH_DAYS + 1)),),
    basis=(CHECKBOOK_BASIS, COEFFICIENT_BASIS),
)
def water_deficit(past: Past, n: Numbers) -> Finding | None:
    """The roots have used up more water than they may."""
    zone = past.lawn.zone(past.zone)
    if zone is None or not zone.soil or past.lawn.latitude is None:
        return None
    if not growing(past) or new_grass(past) or frozen_open(past) or not water_on_file(past, ON_FILE_DAYS):
        return None
    if not soaking_on_file(past):
        return None
    stands = balance(past)
    if stands.deficit_mm is None or stands.assumed:
        return None
    return _irrigated(past, stands, n) if zone.irrigated else _drought(past, stands)


def _irrigated(past: Past, stands: Balance, n: Numbers) -> Finding | None:
    """Late once the plan's watering is, and until half of what may be used has been put back."""
    if stands.short is None or stands.short >= past.date or timer_ran(past, TIMER_DAYS) or kept_off(past):
        return None
    if water_days(past, past.day, past.day):
        return None
    opened = water_from(past, stands.reached or stands.short)
    if past.date < opened + timedelta(n.days("days")):
        return None
    return Finding(
        level=Level.LATE,
        headline="the root zone is short of water",
        why=_account(past, stands),
        do=f"water {length(stands.deficit_mm or 0.0, past)} early in the day, in one go or over mornings",
        clears="less than half of what may be used is missing, by water or rain",
        numbers=("days",),
    )


def _drought(past: Past, stands: Balance) -> Finding | None:
    """Said once in a drought where nobody irrigates: to be watered, or let rest."""
    if stands.dry is None or stands.dry >= past.date:
        return None
    return Finding(
        level=Level.NOTE,
        headline="drought: the root zone is short of water",
        why=_account(past, stands),
        do="water it, or let it rest: log `see dormant` once it turns brown, and keep off it",
        clears="less than half of what may be used is missing, or `see dormant`",
    )


def _account(past: Past, stands: Balance) -> str:
    """`0.6 in used since Wed 1 Jul, 0.45 in may be`."""
    used, allowed = length(stands.deficit_mm or 0.0, past), length(stands.allowed_mm or 0.0, past)
    since = f" since the soaking of {on(stands.since, past)}" if stands.since is not None else ""
    return f"{used} used up{since}, {allowed} may be; an estimate from the weather on file"
