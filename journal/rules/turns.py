"""The days on which a rule's answer can change: so many days after an entry, or around a day of the year.

Between two such days nothing changes, so that the history of a flag needs to be judged on them alone. A day too many
costs a little time; a day too few would be a fault.
"""

import math
from bisect import bisect_left, bisect_right
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any

from journal.reckon.feedings import fed_since_in
from journal.record.day import MonthDay
from journal.record.entry import Entry
from journal.record.lawn import Lawn
from journal.rules.numbers import HOUSE
from journal.season.growth import EARLY_DAYS, growth_window, next_start, span
from journal.season.history import LAWN, History
from journal.season.local import local_rules
from journal.season.track import Track

Step = int | str | tuple[int | str, ...]
"""So many days, a house number by its name (`-late-days`: so many days before), or a sum of both."""


@dataclass(frozen=True, slots=True)
class Site:
    """One zone of one history, and a lawn that held on some day of it."""

    history: History
    zone: str
    lawn: Lawn

    def number(self, rule: str, name: str) -> float:
        """The owner's number, else the default."""
        own = self.lawn.numbers.get((rule, name))
        return HOUSE[rule, name].default if own is None else own


Reach = Callable[[Entry, Site], Iterable[int]]
"""Days after an entry that depend on the entry, in ascending order; they may go on for ever."""

Anchor = Callable[[Site, int], Iterable[int]]
"""Days (ordinals) of one year that do not hang on an entry."""


@dataclass(frozen=True, slots=True)
class After:
    """Days after each entry of a kind, and the day after each."""

    kind: type[Entry]
    steps: tuple[Step, ...] = ()
    reach: Reach | None = None
    within: int | None = None
    """No reach is longer than this; None where nobody can say."""


@dataclass(frozen=True, slots=True)
class At:
    """Days after an anchor, which is itself among them."""

    anchor: Anchor
    steps: tuple[Step, ...] = ()


Turn = After | At


def after(kind: type[Entry], *steps: Step, reach: Reach | None = None, within: int | None = None) -> After:
    """The day of each entry of that kind, and so many days after it."""
    return After(kind, (0, *steps), reach, within)


def only(kind: type[Entry], reach: Reach, within: int | None = None) -> After:
    """Only the days that an entry reaches: for a kind of which few entries matter."""
    return After(kind, (), reach, within)


def at(anchor: Anchor, *steps: Step) -> At:
    """So many days after an anchor."""
    return At(anchor, steps)


def seasons(site: Site, year: int) -> Iterator[int]:
    """First day of growth and the first after it, by dates; and both by the weather on file."""
    window = growth_window(site.lawn, year)
    if window is None:
        return
    yield window[0].toordinal()
    yield window[1].toordinal() + 1
    spring = next_start(site.lawn, window[1]) or window[1]
    seen = span(site.history.on(site.zone, spring - timedelta(EARLY_DAYS + 1)))
    if seen is not None:
        yield from (day for day in seen if day is not None)


def months(site: Site, year: int) -> Iterator[int]:
    """The first of every month."""
    for month in range(1, 13):
        yield date(year, month, 1).toordinal()


def kept_since(*kinds: type[Entry]) -> Anchor:
    """The day from which on entries of these kinds were kept in the zone."""

    def anchor(site: Site, year: int) -> Iterator[int]:
        yield from _in_year(site.history.kept_for(site.zone, *kinds), year)

    return anchor


def closed_days(site: Site, year: int) -> Iterator[int]:
    """First closed day and first open one of a local rule."""
    rules = local_rules(site.lawn)
    for stated in rules.closed if rules is not None else ():
        yield stated.value.first.on(year).toordinal()
        yield stated.value.last.shifted(1).on(year).toordinal()


def fed_since_days(site: Site, year: int) -> Iterator[int]:
    """The day from which on feedings were kept in the zone."""
    yield from _in_year(fed_since_in(site.history, site.zone), year)


def _in_year(day: date | None, year: int) -> Iterator[int]:
    if day is not None and day.year == year:
        yield day.toordinal()


def each_year(*days: MonthDay) -> Anchor:
    """Days of the year, on either half of the globe."""

    def anchor(site: Site, year: int) -> Iterator[int]:
        for day in days:
            yield day.on(year).toordinal()
            yield day.half_a_year_on().on(year).toordinal()

    return anchor


