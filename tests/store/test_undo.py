"""Taking back and bringing back."""

from __future__ import annotations

from pathlib import Path

import pytest

from journal.store.book import Book, NotSaved
from tests.store.rigs import Clock, a_book, mowing, reopened


def documents(book: Book) -> list[int]:
    return sorted(document["minutes"] for document in book.entries().values())


def test_walking_back_to_an_empty_book_and_forward_again(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    (one,) = book.add([mowing(1)])
    book.add([mowing(20), mowing(21)])
    book.amend(one.id, mowing(3))
    book.strike(one.id)
    stages = [[], [1], [1, 20, 21], [3, 20, 21], [20, 21]]
    for expected in reversed(stages[:-1]):
        book.undo(book.newest_undoable())
        assert documents(book) == expected
        book = a_book(tmp_path / "lawn")  # a restart forgets nothing
        assert documents(book) == expected
    assert book.newest_undoable() == ()
    for expected in stages[1:]:
        book.undo(book.newest_redoable())
        assert documents(book) == documents(reopened(tmp_path / "lawn")) == expected
    assert book.newest_redoable() == ()
    for expected in reversed(stages[:-1]):  # and all the way back once more
        book.undo(book.newest_undoable())
        assert documents(book) == expected
    assert book.newest_undoable() == ()
    assert not book.check().problems


def test_undo_of_undo_of_undo(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    change = book.add([mowing(1)])
    expected = [[], [1], [], [1], []]
    for want in expected:
        change = book.undo(change)
        assert change[0].undoes is not None
        assert documents(book) == want
    assert book.newest_undoable() == ()
    book.undo(book.newest_redoable())
    assert documents(book) == [1]


def test_an_undo_says_what_it_did(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    added = book.add([mowing(1), mowing(2)])
    amended = book.amend(added[0].id, mowing(3))
    (undone,) = book.undo([amended])
    assert (undone.before, undone.after, undone.undoes) == (mowing(3), mowing(1), amended.version)
    gone = book.undo(added)
    assert [change.after for change in gone] == [None, None]
    assert [change.undoes for change in gone] == [change.version for change in added]
    lines = (tmp_path / "lawn" / "log" / "2026-desk-7f3a.jsonl").read_bytes().splitlines()
    assert len(lines) == 4  # a group is taken back as one


def test_what_was_changed_since_is_not_undone(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    added = book.add([mowing(1), mowing(2)])
    amended = book.amend(added[0].id, mowing(3))
    with pytest.raises(NotSaved, match="changed since"):
        book.undo(added)  # one of the two was amended: neither is touched
    assert documents(book) == [2, 3]
    with pytest.raises(NotSaved, match="changed since"):
        book.undo([amended, added[0]])
    book.undo([amended])
    book.undo(added)
    assert documents(book) == []


def test_another_computers_change_stops_an_undo_and_is_never_offered(tmp_path: Path) -> None:
    desk, laptop = a_book(tmp_path / "lawn"), a_book(tmp_path / "lawn", "laptop-91c0")
    added = desk.add([mowing(1)])
    laptop.refresh()
    assert laptop.newest_undoable() == ()
    laptop.amend(added[0].id, mowing(2))
    with pytest.raises(NotSaved, match=r"changed since \(on laptop-91c0\)"):
        desk.undo(added)
    assert desk.newest_undoable() == added
    assert documents(desk) == [2]


def test_two_windows_take_back_each_its_own(tmp_path: Path) -> None:
    one, two = a_book(tmp_path / "lawn"), a_book(tmp_path / "lawn")
    first, second = one.add([mowing(1)]), two.add([mowing(2)])
    assert one.newest_undoable() == first  # until it looks
    one.refresh()
    assert one.newest_undoable() == second  # of the computer, not of the window
    assert [change.after for change in one.undo(first)] == [None]
    two.refresh()
    assert documents(two) == [2]
    two.undo(second)
    with pytest.raises(NotSaved, match="changed since"):
        one.undo(second)  # it was undone meanwhile
    one.refresh()
    assert documents(one) == []
    assert [change.undoes for change in one.newest_redoable()] == [second[0].version]


def test_a_redo_is_no_longer_offered_when_its_entry_went_on(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    (one,) = book.add([mowing(1)])
    book.undo([book.amend(one.id, mowing(2))])
    book.amend(one.id, mowing(3))
    assert book.newest_redoable() == ()


def test_an_undo_waits_for_missing_records(tmp_path: Path) -> None:
    desk = a_book(tmp_path / "lawn")
    added = desk.add([mowing(1)])
    laptop = a_book(tmp_path / "lawn", "laptop-91c0", clock=Clock(2027))
    amended = laptop.amend(added[0].id, mowing(2))
    (tmp_path / "lawn" / "log" / "2026-desk-7f3a.jsonl").unlink()
    with pytest.raises(NotSaved, match="missing from this book"):
        a_book(tmp_path / "lawn", "laptop-91c0").undo([amended])


def test_a_change_from_elsewhere_is_not_undone(tmp_path: Path) -> None:
    change = a_book(tmp_path / "other").add([mowing(1)])
    with pytest.raises(NotSaved, match="not in this book"):
        a_book(tmp_path / "lawn").undo(change)
