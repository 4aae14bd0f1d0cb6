"""Seed on ground that was not opened for it."""

from datetime import timedelta

from journal.facts.citation import practice
from journal.facts.sources import published
from journal.reckon.dose import is_spot
from journal.reckon.seed_opened import OPENED, is_open
from journal.record.kinds.cultivation import Cultivation
from journal.record.kinds.seeding import Seeding
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after, at, kept_since
from journal.rules.words import days, on
from journal.season.history import Past

LONGEST_DAYS = 60


@rule(
    "seed-unopened",
    levels=(Level.NOTE,),
    watches=OPENED,
    turns=(after(Seeding, "stands-days"), after(Cultivation), at(kept_since(Cultivation))),
    basis=(
        practice("seed wants to lie in the soil, not on it"),
        published("osu-reseed", "kstate-seed-tips", note="cover of 0.1 to 0.3 in; 2 to 4 passes of coring are printed"),
    ),
)
def seed_unopened(past: Past, n: Numbers) -> Finding | None:
    """Sown into turf that was not cored, dethatched or raked."""
    seeding = past[Seeding].last_where(lambda one: not is_spot(one))
    if seeding is None or past.day - seeding.day >= n.days("stands-days"):
        return None
    n.stricter("before-days")
    kept = past.kept_since(Cultivation)
    before = seeding.day - n.days("before-days") + 1
    if seeding.new or is_open(past, seeding) or kept is None or kept.toordinal() > before:
        return None
    clears_on = seeding.date + timedelta(n.days("stands-days"))
    return Finding(
        level=Level.NOTE,
        subject=seeding.product,
        headline=f"{seeding.product} sown on ground that was not opened",
        why=(
            f"sown {on(seeding.date, past)}; no aerating, dethatching, raking or topdressing in the "
            f"{days(n.days('before-days'))} before"
        ),
        do="rake the seed in lightly or topdress thinly before it sprouts, or log what was done",
        clears=f"opened or covered, or {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=(seeding.id,),
        numbers=("before-days",),
    )
