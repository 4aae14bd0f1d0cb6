"""Cuts that are late, too early, or at the wrong height."""

from datetime import date, timedelta

from journal.facts.citation import Basis
from journal.facts.growth import LATE_GAP, CutGap, cut_gap
from journal.facts.mixture import high_end_mm
from journal.facts.sources import published
from journal.record.day import MonthDay
from journal.record.kinds.cultivation import Cultivation
from journal.record.kinds.intention import Intention
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Height, Sighting
from journal.record.kinds.watering import Schedule
from journal.record.kinds.weather import Rain, Weather
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.reach import intended, running, spread_over
from journal.rules.turns import after, at, each_year, kept_since, months, seasons
from journal.rules.words import days, length, on
from journal.season.growth import EARLY_DAYS, GROWING, began, dormant_open, northern_day, season_at_hand
from journal.season.history import Past
from journal.season.stand import (
    COUNTS_FROM_DAY,
    SEEDBED_DAYS,
    STAND,
    day_zero,
    grass_mix,
    in_seedbed,
    intentions,
    sown,
    sown_mix,
)
from journal.season.water import WATER, depth_mm, soaked

LONG_GAP = 14
"""From so many days the headline says so."""

_SLACK_MM = 0.05
_WEATHER_NEEDS = 15
_GAPS = ("days", "slow-days", "late-days")
_ONE_THIRD: tuple[Basis, ...] = (published("isu-mowing", "purdue-ay8", note="never more than a third at once"),)


@rule(
    "mow-gap",
    levels=(Level.LATE,),
    watches=(Mowing, Seeding, *GROWING, *WATER),
    turns=(
        after(Mowing, *_GAPS, SEEDBED_DAYS + 1),
        after(Seeding, COUNTS_FROM_DAY, SEEDBED_DAYS),
        after(Sighting),
        after(WATER[0], "dry-days"),
        after(Schedule, reach=running(21)),
        after(Rain, reach=spread_over(21), within=21),
        after(Weather, "dry-days"),
        at(seasons, "first-days", *(("first-days", gap) for gap in _GAPS), *_GAPS, -21, COUNTS_FROM_DAY, SEEDBED_DAYS),
        at(kept_since, *_GAPS),
        at(months),
    ),
    basis=_ONE_THIRD,
)
def mow_gap(past: Past, n: Numbers) -> Finding | None:
    """Too long since the last cut while the grass grows."""
    zone = past.lawn.zone(past.zone)
    start, kept = began(past), past.history.kept_since
    if start is None or kept is None or zone is None or zone.mowing == "service":
        return None
    if dormant_open(past) or in_seedbed(past):
        return None
    last = past[Mowing].last
    counted = _counted_from(last, start, n)
    gap = past.day - max(counted, kept).toordinal()
    allowed = _gap_of(past)
    if gap <= n.days(allowed.number) or (not zone.irrigated and _dry(past, n)):
        return None
    long = ", two weeks and more" if gap >= LONG_GAP > allowed.days else ""
    if counted < kept:
        headline, since = f"not mown for {days(gap)}{long}", f"no cut since the book was begun {on(kept, past)}"
    elif last is not None and last.date >= start - timedelta(EARLY_DAYS):
        headline, since = f"not mown for {days(gap)}{long}", f"last cut {on(last.date, past)}"
    else:
        headline = "not mown yet this season"
        since = f"growth began {on(start, past)}, days are counted from {on(counted, past)}"
    return Finding(
        level=Level.LATE,
        headline=headline,
        why=f"{since}; more than {days(n.days(allowed.number))} is late at this time of year",
        do="mow, and take no more than a third of the height at once",
        clears="a mowing",
        evidence=(last.id,) if last else (),
        numbers=(allowed.number,),
    )


def _counted_from(last: Mowing | None, start: date, n: Numbers) -> date:
    """The last cut of the season (up to three weeks before it counts as its first day), else growth start + 14 d."""
    if last is not None and last.date >= start - timedelta(EARLY_DAYS):
        return max(last.date, start)
    return start + timedelta(n.days("first-days"))


def _gap_of(past: Past) -> CutGap:
    window = season_at_hand(past)
    if window is None or past.date > window[1]:
        return LATE_GAP
    here = northern_day(past.lawn, past.date).on(past.date.year)
    return cut_gap(here, here + (window[1] - past.date))


