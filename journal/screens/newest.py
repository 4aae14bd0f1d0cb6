"""The newest entries, without walking through all of them."""

from bisect import bisect_right
from collections.abc import Collection
from datetime import date
from heapq import nlargest

from journal.line.token import unconfirmed
from journal.record.entry import Entry
from journal.record.kinds.setting import Setting
from journal.season.history import History
from journal.season.track import order


def newest(history: History, as_of: date, count: int, zone: str = "", without: str = "") -> list[Entry]:
    """The last `count` entries up to that day, newest first; settings are left out, and the kind `without`.

    With a zone, only what names it or names none.
    """
    day = as_of.toordinal()
    found: dict[str, Entry] = {}
    for (at, kind), track in history.tracks.items():
        if kind not in (Setting.kind, without) and (not zone or at in ("", zone)):
            end = bisect_right(track.days, day)
            found.update((entry.id, entry) for entry in track.entries[max(0, end - count) : end])
    return nlargest(count, found.values(), key=order)


def by_id(history: History, ids: Collection[str]) -> dict[str, Entry]:
    """The entries of those ids that are in the book."""
    wanted = set(ids)
    found: dict[str, Entry] = {}
    for track in history.tracks.values():
        if len(found) == len(wanted):
            break
        found.update((entry.id, entry) for entry in track.entries if entry.id in wanted)
    return found


def written_lines(history: History, count: int) -> list[str]:
    """The lines as they were typed, oldest first, of the last entries written down."""
    found: dict[str, str] = {}
    for track in history.tracks.values():
        found.update((entry.id, unconfirmed(entry.line)) for entry in track.entries if entry.line)
    return [found[id] for id in sorted(found)[-count:]]
