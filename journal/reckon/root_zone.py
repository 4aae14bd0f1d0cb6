"""The water account of a zone's root zone, day by day from the last soaking of the season, else from its first day.

Each day D = min(TAW, max(0, D + ETc - effective rain - irrigation)): what turf used is owed, what came is paid, what
is too much drains away. NDSU Extension, AE792, Irrigation Scheduling by the Checkbook Method.
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date

from journal.facts.grasses import Grass, grass
from journal.facts.irrigation import (
    ALLOWED_SHARE,
    DEEP_ROOTS_MM,
    RAIN_LOST_MM,
    ROOTS_MM,
    SOAKING_DAYS,
    SOAKING_MM,
    coefficient,
    deep_rooted,
)
from journal.facts.mixture import shares
from journal.facts.rounding import reaches
from journal.facts.soils import SOILS
from journal.reckon.evapotranspiration import reference_mm
from journal.reckon.rain_credit import effective_mm
from journal.record.day import spoken
from journal.record.entry import Entry
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.weather import Rain, Weather
from journal.season.daily import DayWeather, weather_days
from journal.season.growth import southern, span
from journal.season.history import Past
from journal.season.remembered import remembered
from journal.season.stand import stand_mix
from journal.season.water import WATER, Irrigation, rain_days, water_days

NO_SOAKING = "no soaking is on file to count from: water deeply, or an inch of rain in three days"

ROOT_ZONE: tuple[type[Entry], ...] = (Seeding, *WATER)
"""What this file looks at."""

FRESH_DAYS = 3
"""Weather older than this tells nothing of today: judgment."""

BRIDGED_DAYS = 3
"""So many days on end without temperatures are taken to be like the week before them: judgment."""

USUAL_DAYS, USUAL_NEEDS = 7, 3
"""The use of a day is the mean of the last 7, where 3 of them are on file: judgment."""

NEAR_DAYS, LOOK_BACK_DAYS = 30, 200
"""A soaking is looked for in the last 30 days first, and never longer ago than 200: judgment."""


Waterings = Mapping[int, tuple[Irrigation, ...]]
"""Day (an ordinal) -> waterings."""


@dataclass(frozen=True, slots=True)
class Balance:
    """What is missing in the root zone, as known at the end of `through`, with all water of the past's day counted.

    `allowed_mm` is what may be used before it is watered, `total_mm` all that the roots can draw, `et_mm_a_day` the
    use of the last week, `days_to_water` how long what is left lasts at that (0 when it is used up), `bridged` days
    that had no temperatures, `since` the day of the soaking (where `assumed`, the first day of growth, taken to be
    full), `reached` the day from which on all that may be used was used (None while it isn't). `dry` and `short` are
    the first day, of those before the past's own, on which all that may be used, or three quarters of all there is,
    was gone; both hold until less than half of what may be used is missing again. Where `why` says why nothing is
    known, the rest is None.
    """

    deficit_mm: float | None = None
    allowed_mm: float | None = None
    total_mm: float | None = None
    et_mm_a_day: float | None = None
    days_to_water: float | None = None
    since: date | None = None
    through: date | None = None
    reached: date | None = None
    dry: date | None = None
    short: date | None = None
    bridged: int = 0
    assumed: bool = False
    why: str = ""


@dataclass(frozen=True, slots=True)
class RootZone:
    """What does not change from day to day: `total_mm` of water at most, and what decides the use of it."""

    total_mm: float
    deep_rooted: bool
    latitude: float
    south: bool
    cool_season: bool

    @property
    def allowed_mm(self) -> float:
        """What may be used before it is watered again."""
        return ALLOWED_SHARE * self.total_mm

    def use_mm(self, reference: float, day: date) -> float:
        """Use of the turf in mm, from the reference use of that day."""
        return reference * coefficient(day.month, southern=self.south, cool_season=self.cool_season)


def tight_mm(allowed_mm: float, total_mm: float) -> float:
    """From here on watering is late: halfway between what may be missing and all. Judgment."""
    return (allowed_mm + total_mm) / 2


@remembered
def balance(past: Past) -> Balance:
    """The account of the zone at the end of the past's day, or why it can't be drawn up."""
    ground = root_zone(past)
    if isinstance(ground, str):
        return Balance(why=ground)
    unknown = _stale(past) or _no_rain(past)
    if unknown:
        return Balance(why=unknown)
    began = span(past)
    full = began[0] if began else 0
    for back in (NEAR_DAYS, LOOK_BACK_DAYS):
        first = max(past.day - back, full)
        days = weather_days(past, first - USUAL_DAYS, past.day)
        waterings = water_days(past, first, past.day)
        rain = {day: seen.rain_mm for day, seen in days.items() if seen.rain_mm}
        since = _soaked_on(rain, waterings, first)
        if since is not None:
            return _walked(past, ground, since, days, waterings)
        if first == full:
            found = _walked(past, ground, full, days, waterings)
            return Balance(why=NO_SOAKING) if found.why else replace(found, assumed=True)
    return Balance(why=NO_SOAKING)


def soaking_on_file(past: Past) -> bool:
    """Whether an account can count from a soaking: asked first, for it costs far less than the account."""
    began = span(past)
    first = max(past.day - LOOK_BACK_DAYS, began[0] if began else 0)
    rain = rain_days(past, first - USUAL_DAYS, past.day)
    return _soaked_on(rain, water_days(past, first, past.day), first) is not None


def root_zone(past: Past) -> RootZone | str:
    """The root zone, or which fact of the set-up is missing."""
    zone = past.lawn.zone(past.zone)
    if past.lawn.latitude is None:
        return "the lawn's latitude is not set"
    if zone is None or not zone.soil:
        return "the soil of the zone is not set"
    main = _main_grass(past)
    deep = deep_rooted(main)
    depth = DEEP_ROOTS_MM if deep else ROOTS_MM
    total = SOILS[zone.soil].available_mm_per_m * depth / 1000
    return RootZone(total, deep, past.lawn.latitude, southern(past.lawn), main.cool_season)


def _main_grass(past: Past) -> Grass:
    """The grass that most of the stand is; of equal shares, and where it isn't known, the shallowest-rooted."""
    parts = shares(stand_mix(past))
    most = max(parts.values(), default=0.0)
    kinds = [grass(name) for name, percent in parts.items() if percent == most]
    return min(kinds or [grass("unknown")], key=deep_rooted)


def used_mm(ground: RootZone, days: Mapping[int, DayWeather]) -> dict[int, float]:
    """Day (an ordinal) -> use of the turf in mm, for the days of which both temperatures are known."""
    return {
        day: ground.use_mm(
            reference_mm(
                seen.low_c, seen.high_c, ground.latitude, seen.day - date(seen.date.year, 1, 1).toordinal() + 1
            ),
            seen.date,
        )
        for day, seen in days.items()
        if seen.low_c is not None and seen.high_c is not None
    }


def _stale(past: Past) -> str:
    newest = past.lawnwide(Weather).last_where(lambda seen: seen.high_c is not None)
    if newest is None:
        return "no temperatures are on file"
    if past.day - newest.day > FRESH_DAYS:
        return f"the newest temperatures on file are of {spoken(newest.date, past.date)}"
    return ""


def _no_rain(past: Past) -> str:
    """Who never wrote down a rain, not even a nought, can't be taken to have had none."""
    first = past.day - LOOK_BACK_DAYS
    gauged = past[Rain].since(first) or past.lawnwide(Rain).since(first)
    if gauged or any(seen.rain_mm is not None for seen in past.lawnwide(Weather).since(first)):
        return ""
    return "no rain is on file, not even a nought"


def _soaked_on(rain: Mapping[int, float], waterings: Waterings, first: int) -> int | None:
    """The newest day from `first` on that filled the root zone: watered deep, or the last of three days of an inch.

    What came on the last of them has to count by itself: a few drops two days after an inch fill nothing.
    """
    came = {day: mm for day, mm in rain.items() if mm}
    for day, found in waterings.items():
        came[day] = came.get(day, 0.0) + sum(one.depth_mm or 0.0 for one in found)
    for day in sorted(came, reverse=True):
        if day < first:
            break
        if any(one.deep for one in waterings.get(day, ())):
            return day
        in_days = sum(came.get(day - back, 0.0) for back in range(SOAKING_DAYS))
        if came[day] > RAIN_LOST_MM and reaches(in_days, SOAKING_MM):
            return day
    return None


def _walked(past: Past, ground: RootZone, since: int, days: Mapping[int, DayWeather], waterings: Waterings) -> Balance:
    use = used_mm(ground, {day: seen for day, seen in days.items() if day >= since - USUAL_DAYS})
    deficit, bridged, gap, reached = 0.0, 0, 0, 0
    dry, short, tight = 0, 0, tight_mm(ground.allowed_mm, ground.total_mm)
    through = past.day if past.day in use or since == past.day else past.day - 1
    for day in range(since + 1, past.day + 1):
        used = use.get(day)
        gap = 0 if used is not None else gap + 1
        if used is None and day <= through:
            used = _usual(use, day - 1)
            bridged += 1
            if used is None or gap > BRIDGED_DAYS:
                return Balance(
                    why=f"the temperatures before {spoken(date.fromordinal(day + 1), past.date)} are missing"
                )
        watered = waterings.get(day, ())
        if any(one.depth_mm is None for one in watered):
            return Balance(why=f"the watering of {spoken(date.fromordinal(day), past.date)} has no depth")
        fell = days[day].rain_mm if day in days else None
        came = effective_mm(fell or 0.0) + sum(one.depth_mm or 0.0 for one in watered)
        deficit = min(ground.total_mm, max(0.0, deficit + (used or 0.0) - came))
        reached = (reached or day) if deficit >= ground.allowed_mm else 0
        if deficit < ground.allowed_mm / 2:
            dry = short = 0
        elif day < past.day:
            dry = dry or (day if deficit >= ground.allowed_mm else 0)
            short = short or (day if deficit >= tight else 0)
    a_day = _usual(use, past.day)
    left = max(0.0, ground.allowed_mm - deficit)
    return Balance(
        deficit_mm=deficit,
        allowed_mm=ground.allowed_mm,
        total_mm=ground.total_mm,
        et_mm_a_day=a_day,
        days_to_water=left / a_day if a_day else (None if left else 0.0),
        since=date.fromordinal(since),
        through=date.fromordinal(through),
        reached=date.fromordinal(reached) if reached else None,
        dry=date.fromordinal(dry) if dry else None,
        short=date.fromordinal(short) if short else None,
        bridged=bridged,
    )


def _usual(use: Mapping[int, float], last: int) -> float | None:
    """The mean use of a day in the week that ends with that day; None with fewer than 3 days of it on file."""
    week = [use[day] for day in range(last - USUAL_DAYS + 1, last + 1) if day in use]
    return sum(week) / len(week) if len(week) >= USUAL_NEEDS else None
