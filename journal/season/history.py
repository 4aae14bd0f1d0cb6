"""The immutable record, indexed by zone and kind, and what one zone knew of it on one day."""

from bisect import bisect_right
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date
from types import MappingProxyType
from typing import Any, TypeVar, cast

import journal.record.kinds as _kinds  # the kinds declare themselves
from journal.record.entry import Entry
from journal.record.fold import Ground, kept_since
from journal.record.kinds.setting import Setting
from journal.record.kinds.weather import Weather
from journal.record.lawn import Lawn
from journal.season.track import EMPTY, Seen, Track

E = TypeVar("E", bound=Entry)
_Date = date
Key = tuple[str, str]
"""(zone, kind); the zone is '' for what names none."""

LAWN = ""
NO_DAY = 0
"""In the place of a day, for what holds on all."""
KEPT_DAYS = 2000
"""Of so many zones and days a history remembers what was worked out."""
__all__ = ["LAWN", "History", "NotWatched", "Past"]
del _kinds


class NotWatched(LookupError):
    """A rule looked at a kind of entry that it did not declare."""


@dataclass(frozen=True, slots=True)
class History:
    """Entries by zone and kind, and the ground they stand on. `plus` and `minus` share what they don't touch."""

    tracks: Mapping[Key, Track[Any]]
    ground: Ground
    size: int
    _kept: dict[tuple[str, int], dict[Any, Any]] = field(default_factory=dict, compare=False, repr=False)
    spells: dict[tuple[str, str, str], tuple[int, int]] = field(default_factory=dict, compare=False, repr=False)
    """Of flags: (rule, zone, subject) -> the day on which one rose, and a day on which it still stood."""

    @classmethod
    def of(cls, entries: Iterable[Entry]) -> "History":
        """Index entries given in any order."""
        buckets: dict[Key, list[Entry]] = {}
        size = 0
        settings = []
        for entry in entries:
            size += 1
            for key in _keys(entry):
                buckets.setdefault(key, []).append(entry)
            if isinstance(entry, Setting):
                settings.append(entry)
        tracks = {key: Track.of(bucket) for key, bucket in buckets.items()}
        return cls(MappingProxyType(tracks), Ground.of(settings), size)

    def plus(self, entry: Entry) -> "History":
        """With one more entry: only its own tracks are copied."""
        tracks = dict(self.tracks)
        for key in _keys(entry):
            tracks[key] = tracks.get(key, EMPTY).plus(entry)
        ground = self.ground.plus(entry) if isinstance(entry, Setting) else self.ground
        return History(MappingProxyType(tracks), ground, self.size + 1, spells=self._spells_before(entry))

    def minus(self, entry: Entry) -> "History":
        """Without that entry."""
        tracks = dict(self.tracks)
        for key in _keys(entry):
            left = tracks.get(key, EMPTY).minus(entry)
            if left.days:
                tracks[key] = left
            else:
                tracks.pop(key, None)
        ground = self.ground.minus(entry) if isinstance(entry, Setting) else self.ground
        return History(MappingProxyType(tracks), ground, self.size - 1, spells=self._spells_before(entry))

    def _spells_before(self, entry: Entry) -> dict[tuple[str, str, str], tuple[int, int]]:
        """Those that are as they were: what is dated later than a day changes nothing on it. A setting may."""
        if isinstance(entry, Setting):
            return {}
        last = entry.day - 1
        return {flag: (rose, min(stood, last)) for flag, (rose, stood) in self.spells.items() if rose <= last}

    def kept(self, zone: str, day: int) -> dict[Any, Any]:
        """What was worked out before of one zone on one day, by the function that did it."""
        found = self._kept.get((zone, day))
        if found is None:
            if len(self._kept) >= KEPT_DAYS:
                self._kept.clear()
            found = self._kept[zone, day] = {}
        return found

    def track(self, zone: str, kind: type[E]) -> Track[E]:
        """All entries of a kind in a zone ('' for those that name no zone)."""
        return cast("Track[E]", self.tracks.get((zone, kind.kind), EMPTY))

    def lawn(self, day: date) -> Lawn:
        """The lawn as it was known to be on that day."""
        return self.ground.on(day)

    def on(self, zone: str, day: date, watches: frozenset[str] | None = None) -> "Past":
        """What that zone knew at the end of that day."""
        ordinal = day.toordinal()
        return Past(self, zone, day, self.lawn(day), watches, ordinal, self.kept(zone, ordinal))

    @property
    def oldest(self) -> date | None:
        """The date of the oldest entry other than a setting or weather: what the sky did is no diary."""
        apart = (Setting.kind, Weather.kind)
        firsts = [t.entries[0].date for (_, kind), t in self.tracks.items() if kind not in apart]
        return min(firsts, default=None)

    @property
    def set_up(self) -> date | None:
        """The date of the first setting."""
        track = self.track(LAWN, Setting)
        return track.entries[0].date if track.entries else None

    @property
    def kept_since(self) -> date | None:
        """From which day on what is not logged counts as not done: as set, else the day of set-up.

        The oldest entry stands in where nothing was set up.
        """
        return kept_since(self.ground.newest, self.set_up, None if self.set_up else self.oldest)

    def zone_added(self, zone: str) -> date | None:
        """The day on which a zone came to a book that was there before it; None for one that was there all along."""
        track = self.track(LAWN, Setting)
        first: date | None = track.once(("first setting of", zone), lambda: _first_of(zone, track.entries))
        return first if first is not None and self.set_up is not None and first > self.set_up else None

    def kept_for(self, zone: str, *kinds: type[Entry]) -> date | None:
        """From which day on entries of these kinds, not logged in that zone, count as not done.

        The diary counts kind by kind. One feeding of April, written down in July, does not tell that every cut since
        April was written down too: it would bring back nags for a time of which nothing else was kept. So an entry
        older than the book's beginning counts from its own date, but for its own kinds only; and a date that the
        owner set himself holds for all. A zone that was added later is not asked about the time before. Weather is no
        diary: thirty years of it, taken in from a file, tell nothing of what was watered.
        """
        always = self.kept(zone, NO_DAY)
        key = "kept for", kinds
        if key not in always:
            always[key] = self._kept_for(zone, kinds)
        found: date | None = always[key]
        return found

    def _kept_for(self, zone: str, kinds: tuple[type[Entry], ...]) -> date | None:
        if not kinds:
            return self._begun(zone)
        begun, added = self._begun(zone), self.zone_added(zone)
        if begun is None or (added is None and self.ground.newest.kept_since is not None):
            return begun
        told = [kind for kind in kinds if kind is not Weather]
        tracks = (self.track(name, kind) for kind in told for name in ((zone,) if added else (zone, LAWN)))
        return min([begun, *(track.entries[0].date for track in tracks if track.entries)])

    def _begun(self, zone: str) -> date | None:
        added, kept = self.zone_added(zone), self.kept_since
        return kept if kept is None or added is None else max(kept, added)


