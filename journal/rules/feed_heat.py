"""Quick nitrogen on a hot day."""

from datetime import date, timedelta

from journal.facts.rounding import exceeds, reaches
from journal.reckon.feed_ground import high_on, is_hot
from journal.reckon.feed_water import FEED_WATER, watered_in
from journal.reckon.feedings import FeedingDay
from journal.reckon.uses import uses_in
from journal.reckon.watering_in import watered_from
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.treatment import Treatment
from journal.rules.declare import Finding, rule
from journal.rules.feed_days import each_day_fed, fed_within, ids
from journal.rules.flag import Level
from journal.rules.numbers import Numbers, in_words
from journal.rules.words import days, on
from journal.season.history import Past
from journal.season.stand import STAND, in_seedbed
from journal.season.water import water_days


@rule(
    "feed-heat",
    levels=(Level.LOSS, Level.NOTE),
    watches=(*FEED_WATER, *STAND),
    turns=each_day_fed("feed-heat", "stands-days"),
    basis=(),
)
def feed_heat(past: Past, n: Numbers) -> Finding | None:
    """Quick nitrogen put down on a hot day."""
    found = [
        (feeding, high, _saved(past, feeding, n))
        for feeding in fed_within(past, n.days("stands-days"))
        if (high := _hot(past, feeding, n)) is not None
    ]
    worst = max(found, key=lambda row: not row[2], default=None)
    return None if worst is None else _finding(past, *worst, n)


def _hot(past: Past, feeding: FeedingDay, n: Numbers) -> float | None:
    """The high of its day, or what was read while it went down, where that is too hot for so much quick nitrogen."""
    soluble = feeding.soluble_n_g_per_m2
    if soluble is None or not exceeds(soluble, n["soluble"]):
        return None
    entries = (one for one in feeding.entries if isinstance(one, Feeding | Treatment) and one.date == feeding.date)
    read = [one.temp_c for one in entries if one.temp_c is not None]
    high = high_on(past, feeding.day)
    high = max(read, default=None) if high is None else high
    return high if is_hot(past, high) else None


def _saved(past: Past, feeding: FeedingDay, n: Numbers) -> str:
    """What keeps it from burning; '' where nothing does. A leaf-applied product in it has to dry first."""
    water = watered_in(past, feeding, feeding.day, max(feeding.day + 1, _dry_from(past, feeding).toordinal()))
    if water is None or reaches(water, n["water"]):
        return "water followed"
    then = past.history.on(past.zone, feeding.date, past.watches)
    damp = in_seedbed(then) and bool(water_days(then, feeding.day - 1, feeding.day))
    return "the seedbed was damp" if damp else ""


def _dry_from(past: Past, feeding: FeedingDay) -> date:
    """The first day on which water may fall on it."""
    return max((watered_from(use, past.lawn) for use in uses_in(past, feeding.entries)), default=feeding.date)


def _finding(past: Past, feeding: FeedingDay, high: float, saved: str, n: Numbers) -> Finding:
    units = past.lawn.units
    soluble, limit = in_words(feeding.soluble_n_g_per_m2 or 0.0, "g/m2", units), in_words(n["high"], "C", units)
    water, free = in_words(n["water"], "mm", units), _dry_from(past, feeding)
    when = (
        "at once, on the same day or the next"
        if free <= feeding.date
        else f"as soon as the leaves may get wet, {on(free, past)}"
    )
    clears_on = feeding.date + timedelta(n.days("stands-days"))
    return Finding(
        level=Level.NOTE if saved else Level.LOSS,
        headline=f"quick nitrogen at {in_words(high, 'C', units)}" + ("" if saved else ": it may burn"),
        why=(
            f"fed {on(feeding.date, past)}, {soluble} of nitrogen soluble; from {limit} on it may burn"
            + (f"; {saved}" if saved else "")
        ),
        do="wait for cooler days next time" if saved else f"water {water} {when}",
        clears=f"{days(n.days('stands-days'))} after, {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=ids(feeding),
        numbers=("high", "soluble", "water"),
    )
