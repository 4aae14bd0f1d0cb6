"""Water on a zone day by day: logged, assumed from the timer's schedule, and rain, each once."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from journal.facts.rounding import reaches
from journal.record.entry import Entry
from journal.record.kinds.watering import Schedule, Watering
from journal.record.kinds.weather import Rain, Weather
from journal.record.zone import Zone
from journal.season.history import Past

WATER: tuple[type[Entry], ...] = (Watering, Schedule, Rain, Weather)
"""What this file looks at."""

SPREAD_DAYS = 92
"""A gauge that was read more rarely than this is believed for its last days only."""


DRY_NEEDS = 15
"""Days with weather on file without which, and without a gauge, nothing is said of a dry spell: judgment."""


@dataclass(frozen=True, slots=True)
class Irrigation:
    """One watering of a zone. `depth_mm` None when not known; `assumed` when only the schedule tells of it."""

    day: int
    depth_mm: float | None
    deep: bool
    assumed: bool
    entry: Watering | Schedule


def water_days(past: Past, first: int, last: int) -> dict[int, tuple[Irrigation, ...]]:
    """Day (an ordinal) -> waterings, for the days between both on which there were any, none after the past's own.

    Logged ones first, then the schedule's. Spots don't count.
    """
    zone = past.lawn.zone(past.zone)
    found: dict[int, list[Irrigation]] = {}
    for entry in past[Watering].between(first, last):
        if not entry.spot and entry.spot_m2 is None:
            depth = _depth(entry, zone)
            found.setdefault(entry.day, []).append(Irrigation(entry.day, depth, entry.deep, False, entry))
    if past[Schedule]:
        for day in range(first, min(last, past.day) + 1):
            for timer in schedules_on(past, day):
                found.setdefault(day, []).append(Irrigation(day, _scheduled(timer, zone), False, True, timer))
    return {day: tuple(waterings) for day, waterings in sorted(found.items())}


def schedules_on(past: Past, day: int) -> tuple[Schedule, ...]:
    """What the timer runs on that day.

    Schedules written on one day stand together (a timer may start twice a day); a later day's replace them from
    their own start, and `off` ends all before it.
    """
    found: list[Schedule] = []
    written = None
    for timer in reversed(past[Schedule].all):
        if (timer.since or timer.date).toordinal() > day:
            continue
        if written is not None and timer.day != written:
            break
        written = timer.day
        if timer.off:
            break
        found.append(timer)
    return tuple(timer for timer in reversed(found) if _runs(timer, date.fromordinal(day)))


def _runs(timer: Schedule, day: date) -> bool:
    return (timer.until is None or day <= timer.until) and (not timer.weekdays or day.weekday() in timer.weekdays)


def _depth(entry: Watering, zone: Zone | None) -> float | None:
    """As stated, else minutes at the zone's rate (circuits by their share of the zone); mean over the zone, in mm."""
    depth = entry.depth_mm
    if depth is None and entry.circuits:
        depth = _circuits(entry.circuits, zone)
    elif depth is None:
        depth = _at_rate(entry.minutes, zone)
    if depth is None or entry.share is None:
        return depth
    return depth * entry.share / 100


def _circuits(runs: Iterable[tuple[str, float]], zone: Zone | None) -> float | None:
    known = {circuit.name.casefold(): circuit for circuit in zone.circuits} if zone else {}
    total = 0.0
    for name, minutes in runs:
        circuit = known.get(name.casefold())
        if circuit is None:
            return None
        total += circuit.share / 100 * circuit.rate_mm_h * minutes / 60
    return total


def _scheduled(timer: Schedule, zone: Zone | None) -> float | None:
    return timer.depth_mm if timer.depth_mm is not None else _at_rate(timer.minutes, zone)


def _at_rate(minutes: float | None, zone: Zone | None) -> float | None:
    rate = zone.water_rate_mm_h if zone else None
    return None if minutes is None or rate is None else rate * minutes / 60


def rain_days(past: Past, first: int, last: int) -> dict[int, float]:
    """Day (an ordinal) -> rain in mm, for the days between both for which any is on file, 0 included.

    A gauge in the zone beats one that names no zone, and a gauge beats the weather; they are never added. A reading
    for several days is spread evenly over them, and yields to a reading of one day.
    """
    fallen: dict[int, float] = {}
    for weather in past.lawnwide(Weather).between(first, last):
        if weather.rain_mm is not None:
            fallen[weather.day] = weather.rain_mm
    for seen in (past.lawnwide(Rain), past[Rain]):
        fallen |= _gauged(seen.between(first, last + SPREAD_DAYS), first, last)
    return fallen


def _gauged(readings: Iterable[Rain], first: int, last: int) -> dict[int, float]:
    single: dict[int, float] = {}
    spread: dict[int, float] = {}
    for rain in readings:
        if rain.depth_mm is None:
            continue
        since = rain.since.toordinal() if rain.since else rain.day
        if since >= rain.day:
            if first <= rain.day <= last:
                single[rain.day] = single.get(rain.day, 0.0) + rain.depth_mm
            continue
        a_day = rain.depth_mm / (rain.day - since + 1)
        for day in range(max(first, since), min(last, rain.day) + 1):
            spread[day] = a_day
    return spread | single


def rain_mm(past: Past, day: int) -> float | None:
    """Rain on that day (an ordinal) in mm; None when none is on file, not even a nought."""
    return rain_days(past, day, day).get(day)


def depth_mm(past: Past, first: int, last: int) -> float | None:
    """Rain and waterings of known depth from one day to the other (ordinals), in mm; None when nothing is on file."""
    rain = rain_days(past, first, last)
    depths = [w.depth_mm for day in water_days(past, first, last).values() for w in day]
    known = [depth for depth in depths if depth is not None]
    return sum(rain.values()) + sum(known) if rain or known else None


def soaked(past: Past, first: int, last: int) -> bool:
    """Whether any watering from one day to the other was `deep`."""
    return any(w.deep for day in water_days(past, first, last).values() for w in day)


def water_on_file(past: Past, days: int = 14) -> bool:
    """Whether a watering, a schedule that runs, or rain (a nought too) is on file in the last so many days."""
    first = past.day - days + 1
    return bool(water_days(past, first, past.day) or rain_days(past, first, past.day))


def dry_spell(past: Past, days: int, least_mm: float) -> bool:
    """Whether the water on file of the last so many days was less than that: nothing grows then.

    Without a gauge, and with weather on too few days, nothing is known and it is not called dry.
    """
    first = past.day - days + 1
    weather = {w.day for w in past.lawnwide(Weather).since(first) if w.rain_mm is not None}
    gauged = past[Rain].since(first) or past.lawnwide(Rain).since(first)
    if not gauged and len(weather) < DRY_NEEDS:
        return False
    depth = depth_mm(past, first, past.day)
    return depth is not None and not reaches(depth, least_mm) and not soaked(past, first, past.day)


def timer_ran(past: Past, days: int) -> bool:
    """Whether a timer watered in the last so many days: what it does is taken for done."""
    first = past.day - days + 1
    return any(one.assumed for found in water_days(past, first, past.day).values() for one in found)
