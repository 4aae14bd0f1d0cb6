"""A blade that has lost its edge."""

from datetime import timedelta

from journal.facts.sources import published
from journal.reckon.blade import BLADE, sharp_for, wear
from journal.reckon.first_cut import FIRST_CUT, first_cut
from journal.record.kinds.equipment import Equipment
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Height, Sighting
from journal.record.kinds.weather import Weather
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after, at, seasons
from journal.rules.words import on
from journal.season.growth import GROWING, in_growth
from journal.season.history import Past
from journal.season.stand import NEW_GRASS_MOST_DAYS, STAND, day_zero, sown

_BASIS = (published("kstate-blade", "cornell-spot", note="more often in May, when grass sets seed"),)


@rule(
    "mow-blade",
    levels=(Level.NOTE,),
    watches=(*STAND, *GROWING, *FIRST_CUT, *BLADE),
    turns=(
        after(Mowing, "stands-days"),
        after(Equipment),
        after(Seeding, NEW_GRASS_MOST_DAYS),
        after(Height),
        after(Sighting),
        after(Weather),
        at(seasons, NEW_GRASS_MOST_DAYS),
    ),
    basis=_BASIS,
    whole_lawn=True,
)
def mow_blade(past: Past, n: Numbers) -> Finding | None:
    """The mower's blade is due to be sharpened."""
    zone = past.lawn.zone(past.zone)
    if zone is None or zone.mowing == "service" or not past[Mowing] or not in_growth(past):
        return None
    return _worn(past, n) or _first_cut(past, n)


def _worn(past: Past, n: Numbers) -> Finding | None:
    found = wear(past)
    if found is None or found.share < 1:
        return None
    n.stricter("minutes")
    n.stricter("mowings")
    since = f"sharpened {on(found.sharpened.date, past)}" if found.sharpened is not None else "none logged"
    return Finding(
        level=Level.NOTE,
        headline="the blade is due to be sharpened",
        why=f"{found.cuts} since then; {since}"
        if found.sharpened is not None
        else f"{found.cuts} and no sharpening logged",
        do="sharpen it or put a new one in, and log `sharpen`; a dull blade tears the grass",
        clears="sharpening, or a new blade",
        evidence=(found.sharpened.id,) if found.sharpened is not None else (),
        numbers=("minutes", "mowings") if found.minutes else ("mowings",),
    )


def _first_cut(past: Past, n: Numbers) -> Finding | None:
    seeding, zero = sown(past), day_zero(past)
    if seeding is None or zero is None or past.day - zero.toordinal() >= NEW_GRASS_MOST_DAYS:
        return None
    first = first_cut(past, zero)
    stands = n.days("stands-days")
    if first is None or past.day - first.day >= stands or first.by_service or sharp_for(past, first.date):
        return None
    if any(past.elsewhere(name)[Equipment].since(first.day) for name in ("", *past.lawn.zone_names)):
        return None
    ends = first.date + timedelta(stands)
    return Finding(
        level=Level.NOTE,
        headline="new grass cut with a blade that was not sharpened",
        why=f"first cut {on(first.date, past)}, no sharpening logged in the {n.days('first-days')} days before",
        do="sharpen it before the next cut: a dull blade pulls seedlings out",
        clears=f"sharpening, or {on(ends, past)}",
        clears_on=ends,
        evidence=(seeding.id, first.id),
        numbers=("first-days",),
    )
