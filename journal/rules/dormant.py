"""A lawn left to rest in drought that needs a drink, or a look."""

from collections.abc import Iterator
from datetime import timedelta

from journal.facts.sources import published
from journal.reckon.rest import REST, resting_since, thirsty_since
from journal.record.entry import Entry
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Sighting
from journal.record.kinds.watering import Schedule, Watering
from journal.record.kinds.weather import Rain, Weather
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import Site, after, at, kept_since, seasons
from journal.rules.words import days, length, on
from journal.season.growth import dormant_open, in_growth, season_at_hand
from journal.season.history import Past
from journal.season.stand import STAND, day_zero
from journal.season.water import WATER, water_on_file

ON_FILE_DAYS = 14
LONGEST = 366


def _rests(entry: Entry, site: Site) -> Iterator[int]:
    """Every day of a rest, as far as one can go on."""
    if isinstance(entry, Sighting) and entry.subject == "dormant":
        yield from range(LONGEST)


@rule(
    "dormant-thirst",
    levels=(Level.LOSS, Level.LATE, Level.NOTE),
    watches=(*STAND, *REST),
    turns=(
        after(Sighting, reach=_rests, within=LONGEST),
        *(after(kind) for kind in (Seeding, Watering, Schedule, Rain, Weather)),
        at(kept_since(*WATER), "days", "days-sown"),
        at(seasons),
    ),
    basis=(published("purdue-resting", "purdue-ppdl", "purdue-survival"),),
)
def dormant_thirst(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """A resting lawn too long without water, and whether it is still brown."""
    newest = dormant_open(past)
    if newest is None or not in_growth(past):
        return ()
    first = resting_since(past) or newest
    return tuple(found for found in (_thirsty(past, first, n), _still_brown(past, newest, n)) if found is not None)


def _thirsty(past: Past, first: Sighting, n: Numbers) -> Finding | None:
    kept = past.kept_since(*WATER)
    if kept is None or not water_on_file(past, ON_FILE_DAYS):
        return None
    young = _sown_this_season(past)
    name = "days-sown" if young else "days"
    wait = n.days(name)
    since = max(first.date, kept)
    if (past.date - since).days < wait:
        return None
    gone = (past.date - thirsty_since(past, since)).days
    if gone < wait or (gone == wait and not young):
        return None
    return Finding(
        level=Level.LOSS if young else Level.LATE,
        headline=f"resting for {days((past.date - first.date).days)}, {days(gone)} without enough water",
        why=(
            f"brown since {on(first.date, past)}, under {length(n['water'], past)} on file in {days(gone)}"
            + ("; sown this season, it is not to be left dry" if young else "; four to eight weeks are survived")
        ),
        do=(
            "water it and keep it growing: young grass does not come back from a rest"
            if young
            else f"give it {length(n['water'], past)}: it stays brown, and the crowns stay alive; keep off it"
        ),
        clears=f"{length(n['water'], past)} of water or rain, or `see green`",
        evidence=(first.id,),
        numbers=(name, "water"),
    )


def _sown_this_season(past: Past) -> bool:
    zero, window = day_zero(past), season_at_hand(past)
    if zero is None or zero > past.date:
        return False
    return zero >= window[0] if window is not None else zero.year == past.date.year


def _still_brown(past: Past, newest: Sighting, n: Numbers) -> Finding | None:
    """Asked every so often, and for a few days only."""
    gone, every = past.day - newest.day, n.days("ask-days")
    if gone < every or gone % every >= n.days("ask-stands"):
        return None
    ends = past.date + timedelta(n.days("ask-stands") - gone % every)
    return Finding(
        level=Level.NOTE,
        subject="still brown",
        headline="still brown?",
        why=f"seen dormant {on(newest.date, past)}, {days(gone)} ago, and nothing since",
        do="look at the crowns; log `see green` when it grows again, or `see dormant` when it is still brown",
        clears=f"`see green`, `see dormant`, or {on(ends, past)}",
        clears_on=ends,
        evidence=(newest.id,),
        numbers=("ask-days",),
    )
