"""Watering too often for roots to go deep."""

from datetime import date

from journal.facts.mixture import has_bluegrass
from journal.facts.rounding import reaches
from journal.reckon.root_zone import ROOT_ZONE
from journal.reckon.threshold import in_force
from journal.reckon.uses import uses
from journal.reckon.watering import HOLDS, asked_for
from journal.reckon.watering_in import water_in
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.treatment import Treatment
from journal.record.kinds.watering import Watering
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after
from journal.rules.words import days, on
from journal.season.history import Past
from journal.season.stand import STAND, in_seedbed, new_grass, sown_mix
from journal.season.water import water_days

_LONGEST = 21
"""No owner can have it counted over more days."""

WANTED_DAYS = 3
"""The day of an application that wants water, and the two after it: 48 hours."""


@rule(
    "water-often",
    levels=(Level.NOTE,),
    watches=(*STAND, *ROOT_ZONE, *HOLDS),
    turns=(after(Watering, *range(_LONGEST + 1)),),
    basis=(),
)
def water_often(past: Past, n: Numbers) -> Finding | None:
    """An established lawn watered on many days of one week."""
    week, most = n.days("days"), n["dates"]
    if len(past[Watering].between(past.day - week, past.day - 1)) <= most or new_grass(past):
        return None
    dates = [day for day in _dates(past, week, n) if not _wanted(past, day)]
    if len(dates) <= most:
        return None
    found = water_days(past, dates[0], past.day - 1)
    return Finding(
        level=Level.NOTE,
        headline=f"watered on {len(dates)} days of the last {week}",
        why=f"{', '.join(on(day, past) for day in dates)}; seldom and deeply is what draws roots down",
        do="skip until it wilts a little or the soil is dry below, then water once, thoroughly",
        clears=f"{most:.0f} dates or fewer in {days(week)}",
        evidence=tuple(one.entry.id for day in dates for one in found.get(day, ()) if not one.assumed),
    )


def _dates(past: Past, week: int, n: Numbers) -> list[int]:
    """The days (ordinals) of the week before today on which enough was put down by hand; the timer's don't count."""
    put_down = {
        day: sum(one.depth_mm or 0.0 for one in found if not one.assumed)
        for day, found in water_days(past, past.day - week, past.day - 1).items()
    }
    return [day for day, mm in put_down.items() if mm > 0 and reaches(mm, n["least"])]


def _wanted(past: Past, day: int) -> bool:
    """Whether something asked for that water: a seedbed, a spot, an application, the account of the root zone."""
    then = past.history.on(past.zone, date.fromordinal(day), past.watches)
    return in_seedbed(then) or _spot(then) or _watered_in(then) or asked_for(past, day)


def _spot(then: Past) -> bool:
    """Whether a spot sown there was to be kept damp."""
    for seeding in then[Seeding].within(61):
        if seeding.spot or seeding.spot_m2 is not None:
            slow = has_bluegrass(sown_mix(then.lawn, then.zone, seeding))
            if then.day - seeding.day <= in_force(then.lawn, "seedbed-dry", "days-bluegrass" if slow else "days"):
                return True
    return False


def _watered_in(then: Past) -> bool:
    """Whether a feeding, or a product that is watered in, went down in the 48 hours before."""
    if then[Feeding].within(WANTED_DAYS):
        return True
    if not then[Treatment].within(WANTED_DAYS):
        return False
    return any(water_in(use, then.lawn) is not None for use in uses(then, then.day - WANTED_DAYS + 1))
