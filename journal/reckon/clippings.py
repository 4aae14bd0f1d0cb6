"""Clippings that hold what was sprayed on them, and how long they stay on the lawn."""

from dataclasses import dataclass
from datetime import date, timedelta

from journal.reckon.protection import PROTECTED
from journal.reckon.threshold import in_force
from journal.reckon.uses import Use, uses
from journal.record.entry import Entry
from journal.record.kinds.mowing import Mowing
from journal.season.growth import season
from journal.season.history import Past
from journal.season.hours import Within, within_hours

CLIPPINGS: tuple[type[Entry], ...] = (Mowing, *PROTECTED)
"""What this file looks at."""

WHOLE_SEASON = frozenset({"clopyralid", "aminopyralid", "picloram", "dithiopyr", "quinclorac"})
"""What lasts in clippings and compost: no clippings leave the lawn for the rest of the season."""

LOOK_BACK_DAYS = 300
"""No season of growth is longer, and a lawn that is cut more seldom is not followed further."""


@dataclass(frozen=True, slots=True)
class Treated:
    """A use whose clippings are to stay where they fall; `sure` unless the order of the day is not known."""

    use: Use
    mowings: int
    """Days on which it was mown since, the day in question among them."""
    season: bool
    sure: bool

    @property
    def starter(self) -> bool:
        """Whether it went down with the seed: those clippings are bagged, for the seedlings' sake, and kept apart."""
        return self.use.product is not None and self.use.product.kind == "starter" and not self.season

    @property
    def stays(self) -> bool:
        """Whether the clippings are to be left on the lawn."""
        return not self.starter


def treated_clippings(past: Past, mowing: Mowing | None = None) -> Treated | None:
    """What was put down that a cut of the past's day would carry away; None where nothing was.

    A use that surely came before the cut goes first, one of the lawn before one of a spot, a starter last; then the
    newest.
    """
    found = [one for use in uses(past, past.day - LOOK_BACK_DAYS) if (one := _treated(past, use, mowing)) is not None]
    return max(found, key=lambda one: (one.stays, one.sure, not one.use.spot, one.use.day), default=None)


def _treated(past: Past, use: Use, mowing: Mowing | None) -> Treated | None:
    if not use.against_weeds:
        return None
    order = Within.YES
    if mowing is not None and mowing.day == use.day:
        order = within_hours(use.date, use.time, mowing.date, mowing.time, 24)
        if order is Within.NO:
            return None
    lasting = any(one.name in WHOLE_SEASON for one in (use.product.actives if use.product else ()))
    within = lasting and past.date <= season_ends(past, use.date)
    if not within and past.day - use.day >= in_force(past.lawn, "clippings-treated", "days"):
        return None
    count = past[Mowing].days_between(use.day + 1, past.day - 1) + 1
    if not within and count > in_force(past.lawn, "clippings-treated", "mowings"):
        return None
    return Treated(use, count, within, order is Within.YES)


def season_ends(past: Past, day: date) -> date:
    """The last day of growth of the season of that day, as far as is looked back; else the last day of the year."""
    window = season(past.lawn, day)
    end = window[1] if window is not None else date(day.year, 12, 31)
    return min(end, day + timedelta(LOOK_BACK_DAYS - 1))
