"""New grass that waits too long for its first cut."""

from collections.abc import Iterator
from datetime import timedelta

from journal.reckon.first_cut import BEST_DAYS, FIRST_CUT, FirstCut, first_cut, first_window
from journal.record.entry import Entry
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Height, Sighting
from journal.record.kinds.weather import Weather
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import Site, after, at, kept_since, seasons
from journal.rules.words import length, on
from journal.season.growth import growing
from journal.season.history import Past
from journal.season.stand import NEW_GRASS_MOST_DAYS, SEEDBED_DAYS, STAND, day_zero, in_seedbed, sown, sown_mix

_AGES = ("days", "days-bluegrass", SEEDBED_DAYS, NEW_GRASS_MOST_DAYS)


def _opened(entry: Entry, site: Site) -> Iterator[int]:
    """The day from which on it may be cut."""
    yield round(site.number("mow-first-early", "days"))


def _openings(site: Site, year: int) -> Iterator[int]:
    """The same of a sowing that counts from growth start, and the days of a first cut in spring."""
    opens, first = (round(site.number(*name)) for name in (("mow-first-early", "days"), ("mow-gap", "first-days")))
    for day in seasons(site, year):
        yield from (day + opens, day + first, day + first + BEST_DAYS, day + first + BEST_DAYS + 1)


@rule(
    "mow-first-late",
    levels=(Level.LATE,),
    watches=(*STAND, *FIRST_CUT),
    turns=(
        after(Seeding, *_AGES, reach=_opened, within=90),
        after(Mowing),
        after(Height),
        after(Sighting),
        after(Weather),
        at(seasons, *_AGES),
        at(_openings),
        at(kept_since(Mowing), "days", "days-bluegrass"),
    ),
    basis=(),
)
def mow_first_late(past: Past, n: Numbers) -> Finding | None:
    """New grass not cut for the first time when it should have been."""
    seeding, zero, zone = sown(past), day_zero(past), past.lawn.zone(past.zone)
    if seeding is None or zero is None or zone is None or zone.mowing == "service":
        return None
    if not 0 < past.day - zero.toordinal() < NEW_GRASS_MOST_DAYS:
        return None
    kept = past.kept_since(Mowing)
    if kept is None or (zero < kept and not in_seedbed(past)):
        return None
    mix = sown_mix(past.lawn, past.zone, seeding)
    window = first_window(past, zero, mix)
    if not window.late(past.date) or first_cut(past, zero) is not None or not growing(past):
        return None
    tall = window.tall if window.tall is not None and window.late(window.tall.date) else None
    if tall is None and zero < kept and past.date <= kept + timedelta(n.days("days")):
        return None
    name = "days-bluegrass" if window.much_bluegrass else "days"
    n.stricter(name)
    age = past.day - zero.toordinal()
    return Finding(
        level=Level.LATE,
        headline=f"no first cut by day {age} after sowing" if tall is None else "new grass stands too tall",
        why=_why(past, window, zero.toordinal()),
        do="cut it dry, with a sharp blade, at two thirds of its height, then down every two to four days; bag it",
        clears="the first cut, or the end of growth",
        evidence=(seeding.id, *((tall.id,) if tall is not None else ())),
        numbers=(name,) if tall is None else (),
    )


def _why(past: Past, window: FirstCut, zero: int) -> str:
    if window.tall is not None and window.tall.height_mm is not None:
        return f"sown {on(zero, past)}; {length(window.tall.height_mm, past)} measured {on(window.tall.date, past)}"
    return f"sown {on(zero, past)}; the last good day for it was {on(window.latest, past)}"
