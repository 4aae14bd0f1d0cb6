"""All entries of one kind in one zone, oldest first."""

from bisect import bisect_left, bisect_right
from collections.abc import Callable, Hashable, Iterable
from dataclasses import dataclass, field
from datetime import time
from typing import Any, Generic, TypeVar

from journal.record.entry import Entry

E = TypeVar("E", bound=Entry)
R = TypeVar("R")

KEPT_MOST = 2000
"""So many answers a track remembers at the most."""


def order(entry: Entry) -> tuple[int, time, str]:
    """The one order of entries: day, then time of day where known, then the order in which they were written."""
    return entry.day, entry.time or time.min, entry.id


@dataclass(frozen=True, slots=True)
class Track(Generic[E]):
    """`days` are ordinals parallel to `entries`, so that a bisect finds a day without a key function."""

    days: tuple[int, ...] = ()
    entries: tuple[E, ...] = ()
    _kept: dict[Hashable, Any] = field(default_factory=dict, compare=False, repr=False)

    @classmethod
    def of(cls, entries: Iterable[E]) -> "Track[E]":
        """Sorts them."""
        ordered = tuple(sorted(entries, key=order))
        return cls(tuple(e.day for e in ordered), ordered)

    def plus(self, entry: E) -> "Track[E]":
        """With one more, in its place."""
        at = bisect_right(self.days, entry.day)
        while at and order(self.entries[at - 1]) > order(entry):
            at -= 1
        return Track((*self.days[:at], entry.day, *self.days[at:]), (*self.entries[:at], entry, *self.entries[at:]))

    def minus(self, entry: E) -> "Track[E]":
        """Without the entry of that id."""
        low, high = bisect_left(self.days, entry.day), bisect_right(self.days, entry.day)
        for at in range(low, high):
            if self.entries[at].id == entry.id:
                return Track((*self.days[:at], *self.days[at + 1 :]), (*self.entries[:at], *self.entries[at + 1 :]))
        return self

    def near(self, day: int, days: int) -> bool:
        """Whether an entry lies so many days before the day (an ordinal) at the most, or on it."""
        at = bisect_right(self.days, day)
        return at > 0 and day - self.days[at - 1] <= days

    def once(self, key: Hashable, work: Callable[[], R]) -> R:
        """What `work` makes of this track and of what the key names, and of nothing else: made once and kept."""
        if key not in self._kept:
            if len(self._kept) >= KEPT_MOST:
                self._kept.clear()
            self._kept[key] = work()
        found: R = self._kept[key]
        return found

    def picked(self, name: str, test: Callable[[E], bool]) -> "Track[E]":
        """Those that pass, as a track of their own; `name` stands for the test."""
        return self.once(("picked", name), lambda: Track.of(entry for entry in self.entries if test(entry)))


EMPTY: Track[Any] = Track()


@dataclass(frozen=True, slots=True)
class Seen(Generic[E]):
    """A track as known at the end of one day: nothing later can be reached from here."""

    track: Track[E]
    today: int
    end: int

    def __bool__(self) -> bool:
        return self.end > 0

    def __len__(self) -> int:
        return self.end

    @property
    def last(self) -> E | None:
        """The newest."""
        return self.track.entries[self.end - 1] if self.end else None

    def picked(self, name: str, test: Callable[[E], bool]) -> "Seen[E]":
        """Those that pass, as known at the end of the same day; `name` stands for the test."""
        track = self.track.picked(name, test)
        return Seen(track, self.today, bisect_right(track.days, self.today))

    @property
    def before_last(self) -> E | None:
        """The one before the newest."""
        return self.track.entries[self.end - 2] if self.end > 1 else None

    @property
    def all(self) -> tuple[E, ...]:
        """Every one, oldest first. O(n): for rare kinds only."""
        return self.track.entries[: self.end]

    def newest(self, count: int) -> tuple[E, ...]:
        """The last so many, oldest first."""
        return self.track.entries[max(0, self.end - count) : self.end]

    def since(self, day: int) -> tuple[E, ...]:
        """Those on that day (an ordinal) or later, oldest first."""
        return self.track.entries[bisect_left(self.track.days, day, 0, self.end) : self.end]

    def between(self, first: int, last: int) -> tuple[E, ...]:
        """Those from one day to another, both included."""
        days = self.track.days
        return self.track.entries[bisect_left(days, first, 0, self.end) : bisect_right(days, last, 0, self.end)]

    def within(self, days: int) -> tuple[E, ...]:
        """Those less than so many days old: today is day 0, so `within(7)` holds days 0 to 6."""
        return self.since(self.today - days + 1)

    def days_between(self, first: int, last: int) -> int:
        """On how many days from one to another, both included, there was any."""
        days = self.track.once("distinct days", lambda: tuple(dict.fromkeys(self.track.days)))
        return max(0, bisect_right(days, min(last, self.today)) - bisect_left(days, first))

    def last_where(self, test: Callable[[E], bool]) -> E | None:
        """The newest that passes, walking back."""
        for at in range(self.end - 1, -1, -1):
            if test(self.track.entries[at]):
                return self.track.entries[at]
        return None

    def first_since(self, day: int) -> E | None:
        """The oldest on that day or later."""
        at = bisect_left(self.track.days, day, 0, self.end)
        return self.track.entries[at] if at < self.end else None
