"""Cuts that are late, too early, or at the wrong height."""

from collections.abc import Callable, Iterator
from datetime import timedelta

from journal.facts.citation import Basis
from journal.facts.rounding import exceeds, reaches
from journal.facts.sources import judgment, published
from journal.reckon.cut_height import CUT_HEIGHT, cut_range
from journal.reckon.cutting import (
    AFTER_DRY_DAYS,
    CUTTING,
    CutDue,
    cut_due,
    dry_spell_ended,
    gap_allowed,
    too_dry_to_grow,
)
from journal.reckon.low_cut import LOW_CUT, advised_low
from journal.reckon.near_a_cut import LONGEST_DAYS, NEAR_A_CUT, cut_from, days_without_a_cut
from journal.record.day import MonthDay
from journal.record.entry import Entry
from journal.record.kinds.cultivation import Cultivation
from journal.record.kinds.intention import Intention
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Height, Sighting
from journal.record.kinds.watering import Schedule, Watering
from journal.record.kinds.weather import Rain, Weather
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.reach import intended, running
from journal.rules.turns import Reach, Site, after, at, each_year, kept_since, months, only, seasons
from journal.rules.use_days import each_day_after_use
from journal.rules.words import days, length, on
from journal.season.growth import began, dormant_open, season_at_hand
from journal.season.history import Past
from journal.season.stand import COUNTS_FROM_DAY, SEEDBED_DAYS, STAND, day_zero, in_seedbed, sown

LONG_GAP = 14
"""From so many days the headline says so."""

LONGEST_DRY = 60
"""No owner can ask for more dry days."""

GRACE_ENDS = AFTER_DRY_DAYS + 1

_GAPS = ("days", "slow-days", "late-days")
_ONE_THIRD: tuple[Basis, ...] = (published("isu-mowing", "purdue-ay8", note="never more than a third at once"),)
_GREEN: tuple[Basis, ...] = (judgment("after a rest it counts from the day it was green again"),)


def _rest(entry: Entry, site: Site) -> Iterator[int]:
    """When it rests, and how long after green-up a cut is late."""
    if isinstance(entry, Sighting) and entry.subject in ("dormant", "green"):
        yield from sorted({0, *(round(site.number("mow-gap", name)) for name in _GAPS)})


def _unwatered(reach: Reach) -> Reach:
    """Where a zone is irrigated nothing is asked of its water."""

    def only_there(entry: Entry, site: Site) -> Iterator[int]:
        zone = site.lawn.zone(site.zone)
        if zone is None or not zone.irrigated:
            yield from reach(entry, site)

    return only_there


def _rained(entry: Entry, site: Site) -> Iterator[int]:
    """A gauge ends a dry spell on the day it was read, and its water leaves the window a day at a time."""
    days = round(site.number("mow-gap", "dry-days"))
    back = (entry.date - (entry.since or entry.date)).days if isinstance(entry, Rain) else 0
    yield from sorted({0, GRACE_ENDS, *range(max(0, days - back), days + 1 + GRACE_ENDS)})


def _dry_days(entry: Entry, site: Site) -> Iterator[int]:
    days = round(site.number("mow-gap", "dry-days"))
    yield from sorted({0, GRACE_ENDS, days, days + GRACE_ENDS})


def _timed(entry: Entry, site: Site) -> Iterator[int]:
    yield from running(round(site.number("mow-gap", "dry-days")) + GRACE_ENDS)(entry, site)


@rule(
    "mow-gap",
    levels=(Level.LATE,),
    watches=(*CUTTING, Seeding, *NEAR_A_CUT),
    turns=(
        *each_day_after_use(days_without_a_cut, LONGEST_DAYS),
        after(Mowing, *_GAPS, SEEDBED_DAYS + 1),
        after(Seeding, COUNTS_FROM_DAY, SEEDBED_DAYS),
        only(Sighting, _rest, LONGEST_DRY),
        only(Watering, _unwatered(_dry_days), LONGEST_DRY + GRACE_ENDS),
        only(Weather, _unwatered(_dry_days), LONGEST_DRY + GRACE_ENDS),
        only(Schedule, _unwatered(_timed)),
        only(Rain, _unwatered(_rained), LONGEST_DRY + GRACE_ENDS),
        at(seasons, "first-days", *(("first-days", gap) for gap in _GAPS), *_GAPS, -21, COUNTS_FROM_DAY, SEEDBED_DAYS),
        at(kept_since(Mowing), *_GAPS),
        at(months),
    ),
    basis=_ONE_THIRD,
)
def mow_gap(past: Past, n: Numbers) -> Finding | None:
    """Too long since the last cut while the grass grows."""
    zone, start, window = past.lawn.zone(past.zone), began(past), season_at_hand(past)
    if start is None or window is None or past.kept_since() is None or zone is None or zone.mowing == "service":
        return None
    if dormant_open(past) or in_seedbed(past):
        return None
    due = cut_due(past, start)
    gap = past.day - due.since.toordinal()
    allowed = gap_allowed(past.lawn, past.date, window[1])
    if gap <= n.days(allowed.number) or too_dry_to_grow(past) or dry_spell_ended(past) is not None:
        return None
    if cut_from(past) is not None:
        return None
    counted = due.kept or due.green or due.mown
    long = ", two weeks and more" if counted and gap >= LONG_GAP > allowed.days else ""
    return Finding(
        level=Level.LATE,
        headline=f"not mown for {days(gap)}{long}" if counted else "not mown yet this season",
        why=f"{_since(past, due)}; more than {days(n.days(allowed.number))} is late at this time of year",
        do="mow, and take no more than a third of the height at once",
        clears="a mowing",
        evidence=(due.mown.id,) if due.mown else (),
        numbers=(allowed.number,),
        basis=_GREEN if due.green and not due.kept else (),
    )