def turn_days(rule: str, turns: Iterable[Turn], sites: Iterable[Site], first: int, last: int) -> list[int]:
    """Every day (an ordinal) from the first to the last on which the rule can turn, in order; the first is in it."""
    return [first + at for at in ones(turn_bits(rule, turns, sites, first, last))]


def turn_bits(rule: str, turns: Iterable[Turn], sites: Iterable[Site], first: int, last: int) -> int:
    """The same days as bits: the lowest is the first day."""
    single = set[int]()
    bits = 1
    for site in sites:
        for setting in site.history.ground.dated:
            if setting.since is not None:
                single.add(setting.since.toordinal())
        for turn in turns:
            if isinstance(turn, After):
                bits |= _after(rule, turn, site, first, last)
                single.update(_reaches(turn, site, first, last))
            else:
                single.update(_at(rule, turn, site, first, last))
    for day in single:
        if first <= day <= last:
            bits |= 1 << (day - first)
    return bits


def ones(days: int) -> list[int]:
    """The places of the bits that are set, in ascending order."""
    return [at for at, bit in enumerate(reversed(f"{days:b}")) if bit == "1"]


def sites(history: History, zones: Iterable[str]) -> tuple[Site, ...]:
    """Every zone under every lawn that ever held."""
    changes = [setting.since for setting in history.ground.dated if setting.since is not None]
    lawns = [history.lawn(date.min), *(history.lawn(day) for day in changes)]
    return tuple(Site(history, zone, lawn) for zone in zones for lawn in lawns)


def _after(rule: str, turn: After, site: Site, first: int, last: int) -> int:
    """The days so many days after each entry, as bits: the lowest is the first day."""
    steps = {day for step in turn.steps for day in _both(_days(rule, step, site))}
    found = 0
    for track in _tracks(turn, site) if steps else ():
        base, days = _bits(track)
        days &= (1 << max(0, last - base + 1)) - 1  # what is dated later turns nothing
        for step in steps:
            ahead = base + step - first
            found |= days << ahead if ahead >= 0 else days >> -ahead
    return found & ((1 << (last - first + 1)) - 1)


def _bits(track: Track[Any]) -> tuple[int, int]:
    """The first day of a track, and each of its days as a bit counted from there."""

    def work() -> tuple[int, int]:
        base = track.days[0]
        row = bytearray(b"0") * (track.days[-1] - base + 1)
        for day in track.days:
            row[base - day - 1] = 49  # the lowest bit is written last
        return base, int(row, 2)

    return track.once("days as bits", work)


def _tracks(turn: After, site: Site) -> list[Track[Any]]:
    """The entries of that kind which name the zone, and those which name none."""
    found = (site.history.track(zone, turn.kind) for zone in dict.fromkeys((site.zone, LAWN)))
    return [track for track in found if track.days]


def _reaches(turn: After, site: Site, first: int, last: int) -> Iterator[int]:
    """The days that entries reach, each by its own."""
    if turn.reach is None:
        return
    longest = first if turn.within is None else turn.within
    for track in _tracks(turn, site):
        low, high = bisect_left(track.days, first - longest - 1), bisect_right(track.days, last)
        for at in range(low, high):
            day = track.days[at]
            yield from _reached(turn.reach(track.entries[at], site), first - day, last - day, day)


def _reached(reach: Iterable[int], first: int, last: int, day: int) -> Iterator[int]:
    for days in reach:
        if days > last:
            return
        if days >= first - 1:
            yield day + days
            yield day + days + 1


def _at(rule: str, turn: At, site: Site, first: int, last: int) -> Iterator[int]:
    steps = [day for step in turn.steps for day in _both(_days(rule, step, site))]
    for year in range(date.fromordinal(first).year - 1, date.fromordinal(last).year + 2):
        for day in turn.anchor(site, year):
            yield day
            yield from (day + step for step in steps)


def _both(days: int) -> tuple[int, int]:
    return days, days + 1


def _days(rule: str, step: Step, site: Site) -> int:
    if isinstance(step, int):
        return step
    if isinstance(step, str):
        name = step.removeprefix("-")
        number = math.ceil(site.number(rule, name))
        return number if step == name else -number
    return sum(_days(rule, part, site) for part in step)
