"""Water after an application: how long leaves stay dry, how much takes a product in, and how much has come since.

What works through the leaf is to stay dry for its rain-free hours; the clock of what wants water starts when they
end. Where no times of day are known, 24 hours are the date itself and the next one.
"""

from dataclasses import dataclass
from datetime import date, datetime, time, timedelta

from journal.facts.citation import Basis, label
from journal.facts.house import number
from journal.facts.rounding import reaches
from journal.reckon.protection import PROTECTED
from journal.reckon.threshold import in_force
from journal.reckon.uses import Use, uses
from journal.record.entry import Entry
from journal.record.kinds.weather import Rain
from journal.record.lawn import Lawn
from journal.season.history import Past
from journal.season.hours import days_of
from journal.season.remembered import remembered
from journal.season.water import WATER, rain_days, water_days

AFTER_USE: tuple[type[Entry], ...] = (*PROTECTED, *WATER)
"""What this file looks at."""

LONGEST_DAYS = 60
"""What follows a use is followed up for so long."""

SOON_DAYS = 10
"""Most of it is watered in by then, and nothing later needs to be looked at."""

WANT_WATER = ("pre-emergent", "insect")
"""Kinds that work in the soil."""


@remembered
def lately_used(past: Past) -> tuple[Use, ...]:
    """Every use in the zone that is followed up yet, and those of the month before, oldest first."""
    return uses(past, past.day - LONGEST_DAYS - 30)


def used_within(past: Past, days: int) -> tuple[Use, ...]:
    """Those less than so many days old, at the most 90."""
    first = past.day - days + 1
    return tuple(use for use in lately_used(past) if use.day >= first)


def rain_free_hours(use: Use, lawn: Lawn) -> float:
    """How long water keeps off its leaves: the label's hours, else the house number; 0 for what is not on leaves."""
    if use.label.rain_free_min is not None:
        return use.label.rain_free_min / 60
    return in_force(lawn, "wash-off", "hours") if use.on_leaves else 0.0


def watered_from(use: Use, lawn: Lawn) -> date:
    """The first day on which water may fall on it again, no times of day being known; its own where nothing waits."""
    hours = rain_free_hours(use, lawn)
    return use.date + timedelta(days_of(hours) + 1) if hours else use.date


@dataclass(frozen=True, slots=True)
class WaterIn:
    """The depth in mm that takes it into the soil. `by` is `label`, an active's name, or `kind`."""

    depth_mm: float
    by: str
    basis: Basis


def water_in(use: Use, lawn: Lawn) -> WaterIn | None:
    """By its label, else its actives, else its kind; None for what wants none, and for what nobody knows."""
    if use.label.water_in_mm is not None:
        return WaterIn(use.label.water_in_mm, "label", label()) if use.label.water_in_mm else None
    if use.product is None:
        return None
    least = in_force(lawn, "water-in-missing", "depth")
    wanted = [one for one in use.actives if one.water_in_mm is not None and one.water_basis is not None]
    if wanted:
        most = max(wanted, key=lambda one: one.water_in_mm or 0.0)
        basis = most.water_basis
        assert basis is not None
        return WaterIn(max(least, most.water_in_mm or 0.0), most.name, basis)
    house = number("water-in-missing", "depth")
    return WaterIn(least, "kind", house.basis) if use.kind in WANT_WATER else None


@dataclass(frozen=True, slots=True)
class Watered:
    """What has come by a day: in all, the first day (an ordinal) on which it was enough, and on which it is unknown."""

    depth_mm: float
    enough: int | None
    unmeasured: int | None
    """The first day with a watering whose depth nobody measured."""
    timer: bool = False
    """Whether a timer ran whose depth is not known."""


def watered(past: Past, use: Use, depth_mm: float) -> Watered:
    """Rain and waterings since the use, the timer's too, up to the past's day or until they were enough.

    Water of unknown order on the day itself counts; a deep watering is enough.
    """
    soon = _watered(past, use, depth_mm, min(past.day, use.day + SOON_DAYS))
    last = min(past.day, use.day + LONGEST_DAYS)
    return soon if soon.enough is not None or last <= use.day + SOON_DAYS else _watered(past, use, depth_mm, last)


def _watered(past: Past, use: Use, depth_mm: float, last: int) -> Watered:
    hours = rain_free_hours(use, past.lawn)
    free = watered_from(use, past.lawn).toordinal()
    rain, given = rain_days(past, free, last), water_days(past, use.day, last)
    if use.day in rain and rained_before(past, use):
        del rain[use.day]
    total, timer = 0.0, False
    enough: int | None = None
    unmeasured: int | None = None
    for day in sorted({*rain, *given}):
        total += rain.get(day, 0.0)
        for watering in given.get(day, ()):
            if not _counts(use, hours, free, day, watering.entry.time):
                continue
            total += watering.depth_mm or 0.0
            if watering.deep and enough is None:
                enough = day
            timer = timer or (watering.assumed and watering.depth_mm is None)
            if watering.depth_mm is None and unmeasured is None:
                unmeasured = day
        if enough is None and depth_mm > 0 and total > 0 and reaches(total, depth_mm):
            enough = day
    return Watered(total, enough, unmeasured, timer)


def _counts(use: Use, hours: float, free: int, day: int, at: time | None) -> bool:
    if use.time is None or at is None:
        return day >= free
    return datetime.combine(date.fromordinal(day), at) >= datetime.combine(use.date, use.time) + timedelta(hours=hours)


def rained_before(past: Past, use: Use) -> bool:
    """Whether the gauge of that day was read before the use, every time of it being known."""
    read = [*past[Rain].between(use.day, use.day), *past.lawnwide(Rain).between(use.day, use.day)]
    at = use.time
    return at is not None and bool(read) and all(one.time is not None and one.time <= at for one in read)
