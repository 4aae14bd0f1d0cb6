"""Clippings that hold what was sprayed on them, taken off the lawn."""

from datetime import timedelta

from journal.facts.safety import BASIS as LABEL_LAW
from journal.facts.sources import published
from journal.reckon.clippings import CLIPPINGS, Treated, treated_clippings
from journal.record.kinds.mowing import Mowing
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after
from journal.rules.words import on
from journal.season.history import Past

STANDS_DAYS = 14


@rule(
    "clippings-treated",
    levels=(Level.LOSS, Level.NOTE),
    watches=CLIPPINGS,
    turns=(after(Mowing, STANDS_DAYS - 1), *(after(kind) for kind in CLIPPINGS)),
    basis=(LABEL_LAW, published("ask-673444", "label-82514")),
)
def clippings_treated(past: Past, n: Numbers) -> Finding | None:
    """Clippings bagged while they hold a weed product: they kill what they are composted or mulched for."""
    found: list[tuple[Mowing, Treated]] = []
    for mowing in past[Mowing].within(STANDS_DAYS):
        if mowing.clippings == "bag":
            held = treated_clippings(past.history.on(past.zone, mowing.date, past.watches), mowing)
            if held is not None:
                found.append((mowing, held))
    if not found:
        return None
    grave = [row for row in found if _level(row[1]) is Level.LOSS]
    mowing, held = (grave or found)[-1]
    use = held.use
    n.stricter("days")
    clears_on = mowing.date + timedelta(STANDS_DAYS)
    where = " on a spot" if use.spot else ""
    return Finding(
        level=_level(held),
        headline=f"treated clippings bagged: {use.name}",
        why=(
            f"{use.name}{where} {on(use.date, past)}, bagged {on(mowing.date, past)}, "
            f"cut number {held.mowings} after it; "
            + _stays(held, round(n["mowings"]))
            + ("" if held.sure else "; which came first that day is not known")
        ),
        do=(
            "no compost, mulch, garden bed or animal feed from these; put them where the label says"
            + ("" if held.starter else ", and leave the next ones on the lawn")
        ),
        clears=f"an amended line, or {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=tuple(id for one, what in (grave or found) for id in (one.id, what.use.entry.id)),
    )


def _level(held: Treated) -> Level:
    """A note for a starter, a spot, an unknown order, and a product that nobody knows."""
    sure = held.stays and held.sure and not held.use.spot and held.use.product is not None
    return Level.LOSS if sure else Level.NOTE


def _stays(held: Treated, mowings: int) -> str:
    if held.starter:
        return f"the first {mowings} cuts hold its active"
    return f"{'all cuts of the season' if held.season else f'the first {mowings} cuts'} stay on the lawn"
