"""The flags of the past: when each rose, how grave it was from when on, when it was out of sight, and how it ended.

What is said of a day here is what `standing.findings` says of it; here it is found for all days at once.
"""

from bisect import bisect_right
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from enum import StrEnum

from journal.record.kinds.hiding import Snooze
from journal.rules.catalogue import rules
from journal.rules.declare import Rule
from journal.rules.flag import Level
from journal.rules.hiding import Hiding, hidden_words, hiding, hidings, means
from journal.rules.judge import flag_id
from journal.rules.stretches import Bits, Court, Subject, raw, runs, settled, span, together
from journal.season.growth import GROWING, growing
from journal.season.history import LAWN, History
from journal.season.track import EMPTY, Seen


class End(StrEnum):
    """How a flag went out."""

    CLEARED = "cleared"
    LAPSED = "lapsed"
    """The grass no longer grows, so that it is no longer asked for."""
    YIELDED = "yielded"
    """Another flag says the same or more, and takes its place."""


@dataclass(frozen=True, slots=True)
class Stage:
    """A level from its first day on, with the headline of that day."""

    since: date
    level: Level
    headline: str


@dataclass(frozen=True, slots=True)
class Unseen:
    """Days out of sight: the first, the first one on which it showed again (None: to the end), and why."""

    since: date
    until: date | None
    why: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Spell:
    """One flag from the day on which it rose to the first day without it; that and the ending None while it stands."""

    id: str
    rule: str
    subject: str
    zones: tuple[str, ...]
    rose: date
    cleared: date | None
    ended: End | None
    stages: tuple[Stage, ...]
    unseen: tuple[Unseen, ...] = ()

    @property
    def gravest(self) -> Level:
        """The gravest it ever was."""
        return max((stage.level for stage in self.stages), key=lambda level: level.gravity)


def spells(
    history: History, until: date, since: date | None = None, zones: Sequence[str] | None = None
) -> tuple[Spell, ...]:
    """Every flag that stood on any day up to `until`, as the book knew it that day; oldest first.

    With `since`, those that still stood then or rose later; when they rose is told all the same. What is said of
    several zones alike is one spell; with `zones`, only these are looked at.
    """
    begun = first_day(history)
    if begun is None or begun > until:
        return ()
    names = history.lawn(until).zone_names
    looked_at = _every_zone(history, until) if zones is None else zones
    found = [spell for zone in looked_at for spell in of_zone(history, zone, begun, until)]
    kept = [spell for spell in found if since is None or spell.cleared is None or spell.cleared > since]
    return tuple(sorted(_gathered(kept, names), key=lambda spell: (spell.rose, -spell.gravest.gravity, spell.id)))


def first_day(history: History) -> date | None:
    """The first day that can be judged: of the first thing on file, or from which on the book is kept."""
    return min((day for day in (history.set_up, history.oldest, history.kept_since) if day is not None), default=None)


def of_zone(
    history: History, zone: str, first: date, last: date, among: Sequence[Rule] | None = None
) -> tuple[Spell, ...]:
    """The spells of one zone; those of some rules, or of all."""
    every = {rule.id: rule for rule in (rules() if among is None else among)}
    court = Court(history, zone, every, first.toordinal(), last.toordinal())
    there = _there(court)
    stood = raw(court)
    left = settled(court, stood)
    made = [
        _spell(court, key, levels, start, end, together(stood[key].values()) & there)
        for key, levels in left.items()
        for start, end in runs(together(levels.values()) & there)
    ]
    return tuple(made)


def _every_zone(history: History, until: date) -> tuple[str, ...]:
    """Every zone that the lawn ever had."""
    changes = [setting.since for setting in history.ground.dated if setting.since is not None]
    lawns = [history.lawn(day) for day in (date.min, *(day for day in changes if day <= until))]
    return tuple(dict.fromkeys(name for lawn in lawns for name in lawn.zone_names))


def _there(court: Court) -> Bits:
    """The days on which the lawn had the zone."""
    total = court.last - court.first + 1
    dated = [setting.since.toordinal() for setting in court.history.ground.dated if setting.since is not None]
    turns = sorted({0, *(day - court.first for day in dated if court.first < day <= court.last)})
    days = 0
    for start, end in zip(turns, [*turns[1:], total], strict=True):
        if court.zone in court.past(start).lawn.zone_names:
            days |= span(start, end)
    return days


