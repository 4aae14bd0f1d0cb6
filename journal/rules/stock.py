"""More of a product is needed, or was put down, than the shed holds."""

import math
from collections.abc import Iterator
from datetime import timedelta

from journal.facts.feeding import EARLY_AUTUMN, LATE_AUTUMN, ONCE, SPRING
from journal.facts.rounding import exceeds
from journal.facts.sources import judgment
from journal.reckon.dose import doses
from journal.reckon.feeding import holds_nitrogen
from journal.reckon.feedings import FEEDINGS
from journal.reckon.needs import NEEDS, For, Need, needs
from journal.reckon.stock import USES, Shelf, Use, shelf_on
from journal.record.day import MonthDay
from journal.record.entry import Entry
from journal.record.kinds.intention import Intention
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Sighting
from journal.record.kinds.stock import Stock
from journal.record.unit import Dimension
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers, in_words
from journal.rules.reach import intended
from journal.rules.turns import Site, after, at, closed_days, each_year, fed_since_days, only, seasons
from journal.rules.words import on
from journal.season.history import Past

STANDS_DAYS = 14
LONGEST_DAYS = 240
"""No owner can have the next feeding open later than that."""

_STEPS = ("step-days", "step-days-15", "step-days-50", "step-days-80")
_GAPS = ("days", "days-15", "days-50", "days-80")


def _next(entry: Entry, site: Site) -> range:
    """A feeding lets the next be opened after any number of days up to the longest: a small one sooner."""
    products = (site.lawn.product(dose.product) for dose in doses(entry))
    if not any(product is not None and holds_nitrogen(product) for product in products):
        return range(0)
    days = [site.number("feed-overdue", name) for name in _STEPS] + [
        site.number("feed-too-soon", name) for name in _GAPS
    ]
    return range(math.ceil(max(days)) + 1)


def _of_age(entry: Entry, site: Site) -> tuple[int]:
    """From when a sown zone is fed like any other."""
    return (math.ceil(site.number("feed-overdue", "seeded-days")),)


def _dormant_of_age(site: Site, year: int) -> Iterator[int]:
    """The same for what was sown dormant, counted from growth start."""
    for day in seasons(site, year):
        yield day + math.ceil(site.number("feed-overdue", "seeded-days")) + 1


def _opens(site: Site, year: int) -> Iterator[int]:
    """When the first feeding of a season or of a book opens, and when a season is too far gone for one."""
    offered = min(math.ceil(site.number("feed-overdue", name)) for name in ("step-days", "days"))
    late = math.ceil(site.number("feed-overdue", "late-days"))
    for day in (*seasons(site, year), *fed_since_days(site, year)):
        yield from (day + offered, day - late - 1, day - late, day - late + 1)


_WINDOWS = each_year(
    *(day for row in (SPRING, EARLY_AUTUMN, LATE_AUTUMN, ONCE) for day in (row.first, row.last.shifted(1)))
)


def _buy_ahead(entry: Entry, site: Site) -> Iterator[int]:
    if isinstance(entry, Intention) and entry.target is not None:
        yield max(0, (entry.target - entry.date).days - math.ceil(site.number("stock-short", "ahead-days")))


