"""Many entries at once: all of them become part of the book, or none; and bringing them again changes nothing."""

from __future__ import annotations

from collections.abc import Iterable

from journal.store.book import JSON, Book, NotSaved
from journal.store.codec import as_text


def write_bulk(book: Book, documents_with_ids: Iterable[tuple[str, JSON]]) -> int:
    """Add the entries whose ids the book has never known, as one act; returns how many that were.

    A struck entry is not brought back. The same id twice with two documents is refused (NotSaved).
    """
    wanted: dict[str, JSON] = {}
    for id, document in documents_with_ids:
        if wanted.setdefault(id, document) is not document and as_text(wanted[id]) != as_text(document):
            raise NotSaved(f"Not saved: two different entries with the id {id}. Nothing was changed.")
    return book.add_new(wanted)
