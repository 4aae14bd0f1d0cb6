"""How long a seedbed is kept damp, how often it is watered, and what takes the place of a watering."""

from collections.abc import Mapping
from datetime import date

from journal.facts.mixture import Mixture, has_bluegrass
from journal.facts.rounding import reaches
from journal.reckon.dose import is_spot
from journal.reckon.protection import PROTECTED
from journal.reckon.threshold import in_force
from journal.reckon.uses import uses
from journal.reckon.watering_in import rain_free_hours, watered_from
from journal.record.entry import Entry
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Height
from journal.record.kinds.weather import Weather
from journal.record.lawn import Lawn
from journal.season.history import Past
from journal.season.stand import COUNTS_FROM_DAY, SEEDBED_DAYS, sown
from journal.season.water import WATER

SEEDBED_WATER: tuple[type[Entry], ...] = (*WATER, Height, *PROTECTED)
"""What this file looks at."""

OLD_GRASS_DAYS = 7
"""Before this day a height is that of the old grass: no seedling is up so soon."""

LONGEST_DRY_DAYS = 30
"""No label keeps water off for longer."""


def patch(past: Past) -> Seeding | None:
    """The newest spot sown within the zone that was not cut since it took root; None where a whole sowing followed.

    It is kept like a seedbed: to the first mowing on day 21 or later, at the latest through day 56.
    """
    spot = past[Seeding].last_where(is_spot)
    if spot is None or past.day - spot.day > SEEDBED_DAYS:
        return None
    if past[Mowing].first_since(spot.day + COUNTS_FROM_DAY) is not None:
        return None
    whole = sown(past)
    return spot if whole is None or whole.day < spot.day else None


def damp_number(mix: Mixture) -> str:
    """The name of the `seedbed-dry` number that says to which day that mix is kept damp."""
    return "days-bluegrass" if has_bluegrass(mix) else "days"


def last_damp_day(lawn: Lawn, mix: Mixture) -> int:
    """The last day after sowing on which that mix is kept damp."""
    return round(in_force(lawn, "seedbed-dry", damp_number(mix)))


def risen(past: Past, zero: date) -> Height | None:
    """The first measurement of new grass that needs no seedbed water any more, 1.5 in; None while there is none."""
    enough = in_force(past.lawn, "seedbed-dry", "height")
    measured = past[Height].since(zero.toordinal() + OLD_GRASS_DAYS)
    return next((h for h in measured if h.height_mm is not None and reaches(h.height_mm, enough)), None)


def waterings_wanted(past: Past, zero: date, mix: Mixture, day: int) -> int:
    """How often on that day (an ordinal): twice; once from day 15 without bluegrass, or when the day stays cool."""
    if not has_bluegrass(mix) and day - zero.toordinal() >= in_force(past.lawn, "seedbed-dry", "once-from-day"):
        return 1
    highs = [w.high_c for w in past.lawnwide(Weather).between(day, day) if w.high_c is not None]
    if highs and highs[-1] < in_force(past.lawn, "seedbed-dry", "cool-high"):
        return 1
    return round(in_force(past.lawn, "seedbed-dry", "waterings"))


def rained(lawn: Lawn, rain_mm: Mapping[int, float], day: int) -> bool:
    """Whether rain covered the day: its own, or plenty the day before."""
    enough, plenty = (in_force(lawn, "seedbed-dry", name) for name in ("rain", "rain-two-days"))
    return reaches(rain_mm.get(day, 0.0), enough) or reaches(rain_mm.get(day - 1, 0.0), plenty)


def kept_dry(past: Past, first: int) -> Mapping[int, tuple[str, int]]:
    """Day (an ordinal, from `first` on) -> the product on the leaves that is to stay dry, and the day it is free.

    Where no time of day was written down, 24 hours are its date and the next.
    """
    found: dict[int, tuple[str, int]] = {}
    for use in uses(past, first - LONGEST_DRY_DAYS):
        if not rain_free_hours(use, past.lawn):
            continue
        free = watered_from(use, past.lawn).toordinal()
        for day in range(max(first, use.day), free):
            if day not in found or found[day][1] < free:
                found[day] = use.name, free
    return found