def _dry(past: Past, n: Numbers) -> bool:
    """Whether the water on file says that it was dry; without weather or a gauge nothing is said."""
    first = past.day - n.days("dry-days") + 1
    weather = {w.day for w in past.lawnwide(Weather).since(first) if w.rain_mm is not None}
    gauged = past[Rain].since(first) or past.lawnwide(Rain).since(first)
    if not gauged and len(weather) < _WEATHER_NEEDS:
        return False
    depth = depth_mm(past, first, past.day)
    return depth is not None and depth < n["dry-water"] and not soaked(past, first, past.day)


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
    first = zero.toordinal()
    early = [m for m in past[Mowing].since(first) if _after_sowing(m, seeding) and not _stood(past, n, first, m)]
    if not early:
        return None
    old_turf = not seeding.new and all(_stood_tall(past, n, first, m) for m in early)
    young = any(m.day - first < n.days("loss-days") for m in early)
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


def _stood(past: Past, n: Numbers, first: int, mowing: Mowing) -> bool:
    measured = past[Height].between(first + n.days("height-from-day"), mowing.day)
    return any(h.height_mm is not None and h.height_mm >= n["height"] - _SLACK_MM for h in measured)


def _stood_tall(past: Past, n: Numbers, first: int, mowing: Mowing) -> bool:
    measured = past[Height].between(first, mowing.day)
    return any(h.height_mm is not None and h.height_mm > n["tall"] + _SLACK_MM for h in measured)


@rule(
    "mow-height",
    levels=(Level.NOTE,),
    watches=(*STAND, Cultivation, Intention),
    turns=(
        after(Mowing, "stands-days", "before-seeding-days"),
        after(Seeding),
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
    low, high, reasons = _range(past.history.on(past.zone, last.date, past.watches), n)
    if low - _SLACK_MM <= last.height_mm <= high + _SLACK_MM or _pre_seed(past, last, n):
        return None
    too_low = last.height_mm < low
    clears_on = last.date + timedelta(n.days("stands-days"))
    return Finding(
        level=Level.NOTE,
        headline=f"cut at {length(last.height_mm, past)}, {'low' if too_low else 'high'} for this grass",
        why=(
            f"mown {on(last.date, past)}; {length(low, past)} to {length(high, past)} suits it then"
            + (f" ({', '.join(reasons)})" if reasons else "")
        ),
        do=(
            f"set the mower up to {length(low, past)} or more"
            if too_low
            else f"come down towards {length(high, past)}, a third at a time"
        ),
        clears=f"a cut in that range, or {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=(last.id,),
    )


def _range(past: Past, n: Numbers) -> tuple[float, float, list[str]]:
    """Lowest and highest cut on the day of the cut, in mm, and what moved them.

    Shade and summer raise the high end by both, the low end by the larger; the last cuts may be lower.
    """
    seeding = sown(past)
    mix = grass_mix(past.lawn, past.zone) or (sown_mix(past.lawn, past.zone, seeding) if seeding else {})
    high = n["high"]
    if not n.is_own("high"):
        high = max(high, high_end_mm(mix))
    zone = past.lawn.zone(past.zone)
    raised, reasons = [], []
    if zone is not None and zone.sun == "shade":
        raised.append(n["shade"])
        reasons.append("shade")
    if MonthDay(6, 1) <= northern_day(past.lawn, past.date) <= MonthDay(8, 31):
        raised.append(n["summer"])
        reasons.append("summer")
    low = n["low"] + max(raised, default=0.0)
    window = season_at_hand(past)
    if window is not None and 0 <= (window[1] - past.date).days < n["late-days"]:
        low -= n["last"]
        reasons.append("last cuts")
    return low, high + sum(raised), reasons


def _pre_seed(past: Past, mowing: Mowing, n: Numbers) -> bool:
    """Whether sowing, an intended sowing or dethatching followed it within the week."""
    last = mowing.day + n.days("before-seeding-days") - 1
    if past[Seeding].between(mowing.day, last):
        return True
    if any(c.what == "dethatch" for c in past[Cultivation].between(mowing.day, last)):
        return True
    planned = (i.target.toordinal() for i in intentions(past, "seed") if i.target)
    return any(mowing.day <= day <= last for day in planned)