@rule(
    "stock-short",
    levels=(Level.NOTE,),
    watches=(Stock, *USES, *NEEDS),
    turns=(
        after(Stock),
        *(after(kind, STANDS_DAYS - 1, reach=_next, within=LONGEST_DAYS) for kind in FEEDINGS),
        after(Seeding, STANDS_DAYS - 1, reach=_of_age, within=LONGEST_DAYS),
        after(Intention, reach=intended),
        only(Intention, _buy_ahead),
        after(Sighting),
        at(seasons),
        at(_opens),
        at(_WINDOWS),
        at(closed_days),
        at(_dormant_of_age),
        at(each_year(MonthDay(1, 1))),
    ),
    basis=(judgment("as far as every purchase and every use is in the book"),),
    whole_lawn=True,
)
def stock_short(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """The next open step needs more than the shed holds, or more was used than was bought."""
    if not past.lawnwide(Stock):
        return ()
    return (*_used_up(past), *_needed(past, n))


def _used_up(past: Past) -> Iterator[Finding]:
    """What was put down here lately though the shelf, as far as the book knows, no longer held it."""
    mine = {entry.id: entry for kind in USES for entry in past[kind].within(STANDS_DAYS) if not entry.by_service}
    if not mine:
        return
    bought = {buy.product for buy in past.lawnwide(Stock).all}
    products = dict.fromkeys(dose.product for entry in mine.values() for dose in doses(entry))
    for product in (name for name in products if name in bought):
        on_shelf = shelf_on(past, product)
        uses = [use for use in on_shelf.uses if use.entry.id in mine and _is_short(use)]
        if on_shelf.lots and uses and uses[-1].entry.day >= on_shelf.lots[0].entry.day:
            yield _too_much(past, on_shelf, uses)


def _is_short(use: Use) -> bool:
    return use.amount is not None and exceeds(use.amount, use.amount - use.short)


def _too_much(past: Past, on_shelf: Shelf, uses: list[Use]) -> Finding:
    last = uses[-1]
    taken, short = _said(past, on_shelf, last.amount or 0.0), _said(past, on_shelf, last.short)
    clears_on = last.entry.date + timedelta(STANDS_DAYS)
    return Finding(
        level=Level.NOTE,
        subject=f"{on_shelf.product}-used",
        headline=f"{short} more of {on_shelf.product} put down than was left",
        why=f"{taken} {on(last.entry.date, past)}; what was bought by then and not used came to {short} less",
        do=f"log the purchase that is missing, like buy {on_shelf.product} 1x 25lb, or amend the amount"
        if past.lawn.units == "us"
        else f"log the purchase that is missing, like buy {on_shelf.product} 1x 10kg, or amend the amount",
        clears=f"a purchase before that day, an amended amount, or {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=tuple(use.entry.id for use in uses),
    )


def _needed(past: Past, n: Numbers) -> Iterator[Finding]:
    """What the next work here needs, together with the other zones that need the same."""
    for mine in needs(past):
        if not any(buy.product == mine.product.name for buy in past.lawnwide(Stock).all):
            continue
        on_shelf = shelf_on(past, mine.product.name)
        if on_shelf.left is None or on_shelf.liquid:
            continue
        alike = [
            (zone, need)
            for zone in past.lawn.zone_names
            for need in needs(past.elsewhere(zone))
            if need.why is mine.why and need.product.name == mine.product.name
        ]
        total = sum(need.grams for _, need in alike)
        if exceeds(total, on_shelf.left):
            if mine.why is For.SOWING:
                n.days("ahead-days")
            yield _short(past, on_shelf, mine, [zone for zone, _ in alike], total)


def _short(past: Past, on_shelf: Shelf, need: Need, zones: list[str], total: float) -> Finding:
    left = on_shelf.left or 0.0
    name = on_shelf.product
    pack = need.product.bag_g or (on_shelf.lots[-1].size if on_shelf.lots else None)
    lacking = total - left
    bags = math.ceil(lacking / pack - 1e-6) if pack else 0
    buy = f"buy {bags} bag{'s' if bags > 1 else ''} of {_said(past, on_shelf, pack)}" if pack else "buy more"
    at_most = "at most " if on_shelf.at_most else ""
    why_for = {
        For.SOWING: f"the sowing meant for {on(need.day, past)}",
        For.FEEDING: f"a feeding, due since {on(need.day, past)},",
    }[need.why]
    return Finding(
        level=Level.NOTE,
        subject=name,
        headline=f"{name} runs short: {at_most}{_said(past, on_shelf, left)} left",
        why=f"{why_for} of {', '.join(zones)} takes about {_said(past, on_shelf, total)}",
        do=f"{buy}: {_said(past, on_shelf, lacking)} are lacking",
        clears="a purchase, or the work done",
        evidence=tuple(lot.entry.id for lot in on_shelf.lots[-1:]),
    )


def _said(past: Past, on_shelf: Shelf, amount: float) -> str:
    return in_words(amount, (Dimension.VOLUME if on_shelf.liquid else Dimension.MASS).value, past.lawn.units)
