"""A TinyDB storage on the log: what it holds is in memory, and each act is one durable record on the disk."""

from __future__ import annotations

import threading
from collections.abc import Callable, Mapping, Sequence
from datetime import datetime
from pathlib import Path
from typing import Any

from tinydb.storages import Storage

from journal.store.change import JSON, NotABook, NotSaved, Part, Version
from journal.store.codec import LONGEST, MOST, as_text, decode, encode, is_computer, is_table, is_word
from journal.store.files import DISK, Files, in_words
from journal.store.follow import LogFolder
from journal.store.heads import Lineage, Moved
from journal.store.lock import WriteLock
from journal.store.plain import copied, fault, text_fault
from journal.store.report import Report
from journal.store.stamp import as_stamp, next_stamp
from journal.store.writer import Writer


class LogStorage(Storage):
    """Holds every table of one book.

    Memory changes only after the disk said yes, and from the line as it was written, so that no object is shared
    with a caller. `lineage` is to be read, never altered, by others.
    """

    def __init__(
        self, folder: Path, computer: str, clock: Callable[[], datetime], files: Files = DISK, patience: float = 2.0
    ) -> None:
        super().__init__()
        if not is_computer(computer):
            raise ValueError(f"{computer!r} cannot name a computer: small letters, digits and - only")
        self.computer = computer
        self.clock = clock
        self.lineage = Lineage()
        self.acted: list[Version] = []  # what the act in hand has written
        self.foreign: list[Moved] = []  # what others wrote, not yet fetched by `look`
        self._log = LogFolder(folder / "log", files)
        self._lock = WriteLock(folder / f".lock-{computer}", files, patience)
        self._writer = Writer(folder / "log", computer, files)
        self._threads = threading.RLock()
        self._depth = 0
        self._alone = False
        self._as_read: dict[str, dict[str, JSON]] | None = None
        try:
            self._unwritable = (
                "" if files.may_write(folder / "log") else "The book's folder is read-only. It is open for reading."
            )
            self.lineage.take_in(self._log.look())
        except OSError as why:
            raise NotABook(f"The book in {folder} cannot be read: {in_words(why)}.") from why

    @property
    def why_read_only(self) -> str:
        """Why nothing may be written; "" if it may."""
        return self._log.newer_in_words() or self._unwritable

    @property
    def damaged(self) -> int:
        """How many damaged places were met while reading; `check` names them."""
        return self._log.damaged

    def documents(self, table: str) -> Mapping[str, JSON]:
        """The documents that stand in a table, by id. Live and not to be altered."""
        return self.lineage.table(table).documents

    def transaction(self) -> LogStorage:
        """`with storage.transaction():` holds the book for reading and then writing.

        Others wait, and what they wrote before has been taken in. Transactions nest; the outermost counts.
        NotSaved if the book may not be written.
        """
        return self

    def __enter__(self) -> None:
        self._threads.acquire()
        if self._depth == 0:
            try:
                self._begin()
            except BaseException:
                self._threads.release()
                raise
        self._depth += 1

    def __exit__(self, *_: object) -> None:
        self._depth -= 1
        try:
            if self._depth == 0 and self._alone:
                self._lock.give()
        finally:
            self._threads.release()

    def _begin(self) -> None:
        if self.why_read_only:
            raise NotSaved(f"Not saved: {self.why_read_only}")
        self._alone = self._lock.take()
        try:
            # Both the year by the clock and the year of the last act: a clock may have been wrong.
            mine = self.lineage.latest_at.get(self.computer, "none-")[:5]
            self._take_in(self._log.glance((as_stamp(self.clock())[:5], mine)))
            if self.why_read_only:
                raise NotSaved(f"Not saved: {self.why_read_only}")
        except BaseException as why:
            if self._alone:
                self._lock.give()
            if isinstance(why, OSError):
                raise NotSaved(f"Not saved: {in_words(why)}. Nothing was changed.") from why
            raise
        self.acted = []

    def commit(self, wanted: Sequence[Part]) -> list[Version]:
        """Write `wanted` as one act and take it in; all of it or, with NotSaved, nothing. `was` is filled in here.

        One record if that can hold it, else one new file with a record for each part.
        """
        with self.transaction():
            if not wanted:
                return []
            parts = [self._checked(part) for part in wanted]
            first = self.lineage.latest_n.get(self.computer, 0) + 1
            at = next_stamp(self.clock(), self.lineage.latest_at, self.computer)
            lines = self._lines(parts, first, at)
            if len(lines) == 1:
                written = self._writer.append(lines[0], at[:4], alone=self._alone, there=self._log.there)
            else:
                written = self._writer.whole_file(lines, at[:4])
            self._log.wrote(*written)
            versions = [version for line in lines for version in decode(line)]
            self.lineage.take_in(versions)
            self.acted += versions
            self._as_read = None
            return versions

    def _checked(self, part: Part) -> Part:
        if not is_table(part.table) or not is_word(part.id):
            raise NotSaved(f"Not saved: {part.id!r} cannot name an entry. Nothing was changed.")
        if part.document is not None:
            why = fault(part.document)
            if why:
                raise NotSaved(f"Not saved: {why}. Nothing was changed.")
        heads = self.lineage.table(part.table).heads(part.id)
        return part._replace(was=tuple(head.name for head in heads))

    def _lines(self, parts: Sequence[Part], first: int, at: str) -> list[bytes]:
        try:
            if len(parts) <= MOST:
                line = encode(first, at, self.computer, parts)
                if len(line) <= LONGEST:
                    return [line]
                if len(parts) == 1:
                    raise NotSaved("Not saved: the entry is too long (at most 1 MiB). Nothing was changed.")
            lines = [encode(n, at, self.computer, [part]) for n, part in enumerate(parts, start=first)]
        except UnicodeEncodeError as why:
            words = next(filter(None, (text_fault(part.document) for part in parts)), str(why))
            raise NotSaved(f"Not saved: {words}. Nothing was changed.") from why
        except (ValueError, TypeError, RecursionError) as why:
            raise NotSaved(f"Not saved: this cannot be written ({why}). Nothing was changed.") from why
        if max(map(len, lines)) > LONGEST:
            raise NotSaved("Not saved: an entry is too long (at most 1 MiB). Nothing was changed.")
        return lines

    def _take_in(self, versions: Sequence[Version]) -> None:
        if versions:
            self.foreign += self.lineage.take_in(versions)

    def look(self) -> list[Moved]:
        """The entries that others touched since the last look, however they were noticed."""
        with self._threads:
            self._take_in(self._log.look())
            moved, self.foreign = self.foreign, []
            return moved

    def unseen(self, table: str, entry: str) -> bool:
        """Whether others touched an entry since the last look."""
        return any(moved.table == table and moved.id == entry for moved in self.foreign)

    def check(self) -> Report:
        """Read all files afresh and compare."""
        with self._threads:
            locked = not self.why_read_only and self._lock.take()  # or a line half written would look damaged
            try:
                return self._log.check(frozenset(self.lineage.names))
            finally:
                if locked:
                    self._lock.give()

    def read(self) -> dict[str, dict[str, Any]] | None:
        """All tables, as copies: complete and slow, for stock TinyDB code."""
        with self._threads:
            self._take_in(self._log.look())
            self._as_read = {
                name: dict(lines.documents) for name, lines in self.lineage.tables.items() if lines.documents
            }
            tables = {
                name: {entry: copied(document) for entry, document in documents.items()}
                for name, documents in self._as_read.items()
            }
            return tables or None

    def write(self, data: Mapping[str, Mapping[str, Any]]) -> None:
        """Make the tables be `data`, as one act: complete and slow, for stock TinyDB code.

        What others added since the caller's `read` stays: only what the caller saw can be missing on purpose.
        """
        with self.transaction():
            seen = self._as_read
            if seen is None:
                seen = {name: dict(lines.documents) for name, lines in self.lineage.tables.items()}
            parts = [
                Part(name, str(entry), (), dict(document))
                for name, documents in data.items()
                for entry, document in documents.items()
                if (old := seen.get(name, {}).get(str(entry))) is None or as_text(old) != as_text(document)
            ]
            parts += [
                Part(name, entry, (), None)
                for name, documents in seen.items()
                for entry in documents
                if entry not in data.get(name, {})
            ]
            self.commit(parts)

    def close(self) -> None:
        """Let go of the files; the documents can still be read."""
        with self._threads:
            self._writer.close()
            self._lock.close()
