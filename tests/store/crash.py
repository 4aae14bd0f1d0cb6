"""Every state a power cut may leave behind: which calls were made, and what the medium may hold after each.

What is assumed of a disk: a file's synced bytes stay; of bytes not yet synced, any of several parts may be there, or
zeros in their place; a name made, moved or removed in a folder may or may not be there until that folder is synced.
"""

from __future__ import annotations

import itertools
import os
import random
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path
from stat import S_IFDIR, S_IFREG
from types import SimpleNamespace
from typing import Any

from journal.store.book import Book, NotABook
from journal.store.files import Files
from tests.store.rigs import Clock

MOST_STATES = 400  # at one moment; beyond that a random choice


class Recorder(Files):
    """Does everything for real and writes down what was asked of the disk."""

    def __init__(self) -> None:
        self.calls: list[tuple[Any, ...]] = []
        self.fails_at_sync = 0
        self._ids = itertools.count(1)
        self._of_path: dict[Path, int] = {}
        self._of_fd: dict[int, int] = {}

    def create(self, path: Path) -> int:
        fd = super().create(path)
        self._of_path[path] = self._of_fd[fd] = next(self._ids)
        self.calls.append(("create", path, self._of_fd[fd]))
        return fd

    def open(self, path: Path) -> int:
        fd = super().open(path)
        self._of_fd[fd] = self._of_path[path]
        return fd

    def write(self, fd: int, data: bytes) -> int:
        taken = super().write(fd, data)
        self.calls.append(("write", self._of_fd[fd], data[:taken]))
        return taken

    def truncate(self, fd: int, size: int) -> None:
        super().truncate(fd, size)
        self.calls.append(("truncate", self._of_fd[fd], size))

    def sync(self, fd: int) -> None:
        if self.fails_at_sync:
            self.fails_at_sync -= 1
            raise OSError(5, os.strerror(5))
        self.calls.append(("sync", self._of_fd[fd]))

    def make_folder(self, path: Path) -> None:
        super().make_folder(path)
        self.calls.append(("create", path, None))

    def rename(self, old: Path, new: Path) -> None:
        super().rename(old, new)
        self._of_path[new] = self._of_path.pop(old)
        self.calls.append(("rename", old, new))

    def remove(self, path: Path) -> None:
        super().remove(path)
        self.calls.append(("remove", path))

    def sync_folder(self, folder: Path) -> None:
        self.calls.append(("sync folder", folder))

    def acknowledged(self, entries: dict[str, Any] | None) -> None:
        """From now on the book must show `entries` (None: there need be no book)."""
        self.calls.append(("acknowledged", entries))


@dataclass
class Content:
    """A file's bytes: on the medium for sure, and every content it has had since."""

    synced: bytes = b""
    since: list[bytes] = field(default_factory=list)

    @property
    def now(self) -> bytes:
        return self.since[-1] if self.since else self.synced

    def candidates(self) -> list[bytes]:
        found = {self.synced: None}
        for content in self.since:
            found[content] = None
            if content.startswith(self.synced):
                head, tail = self.synced, content[len(self.synced) :]
                half = len(tail) // 2
                for part in (tail[:1], tail[:half], tail[:-1]):
                    found[head + part] = None
                found[head + bytes(len(tail))] = None
                found[head + bytes(half) + tail[half:]] = None
                found[head + tail[:half] + bytes(len(tail) - half)] = None
        return list(found)


