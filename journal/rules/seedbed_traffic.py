"""Feet, paws and wheels on seedlings."""

from datetime import timedelta

from journal.facts.citation import practice
from journal.facts.sources import published
from journal.reckon.seedbed import patch
from journal.record.kinds.sighting import Sighting
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after
from journal.rules.words import days, on
from journal.season.history import Past
from journal.season.stand import STAND, day_zero, in_seedbed
from journal.season.track import Seen

LONGEST_DAYS = 60


@rule(
    "seedbed-traffic",
    levels=(Level.LOSS, Level.NOTE),
    watches=STAND,
    turns=(after(Sighting, "stands-days"), *(after(kind) for kind in STAND)),
    basis=(
        practice("nobody walks on seed before the first cut"),
        published("kansas-tips", "psu-right-seed", note="little until it is mown; 8 to 10 weeks for ryegrass"),
    ),
)
def seedbed_traffic(past: Past, n: Numbers) -> Finding | None:
    """Walked on before the first cut."""
    seen = past[Sighting].picked("traffic", lambda sighting: sighting.subject == "traffic")
    standing = seen.within(n.days("stands-days"))
    on_seed = [(one, spot) for one in standing if (spot := _on_seed(past, one)) is not None]
    if not on_seed:
        return None
    often = [one for one, spot in on_seed if spot == "" and _count(past, seen, one, n) >= n["often"]]
    newest, spot = on_seed[-1]
    clears_on = (often[-1] if often else newest).date + timedelta(n.days("stands-days"))
    return Finding(
        level=Level.LOSS if often else Level.NOTE,
        headline="walked on before the first cut" + (", again and again" if often else ""),
        why=f"traffic seen {on(newest.date, past)} on {spot or 'a seedbed'}; seedlings are crushed and pulled out",
        do="keep people, pets and wheels off until the first cut: a string round it helps",
        clears=f"{days(n.days('stands-days'))} after it was seen",
        clears_on=clears_on,
        evidence=tuple(one.id for one, _ in on_seed),
        numbers=("often", "within-days") if often else ("stands-days",),
    )


def _on_seed(past: Past, seen: Sighting) -> str | None:
    """'' where the zone was a seedbed on that day, words for a spot that was one, None where neither was."""
    then = past.history.on(past.zone, seen.date, past.watches)
    if in_seedbed(then):
        return ""
    spot = patch(then)
    return None if spot is None else f"a zone with a spot sown {on(spot.date, past)}"


def _count(past: Past, seen: Seen[Sighting], last: Sighting, n: Numbers) -> int:
    """How often it was seen in the days up to that sighting, since the seed went down."""
    zero = day_zero(past.history.on(past.zone, last.date, past.watches))
    first = max(last.day - n.days("within-days") + 1, zero.toordinal() if zero else last.day)
    return sum(one.id <= last.id or one.day < last.day for one in seen.between(first, last.day))
