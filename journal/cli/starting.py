"""Commands that make a book or open the screen."""

import sys
import tempfile
from argparse import Namespace
from collections.abc import Callable
from pathlib import Path

from journal.cli.out import DONE, show, show_json, trouble
from journal.line.setup_file import SetupProblem, settings_from_toml
from journal.session.clock import Clock
from journal.session.place import state_folder
from journal.session.session import Session
from journal.store.book import Book
from journal.store.change import NotABook
from journal.store.stamp import computer_name


def open_journal(session: Session) -> int:
    """The screen on this book; with questions first when there is none."""
    if not _terminal():
        return trouble("the journal opens in a terminal. For scripts: swardbook --help")
    return _run(lambda: session, Path(state_folder()))


def setup(session: Session, given: Namespace) -> int:
    """Make a book from a file, or by questions on the screen."""
    if given.source is None:
        return open_journal(session)
    source = Path(given.source).expanduser()
    try:
        text = source.read_text(encoding="utf-8")
    except (OSError, UnicodeDecodeError) as error:
        return trouble(f"{source} can't be read: {error}")
    try:
        settings = settings_from_toml(text, session.today)
    except SetupProblem as problem:
        return trouble(f"{source}: {problem} Nothing was written.")
    try:
        session.open()
    except NotABook:
        pass
    else:
        if not given.edit:
            return trouble(f"there is a book in {session.folder} already; --edit changes its facts.")
    saved = session.set_up(settings)
    if given.json:
        show_json({"book": str(session.folder), "settings": len(saved.entries)})
    else:
        show(f"The book is in {session.folder}.")
    return DONE


def demo(given: Namespace, clock: Clock) -> int:
    """A fresh copy of the demo book, opened on its own day."""
    from journal.cli.demo import OPENS, write

    clock = Clock(clock.fixed or OPENS)
    with tempfile.TemporaryDirectory(prefix="swardbook-demo-", ignore_cleanup_errors=True) as scratch:
        folder = Path(given.keep).expanduser() if given.keep else Path(scratch) / "book"
        book = Book.create(folder, computer="demo", clock=clock.now)
        if not book.entries():
            write(book)
        book.close()
        if given.keep and not _terminal():
            show(str(folder))
            return DONE
        if not _terminal():
            return trouble("the demo opens in a terminal; --keep DIR leaves the book in a folder instead.")
        session = Session(folder, computer_name(state_folder()), clock)
        return _run(lambda: session, Path(scratch))


def _terminal() -> bool:
    return sys.stdin.isatty() and sys.stdout.isatty()


def _run(session: Callable[[], Session], state: Path) -> int:
    """Load the screen's library only here."""
    import gc

    gc.disable()
    from journal.app import run

    gc.freeze()
    gc.enable()
    return run(session, state)
