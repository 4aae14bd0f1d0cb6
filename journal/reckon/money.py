"""Money: what a zone cost, and what was spent.

A zone bears what its entries say they cost, by its share of the area of the zones named, and what the product put
down on it had cost in the shop. What was bought counts as cost once it is used, and as spent on the day it was bought.
"""

from bisect import bisect_left, bisect_right
from collections.abc import Iterator

from journal.reckon.dose import doses, split
from journal.reckon.stock import USES, cost_of
from journal.record.entry import Entry
from journal.record.kinds.intention import Intention
from journal.record.kinds.stock import Stock
from journal.season.history import History

NOT_PAID = (Intention.kind,)
"""What is meant to be done is not paid yet."""

_APPLIED = frozenset(kind.kind for kind in USES)


def zone_costs(history: History, zone: str, first: int, last: int) -> Iterator[tuple[Entry, float | None]]:
    """Every entry that cost the zone money between two days (ordinals), with the zone's part of it.

    None where it can't be split, because an area is not known.
    """
    for (name, kind), track in history.tracks.items():
        if name != zone or kind in (Stock.kind, *NOT_PAID):
            continue
        applied = kind in _APPLIED
        for entry in track.entries[bisect_left(track.days, first) : bisect_right(track.days, last)]:
            if (applied or entry.cost is not None) and (cost := _worth(history, entry)):
                yield entry, zone_part(history, cost, entry, zone)


def zone_part(history: History, total: float, entry: Entry, zone: str) -> float | None:
    """The part of a total that falls to one of the zones named, by area; None where an area is not known."""
    if len(entry.zones) == 1:
        return total
    parts = split(total, entry.zones, history.lawn(entry.date))
    return None if parts is None else parts.get(zone, 0.0)


def lawn_cost(history: History, first: int, last: int) -> float:
    """What the whole lawn cost between two days: its zones, what could not be split, and what names no zone."""
    entries = _once(history, first, last, but=(Stock.kind, *NOT_PAID))
    return sum(_worth(history, entry) for entry in entries)


def spent(history: History, first: int, last: int) -> float:
    """The money laid out between two days: purchases, and every other cost that was written down."""
    return sum(entry.cost or 0.0 for entry in _once(history, first, last, but=NOT_PAID))


def _worth(history: History, entry: Entry) -> float:
    """What an entry says it cost, and what the owner's own product that it put down was worth."""
    worth = entry.cost or 0.0
    if isinstance(entry, USES) and not entry.by_service:
        worth += sum(cost_of(history, entry, dose) or 0.0 for dose in doses(entry))
    return worth


def _once(history: History, first: int, last: int, but: tuple[str, ...]) -> list[Entry]:
    """Every entry between two days once, however many zones it names, oldest first."""
    found: dict[str, Entry] = {}
    for (_, kind), track in history.tracks.items():
        if kind not in but:
            entries = track.entries[bisect_left(track.days, first) : bisect_right(track.days, last)]
            applied = kind in _APPLIED
            found |= {entry.id: entry for entry in entries if applied or entry.cost is not None}
    return sorted(found.values(), key=lambda entry: (entry.day, entry.id))
