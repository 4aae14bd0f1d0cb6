"""A seedbed that dries out."""

from datetime import date, timedelta

from journal.facts.rounding import reaches
from journal.facts.sources import published
from journal.reckon.protection import PROTECTED
from journal.reckon.seedbed import (
    LONGEST_DRY_DAYS,
    SEEDBED_WATER,
    damp_number,
    kept_dry,
    rained,
    risen,
    waterings_wanted,
)
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.watering import Schedule
from journal.record.kinds.weather import Rain
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.reach import running, spread_over
from journal.rules.turns import after, at, seasons
from journal.rules.words import on
from journal.season.history import Past
from journal.season.stand import SEEDBED_DAYS, STAND, day_zero, in_seedbed, sown, sown_mix
from journal.season.water import rain_days, water_days, water_on_file

ON_FILE_DAYS = 14

_LESS = {Level.LOSS: Level.LATE, Level.LATE: Level.NOTE}


@rule(
    "seedbed-dry",
    levels=(Level.NOTE, Level.LATE, Level.LOSS),
    watches=(*STAND, *SEEDBED_WATER),
    turns=(
        after(Seeding, *range(SEEDBED_DAYS + 1)),
        at(seasons, *range(SEEDBED_DAYS + 1)),
        *(after(kind) for kind in (*STAND, *SEEDBED_WATER)),
        *(after(kind, *range(LONGEST_DRY_DAYS + 2)) for kind in PROTECTED),
        after(Schedule, reach=running(ON_FILE_DAYS)),
        after(Rain, reach=spread_over(ON_FILE_DAYS), within=ON_FILE_DAYS),
    ),
    basis=(published("ncsu-seeding", "isu-watering", "nebraska-lifeline"),),
)
def seedbed_dry(past: Past, n: Numbers) -> Finding | None:
    """Too little water on a seedbed, day by day."""
    seeding, zero = sown(past), day_zero(past)
    if seeding is None or zero is None or not in_seedbed(past):
        return None
    first, yesterday, before = zero.toordinal(), past.day - 1, past.day - 2
    mix = sown_mix(past.lawn, past.zone, seeding)
    name = damp_number(mix)
    if not 1 <= yesterday - first <= n.days(name) or risen(past, zero) is not None:
        return None
    watered = water_days(past, first, past.day)
    rain = rain_days(past, first - 1, past.day)
    if not watered or not water_on_file(past, ON_FILE_DAYS):
        return None
    if past.day in watered or reaches(rain.get(past.day, 0.0), n["rain"]):
        return None
    to_stay_dry = kept_dry(past, before)
    if past.day in to_stay_dry or yesterday in to_stay_dry or rained(past.lawn, rain, yesterday):
        return None
    wanted = waterings_wanted(past, zero, mix, yesterday)
    had = len(watered.get(yesterday, ()))
    if had >= wanted:
        return None
    dry_before = before > first and not (
        watered.get(before) or before in to_stay_dry or rained(past.lawn, rain, before)
    )
    n.stricter("waterings")  # read by the count above, and told as one of its numbers
    level = Level.NOTE if had else Level.LOSS if dry_before else Level.LATE
    unknown = yesterday not in rain or (level is Level.LOSS and before not in rain)
    if unknown:
        if level is Level.NOTE:
            return None
        level = _LESS[level]
    ends = zero + timedelta(n.days(name) + 2)
    return Finding(
        level=level,
        headline=_headline(dry=not had, dry_before=dry_before),
        why=(
            f"sown {on(zero, past)}, day {yesterday - first} was {on(date.fromordinal(yesterday), past)}; "
            f"{_wanted(wanted)}" + ("; rain not known" if unknown else "")
        ),
        do="water lightly today, and once more in the afternoon",
        clears="water",
        clears_on=ends,
        evidence=(seeding.id,),
        numbers=("waterings", name, "rain"),
    )


def _headline(*, dry: bool, dry_before: bool) -> str:
    if dry and dry_before:
        return "seedbed dry for two days and more"
    return "seedbed without water yesterday" if dry else "seedbed watered too little yesterday"


def _wanted(waterings: int) -> str:
    return "one watering a day is wanted" if waterings == 1 else f"{waterings} waterings a day are wanted"
