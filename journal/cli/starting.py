"""Commands that make a book or open the screen. The screen paints first; the book is opened behind it."""

import gc
import sys
import tempfile
from argparse import Namespace
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from journal.cli.out import DONE, show, show_json, trouble
from journal.session.clock import Clock
from journal.store.change import NotABook

if TYPE_CHECKING:
    from journal.record.kinds.setting import Setting
    from journal.record.lawn import Lawn
    from journal.session.session import Session


def session_of(given: Namespace, clock: Clock) -> "Session":
    """A session on the folder that was said, not yet open. Raises NotABook where there is nothing."""
    from journal.session.place import book_folder

    folder = book_folder(given.book)
    if folder.is_file():
        raise NotABook(f"{folder} is a file; a book is a folder.")
    if not folder.exists():
        raise NotABook(f"there is no book in {folder} yet: swardbook setup makes one.")
    return _session(folder, clock)


def _session(folder: Path, clock: Clock) -> "Session":
    from journal.session.place import state_folder
    from journal.session.session import Session
    from journal.store.stamp import computer_name

    return Session(folder, computer_name(state_folder()), clock)


def journal(given: Namespace, clock: Clock) -> int:
    """The screen on this book; with questions first when there is none."""
    if not _terminal():
        return trouble("the journal opens in a terminal. For scripts: swardbook --help")
    from journal.session.place import book_folder, state_folder

    folder = book_folder(given.book)
    return _screen(lambda: _session(folder, clock), folder, state_folder())


def setup(given: Namespace, clock: Clock) -> int:
    """Make a book from a file, or by questions on the screen."""
    if given.source is None:
        return journal(given, clock)
    from journal.line.setup_file import SetupProblem, settings_from_toml

    source = Path(given.source).expanduser()
    try:
        text = source.read_text(encoding="utf-8")
    except (OSError, UnicodeDecodeError) as error:
        return trouble(f"{source} can't be read: {error}")
    try:
        settings = settings_from_toml(text, clock.today())
    except SetupProblem as problem:
        return trouble(f"{source}: {problem} Nothing was written.")
    from journal.session.place import book_folder

    session = _session(book_folder(given.book), clock)
    try:
        session.open()
    except NotABook:
        pass  # none yet: it is made below, or refused there
    else:
        if not given.edit:
            return trouble(f"there is a book in {session.folder} already; --edit changes its facts.")
        settings = _changed(settings, session.history.ground.newest)
    saved = session.set_up(settings)
    if given.json:
        show_json({"book": str(session.folder), "settings": len(saved.entries)})
    else:
        show(f"The book is in {session.folder}.")
    return DONE


def _changed(settings: "tuple[Setting, ...]", lawn: "Lawn") -> "tuple[Setting, ...]":
    """Only what differs from the lawn as it is."""
    found = []
    for setting in settings:
        values = tuple((k, v) for k, v in setting.values if lawn.said.get((setting.what, setting.name, k)) != v)
        known = setting.name in (*lawn.zone_names, *(product.name for product in lawn.products), "")
        if values or not known:
            found.append(replace(setting, values=values))
    return tuple(found)


def demo(given: Namespace, clock: Clock) -> int:
    """A fresh copy of the demo book, opened on its own day."""
    from journal.cli.demo import OPENS

    clock = Clock(clock.fixed or OPENS)
    if given.keep and not _terminal():
        folder = Path(given.keep).expanduser()
        _demo_book(folder, clock)
        if given.json:
            show_json({"book": str(folder), "today": clock.today().isoformat()})
        else:
            show(f"The demo's book is in {folder}, on its own day: swardbook --book {folder} --today {clock.today()}")
        return DONE
    if not _terminal():
        return trouble("the demo opens in a terminal; --keep DIR leaves the book in a folder instead.")
    with tempfile.TemporaryDirectory(prefix="swardbook-demo-", ignore_cleanup_errors=True) as scratch:
        folder = Path(given.keep).expanduser() if given.keep else Path(scratch) / "book"

        def opened() -> "Session":
            _demo_book(folder, clock)
            return _session(folder, clock)

        return _screen(opened, folder, Path(scratch))


def _demo_book(folder: Path, clock: Clock) -> None:
    from journal.cli.demo.book import write
    from journal.store.book import Book

    if folder.exists() and (not folder.is_dir() or any(folder.iterdir())):
        raise NotABook(f"{folder} is not an empty folder; the demo's copy wants one of its own.")
    book = Book.create(folder, computer="demo", clock=clock.now)
    write(book)
    book.close()


def _terminal() -> bool:
    return sys.stdin.isatty() and sys.stdout.isatty()


def _screen(make_session: Callable[[], "Session"], folder: Path, state: Path) -> int:
    """Load the screen's library only here; nothing made while importing is garbage, so nothing looks for it."""
    gc.disable()
    from journal.app import run

    gc.freeze()
    gc.enable()
    return run(make_session, folder, state)
