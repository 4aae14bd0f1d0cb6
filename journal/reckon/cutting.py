"""When the next cut of a lawn is due: one count for the plan and for what is late."""

from dataclasses import dataclass
from datetime import date, timedelta

from journal.facts.growth import LATE_GAP, CutGap, cut_gap
from journal.reckon.threshold import in_force
from journal.record.entry import Entry
from journal.record.kinds.mowing import Mowing
from journal.record.lawn import Lawn
from journal.season.growth import EARLY_DAYS, GROWING, green_up, northern_day
from journal.season.history import Past
from journal.season.remembered import remembered
from journal.season.water import WATER, dry_spell

AFTER_DRY_DAYS = 7
"""So long after a dry spell a cut is not late: judgment."""

CUTTING: tuple[type[Entry], ...] = (Mowing, *GROWING, *WATER)
"""What this file looks at."""


@dataclass(frozen=True, slots=True)
class CutDue:
    """The next cut of a season that runs: it opens on a day, and its lateness is counted from `since`, day 0.

    `mown` is the last cut of the season; `green` the day the lawn turned green again, where that decides; `kept` the
    day from which on the book was kept, where that decides.
    """

    opens: date
    since: date
    mown: Mowing | None
    green: date | None
    kept: date | None


def cut_due(past: Past, start: date) -> CutDue:
    """The next cut of the season that began on `start`.

    A cut up to three weeks before it counts as the first of the season; without one the first comes two weeks into
    growth. After a rest it counts from the green-up at the earliest, and lateness never from before the book.
    """
    lawn, kept = past.lawn, past.kept_since(Mowing)
    every = timedelta(round(in_force(lawn, "mow-gap", "step-days")))
    last = past[Mowing].last
    mown = last if last is not None and last.date >= start - timedelta(EARLY_DAYS) else None
    first = start + timedelta(round(in_force(lawn, "mow-gap", "first-days")))
    since = max(mown.date, start) if mown else first
    opens = mown.date + every if mown else first
    seen = green_up(past)
    green = seen.date if seen is not None and seen.date >= since else None
    if green is not None:
        since, opens = green, green + every
    counts_from_book = kept is not None and kept > since
    return CutDue(opens, kept if kept and counts_from_book else since, mown, green, kept if counts_from_book else None)


def gap_allowed(lawn: Lawn, day: date, season_ends: date) -> CutGap:
    """How long may lie between two cuts on that day; `days` is the default, its number's name tells whose holds."""
    if day > season_ends:
        return LATE_GAP
    here = northern_day(lawn, day).on(day.year)
    return cut_gap(here, here + (season_ends - day))


def last_fine_day(lawn: Lawn, since: date, season_ends: date) -> date:
    """The last day on which the cut is not late: the gap allowed on each day decides."""
    day = since
    while True:
        tomorrow = day + timedelta(1)
        if (tomorrow - since).days > in_force(lawn, "mow-gap", gap_allowed(lawn, tomorrow, season_ends).number):
            return day
        day = tomorrow


@remembered
def dry_spell_ended(past: Past) -> date | None:
    """The first day, within the last week, on which it was no longer too dry to grow; None where there was none.

    Grass needs some days to grow again after rain.
    """
    if too_dry_to_grow(past):
        return None
    days = (past.date - timedelta(back) for back in range(AFTER_DRY_DAYS + 1))
    return next((day for day in days if too_dry_to_grow(_at(past, day - timedelta(1)))), None)


def _at(past: Past, day: date) -> Past:
    return past.history.on(past.zone, day, past.watches)


@remembered
def too_dry_to_grow(past: Past) -> bool:
    """Whether a zone that is not irrigated had so little water that it hardly grows, by the owner's numbers."""
    zone = past.lawn.zone(past.zone)
    if zone is None or zone.irrigated:
        return False
    days = round(in_force(past.lawn, "mow-gap", "dry-days"))
    return dry_spell(past, days, in_force(past.lawn, "mow-gap", "dry-water"))
