"""How tall the grass stood before a cut: as measured, else the least that it must have grown since the cut before.

The removed share is of the standing height: (H - h) / H. Cornell Gardening, The 'One-Third Rule'.
"""

from dataclasses import dataclass
from datetime import date, timedelta

from journal.facts.cut_growth import least_a_day_mm
from journal.facts.rounding import reaches
from journal.reckon.cutting import gap_allowed, too_dry_to_grow
from journal.reckon.threshold import in_force
from journal.record.entry import Entry
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Height, Sighting
from journal.season.growth import EARLY_DAYS, dormant_open, season_at_hand, southern
from journal.season.history import Past
from journal.season.stand import day_zero
from journal.season.water import WATER

HEIGHT_HOLDS_DAYS = 3
"""A measured height stands for the day it was taken and two more: judgment."""

STANDING: tuple[type[Entry], ...] = (Mowing, Seeding, Height, Sighting, *WATER)
"""What this file looks at."""


@dataclass(frozen=True, slots=True)
class Stood:
    """A height in mm before a cut, and the measurement it rests on; without one it is an estimate.

    `before` is the cut before, where one is on file; `in_time` whether no more days lie between both than are fine.
    """

    mm: float
    measured: Height | None
    before: Mowing | None
    in_time: bool = False


def stood(past: Past, cut: Mowing | None = None) -> Stood | None:
    """The standing height on the past's day before that day's cut, or before the one given; None where not known.

    An estimate counts from a cut of known height 7 to 21 days before, in the same season and after any sowing.
    """
    before = _cut_before(past)
    found = _measured(past, before, cut)
    return found if found is not None else _estimated(past, before)


def _cut_before(past: Past) -> Mowing | None:
    """The newest cut of an earlier day."""
    return past[Mowing].last_where(lambda one: one.day < past.day)


def _measured(past: Past, before: Mowing | None, cut: Mowing | None) -> Stood | None:
    """The last height of these days that was taken after the cut before, and not after this one."""
    heights = past[Height].within(HEIGHT_HOLDS_DAYS)
    for height in reversed(heights):
        if height.height_mm is None or (before is not None and height.day <= before.day and not _later(height, before)):
            continue
        if cut is not None and _later(height, cut):
            continue
        return Stood(height.height_mm, height, before)
    return None


def _later(height: Height, cut: Mowing) -> bool:
    """Whether it was measured after that cut: of one day only where both times say so."""
    if height.day != cut.day:
        return height.day > cut.day
    return height.time is not None and cut.time is not None and height.time > cut.time


def _estimated(past: Past, before: Mowing | None) -> Stood | None:
    if before is None or before.height_mm is None:
        return None
    gap = past.day - before.day
    least, most = (in_force(past.lawn, "mow-one-third", name) for name in ("least-gap", "most-gap"))
    window = season_at_hand(past)
    if not least <= gap <= most or window is None or before.date < window[0] - timedelta(EARLY_DAYS):
        return None
    zero = day_zero(past)
    if (zero is not None and before.date <= zero) or dormant_open(past) or too_dry_to_grow(past):
        return None
    share, south = in_force(past.lawn, "mow-one-third", "growth"), southern(past.lawn)
    days = (date.fromordinal(day) for day in range(before.day + 1, past.day + 1))
    grown = sum(least_a_day_mm(day.month, southern=south) for day in days if window[0] <= day <= window[1])
    allowed = gap_allowed(past.lawn, past.date, window[1])
    return Stood(before.height_mm + share * grown, None, before, gap <= in_force(past.lawn, "mow-gap", allowed.number))


def removed_share(stood_mm: float, cut_mm: float) -> float:
    """The share of the standing height that a cut takes, 0 where it takes nothing."""
    return max(0.0, (stood_mm - cut_mm) / stood_mm)


def two_thirds_mm(past: Past) -> float | None:
    """Two thirds of the height before the day's cut, in mm: no more than a third goes at once."""
    tall = _tall_mm(past)
    return None if tall is None else tall * 2 / 3


def _tall_mm(past: Past) -> float | None:
    """The height before the day's cut. What nothing tells of is as tall as the last cut of three weeks left it."""
    found = stood(past)
    if found is not None:
        return found.mm
    before, zero = _cut_before(past), day_zero(past)
    if before is None or (zero is not None and before.date <= zero):
        return None
    recent = past.day - before.day <= in_force(past.lawn, "mow-one-third", "most-gap")
    return before.height_mm if recent else None


def raised_mm(past: Past, aim_mm: float, tall_mm: float | None) -> float | None:
    """The lowest cut of the day, in mm, where one at `aim_mm` would take too much; None where it would not.

    `tall_mm` is the height where it was measured; else what is known of it counts.
    """
    if tall_mm is None:
        found = stood(past)
        tall_mm = None if found is not None and kept_up(found, aim_mm) else _tall_mm(past)
    share = in_force(past.lawn, "mow-one-third", "share") / 100
    if tall_mm is None or removed_share(tall_mm, aim_mm) <= share:
        return None
    return tall_mm * max(2 / 3, 1 - share)


def kept_up(found: Stood, cut_mm: float) -> bool:
    """Whether a cut came in time and no lower than the one before: no estimate blames it."""
    before = found.before.height_mm if found.before is not None else None
    return found.measured is None and found.in_time and before is not None and reaches(cut_mm, before)
