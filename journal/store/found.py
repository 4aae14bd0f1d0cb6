"""Making a new book: its folder, the folder of its log, and the page that explains them."""

from __future__ import annotations

from pathlib import Path

from journal.store import readme
from journal.store.change import NotABook, NotSaved
from journal.store.files import Files, in_words

_OURS = {"log", readme.NAME}


def found_book(folder: Path, files: Files) -> None:
    """See to it that `folder` is a book: made, complete and safe on the disk. Doing it again does no harm.

    NotABook if something else is there; NotSaved if the disk says no.
    """
    try:
        if not files.is_folder(folder):
            _make(folder, files)
        names = {name for name, _ in files.list(folder)}
        if not names <= _OURS and "log" not in names:
            raise NotABook(f"{folder} is not empty and is not a journal. Choose an empty or a new folder.")
        if "log" not in names:
            files.make_private(folder)
            files.make_folder(folder / "log")
        if readme.NAME not in names and files.may_write(folder):
            _write_readme(folder / readme.NAME, files)
            files.sync_folder(folder)
        elif "log" not in names:
            files.sync_folder(folder)
    except FileExistsError as why:
        raise NotABook(f"{folder} is not a folder.") from why
    except OSError as why:
        raise NotSaved(f"The book could not be made in {folder}: {in_words(why)}.") from why


def _make(folder: Path, files: Files) -> None:
    """Make a folder and those above it that are missing, each safely named in the one above."""
    if not files.is_folder(folder.parent):
        _make(folder.parent, files)
    files.make_folder(folder)
    files.sync_folder(folder.parent)


def _write_readme(path: Path, files: Files) -> None:
    fd = files.create(path)
    try:
        rest = readme.TEXT.encode("utf-8")
        while rest:
            rest = rest[files.write(fd, rest) :]
        files.sync(fd)
    finally:
        files.close(fd)
