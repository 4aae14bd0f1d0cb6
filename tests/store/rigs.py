"""What the store's tests share: a clock that stands still, journal entries, and disks that fail."""

from __future__ import annotations

import errno
import os
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

from journal.store.book import Book
from journal.store.files import Files


class Clock:
    """A clock that only moves when told to."""

    def __init__(self, year: int = 2026, month: int = 5, day: int = 3) -> None:
        self.now = datetime(year, month, day, 14, 22, 31, 123000, tzinfo=UTC)

    def __call__(self) -> datetime:
        return self.now

    def later(self, **by: float) -> None:
        self.now += timedelta(**by)


def mowing(nth: int = 0, **more: Any) -> dict[str, Any]:
    """A mowing that can be told from the others."""
    return {
        "kind": "mowing",
        "date": "2026-05-03",
        "zones": ["front"],
        "height_mm": 76.2,
        "minutes": nth,
        "line": f"mow 3in front {nth}min",
        **more,
    }


def a_book(folder: Path, computer: str = "desk-7f3a", files: Files | None = None, **more: Any) -> Book:
    """A new book (or the one that is there) with a clock of its own."""
    more.setdefault("clock", Clock())
    if files is not None:
        more["files"] = files
    return Book.create(folder, computer=computer, **more)


def reopened(folder: Path, computer: str = "reader-0000") -> Book:
    """The book as somebody finds it who opens it afresh."""
    return Book.open(folder, computer=computer, clock=Clock())


def log_of(book: Book, computer: str = "desk-7f3a", year: int = 2026) -> Path:
    return book.folder / "log" / f"{year}-{computer}.jsonl"


class FailingDisk(Files):
    """A disk that takes `room` more bytes, and fails with `at_sync` or at `truncate` if told to."""

    def __init__(self) -> None:
        self.room: int | None = None
        self.at_sync: int = 0
        self.at_folder_sync: int = 0
        self.truncates = True
        self.read_only = False
        self.fails_by_name: dict[str, int] = {}

    def may_write(self, folder: Path) -> bool:
        return not self.read_only and super().may_write(folder)

    def write(self, fd: int, data: bytes) -> int:
        if self.room is None:
            return super().write(fd, data)
        if self.room == 0:
            raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))
        taken = super().write(fd, data[: self.room])
        self.room -= taken
        return taken

    def sync(self, fd: int) -> None:
        if self.at_sync:
            raise OSError(self.at_sync, os.strerror(self.at_sync))
        super().sync(fd)

    def sync_folder(self, folder: Path) -> None:
        if self.at_folder_sync:
            raise OSError(self.at_folder_sync, os.strerror(self.at_folder_sync))
        super().sync_folder(folder)

    def truncate(self, fd: int, size: int) -> None:
        if not self.truncates:
            raise OSError(errno.EIO, os.strerror(errno.EIO))
        super().truncate(fd, size)

    def open(self, path: Path) -> int:
        self._maybe(path)
        return super().open(path)

    def create(self, path: Path) -> int:
        self._maybe(path)
        return super().create(path)

    def _maybe(self, path: Path) -> None:
        for part, code in self.fails_by_name.items():
            if part in path.name:
                raise OSError(code, os.strerror(code), str(path))


class UnsyncedDisk(Files):
    """For thousands of books that no power cut will meet."""

    def sync(self, fd: int) -> None:
        pass

    def sync_folder(self, folder: Path) -> None:
        pass


UNSYNCED = UnsyncedDisk()
