"""The barrier against crabgrass in spring: put down too late, or not at all."""

from collections.abc import Iterator
from datetime import date, timedelta

from journal.facts.sources import published
from journal.reckon.barrier import annual_weed_seen, barrier_age, barriers, may_be_barriers
from journal.reckon.barrier_window import (
    barrier_window,
    counts_from,
    degree_days,
    last_frost,
    soil_held,
    spring_of,
    window_days,
)
from journal.reckon.new_grass import NEW_GRASS, old_enough_on
from journal.reckon.protection import PROTECTED
from journal.reckon.uses import Use
from journal.record.kinds.intention import Intention
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Sighting
from journal.record.kinds.weather import Weather
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers, in_words
from journal.rules.reach import intended
from journal.rules.turns import Site, after, at, kept_since
from journal.rules.words import on
from journal.season.history import Past
from journal.season.stand import intentions

_FROST_OR_WARMTH = published("msu-model", "iastate-barrier", note="forsythia that drops its bloom says the same")


def _by_warmth(site: Site, year: int) -> Iterator[int]:
    """First day of the window, and first day after it."""
    frost = last_frost(site.lawn, year)
    if frost is not None:
        for day, _ in window_days(site.history, site.lawn, year, frost):
            yield day.toordinal()


@rule(
    "barrier-past",
    levels=(Level.NOTE,),
    watches=(*PROTECTED, Weather),
    turns=[after(kind, "stands-days", "split-days") for kind in PROTECTED],
    basis=(_FROST_OR_WARMTH,),
)
def barrier_past(past: Past, n: Numbers) -> Finding | None:
    """A barrier put down when crabgrass was up already, by the degree days on file."""
    since = past.day - n.days("stands-days") + 1
    if not any(past[kind].since(since) for kind in PROTECTED):
        return None
    used = _first_of_spring(past, since, n.days("split-days"))
    if used is None:
        return None
    told = _too_warm(past, used, n)
    if told is None:
        return None
    clears_on = used.date + timedelta(n.days("stands-days"))
    early = any(one.name == "dithiopyr" for one in used.actives)
    return Finding(
        level=Level.NOTE,
        headline=f"{used.name} late: crabgrass was coming up by then",
        why=f"{told[0]}; models differ by two weeks",
        do=(
            "dithiopyr still takes crabgrass without a side shoot; " if early else ""
        ) + "look for crabgrass in the thin places, and pull it or treat the spot while it is small",
        clears=on(clears_on, past),
        clears_on=clears_on,
        evidence=(used.entry.id,),
        numbers=(told[1],),
    )  # fmt: skip


def _too_warm(past: Past, used: Use, n: Numbers) -> tuple[str, str] | None:
    """What says that it was too warm by then, and the number that decided."""
    lawn, warmth, most = past.lawn, degree_days(past, used.date), n["most"]
    if warmth is not None and warmth > most:
        since = on(counts_from(lawn, used.date), past)
        limit = in_words(most, "x", lawn.units)
        return (
            f"{warmth:.0f} degree days (F) over 32 F from {since} to {on(used.date, past)}; the window ends at {limit}"
        ), "most"
    held = soil_held(past.history, lawn, spring_of(lawn, used.date)[0].year, n["soil-most"])
    if held is None or held > used.day:
        return None
    limit = in_words(n["soil-most"], "C", lawn.units)
    return (
        f"the soil had been at {limit} or more for five days on {on(held, past)}, and {used.name} came later",
        "soil-most",
    )


def _first_of_spring(past: Past, since: int, split_days: int) -> Use | None:
    """The spring's first barrier on the zone, where it went down since that day."""
    start, end = spring_of(past.lawn, past.date)
    found = barriers(past, start.toordinal() - split_days)
    spring = [use for use in found if start <= use.date <= end]
    if not spring or spring[0].day < since:
        return None
    first = spring[0]
    return None if any(first.day - use.day <= split_days for use in found if use.day < start.toordinal()) else first


@rule(
    "barrier-missed",
    levels=(Level.LATE,),
    watches=(*NEW_GRASS, Weather),
    turns=(
        at(_by_warmth, "stands-days"),
        at(kept_since(*PROTECTED)),
        *(after(kind) for kind in (*PROTECTED, Seeding, Mowing, Sighting)),
        after(Intention, reach=intended),
    ),
    basis=(_FROST_OR_WARMTH,),
)
def barrier_missed(past: Past, n: Numbers) -> Finding | None:
    """Crabgrass was seen last season, and no barrier went down in spring."""
    window = barrier_window(past) if past[Sighting] else None
    if window is None or not window.closed or past.date >= window.closes + timedelta(n.days("stands-days")):
        return None
    seen = annual_weed_seen(past, window.opens.toordinal() - n.days("weed-days"), window.opens.toordinal() - 1)
    kept = past.kept_since(*PROTECTED)
    if seen is None or kept is None or kept >= window.closes:
        return None
    start, _ = spring_of(past.lawn, past.date)
    if may_be_barriers(past, start.toordinal()) or _seed_first(past, start, window.closes):
        return None
    ends = window.closes + timedelta(n.days("stands-days"))
    how = "by degree days" if window.by_weather else "by the average last frost, an estimate"
    return Finding(
        level=Level.LATE,
        headline="no barrier this spring, and its time is over",
        why=(
            f"{seen.subject} seen {on(seen.date, past)}; the time was to "
            f"{on(window.closes - timedelta(1), past)}, {how}"
        ),
        do="leave it for this year; mow high, pull what comes up or treat it small, and note where you see it",
        clears=on(ends, past),
        clears_on=ends,
        evidence=(seen.id,),
        numbers=("stands-days", "weed-days"),
    )


def _seed_first(past: Past, start: date, closes: date) -> bool:
    """Whether seed goes before a barrier: sown this year, meant to be, or too young when the time was over."""
    if intentions(past, "seed") or past[Seeding].since(start.toordinal()):
        return True
    then = past.history.on(past.zone, closes - timedelta(1), past.watches)
    return old_enough_on(then, barrier_age(then)) is not None
