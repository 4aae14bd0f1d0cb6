"""The book as the rest of the program meets it."""

from __future__ import annotations

import stat
import sys
from pathlib import Path

import pytest

from journal.store.book import Book, NotABook, NotSaved, computer_name, new_id
from tests.store.rigs import Clock, a_book, log_of, mowing, reopened


def test_a_new_book_is_a_private_folder_that_explains_itself(tmp_path: Path) -> None:
    book = a_book(tmp_path / "homes" / "ann" / "lawn")
    book.add([mowing()])
    assert sorted(path.name for path in book.folder.iterdir()) == [".lock-desk-7f3a", "READ-ME.txt", "log"]
    assert "CRC-32" in (book.folder / "READ-ME.txt").read_text(encoding="utf-8")
    if sys.platform != "win32":
        for path in [book.folder, *book.folder.rglob("*"), book.folder.parent]:
            assert stat.S_IMODE(path.stat().st_mode) == (0o700 if path.is_dir() else 0o600), path


def test_making_a_book_where_one_is_opens_it_and_where_other_things_are_refuses(tmp_path: Path) -> None:
    a_book(tmp_path / "lawn").add([mowing(1)], ["first"])
    assert dict(a_book(tmp_path / "lawn").entries()) == {"first": mowing(1)}
    (tmp_path / "letters").mkdir()
    (tmp_path / "letters" / "to-ann.txt").write_text("Dear Ann")
    with pytest.raises(NotABook, match="not empty and is not a journal"):
        a_book(tmp_path / "letters")
    assert [path.name for path in (tmp_path / "letters").iterdir()] == ["to-ann.txt"]
    with pytest.raises(NotABook, match="not a folder"):
        a_book(tmp_path / "letters" / "to-ann.txt")


def test_a_book_that_was_begun_but_not_finished_can_be_made_again(tmp_path: Path) -> None:
    for begun in ([], ["log"]):
        folder = tmp_path / f"lawn{len(begun)}"
        for path in [folder, *(folder / name for name in begun)]:
            path.mkdir()
        a_book(folder).add([mowing()])
        assert len(reopened(folder).entries()) == 1
        assert (folder / "READ-ME.txt").exists()


def test_opening_what_is_no_book(tmp_path: Path) -> None:
    with pytest.raises(NotABook, match="There is no folder"):
        reopened(tmp_path / "nowhere")
    with pytest.raises(NotABook, match="not a journal"):
        reopened(tmp_path)
    (tmp_path / "file").write_text("")
    with pytest.raises(NotABook):
        reopened(tmp_path / "file")


def test_opening_writes_nothing(tmp_path: Path) -> None:
    a_book(tmp_path / "lawn").close()
    before = sorted((path, path.stat().st_mtime_ns) for path in (tmp_path / "lawn").rglob("*"))
    book = reopened(tmp_path / "lawn")
    book.refresh()
    assert book.newest_undoable() == ()
    assert sorted((path, path.stat().st_mtime_ns) for path in (tmp_path / "lawn").rglob("*")) == before


