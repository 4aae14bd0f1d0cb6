"""How worn the mower's blade is: by the cuts since it was sharpened, over the whole lawn."""

from dataclasses import dataclass
from datetime import date, timedelta
from heapq import merge
from itertools import groupby

from journal.reckon.threshold import in_force
from journal.record.entry import Entry
from journal.record.kinds.equipment import Equipment
from journal.record.kinds.mowing import Mowing
from journal.season.history import LAWN, Past

BLADE: tuple[type[Entry], ...] = (Mowing, Equipment)
"""What this file looks at."""

_ROUNDING = 1e-9


@dataclass(frozen=True, slots=True)
class Wear:
    """Cuts since the blade was sharpened, or since the book was begun where that is later.

    `dates` on which anything was mown, the `last` of them, `minutes` of those that say how long it took, and `share`
    of what a blade bears: 1 or more is due, since the cut of the day `worn`. What is cut beyond that is `more`, and
    not counted.
    """

    sharpened: Equipment | None
    last: date | None
    dates: int
    minutes: float
    share: float
    more: bool
    worn: date | None = None

    @property
    def cuts(self) -> str:
        """`8 cuts`, `12 cuts and more, 9.5 h of them timed`."""
        timed = f", {self.minutes / 60:.1f} h of them timed" if self.minutes else ""
        return f"{self.dates} cuts{' and more' if self.more else ''}{timed}"


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
    cuts = [past.elsewhere(zone.name)[Mowing].since(first) for zone in past.lawn.zones if zone.mowing != "service"]
    bears = in_force(past.lawn, "mow-blade", "minutes"), in_force(past.lawn, "mow-blade", "mowings")
    minutes, untimed, dates, share = 0.0, 0, 0, 0.0
    newest: date | None = None
    for day, mown in groupby(merge(*cuts, key=_day), key=_day):
        timed = {one.id: one.minutes for one in mown if not one.by_service}
        if not timed:
            continue
        if share >= 1:
            last_cut = max(one[-1].date for one in cuts if one)
            return Wear(last, last_cut, dates, minutes, share, more=True, worn=newest)
        known = [spent for spent in timed.values() if spent is not None]
        minutes, untimed, dates, newest = minutes + sum(known), untimed + (not known), dates + 1, date.fromordinal(day)
        share = minutes / bears[0] + untimed / bears[1] + _ROUNDING
    return Wear(last, newest, dates, minutes, share, more=False, worn=newest if share >= 1 else None)


def _day(mowing: Mowing) -> int:
    return mowing.day


def sharp_for(past: Past, day: date) -> bool:
    """Whether the blade was sharpened in the weeks before that day, or the book is too young to tell."""
    weeks = timedelta(round(in_force(past.lawn, "mow-blade", "first-days")))
    begun, last = past.history.kept_since, sharpened(past)
    if begun is None or day < begun + weeks:
        return True
    return last is not None and last.date > day - weeks
