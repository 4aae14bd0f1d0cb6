"""Cuts that take more than a third of the height at once."""

from datetime import timedelta

from journal.facts.cut_growth import LEAST_BASIS
from journal.facts.sources import published
from journal.reckon.low_cut import LOW_CUT, advised_low
from journal.reckon.standing_height import STANDING, Stood, kept_up, removed_share, stood
from journal.record.kinds.cultivation import Cultivation
from journal.record.kinds.intention import Intention
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Height
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.reach import intended
from journal.rules.turns import after
from journal.rules.words import length, on
from journal.season.history import Past
from journal.season.stand import STAND, new_grass


@rule(
    "mow-one-third",
    levels=(Level.LOSS, Level.NOTE),
    watches=(*STAND, *STANDING, *LOW_CUT),
    turns=(
        after(Mowing, "stands-days"),
        after(Height),
        after(Seeding),
        after(Cultivation),
        after(Intention, reach=intended),
    ),
    basis=(published("isu-mowing", "cornell-third", note="one publication asks for no more than a quarter"),),
)
def mow_one_third(past: Past, n: Numbers) -> Finding | None:
    """More than a third of the height cut at once."""
    last = past[Mowing].last
    if last is None or last.height_mm is None or past.day - last.day >= n.days("stands-days"):
        return None
    then = past.history.on(past.zone, last.date, past.watches)
    before = stood(then, last)
    if before is None or kept_up(before, last.height_mm):
        return None
    removed = removed_share(before.mm, last.height_mm)
    if removed <= n["share"] / 100 or advised_low(past, last):
        return None
    young = new_grass(past.history.on(past.zone, last.date - timedelta(1), past.watches))
    estimated = before.measured is None
    clears_on = last.date + timedelta(n.days("stands-days"))
    least = length(before.mm * 2 / 3, past)
    if estimated:
        n.stricter("growth")
    return Finding(
        level=Level.NOTE if estimated or young else Level.LOSS,
        headline=(
            f"{'about ' if estimated else ''}{removed * 100:.0f} % of the height cut at once"
            + (", by estimate" if estimated else "")
        ),
        why=f"mown at {length(last.height_mm, past)} {on(last.date, past)}; {_stood(before, past)}",
        do=f"let it grow; {least} would have been low enough, and the rest two to four days later",
        clears=f"the next cut, if it takes less, or {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=tuple(
            dict.fromkeys(e.id for e in (last, before.measured or before.before) if e is not None)
        ),
        basis=(LEAST_BASIS,) if estimated else (),
    )  # fmt: skip


def _stood(before: Stood, past: Past) -> str:
    if before.measured is not None:
        return f"it stood at {length(before.mm, past)} {on(before.measured.date, past)}"
    cut = before.before
    if cut is None or cut.height_mm is None:
        raise ValueError("an estimate counts from a cut of known height")
    return (
        f"cut at {length(cut.height_mm, past)} {on(cut.date, past)}, it stood at {length(before.mm, past)} or more by "
        "then, by usual growth; nothing was measured"
    )
