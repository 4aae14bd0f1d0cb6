"""What a file of daily weather holds, and what was made of it."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum
from fractions import Fraction
from itertools import pairwise

from journal.record.unit import UNITS, Dimension, Unit
from journal.season.daily import DayWeather

HIGH, LOW, RAIN = "high", "low", "rain"
WHATS = (HIGH, LOW, RAIN)

TOLD = "told by its numbers"
"""How units are known that neither the file nor the owner has named."""


class Units(StrEnum):
    """What a file's numbers are in: F and inches, C and mm, or tenths of C and of mm."""

    US = "us"
    METRIC = "metric"
    TENTHS = "tenths"


TENTH_C = Unit("0.1 C", Dimension.TEMPERATURE, Fraction(1, 10))
TENTH_MM = Unit("0.1 mm", Dimension.LENGTH, Fraction(1, 10))

OF_HEAT: Mapping[Units, Unit] = {Units.US: UNITS["f"], Units.METRIC: UNITS["c"], Units.TENTHS: TENTH_C}
OF_RAIN: Mapping[Units, Unit] = {Units.US: UNITS["in"], Units.METRIC: UNITS["mm"], Units.TENTHS: TENTH_MM}


def unit_of(what: str, units: Units) -> Unit:
    """The unit of a high, a low or the rain."""
    return (OF_RAIN if what == RAIN else OF_HEAT)[units]


@dataclass(frozen=True, slots=True)
class Sample:
    """One row as it is written in the file, and as it was understood. `written` holds high, low and rain."""

    day: DayWeather
    written: Mapping[str, str]


@dataclass(frozen=True, slots=True)
class WeatherFile:
    """Days in the order of the calendar, one each, and what was not taken, by reason in words.

    `read` counts rows under the header, `kept` the days. `units` is us, metric, tenths, or mixed where headings name
    others; `unit_words` says them, `sure` how they are known. With `doubt` (a question) there are no days and no
    sample: `readings` show three rows as they would be in each of the units that can be meant.
    """

    days: tuple[DayWeather, ...]
    read: int
    dropped: Mapping[str, int]
    dialect: str
    units: str
    unit_words: str
    sure: str
    sample: tuple[Sample, ...] = ()
    station: str = ""
    gaps: tuple[tuple[date, date], ...] = ()
    notes: tuple[str, ...] = ()
    doubt: str = ""
    readings: tuple[tuple[Units, tuple[Sample, ...]], ...] = ()

    @property
    def kept(self) -> int:
        """Days with at least one value."""
        return len(self.days)


def gaps_of(days: tuple[DayWeather, ...]) -> tuple[tuple[date, date], ...]:
    """First and last day of each stretch that is missing between the first day and the last."""
    return tuple(
        (one.date + timedelta(1), other.date - timedelta(1)) for one, other in pairwise(days) if other.day - one.day > 1
    )
