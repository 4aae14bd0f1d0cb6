"""When the grass of a zone grows: by the owner's dates, by the weather on file, and by what was seen.

Dates: the season runs from 21 days before the average last frost to 35 days after the average first one, unless the
owner says otherwise. Weather: published soil and air temperatures at which cool-season roots start and stop, turned
into means over ten days; the turning is judgment.
"""

from datetime import date, timedelta
from functools import lru_cache

from journal.facts.factors import celsius
from journal.facts.growth import default_growth
from journal.record.day import MonthDay
from journal.record.entry import Entry
from journal.record.kinds.sighting import Sighting
from journal.record.kinds.weather import Weather
from journal.record.lawn import Lawn
from journal.season.history import Past
from journal.season.remembered import remembered
from journal.season.track import Seen, Track

GROWING: tuple[type[Entry], ...] = (Sighting, Weather)
"""What `growing` and `began` look at."""

Window = tuple[date, date]
"""First and last day, both in it."""

EARLY_DAYS = 21
MEAN_DAYS, MEAN_NEEDS = 10, 8
ENDS_BELOW_C = celsius(50)
BEGINS_FROM_C = celsius(45)
FROZEN_DAYS = 14
THAW_DAYS = 3
_YEAR = 366
_MONTHS = (
    "January", "February", "March", "April", "May", "June",
    "July", "August", "September", "October", "November", "December",
)  # fmt: skip


def southern(lawn: Lawn) -> bool:
    """Whether the lawn lies south of the equator."""
    return lawn.latitude is not None and lawn.latitude < 0


def northern_day(lawn: Lawn, day: date) -> MonthDay:
    """The day of the year that it would be in the northern half of the world (29 February counts as the 28th)."""
    return shifted(lawn, MonthDay(day.month, 28 if (day.month, day.day) == (2, 29) else day.day))


def shifted(lawn: Lawn, day: MonthDay) -> MonthDay:
    """A northern day of the year by the one that takes its place on the lawn; and back."""
    return day.half_a_year_on() if southern(lawn) else day


def month_here(lawn: Lawn, month: str) -> str:
    """A month of the northern year, like `August`, by the name of the one that takes its place on the lawn."""
    return _MONTHS[(_MONTHS.index(month) + 6) % 12] if southern(lawn) else month


def growth_window(lawn: Lawn, year: int) -> Window | None:
    """The season that begins in that year, by dates alone; None when neither growth nor both frosts are known.

    South of the equator it ends in the year after.
    """
    if lawn.growth is not None:
        return _from_to(*lawn.growth, year)
    if lawn.last_frost is None or lawn.first_frost is None:
        return None
    return _between_frosts(lawn.last_frost, lawn.first_frost, year)


@lru_cache(maxsize=512)
def _from_to(first: MonthDay, last: MonthDay, year: int) -> Window:
    return first.on(year), _after(first, last, year)


@lru_cache(maxsize=512)
def _between_frosts(last_frost: MonthDay, first_frost: MonthDay, year: int) -> Window:
    season = default_growth(last_frost.on(year), _after(last_frost, first_frost, year))
    a_year_on = last_frost.on(year + 1) - (last_frost.on(year) - season.first)
    return season.first, min(season.last, a_year_on - timedelta(1))


def _after(first: MonthDay, last: MonthDay, year: int) -> date:
    return last.on(year if last > first else year + 1)


def season(lawn: Lawn, day: date) -> Window | None:
    """The season that the day lies in, or else the next one, by dates alone."""
    for year in (day.year - 1, day.year, day.year + 1, day.year + 2):
        window = growth_window(lawn, year)
        if window is None:
            return None
        if day <= window[1]:
            return window
    raise AssertionError(f"no season after {day}")


def season_before(lawn: Lawn, day: date) -> Window | None:
    """The newest season that began on or before the day, by dates alone."""
    for year in (day.year + 1, day.year, day.year - 1):
        window = growth_window(lawn, year)
        if window is not None and window[0] <= day:
            return window
    return None


def growth_end(past: Past) -> date | None:
    """Last day of the season that the day lies in, or of the next, by dates alone."""
    window = season(past.lawn, past.date)
    return window[1] if window else None


def next_start(lawn: Lawn, day: date) -> date | None:
    """The first growth start after the day, by dates alone."""
    for year in (day.year - 1, day.year, day.year + 1):
        window = growth_window(lawn, year)
        if window is not None and window[0] > day:
            return window[0]
    window = growth_window(lawn, day.year + 2)
    return window[0] if window else None


@remembered
def span(past: Past) -> tuple[int, int | None] | None:
    """The day growth began this season and the first day after it (ordinals), as far as they are known by this day.

    None before it begins, and when no dates are known. With weather on file it begins on the first day, from 21 days
    before the date, on which ten days' mean reaches 45 F, and ends on the first from the average first frost on when
    it is below 50 F; a warm spell later changes nothing. Where weather is missing the dates hold.
    """
    window = season_at_hand(past)
    if window is None:
        return None
    track, frost = past.lawnwide(Weather).track, _first_frost(past.lawn, window)
    first, after = track.once(("growth", window, frost), lambda: _whole_span(track, window, frost))
    if first is None or first > past.day:
        return None
    return first, after if after is not None and after <= past.day else None


