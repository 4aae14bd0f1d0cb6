"""What the store speaks in: documents, versions of an entry, changes, and the two errors a caller meets."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, NamedTuple

JSON = dict[str, Any]


class NotSaved(Exception):
    """Nothing was written, or at worst written but not acknowledged. `str()` is a sentence for the user."""


class NotABook(Exception):
    """The folder is missing, is not a book, or cannot be read. `str()` is a sentence for the user."""


@dataclass(frozen=True, slots=True)
class Change:
    """One entry's change: an addition has no `before`, a strike no `after`.

    `version` names the change, `at` is UTC with milliseconds, `undoes` names the version taken back (or None).
    Both documents are the caller's own copies.
    """

    id: str
    before: JSON | None
    after: JSON | None
    version: str
    by: str
    at: str
    undoes: str | None = None


class Version(NamedTuple):
    """One version of one entry, as read from a line. `document` is None for a strike.

    `name` is `by.n.crc`, in a group `by.n.crc.k` with k from 1 (`place`; 0 when the line holds one change).
    The document is shared inside the store and never altered in place.
    """

    name: str
    table: str
    id: str
    was: tuple[str, ...]
    document: JSON | None
    undoes: str | None
    at: str
    by: str
    n: int
    crc: str
    place: int


class Part(NamedTuple):
    """One change that is to be written: what a line says about one entry."""

    table: str
    id: str
    was: tuple[str, ...]
    document: JSON | None
    undoes: str | None = None
