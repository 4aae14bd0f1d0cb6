"""Water that came after a feeding: rain and irrigation, day by day, without what is known to have come before it."""

from datetime import time, timedelta

from journal.reckon.feedings import FEEDINGS, FeedingDay
from journal.record.entry import Entry
from journal.record.kinds.watering import Watering
from journal.record.kinds.weather import Rain
from journal.season.history import Past
from journal.season.hours import Within, within_hours
from journal.season.water import WATER, Irrigation, rain_days, water_days

FEED_WATER: tuple[type[Entry], ...] = (*FEEDINGS, *WATER)
"""What this file looks at."""

A_DAY_HOURS = 24


def fed_at(feeding: FeedingDay) -> time | None:
    """When the last of it went down, where every entry of its last day says."""
    times = [entry.time for entry in feeding.entries if entry.date == feeding.date]
    known = [one for one in times if one is not None]
    return max(known) if known and len(known) == len(times) else None


def watered_in(past: Past, feeding: FeedingDay, first: int, last: int) -> float | None:
    """Water in mm from one day to the other (ordinals); None for enough: a watering whose depth nobody measured.

    What the timer is taken to have run counts, and so does water of the day itself that may have come before.
    """
    total = sum(_rain(past, feeding, first, last).values())
    for irrigation in _waterings(past, feeding, first, last):
        if irrigation.deep or irrigation.depth_mm is None:
            return None
        total += irrigation.depth_mm
    return total


def heaviest_day(past: Past, feeding: FeedingDay, days: int) -> tuple[int, float] | None:
    """The day (an ordinal) within so many days after it on which most water fell, and its mm; None without any.

    Only what is on file counts: no timer's runs, and no watering of unknown depth.
    """
    first, last = feeding.day, feeding.day + days
    found = dict(_rain(past, feeding, first, last))
    for irrigation in _waterings(past, feeding, first, last):
        late = _within(feeding, irrigation, A_DAY_HOURS * max(1, days)) is Within.NO
        if not irrigation.assumed and irrigation.depth_mm is not None and not late:
            found[irrigation.day] = found.get(irrigation.day, 0.0) + irrigation.depth_mm
    return max(found.items(), key=lambda row: (row[1], -row[0]), default=None)


def _waterings(past: Past, feeding: FeedingDay, first: int, last: int) -> list[Irrigation]:
    days = water_days(past, first, min(last, past.day))
    return [one for day in days.values() for one in day if not _before(feeding, one)]


def _before(feeding: FeedingDay, irrigation: Irrigation) -> bool:
    if irrigation.day != feeding.day or irrigation.assumed:
        return False
    return _within(feeding, irrigation, A_DAY_HOURS) is Within.NO


def _within(feeding: FeedingDay, irrigation: Irrigation, hours: float) -> Within:
    entry = irrigation.entry
    at = entry.time if isinstance(entry, Watering) else None
    day = feeding.date + timedelta(irrigation.day - feeding.day)
    if fed_at(feeding) is None or at is None:
        return Within.PERHAPS
    return within_hours(feeding.date, fed_at(feeding), day, at, hours)


def _rain(past: Past, feeding: FeedingDay, first: int, last: int) -> dict[int, float]:
    fallen = rain_days(past, first, min(last, past.day))
    if feeding.day in fallen and _rained_before(past, feeding):
        del fallen[feeding.day]
    return fallen


def _rained_before(past: Past, feeding: FeedingDay) -> bool:
    """Whether the gauge was read for the day before the feeding, both with their times."""
    at = fed_at(feeding)
    read = [*past[Rain].between(feeding.day, feeding.day), *past.lawnwide(Rain).between(feeding.day, feeding.day)]
    return at is not None and bool(read) and all(one.time is not None and one.time <= at for one in read)
