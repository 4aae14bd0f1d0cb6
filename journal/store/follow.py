"""The folder of logs: which files count, how far each has been read, and what is new since the last look."""

from __future__ import annotations

import gc
import os
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from journal.store.change import Version
from journal.store.codec import FORMAT
from journal.store.files import LARGEST, Files, NotRegular, in_words, unreadable
from journal.store.report import Report, gaps_in
from journal.store.scan import Scan, scan


def is_log(name: str) -> bool:
    """Whether a file of this name is read: any name with ".jsonl" in it, so that conflict copies and restored
    files count whatever a tool called them; but no hidden file, no unfinished import, nothing packed.
    """
    return ".jsonl" in name and not name.startswith(".") and not name.endswith((".part", ".gz"))


@dataclass(slots=True)
class Known:
    """How far a file has been read."""

    path: Path
    ino: tuple[int, int]
    size: int
    mtime: int
    settled: int
    damage: int = 0


class LogFolder:
    """Follows the files of one `log` folder. Keeps no records, only places."""

    def __init__(self, folder: Path, files: Files) -> None:
        self.folder = folder
        self.newer: set[str] = set()
        self.unread: dict[str, str] = {}  # name -> why
        self._files = files
        self._known: dict[str, Known] = {}
        self._folder_mtime = -1

    @property
    def damaged(self) -> int:
        """How many damaged places, and files that could not be read at all, have been met."""
        return len(self.unread) + sum(known.damage for known in self._known.values())

    def look(self) -> list[Version]:
        """Every version not read before, in any file."""
        self._folder_mtime = self._files.stat(self.folder).st_mtime_ns  # first: a later file moves it again
        listing = self._files.list(self.folder)
        present = {name for name, _ in listing}
        self.unread = {}
        for name in [name for name in self._known if name not in present]:
            del self._known[name]  # what it held stays in memory; `check` says that it is gone
        found: list[Version] = []
        with _collector_at_rest():
            for name, stat in listing:
                if is_log(name):
                    found += self._read(name, stat)
        return found

    def glance(self, starts: tuple[str, ...]) -> list[Version]:
        """Like `look`, but only at files whose name begins with one of `starts`, unless a file came or went."""
        if self._files.stat(self.folder).st_mtime_ns != self._folder_mtime:
            return self.look()
        found: list[Version] = []
        for name, known in list(self._known.items()):
            if name.startswith(starts):
                stat = self._files.stat(known.path)
                if stat.st_mtime_ns != known.mtime or stat.st_size != known.size or _ino(stat) != known.ino:
                    found += self._read(name, stat)
        return found

    def there(self, name: str) -> tuple[int, int] | None:
        """Which file (device and number) was last seen under a name."""
        known = self._known.get(name)
        return known.ino if known is not None else None

    def wrote(self, name: str, before: int, stat: os.stat_result) -> None:
        """Take note that this process itself added all that follows `before` bytes in a file."""
        known = self._known.get(name)
        if known is None and before == 0:
            known = self._known[name] = Known(self.folder / name, _ino(stat), 0, 0, 0)
        if known is None or known.ino != _ino(stat) or known.size != before:
            self._known.pop(name, None)  # somebody else was there too: read it all again at the next look
            self._folder_mtime = -1
            return
        if known.settled < before:
            known.damage += 1  # an unfinished end that now has something after it
        known.size = known.settled = stat.st_size
        known.mtime = stat.st_mtime_ns

    def _read(self, name: str, stat: os.stat_result) -> list[Version]:
        known = self._known.get(name)
        if known is not None and known.ino == _ino(stat):
            if known.size == stat.st_size and known.mtime == stat.st_mtime_ns:
                return []
            offset = known.settled if stat.st_size > known.size else 0
        else:
            offset = 0
        try:
            why = unreadable(stat)
            if why:
                raise NotRegular(why)
            data, stat = self._files.read(self.folder / name, offset)
        except OSError as error:  # the other files still count
            self.unread[name] = str(error) if isinstance(error, NotRegular) else in_words(error)
            return []
        found = scan(data, offset)
        earlier = known.damage if known is not None and offset else 0
        path = known.path if known is not None else self.folder / name
        self._known[name] = Known(
            path, _ino(stat), offset + len(data), stat.st_mtime_ns, found.settled, earlier + len(found.damage)
        )
        if found.newer:
            self.newer.add(name)
        return found.versions

    def check(self, known: frozenset[str]) -> Report:
        """Read every file afresh. `known` names the versions in memory."""
        scans: dict[str, Scan] = {}
        oversize, waiting = [], []
        ignored: list[tuple[str, str]] = []
        for name, stat in self._files.list(self.folder):
            if not is_log(name):
                if ".jsonl" in name:
                    waiting.append(name)
                continue
            why = unreadable(stat)
            if why and stat.st_size > LARGEST:
                oversize.append(name)
            elif why:
                ignored.append((name, why))
            else:
                try:
                    scans[name] = scan(self._files.read(self.folder / name, 0)[0])
                except OSError as error:
                    ignored.append((name, in_words(error)))
        numbers: dict[str, set[int]] = {}
        seen: set[str] = set()
        for found in scans.values():
            for version in found.versions:
                numbers.setdefault(version.by, set()).add(version.n)
                seen.add(version.name)
        gaps = {by: gaps_in(taken) for by, taken in sorted(numbers.items())}
        return Report(
            files=tuple(scans),
            records=sum(found.records for found in scans.values()),
            damaged=tuple(
                (f"{self.folder.name}/{name}", damage.offset, damage.why)
                for name, found in scans.items()
                for damage in found.all_damage()
            ),
            gaps={by: missing for by, missing in gaps.items() if missing},
            oversize=tuple(oversize),
            ignored=tuple(ignored),
            waiting=tuple(waiting),
            newer=tuple(name for name, found in scans.items() if found.newer),
            vanished=len(known - seen),
        )

    def newer_in_words(self) -> str:
        """Why the book may not be written: "" unless it holds records of a later format."""
        if not self.newer:
            return ""
        return (
            f"This book holds records written by a newer version of the program ({', '.join(sorted(self.newer))}), "
            f"and this one knows format {FORMAT} only. It is open for reading, without those records."
        )


def _ino(stat: os.stat_result) -> tuple[int, int]:
    return (stat.st_dev, stat.st_ino)


@contextmanager
def _collector_at_rest() -> Iterator[None]:
    """Many objects are made and none dropped: collecting meanwhile only walks over them again and again."""
    running = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if running:
            gc.enable()
