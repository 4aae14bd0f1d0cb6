"""What breaks a label: too much of a product, and spraying in wind."""

from datetime import timedelta

from journal.facts.citation import label
from journal.facts.rounding import exceeds
from journal.facts.safety import BASIS as LABEL_LAW
from journal.reckon.protection import PROTECTED, Application, applications, protects, sprayed, wind_limit
from journal.record.kinds.treatment import Treatment
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import LABEL, Numbers, in_words
from journal.rules.turns import after
from journal.rules.words import on
from journal.season.history import Past

RATE_STANDS_DAYS = 30
WIND_STANDS_DAYS = 7
BARELY = 0.01
"""Wind in m/s: what another unit may differ by when it is rounded."""


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


@rule(
    "treat-windy",
    levels=(Level.HARM, Level.NOTE),
    watches=(Treatment,),
    turns=(after(Treatment, WIND_STANDS_DAYS - 1),),
    basis=(LABEL_LAW,),
)
def treat_windy(past: Past, n: Numbers) -> Finding | None:
    """Sprayed in more wind than the label, or good practice, allows."""
    blown = [(_level(past, entry, n), entry) for entry in past[Treatment].within(WIND_STANDS_DAYS)]
    gravest = max((level.gravity for level, _ in blown if level is not None), default=None)
    if gravest is None:
        return None
    found = [(level, entry) for level, entry in blown if level is not None and level.gravity == gravest]
    level, entry = found[-1]
    lawn = past.history.lawn(entry.date)
    limit = n.tightest("most", of_label=wind_limit(entry, lawn))
    calm, wind = n["calm"], entry.wind_m_s or 0.0
    spray = sprayed(entry, lawn)
    decides, most = ("most", limit) if wind > limit + BARELY else ("calm", calm)
    said, bound = (in_words(value, "m/s", past.lawn.units) for value in (wind, most))
    clears_on = entry.date + timedelta(WIND_STANDS_DAYS)
    return Finding(
        level=level,
        headline=f"{'sprayed' if spray else 'granules spread'} in {said} of wind",
        why=f"{entry.product} {on(entry.date, past)}; {'spray drifts' if spray else 'dust drifts'} above {bound}",
        do="wait for a calmer hour; keep people and pets off where it may have drifted, and look at what grows there",
        clears=f"a week after, {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=tuple(entry.id for _, entry in found),
        numbers=(decides,),
    )


def _level(past: Past, entry: Treatment, n: Numbers) -> Level | None:
    """Harm above the label's wind, a note above what is calm; granules are only ever a note."""
    lawn = past.history.lawn(entry.date)
    if entry.wind_m_s is None or not protects(entry, lawn):
        return None
    if entry.wind_m_s > n.tightest("most", of_label=wind_limit(entry, lawn)) + BARELY:
        return Level.HARM if sprayed(entry, lawn) else Level.NOTE
    return Level.NOTE if entry.wind_m_s > n["calm"] + BARELY and sprayed(entry, lawn) else None
