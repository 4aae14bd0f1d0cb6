"""Feeding, or meaning to feed, on days that a local rule closes; and feeding on frozen ground."""

from datetime import date, timedelta

from journal.facts.citation import Basis, Known
from journal.facts.local_rules import CHECK, Closed, Stated
from journal.facts.sources import judgment
from journal.reckon.dose import doses, rate_g_per_m2
from journal.reckon.feed_ground import COLD_DAYS, Frozen, frozen_ground
from journal.reckon.feeding import holds_nitrogen, holds_phosphate
from journal.reckon.feedings import FEEDINGS
from journal.record.entry import Entry
from journal.record.kinds.intention import Intention
from journal.record.kinds.sighting import Sighting
from journal.record.kinds.weather import Weather
from journal.record.lawn import Lawn
from journal.record.product import Product
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers, in_words
from journal.rules.reach import intended
from journal.rules.turns import after
from journal.rules.words import on
from journal.season.history import Past
from journal.season.local import closing, local_rules
from journal.season.stand import intentions

STANDS_DAYS = 30
MEANT = "meant"
"""Subject of the flag for what is only meant."""

_FROZEN = judgment("nothing takes it up, and it runs off with the thaw; many local rules name frozen ground")


@rule(
    "feed-closed",
    levels=(Level.HARM, Level.NOTE),
    watches=(*FEEDINGS, Sighting, Weather, Intention),
    turns=(*(after(kind, STANDS_DAYS - 1) for kind in FEEDINGS), after(Intention, reach=intended)),
    basis=(),
)
def feed_closed(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """Nitrogen or phosphorus on a day that a local rule closes, or on frozen or snow-covered ground."""
    fed, meant = _fed(past, n), _meant(past)
    return tuple(finding for finding in (fed, meant) if finding is not None)


def _fed(past: Past, n: Numbers) -> Finding | None:
    by_day: dict[date, list[Entry]] = {}
    for kind in FEEDINGS:
        for entry in past[kind].within(STANDS_DAYS):
            by_day.setdefault(entry.date, []).append(entry)
    found = [one for day in sorted(by_day) if (one := _of_day(past, day, by_day[day], n)) is not None]
    return max(reversed(found), key=lambda one: one.level.gravity, default=None)


def _of_day(past: Past, day: date, entries: list[Entry], n: Numbers) -> Finding | None:
    """What went down that day, all together."""
    then = past.history.on(past.zone, day, past.watches)
    amount, nitrogen, phosphorus, evidence = 0.0, False, False, []
    known = True
    for entry in entries:
        for dose in doses(entry):
            product = then.lawn.product(dose.product)
            if product is None:
                continue
            with_n, with_p = _holds(product, then.lawn)
            if not (with_n or with_p):
                continue
            nitrogen, phosphorus = nitrogen or with_n, phosphorus or with_p
            evidence.append(entry.id)
            rate = rate_g_per_m2(dose, entry, then.lawn)
            known = known and rate is not None and product.analysis is not None
            amount += (rate or 0.0) * product.nitrogen
    if not evidence:
        return None
    if (frozen := frozen_ground(then)) is not None:
        return _frozen(past, day, frozen, tuple(evidence), n)
    shut = closing(then.lawn, day, nitrogen=nitrogen, phosphorus=phosphorus, n_g_per_m2=amount if known else None)
    return None if shut is None else _closed(past, day, shut, tuple(evidence), known=known)


def _holds(product: Product, lawn: Lawn) -> tuple[bool, bool]:
    """Whether it brings nitrogen, and whether phosphorus."""
    with_p = product.kind == "starter" if product.analysis is None else holds_phosphate(product, lawn)
    return holds_nitrogen(product), with_p


def _frozen(past: Past, day: date, frozen: Frozen, evidence: tuple[str, ...], n: Numbers) -> Finding:
    rules, seen = local_rules(past.lawn), frozen.seen
    ground: tuple[Basis, ...] = (rules.ground.basis,) if rules is not None and rules.ground is not None else ()
    snow = seen is not None and seen.subject == "snow"
    if seen is not None:
        how = f"{'snow' if snow else 'frozen'} since {on(seen.date, past)}"
    else:
        mean = in_words(frozen.mean_c or 0.0, "C", past.lawn.units)
        how = f"by the weather on file the last {COLD_DAYS} days had a mean of {mean}, below {_limit(past, n)}"
    return _finding(
        past, day, (*evidence, *((seen.id,) if seen is not None else ())), Level.HARM,
        headline="fed on snow" if snow else "fed on frozen ground",
        why=f"fed {on(day, past)}; {how}: it runs off",
        basis=(*ground, _FROZEN),
    )  # fmt: skip


def _limit(past: Past, n: Numbers) -> str:
    return in_words(n["frozen-mean"], "C", past.lawn.units)


def _meant(past: Past) -> Finding | None:
    """The nearest feeding that is meant for a closed day still to come."""
    for one in intentions(past, "feed"):
        if one.target is None or one.target < past.date:
            continue
        product = past.lawn.product(one.product) if one.product else None
        with_n, with_p = (True, False) if product is None else _holds(product, past.lawn)
        if not (with_n or with_p):
            continue
        shut = closing(past.lawn, one.target, nitrogen=with_n, phosphorus=with_p)
        if shut is not None:
            return _planned(past, one, one.target, shut)
    return None


def _planned(past: Past, one: Intention, target: date, shut: Stated[Closed]) -> Finding:
    sure = shut.confirmed and not shut.value.above_n_g_per_m2
    free = _open_again(shut.value, target)
    return Finding(
        level=Level.HARM if sure else Level.NOTE,
        subject=MEANT,
        headline="a feeding is meant for a day that the local rule closes"
        if sure
        else "a feeding is meant for a day that may be closed",
        why=f"meant for {on(target, past)}; {_who_closes(past, past.date, shut)}, until {on(free, past)}{_doubt(shut)}",
        do=f"put it off to {on(free, past)} or later, or strike it. {CHECK}",
        clears=f"moved or struck, or after {on(target, past)}",
        clears_on=target + timedelta(1),
        evidence=(one.id,),
        basis=(shut.basis,),
    )


def _who_closes(past: Past, day: date, shut: Stated[Closed]) -> str:
    rules = local_rules(past.history.lawn(day))
    own = shut.basis.kind is Known.LOCAL_RULE
    place = "your local rule" if own or rules is None else rules.place
    return f"{place} closes these days to {shut.value.closes}"


def _open_again(span: Closed, day: date) -> date:
    """The first day after it that is not one of them."""
    return next(one for at in range(1, 367) if not span.holds(one := day + timedelta(at)))


def _doubt(shut: Stated[Closed], *, known: bool = False) -> str:
    """What keeps it from being sure: the dates, or how much goes down."""
    small = bool(shut.value.above_n_g_per_m2) and not known
    return ("" if shut.confirmed else "; the dates are not confirmed") + (
        "; a small dose is let pass, and how much it was is not known" if small else ""
    )


def _closed(past: Past, day: date, shut: Stated[Closed], evidence: tuple[str, ...], *, known: bool) -> Finding:
    """Dates that are not confirmed, or that a feeding of no known amount may not be meant by, are a note at most."""
    sure = shut.confirmed and (known or not shut.value.above_n_g_per_m2)
    free = _open_again(shut.value, day)
    return _finding(
        past, day, evidence, Level.HARM if sure else Level.NOTE,
        headline="fed on a day that the local rule closes" if sure else "fed on a day that may be closed",
        why=f"fed {on(day, past)}; {_who_closes(past, day, shut)}, until {on(free, past)}{_doubt(shut, known=known)}",
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
