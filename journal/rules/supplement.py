"""A supplement before the new lawn stands on its own."""

from datetime import date, timedelta

from journal.facts.sources import judgment
from journal.reckon.dose import is_spot
from journal.record.day import MonthDay
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.seeding import Seeding
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after
from journal.rules.words import on
from journal.season.growth import next_start, northern_day, season
from journal.season.history import Past

STANDS_DAYS = 30
LATE_FROM = MonthDay(7, 1)
"""What is sown from here on has its first growing season in the year after: judgment."""


@rule(
    "supplement-early",
    levels=(Level.NOTE,),
    watches=(Feeding, Seeding),
    turns=(after(Feeding, STANDS_DAYS - 1), after(Seeding)),
    basis=(judgment("trials on close-mown greens saw some effect or none; for home lawns nothing was seen proven"),),
)
def supplement_early(past: Past, n: Numbers) -> Finding | None:
    """A supplement before the second growing season after the renovation."""
    used = [entry for entry in past[Feeding].within(STANDS_DAYS) if _is_supplement(past, entry)]
    if not used:
        return None
    sown = _renovated(past)
    free = _from_when(past, sown, round(n["seasons"])) if sown is not None else None
    early = [entry for entry in used if free is not None and entry.date < free]
    if sown is None or free is None or not early:
        return None
    last = early[-1]
    clears_on = last.date + timedelta(STANDS_DAYS)
    return Finding(
        level=Level.NOTE,
        headline=f"{last.product} so soon after the renovation",
        why=f"sown {on(sown, past)}, put down {on(last.date, past)}; growing season {round(n['seasons'])} begins "
        f"{on(free, past)}. By habit only then: what it does is not seen while starter and sowing still work",
        do="leave it till then: one supplement at a time, on half the zone, with pictures of both halves",
        clears=f"{on(clears_on, past)}",
        clears_on=clears_on,
        evidence=tuple(entry.id for entry in early),
    )


def _is_supplement(past: Past, entry: Feeding) -> bool:
    product = past.history.lawn(entry.date).product(entry.product)
    return product is not None and product.kind == "supplement"


def _renovated(past: Past) -> date | None:
    """When the renovation's seed went down: as set up, else the first sowing on file."""
    if past.lawn.renovated is not None:
        return past.lawn.renovated
    first = next((seeding for seeding in past[Seeding].all if not is_spot(seeding)), None)
    return first.date if first else None


def _from_when(past: Past, sown: date, seasons: int) -> date | None:
    """The start of that growing season; a sowing that had the summer before it counts its own year as the first."""
    window = season(past.lawn, sown)
    if window is None:
        return None
    in_spring = window[0] <= sown and northern_day(past.lawn, sown) < LATE_FROM
    day: date | None = sown
    for _ in range(seasons - 1 if in_spring else seasons):
        day = next_start(past.lawn, day) if day is not None else None
    return day