def _spell(court: Court, key: Subject, levels: Mapping[Level, Bits], start: int, end: int, stands: Bits) -> Spell:
    rule, subject = key
    going = end <= court.last - court.first
    stages = tuple(_stages(court, key, levels, start, end))
    return Spell(
        id=flag_id(rule, (court.zone,), subject),
        rule=rule,
        subject=subject,
        zones=(court.zone,),
        rose=_day(court, start),
        cleared=_day(court, end) if going else None,
        ended=_ended(court, key, end, stands) if going else None,
        stages=stages,
        unseen=tuple(_unseen(court, key, stages, start, end)),
    )


def _day(court: Court, at: int) -> date:
    return date.fromordinal(court.first + at)


def _stages(court: Court, key: Subject, levels: Mapping[Level, Bits], start: int, end: int) -> Iterator[Stage]:
    rule, subject = key
    bounds = {bound for days in levels.values() for run in runs(days & span(start, end)) for bound in run}
    before = None
    for at in sorted(bounds - {end}):
        here = [level for level, days in levels.items() if days >> at & 1]
        level = max(here, key=lambda one: one.gravity)
        if level is before:
            continue
        before = level
        said = court.find(court.rules[rule], court.past(at))
        headline = next(one.headline for one in said if one.subject == subject and one.level is level)
        yield Stage(_day(court, at), level, headline)


def _ended(court: Court, key: Subject, end: int, stands: Bits) -> End:
    """A flag that still holds but is not said yields.

    One that went out with growth lapses, unless its own day had come or something was done that day.
    """
    if stands >> end & 1:
        return End.YIELDED
    past, before = court.past(end), court.past(end - 1)
    if growing(past) or not growing(before):
        return End.CLEARED
    rule, subject = court.rules[key[0]], key[1]
    done = rule.watches - {kind.kind for kind in GROWING}
    tracks = (court.history.tracks.get((zone, kind), EMPTY) for zone in (court.zone, LAWN) for kind in done)
    if any(Seen(track, past.day, bisect_right(track.days, past.day)).within(1) for track in tracks):
        return End.CLEARED
    due = [one.clears_on for one in court.find(rule, before) if one.subject == subject and one.clears_on is not None]
    return End.CLEARED if any(day <= past.date for day in due) else End.LAPSED


def _unseen(court: Court, key: Subject, stages: tuple[Stage, ...], start: int, end: int) -> Iterator[Unseen]:
    """Stretches of the same entry: it hides from its day on, till its end, a newer one, or a graver level."""
    rule, subject = key
    entries = [one for one in hidings(court.past(end - 1)) if means(one.flag, rule, court.zone, subject)]
    if not entries:
        return
    turns = {start, *(stage.since.toordinal() - court.first for stage in stages)}
    turns |= {one.day - court.first + more for one in entries for more in (0, 1)}
    turns |= {one.until.toordinal() - court.first for one in entries if isinstance(one, Snooze) and one.until}
    days = sorted(at for at in turns if start <= at < end)
    found: list[tuple[int, Hiding | None]] = []
    for at in days:
        level = next(stage.level for stage in reversed(stages) if stage.since.toordinal() - court.first <= at)
        entry = hiding(rule, subject, level, court.past(at))
        if not found or found[-1][1] is not entry:
            found.append((at, entry))
    for place, (at, entry) in enumerate(found):
        if entry is not None:
            ends = found[place + 1][0] if place + 1 < len(found) else None
            yield Unseen(
                _day(court, at), None if ends is None else _day(court, ends), hidden_words(entry, _day(court, at))
            )


def _gathered(found: Iterable[Spell], names: tuple[str, ...]) -> list[Spell]:
    """Zones of which the same is said share one spell."""
    groups: dict[tuple[object, ...], list[Spell]] = {}
    for one in found:
        groups.setdefault((one.rule, one.subject, one.rose, one.cleared, one.ended, one.stages, one.unseen), []).append(
            one
        )
    order = {name: at for at, name in enumerate(names)}
    made = []
    for group in groups.values():
        zones = tuple(sorted((spell.zones[0] for spell in group), key=lambda zone: order.get(zone, len(order))))
        made.append(replace(group[0], id=flag_id(group[0].rule, zones, group[0].subject), zones=zones))
    return made
