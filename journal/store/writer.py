"""Bytes onto the disk: append one line and wait until it is there, or make a whole new file at once.

Order of the calls: write, sync the file, (for a file first met: sync the folders above it), and only then return.
A failed sync is final for its descriptor: the system may have thrown the pages away and called them clean, so the
file is cut back and closed, and the next attempt opens and writes afresh.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Sequence
from contextlib import suppress
from pathlib import Path
from typing import NamedTuple

from journal.store.change import NotSaved
from journal.store.files import LARGEST, Files, in_words


class Written(NamedTuple):
    """Where bytes went: the file's name, its size before, its stat after."""

    name: str
    before: int
    stat: os.stat_result


class Writer:
    """Appends to this computer's log of a year. Existing bytes are never altered."""

    def __init__(self, log: Path, computer: str, files: Files) -> None:
        self._log = log
        self._computer = computer
        self._files = files
        self._pid = os.getpid()
        self._open: dict[str, int] = {}  # name -> descriptor
        self._ends: dict[str, int] = {}  # name -> size after the last record, which ended its line
        self._side: dict[str, str] = {}  # year -> name of a file that only this object writes
        self._folders_settled = False

    def append(self, line: bytes, year: str, *, alone: bool, there: Callable[[str], object]) -> Written:
        """Make `line` durable. `alone`: the lock is held; without it a file of one's own is written.

        `there` tells which file (device and number) was last seen under a name, None if none was.
        NotSaved if the disk says no; then nothing was acknowledged, and what was written is cut off again.
        """
        if self._pid != os.getpid():  # a forked child must not share the parent's files
            self._open, self._ends, self._side, self._pid = {}, {}, {}, os.getpid()
        name = f"{year}-{self._computer}.jsonl" if alone else self._own(year)
        try:
            fd, size = self._ready(name, there(name))
            if size + len(line) + 2 > LARGEST:
                if name not in self._open:
                    self._files.close(fd)
                name = self._side[year] = self._fresh(year)
                fd, size = self._ready(name, None)
        except OSError as why:
            raise NotSaved(_not_saved(why)) from why
        try:
            torn = size and self._ends.get(name) != size and self._files.last_byte(fd, size) != b"\n"
            self._write(fd, b"\n%b\n" % line if torn else line + b"\n")
            self._files.sync(fd)
            if name not in self._open:
                self._settle_folders()
                self._open[name] = fd
            stat = self._files.fstat(fd)
            self._ends[name] = stat.st_size
            return Written(name, size, stat)
        except OSError as why:
            self._give_up(name, fd, size)
            raise NotSaved(_not_saved(why)) from why

    def whole_file(self, lines: Sequence[bytes], year: str) -> Written:
        """Make all `lines` durable as one new file: either all of them count, or none."""
        if sum(map(len, lines)) + len(lines) > LARGEST:
            raise NotSaved("Not saved: this is more than one file of the log may hold. Nothing was changed.")
        final = self._log / self._fresh(year)
        part = final.with_name(final.name + ".part")
        fd = -1
        try:
            fd = self._files.create(part)
            for first in range(0, len(lines), 4096):
                self._write(fd, b"".join(line + b"\n" for line in lines[first : first + 4096]))
            self._files.sync(fd)
            stat = self._files.fstat(fd)
            self._files.close(fd)
            fd = -1
            self._files.rename(part, final)
            self._settle_folders()
            self._files.sync_folder(self._log)
        except OSError as why:
            if fd >= 0:
                self._files.close(fd)
            for leftover in (part, final):
                try:
                    self._files.remove(leftover)
                except OSError:
                    continue  # never made, or not to be removed: it was not acknowledged either way
            raise NotSaved(_not_saved(why)) from why
        return Written(final.name, 0, stat)

    def close(self) -> None:
        """Let go of all files."""
        if self._pid == os.getpid():
            for fd in self._open.values():
                self._files.close(fd)
        self._open = {}

    def _own(self, year: str) -> str:
        if year not in self._side:
            self._side[year] = self._fresh(year)
        return self._side[year]

    def _fresh(self, year: str) -> str:
        return f"{year}-{self._computer}-{os.urandom(4).hex()}.jsonl"

    def _ready(self, name: str, there: object) -> tuple[int, int]:
        """A descriptor of the file that has this name now, made if there is none, and the file's size."""
        fd = self._open.get(name)
        if fd is not None:
            stat = self._files.fstat(fd)
            if (stat.st_dev, stat.st_ino) == there:
                return fd, stat.st_size
            del self._open[name]  # somebody removed or replaced it
            self._files.close(fd)
        path = self._log / name
        try:
            fd = self._files.open(path)
        except FileNotFoundError:
            fd = self._files.create(path)
        return fd, self._files.fstat(fd).st_size

    def _settle_folders(self) -> None:
        """See to it that the names lead to the file after a power cut.

        Done at the first write to each file even if the file was there: whoever made it may have died in between.
        """
        self._files.sync_folder(self._log)
        if self._folders_settled:
            return
        book = self._log.resolve().parent
        self._files.sync_folder(book)
        with suppress(PermissionError):  # a folder this user may not even look into is not one this program made
            self._files.sync_folder(book.parent)
        self._folders_settled = True

    def _write(self, fd: int, data: bytes) -> None:
        rest = memoryview(data)
        while rest:
            rest = rest[self._files.write(fd, rest.tobytes() if len(rest) < len(data) else data) :]

    def _give_up(self, name: str, fd: int, size: int) -> None:
        self._open.pop(name, None)
        self._ends.pop(name, None)
        try:
            self._files.truncate(fd, size)
        except OSError:
            pass  # the torn end stays; the next writer begins a new line after it
        finally:
            self._files.close(fd)


def _not_saved(why: OSError) -> str:
    return f"Not saved: {in_words(why)}. Nothing was changed."
