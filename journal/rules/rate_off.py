"""Fertilizer, lime or a supplement put down well beside the rates on its label."""

from datetime import timedelta

from journal.facts.citation import label
from journal.facts.rounding import exceeds, reaches
from journal.reckon.label_range import Rated, put_downs
from journal.record.kinds.feeding import Feeding
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import LABEL, Numbers, in_words
from journal.rules.turns import after
from journal.rules.words import on
from journal.season.history import Past

STANDS_DAYS = 30


@rule(
    "rate-off",
    levels=(Level.NOTE,),
    watches=(Feeding,),
    turns=(after(Feeding, STANDS_DAYS - 1),),
    basis=(label("the range of rates"),),
)
def rate_off(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """The amount used is far from the label's range for the area."""
    off: dict[str, list[Rated]] = {}
    for one in put_downs(past, past.day - STANDS_DAYS + 1):
        if _number(one, n):
            off.setdefault(one.product.name, []).append(one)
    return tuple(_finding(past, name, found, n) for name, found in off.items())


def _number(one: Rated, n: Numbers) -> str:
    """The number that is passed, or ''."""
    if exceeds(one.rate, n["over"] * one.label.high):
        return "over"
    return "" if one.light or reaches(one.rate, n["under"] * one.label.low) else "under"


def _finding(past: Past, name: str, found: list[Rated], n: Numbers) -> Finding:
    newest = found[-1]
    number = _number(newest, n)
    over, unit = number == "over", newest.label.dimension.value
    bound = newest.label.high if over else newest.label.low
    said, limit = (in_words(value, unit, past.lawn.units) for value in (newest.rate, bound))
    n.tell(name, bound, unit, LABEL, label())
    passes = f" in {len(newest.entries)} passes" if len(newest.entries) > 1 else ""
    clears_on = newest.date + timedelta(STANDS_DAYS)
    return Finding(
        level=Level.NOTE,
        subject=name,
        headline=f"{name} at {said}, {'above' if over else 'below'} its label's {limit}",
        why=f"put down {on(newest.date, past)}{passes}; a fifth off is more than a spreader set with care",
        do="if the line is wrong, amend it; else set the spreader anew before the next one"
        + ("" if over else ", or say `light` where less was meant"),
        clears=f"an amended amount, or {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=tuple(dict.fromkeys(entry.id for one in found for entry in one.entries)),
        numbers=(number, name),
    )
