"""The entries in memory, by id and indexed, kept in step with the book."""

from collections.abc import Iterable, Mapping, Sequence

from journal.record.document import Unknown, from_document
from journal.record.entry import Entry
from journal.record.kinds.setting import Setting
from journal.record.kinds.treatment import UNKNOWN
from journal.record.lawn import WHOLE
from journal.season.history import History
from journal.store.change import JSON, Change, NotSaved

SHORTEST_END = 4
"""So many letters from the end of an id may stand for it."""


MANY = 200
"""Changes beyond which putting each in its place takes longer than beginning anew."""


class Memory:
    """What has been read. `unread` names the documents that this version can't understand, and why."""

    def __init__(self) -> None:
        self.entries: dict[str, Entry] = {}
        self.unread: dict[str, str] = {}
        self.history = History.of(())

    def load(self, documents: Mapping[str, JSON]) -> None:
        """Read everything afresh."""
        self.entries, self.unread = {}, {}
        for id in documents:
            self._take(id, documents[id])
        self.history = History.of(self.entries.values())

    def _take(self, id: str, document: JSON) -> Entry | None:
        try:
            entry = from_document(id, document)
        except Unknown as unknown:
            self.unread[id] = str(unknown)
            return None
        self.entries[id] = entry
        return entry

    def apply(self, changes: Sequence[Change]) -> None:
        """Put what the book now says in the place of what was known. Many at once are indexed afresh."""
        if len(changes) > MANY:
            for change in changes:
                self.entries.pop(change.id, None)
                self.unread.pop(change.id, None)
                if change.after is not None:
                    self._take(change.id, change.after)
            self.history = History.of(self.entries.values())
            return
        history = self.history
        for change in changes:
            old = self.entries.pop(change.id, None)
            self.unread.pop(change.id, None)
            if old is not None:
                history = history.minus(old)
            if change.after is not None and (entry := self._take(change.id, change.after)) is not None:
                history = history.plus(entry)
        self.history = history

    def find(self, id: str) -> Entry:
        """The entry of that id, or of the only id that ends so. Raises NotSaved naming it."""
        found = self.entries.get(id)
        if found is not None:
            return found
        ends = [known for known in self.entries if len(id) >= SHORTEST_END and known.endswith(id.upper())]
        if len(ends) == 1:
            return self.entries[ends[0]]
        raise NotSaved(f"{id} could be {len(ends)} entries: write more of it." if ends else f"There is no entry {id}.")

    def hold_names(self, entry: Entry) -> None:
        """Raise NotSaved when a zone or product that other entries name would vanish with this one."""
        if not isinstance(entry, Setting):
            return
        gone = _names(self.history) - _names(self.history.minus(entry))
        for name in sorted(gone):
            naming = sum(name in named(other) for other in self.entries.values())
            if naming:
                raise NotSaved(f"{naming} entries name {name}: strike or amend them first.")

    def orphans(self) -> dict[str, str]:
        """Entries that name a zone or product which the lawn has not: id -> that name."""
        known = _names(self.history) | {UNKNOWN, WHOLE}
        found = {id: sorted(named(entry) - known) for id, entry in self.entries.items()}
        return {id: names[0] for id, names in found.items() if names}

    def those(self, ids: Iterable[str]) -> tuple[Entry, ...]:
        """The entries of these ids that stand."""
        return tuple(self.entries[id] for id in ids if id in self.entries)


def named(entry: Entry) -> frozenset[str]:
    """The zones and products an entry names."""
    products = (getattr(entry, "product", ""), *(dose.product for dose in getattr(entry, "also", ())))
    return frozenset((*entry.zones, *(name for name in products if name)))


def _names(history: History) -> frozenset[str]:
    lawn = history.ground.newest
    return frozenset((*lawn.zone_names, *(product.name for product in lawn.products)))
