"""The program on a real book in a real terminal: what others write, what a sudden end leaves, the editor."""

import signal
import subprocess
import sys
from datetime import date
from pathlib import Path

import pytest

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="there are no pseudo-terminals")

if sys.platform != "win32":
    from journal.record.kinds.mowing import Mowing
    from journal.session.clock import Clock
    from journal.session.session import Session
    from tests.screens.pretend import TODAY, lawn_settings
    from tests.screens.terminal import ROOT, Terminal
    from tests.screens.test_editor import an_editor

REAL = """
from datetime import date
from journal.session.clock import Clock
from journal.session.session import Session
session = Session(Path({folder!r}), "here", Clock(date(2027, 5, 3))).open()
"""
ELSEWHERE = """
import sys
from datetime import date
from pathlib import Path
from journal.session.clock import Clock
from journal.session.session import Session
session = Session(Path(sys.argv[1]), "there", Clock(date(2027, 5, 3))).open()
session.save(session.read(sys.argv[2]))
session.close()
"""


def book(folder: Path) -> Path:
    """A new book with three zones."""
    session = Session(folder / "book", "here", Clock(TODAY))
    session.set_up(lawn_settings())
    session.close()
    return folder / "book"


def mowings(folder: Path) -> list[Mowing]:
    """Every cut in the book, read afresh."""
    session = Session(folder, "reader", Clock(TODAY)).open()
    found = list(session.history.track("front", Mowing).entries)
    session.close()
    return found


def written_elsewhere(folder: Path, line: str) -> None:
    """Another terminal writes a line."""
    subprocess.run([sys.executable, "-c", ELSEWHERE, str(folder), line], cwd=ROOT, check=True, timeout=60)


def test_what_was_called_saved_is_there_after_a_sudden_death(tmp_path: Path) -> None:
    folder = book(tmp_path)
    with Terminal(tmp_path / "line", REAL.format(folder=str(folder))) as terminal:
        terminal.until("Nothing is written down yet")
        terminal.send("m\r")
        terminal.until("✓ ")
        terminal.kill(signal.SIGKILL)
    (cut,) = mowings(folder)
    assert cut.date == date(2027, 5, 3)


def test_another_terminals_line_appears_within_about_a_second_and_the_cursor_stays(tmp_path: Path) -> None:
    folder = book(tmp_path)
    written_elsewhere(folder, "mow 3in front -2d")
    with Terminal(tmp_path / "line", REAL.format(folder=str(folder)), (100, 40)) as terminal:
        terminal.until("LAST")
        at = len(terminal.seen)
        terminal.send("\x1b[F")
        terminal.until("▸Sat  1 May", at)
        at = len(terminal.seen)
        written_elsewhere(folder, "rain 0.4in")
        assert terminal.until("0.4 in", at) < 3
        terminal.send("\r")
        terminal.until("mow front 3in on 2027-05-01", at)
        terminal.send("\x11")
        assert terminal.end() == 0


def test_a_line_not_saved_outlives_quitting(tmp_path: Path) -> None:
    folder = book(tmp_path)
    with Terminal(tmp_path / "line", REAL.format(folder=str(folder))) as terminal:
        terminal.until("Nothing is written down yet")
        terminal.send("rain 0.3in")
        terminal.until("rain, 0.3 in, today")
        terminal.send("\x11")
        assert terminal.end() == 0
    assert (tmp_path / "line").read_text() == "rain 0.3in\n"


def test_the_line_stays_while_the_window_changes(tmp_path: Path) -> None:
    folder = book(tmp_path)
    with Terminal(tmp_path / "line", REAL.format(folder=str(folder))) as terminal:
        terminal.until("Nothing is written down yet")
        terminal.send("rain 0.")
        for size in ((60, 15), (1, 1), (200, 60), (61, 17), (80, 24)):
            terminal.resize(*size)
        terminal.send("3in")
        at = len(terminal.seen)
        terminal.send("\r")
        terminal.until("✓ ", at)
        terminal.send("\x11")
        assert terminal.end() == 0


def test_keys_pressed_while_the_book_is_read_are_not_lost(tmp_path: Path) -> None:
    folder = book(tmp_path)
    with Terminal(tmp_path / "line", REAL.format(folder=str(folder))) as terminal:
        terminal.until("reading the book")
        terminal.send("m\r")
        terminal.until("✓ ")
        terminal.send("\x11")
        assert terminal.end() == 0
    assert len(mowings(folder)) == 1


def test_a_remark_from_the_editor_is_saved_with_the_line(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    folder = book(tmp_path)
    monkeypatch.setenv("VISUAL", f"'{an_editor(tmp_path, 'first line' + chr(10) + 'second line')}'")
    monkeypatch.setenv("NO_COLOR", "1")
    with Terminal(tmp_path / "line", REAL.format(folder=str(folder))) as terminal:
        terminal.until("Nothing is written down yet")
        terminal.send("mow 3in front")
        terminal.until("Enter saves")
        at = len(terminal.seen)
        terminal.send("\x0f")
        terminal.until("first line second line", at)
        at = len(terminal.seen)
        terminal.send("\r")
        terminal.until("✓ ", at)
        terminal.send("\x11")
        assert terminal.end() == 0
    (cut,) = mowings(folder)
    assert cut.remark == "first line second line"
    assert (tmp_path / "told").read_text().splitlines()[2] == "1"


def test_a_missing_editor_leaves_the_line_as_it_was(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    folder = book(tmp_path)
    monkeypatch.setenv("VISUAL", str(tmp_path / "nowhere"))
    with Terminal(tmp_path / "line", REAL.format(folder=str(folder))) as terminal:
        terminal.until("Nothing is written down yet")
        terminal.send("rain 0.3in")
        terminal.until("Enter saves")
        at = len(terminal.seen)
        terminal.send("\x0f")
        terminal.until("the line is as it was", at)
        terminal.send("\x11")
        assert terminal.end() == 0
    assert (tmp_path / "line").read_text() == "rain 0.3in\n"
