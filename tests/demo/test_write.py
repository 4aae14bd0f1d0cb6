"""The demo book on disk."""

from datetime import UTC, datetime
from pathlib import Path

from journal.cli.demo.book import entries, write
from journal.record.document import from_document
from journal.store.book import Book


def _open(folder: Path) -> Book:
    return Book.create(folder, computer="demo", clock=lambda: datetime(2027, 5, 3, 12, tzinfo=UTC))


def test_what_is_written_is_what_was_read(tmp_path: Path) -> None:
    book = _open(tmp_path / "book")
    written = entries()
    assert write(book) == len(written)
    book.close()
    again = _open(tmp_path / "book")
    assert again.damaged == 0
    assert tuple(from_document(id, document) for id, document in sorted(again.entries().items())) == written
    again.close()


def test_writing_twice_changes_nothing(tmp_path: Path) -> None:
    book = _open(tmp_path / "book")
    count = write(book)
    assert write(book) == 0
    assert len(book.entries()) == count
    book.close()
