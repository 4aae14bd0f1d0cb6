"""The demo book made from its set-up file and its lines."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from importlib.resources import files

from journal.line.read import read
from journal.line.setup_file import settings_from_toml
from journal.record.day import parse_day
from journal.record.document import to_document
from journal.record.entry import Entry
from journal.record.refusal import Refusal
from journal.season.history import History
from journal.store.book import Book
from journal.store.bulk import write_bulk


class DemoProblem(ValueError):
    """A row of the demo's season can't be used; the message names the row."""


def lawn_toml() -> str:
    """The set-up file of the demo's lawn."""
    return _text("lawn.toml")


def lines() -> Iterator[tuple[date, str]]:
    """What was typed, oldest first: the day, and the line. Raises DemoProblem naming the row."""
    return ((day, line) for _, day, line in _rows(_text("season.txt")))


def entries() -> tuple[Entry, ...]:
    """Everything in the demo book, in the order in which it was written down.

    Each line is read on its own day, knowing only what came before. Raises DemoProblem naming the row.
    """
    return read_season(lawn_toml(), _text("season.txt"))


def read_season(lawn: str, season: str) -> tuple[Entry, ...]:
    """The entries that a set-up file and the rows of a season make. Raises DemoProblem naming the row."""
    rows = tuple(_rows(season))
    if not rows:
        raise DemoProblem("the season has no rows")
    found: list[Entry] = [
        replace(setting, id=_id(number)) for number, setting in enumerate(settings_from_toml(lawn, rows[0][1]), 1)
    ]
    history = History.of(found)
    for row, day, line in rows:
        reading = read(line, history, day)
        if reading.draft is None:
            raise DemoProblem(f"row {row}: {line}: {reading.problem}")
        entry = replace(reading.draft, id=_id(len(found) + 1))
        found.append(entry)
        history = history.plus(entry)
    return tuple(found)


def write(book: Book) -> int:
    """Put every entry of the demo into a book, as one act; returns how many were new to it."""
    return write_bulk(book, ((entry.id, to_document(entry)) for entry in entries()))


def _id(number: int) -> str:
    """Sorts by number, and before any id that a clock gives: what is written into the demo later counts as later."""
    return f"00demo{number:04}"


def _text(name: str) -> str:
    return files("journal.cli.demo").joinpath(name).read_text(encoding="utf-8")


def _rows(text: str) -> Iterator[tuple[int, date, str]]:
    """(row, day, line) for each row that is neither blank nor a remark; days never go back."""
    before = date.min
    for number, row in enumerate(text.splitlines(), 1):
        if not row.strip() or row.startswith("#"):
            continue
        word, gap, line = row.partition("  ")
        try:
            day = parse_day(word)
        except Refusal as refusal:
            raise DemoProblem(f"row {number}: {refusal}") from None
        if not gap or not line.strip():
            raise DemoProblem(f"row {number}: a day, two blanks and a line are wanted")
        if day < before:
            raise DemoProblem(f"row {number}: {day} comes after {before}")
        before = day
        yield number, day, line
