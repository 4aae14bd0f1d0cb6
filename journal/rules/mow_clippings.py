"""What becomes of the clippings of new grass."""

from datetime import timedelta

from journal.facts.citation import memory, practice
from journal.reckon.first_cut import FIRST_CUT, first_cut
from journal.reckon.protection import PROTECTED
from journal.reckon.uses import uses
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Height
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after, at, seasons
from journal.rules.words import on
from journal.season.history import Past
from journal.season.stand import NEW_GRASS_MOST_DAYS, STAND, day_zero, sown

_LEAVE = memory("clippings that carry a weed product stay on the lawn")


@rule(
    "mow-clippings",
    levels=(Level.NOTE,),
    watches=(*STAND, *FIRST_CUT, *PROTECTED),
    turns=(
        after(Mowing, "days"),
        after(Seeding, NEW_GRASS_MOST_DAYS),
        after(Height),
        *(after(kind) for kind in PROTECTED),
        at(seasons, NEW_GRASS_MOST_DAYS),
    ),
    basis=(practice("a mat of clippings smothers seedlings"),),
)
def mow_clippings(past: Past, n: Numbers) -> Finding | None:
    """Clippings left on new grass."""
    last, seeding, zero = past[Mowing].last, sown(past), day_zero(past)
    if last is None or seeding is None or zero is None or last.date < zero or "clippings" in last.assumed:
        return None
    if last.clippings not in ("return", "scatter") or past.day - zero.toordinal() >= NEW_GRASS_MOST_DAYS:
        return None
    first = first_cut(past, zero)
    if first is None or past.day - first.day >= n.days("days") or _treated(past, last, n):
        return None
    ends = first.date + timedelta(n.days("days"))
    return Finding(
        level=Level.NOTE,
        headline="clippings left on new grass",
        why=f"mown {on(last.date, past)} without the bag; the first cut was {on(first.date, past)}",
        do=f"rake off what lies in clumps, and bag to {on(ends - timedelta(1), past)}",
        clears=f"a cut with the bag, or {on(ends, past)}",
        clears_on=ends,
        evidence=tuple(dict.fromkeys((first.id, last.id))),
        numbers=("days",),
        basis=(_LEAVE,) if n["mowings"] else (),
    )


def _treated(past: Past, last: Mowing, n: Numbers) -> bool:
    """Whether a weed product lies back so few cuts that its clippings are to be left."""
    cuts = past[Mowing].newest(round(n["mowings"]) + 1)
    since = cuts[0].day if len(cuts) > n["mowings"] else 0
    found = (use for use in uses(past, max(since, last.day - 365)) if use.day <= last.day)
    return any(use.against_weeds and not (use.product and use.product.kind == "starter") for use in found)
