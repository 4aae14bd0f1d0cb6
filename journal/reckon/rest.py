"""A lawn at rest in drought: since when, and when it last had water enough to stay alive."""

from datetime import date

from journal.facts.rounding import reaches
from journal.reckon.threshold import in_force
from journal.record.entry import Entry
from journal.record.kinds.sighting import Sighting
from journal.season.growth import GROWING, dormant_open, next_start
from journal.season.history import Past
from journal.season.water import WATER, rain_days, water_days

REST: tuple[type[Entry], ...] = (*GROWING, *WATER)
"""What this file looks at."""


def resting_since(past: Past) -> Sighting | None:
    """The first `see dormant` of the rest that is open; the later ones say only that it is still brown."""
    first = dormant_open(past)
    if first is None:
        return None
    for seen in reversed(past[Sighting].since(first.day - 366)):
        if seen.subject == "green":
            break
        if seen.subject == "dormant" and seen.date <= first.date:
            lapses = next_start(past.lawn, seen.date)
            if lapses is not None and lapses <= past.date:
                break
            first = seen
    return first


def thirsty_since(past: Past, since: date) -> date:
    """The day from which on it is without: the first of the rest, or the last on which enough had come together.

    A watering of unknown depth counts as enough. What came today counts.
    """
    enough = in_force(past.lawn, "dormant-thirst", "water")
    first = since.toordinal()
    rain, waterings = rain_days(past, first, past.day), water_days(past, first, past.day)
    total, from_day = 0.0, first
    for day in sorted(rain.keys() | waterings.keys()):
        came = waterings.get(day, ())
        total += rain.get(day, 0.0) + sum(one.depth_mm or 0.0 for one in came)
        if reaches(total, enough) or any(one.depth_mm is None or one.deep for one in came):
            total, from_day = 0.0, day
    return date.fromordinal(from_day)
