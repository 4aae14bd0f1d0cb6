"""One day's weather, however it came to be known."""

from dataclasses import dataclass
from datetime import date

from journal.record.kinds.weather import Weather
from journal.season.history import Past
from journal.season.water import rain_days


@dataclass(frozen=True, slots=True)
class DayWeather:
    """Highest and lowest air temperature in C and rain in mm; None for what is not known of that day."""

    date: date
    high_c: float | None = None
    low_c: float | None = None
    rain_mm: float | None = None

    @property
    def day(self) -> int:
        """The date as an ordinal."""
        return self.date.toordinal()


def weather_days(past: Past, first: int, last: int) -> dict[int, DayWeather]:
    """Day (an ordinal) -> what the book knows of it, for the days between both of which it knows anything.

    The newest entry of a day wins; a gauge beats the rain of a weather entry, as everywhere.
    """
    warmth = {entry.day: entry for entry in past.lawnwide(Weather).between(first, last) if entry.high_c is not None}
    rain = rain_days(past, first, last)
    found: dict[int, DayWeather] = {}
    for day in sorted(warmth.keys() | rain.keys()):
        seen = warmth.get(day)
        high, low = (seen.high_c, seen.low_c) if seen else (None, None)
        found[day] = DayWeather(date.fromordinal(day), high, low, rain.get(day))
    return found
