"""A cut lower than the grass bears."""

from datetime import timedelta

from journal.facts.mixture import low_end_mm
from journal.facts.rounding import reaches
from journal.facts.sources import published
from journal.reckon.low_cut import LOW_CUT, advised_low
from journal.record.kinds.cultivation import Cultivation
from journal.record.kinds.intention import Intention
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.reach import intended
from journal.rules.turns import after
from journal.rules.words import length, on
from journal.season.history import Past
from journal.season.stand import STAND, stand_mix


@rule(
    "mow-too-low",
    levels=(Level.LOSS,),
    watches=(*STAND, *LOW_CUT),
    turns=(
        after(Mowing, "stands-days"),
        after(Seeding),
        after(Cultivation),
        after(Intention, reach=intended),
    ),
    basis=(published("purdue-ay8", "isu-mowing", note="low ends differ by up to an inch between publications"),),
)
def mow_too_low(past: Past, n: Numbers) -> Finding | None:
    """Cut below what the grass bears."""
    last = past[Mowing].last
    if last is None or last.height_mm is None or past.day - last.day >= n.days("stands-days"):
        return None
    own = ("mow-too-low", "low") in past.lawn.numbers
    mix = stand_mix(past.history.on(past.zone, last.date, past.watches))
    low = n["low"] if own or not mix else low_end_mm(mix)
    if reaches(last.height_mm, low) or advised_low(past, last):
        return None
    clears_on = last.date + timedelta(n.days("stands-days"))
    return Finding(
        level=Level.LOSS,
        headline=f"cut at {length(last.height_mm, past)}, lower than this grass bears",
        why=f"mown {on(last.date, past)}; {length(low, past)} is the lowest that its grasses stand",
        do=f"set the mower up to {length(low, past)} or more, let it grow, and water if it is dry",
        clears=f"a cut in range, sowing or dethatching within a week of it, or {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=(last.id,),
        numbers=("low", "stands-days") if own or not mix else ("stands-days",),
    )
