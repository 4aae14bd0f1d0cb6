"""A downpour on fresh seed."""

from datetime import date, timedelta

from journal.facts.rounding import reaches
from journal.facts.sources import judgment
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.weather import Rain, Weather
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers, in_words
from journal.rules.turns import after, at, seasons
from journal.rules.words import on
from journal.season.history import Past
from journal.season.stand import day_zero, sown
from journal.season.water import rain_days

MOST_DAYS = 28 + 60
"""To no later day after sowing can it stand, whatever the owner's numbers."""

LONGEST_DAYS = 330
"""The same of a dormant sowing, which is counted from spring."""


@rule(
    "seed-wash",
    levels=(Level.NOTE,),
    watches=(Seeding, Rain, Weather),
    turns=(
        after(Seeding, *range(MOST_DAYS + 1)),
        at(seasons, *range(MOST_DAYS + 1)),
        *(after(kind) for kind in (Rain, Weather)),
    ),
    basis=(judgment("an inch in a day runs over loose seed, more so on a slope", "osu-reseed"),),
)
def seed_wash(past: Past, n: Numbers) -> Finding | None:
    """So much rain in a day that fresh seed may have moved."""
    seeding, zero = sown(past), day_zero(past)
    if seeding is None or zero is None:
        return None
    first, stands = zero.toordinal(), n.days("stands-days")
    if not 0 <= past.day - first < n.days("to-day") + stands:
        return None
    since, last = max(first, past.day - stands + 1), min(first + n.days("to-day"), past.day)
    heavy = {day: mm for day, mm in rain_days(past, since, last).items() if reaches(mm, n["rain"])}
    if not heavy:
        return None
    day = max(heavy)
    clears_on = date.fromordinal(day) + timedelta(stands)
    return Finding(
        level=Level.NOTE,
        headline="a downpour on fresh seed",
        why=f"{in_words(heavy[day], 'mm', past.lawn.units)} of rain {on(day, past)}, day {day - first} after sowing",
        do="look for bare streaks and for seed washed together; rake it apart and top up what is bare",
        clears=on(clears_on, past),
        clears_on=clears_on,
        evidence=(seeding.id,),
        numbers=("rain", "to-day"),
    )
