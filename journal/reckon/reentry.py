"""When people and pets may be on treated ground again: the label's words first, else dry, or watered in and dry.

Nobody is told that it is safe: it is said what is still wanted, and since when.
"""

import re
from dataclasses import dataclass
from datetime import datetime, timedelta

from journal.reckon.threshold import in_force
from journal.reckon.uses import Use
from journal.reckon.watering_in import AFTER_USE, Watered, WaterIn, water_in, watered
from journal.record.entry import Entry
from journal.record.kinds.sighting import Sighting
from journal.season.history import Past
from journal.season.hours import Within, days_of

REENTRY: tuple[type[Entry], ...] = (*AFTER_USE, Sighting)
"""What this file looks at."""

SPRAY_WORDS, GRANULE_WORDS = "dry", "watered in and dry"
_SPAN = re.compile(r"(\d+(?:\.\d+)?)\s*-?\s*(hours?|hrs?|h|days?|d|weeks?|wk)\b", re.IGNORECASE)
_HOURS = {"h": 1, "d": 24, "w": 168}


@dataclass(frozen=True, slots=True)
class Reentry:
    """What one use waits for. `met` is the day (an ordinal) from which on it is met; None while it is not in sight.

    `words` end the sentence `until ...`. `dry` is the sighting that met it, where one did. Of granules `wanted` is the
    depth in mm that takes them in, and `water` what has come.
    """

    use: Use
    words: str
    by_label: bool
    met: int | None
    dry: Sighting | None
    wanted_mm: float
    water: Watered | None


def label_hours(text: str) -> float:
    """The hours that a label's words name, the longest of them; 0 where they name none."""
    found = [float(n) * _HOURS[unit[0].casefold()] for n, unit in _SPAN.findall(text)]
    return max(found, default=0.0)


def reentry(past: Past, use: Use) -> Reentry:
    """What it waits for, as known at the end of the past's day."""
    text = use.label.reentry
    hours = label_hours(text)
    words = text.removeprefix("until ").strip() or (SPRAY_WORDS if use.spray else GRANULE_WORDS)
    if use.spray:
        return Reentry(use, words, bool(text), *_dried(past, use, hours, text), 0.0, None)
    stated = water_in(use, past.lawn)
    depth = _depth(past, stated)
    water = watered(past, use, depth)
    met, dry = _taken_in(past, use, water, hours, stated is not None)
    return Reentry(use, words, bool(text), met, dry, depth, water)


def _depth(past: Past, stated: WaterIn | None) -> float:
    return in_force(past.lawn, "reentry", "depth") if stated is None else stated.depth_mm


def _after_hours(use: Use, hours: float) -> int:
    """The day after the hours, none being known; the day of the use where there are none."""
    return use.day + days_of(hours) + 1 if hours else use.day


def _dried(past: Past, use: Use, hours: float, text: str) -> tuple[int, Sighting | None]:
    """A spray: seen dry, or the next day; once the label's hours are over."""
    over = max(use.day + 1, _after_hours(use, hours))
    if hours and "dry" not in text.casefold():
        return over, None
    dry = next((one for one in _dry_seen(past, use.day) if _late_enough(use, one, hours)), None)
    return (dry.day, dry) if dry is not None and dry.day < over else (over, None)


def _taken_in(
    past: Past, use: Use, water: Watered, hours: float, depth_is_stated: bool
) -> tuple[int | None, Sighting | None]:
    """Granules: enough water, and then seen dry, or the next day. Hours alone never do.

    A watering that nobody measured is enough where no depth is stated, or where they were seen dry after it.
    """
    first = water.enough
    if first is None and not depth_is_stated:
        first = water.unmeasured
    seen_from = first if first is not None else water.unmeasured
    if seen_from is None:
        return None, None
    dry = next((one for one in _dry_seen(past, seen_from) if _late_enough(use, one, hours)), None)
    over = None if first is None else max(first + 1, _after_hours(use, hours))
    if dry is not None and (over is None or dry.day < over):
        return dry.day, dry
    return over, None


def _dry_seen(past: Past, since: int) -> list[Sighting]:
    return [one for one in past[Sighting].since(since) if one.subject == "dry"]


def _late_enough(use: Use, dry: Sighting, hours: float) -> bool:
    """Whether it was seen after the use and after the label's hours, as far as is known."""
    if use.time is not None and dry.time is not None:
        gone = datetime.combine(dry.date, dry.time) - datetime.combine(use.date, use.time)
        return gone >= timedelta(hours=hours)
    return dry.day >= _after_hours(use, hours)


def trod(past: Past, use: Use, traffic: Sighting) -> Within:
    """Whether somebody was on the ground before the condition of that use was met; PERHAPS where no time tells.

    The past is that of the day on which it was seen: what is logged later takes nothing back.
    """
    if traffic.day < use.day:
        return Within.NO
    timed = use.time is not None and traffic.time is not None
    if traffic.day == use.day and timed and traffic.time < use.time:  # type: ignore[operator]
        return Within.NO
    found = reentry(past, use)
    if use.spray and found.dry is None and timed and _hours_alone(found, traffic):
        return Within.NO
    if found.dry is not None and found.dry.day <= traffic.day:
        return _against_dry(use, traffic, found.dry)
    if found.met is not None and found.met <= traffic.day:
        return Within.NO
    return Within.YES if traffic.day > use.day or timed else Within.PERHAPS


def _hours_alone(found: Reentry, traffic: Sighting) -> bool:
    """Whether the label asks for hours and nothing else, and they were over."""
    use, hours = found.use, label_hours(found.use.label.reentry)
    if not hours or "dry" in use.label.reentry.casefold() or use.time is None or traffic.time is None:
        return False
    gone = datetime.combine(traffic.date, traffic.time) - datetime.combine(use.date, use.time)
    return gone >= timedelta(hours=hours)


def _against_dry(use: Use, traffic: Sighting, dry: Sighting) -> Within:
    if dry.day < traffic.day:
        return Within.NO
    if dry.time is not None and traffic.time is not None:
        return Within.NO if dry.time <= traffic.time else Within.YES
    timed = use.time is not None and traffic.time is not None
    return Within.YES if timed and traffic.day == use.day else Within.PERHAPS
