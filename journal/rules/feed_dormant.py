"""Feeding while nothing grows."""

from datetime import timedelta

from journal.reckon.feedings import FEEDINGS, FeedingDay
from journal.record.kinds.sighting import Sighting
from journal.record.kinds.weather import Weather
from journal.rules.declare import Finding, rule
from journal.rules.feed_days import each_day_fed, fed_within, ids
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.words import days, on
from journal.season.growth import dormant_open, frozen_open, growing, next_start, out_of_growth, season_at_hand, span
from journal.season.history import Past

OUT, RESTING, FROZEN = "out of season", "dormant", "frozen"


@rule(
    "feed-dormant",
    levels=(Level.LOSS, Level.NOTE),
    watches=(*FEEDINGS, Sighting, Weather),
    turns=each_day_fed("feed-dormant", "stands-days"),
    basis=(),
)
def feed_dormant(past: Past, n: Numbers) -> Finding | None:
    """Fed while the grass rests, is frozen, or does not grow at that time of year."""
    found = [
        (feeding, *asleep)
        for feeding in fed_within(past, n.days("stands-days"))
        if (asleep := _asleep(past.history.on(past.zone, feeding.date, past.watches), n)) is not None
    ]
    worst = max(found, key=lambda row: row[1].gravity, default=None)
    return None if worst is None else _finding(past, *worst, n)


def _asleep(then: Past, n: Numbers) -> tuple[Level, str, str] | None:
    """How bad it was on the day of a feeding, what kept the grass from growing, and the entry that says so."""
    if (seen := dormant_open(then)) is not None:
        return Level.LOSS, RESTING, seen.id
    if (seen := frozen_open(then)) is not None:
        return Level.LOSS, FROZEN, seen.id
    if growing(then) or not out_of_growth(then):
        return None
    near = _days_from_growth(then)
    return (Level.NOTE if near is not None and near <= n.days("note-days") else Level.LOSS), OUT, ""


def _days_from_growth(then: Past) -> int | None:
    """Days since growth ended or until it begins again, whichever are fewer; the first day outside it is 1."""
    grew, start = span(then), next_start(then.lawn, then.date)
    ended = season_at_hand(then)
    since = []
    if grew is not None and grew[1] is not None:
        since.append(then.day - grew[1] + 1)
    if start is not None:
        since.append((start - then.date).days)
    if grew is None and ended is not None and ended[0] <= then.date:
        since.append(1)  # the dates have it begun, the weather on file not yet
    return min(since, default=None)


def _finding(past: Past, feeding: FeedingDay, level: Level, what: str, seen: str, n: Numbers) -> Finding:
    then = past.history.on(past.zone, feeding.date, past.watches)
    near = _days_from_growth(then) if what == OUT else None
    clears_on = feeding.date + timedelta(n.days("stands-days"))
    told = {
        RESTING: "it was seen dormant and not yet green again",
        FROZEN: "the ground was seen frozen or under snow",
        OUT: "the grass does not grow at that time"
        if near is None
        else f"{days(near)} outside growth; publications disagree on feeding so near to it"
        if level is Level.NOTE
        else f"{days(near)} outside growth: little is taken up and much is lost",
    }[what]
    return Finding(
        level=level,
        headline={RESTING: "fed while dormant", FROZEN: "fed on frozen ground"}.get(what, "fed outside growth"),
        why=f"fed {on(feeding.date, past)}; {told}",
        do="feed nothing more until it grows",
        clears=f"{days(n.days('stands-days'))} after, {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=(*ids(feeding), *((seen,) if seen else ())),
        numbers=("note-days",) if what == OUT else ("stands-days",),
    )