@remembered
def began(past: Past) -> date | None:
    """The day on which the season that runs began, by weather where it is on file; None outside it."""
    found = span(past)
    return date.fromordinal(found[0]) if found and found[1] is None else None


@remembered
def season_at_hand(past: Past) -> Window | None:
    """The newest season that may have begun, counting the three weeks by which weather may bring it forward."""
    return season_before(past.lawn, past.date + timedelta(EARLY_DAYS))


def _whole_span(track: Track[Weather], window: Window, frost: date) -> tuple[int | None, int | None]:
    """The same once all is known. What is seen later never moves either day, so one answer serves every day."""
    last = window[1].toordinal()
    seen = Seen(track, last + 2 * _YEAR, len(track.days))
    return _first_day(seen, window[0].toordinal()), _day_after(seen, frost.toordinal(), last)


def _first_day(seen: Seen[Weather], start: int) -> int | None:
    for day in range(start - EARLY_DAYS, start + _YEAR):
        mean = mean_c(seen, day)
        if (mean is not None and mean >= BEGINS_FROM_C) or (mean is None and day >= start):
            return day
    return None


def _day_after(seen: Seen[Weather], frost: int, last: int) -> int | None:
    for day in range(frost, last + _YEAR):
        mean = mean_c(seen, day)
        if (mean is not None and mean < ENDS_BELOW_C) or (mean is None and day > last):
            return day
    return None


def _first_frost(lawn: Lawn, window: Window) -> date:
    """The average first frost of that season; 35 days before its end where only the season itself is known."""
    if lawn.first_frost is not None:
        frost = lawn.first_frost.on(window[0].year)
        frost = frost if frost > window[0] else lawn.first_frost.on(window[0].year + 1)
        if frost <= window[1]:
            return frost
    return max(window[0], window[1] - timedelta(35))


def mean_c(seen: Seen[Weather], day: int, length: int = MEAN_DAYS, needs: int = MEAN_NEEDS) -> float | None:
    """Mean of (high + low) / 2 over so many days up to that one (an ordinal); None with fewer on file than it needs."""
    days = {
        entry.day: (entry.high_c + entry.low_c) / 2
        for entry in seen.between(day - length + 1, day)
        if entry.high_c is not None and entry.low_c is not None
    }
    return sum(days.values()) / len(days) if len(days) >= needs else None


def in_growth(past: Past) -> bool:
    """Whether the season runs, by dates and weather; False when no dates are known."""
    return began(past) is not None


def out_of_growth(past: Past) -> bool:
    """Whether the season is known not to run; False when no dates are known."""
    return season_at_hand(past) is not None and not in_growth(past)


def growing(past: Past) -> bool:
    """Whether the grass of the zone grows: in season, and not seen dormant."""
    return not dormant_open(past) and in_growth(past)


def _of_rest(seen: Sighting) -> bool:
    return seen.subject in ("dormant", "green")


def _of_frost(seen: Sighting) -> bool:
    return seen.subject in ("frozen", "snow", "thawed")


@remembered
def dormant_open(past: Past) -> Sighting | None:
    """The `see dormant` that still stands: closed by `see green`, and by the next growth start."""
    found = past[Sighting].picked("rest", _of_rest).last
    if found is None or found.subject == "green":
        return None
    return found if _still_dormant(past, found, past.date) else None


def _still_dormant(past: Past, seen: Sighting, day: date) -> bool:
    lapses = next_start(past.lawn, seen.date)
    return lapses is None or day < lapses


@remembered
def green_up(past: Past) -> Sighting | None:
    """The `see green` that closed the newest dormancy; None where none was, and where growth start had closed it."""
    seen = past[Sighting].picked("rest", _of_rest)
    if seen.last is None or seen.last.subject != "green":
        return None
    green = seen.last
    for entry in reversed(seen.all[:-1]):
        if entry.subject == "dormant":
            return green if _still_dormant(past, entry, green.date) else None
        green = entry
    return None


@remembered
def frozen_open(past: Past) -> Sighting | None:
    """The `see frozen` or `see snow` that still stands: closed by `see thawed`, 3 days of 45 F, or 14 days."""
    found = past[Sighting].picked("frost", _of_frost).last
    return found if found is not None and _thaws(past, found) > past.day else None


def thawed_on(past: Past) -> date | None:
    """The day from which on the newest `see frozen` or `see snow` no longer stood; None while it does."""
    found = past[Sighting].picked("frost", _of_frost).last
    day = _thaws(past, found) if found is not None else past.day + 1
    return date.fromordinal(day) if day <= past.day else None


def _thaws(past: Past, seen: Sighting) -> int:
    """The first day (an ordinal) on which it no longer stands, as far as is known by the past's day."""
    if seen.subject == "thawed":
        return seen.day
    highs = {
        entry.day: entry.high_c
        for entry in past.lawnwide(Weather).between(seen.day + 1, seen.day + FROZEN_DAYS)
        if entry.high_c is not None
    }
    mild = [day for day, high in sorted(highs.items()) if high >= BEGINS_FROM_C]
    return min([seen.day + FROZEN_DAYS, *mild[THAW_DAYS - 1 : THAW_DAYS]])


def in_season(lawn: Lawn, window: Window, day: MonthDay) -> date:
    """The date of a northern day of the year within the season that begins with `window`."""
    here = shifted(lawn, day)
    found = here.on(window[0].year)
    return found if found >= window[0] else here.on(window[0].year + 1)