def states(calls: list[tuple[Any, ...]], chance: random.Random) -> Iterator[dict[Path, bytes | None]]:
    """What the medium may hold if the power fails after the last of `calls`: path -> content, None for a folder."""
    contents: dict[int, Content] = {}
    names: list[tuple[Any, ...]] = []
    safe: list[bool] = []
    for call in calls:
        match call:
            case ("create", path, int(file)):
                contents[file] = Content()
                names.append(call)
                safe.append(False)
            case ("create" | "rename" | "remove", *_):
                names.append(call)
                safe.append(False)
            case ("write", file, data):
                contents[file].since.append(contents[file].now + data)
            case ("truncate", file, size):
                contents[file].since.append(contents[file].now[:size])
            case ("sync", file):
                contents[file] = Content(contents[file].now)
            case ("sync folder", folder):
                safe = [was or name[1].parent == folder for was, name in zip(safe, names, strict=True)]
    choices: list[list[Any]] = [[True] if sure else [False, True] for sure in safe]
    choices += [content.candidates() for content in contents.values()]
    count = 1
    for choice in choices:
        count *= len(choice)
    if count <= MOST_STATES:
        picks: Iterator[tuple[Any, ...]] = itertools.product(*choices)
    else:
        picks = (tuple(chance.choice(choice) for choice in choices) for _ in range(MOST_STATES))
    for pick in picks:
        bytes_of = dict(zip(contents, pick[len(names) :], strict=True))
        there: dict[Path, int | None] = {}
        for applied, name in zip(pick, names, strict=False):
            if not applied:
                continue
            match name:
                case ("create", path, file):
                    there[path] = file
                case ("rename", old, new) if old in there:
                    there[new] = there.pop(old)
                case ("remove", path):
                    there.pop(path, None)
        yield {path: None if file is None else bytes_of[file] for path, file in there.items()}


class Medium(Files):
    """A disk to read from that holds one such state. `root` was there before."""

    def __init__(self, root: Path, state: dict[Path, bytes | None]) -> None:
        self._root = root
        self._state = {path: content for path, content in state.items() if self._leads_to(path, state)}

    def _leads_to(self, path: Path, state: dict[Path, bytes | None]) -> bool:
        above = path.parent
        return above == self._root or (above in state and state[above] is None and self._leads_to(above, state))

    def is_folder(self, path: Path) -> bool:
        return path in self._state and self._state[path] is None

    def may_write(self, folder: Path) -> bool:
        return self.is_folder(folder)

    def stat(self, path: Path) -> Any:
        content = self._state[path]
        kind = S_IFDIR if content is None else S_IFREG
        number = sorted(self._state).index(path)
        return SimpleNamespace(st_mode=kind, st_size=len(content or b""), st_ino=number, st_dev=0, st_mtime_ns=0)

    def list(self, folder: Path) -> Any:
        return [(path.name, self.stat(path)) for path in sorted(self._state) if path.parent == folder]

    def read(self, path: Path, offset: int) -> Any:
        return (self._state[path] or b"")[offset:], self.stat(path)


def violations(
    root: Path, folder: Path, calls: list[tuple[Any, ...]], maybe: frozenset[str], opened: dict[Any, Any]
) -> Iterator[str]:
    """The states in which something acknowledged is not as it should be; `opened` collects all that were tried.

    At each moment the book must show what was acknowledged last, or already what is acknowledged next. Entries in
    `maybe` were reported as failed; they may be there or not.
    """
    chance = random.Random(1)
    acks = [(i, call[1]) for i, call in enumerate(calls) if call[0] == "acknowledged"]
    for moment in range(len(calls) + 1):
        sure = [entries for i, entries in acks if i < moment]
        coming = [entries for i, entries in acks if i >= moment]
        allowed = [sure[-1] if sure else None, *coming[:1]]
        for state in states(calls[:moment], chance):
            key = frozenset(state.items())
            if key not in opened:
                opened[key] = _shown(folder, Medium(root, state))
            shown = opened[key]
            if shown is not None:
                shown = {id: doc for id, doc in shown.items() if id not in maybe}
            elif None in allowed:
                continue
            if shown not in allowed and not (shown == {} and None in allowed):
                yield f"after call {moment}, {calls[moment - 1][0]}: {shown} instead of {allowed}"


def _shown(folder: Path, medium: Medium) -> dict[str, Any] | None:
    try:
        return dict(Book.open(folder, computer="reader-0000", clock=Clock(), files=medium).entries())
    except NotABook:
        return None
