"""Feeding on days that a local rule closes, and on frozen ground."""

from datetime import date, timedelta

from journal.facts.citation import Basis, Known
from journal.facts.local_rules import CHECK, Closed, Stated
from journal.facts.sources import judgment
from journal.reckon.dose import doses, rate_g_per_m2
from journal.reckon.feeding import holds_nitrogen, holds_phosphate
from journal.reckon.feedings import FEEDINGS
from journal.record.entry import Entry
from journal.record.kinds.sighting import Sighting
from journal.record.kinds.weather import Weather
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after
from journal.rules.words import on
from journal.season.growth import frozen_open
from journal.season.history import Past
from journal.season.local import closing, local_rules

STANDS_DAYS = 30

_FROZEN = judgment("nothing takes it up, and it runs off with the thaw; many local rules name frozen ground")


@rule(
    "feed-closed",
    levels=(Level.HARM, Level.NOTE),
    watches=(*FEEDINGS, Sighting, Weather),
    turns=tuple(after(kind, STANDS_DAYS - 1) for kind in FEEDINGS),
    basis=(),
)
def feed_closed(past: Past, n: Numbers) -> Finding | None:
    """Nitrogen or phosphorus on a day that a local rule closes, or on frozen or snow-covered ground."""
    by_day: dict[date, list[Entry]] = {}
    for kind in FEEDINGS:
        for entry in past[kind].within(STANDS_DAYS):
            by_day.setdefault(entry.date, []).append(entry)
    found = [one for day in sorted(by_day) if (one := _of_day(past, day, by_day[day])) is not None]
    return max(reversed(found), key=lambda one: one.level.gravity, default=None)


def _of_day(past: Past, day: date, entries: list[Entry]) -> Finding | None:
    """What went down that day, all together."""
    then = past.history.on(past.zone, day, past.watches)
    n, nitrogen, phosphorus, evidence = 0.0, False, False, []
    known = True
    for entry in entries:
        for dose in doses(entry):
            product = then.lawn.product(dose.product)
            if product is None:
                continue
            with_n = holds_nitrogen(product)
            with_p = product.kind == "starter" if product.analysis is None else holds_phosphate(product, then.lawn)
            if not (with_n or with_p):
                continue
            nitrogen, phosphorus = nitrogen or with_n, phosphorus or with_p
            evidence.append(entry.id)
            rate = rate_g_per_m2(dose, entry, then.lawn)
            known = known and rate is not None and product.analysis is not None
            n += (rate or 0.0) * product.nitrogen
    if not evidence:
        return None
    if (seen := frozen_open(then)) is not None:
        return _frozen(past, day, seen, tuple(evidence))
    shut = closing(then.lawn, day, nitrogen=nitrogen, phosphorus=phosphorus, n_g_per_m2=n if known else None)
    return None if shut is None else _closed(past, day, shut, tuple(evidence), known=known)


def _frozen(past: Past, day: date, seen: Sighting, evidence: tuple[str, ...]) -> Finding:
    rules = local_rules(past.lawn)
    ground: tuple[Basis, ...] = (rules.ground.basis,) if rules is not None and rules.ground is not None else ()
    snow = seen.subject == "snow"
    return _finding(
        past, day, (*evidence, seen.id), Level.HARM,
        headline="fed on snow" if snow else "fed on frozen ground",
        why=f"fed {on(day, past)}; {'snow' if snow else 'frozen'} since {on(seen.date, past)}: it runs off",
        basis=(*ground, _FROZEN),
    )  # fmt: skip


def _closed(past: Past, day: date, shut: Stated[Closed], evidence: tuple[str, ...], *, known: bool) -> Finding:
    """Dates that are not confirmed, or that a feeding of no known amount may not be meant by, are a note at most."""
    span, rules = shut.value, local_rules(past.history.lawn(day))
    own = shut.basis.kind is Known.LOCAL_RULE
    place = "your local rule" if own or rules is None else rules.place
    sure = shut.confirmed and (known or not span.above_n_g_per_m2)
    free = next(one for at in range(1, 367) if not span.holds(one := day + timedelta(at)))
    doubt = "" if shut.confirmed else "; the dates are not confirmed"
    doubt += (
        "" if known or not span.above_n_g_per_m2 else "; a small dose is let pass, and how much it was is not known"
    )
    return _finding(
        past, day, evidence, Level.HARM if sure else Level.NOTE,
        headline="fed on a day that the local rule closes" if sure else "fed on a day that may be closed",
        why=f"fed {on(day, past)}; {place} closes these days to {span.closes}, until {on(free, past)}{doubt}",
        basis=(shut.basis,),
    )  # fmt: skip


def _finding(
    past: Past, day: date, evidence: tuple[str, ...], level: Level, *, headline: str, why: str, basis: tuple[Basis, ...]
) -> Finding:
    clears_on = day + timedelta(STANDS_DAYS)
    return Finding(
        level=level,
        headline=headline,
        why=why,
        do=f"sweep up what lies on paving, and feed on open days only. {CHECK}",
        clears=f"30 days after, {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=evidence,
        basis=basis,
    )
