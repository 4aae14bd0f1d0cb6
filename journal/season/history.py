"""The immutable record, indexed by zone and kind, and what one zone knew of it on one day."""

from bisect import bisect_right
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date
from types import MappingProxyType
from typing import Any, TypeVar, cast

import journal.record.kinds as _kinds  # the kinds declare themselves
from journal.record.entry import Entry
from journal.record.fold import Ground, kept_since
from journal.record.kinds.setting import Setting
from journal.record.lawn import Lawn
from journal.season.track import EMPTY, Seen, Track

E = TypeVar("E", bound=Entry)
Key = tuple[str, str]
"""(zone, kind); the zone is '' for what names none."""

LAWN = ""
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
        return History(MappingProxyType(tracks), ground, self.size + 1)

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
        return History(MappingProxyType(tracks), ground, self.size - 1)

    def track(self, zone: str, kind: type[E]) -> Track[E]:
        """All entries of a kind in a zone ('' for those that name no zone)."""
        return cast("Track[E]", self.tracks.get((zone, kind.kind), EMPTY))

    def lawn(self, day: date) -> Lawn:
        """The lawn as it was known to be on that day."""
        return self.ground.on(day)

    def on(self, zone: str, day: date, watches: frozenset[str] | None = None) -> "Past":
        """What that zone knew at the end of that day."""
        return Past(self, zone, day, self.lawn(day), watches)

    @property
    def oldest(self) -> date | None:
        """The date of the oldest entry other than a setting."""
        firsts = [t.entries[0].date for (_, kind), t in self.tracks.items() if kind != Setting.kind]
        return min(firsts, default=None)

    @property
    def set_up(self) -> date | None:
        """The date of the first setting."""
        track = self.track(LAWN, Setting)
        return track.entries[0].date if track.entries else None

    @property
    def kept_since(self) -> date | None:
        """From which day on what is not logged counts as not done."""
        return kept_since(self.ground.newest, self.set_up, self.oldest)


def _keys(entry: Entry) -> tuple[Key, ...]:
    return tuple((zone, entry.kind) for zone in entry.zones) or ((LAWN, entry.kind),)


@dataclass(frozen=True, slots=True)
class Past:
    """History as seen from one zone at the end of one day. `watches` None means everything may be looked at."""

    history: History
    zone: str
    date: date
    lawn: Lawn
    watches: frozenset[str] | None = None

    @property
    def day(self) -> int:
        """The date as an ordinal."""
        return self.date.toordinal()

    def __getitem__(self, kind: type[E]) -> Seen[E]:
        """Entries of that kind that name this zone, up to this day."""
        return self._seen(self.zone, kind)

    def lawnwide(self, kind: type[E]) -> Seen[E]:
        """Entries of that kind that name no zone, up to this day."""
        return self._seen(LAWN, kind)

    def elsewhere(self, zone: str) -> "Past":
        """The same day seen from another zone, for what concerns the whole lawn."""
        return Past(self.history, zone, self.date, self.lawn, self.watches)

    def _seen(self, zone: str, kind: type[E]) -> Seen[E]:
        if self.watches is not None and kind.kind not in self.watches:
            raise NotWatched(f"{kind.kind} is not among the kinds declared: {', '.join(sorted(self.watches))}")
        track = self.history.track(zone, kind)
        return Seen(track, self.day, bisect_right(track.days, self.day))
