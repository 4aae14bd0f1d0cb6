"""What the book itself lacks: amounts, areas, the dates of growth, water."""

from collections.abc import Iterator
from datetime import timedelta

from journal.facts.citation import memory
from journal.facts.local_rules_sets import STATES, meant, named, sets
from journal.facts.mixture import has_bluegrass
from journal.facts.sources import judgment
from journal.reckon.dose import doses, is_spot
from journal.reckon.rest import resting_since
from journal.reckon.threshold import in_force
from journal.record.day import MonthDay
from journal.record.entry import Entry
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.treatment import Treatment
from journal.record.kinds.watering import Schedule
from journal.record.kinds.weather import Rain
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.reach import running, spread_over
from journal.rules.turns import after, at, each_year, kept_since, seasons
from journal.rules.words import on
from journal.season.growth import GROWING, growing, in_growth, northern_day, season
from journal.season.history import Past
from journal.season.local import local_rules
from journal.season.stand import SEEDBED_DAYS, STAND, day_zero, in_seedbed, sown, sown_mix
from journal.season.water import WATER, water_days, water_on_file

APPLIED: tuple[type[Entry], ...] = (Feeding, Treatment, Seeding)
STANDS_DAYS = 60
ON_FILE_DAYS = 14
SUMMER = (MonthDay(6, 1), MonthDay(8, 31))


