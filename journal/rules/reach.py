"""How far an entry reaches into the days after it, where that depends on the entry."""

from collections.abc import Iterator
from itertools import count

from journal.record.entry import Entry
from journal.record.kinds.intention import Intention
from journal.record.kinds.watering import Schedule
from journal.record.kinds.weather import Rain
from journal.rules.turns import Reach, Site
from journal.season.stand import LAPSES_DAYS


def intended(entry: Entry, site: Site) -> Iterator[int]:
    """To the day meant, and to the day on which an intention lapses."""
    if isinstance(entry, Intention) and entry.target is not None:
        ahead = (entry.target - entry.date).days
        yield ahead
        yield ahead + LAPSES_DAYS


def spread_over(window: int) -> Reach:
    """A reading for several days leaves a window of so many days one day after another."""

    def reach(entry: Entry, site: Site) -> Iterator[int]:
        if isinstance(entry, Rain):
            back = (entry.date - (entry.since or entry.date)).days
            yield from range(max(0, window - back), window + 1)

    return reach


def running(window: int) -> Reach:
    """Every day on which a timer may run, and so many days after."""

    def reach(entry: Entry, site: Site) -> Iterator[int]:
        if isinstance(entry, Schedule):
            if entry.until is None:
                yield from count()
            else:
                yield from range(max(0, (entry.until - entry.date).days) + window + 1)

    return reach
