"""Too much nitrogen at once, and too little of it slow where a local rule asks for that."""

from datetime import timedelta

from journal.facts.citation import Known
from journal.facts.local_rules import CHECK, LocalRules
from journal.facts.rounding import exceeds, over_the_law
from journal.reckon.dose import doses
from journal.reckon.feedings import FEEDINGS, FeedingDay, feeding_days
from journal.record.entry import Entry
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import LOCAL, Numbers, in_words
from journal.rules.turns import after
from journal.rules.words import on
from journal.season.history import Past
from journal.season.local import local_rules
from journal.season.stand import new_grass

STANDS_DAYS = 30
LIMIT, SOLUBLE_LIMIT, SLOW_LEAST = "limit", "soluble-limit", "slow-least"
"""Numbers of a local rule."""

_ALIKE = 1e-6
"""Shares that differ by less are the same."""

PARTS_DAYS = 10
"""A job in parts is looked back on so much further, to have the whole of it."""

_WATCHES: tuple[type[Entry], ...] = (*FEEDINGS, Seeding, Mowing)


@rule(
    "feed-dose",
    levels=(Level.HARM, Level.LOSS, Level.NOTE),
    watches=_WATCHES,
    turns=(
        *(after(kind, STANDS_DAYS - 1, STANDS_DAYS + PARTS_DAYS - 1) for kind in FEEDINGS),
        after(Seeding),
        after(Mowing),
    ),
    basis=(),
)
def feed_dose(past: Past, n: Numbers) -> Finding | None:
    """More nitrogen in one feeding than the grass takes up, or other than a local rule allows."""
    fed = [
        (feeding, _over(past, feeding, n))
        for feeding in feeding_days(past, past.day - STANDS_DAYS - PARTS_DAYS + 1)
        if past.day - feeding.day < STANDS_DAYS
    ]
    found = [(feeding, *over) for feeding, over in fed if over is not None]
    gravest = max((level.gravity for _, level, _ in found), default=None)
    if gravest is None:
        return None
    worst = [row for row in found if row[1].gravity == gravest]
    feeding, level, number = worst[-1]
    return _finding(past, feeding, level, number, tuple(e.id for row in worst for e in row[0].entries))


def _over(past: Past, feeding: FeedingDay, n: Numbers) -> tuple[Level, str] | None:
    """How bad it is and the number that decides; None for a dose that is right, or not known."""
    total, soluble = feeding.n_g_per_m2, feeding.soluble_n_g_per_m2
    then = past.history.on(past.zone, feeding.date, past.watches)
    broken = _broken(then, feeding, n)
    doubtful = broken == SOLUBLE_LIMIT and bool(_unsaid(then, feeding))
    if broken:
        return (Level.LOSS if doubtful else Level.HARM), broken
    if total is None or soluble is None:
        return None
    slow = 100 * (feeding.slow_share or 0.0) >= n["slow-share"]
    name = "loss-slow" if slow else "loss"
    if exceeds(total, n[name]):
        return Level.LOSS, name
    if exceeds(total, n["most"]):
        return Level.NOTE, "most"
    name = "most-soluble-new" if new_grass(then) else "most-soluble"
    return (Level.NOTE, name) if exceeds(soluble, n[name]) else None


def _broken(then: Past, feeding: FeedingDay, n: Numbers) -> str:
    """Which number of the local rule a feeding breaks, or ''. One that is not confirmed is never held against it."""
    law = local_rules(then.lawn)
    if law is None:
        return ""
    for name, stated, amount in (
        (LIMIT, law.most_n_g_per_m2, feeding.n_g_per_m2),
        (SOLUBLE_LIMIT, law.most_soluble_n_g_per_m2, feeding.soluble_n_g_per_m2),
    ):
        most = law.holds(stated)
        if stated is not None and most is not None and amount is not None and over_the_law(amount, most):
            n.tell(name, most, "g/m2", LOCAL, stated.basis)
            return name
    least, slow = law.holds(law.least_slow_share), _slowest_asked(then, feeding, granules=law.slow_in_granules_only)
    if law.least_slow_share is not None and least is not None and slow is not None and slow < least - _ALIKE:
        n.tell(SLOW_LEAST, 100 * least, "%", LOCAL, law.least_slow_share.basis)
        return SLOW_LEAST
    return ""


