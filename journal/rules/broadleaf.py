"""The autumn window for broadleaf weeds, let go by."""

from datetime import timedelta

from journal.facts.sources import published
from journal.reckon.broadleaf import broadleaf_age, broadleaf_season, broadleaf_seen, treated_since
from journal.reckon.new_grass import NEW_GRASS, old_enough_on
from journal.reckon.protection import PROTECTED
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after, at, kept_since, seasons
from journal.rules.words import on
from journal.season.growth import month_here
from journal.season.history import Past


@rule(
    "broadleaf-missed",
    levels=(Level.LATE,),
    watches=NEW_GRASS,
    turns=(at(seasons, "stands-days"), at(kept_since(*PROTECTED)), *(after(kind) for kind in NEW_GRASS)),
    basis=(published("purdue-too-late", note="the last good day moves by a month from north to south"),),
)
def broadleaf_missed(past: Past, n: Numbers) -> Finding | None:
    """Broadleaf weeds were seen this season, and nothing went down on them in autumn."""
    found = broadleaf_season(past)
    if found is None:
        return None
    window, opens = found
    late = (past.date - window[1]).days
    if not 1 <= late <= n.days("stands-days"):
        return None
    seen, kept = broadleaf_seen(past, window), past.kept_since(*PROTECTED)
    if seen is None or kept is None or kept > window[1]:
        return None
    if treated_since(past, min(seen.date, opens)):
        return None
    then = past.history.on(past.zone, window[1], past.watches)
    if old_enough_on(then, broadleaf_age(then)) is not None:
        return None
    ends = window[1] + timedelta(n.days("stands-days") + 1)
    return Finding(
        level=Level.LATE,
        headline=f"{seen.subject} seen, and the autumn window is over",
        why=f"seen {on(seen.date, past)}; from {on(opens, past)} to {on(window[1], past)} nothing was put down on it",
        do=(
            "leave it over winter; in spring dig or treat the spots, and note them now for next "
            f"{month_here(past.lawn, 'September')}"
        ),
        clears=on(ends, past),
        clears_on=ends,
        evidence=(seen.id,),
        numbers=("stands-days",),
    )
