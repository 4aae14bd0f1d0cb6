"""The starter at sowing: missing, or another feeding in its place."""

from collections.abc import Iterator
from datetime import timedelta
from math import ceil

from journal.facts.factors import g_per_m2
from journal.facts.sources import judgment
from journal.reckon.dose import doses
from journal.reckon.feed_barred import FEED_BARRED, starter_bar
from journal.reckon.feedings import FEEDINGS, FeedingDay, fed_since, feeding_days
from journal.reckon.starter import LONGEST_TEST_DAYS, is_plain_starter, phosphorus_barred, soil_test_days
from journal.record.entry import Entry
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.soil import SoilTest
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers, in_words
from journal.rules.turns import Site, after, at, closed_days, fed_since_days, seasons
from journal.rules.words import days, on
from journal.season.history import Past
from journal.season.stand import day_zero, is_dormant, sown

_GENTLE = g_per_m2(0.5)
_DISPUTED = judgment(
    "publications want phosphorus at seeding only where a soil test or the law allows it", "vermont-1266b"
)


def _to_the_last_day(entry: Entry, site: Site) -> Iterator[int]:
    """Every day on which it may be missing: what bars it may change from day to day."""
    yield from range(ceil(site.number("starter-missing", "to-day")) + 1)


def _tests(entry: Entry, site: Site) -> tuple[int, ...]:
    """How long a soil test counts, by the local rule and by custom."""
    return tuple(sorted(soil_test_days(site.lawn)))


@rule(
    "starter-missing",
    levels=(Level.LATE,),
    watches=(Seeding, SoilTest, *FEED_BARRED),
    turns=(
        after(Seeding, reach=_to_the_last_day),
        *(after(kind) for kind in FEEDINGS),
        after(SoilTest, reach=_tests, within=LONGEST_TEST_DAYS),
        at(fed_since_days, "from-day"),
        at(seasons),
        at(closed_days),
    ),
    basis=(_DISPUTED,),
)
def starter_missing(past: Past, n: Numbers) -> Finding | None:
    """Sown, and no starter in the first week."""
    seeding, kept = sown(past), fed_since(past)
    if seeding is None or kept is None or is_dormant(past.lawn, seeding):
        return None
    age = past.day - seeding.day
    counted = past.day - max(seeding.day, kept.toordinal())
    if counted < n.days("from-day") or age > n.days("to-day"):
        return None
    fed = feeding_days(past, seeding.day - n.days("before-days"))
    if any(feeding.starter or serves_as_starter(past, feeding) for feeding in fed):
        return None
    if starter_bar(past, plain=phosphorus_barred(past, past.day)) is not None:
        return None
    last = seeding.date + timedelta(n.days("to-day"))
    return Finding(
        level=Level.LATE,
        headline=f"no starter by day {age} after sowing",
        why=f"sown {on(seeding.date, past)}; a starter goes down with the seed or in the week after",
        do=(
            f"feed plain nitrogen, about {in_words(_GENTLE, 'g/m2', past.lawn.units)}: phosphorus is not wanted here"
            if phosphorus_barred(past, past.day)
            else f"feed a starter, until {on(last, past)}"
        ),
        clears=f"a starter, or after {on(last, past)}",
        clears_on=last + timedelta(1),
        evidence=(seeding.id,),
        numbers=("from-day", "to-day", "before-days"),
    )


@rule(
    "starter-wrong",
    levels=(Level.LOSS,),
    watches=(Seeding, *FEEDINGS, SoilTest),
    turns=(
        after(Seeding, "to-day"),
        *(after(kind) for kind in FEEDINGS),
        after(SoilTest, reach=_tests, within=LONGEST_TEST_DAYS),
        at(seasons, "to-day", -7),
    ),
    basis=(_DISPUTED,),
)
def starter_wrong(past: Past, n: Numbers) -> Finding | None:
    """A feeding at sowing that is not a starter."""
    seeding, zero = sown(past), day_zero(past)
    if seeding is None or zero is None:
        return None
    first = zero.toordinal()
    if past.day > first + n.days("to-day"):
        return None
    wrong = [
        feeding
        for feeding in feeding_days(past, first - n.days("before-days"))
        if not (feeding.starter or _weed_and_feed(past, feeding) or serves_as_starter(past, feeding))
    ]
    if not wrong:
        return None
    free = zero + timedelta(n.days("to-day") + 1)
    fed = wrong[-1]
    names = ", ".join(dict.fromkeys(dose.product for entry in fed.entries for dose in doses(entry)))
    when = fed.day - first
    return Finding(
        level=Level.LOSS,
        headline=f"{names} is no starter",
        why=(
            f"sown {on(zero, past)}, fed {on(fed.date, past)}, "
            + (f"{days(-when)} before sowing" if when < 0 else f"on day {when}")
            + f"; to day {n.days('to-day')} seedlings get a starter and nothing else"
        ),
        do=f"water it in well, and feed nothing more before {on(free, past)}",
        clears=f"day {n.days('to-day') + 1} after sowing",
        clears_on=free,
        evidence=(*(entry.id for feeding in wrong for entry in feeding.entries), seeding.id),
        numbers=("before-days", "to-day"),
    )


def _weed_and_feed(past: Past, feeding: FeedingDay) -> bool:
    """Whether all of it was weed-and-feed: its wait before and after seed is judged instead."""
    products = [past.lawn.product(dose.product) for entry in feeding.entries for dose in doses(entry)]
    return all(product is not None and product.kind == "weed-and-feed" for product in products)


def serves_as_starter(past: Past, feeding: FeedingDay) -> bool:
    """Where a soil test or a local rule speaks against phosphorus, plain nitrogen of a starter's size."""
    return phosphorus_barred(past, feeding.day) and is_plain_starter(past, feeding)