def _slowest_asked(then: Past, feeding: FeedingDay, *, granules: bool = False) -> float | None:
    """The least slow share, 0 to 1, among the products with nitrogen that say one; None where none does."""
    products = [then.lawn.product(dose.product) for entry in feeding.entries for dose in doses(entry)]
    shares = [
        product.slow
        for product in products
        if product is not None and product.nitrogen and product.slow is not None and not (granules and product.liquid)
    ]
    return min(shares, default=None)


def _unsaid(then: Past, feeding: FeedingDay) -> tuple[str, ...]:
    """The products with nitrogen whose slow share was never entered: all of it counts as soluble."""
    products = [then.lawn.product(dose.product) for entry in feeding.entries for dose in doses(entry)]
    found = [product.name for product in products if product is not None and product.nitrogen and product.slow is None]
    return tuple(dict.fromkeys(found))


def _counted(then: Past, feeding: FeedingDay) -> str:
    """That an unknown share was counted as none, and the line that says it."""
    names = _unsaid(then, feeding)
    if not names:
        return ""
    whose = "its" if len(names) == 1 else "their"
    lines = ", ".join(f"`set {name} slow 20% of n`" for name in names)
    return f"; {whose} slow share is not entered, so all counts as soluble: {lines} with the label's number"


def _whose(law: LocalRules | None, number: str) -> str:
    """Who sets the number: the place, or the owner, who has entered it."""
    if law is None:
        return "the local rule sets the number"
    stated = {
        LIMIT: law.most_n_g_per_m2, SOLUBLE_LIMIT: law.most_soluble_n_g_per_m2, SLOW_LEAST: law.least_slow_share,
    }[number]  # fmt: skip
    own = stated is not None and stated.basis.kind is Known.LOCAL_RULE
    return "the number is your own" if own else f"{law.place} sets the number"


def _finding(past: Past, feeding: FeedingDay, level: Level, number: str, evidence: tuple[str, ...]) -> Finding:
    if number in (LIMIT, SOLUBLE_LIMIT, SLOW_LEAST):
        return _against_the_law(past, feeding, level, number, evidence)
    units = past.lawn.units
    total, soluble = (
        f"{in_words(value or 0.0, 'g/m2', units)}" for value in (feeding.n_g_per_m2, feeding.soluble_n_g_per_m2)
    )
    then = past.history.on(past.zone, feeding.date, past.watches)
    clears_on = feeding.date + timedelta(STANDS_DAYS)
    burns = ": it may burn" if level is Level.LOSS else ""
    new = "; new grass takes little" if number == "most-soluble-new" else ""
    return Finding(
        level=level,
        headline=f"{total} of nitrogen at once{burns}",
        why=f"fed {on(feeding.date, past)}, {soluble} of it soluble{new}{_counted(then, feeding)}",
        do="water it in well, and next time feed less, or more of it slow",
        clears=f"30 days after, {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=evidence,
        numbers=(number,),
    )


def _against_the_law(past: Past, feeding: FeedingDay, level: Level, number: str, evidence: tuple[str, ...]) -> Finding:
    then = past.history.on(past.zone, feeding.date, past.watches)
    law = local_rules(then.lawn)
    granules = law is not None and law.slow_in_granules_only
    total, soluble = (
        "" if value is None else in_words(value, "g/m2", past.lawn.units)
        for value in (feeding.n_g_per_m2, feeding.soluble_n_g_per_m2)
    )
    slow = 100 * (_slowest_asked(then, feeding, granules=granules) or 0.0)
    headline, do = {
        LIMIT: (f"{total} of nitrogen at once, more than the local rule allows", "next time feed less"),
        SOLUBLE_LIMIT: (
            f"{soluble} of soluble nitrogen at once, more than the local rule allows",
            "next time feed less, or more of it slow",
        ),
        SLOW_LEAST: (
            f"{slow:.3g} % of the nitrogen slow, less than the local rule asks",
            "next time a product with more of its nitrogen slow",
        ),
    }[number]
    coated = "; enhanced-efficiency kinds may be excepted" if number == LIMIT and slow else ""
    clears_on = feeding.date + timedelta(STANDS_DAYS)
    return Finding(
        level=level,
        headline=headline,
        why=(
            f"fed {on(feeding.date, past)}{f', {soluble} of it soluble' if number == LIMIT else ''}; "
            f"{_whose(law, number)}{_counted(then, feeding) if number != SLOW_LEAST else ''}"
        ),
        do=f"water it in well, and {do}{coated}. {CHECK}",
        clears=f"30 days after, {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=evidence,
        numbers=(number,),
    )
