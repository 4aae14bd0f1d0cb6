"""Far more seed, or far less, than the ground can use."""

from datetime import timedelta

from journal.facts.rounding import exceeds, reaches
from journal.facts.sources import published
from journal.reckon.dose import is_spot
from journal.reckon.seed_rate import Sowing, sowings
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.stock import Stock
from journal.record.quantity import in_unit, plain
from journal.record.unit import Dimension, unit_for
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after
from journal.rules.words import on
from journal.season.history import Past

LONGEST_DAYS = 60


@rule(
    "seed-rate",
    levels=(Level.LOSS, Level.NOTE),
    watches=(Seeding, Stock),
    turns=(after(Seeding, "stands-days"),),
    basis=(
        published(
            "kstate-fall", "umd-september", "uc-rates", "cornell-rates",
            note="half the rate of bare soil; most do not say whether pure live seed is meant",
        ),
    ),
)  # fmt: skip
def seed_rate(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """Sown much thicker or thinner than the label or the publications say."""
    found: dict[str, Finding] = {}
    for sowing in sowings(past, n.days("stands-days")):
        level, name = _off(sowing, n)
        if level is not None:
            found[sowing.product.name] = _finding(past, sowing, level, name, n)
    return tuple(found.values())


def _off(sowing: Sowing, n: Numbers) -> tuple[Level | None, str]:
    """How grave, and the number that was passed. A spot is sown by the handful, and its size is a guess: a note."""
    spot = is_spot(sowing.entries[0])
    if not spot and exceeds(sowing.rate, n["loss"] * sowing.wanted.high):
        return Level.LOSS, "loss"
    if exceeds(sowing.rate, n["over"] * sowing.wanted.high):
        return Level.NOTE, "over"
    if not sowing.topped_up and not reaches(sowing.rate, n["under"] * sowing.wanted.low):
        return Level.NOTE, "under"
    return None, ""


def _finding(past: Past, sowing: Sowing, level: Level, name: str, n: Numbers) -> Finding:
    unit = unit_for(Dimension.MASS_RATE, past.lawn.units)
    low, high, rate = (plain(in_unit(value, unit), 2) for value in (sowing.wanted.low, sowing.wanted.high, sowing.rate))
    live = " of pure live seed" if sowing.live else ""
    said = "the label says" if sowing.by_label else "published is"
    clears_on = sowing.date + timedelta(n.days("stands-days"))
    thick = name != "under"
    passes = f" in {len(sowing.entries)} passes" if len(sowing.entries) > 1 else ""
    spot = ", on a spot" if is_spot(sowing.entries[0]) else ""
    return Finding(
        level=level,
        subject=sowing.product.name,
        headline=f"{sowing.product.name} sown {'thicker' if thick else 'thinner'} than it should be",
        why=(
            f"{rate} {unit.name}{live}{passes} {on(sowing.date, past)}{spot}; {said} {low} to {high}; "
            + ("crowded seedlings fall to disease" if thick else "thin seed comes up in clumps")
        ),
        do=(
            "if the line is wrong, amend it; else sow no more there, and cut on time"
            if thick
            else "if the line is wrong, amend it; else top up the thin places within three weeks"
        ),
        clears=f"an amended amount, or {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=tuple(entry.id for entry in sowing.entries),
        numbers=(name,),
    )
