"""Water on leaves that were to stay dry: rain and waterings inside a product's rain-free hours."""

from dataclasses import dataclass
from datetime import date

from journal.reckon.uses import Use
from journal.reckon.watering_in import rain_free_hours, rained_before
from journal.record.kinds.weather import Rain
from journal.season.history import Past
from journal.season.hours import Within, days_of, within_hours
from journal.season.water import SPREAD_DAYS, rain_days, water_days


@dataclass(frozen=True, slots=True)
class Wash:
    """Water on a day (an ordinal); `how` is PERHAPS where no time tells. `words` says what it was, `ids` its entry."""

    day: int
    how: Within
    words: str
    ids: tuple[str, ...] = ()


def washed(past: Past, use: Use, least_mm: float) -> Wash | None:
    """The first water that surely came too soon, else the first that may have; None without any.

    Rain of less than so much, and a watering known to be lighter, do nothing.
    """
    hours = rain_free_hours(use, past.lawn)
    if not hours:
        return None
    last = min(past.day, use.day + days_of(hours) + (1 if use.time is not None else 0))
    found = [*_rain(past, use, last, hours, least_mm), *_given(past, use, last, hours, least_mm)]
    return min(found, key=lambda one: (one.how is not Within.YES, one.day), default=None)


def _rain(past: Past, use: Use, last: int, hours: float, least_mm: float) -> list[Wash]:
    found = []
    for day, depth in rain_days(past, use.day, last).items():
        if depth < least_mm or (day == use.day and rained_before(past, use)):
            continue
        how = within_hours(use.date, None, date.fromordinal(day), None, hours)
        if how is Within.YES and not _of_one_day(past, day):
            how = Within.PERHAPS
        if how is not Within.NO:
            found.append(Wash(day, how, "rain"))
    return found


def _of_one_day(past: Past, day: int) -> bool:
    """Whether that day's rain was read for itself, and not as a part of several days'."""
    read = [*past[Rain].between(day, day + SPREAD_DAYS), *past.lawnwide(Rain).between(day, day + SPREAD_DAYS)]
    spread = any(one.since is not None and one.since.toordinal() <= day for one in read)
    alone = any(one.day == day and (one.since is None or one.since >= one.date) for one in read)
    return alone or not spread


def _given(past: Past, use: Use, last: int, hours: float, least_mm: float) -> list[Wash]:
    found = []
    for day, waterings in water_days(past, use.day, last).items():
        for one in waterings:
            if one.depth_mm is not None and one.depth_mm < least_mm:
                continue
            how = within_hours(use.date, use.time, date.fromordinal(day), one.entry.time, hours)
            if how is not Within.NO:
                words = "the timer's watering" if one.assumed else "a watering"
                found.append(Wash(day, how, words, () if one.assumed else (one.entry.id,)))
    return found
