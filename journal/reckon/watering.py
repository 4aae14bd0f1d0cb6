"""When a zone may be watered at all, and from when on a lawn that is short of water is late."""

import math
from collections.abc import Sequence
from datetime import date

from journal.reckon.protection import PROTECTED
from journal.reckon.root_zone import Balance, balance
from journal.reckon.uses import uses
from journal.reckon.watering_in import watered_from
from journal.record.day import spoken
from journal.record.entry import Entry
from journal.season.growth import season_at_hand
from journal.season.history import Past

HOLDS: tuple[type[Entry], ...] = PROTECTED
"""What may keep water off, besides frost."""

DRY_DAYS = 30
"""No label keeps water off for longer."""

Held = tuple[date, str]
"""The first day on which it may be watered, and what kept it back until then."""


def held(past: Past) -> Sequence[Held]:
    """What keeps or kept water off: the average last frost of the season at hand, and labels."""
    return [one for one in (_frost(past), _label(past)) if one is not None]


def _frost(past: Past) -> Held | None:
    """The average last frost; None where it lies before the season, or isn't known."""
    window, frost = season_at_hand(past), past.lawn.last_frost
    if window is None or frost is None:
        return None
    day = next((day for day in (frost.on(window[0].year), frost.on(window[1].year)) if day >= window[0]), None)
    return None if day is None or day > window[1] else (day, "the average last frost")


def _label(past: Past) -> Held | None:
    """The first morning on which every label lets water fall on what was put down."""
    found: list[Held] = []
    for use in uses(past, past.day - DRY_DAYS):
        if (day := watered_from(use, past.lawn)) > use.date:
            by = "by its label" if use.label.rain_free_min is not None else "(label not entered)"
            found.append((day, f"{use.name} is to stay dry {by}, to {spoken(day, past.date)}"))
    return max(found, default=None)


def water_from(past: Past, since: date) -> date:
    """The day from which on it could be watered, of an account that was used up from that day on."""
    return max([since, *(day for day, _ in held(past) if day <= past.date)])


def kept_off(past: Past) -> bool:
    """Whether it must not be watered on the past's day."""
    return any(day > past.date for day, _ in held(past))


def asked_for(past: Past, day: int) -> bool:
    """Whether the account of the root zone asked for water on that day (an ordinal), as seen the evening before."""
    found: Balance = balance(past.history.on(past.zone, date.fromordinal(day - 1), past.watches))
    if found.days_to_water is None or found.through is None:
        return False
    return found.through.toordinal() + math.ceil(found.days_to_water) <= day
