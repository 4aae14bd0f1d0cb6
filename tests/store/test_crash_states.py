"""Power cuts: whatever was acknowledged is there in every state that the calls made so far may have left behind."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from journal.store import log_storage
from journal.store.book import Book, NotSaved
from journal.store.bulk import write_bulk
from journal.store.files import Files
from tests.store.crash import Recorder, violations
from tests.store.rigs import Clock


def note(nth: int) -> dict[str, object]:
    return {"kind": "note", "nth": nth}


def a_season(folder: Path, disk: Recorder) -> frozenset[str]:
    """All that is done to a book, each act acknowledged."""
    clock = Clock()

    def act(book: Book, what: Callable[[], object]) -> None:
        what()
        disk.acknowledged(dict(book.entries()))

    disk.acknowledged(None)
    book = Book.create(folder, computer="desk", clock=clock, files=disk)
    act(book, lambda: None)
    act(book, lambda: book.add([note(1)], ["a"]))
    act(book, lambda: book.add([note(2), note(3)], ["b", "c"]))
    act(book, lambda: book.amend("a", note(4)))
    act(book, lambda: book.undo(book.newest_undoable()))
    clock.later(days=365)
    act(book, lambda: book.strike("b"))
    act(book, lambda: write_bulk(book, [(f"x{n}", note(n)) for n in range(4)]))
    act(book, lambda: book.bring({"x1": note(6), "c": note(7), "y1": note(8)}))
    act(book, lambda: book.undo(book.newest_undoable()))
    other = Book.open(folder, computer="desk", clock=clock, files=disk)
    act(other, lambda: other.add([note(5)], ["d"]))
    return frozenset()


def a_failing_disk(folder: Path, disk: Recorder) -> frozenset[str]:
    """A sync that fails twice, first for the very first record, and saves that work after each."""
    disk.acknowledged(None)
    book = Book.create(folder, computer="desk", clock=Clock(), files=disk)
    disk.acknowledged({})
    for nth in range(2):
        disk.fails_at_sync = 1
        with pytest.raises(NotSaved):
            book.add([note(nth)], [f"failed{nth}"])
        book.add([note(nth)], [f"kept{nth}"])
        disk.acknowledged(dict(book.entries()))
    return frozenset({"failed0", "failed1"})


def a_lock_held(folder: Path, disk: Recorder) -> frozenset[str]:
    """A file on the side, since another window holds the lock."""
    disk.acknowledged(None)
    holder = Book.create(folder, computer="desk", clock=Clock(), files=disk)
    book = Book.open(folder, computer="desk", clock=Clock(), files=disk, patience=0.0)
    disk.acknowledged({})
    with holder.db.storage.transaction():
        for nth in range(2):
            book.add([note(nth)], [f"id{nth}"])
            disk.acknowledged(dict(book.entries()))
    return frozenset()


@pytest.fixture(autouse=True)
def _short_lines(monkeypatch: pytest.MonkeyPatch) -> None:
    """Three changes are too many for a line, so that few states suffice for an import."""
    monkeypatch.setattr(log_storage, "MOST", 2)


def wrong_states(
    tmp_path: Path, disk: Recorder, work: Callable[[Path, Recorder], frozenset[str]], opened: dict[object, object]
) -> Iterator[str]:
    folder = tmp_path / "home" / "lawn"
    maybe = work(folder, disk)
    return violations(tmp_path, folder, disk.calls, maybe, opened)


@pytest.mark.parametrize("work", [a_season, a_failing_disk, a_lock_held])
def test_nothing_acknowledged_is_lost(tmp_path: Path, work: Callable[[Path, Recorder], frozenset[str]]) -> None:
    opened: dict[object, object] = {}
    assert list(wrong_states(tmp_path, Recorder(), work, opened)) == []
    assert len(opened) >= 40


class NoSync(Recorder):
    """A mistake: files are written and never synced."""

    def sync(self, fd: int) -> None:
        pass


class NoFolderSync(Recorder):
    """A mistake: no folder is ever synced."""

    def sync_folder(self, folder: Path) -> None:
        pass


class OnlyLogSync(Recorder):
    """A mistake: the folders above the log are never synced."""

    def sync_folder(self, folder: Path) -> None:
        if folder.name == "log":
            super().sync_folder(folder)


class EarlyRename(Recorder):
    """A mistake: an import gets its final name before it is on the medium."""

    def sync(self, fd: int) -> None:
        calls = len(self.calls)
        super().sync(fd)
        path = next(path for path, file in self._of_path.items() if file == self._of_fd[fd])
        if path.suffix == ".part":
            del self.calls[calls:]


@pytest.mark.parametrize("mistake", [NoSync, NoFolderSync, OnlyLogSync, EarlyRename])
def test_each_mistake_in_the_order_of_calls_would_be_noticed(tmp_path: Path, mistake: type[Recorder]) -> None:
    assert next(wrong_states(tmp_path, mistake(), a_season, {}), None)


def test_the_order_of_calls_for_one_record(tmp_path: Path) -> None:
    disk = Recorder()
    book = Book.create(tmp_path / "lawn", computer="desk", clock=Clock(), files=disk)
    names = []
    for nth in range(2):
        disk.calls.clear()
        book.add([note(nth)])
        names.append([call[0] for call in disk.calls if call[0] != "create" or call[1].suffix == ".jsonl"])
    assert names == [["create", "write", "sync", *["sync folder"] * 3], ["write", "sync"]]


def test_the_recorder_replaces_every_call_that_alters_the_disk() -> None:
    reading = {"stat", "is_folder", "list", "may_write", "read", "fstat", "last_byte", "close", "make_private"}
    assert {name for name in vars(Files) if not name.startswith("_")} - reading <= set(vars(Recorder))