def test_what_was_written_is_there_afterwards_and_in_memory_alike(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    first, second = book.add([mowing(1), mowing(2, remark="line one\nline two\u2028\x85 “x” \\ \x1b 草")])
    third = book.amend(first.id, mowing(3))
    struck = book.strike(second.id)
    assert (first.before, first.after, third.before, third.after) == (None, mowing(1), mowing(1), mowing(3))
    assert (struck.after, struck.by, struck.undoes) == (None, "desk-7f3a", None)
    assert dict(book.entries()) == {first.id: mowing(3)}
    again = reopened(tmp_path / "lawn")
    assert again.entries() == book.entries()
    assert again.head(first.id) == book.head(first.id) == third.version
    assert again.head(second.id) == struck.version
    assert book.check().as_json() == {
        "problems": False, "files": ["2026-desk-7f3a.jsonl"], "records": 3, "damaged": [], "gaps": {},
        "oversize": [], "ignored": [], "waiting": [], "newer": [], "vanished": 0,
    }  # fmt: skip


def test_several_documents_are_one_line_of_the_log(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    changes = book.add([mowing(n) for n in range(200)])
    assert len(log_of(book).read_bytes().splitlines()) == 1
    assert [change.version.rsplit(".", 1)[1] for change in changes] == [str(k) for k in range(1, 201)]
    assert [change.id for change in changes] == sorted(change.id for change in changes)
    assert book.add([]) == ()


def test_more_than_a_line_can_hold_is_one_file_of_its_own(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    changes = book.add([mowing(n) for n in range(201)])
    assert len(changes) == 201
    assert not log_of(book).exists()
    long = book.add([mowing(n, remark="x" * 600_000) for n in range(2)])
    assert len(reopened(tmp_path / "lawn").entries()) == 203
    assert book.newest_undoable() == long
    book.undo(long)
    assert book.newest_undoable() == changes
    book.undo(changes)
    assert len(reopened(tmp_path / "lawn").entries()) == 0
    assert not book.check().problems


def test_a_document_given_out_is_the_callers_own(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    mine = mowing(1, parts=[{"zone": "front"}])
    (change,) = book.add([mine])
    mine["parts"][0]["zone"] = "spoilt"
    assert change.after is not None
    change.after["parts"].append("spoilt")
    entries = book.entries()
    entries[change.id]["parts"][0]["zone"] = "spoilt"
    for document in entries.values():
        document.clear()
    (again,) = book.newest_undoable()
    assert again.after is not None
    again.after["zones"].append("spoilt")
    with pytest.raises(TypeError):
        entries[change.id] = {}  # type: ignore[index]
    assert dict(entries) == {change.id: mowing(1, parts=[{"zone": "front"}])}


def test_an_amendment_of_something_changed_meanwhile_is_refused(tmp_path: Path) -> None:
    ours, theirs = a_book(tmp_path / "lawn"), a_book(tmp_path / "lawn")
    (change,) = ours.add([mowing(1)])
    theirs.refresh()
    newer = theirs.amend(change.id, mowing(2), expect=change.version)
    with pytest.raises(NotSaved, match="changed meanwhile"):
        ours.amend(change.id, mowing(3), expect=change.version)
    with pytest.raises(NotSaved, match="changed meanwhile"):
        ours.strike(change.id)  # it has not been shown yet what it says now
    (seen,) = ours.refresh()
    assert (seen.before, seen.after, seen.version) == (mowing(1), mowing(2), newer.version)
    ours.amend(change.id, mowing(3), expect=newer.version)
    assert ours.conflicts() == {}


def test_what_is_not_there_cannot_be_amended_or_struck(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    (change,) = book.add([mowing(1)])
    book.strike(change.id)
    for id, words in ((change.id, "it was struck"), ("nobody", "there is no entry nobody")):
        with pytest.raises(NotSaved, match=words):
            book.amend(id, mowing(2))
        with pytest.raises(NotSaved, match=words):
            book.strike(id)
    with pytest.raises(KeyError):
        book.head("nobody")


def test_ids_are_given_once(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    book.add([mowing(1)], ["a"])
    with pytest.raises(NotSaved, match="another entry a already"):
        book.add([mowing(2)], ["a"])
    with pytest.raises(NotSaved, match="an id of its own"):
        book.add([mowing(2), mowing(3)], ["b", "b"])
    with pytest.raises(NotSaved, match="cannot name an entry"):
        book.add([mowing(2)], ["../b"])
    with pytest.raises(NotSaved, match='no "id" of its own'):
        book.add([mowing(2, id="b")])
    (again,) = book.add([mowing(1)], ["a"])  # the same save tried again
    assert again.before == again.after == mowing(1)
    assert dict(reopened(tmp_path / "lawn").entries()) == {"a": mowing(1)}


@pytest.mark.parametrize(
    ("value", "words"),
    [
        (float("nan"), '"depth_mm" is not a finite number'),
        (float("inf"), '"depth_mm" is not a finite number'),
        ([float("-inf")], r'"depth_mm\[0\]" is not a finite number'),
        ("half \ud83d", '"depth_mm" holds half a character'),
        ({"x": {"\udc00": 1}}, "holds half a character"),
        ([[[[[[[[1]]]]]]]], "nested too deeply"),
        ({1: "x"}, "not named by text"),
        ({"a", "b"}, '"depth_mm" is a set, which cannot be written'),
        (Path("x"), "which cannot be written"),
        (10**5000, "cannot be written"),
        ("x" * 1_100_000, "too long"),
    ],
    ids=map(str, range(11)),
)
def test_what_could_not_be_read_again_is_refused(tmp_path: Path, value: object, words: str) -> None:
    book = a_book(tmp_path / "lawn")
    (kept,) = book.add([mowing(1)])
    size = log_of(book).stat().st_size
    for attempt in (
        lambda: book.add([mowing(2), mowing(3, depth_mm=value)]),
        lambda: book.amend(kept.id, mowing(3, depth_mm=value)),
    ):
        with pytest.raises(NotSaved, match=words):
            attempt()
    assert (dict(book.entries()), log_of(book).stat().st_size) == ({kept.id: mowing(1)}, size)


def test_the_log_never_goes_back_in_time(tmp_path: Path) -> None:
    clock = Clock()
    book = a_book(tmp_path / "lawn", clock=clock)
    stamps = [book.add([mowing()])[0].at]
    clock.later(days=-400)  # the battery was empty
    for _ in range(3):
        stamps.append(book.add([mowing()])[0].at)
    stamps.append(a_book(tmp_path / "lawn", clock=clock).add([mowing()])[0].at)
    assert stamps == [f"2026-05-03T14:22:31.{ms}Z" for ms in (123, 124, 125, 126, 127)]
    assert {path.name for path in (tmp_path / "lawn" / "log").iterdir()} == {"2026-desk-7f3a.jsonl"}


def test_another_computers_wild_clock_is_not_believed(tmp_path: Path) -> None:
    wild, slow = Clock(9999, 12, 31), Clock(2026, 5, 2)
    wild.now = wild.now.replace(hour=23, minute=59, second=59, microsecond=999000)
    far = a_book(tmp_path / "lawn", "wild-0000", clock=wild)
    (first,) = far.add([mowing(1)])
    assert far.add([mowing(2)])[0].at == first.at == "9999-12-31T23:59:59.999Z"
    a_book(tmp_path / "lawn", "near-0000", clock=Clock()).add([mowing(3)])
    book = a_book(tmp_path / "lawn", clock=slow)
    change = book.amend(first.id, mowing(4))
    assert change.at == "2026-05-03T14:22:31.124Z"  # after the near one, which is believed
    assert book.entries()[first.id] == mowing(4)  # it had seen the other: the stamps do not decide
    assert reopened(tmp_path / "lawn").entries()[first.id] == mowing(4)


def test_each_year_has_its_file_and_numbers_go_on(tmp_path: Path) -> None:
    clock = Clock()
    book = a_book(tmp_path / "lawn", clock=clock)
    for _ in range(3):
        book.add([mowing()])
        clock.later(days=365)
    assert sorted(path.name[:4] for path in (tmp_path / "lawn" / "log").iterdir()) == ["2026", "2027", "2028"]
    log_of(book, year=2027).unlink()
    report = reopened(tmp_path / "lawn").check()
    assert report.gaps == {"desk-7f3a": ((2, 2),)}
    assert report.problems
    assert book.check().vanished == 1  # and what was in memory is still shown
    assert len(book.entries()) == 3


def test_ids_are_in_order_of_time_and_names_of_computers_stay(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    clock = Clock()
    first = new_id(clock)
    clock.later(milliseconds=1)
    ids = [first, *(new_id(clock) for _ in range(200))]
    assert all(len(id) == 26 for id in ids)
    assert len(set(ids)) == 201
    assert min(ids) == first
    monkeypatch.setattr("socket.gethostname", lambda: "Ann's Très-Long-And-Winding-Name.example")
    name = computer_name(tmp_path / "state")
    assert name.startswith("ann-s-tr-s-long-and-")
    assert computer_name(tmp_path / "state") == name
    a_book(tmp_path / "lawn", name).add([mowing()])
    monkeypatch.setattr("socket.gethostname", lambda: "草")
    other = computer_name(tmp_path / "state")  # the state came along to another computer
    assert other.startswith("computer-")
    (tmp_path / "state" / "computer.json").write_text('{"host": "", "name": "../x"}')
    assert computer_name(tmp_path / "state").startswith("computer-")
    assert [path.name for path in (tmp_path / "state").iterdir()] == ["computer.json"]


def test_a_name_that_could_not_stand_in_a_record_is_a_programmers_error(tmp_path: Path) -> None:
    a_book(tmp_path / "lawn")
    with pytest.raises(ValueError, match="cannot name a computer"):
        Book.open(tmp_path / "lawn", computer="Desk.1", clock=Clock())
