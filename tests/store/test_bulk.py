"""Many entries at once."""

from __future__ import annotations

from pathlib import Path

import pytest

from journal.store.book import NotSaved
from journal.store.bulk import write_bulk
from tests.store.rigs import a_book, mowing, reopened


def weather(nth: int) -> dict[str, object]:
    return {"kind": "rain", "date": f"2026-{nth // 28 + 1:02}-{nth % 28 + 1:02}", "depth_mm": nth / 4}


YEAR = [(f"day{n:04}", weather(n)) for n in range(330)]


def test_bringing_the_same_again_changes_nothing(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    assert write_bulk(book, YEAR[:300]) == 300
    (path,) = (tmp_path / "lawn" / "log").iterdir()
    assert len(path.read_bytes().splitlines()) == 300  # one record each: damage costs one
    assert path.stat().st_mode & 0o777 == 0o600 or path.drive
    assert write_bulk(book, YEAR[:300]) == 0
    assert write_bulk(reopened(tmp_path / "lawn"), YEAR) == 30
    book.refresh()
    assert dict(book.entries()) == dict(YEAR) == dict(reopened(tmp_path / "lawn").entries())
    assert not book.check().problems


def test_what_was_struck_stays_struck(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    write_bulk(book, YEAR)
    book.strike(YEAR[0][0])
    book.amend(YEAR[1][0], mowing(1))
    assert write_bulk(book, YEAR) == 0
    assert YEAR[0][0] not in book.entries()
    assert book.entries()[YEAR[1][0]] == mowing(1)


def test_an_import_is_one_act(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    (one,) = book.add([mowing(1)])
    write_bulk(book, YEAR)
    changes = a_book(tmp_path / "lawn").newest_undoable()
    assert [change.id for change in changes] == [id for id, _ in YEAR]
    book.undo(changes)
    assert list(book.entries()) == list(reopened(tmp_path / "lawn").entries()) == [one.id]
    book.undo(book.newest_redoable())
    assert len(book.entries()) == 331
    assert not book.check().problems


def test_two_copies_that_imported_the_same_have_no_conflict(tmp_path: Path) -> None:
    book, other = a_book(tmp_path / "lawn"), a_book(tmp_path / "other", "laptop-91c0")
    for each in (book, other):
        write_bulk(each, YEAR)
    for path in (tmp_path / "other" / "log").iterdir():
        path.rename(tmp_path / "lawn" / "log" / path.name)
    book.refresh()
    assert (len(book.entries()), book.conflicts()) == (330, {})


def test_what_cannot_be_imported_leaves_the_book_as_it_is(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    for spoilt, words in (
        ((YEAR[0][0], weather(7)), "two different entries"),
        (("../x", weather(7)), "cannot name an entry"),
        (("x", weather(7) | {"id": "x"}), 'no "id" of its own'),
        (("x", weather(7) | {"remark": "\ud83d"}), '"remark" holds half a character'),
        (("x", weather(7) | {"remark": "x" * 1_100_000}), "too long"),
    ):
        with pytest.raises(NotSaved, match=words):
            write_bulk(book, [*YEAR, spoilt])
    assert dict(book.entries()) == {}
    assert list((tmp_path / "lawn" / "log").iterdir()) == []
    assert write_bulk(book, [*YEAR, YEAR[0]]) == 330


def test_entries_brought_are_one_act_whatever_stood_before(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    before = [(id, weather(n)) for n, (id, _) in enumerate(YEAR[:200])]
    write_bulk(book, before)
    after = {id: document | {"depth_mm": 99} for id, document in YEAR[100:]}
    assert len(book.bring(after)) == 230
    assert dict(book.entries()) == dict(before[:100]) | after
    other = reopened(tmp_path / "lawn", "desk-7f3a")
    assert len(other.undo(other.newest_undoable())) == 230
    assert dict(other.entries()) == dict(before)
    book.refresh()
    assert book.bring({}) == ()
    assert len(book.bring(after)) == 230  # what was only taken back comes again
    assert dict(book.entries()) == dict(before[:100]) | after == dict(reopened(tmp_path / "lawn").entries())


def test_what_was_struck_is_told_from_what_was_taken_back(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    book.bring(dict(YEAR[:3]))
    book.undo(book.newest_undoable())
    assert book.struck() == frozenset()
    book.bring(dict(YEAR[:3]))
    strike = book.strike(YEAR[1][0])
    assert book.struck() == {YEAR[1][0]}
    back = book.undo([strike])
    assert book.struck() == frozenset()
    book.undo(back)
    assert book.struck() == {YEAR[1][0]}


def test_what_another_window_touched_meanwhile_is_not_overwritten_unseen(tmp_path: Path) -> None:
    book, other = a_book(tmp_path / "lawn"), a_book(tmp_path / "lawn")
    other.bring({"a": weather(1)})
    with pytest.raises(NotSaved, match="changed meanwhile"):
        book.bring({"a": weather(2), "b": weather(3)})
    assert dict(book.entries()) == {"a": weather(1)}
    book.refresh()
    book.bring({"a": weather(2), "b": weather(3)})
    assert dict(book.entries()) == {"a": weather(2), "b": weather(3)}
