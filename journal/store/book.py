"""The book: open it, read its entries, and change them so that nothing acknowledged is ever lost."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from datetime import datetime
from pathlib import Path

from journal.store import walk
from journal.store.change import JSON, Change, NotABook, NotSaved, Part, Version
from journal.store.files import DISK, Files, in_words
from journal.store.found import found_book
from journal.store.log_storage import LogStorage
from journal.store.plain import copied
from journal.store.report import Report
from journal.store.stamp import computer_name, new_id, new_ids
from journal.store.table import JournalDB, LogTable

__all__ = ["JSON", "Book", "Change", "Entries", "NotABook", "NotSaved", "Report", "computer_name", "new_id"]

_ENTRIES = "entries"
_MEANWHILE = "Not saved: the entry was changed meanwhile, in another window or on another computer."


class Entries(Mapping[str, JSON]):
    """The entries by id. Live; each document given out is the caller's own copy."""

    def __init__(self, documents: Mapping[str, JSON]) -> None:
        self._documents = documents

    def __getitem__(self, id: str) -> JSON:
        return copied(self._documents[id])

    def __contains__(self, id: object) -> bool:
        return id in self._documents

    def __iter__(self) -> Iterator[str]:
        return iter(list(self._documents))  # a worker may be saving meanwhile

    def __len__(self) -> int:
        return len(self._documents)


