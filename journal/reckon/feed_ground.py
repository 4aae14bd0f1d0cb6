"""Whether the ground is frozen or snowed under, and whether the day is hot: what no feeding goes down on."""

from dataclasses import dataclass

from journal.reckon.threshold import in_force
from journal.record.kinds.sighting import Sighting
from journal.record.kinds.weather import Weather
from journal.season.growth import frozen_open, mean_c
from journal.season.history import Past
from journal.season.remembered import remembered

COLD_DAYS, COLD_NEEDS = 5, 4
"""The mean of five days, where at least four of them are on file: judgment."""

_ROUNDING = 1e-6


@dataclass(frozen=True, slots=True)
class Frozen:
    """How it is known: `seen`, or else the mean of the last days in C."""

    seen: Sighting | None
    mean_c: float | None = None


@remembered
def frozen_ground(past: Past) -> Frozen | None:
    """By what was seen and still stands, else by the weather on file; one seen thawed in these days is not frozen."""
    if (seen := frozen_open(past)) is not None:
        return Frozen(seen)
    mean = _cold_mean(past)
    if mean is None or any(one.subject == "thawed" for one in past[Sighting].within(COLD_DAYS)):
        return None
    return Frozen(None, mean)


def _cold_mean(past: Past) -> float | None:
    """The mean of the last five days where it is below the number; None where it is not, or not known."""
    mean = mean_c(past.lawnwide(Weather), past.day, COLD_DAYS, COLD_NEEDS)
    return mean if mean is not None and mean < in_force(past.lawn, "feed-closed", "frozen-mean") - _ROUNDING else None


def high_on(past: Past, day: int) -> float | None:
    """The high of that day (an ordinal) in C; None when none is on file."""
    highs = [entry.high_c for entry in past.lawnwide(Weather).between(day, day) if entry.high_c is not None]
    return highs[-1] if highs else None


def is_hot(past: Past, high_c: float | None) -> bool:
    """Whether quick nitrogen may burn at such a high."""
    return high_c is not None and high_c >= in_force(past.lawn, "feed-heat", "high") - _ROUNDING


def hot_day(past: Past) -> bool:
    """Whether the past's own day is a hot one, as far as is on file."""
    return is_hot(past, high_on(past, past.day))
