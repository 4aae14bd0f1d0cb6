"""TinyDB on the log: stock calls, each of which costs as much as what it changes, not as much as the book."""

from __future__ import annotations

from collections.abc import Callable, ItemsView, Iterable, Iterator, Mapping, MutableMapping
from typing import Any

from tinydb import TinyDB
from tinydb.queries import QueryLike
from tinydb.table import Document, Table

from journal.store.change import JSON, Part
from journal.store.codec import as_text
from journal.store.log_storage import LogStorage
from journal.store.plain import copied
from journal.store.stamp import new_id


class Copy(Document):
    """A document as TinyDB returns it, sharing nothing with the store."""

    def __init__(self, value: Mapping[str, Any], doc_id: Any) -> None:
        super().__init__(copied(value), doc_id)


class Stand(Mapping[str, JSON]):
    """The documents that stand, for reading while another thread may be writing."""

    def __init__(self, documents: Mapping[str, JSON]) -> None:
        self._documents = documents

    def __getitem__(self, entry: str) -> JSON:
        return self._documents[entry]

    def __len__(self) -> int:
        return len(self._documents)

    def __iter__(self) -> Iterator[str]:
        return iter(list(self._documents))

    def __contains__(self, entry: object) -> bool:
        return entry in self._documents

    def items(self) -> ItemsView[str, JSON]:
        return dict(self._documents).items()


class ChangeView(MutableMapping[str, JSON]):
    """A table as TinyDB's own updaters see it: they may read, set and delete; what they did is written down."""

    def __init__(self, documents: Mapping[str, JSON]) -> None:
        self._documents = documents
        self._now: dict[str, JSON | None] = {}  # None: removed
        self._set: set[str] = set()

    def __getitem__(self, entry: str) -> JSON:
        if entry in self._now:
            document = self._now[entry]
            if document is None:
                raise KeyError(entry)
            return document
        document = self._now[entry] = copied(self._documents[entry])
        return document

    def __setitem__(self, entry: str, document: JSON) -> None:
        self._now[entry] = document
        self._set.add(entry)

    def __delitem__(self, entry: str) -> None:
        if entry not in self:
            raise KeyError(entry)
        self._now[entry] = None

    def __contains__(self, entry: object) -> bool:
        if entry in self._now:
            return self._now[entry] is not None
        return entry in self._documents

    def __iter__(self) -> Iterator[str]:
        gone = {entry for entry, document in self._now.items() if document is None}
        kept = [entry for entry in self._documents if entry not in gone]
        return iter(kept + [entry for entry in self._now if entry not in gone and entry not in self._documents])

    def __len__(self) -> int:
        return sum(1 for _ in self)

    def clear(self) -> None:
        for entry in self:
            self._now[entry] = None

    def changes(self, table: str) -> list[Part]:
        """What was done, entry by entry; a document that was only looked at is left out."""
        parts = []
        for entry, document in self._now.items():
            old = self._documents.get(entry)
            if document is None:
                if old is not None:
                    parts.append(Part(table, entry, (), None))
            elif entry in self._set or old is None or as_text(old) != as_text(document):
                parts.append(Part(table, entry, (), document))
        return parts


class LogTable(Table):
    """A TinyDB table whose every mutation is one durable record of what it changed. Ids are text.

    There is no query cache: it would answer with what another terminal has since changed, and lend out its own copies.
    """

    document_class = Copy
    document_id_class = str  # type: ignore[assignment]

    def __init__(self, storage: LogStorage, name: str, cache_size: int = 0, persist_empty: bool = False) -> None:
        del cache_size, persist_empty  # a table is there as soon as it holds a document
        super().__init__(storage, name, 0)
        self._log = storage

    def put(self, documents: Mapping[str, JSON]) -> None:
        """Set documents by id, whether or not they are there already, as one act."""

        def updater(table: MutableMapping[str, JSON]) -> None:
            for entry, document in documents.items():
                table[entry] = document

        self._update_table(updater)

    def insert(self, document: Mapping[str, Any]) -> str:  # type: ignore[override]
        return super().insert(_with_text_id(document))  # type: ignore[return-value]

    def insert_multiple(self, documents: Iterable[Mapping[str, Any]]) -> list[str]:  # type: ignore[override]
        return super().insert_multiple(_with_text_id(document) for document in documents)  # type: ignore[return-value]

    def upsert(self, document: Mapping[str, Any], cond: QueryLike | None = None) -> list[str]:  # type: ignore[override]
        with self._log.transaction():
            return super().upsert(_with_text_id(document), cond)  # type: ignore[return-value]

    def update(  # type: ignore[override]
        self,
        fields: Mapping[str, Any] | Callable[[MutableMapping[str, Any]], None],
        cond: QueryLike | None = None,
        doc_ids: Iterable[Any] | None = None,
    ) -> list[str]:
        with self._log.transaction():
            ids = self._ids(cond, doc_ids)
            return super().update(fields, None, ids)  # type: ignore[arg-type, return-value]

    def remove(  # type: ignore[override]
        self, cond: QueryLike | None = None, doc_ids: Iterable[Any] | None = None
    ) -> list[str]:
        with self._log.transaction():
            ids = self._ids(cond, doc_ids)
            return super().remove(None, ids)  # type: ignore[arg-type, return-value]

    def _ids(self, cond: QueryLike | None, doc_ids: Iterable[Any] | None) -> list[str] | None:
        """The ids meant. Found before anything is copied, so that only what is meant is copied."""
        if doc_ids is not None:
            return [str(entry) for entry in doc_ids]
        if cond is not None:
            return [entry for entry, document in self._read_table().items() if cond(document)]
        return None

    def _get_next_id(self) -> str:
        return new_id(self._log.clock)

    def _read_table(self) -> Mapping[str, JSON]:  # type: ignore[override]
        return Stand(self._log.documents(self.name))

    def _update_table(self, updater: Callable[[Any], None]) -> None:
        with self._log.transaction():
            view = ChangeView(self._log.documents(self.name))
            updater(view)
            self._log.commit(view.changes(self.name))


def _with_text_id(document: Mapping[str, Any]) -> Mapping[str, Any]:
    """TinyDB heeds a document's own id only if it is of the table's document class."""
    return Copy(document, str(document.doc_id)) if isinstance(document, Document) else document


class JournalDB(TinyDB):
    """The book as a TinyDB database: `JournalDB(folder, computer, clock)`. The default table is "entries"."""

    table_class = LogTable  # type: ignore[assignment]
    default_table_name = "entries"
    default_storage_class = LogStorage  # type: ignore[assignment]
