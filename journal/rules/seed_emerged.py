"""Seed of which nothing is seen to come up."""

from datetime import date, timedelta

from journal.facts.mixture import has_bluegrass
from journal.facts.sources import published
from journal.reckon.seed_season import growth_left, growth_wanted, last_day_to_sow
from journal.reckon.seedbed import risen
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Height, Sighting
from journal.record.kinds.weather import Weather
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after, at, kept_since, seasons
from journal.rules.words import days, on
from journal.season.growth import growing
from journal.season.history import Past
from journal.season.stand import SEEDBED_DAYS, day_zero, sown, sown_mix

TALL_FROM_DAY = 14
"""A mowing sooner than this cuts the old grass."""

LONGEST_DAYS = 300
"""From a dormant sowing to the end of its seedbed in spring."""


@rule(
    "not-emerged",
    levels=(Level.LATE,),
    watches=(Seeding, Mowing, Sighting, Height, Weather),
    turns=(
        after(Seeding, "days", "days-bluegrass", SEEDBED_DAYS),
        at(seasons, "days", "days-bluegrass", SEEDBED_DAYS),
        *(after(kind) for kind in (Mowing, Sighting, Height)),
        after(Sighting, 14),
        at(kept_since(Sighting), "days", "days-bluegrass"),
    ),
    basis=(published("isu-watering", "nebraska-lifeline", note="bluegrass is 7 to 14 days slower than the others"),),
)
def not_emerged(past: Past, n: Numbers) -> Finding | None:
    """Sown, and no seedlings seen when they are due."""
    seeding, zero, kept = sown(past), day_zero(past), past.kept_since(Sighting)
    if seeding is None or zero is None or kept is None or not 0 <= past.day - zero.toordinal() <= SEEDBED_DAYS:
        return None
    mix = sown_mix(past.lawn, past.zone, seeding)
    name = "days-bluegrass" if has_bluegrass(mix) else "days"
    if (past.date - max(zero, kept)).days < n.days(name) or not growing(past) or _came_up(past, seeding, zero):
        return None
    left, last = growth_left(past.lawn, past.date), last_day_to_sow(past.lawn, past.date, mix)
    wanted = growth_wanted(past.lawn, mix, "loss-days")
    in_time = left is not None and left >= wanted and last is not None
    age = past.day - zero.toordinal()
    return Finding(
        level=Level.LATE,
        headline=f"no seedlings seen by day {age}",
        why=(
            f"sown {on(zero, past)}; {'bluegrass takes to' if has_bluegrass(mix) else 'most is up by'} day "
            f"{n.days(name)}, and neither `see emerged` nor a cut is on file"
        ),
        do=(
            f"look closely: where it is up, log `see emerged`; where it is not, sow again by {on(last, past)}"
            if in_time and last is not None
            else f"look closely: where it is up, log `see emerged`; under {days(wanted)} of growth are left, so that "
            "bare places wait for dormant seed or next year"
        ),
        clears="`see emerged`, or the first cut",
        clears_on=zero + timedelta(SEEDBED_DAYS + 1),
        evidence=(seeding.id,),
        numbers=(name,),
    )


def _came_up(past: Past, seeding: Seeding, zero: date) -> bool:
    """Whether it was seen, measured or cut."""
    if any(seen.subject == "emerged" for seen in past[Sighting].since(seeding.day)):
        return True
    return risen(past, zero) is not None or past[Mowing].first_since(zero.toordinal() + TALL_FROM_DAY) is not None
