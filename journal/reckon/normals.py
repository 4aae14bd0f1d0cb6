"""What each month is like in most years, out of the days of weather on file."""

from calendar import monthrange
from collections.abc import Iterable
from dataclasses import dataclass
from statistics import fmean

from journal.facts.frost import MISSING_DAYS
from journal.record.month_normal import MonthNormal, written
from journal.season.daily import DayWeather


@dataclass(frozen=True, slots=True)
class Month:
    """Means over the years in which the month is on file, and how many of them have temperatures, how many rain."""

    normal: MonthNormal
    years: int
    rain_years: int


@dataclass(frozen=True, slots=True)
class Normals:
    """The months that are known, in the order of the year."""

    months: tuple[Month, ...]

    @property
    def years(self) -> int:
        """The years of the month with the fewest."""
        return min(max(month.years, month.rain_years) for month in self.months)

    def line(self, units: str) -> str:
        """The line that accepts them, in the units of a book."""
        return f"set normals {written((month.normal for month in self.months), units)}"


def normals(days: Iterable[DayWeather]) -> Normals | None:
    """Monthly mean high and low, and the month's rain; None where no month is on file.

    Each is the mean over the years. A month of a year counts for temperatures with at most three days missing, for
    rain with none.
    """
    highs: dict[tuple[int, int], list[float]] = {}
    lows: dict[tuple[int, int], list[float]] = {}
    rains: dict[tuple[int, int], list[float]] = {}
    for day in days:
        month = day.date.year, day.date.month
        for value, kept in ((day.high_c, highs), (day.low_c, lows), (day.rain_mm, rains)):
            if value is not None:
                kept.setdefault(month, []).append(value)
    found = []
    for number in range(1, 13):
        high, low = (_means(kept, number) for kept in (highs, lows))
        rain = [sum(v) for (year, m), v in rains.items() if m == number and len(v) == monthrange(year, m)[1]]
        if (high and low) or rain:
            warm = high and low
            normal = MonthNormal(
                number,
                high_c=fmean(high) if warm else None,
                low_c=fmean(low) if warm else None,
                rain_mm=fmean(rain) if rain else None,
            )
            found.append(Month(normal, min(len(high), len(low)), len(rain)))
    return Normals(tuple(found)) if found else None


def _means(kept: dict[tuple[int, int], list[float]], number: int) -> list[float]:
    """The month's mean in every year that has enough of its days."""
    return [
        fmean(values)
        for (year, month), values in kept.items()
        if month == number and len(values) >= monthrange(year, month)[1] - MISSING_DAYS
    ]
