"""Many entries at once: all of them become part of the book, or none; and bringing them again changes nothing."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable
from datetime import date

from journal.store.book import JSON, Book, NotSaved
from journal.store.codec import as_text
from journal.store.plain import fault, text_fault
from journal.store.stamp import id_of

_EPOCH = date(1970, 1, 1)


def content_id(document: JSON, nth: int = 0) -> str:
    """The id that this very document gets in every import: 26 characters, in order of the document's `date`.

    `nth` tells apart equal documents that are meant to be several entries.
    """
    why = fault(document) or text_fault(document)
    if why:
        raise NotSaved(f"Not saved: {why}. Nothing was changed.")
    text = json.dumps(document, sort_keys=True, ensure_ascii=False)
    digest = hashlib.sha256(f"{nth}\n{text}".encode()).digest()
    try:
        days = (date.fromisoformat(str(document.get("date"))) - _EPOCH).days
    except ValueError:
        days = 0
    return id_of(days * 86_400_000, int.from_bytes(digest[:10], "big"))


def write_bulk(book: Book, documents_with_ids: Iterable[tuple[str, JSON]]) -> int:
    """Add the entries whose ids the book has never known, as one act; returns how many that were.

    A struck entry is not brought back. The same id twice with two documents is refused (NotSaved).
    """
    wanted: dict[str, JSON] = {}
    for id, document in documents_with_ids:
        if wanted.setdefault(id, document) is not document and as_text(wanted[id]) != as_text(document):
            raise NotSaved(f"Not saved: two different entries with the id {id}. Nothing was changed.")
    return book.add_new(wanted)
