"""When a barrier against crabgrass goes down in spring: by degree days where weather is on file, else by last frost.

Degree days (F) over 32 F from 15 February by the simple mean (15 August in the south). Both ends are fixed by what was
known on their own day, so that weather written down later moves neither.
"""

import math
from bisect import bisect_right
from collections.abc import Hashable
from dataclasses import dataclass
from datetime import date, timedelta

from journal.facts.factors import celsius
from journal.reckon.degree_days import F_PER_C, average
from journal.reckon.threshold import in_force
from journal.record.day import MonthDay
from journal.record.kinds.weather import Weather
from journal.record.lawn import Lawn
from journal.season.growth import growth_window, shifted
from journal.season.history import LAWN, History, Past
from journal.season.track import Track

FROM, SPRING, AUTUMN = MonthDay(2, 15), MonthDay(1, 1), MonthDay(6, 30)
BASE_C = celsius(32)
DAYS = 150
"""To the middle of July."""

COVERED = 0.9
"""The part of the days since 15 February that must be on file: judgment."""

LATELY_DAYS = 7
SOIL_DAYS, SOIL_READINGS = 5, 3

LATE_SPRING_DAYS = 30
"""A spring is not taken to be later than this after the last frost: judgment."""

BEFORE_FROST_DAYS = 21
"""Without a last frost: growth begins so long before it."""


@dataclass(frozen=True, slots=True)
class BarrierWindow:
    """First and last day of the window; `by_weather` where degree days told both or will tell them.

    `opens` and `closes` are the estimate by the last frost until weather has told them.
    """

    opens: date
    closes: date
    opened: bool
    closed: bool
    by_weather: bool
    frost: date


@dataclass(frozen=True, slots=True)
class _Warmth:
    """Degree days (F) day by day from the first, and how many of the days were on file."""

    first: int
    sums: tuple[float, ...]
    known: tuple[int, ...]

    def reached(self, threshold: float) -> int | None:
        """The first day (an ordinal) on which it was more, with enough on file."""
        at = bisect_right(self.sums, threshold)
        for index in range(at, len(self.sums)):
            if self.covered(self.first + index):
                return self.first + index
        return None

    def covered(self, day: int) -> bool:
        index = day - self.first
        return 0 <= index < len(self.known) and self.known[index] >= COVERED * (index + 1)


def spring_of(lawn: Lawn, day: date) -> tuple[date, date]:
    """First and last day of the half-year of barriers that the day lies in, or of the one before it."""
    first = shifted(lawn, SPRING)
    start = first.on(day.year if day >= first.on(day.year) else day.year - 1)
    return start, shifted(lawn, AUTUMN).on(start.year)


def counts_from(lawn: Lawn, day: date) -> date:
    """The day from which degree days are counted in that half-year."""
    return shifted(lawn, FROM).on(spring_of(lawn, day)[0].year)


def degree_days(past: Past, day: date) -> float | None:
    """The sum from 15 February to that day, of the days on file; None where none is."""
    warmth = _warmth(past.history, past.lawn, spring_of(past.lawn, day)[0].year)
    index = min(day.toordinal() - warmth.first, len(warmth.sums) - 1)
    return warmth.sums[index] if index >= 0 and warmth.known[index] else None


def barrier_window(past: Past) -> BarrierWindow | None:
    """The window of the spring that the past's day lies in, or follows; None without frost or growth dates."""
    year = spring_of(past.lawn, past.date)[0].year
    frost = last_frost(past.lawn, year)
    if frost is None:
        return None
    (opens, open_by), (closes, close_by) = window_days(past.history, past.lawn, year, frost)
    warmth = _warmth(past.history, past.lawn, year)
    covered = warmth.covered(past.day)
    opened, closed = opens <= past.date, closes <= past.date
    low, high = (in_force(past.lawn, "barrier-past", name) for name in ("from", "most"))
    ahead = frost - timedelta(round(in_force(past.lawn, "barrier-missed", "before-frost-days")))
    if covered:
        ahead = _about(warmth, past.date, low, frost)
        last = _about(warmth, past.date, high, frost + timedelta(LATE_SPRING_DAYS))
    else:
        last = max(frost, past.date)
    return BarrierWindow(
        opens=opens if opened else max(ahead, past.date + timedelta(1)),
        closes=closes if closed else last,
        opened=opened,
        closed=closed,
        by_weather=covered or (opened and open_by) or (closed and close_by),
        frost=frost,
    )


