"""A seedbed that dries out."""

from datetime import date, timedelta

from journal.facts.mixture import has_bluegrass
from journal.facts.rounding import reaches
from journal.facts.sources import published
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Height
from journal.record.kinds.watering import Schedule
from journal.record.kinds.weather import Rain, Weather
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.reach import running, spread_over
from journal.rules.turns import after, at, seasons
from journal.rules.words import on
from journal.season.history import Past
from journal.season.stand import SEEDBED_DAYS, STAND, day_zero, in_seedbed, sown, sown_mix
from journal.season.water import WATER, rain_days, water_days, water_on_file

ON_FILE_DAYS = 14
OLD_GRASS_DAYS = 7
"""Before this day a height is that of the old grass: no seedling is up so soon."""

_LESS = {Level.LOSS: Level.LATE, Level.LATE: Level.NOTE}


@rule(
    "seedbed-dry",
    levels=(Level.NOTE, Level.LATE, Level.LOSS),
    watches=(*STAND, Height, *WATER),
    turns=(
        after(Seeding, *range(SEEDBED_DAYS + 1)),
        at(seasons, *range(SEEDBED_DAYS + 1)),
        *(after(kind) for kind in (*STAND, Height, *WATER)),
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
    first, yesterday = zero.toordinal(), past.day - 1
    bluegrass = has_bluegrass(sown_mix(past.lawn, past.zone, seeding))
    name = "days-bluegrass" if bluegrass else "days"
    if not 1 <= yesterday - first <= n.days(name) or _risen(past, first, n):
        return None
    watered = water_days(past, first, past.day)
    rain = rain_days(past, first - 1, past.day)
    if not watered or not water_on_file(past, ON_FILE_DAYS):
        return None
    if past.day in watered or reaches(rain.get(past.day, 0.0), n["rain"]):
        return None
    short = _short(past, yesterday, len(watered.get(yesterday, ())), rain, n, once=_once(past, first, bluegrass, n))
    if not short:
        return None
    dry = not watered.get(yesterday)
    before = yesterday - 1
    dry_before = before > first and not watered.get(before) and not _rained(before, rain, n)
    level = Level.LOSS if dry and dry_before else Level.LATE if dry else Level.NOTE
    unknown = yesterday not in rain or (level is Level.LOSS and before not in rain)
    if unknown:
        if level is Level.NOTE:
            return None
        level = _LESS[level]
    ends = zero + timedelta(n.days(name) + 2)
    return Finding(
        level=level,
        headline=_headline(dry, dry_before),
        why=(
            f"sown {on(zero, past)}, day {yesterday - first} was {on(date.fromordinal(yesterday), past)}; "
            f"{_wanted(n, _once(past, first, bluegrass, n))}" + ("; rain not known" if unknown else "")
        ),
        do="water lightly today, and once more in the afternoon",
        clears="water",
        clears_on=ends,
        evidence=(seeding.id,),
        numbers=("waterings", name, "rain"),
    )


def _headline(dry: bool, dry_before: bool) -> str:
    if dry and dry_before:
        return "seedbed dry for two days and more"
    return "seedbed without water yesterday" if dry else "seedbed watered too little yesterday"


def _wanted(n: Numbers, once: bool) -> str:
    return "one watering a day is wanted" if once else f"{n['waterings']:.0f} waterings a day are wanted"


def _short(past: Past, day: int, waterings: int, rain: dict[int, float], n: Numbers, *, once: bool) -> bool:
    """Whether the day had less water than it needed."""
    if _rained(day, rain, n):
        return False
    highs = [w.high_c for w in past.lawnwide(Weather).between(day, day) if w.high_c is not None]
    cool = bool(highs) and highs[-1] < n["cool-high"]
    return waterings < (1 if once or cool else n["waterings"])


def _once(past: Past, first: int, bluegrass: bool, n: Numbers) -> bool:
    return not bluegrass and past.day - 1 - first >= n.days("once-from-day")


def _rained(day: int, rain: dict[int, float], n: Numbers) -> bool:
    """Whether rain covered the day: its own, or plenty the day before."""
    return reaches(rain.get(day, 0.0), n["rain"]) or reaches(rain.get(day - 1, 0.0), n["rain-two-days"])


def _risen(past: Past, first: int, n: Numbers) -> bool:
    """Whether the new grass was measured tall enough; in the first week it is the old grass that is measured."""
    measured = past[Height].since(first + OLD_GRASS_DAYS)
    return any(h.height_mm is not None and reaches(h.height_mm, n["height"]) for h in measured)