def _since(past: Past, due: CutDue) -> str:
    if due.kept is not None:
        return f"no cut since the book was begun {on(due.kept, past)}"
    if due.green is not None:
        return f"green again {on(due.green, past)}, no cut since"
    if due.mown is not None:
        return f"last cut {on(due.mown.date, past)}"
    return f"growth began {on(began(past) or due.since, past)}, days are counted from {on(due.since, past)}"


@rule(
    "mow-first-early",
    levels=(Level.LOSS, Level.NOTE),
    watches=(*STAND, Height),
    turns=(
        after(Seeding, "days"),
        after(Mowing),
        after(Height),
        at(seasons, "days"),
    ),
    basis=(),
)
def mow_first_early(past: Past, n: Numbers) -> Finding | None:
    """New grass cut before it holds."""
    seeding, zero = sown(past), day_zero(past)
    if seeding is None or zero is None or not 0 <= past.day - zero.toordinal() < n.days("days"):
        return None
    first, height, tall = zero.toordinal(), n["height"], n["tall"]
    stood = _measured(past, first + n.days("height-from-day"), lambda mm: reaches(mm, height))
    early = [m for m in past[Mowing].since(first) if _after_sowing(m, seeding) and (stood is None or m.day < stood)]
    if not early:
        return None
    stood_tall = _measured(past, first, lambda mm: exceeds(mm, tall))
    old_turf = not seeding.new and stood_tall is not None and early[0].day >= stood_tall
    young = early[0].day - first < n.days("loss-days")
    worst = early[0]
    opens = zero + timedelta(n.days("days"))
    return Finding(
        level=Level.LOSS if young and not old_turf else Level.NOTE,
        headline=f"mown on day {worst.day - first} after sowing",
        why=(
            f"sown {on(zero, past)}, cut {on(worst.date, past)}; the first cut comes on day {n.days('days')}, or once "
            f"{length(n['height'], past)} was measured from day {n.days('height-from-day')} on"
        ),
        do=(
            "old turf stands over the seed: cut it high, on dry soil, with a sharp blade and a light machine"
            if old_turf
            else f"no more cuts before {on(opens, past)}; keep off, and reseed what was torn out"
        ),
        clears=f"day {n.days('days')} after sowing",
        clears_on=opens,
        evidence=(seeding.id, *(m.id for m in early)),
    )


def _after_sowing(mowing: Mowing, seeding: Seeding) -> bool:
    """A cut on the day of sowing came before the seed, as the work goes, unless both times say otherwise."""
    if mowing.day != seeding.day:
        return True
    return mowing.time is not None and seeding.time is not None and mowing.time > seeding.time


def _measured(past: Past, since: int, enough: Callable[[float], bool]) -> int | None:
    """The first day from that one on with a height that is enough."""
    heights = past[Height].since(since)
    return next((h.day for h in heights if h.height_mm is not None and enough(h.height_mm)), None)


@rule(
    "mow-height",
    levels=(Level.NOTE,),
    watches=(*CUT_HEIGHT, *LOW_CUT),
    turns=(
        after(Mowing, "stands-days"),
        after(Seeding),
        after(Height),
        after(Cultivation),
        after(Intention, reach=intended),
        at(seasons, "stands-days"),
        at(each_year(MonthDay(6, 1), MonthDay(9, 1)), "stands-days"),
    ),
    basis=(),
)
def mow_height(past: Past, n: Numbers) -> Finding | None:
    """Cut lower or higher than suits the grass."""
    last = past[Mowing].last
    if last is None or last.height_mm is None or past.day - last.day >= n.days("stands-days"):
        return None
    fits = cut_range(past.history.on(past.zone, last.date, past.watches))
    if fits.holds(last.height_mm) or advised_low(past, last):
        return None
    for name in fits.numbers:
        n.stricter(name)
    low, high = fits.low_mm, fits.high_mm
    too_low = not reaches(last.height_mm, low)
    clears_on = last.date + timedelta(n.days("stands-days"))
    return Finding(
        level=Level.NOTE,
        headline=f"cut at {length(last.height_mm, past)}, {'low' if too_low else 'high'} for this grass",
        why=(
            f"mown {on(last.date, past)}; {length(low, past)} to {length(high, past)} suits it then"
            + (f" ({', '.join(fits.reasons)})" if fits.reasons else "")
        ),
        do=(
            f"set the mower up to {length(low, past)} or more"
            if too_low
            else f"come down towards {length(high, past)}, a third at a time"
        ),
        clears=f"a cut in that range, or {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=(last.id,),
        numbers=fits.numbers,
    )