def _about(warmth: _Warmth, day: date, threshold: float, latest: date) -> date:
    """When the sum will be reached if the days ahead are like the last seven: an estimate, not after `latest`."""
    index = day.toordinal() - warmth.first
    lacking = threshold - warmth.sums[index]
    a_day = (warmth.sums[index] - warmth.sums[max(0, index - LATELY_DAYS)]) / LATELY_DAYS
    if lacking <= 0:
        return day
    if lacking >= a_day * (latest - day).days:
        return max(latest, day)
    return day + timedelta(math.ceil(lacking / a_day))


def last_frost(lawn: Lawn, year: int) -> date | None:
    """The average last frost of that year; three weeks after growth begins where only that is known."""
    if lawn.last_frost is not None:
        return lawn.last_frost.on(year)
    window = growth_window(lawn, year)
    return window[0] + timedelta(BEFORE_FROST_DAYS) if window else None


def window_days(history: History, lawn: Lawn, year: int, frost: date) -> tuple[tuple[date, bool], tuple[date, bool]]:
    """First day of the window and first day after it, each with whether degree days told it; all weather on file."""
    low, high = (in_force(lawn, "barrier-past", name) for name in ("from", "most"))
    before = round(in_force(lawn, "barrier-missed", "before-frost-days"))
    soil = tuple(soil_held(history, lawn, year, in_force(lawn, "barrier-past", name)) for name in ("soil", "soil-most"))
    key = ("barrier window", shifted(lawn, SPRING), year, frost, low, high, before, soil)
    track = history.track(LAWN, Weather)
    return track.once(key, lambda: _days(_warmth(history, lawn, year), frost.toordinal(), low, high, before, soil))


def _days(
    warmth: _Warmth, frost: int, low: float, high: float, before: int, soil: tuple[int | None, ...]
) -> tuple[tuple[date, bool], tuple[date, bool]]:
    """Where weather does not cover the day on which the estimate falls, the estimate holds."""
    by_air = warmth.reached(low), warmth.reached(high)
    first, last = (_sooner(air, ground) for air, ground in zip(by_air, soil, strict=True))
    opens = _told(first, frost if warmth.covered(frost - before) else frost - before)
    closes = _told(last, (frost + LATE_SPRING_DAYS if warmth.covered(frost) else frost) + 1)
    return opens, (max(opens[0], closes[0]), closes[1])


def _sooner(one: int | None, other: int | None) -> int | None:
    return min((day for day in (one, other) if day is not None), default=None)


def soil_held(history: History, lawn: Lawn, year: int, least_c: float) -> int | None:
    """The first day (an ordinal) of that spring on which the soil had been as warm as that for five days.

    Three readings in five days are enough, and none may be colder; None where that was not seen.
    """
    first = shifted(lawn, FROM).on(year).toordinal()
    track = history.track(LAWN, Weather)
    return track.once(("soil", first, least_c), lambda: _held(track, first, least_c))


def _held(track: Track[Weather], first: int, least_c: float) -> int | None:
    days = {entry.day: entry.soil_c for entry in _between(track, first, first + DAYS) if entry.soil_c is not None}
    for day in days:
        lately = [days[at] for at in range(day - SOIL_DAYS + 1, day + 1) if at in days]
        if len(lately) >= SOIL_READINGS and min(lately) >= least_c:
            return day
    return None


def _told(reached: int | None, estimate: int) -> tuple[date, bool]:
    by_weather = reached is not None and reached <= estimate
    return date.fromordinal(reached if reached is not None and by_weather else estimate), by_weather


def _warmth(history: History, lawn: Lawn, year: int) -> _Warmth:
    first = shifted(lawn, FROM).on(year).toordinal()
    track = history.track(LAWN, Weather)
    key: Hashable = ("warmth over 32 F", first)
    return track.once(key, lambda: _summed(track, first))


def _summed(track: Track[Weather], first: int) -> _Warmth:
    days = {
        entry.day: average(entry.low_c, entry.high_c, BASE_C) * F_PER_C
        for entry in _between(track, first, first + DAYS)
        if entry.high_c is not None and entry.low_c is not None
    }
    total, count = 0.0, 0
    sums, known = [], []
    for day in range(first, first + DAYS + 1):
        if day in days:
            total, count = total + days[day], count + 1
        sums.append(total)
        known.append(count)
    return _Warmth(first, tuple(sums), tuple(known))


def _between(track: Track[Weather], first: int, last: int) -> tuple[Weather, ...]:
    return track.entries[bisect_right(track.days, first - 1) : bisect_right(track.days, last)]