def _first_of(zone: str, settings: Iterable[Setting]) -> date | None:
    """The day of the first setting of a zone, or the day from which on it holds."""
    days = (one.since or one.date for one in settings if one.what == "zone" and one.name == zone)
    return min(days, default=None)


def _keys(entry: Entry) -> tuple[Key, ...]:
    return tuple((zone, entry.kind) for zone in entry.zones) or ((LAWN, entry.kind),)


@dataclass(frozen=True, slots=True)
class Past:
    """History as seen from one zone at the end of one day. `watches` None means everything may be looked at.

    `day` is the date as an ordinal, `memo` what was worked out before of the same zone and day.
    """

    history: History
    zone: str
    date: date
    lawn: Lawn
    watches: frozenset[str] | None
    day: int
    memo: dict[Any, Any]

    def watching(self, watches: frozenset[str]) -> "Past":
        """The same, where only these kinds may be looked at."""
        return Past(self.history, self.zone, self.date, self.lawn, watches, self.day, self.memo)

    def __getitem__(self, kind: type[E]) -> Seen[E]:
        """Entries of that kind that name this zone, up to this day."""
        return self._seen(kind, self.zone, kind)

    def lawnwide(self, kind: type[E]) -> Seen[E]:
        """Entries of that kind that name no zone, up to this day."""
        return self._seen((LAWN, kind), LAWN, kind)

    def kept_since(self, *kinds: type[Entry]) -> _Date | None:
        """From which day on entries of these kinds, not logged here, count as not done."""
        return self.history.kept_for(self.zone, *kinds)

    def elsewhere(self, zone: str) -> "Past":
        """The same day seen from another zone, for what concerns the whole lawn."""
        memo = self.history.kept(zone, self.day)
        return Past(self.history, zone, self.date, self.lawn, self.watches, self.day, memo)

    def _seen(self, key: object, zone: str, kind: type[E]) -> Seen[E]:
        if self.watches is not None and kind.kind not in self.watches:
            raise NotWatched(f"{kind.kind} is not among the kinds declared: {', '.join(sorted(self.watches))}")
        found: Seen[E] | None = self.memo.get(key)
        if found is None:
            track = self.history.track(zone, kind)
            found = self.memo[key] = Seen(track, self.day, bisect_right(track.days, self.day))
        return found
