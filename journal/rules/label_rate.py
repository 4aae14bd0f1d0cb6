"""More of a product at once than its label allows."""

from datetime import timedelta

from journal.facts.citation import label
from journal.facts.rounding import exceeds
from journal.facts.safety import BASIS as LABEL_LAW
from journal.reckon.protection import PROTECTED, Application, applications
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import LABEL, Numbers, in_words
from journal.rules.turns import after
from journal.rules.words import on
from journal.season.history import Past

RATE_STANDS_DAYS = 30


@rule(
    "label-rate",
    levels=(Level.HARM, Level.NOTE),
    watches=PROTECTED,
    turns=[after(kind, RATE_STANDS_DAYS - 1) for kind in PROTECTED],
    basis=(label("no more than its high rate"), LABEL_LAW),
)
def label_rate(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """More of a weed, insect or disease product than its label allows at once."""
    over: dict[tuple[str, bool], list[Application]] = {}
    for one in applications(past, past.day - RATE_STANDS_DAYS + 1):
        if one.product.rate is not None and exceeds(one.rate, one.product.rate.high):
            over.setdefault((one.product.name, one.spot), []).append(one)
    return tuple(_over_rate(past, found, n) for found in over.values())


def _over_rate(past: Past, found: list[Application], n: Numbers) -> Finding:
    """Broadcast and spot are told apart: only the first has put it on the whole zone."""
    newest = found[-1]
    name, rate = newest.product.name, newest.product.rate
    if rate is None:
        raise AssertionError("without a label's rate nothing is over it")
    unit = rate.dimension.value
    most, used = (in_words(value, unit, past.lawn.units) for value in (rate.high, newest.rate))
    number = f"{name} high"
    n.tell(number, rate.high, unit, LABEL, label())
    clears_on = newest.date + timedelta(RATE_STANDS_DAYS)
    lines = " in several passes" if len(newest.entries) > 1 else ""
    return Finding(
        level=Level.NOTE if newest.spot else Level.HARM,
        subject=f"{name}-spot" if newest.spot else name,
        headline=f"{name} at {used}; its label allows {most}",
        why=f"put down {on(newest.date, past)}{lines}{' on a spot' if newest.spot else ''}; the label is the law",
        do=(
            "if the line is wrong, amend it; if that much went down, put down no more of it, and do what its label "
            "says of people, pets and water"
        ),
        clears=f"an amended amount, or {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=tuple(entry.id for one in found for entry in one.entries),
        numbers=(number,),
    )
