"""What the numbers of a file are in, where neither its shape nor its headings say so.

No such file names its units. These tests tell what its numbers can't be; the bounds are judgment, and each is far
from anything a place with a lawn has: a median high of the warm months at or below 45 is no F, a temperature above 60
no C, and fractions are never written where tenths are counted.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from statistics import median

from journal.season.weather_file.found import HIGH, LOW, RAIN, Units

TENTHS_FROM = 150
"""A temperature beyond this, above or below nought, is neither in F nor in C."""

HOTTEST_C = 60
WARM_F_FROM, WARM_F_TO = 45, 115
"""The median high of the warm months lies between both in F, below the first in C, beyond the second in tenths."""

MOST_IN, TENTHS_RAIN_FROM = 15, 200
"""A day's rain beyond the first is not in inches; whole numbers beyond the second are tenths of mm."""

STRAYS = 0.02
"""So large a part of the values may be wrong without turning the decision."""

PLAINLY = 0.2
"""With so large a part of the values beyond what can be, no word of the owner's makes them right."""

NORTH, SOUTH = frozenset({5, 6, 7, 8, 9}), frozenset({11, 12, 1, 2, 3})
"""The warm months: of a file that has days of both, those that are the warmer. Winter alone tells nothing."""


@dataclass(frozen=True, slots=True)
class Guess:
    """The units that the numbers may be in; with exactly one, that one is likely. `why` says what told."""

    possible: frozenset[Units]
    why: str

    @property
    def units(self) -> Units | None:
        """The only possibility."""
        return next(iter(self.possible)) if len(self.possible) == 1 else None


def guess(days: Mapping[date, Mapping[str, str]]) -> Guess:
    """What the written numbers can be in."""
    left = set(Units)
    told = []
    for wrong, why in (_of_text(days), _of_heat(days), _of_rain(days)):
        if wrong:
            told.append(why)
            left -= wrong
    return Guess(frozenset(left), ", ".join(told))


def impossible(days: Mapping[date, Mapping[str, str]], units: Units) -> str:
    """Why the numbers can't be in these units, whatever anybody says; '' where they can."""
    if units is Units.TENTHS:
        return _of_text(days)[1]
    heats = [abs(float(text)) for text in _written(days, HIGH, LOW)]
    most = TENTHS_FROM if units is Units.US else HOTTEST_C
    beyond = sum(heat > most for heat in heats)
    return f"there are temperatures beyond {most}" if beyond > PLAINLY * len(heats) else ""


def _written(days: Mapping[date, Mapping[str, str]], *whats: str) -> list[str]:
    return [values[what] for values in days.values() for what in whats if what in values]


def _of_text(days: Mapping[date, Mapping[str, str]]) -> tuple[set[Units], str]:
    if any("." in text for text in _written(days, HIGH, LOW, RAIN)):
        return {Units.TENTHS}, "there are fractions"
    return set(), ""


def _of_heat(days: Mapping[date, Mapping[str, str]]) -> tuple[set[Units], str]:
    heats = [abs(float(text)) for text in _written(days, HIGH, LOW)]
    if _many(heats, TENTHS_FROM):
        return {Units.US, Units.METRIC}, f"temperatures beyond {TENTHS_FROM}"
    warm = _warm_high(days)
    if warm is not None and warm <= WARM_F_FROM:
        return {Units.US, Units.TENTHS}, f"summer highs about {warm:g}"
    if _many(heats, HOTTEST_C):
        wrong = {Units.METRIC, Units.TENTHS} if warm is not None and warm <= WARM_F_TO else {Units.METRIC}
        return wrong, f"temperatures beyond {HOTTEST_C}"
    if warm is not None:
        return {Units.METRIC, Units.TENTHS}, f"summer highs about {warm:g}"
    return set(), ""


def _warm_high(days: Mapping[date, Mapping[str, str]]) -> float | None:
    """The median high of the warm months; None where they are not on file."""
    north, south = (
        [float(values[HIGH]) for day, values in days.items() if HIGH in values and day.month in months]
        for months in (NORTH, SOUTH)
    )
    if not north:
        return None
    return max(median(north), median(south)) if south else median(north)


def _of_rain(days: Mapping[date, Mapping[str, str]]) -> tuple[set[Units], str]:
    texts = _written(days, RAIN)
    rains = [float(text) for text in texts if float(text) > 0]
    if not rains:
        return set(), ""
    if _many(rains, MOST_IN):
        whole = not any("." in text for text in texts)
        if whole and _many(rains, TENTHS_RAIN_FROM):
            return {Units.US, Units.METRIC}, f"days of rain beyond {TENTHS_RAIN_FROM}"
        return {Units.US}, f"days of rain beyond {MOST_IN}"
    if any(len(text.partition(".")[2].rstrip("0")) == 2 for text in texts) or _all_hundredths(texts):
        return {Units.METRIC, Units.TENTHS}, "rain in hundredths"
    return set(), ""


def _all_hundredths(texts: Sequence[str]) -> bool:
    """Whether every rain is written with two digits behind the point, as inches are."""
    return all(len(text.partition(".")[2]) == 2 for text in texts)


def _many(values: Sequence[float], limit: float) -> bool:
    """Whether more of the values lie beyond a limit than may be strays; a single one counts among few."""
    beyond = sum(value > limit for value in values)
    return beyond > STRAYS * len(values)
