"""The light feeding of new grass, when it is late."""

from collections.abc import Iterator
from math import ceil

from journal.facts.sources import published
from journal.reckon.feed_barred import FEED_BARRED
from journal.reckon.feed_seedling import SEEDLING_FEED, SeedlingFeed, most_for_seedlings, seedling_feed
from journal.record.day import MonthDay
from journal.record.entry import Entry
from journal.record.kinds.seeding import Seeding
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers, in_words
from journal.rules.turns import Site, after, at, each_year, only
from journal.rules.words import on
from journal.season.history import Past
from journal.season.stand import day_zero, day_zero_of


def _late_days(entry: Entry, site: Site) -> Iterator[int]:
    """Every day of the weeks in which it may be late."""
    if isinstance(entry, Seeding):
        zero = (day_zero_of(site.lawn, entry) - entry.date).days
        late, last = (ceil(site.number("seedling-feed", name)) for name in ("late-day", "to-day"))
        yield from (zero + day for day in range(late, last + 1))


@rule(
    "seedling-feed",
    levels=(Level.LATE,),
    watches=SEEDLING_FEED,
    turns=(
        only(Seeding, _late_days),
        after(Seeding),
        *(after(kind) for kind in FEED_BARRED),
        at(each_year(MonthDay(1, 1))),
    ),
    basis=(published("kstate-calendar", note="others say four to eight weeks"),),
)
def seedling_late(past: Past, n: Numbers) -> Finding | None:
    """New grass that got no light feeding about a month after sowing."""
    zero = day_zero(past)
    if zero is None or not n.days("late-day") < past.day - zero.toordinal() <= n.days("to-day"):
        return None
    due = seedling_feed(past)
    return _finding(past, due, n) if due is not None and due.late(past.date) else None


def _finding(past: Past, due: SeedlingFeed, n: Numbers) -> Finding:
    until = min(due.last, due.useful)
    up = due.emerged
    seen = "" if up is None or not up.assumed else f", taken to be up since {on(up.date, past)}"
    most = in_words(most_for_seedlings(past), "g/m2", past.lawn.units)
    age = past.day - due.zero.toordinal()
    return Finding(
        level=Level.LATE,
        headline=f"new grass not fed by day {age}",
        why=(
            f"sown {on(due.zero, past)}{seen}, nothing fed from day {n.days('counts-from-day')} on; "
            f"a light feeding comes about a month after sowing"
        ),
        do=f"feed lightly, at most {most} of nitrogen, and water it in",
        clears=f"a feeding, or after {on(until, past)}",
        evidence=(due.seeding.id,),
        numbers=("late-day", "to-day", "counts-from-day"),
    )
