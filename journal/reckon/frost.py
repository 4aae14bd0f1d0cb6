"""Frost dates out of the days of weather on file: the last freeze of each spring, the first of each autumn."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from math import ceil, floor, inf

from journal.facts.frost import CHANCES, ENOUGH, FREEZE_C, LEAST_YEARS
from journal.record.day import MonthDay
from journal.season.daily import DayWeather


@dataclass(frozen=True, slots=True)
class Freezes:
    """One side of the growing season. `key` is the fact of the lawn that it can be accepted as.

    `years` counts the years with enough days on file, `dates` holds the day of each that had a freeze at all.
    `chances` (percent -> day, None where most years have none) says how likely a freeze is after that day for the
    last frost, before it for the first; it is empty with fewer than ten years.
    """

    key: str
    years: int
    dates: tuple[date, ...]
    chances: Mapping[int, MonthDay | None]

    @property
    def line(self) -> str:
        """The line that accepts the day of even chance; '' where there is none, or where it can't be meant."""
        even = self.chances.get(50)
        return f"set {self.key} {even}" if even and not self.cut else ""

    @property
    def cut(self) -> bool:
        """Whether the freeze lies against the end of its half of the year: frosts go on, and so it tells of none.

        So it is where winter was taken for summer: weather from the other half of the world.
        """
        even = self.chances.get(50)
        return even is not None and (even.month, even.day) in _EDGES


@dataclass(frozen=True, slots=True)
class FrostDates:
    """The last freeze of spring and the first of autumn."""

    last: Freezes
    first: Freezes


def frost_dates(days: Iterable[DayWeather], latitude: float | None = None) -> FrostDates | None:
    """Frost dates from days in any order; None where no half-year has enough of them.

    Spring is January to June, autumn July to December, south of the equator (latitude below 0) the other way about.
    """
    halves: dict[tuple[int, bool], dict[date, float]] = {}
    for day in days:
        if day.low_c is not None:
            halves.setdefault((day.date.year, day.date.month > 6), {})[day.date] = day.low_c
    whole = {half: lows for half, lows in halves.items() if len(lows) >= ENOUGH * _length(*half)}
    if not whole:
        return None
    south = latitude is not None and latitude < 0
    springs = [lows for (_, late), lows in sorted(whole.items()) if late is south]
    autumns = [lows for (_, late), lows in sorted(whole.items()) if late is not south]
    return FrostDates(
        _freezes("last_frost", [max(_frozen(lows), default=None) for lows in springs], sign=1),
        _freezes("first_frost", [min(_frozen(lows), default=None) for lows in autumns], sign=-1),
    )


def _length(year: int, late: bool) -> int:
    return (date(year, 12, 31) - date(year, 6, 30) if late else date(year, 6, 30) - date(year - 1, 12, 31)).days


def _frozen(lows: Mapping[date, float]) -> list[date]:
    return [day for day, low in lows.items() if low <= FREEZE_C]


def _freezes(key: str, found: list[date | None], sign: int) -> Freezes:
    """`sign` 1 where a late day is the bad one; a year without a freeze is better than any."""
    chances: dict[int, MonthDay | None] = {}
    if len(found) >= LEAST_YEARS:
        good_first = sorted(-inf if day is None else sign * _place(day) for day in found)
        for chance in CHANCES:
            place = _percentile(good_first, 1 - chance / 100)
            chances[chance] = None if place is None else _of_place(sign * place)
    return Freezes(key, len(found), tuple(day for day in found if day is not None), chances)


def _percentile(ordered: list[float], part: float) -> int | None:
    """Between the two nearest values in proportion (Hyndman & Fan 1996, The American Statistician 50(4), type 7).

    A part of a day counts as the whole: rather the worse day.
    """
    at = part * (len(ordered) - 1)
    low = floor(at + 1e-9)
    high = min(low + 1, len(ordered) - 1)
    rest = max(0.0, at - low)
    if ordered[low] == -inf:
        return None
    return ceil(ordered[low] + (ordered[high] - ordered[low]) * rest - 1e-6)


_EDGES = frozenset({(month, day) for month, days in ((12, range(25, 32)), (1, range(1, 8)), (6, range(24, 31)),
                                                     (7, range(1, 8))) for day in days})  # fmt: skip
"""The first and last week of each half of the year: judgment."""

_COMMON_YEAR = date(2001, 1, 1)


def _place(day: date) -> int:
    """The day's number in a year without a leap day, so that all years can be compared; 29 February is the 28th."""
    same = date(2001, day.month, 28 if (day.month, day.day) == (2, 29) else day.day)
    return (same - _COMMON_YEAR).days


def _of_place(place: int) -> MonthDay:
    day = _COMMON_YEAR + timedelta(place)
    return MonthDay(day.month, day.day)
