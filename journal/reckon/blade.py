"""How worn the mower's blade is: by the cuts since it was sharpened, over the whole lawn."""

from dataclasses import dataclass
from datetime import date, timedelta

from journal.reckon.threshold import in_force
from journal.record.entry import Entry
from journal.record.kinds.equipment import Equipment
from journal.record.kinds.mowing import Mowing
from journal.season.history import LAWN, Past

BLADE: tuple[type[Entry], ...] = (Mowing, Equipment)
"""What this file looks at."""


@dataclass(frozen=True, slots=True)
class Wear:
    """Cuts since the blade was sharpened, or since the book was begun where that is later.

    `dates` on which anything was mown, the `last` of them, `minutes` of those that say how long it took, `untimed`
    those that don't, and `share` of what a blade bears: 1 or more is due.
    """

    sharpened: Equipment | None
    last: date | None
    dates: int
    minutes: float
    untimed: int
    share: float


def sharpened(past: Past) -> Equipment | None:
    """When the blade was last sharpened or replaced, whatever zone that was written down for."""
    found = [last for zone in (LAWN, *past.lawn.zone_names) if (last := past.elsewhere(zone)[Equipment].last)]
    return max(found, key=lambda one: (one.day, one.id), default=None)


def wear(past: Past) -> Wear | None:
    """The wear of the blade by the past's day; None before the book was begun.

    The cuts of one date count once. A service mows with a blade of its own.
    """
    begun, last = past.history.kept_since, sharpened(past)
    since = max((day for day in (begun, last.date if last else None) if day is not None), default=None)
    if since is None:
        return None
    first = since.toordinal() + (1 if last is not None and last.date == since else 0)
    by_day: dict[int, dict[str, float | None]] = {}
    for zone in past.lawn.zones:
        if zone.mowing == "service":
            continue
        for mowing in past.elsewhere(zone.name)[Mowing].since(first):
            if not mowing.by_service:
                by_day.setdefault(mowing.day, {})[mowing.id] = mowing.minutes
    minutes, untimed = 0.0, 0
    for cuts in by_day.values():
        timed = [cut for cut in cuts.values() if cut is not None]
        minutes += sum(timed)
        untimed += not timed
    bears = in_force(past.lawn, "mow-blade", "minutes"), in_force(past.lawn, "mow-blade", "mowings")
    newest = date.fromordinal(max(by_day)) if by_day else None
    return Wear(last, newest, len(by_day), minutes, untimed, minutes / bears[0] + untimed / bears[1])


def sharp_for(past: Past, day: date) -> bool:
    """Whether the blade was sharpened in the weeks before that day, or the book is too young to tell."""
    weeks = timedelta(round(in_force(past.lawn, "mow-blade", "first-days")))
    begun, last = past.history.kept_since, sharpened(past)
    if begun is None or day < begun + weeks:
        return True
    return last is not None and last.date > day - weeks