@rule(
    "amount-missing",
    levels=(Level.NOTE,),
    watches=APPLIED,
    turns=[after(kind, STANDS_DAYS - 1) for kind in APPLIED],
    basis=(judgment("without an amount no dose, rate or yearly total can be reckoned"),),
)
def amount_missing(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """Something was put down and the book does not say how much, or on how large a zone."""
    entries = [e for kind in APPLIED for e in past[kind].within(STANDS_DAYS) if not is_spot(e) and not e.by_service]
    return (*_without_amount(past, entries), *_without_area(past, entries))


def _without_amount(past: Past, entries: list[Entry]) -> Iterator[Finding]:
    lacking: dict[str, list[Entry]] = {}
    for entry in sorted(entries, key=lambda e: (e.day, e.id)):
        for dose in doses(entry):
            if not dose.said:
                lacking.setdefault(dose.product, []).append(entry)
    for product, found in lacking.items():
        clears_on = found[-1].date + timedelta(STANDS_DAYS)
        yield Finding(
            level=Level.NOTE,
            subject=product,
            headline=f"no amount for {product}",
            why=f"put down {', '.join(on(e.date, past) for e in found[-3:])} without an amount or a rate",
            do="amend the line with the total or the rate, like 12lb or 4lb/k",
            clears=f"the amount, or {on(clears_on, past)}",
            clears_on=clears_on,
            evidence=tuple(e.id for e in found),
        )


def _without_area(past: Past, entries: list[Entry]) -> Iterator[Finding]:
    """Totals on a zone whose area is not known: no rate can be worked out of them."""
    zone = past.lawn.zone(past.zone)
    if zone is None or zone.area_m2 is not None:
        return
    totals = [
        entry for entry in entries if any(d.amount_g is not None or d.amount_ml is not None for d in doses(entry))
    ]
    if totals:
        newest = max(entry.date for entry in totals)
        clears_on = newest + timedelta(STANDS_DAYS)
        yield Finding(
            level=Level.NOTE,
            subject="area",
            headline="area not known",
            why="totals were put down, and without the zone's area they give no rate",
            do=f"set {past.zone} area, like set {past.zone} area 2400sqft",
            clears=f"the area, or {on(clears_on, past)}",
            clears_on=clears_on,
            evidence=tuple(entry.id for entry in totals),
        )


@rule(
    "growth-unknown",
    levels=(Level.NOTE,),
    watches=(),
    turns=(),
    basis=(judgment("frost dates bound the growing season"),),
)
def growth_unknown(past: Past, n: Numbers) -> Finding | None:
    """No frost dates and no growing season: what depends on them is silent."""
    if season(past.lawn, past.date) is not None:
        return None
    return Finding(
        level=Level.NOTE,
        headline="when the grass grows is not known",
        why="neither frost dates nor a growing season are set; cuts, feedings and sowing are not judged against it",
        do="set last_frost 05-06 and set first_frost 10-05, with the dates of your place",
        clears="both frost dates, or growth",
    )


@rule(
    "local-rules-unknown",
    levels=(Level.NOTE,),
    watches=(),
    turns=(),
    basis=(judgment("what a law closes or limits can only be watched where it is known"),),
)
def local_rules_unknown(past: Past, n: Numbers) -> Finding | None:
    """The lawn is under local rules of which nothing is known here."""
    name = past.lawn.local_rules
    if name.casefold() in ("", "none") or named(name) is not None:
        return None
    near = meant(name)
    wanted = f"set local_rules {near}, if that is meant; or " if near else ""
    built_in = f"; built in are {', '.join(sets())}" if near or name.casefold().startswith(STATES) else ""
    watched = "only your own local_... numbers are" if local_rules(past.lawn) is not None else "nothing of it is"
    return Finding(
        level=Level.NOTE,
        headline=f"local rules {name} are not known here",
        why=f"local_rules says {name}; no set of that name is built in, so {watched} watched",
        do=(
            f"{wanted}check dates, amounts and phosphorus with the local authority; set local_rules none if there are "
            f"none{built_in}"
        ),
        clears="a set that is built in, or local_rules none",
    )


@rule(
    "water-unlogged",
    levels=(Level.NOTE,),
    watches=(*STAND, *GROWING, *WATER),
    turns=(
        after(Seeding, *range(SEEDBED_DAYS + 1)),
        at(seasons, *range(SEEDBED_DAYS + 1)),
        *(after(kind, ON_FILE_DAYS) for kind in (*STAND, *WATER)),
        after(Schedule, reach=running(ON_FILE_DAYS)),
        after(Rain, reach=spread_over(ON_FILE_DAYS), within=ON_FILE_DAYS),
        at(each_year(SUMMER[0], SUMMER[1].shifted(1))),
        at(kept_since(*WATER), ON_FILE_DAYS),
    ),
    basis=(memory("a seedbed is watered daily, and a watered lawn about weekly in summer"),),
)
def water_unlogged(past: Past, n: Numbers) -> Finding | None:
    """Water is wanted and none is on file, so that nothing is said of dryness."""
    why = _seedbed_unlogged(past) or _summer_unlogged(past) or _rest_unlogged(past)
    if not why:
        return None
    return Finding(
        level=Level.NOTE,
        headline="no water is logged",
        why=why,
        do="set its schedule, log a watering, or set this aside for good",
        clears="water on file",
    )


def _seedbed_unlogged(past: Past) -> str:
    seeding, zero = sown(past), day_zero(past)
    if seeding is None or zero is None or not in_seedbed(past):
        return ""
    name = "days-bluegrass" if has_bluegrass(sown_mix(past.lawn, past.zone, seeding)) else "days"
    age = past.day - zero.toordinal()
    if not 2 <= age <= in_force(past.lawn, "seedbed-dry", name) + 1:
        return ""
    if water_days(past, zero.toordinal(), past.day) and water_on_file(past, ON_FILE_DAYS):
        return ""
    return f"sown {on(zero, past)}, and no watering since; whether the seedbed is damp is not judged"


def _summer_unlogged(past: Past) -> str:
    zone, kept = past.lawn.zone(past.zone), past.kept_since(*WATER)
    if zone is None or not zone.irrigated or kept is None or (past.date - kept).days < ON_FILE_DAYS:
        return ""
    if not SUMMER[0] <= northern_day(past.lawn, past.date) <= SUMMER[1] or in_seedbed(past) or not growing(past):
        return ""
    if water_on_file(past, ON_FILE_DAYS):
        return ""
    return f"no watering, rain or weather on file for {ON_FILE_DAYS} days; whether the lawn is dry is not judged"


def _rest_unlogged(past: Past) -> str:
    """A lawn at rest needs a drink now and then; without anything on file nothing is said of it."""
    rest, kept = resting_since(past), past.kept_since(*WATER)
    if rest is None or kept is None or not in_growth(past):
        return ""
    if (past.date - max(rest.date, kept)).days < ON_FILE_DAYS or water_on_file(past, ON_FILE_DAYS):
        return ""
    return f"at rest since {on(rest.date, past)}, no water on file for {ON_FILE_DAYS} days; thirst is not judged"
