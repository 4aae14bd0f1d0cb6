"""The inch a week, where no weather is on file to go by."""

from journal.facts.rounding import reaches
from journal.record.day import MonthDay
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Sighting
from journal.record.kinds.watering import Schedule, Watering
from journal.record.kinds.weather import Rain, Weather
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.reach import running, spread_over
from journal.rules.turns import after, at, each_year, kept_since, seasons
from journal.rules.words import days, length
from journal.season.growth import GROWING, growing, northern_day
from journal.season.history import Past
from journal.season.stand import NEW_GRASS_MOST_DAYS, SEEDBED_DAYS, STAND, new_grass
from journal.season.water import WATER, rain_days, timer_ran, water_days, water_on_file

SUMMER = (MonthDay(6, 1), MonthDay(8, 31))
ON_FILE_DAYS = 14
_LONGEST = 21
"""No owner can have it counted over more days."""

_WINDOW = range(_LONGEST + 1)


@rule(
    "water-week",
    levels=(Level.NOTE,),
    watches=(*STAND, *GROWING, *WATER),
    turns=(
        after(Seeding, SEEDBED_DAYS, NEW_GRASS_MOST_DAYS),
        at(seasons, SEEDBED_DAYS, NEW_GRASS_MOST_DAYS),
        after(Mowing),
        after(Sighting, 14),
        after(Watering, *_WINDOW),
        after(Weather, *_WINDOW),
        after(Schedule, reach=running(_LONGEST)),
        after(Rain, *_WINDOW, reach=spread_over(_LONGEST), within=_LONGEST),
        at(each_year(SUMMER[0], SUMMER[1].shifted(1))),
        at(kept_since(*WATER), "days", ON_FILE_DAYS),
    ),
    basis=(),
)
def water_week(past: Past, n: Numbers) -> Finding | None:
    """Less than an inch of rain and watering in a summer week."""
    zone, kept = past.lawn.zone(past.zone), past.kept_since(*WATER)
    if zone is None or not zone.irrigated or kept is None:
        return None
    if not SUMMER[0] <= northern_day(past.lawn, past.date) <= SUMMER[1]:
        return None
    week = n.days("days")
    if (past.date - kept).days < week or not growing(past) or new_grass(past):
        return None
    if _weather(past, max(week, ON_FILE_DAYS)) or not water_on_file(past, ON_FILE_DAYS) or timer_ran(past, week + 1):
        return None
    first = past.day - week
    found = [one for day in water_days(past, first, past.day).values() for one in day]
    if any(one.depth_mm is None or one.deep for one in found):
        return None
    rain = rain_days(past, first, past.day)
    total = sum(rain.values()) + sum(one.depth_mm or 0.0 for one in found)
    if reaches(total, n["water"]):
        return None
    return Finding(
        level=Level.NOTE,
        headline=f"{length(total, past)} of water in {days(week)}",
        why=(
            f"{length(n['water'], past)} a week is a rule of thumb for summer; without weather on file nothing more is "
            "known" + ("" if rain else ", and no rain is on file either")
        ),
        do="push a screwdriver in: if it is dry below, water once and thoroughly; log the rain, a nought too",
        clears=f"{length(n['water'], past)} in {days(week)}",
        evidence=tuple(dict.fromkeys(one.entry.id for one in found)),
    )


def _weather(past: Past, days: int) -> bool:
    """Whether temperatures are on file: then the account of the root zone tells."""
    return any(seen.high_c is not None for seen in past.lawnwide(Weather).within(days))
