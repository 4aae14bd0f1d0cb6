"""Lime: too much at once, and too near quick nitrogen."""

from collections.abc import Iterator
from datetime import timedelta

from journal.facts.rounding import exceeds
from journal.reckon.dose import covered_share, doses, is_spot, rate_g_per_m2
from journal.reckon.feeding import holds_nitrogen
from journal.reckon.feedings import FEEDINGS
from journal.record.entry import Entry
from journal.record.kinds.feeding import Feeding
from journal.record.product import Product
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers, in_words
from journal.rules.turns import after
from journal.rules.words import days, on
from journal.season.history import Past

DOSE_STANDS_DAYS = 60

_SLOW_NAMES = ("methylene", "ureaform", "formaldehyde", "isobutylidene", "triazone")
"""Sources with urea in their name that give off next to none at once: from memory."""


@rule(
    "lime-dose",
    levels=(Level.LOSS, Level.NOTE),
    watches=(Feeding,),
    turns=(after(Feeding, DOSE_STANDS_DAYS - 1),),
    basis=(),
)
def lime_dose(past: Past, n: Numbers) -> Finding | None:
    """More lime at once than living grass is to be given."""
    lately = list(_limes(past, past.day - DOSE_STANDS_DAYS + 1))
    if not lately:
        return None
    window = n.days("days")
    every = list(_limes(past, past.day - DOSE_STANDS_DAYS + 1 - window))
    worst: tuple[float, list[Entry]] = (0.0, [])
    for last in lately:
        together = [one for one in every if last.day - window < one.day <= last.day]
        total = _together(past, together)
        if total >= worst[0]:
            worst = (total, together)
    total, entries = worst
    level, number = (
        (Level.LOSS, "loss") if exceeds(total, n["loss"]) else (Level.NOTE, "most") if exceeds(total, n["most"])
        else (None, "")
    )  # fmt: skip
    if level is None:
        return None
    said, most = (in_words(value, "g/m2", past.lawn.units) for value in (total, n[number]))
    clears_on = entries[-1].date + timedelta(DOSE_STANDS_DAYS)
    over = f" in {len(entries)} doses since {on(entries[0].date, past)}" if len(entries) > 1 else ""
    return Finding(
        level=level,
        headline=f"{said} of lime {f'within {days(window)}' if len(entries) > 1 else 'at once'}",
        why=f"put down {on(entries[-1].date, past)}{over}; {most} is the most {_says(number)}",
        do="water it in, put down no more for some months, and split the next need into doses",
        clears=f"an amended amount, or {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=tuple(entry.id for entry in entries),
        numbers=(number, "days"),
    )


def _says(number: str) -> str:
    if number == "loss":
        return "for living grass: what lies on top of it cakes"
    return "for living grass; some publications allow twice as much"


def _limes(past: Past, since: int) -> Iterator[Entry]:
    """Entries of lime with a known amount, spots left out, oldest first."""
    for entry in past[Feeding].since(since):
        lawn = past.history.lawn(entry.date)
        product = lawn.product(entry.product)
        if product is None or product.kind != "lime" or is_spot(entry):
            continue
        if rate_g_per_m2(doses(entry)[0], entry, lawn) is not None:
            yield entry


def _together(past: Past, entries: list[Entry]) -> float:
    """g/m2: what went over the whole zone, and what its parts got on the ground that they covered."""
    whole = parts = share = 0.0
    for entry in entries:
        rate = rate_g_per_m2(doses(entry)[0], entry, past.history.lawn(entry.date)) or 0.0
        covered = covered_share(entry)
        if covered >= 1:
            whole += rate
        else:
            parts, share = parts + rate * covered, share + covered
    return whole + (parts / min(1.0, share) if share else 0.0)


@rule(
    "lime-urea",
    levels=(Level.NOTE,),
    watches=FEEDINGS,
    turns=tuple(after(kind, "days") for kind in FEEDINGS),
    basis=(),
)
def lime_urea(past: Past, n: Numbers) -> Finding | None:
    """Lime and urea or ammonium within two weeks of each other: nitrogen goes off into the air."""
    apart = n.days("days")
    recent = _applied(past, past.day - 2 * apart)
    limes = [(e, p) for e, p in recent if p.kind == "lime"]
    if not limes:
        return None
    quick = [(e, p) for e, p in recent if _gives_off(p)]
    pairs = [
        (lime, fed)
        for lime in limes
        for fed in quick
        if abs(lime[0].day - fed[0].day) < apart and past.day - max(lime[0].day, fed[0].day) < apart
    ]
    if not pairs:
        return None
    (lime, _), (fed, product) = max(pairs, key=lambda pair: max(pair[0][0].day, pair[1][0].day))
    free = max(lime.date, fed.date) + timedelta(apart)
    between = abs(lime.day - fed.day)
    return Finding(
        level=Level.NOTE,
        headline=f"lime and {product.name} {'on one day' if not between else f'{days(between)} apart'}",
        why=(
            f"lime {on(lime.date, past)}, {product.name} {on(fed.date, past)}; lime drives ammonia out of urea and "
            "ammonium that lies on the surface. Some tell of 7 days, some that it does not matter"
        ),
        do=f"water both in well; next time leave {days(apart)} between them",
        clears=f"{days(apart)} after the later of both, {on(free, past)}",
        clears_on=free,
        evidence=tuple(dict.fromkeys(e.id for pair in pairs for e, _ in pair)),
    )


def _applied(past: Past, since: int) -> list[tuple[Entry, Product]]:
    found: list[tuple[Entry, Product]] = []
    for kind in FEEDINGS:
        for entry in past[kind].since(since):
            if is_spot(entry):
                continue
            lawn = past.history.lawn(entry.date)
            products = (lawn.product(dose.product) for dose in doses(entry))
            found += [(entry, product) for product in products if product is not None]
    return found


def _gives_off(product: Product) -> bool:
    """Whether any of its nitrogen may be quick urea or ammonium: a source that is not entered may be."""
    if not holds_nitrogen(product) or (product.slow or 0.0) >= 1:
        return False
    return not product.n_source or any(_is_urea(source.casefold()) for source in product.n_source)


def _is_urea(source: str) -> bool:
    return ("urea" in source or "ammoni" in source) and not any(name in source for name in _SLOW_NAMES)
