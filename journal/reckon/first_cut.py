"""The first cut of new grass: from when on, by when, and which one it was."""

from dataclasses import dataclass
from datetime import date, timedelta

from journal.facts.mixture import Mixture, bluegrass_percent
from journal.facts.rounding import reaches
from journal.reckon.threshold import in_force
from journal.record.entry import Entry
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Height, Sighting
from journal.record.kinds.weather import Weather
from journal.season.growth import began, season
from journal.season.history import Past
from journal.season.stand import COUNTS_FROM_DAY

FIRST_CUT: tuple[type[Entry], ...] = (Seeding, Mowing, Height, Sighting, Weather)
"""What this file looks at."""

MUCH_BLUEGRASS = 50.0
BEST_DAYS = 7


@dataclass(frozen=True, slots=True)
class FirstCut:
    """First and last good day for it; `tall` the measurement from which on it is late at once."""

    opens: date
    latest: date
    tall: Height | None
    much_bluegrass: bool

    def late(self, day: date) -> bool:
        """Whether on that day it should have been done."""
        return day > self.latest or (self.tall is not None and day >= self.tall.date)


def tall_enough(past: Past, zero: date) -> Height | None:
    """The first measurement, from day 14 on, that lets it be cut before its day: 3.5 in or more."""
    return _measured(past, zero, "height")


def _measured(past: Past, zero: date, name: str) -> Height | None:
    enough = in_force(past.lawn, "mow-first-early", name)
    from_day = zero.toordinal() + round(in_force(past.lawn, "mow-first-early", "height-from-day"))
    seen = past[Height].since(from_day)
    return next((h for h in seen if h.height_mm is not None and reaches(h.height_mm, enough)), None)


def first_cut(past: Past, zero: date) -> Mowing | None:
    """The first mowing that counts: from day 21, or sooner once it stood tall enough."""
    day = zero.toordinal() + COUNTS_FROM_DAY
    measured = tall_enough(past, zero)
    return past[Mowing].first_since(day if measured is None else min(day, measured.day))


def first_window(past: Past, zero: date, mix: Mixture) -> FirstCut:
    """When it is to come; carried over to spring when growth ends before it could be cut."""
    lawn = past.lawn
    opens = zero + timedelta(round(in_force(lawn, "mow-first-early", "days")))
    measured, tall = tall_enough(past, zero), _measured(past, zero, "tall")
    if measured is not None:
        opens = min(opens, measured.date)
    much = bluegrass_percent(mix) >= MUCH_BLUEGRASS
    latest = zero + timedelta(round(in_force(lawn, "mow-first-late", "days-bluegrass" if much else "days")))
    if tall is not None:
        latest = min(latest, tall.date)
    window, sown_in = season(lawn, past.date), season(lawn, zero)
    if window is None or sown_in is None:
        return FirstCut(opens, max(opens, latest), tall, much)
    if opens > sown_in[1] or past.date > sown_in[1]:
        start = window[0] if window[0] > sown_in[1] else (season(lawn, sown_in[1] + timedelta(1)) or window)[0]
        seen = began(past)
        start = min(start, seen) if seen is not None and seen > sown_in[1] else start
        spring = start + timedelta(round(in_force(lawn, "mow-gap", "first-days")))
        grown = tall if tall is not None and tall.date >= start else None
        return FirstCut(spring, spring + timedelta(BEST_DAYS), grown, much)
    return FirstCut(opens, max(opens, min(latest, sown_in[1])), tall, much)
