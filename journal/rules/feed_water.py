"""Too little water after a feeding, and too much."""

from datetime import date, timedelta

from journal.facts.rounding import exceeds, reaches
from journal.reckon.feed_water import FEED_WATER, fed_at, heaviest_day, watered_in
from journal.reckon.feedings import FEEDINGS, FeedingDay
from journal.reckon.uses import uses_in
from journal.reckon.watering_in import water_in, watered_from
from journal.record.kinds.weather import Rain
from journal.rules.declare import Finding, rule
from journal.rules.feed_days import each_day_fed, fed_within, ids
from journal.rules.flag import Level
from journal.rules.numbers import Numbers, in_words
from journal.rules.turns import after
from journal.rules.words import days, on
from journal.season.history import Past
from journal.season.water import water_on_file

ON_FILE_DAYS = 14


@rule(
    "feed-water-in",
    levels=(Level.NOTE,),
    watches=FEED_WATER,
    turns=each_day_fed("feed-water-in", "stands-days"),
    basis=(),
)
def feed_water_in(past: Past, n: Numbers) -> Finding | None:
    """No water within two days of a feeding."""
    for feeding in fed_within(past, n.days("stands-days")):
        first = feeding.day + _rain_free_days(past, feeding)
        last = max(feeding.day + n.days("days"), first + 1 if first > feeding.day else 0)
        if past.day <= last:
            continue
        water = watered_in(past, feeding, first, past.day)
        if water is not None and not reaches(water, n["water"]) and water_on_file(past, ON_FILE_DAYS):
            return _dry(past, feeding, water, n)
    return None


def _rain_free_days(past: Past, feeding: FeedingDay) -> int:
    """Days after it on which no water is wanted yet: a leaf-applied product in it has to dry first."""
    waits = (watered_from(use, past.lawn) - use.date for use in uses_in(past, feeding.entries))
    return max((wait.days - 1 for wait in waits if wait.days), default=0)


def _dry(past: Past, feeding: FeedingDay, water: float, n: Numbers) -> Finding:
    wanted = in_words(n["water"], "mm", past.lawn.units)
    had = f"{in_words(water, 'mm', past.lawn.units)} of water" if water else "no water"
    clears_on = feeding.date + timedelta(n.days("stands-days"))
    return Finding(
        level=Level.NOTE,
        headline="fed, and not watered in",
        why=f"fed {on(feeding.date, past)}, {had} since; {wanted} within {days(n.days('days'))} takes it into the soil",
        do=f"water {wanted}",
        clears=f"{wanted} of water, or {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=ids(feeding),
        numbers=("water", "days"),
    )


@rule(
    "feed-wash",
    levels=(Level.NOTE,),
    watches=FEED_WATER,
    turns=(
        *each_day_fed("feed-wash", "days"),
        *(after(kind, "stands-days") for kind in FEEDINGS),
        after(Rain),
    ),
    basis=(),
)
def feed_wash(past: Past, n: Numbers) -> Finding | None:
    """Heavy rain or watering within a day of a feeding."""
    for feeding in fed_within(past, n.days("stands-days")):
        heaviest = heaviest_day(past, feeding, n.days("days"))
        if heaviest is not None and reaches(heaviest[1], n["water"]) and not _asked_for(past, feeding, heaviest[1]):
            return _washed(past, feeding, *heaviest, n)
    return None


def _asked_for(past: Past, feeding: FeedingDay, water: float) -> bool:
    """Whether a barrier or an insect product in it wants that much water to be taken into the soil."""
    wanted = (water_in(use, past.lawn) for use in uses_in(past, feeding.entries))
    return any(one is not None and not exceeds(water, one.depth_mm) for one in wanted)


def _washed(past: Past, feeding: FeedingDay, day: int, water: float, n: Numbers) -> Finding:
    unsure = day == feeding.day and fed_at(feeding) is None
    clears_on = feeding.date + timedelta(n.days("stands-days"))
    return Finding(
        level=Level.NOTE,
        headline="heavy water on the day it was fed" if day == feeding.day else "heavy water the day after it was fed",
        why=(
            f"fed {on(feeding.date, past)}, {in_words(water, 'mm', past.lawn.units)} of water "
            f"{on(date.fromordinal(day), past)}"
            + ("; which came first is not known" if unsure else ": part of it may have washed out")
        ),
        do=(
            "log the time of both, like 7:00; next time feed when no heavy rain is forecast"
            if unsure
            else "sweep up what lies on paving; next time water lightly, and feed when no heavy rain is forecast"
        ),
        clears=f"{days(n.days('stands-days'))} after, {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=ids(feeding),
        numbers=("water", "days"),
    )
