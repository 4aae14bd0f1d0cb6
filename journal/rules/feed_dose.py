"""Too much nitrogen at once."""

from datetime import timedelta

from journal.facts.citation import local_rule
from journal.facts.rounding import exceeds, over_the_law
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
    """More nitrogen in one feeding than the grass takes up."""
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
    if total is None or soluble is None:
        return None
    then = past.history.on(past.zone, feeding.date, past.watches)
    law = local_rules(then.lawn)
    if law is not None and law.most_n_g_per_m2 is not None:
        n.tell("limit", law.most_n_g_per_m2, "g/m2", LOCAL, local_rule())
        if over_the_law(total, law.most_n_g_per_m2):
            return Level.HARM, "limit"
    slow = 100 * (feeding.slow_share or 0.0) >= n["slow-share"]
    name = "loss-slow" if slow else "loss"
    if exceeds(total, n[name]):
        return Level.LOSS, name
    if exceeds(total, n["most"]):
        return Level.NOTE, "most"
    name = "most-soluble-new" if new_grass(then) else "most-soluble"
    return (Level.NOTE, name) if exceeds(soluble, n[name]) else None


def _finding(past: Past, feeding: FeedingDay, level: Level, number: str, evidence: tuple[str, ...]) -> Finding:
    units = past.lawn.units
    total, soluble = (
        f"{in_words(value or 0.0, 'g/m2', units)}" for value in (feeding.n_g_per_m2, feeding.soluble_n_g_per_m2)
    )
    clears_on = feeding.date + timedelta(STANDS_DAYS)
    by_law = ", more than the local rule allows" if level is Level.HARM else ""
    burns = ": it may burn" if level is Level.LOSS else ""
    new = "; new grass takes little" if number == "most-soluble-new" else ""
    return Finding(
        level=level,
        headline=f"{total} of nitrogen at once{by_law}{burns}",
        why=f"fed {on(feeding.date, past)}, {soluble} of it soluble{new}",
        do="water it in well, and next time feed less, or more of it slow",
        clears=f"30 days after, {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=evidence,
        numbers=(number,),
    )