class Book:
    """One open book. `computer` names this computer in what is written; several may have one book open at once.

    Every method that writes returns only when the record is on the disk, and raises NotSaved otherwise, with
    nothing changed in memory. Reading never touches the disk, but for `refresh` and `check`.
    """

    def __init__(self, db: JournalDB, folder: Path) -> None:
        storage, table = db.storage, db.table(_ENTRIES)
        assert isinstance(storage, LogStorage)
        assert isinstance(table, LogTable)
        self.db = db
        self.folder = folder
        self.computer = storage.computer
        self._storage = storage
        self._table = table
        self._lines = storage.lineage.table(_ENTRIES)

    @classmethod
    def create(
        cls, folder: Path, *, computer: str, clock: Callable[[], datetime], files: Files = DISK, patience: float = 2.0
    ) -> Book:
        """Make a book in `folder` and open it; a book that is already there is just opened.

        NotABook if the folder holds anything else; NotSaved if the disk says no.
        """
        found_book(folder, files)
        return cls.open(folder, computer=computer, clock=clock, files=files, patience=patience)

    @classmethod
    def open(
        cls, folder: Path, *, computer: str, clock: Callable[[], datetime], files: Files = DISK, patience: float = 2.0
    ) -> Book:
        """Open the book in `folder`; nothing is written. NotABook if there is none or it cannot be read.

        `clock` gives the real time, for the stamps of records. `patience` is how many seconds to wait for another
        window to finish writing.
        """
        try:
            if not files.is_folder(folder):
                raise NotABook(f"There is no folder {folder}.")
            if not files.is_folder(folder / "log"):
                raise NotABook(f'{folder} is not a journal: there is no folder named "log" in it.')
        except OSError as why:
            raise NotABook(f"The book in {folder} cannot be read: {in_words(why)}.") from why
        return cls(JournalDB(folder, computer, clock, files, patience), folder)

    @property
    def read_only(self) -> bool:
        """Whether nothing can be written."""
        return bool(self._storage.why_read_only)

    @property
    def why_read_only(self) -> str:
        """Why, as a sentence for the user; "" if the book can be written."""
        return self._storage.why_read_only

    @property
    def damaged(self) -> int:
        """How many damaged or unread places were met while reading; `check` names them."""
        return self._storage.damaged

    def entries(self) -> Mapping[str, JSON]:
        """The entries that stand, by id: a live view, no disk access."""
        return Entries(self._lines.documents)

    def head(self, id: str) -> str:
        """The name of the entry's current version (a struck entry has one too). KeyError for an unknown id."""
        return self._lines.winner[id].name

    def conflicts(self) -> Mapping[str, tuple[JSON, ...]]:
        """Entries edited in two places that did not know of each other: id -> the documents that `entries` hides."""
        losers = dict(self._lines.losers)
        return {
            id: tuple(copied(version.document) for version in versions if version.document is not None)
            for id, versions in losers.items()
        }

    def add(self, documents: Sequence[JSON], ids: Sequence[str] | None = None) -> tuple[Change, ...]:
        """Add entries, as one durable act. An id that is taken is refused.

        Only the same document under the same id is taken again: so a save that was reported as failed can be tried
        again under its ids, whether or not it reached the disk after all.
        """
        with self._storage.transaction():
            names = list(ids) if ids is not None else new_ids(self._storage.clock, len(documents))
            if len(names) != len(documents) or len(set(names)) != len(names):
                raise NotSaved("Not saved: each entry needs an id of its own. Nothing was changed.")
            wanted = dict(zip(names, map(_without_id, documents), strict=True))
            for id, document in wanted.items():
                if id in self._lines.winner and self._lines.documents.get(id) != document:
                    raise NotSaved(f"Not saved: there is another entry {id} already. Nothing was changed.")
            self._table.put(wanted)
            return self._acted()

    def add_new(self, documents: Mapping[str, JSON]) -> int:
        """Add those entries whose ids this book has never known, as one act; returns how many that were."""
        with self._storage.transaction():
            fresh = {id: _without_id(doc) for id, doc in documents.items() if id not in self._lines.winner}
            self._table.put(fresh)
            return len(fresh)

    def bring(self, documents: Mapping[str, JSON]) -> tuple[Change, ...]:
        """Make entries stand as they are given, as one act: added, brought back, or put in the place of what stands.

        NotSaved if others touched any of them since the last refresh.
        """
        with self._storage.transaction():
            if any(moved.table == _ENTRIES and moved.id in documents for moved in self._storage.foreign):
                raise NotSaved(_MEANWHILE)
            self._table.put({id: _without_id(document) for id, document in documents.items()})
            return self._acted()

    def struck(self) -> frozenset[str]:
        """The ids of entries that were struck out; one whose addition was taken back is not among them."""
        lineage, gone = self._storage.lineage, [v for v in self._lines.winner.values() if v.document is None]
        return frozenset(version.id for version in gone if not walk.is_undo(lineage, version))

    def amend(self, id: str, document: JSON, *, expect: str | None = None) -> Change:
        """Replace an entry. `expect` is the version that the caller saw; NotSaved if it is no longer the head."""
        with self._storage.transaction():
            self._seen(id)
            if expect is not None and self.head(id) != expect:
                raise NotSaved(_MEANWHILE)
            self._table.put({id: _without_id(document)})
            return self._acted()[0]

    def strike(self, id: str) -> Change:
        """Strike an entry out. It stays in the log, and can be brought back by `undo`."""
        with self._storage.transaction():
            self._seen(id)
            self._table.remove(doc_ids=[id])
            return self._acted()[0]

    def _seen(self, id: str) -> None:
        """Refuse to replace what is not there, or what the caller cannot have seen as it is now."""
        if id not in self._lines.documents:
            struck = " any more; it was struck" if id in self._lines.winner else ""
            raise NotSaved(f"Not saved: there is no entry {id}{struck}. Nothing was changed.")
        if self._storage.unseen(_ENTRIES, id):
            raise NotSaved(_MEANWHILE)

    def undo(self, changes: Sequence[Change]) -> tuple[Change, ...]:
        """Bring back what stood before these changes, as one act; undoing an undo is redoing.

        NotSaved if anything but undoing and redoing happened to one of the entries since.
        """
        with self._storage.transaction():
            parts = []
            for change in changes:
                version = self._storage.lineage.names.get(change.version)
                if version is None or version.id != change.id:
                    raise NotSaved("Not undone: that change is not in this book.")
                if not walk.stands(self._storage.lineage, version):
                    raise NotSaved(f"Not undone: the entry was changed since{self._by_whom(change.id)}.")
                if any(name not in self._storage.lineage.names for name in version.was):
                    raise NotSaved("Not undone: what stood before is missing from this book; see the check.")
                earlier = self._storage.lineage.before(version)
                parts.append(Part(_ENTRIES, change.id, (), earlier.document if earlier else None, version.name))
            if len({part.id for part in parts}) != len(parts):
                raise NotSaved("Not undone: these are several changes of one entry; undo them one after another.")
            self._storage.commit(parts)
            return self._acted()

    def _by_whom(self, id: str) -> str:
        heads = self._lines.heads(id)
        others = sorted({head.by for head in heads} - {self.computer})
        return f" (on {', '.join(others)})" if others else ""

    def newest_undoable(self) -> tuple[Change, ...]:
        """All that this computer changed in its newest act that is neither an undo nor undone; () if none."""
        return self._changes(walk.newest_undoable(self._storage.lineage, self.computer, _ENTRIES))

    def newest_redoable(self) -> tuple[Change, ...]:
        """This computer's newest undo whose entries still stand as it left them; () if none."""
        return self._changes(walk.newest_redoable(self._storage.lineage, self.computer, _ENTRIES))

    def refresh(self) -> tuple[Change, ...]:
        """Take in what other windows and computers wrote since the last call: one change for each entry that moved.

        `after` is the entry as it is now, so that whoever keeps entries by id need only put it in place of theirs.
        A file that cannot be read is passed over (`damaged` counts it). NotABook if the folder itself is gone;
        what is in memory stays.
        """
        first: dict[str, Version | None] = {}
        try:
            touched = self._storage.look()
        except OSError as why:
            raise self._gone(why) from why
        for moved in touched:
            if moved.table == _ENTRIES:
                first.setdefault(moved.id, moved.before)
        changes = []
        for id, before in first.items():
            now = self._lines.winner[id]
            if before is None or before.name != now.name:
                changes.append(_change(now, before.document if before else None))
        return tuple(changes)

    def check(self) -> Report:
        """Read every file of the log afresh and say what is damaged, missing or unread.

        NotABook if the folder itself is gone.
        """
        try:
            return self._storage.check()
        except OSError as why:
            raise self._gone(why) from why

    def _gone(self, why: OSError) -> NotABook:
        return NotABook(f"The book in {self.folder} can no longer be read: {in_words(why)}.")

    def close(self) -> None:
        """Let go of the files."""
        self.db.close()

    def _acted(self) -> tuple[Change, ...]:
        return self._changes(self._storage.acted)

    def _changes(self, versions: Sequence[Version]) -> tuple[Change, ...]:
        lineage = self._storage.lineage
        return tuple(_change(v, b.document if (b := lineage.before(v)) else None) for v in versions)


def _change(version: Version, before: JSON | None) -> Change:
    return Change(
        version.id,
        None if before is None else copied(before),
        None if version.document is None else copied(version.document),
        version.name,
        version.by,
        version.at,
        version.undoes,
    )


def _without_id(document: JSON) -> JSON:
    if "id" in document:
        raise NotSaved('Not saved: a document holds no "id" of its own. Nothing was changed.')
    return document
