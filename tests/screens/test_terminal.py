"""What only a real terminal can tell: what is painted first, how it is left, and how long Esc takes."""

import signal
import sys
from pathlib import Path

import pytest

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="there are no pseudo-terminals")

if sys.platform != "win32":
    from tests.screens.terminal import ESCAPES, Terminal

LEFT = (b"\x1b[?1049l", b"\x1b[?25h", b"\x1b[?2004l")
"""The terminal's own screen is back, with its cursor, and pasting is as before."""


def test_the_frame_is_painted_before_the_book_is_read(tmp_path: Path) -> None:
    with Terminal(tmp_path / "line") as terminal:
        terminal.until("reading the book")
        terminal.until("NOT YET")
        terminal.send("m\r")
        terminal.until("✓ ")
        terminal.send("\x11")
        assert terminal.end() == 0
        assert all(code in terminal.seen for code in LEFT)


@pytest.mark.parametrize("number", [signal.SIGTERM, signal.SIGHUP])
def test_told_to_end_it_puts_the_terminal_back_and_keeps_the_line(tmp_path: Path, number: signal.Signals) -> None:
    with Terminal(tmp_path / "line") as terminal:
        terminal.until("NOT YET")
        terminal.send("feed pond-ridge 3lb")
        terminal.until("pond-ridge 3lb")
        terminal.kill(number)
        assert terminal.end() == 0
        assert all(code in terminal.seen for code in LEFT)
    assert (tmp_path / "line").read_text() == "feed pond-ridge 3lb\n"


def test_a_lone_esc_is_answered_soon(tmp_path: Path) -> None:
    with Terminal(tmp_path / "line") as terminal:
        terminal.until("NOT YET")
        times = []
        for _ in range(5):
            at = len(terminal.seen)
            terminal.send("mow")
            terminal.until("Enter saves", at)
            at = len(terminal.seen)
            terminal.send("\x1b")
            times.append(terminal.until("put aside", at))
        assert min(times) < 0.09, "the stock input thread needs 100 ms"


def test_no_escape_from_the_book_reaches_the_terminal(tmp_path: Path) -> None:
    setup = """
from datetime import date
from journal.record.kinds.remark import Remark
session = PretendSession()
session.news = [Remark(id="9", date=date(2027, 5, 3), text="\\x1b]0;owned\\x07 \\x1b[31mred \\x9b31m bell")]
session.refresh()
"""
    with Terminal(tmp_path / "line", setup) as terminal:
        terminal.until("bell")
        assert b"owned" in ESCAPES.sub(b"", terminal.seen)
        assert b"\x1b]0;" not in terminal.seen
        assert b"\x1b[31m" not in terminal.seen
        assert "\x9b".encode() not in terminal.seen


def test_a_window_too_small_says_so_and_comes_back(tmp_path: Path) -> None:
    with Terminal(tmp_path / "line") as terminal:
        terminal.until("NOT YET")
        at = len(terminal.seen)
        terminal.resize(40, 10)
        terminal.until("needs 60x16", at)
        at = len(terminal.seen)
        terminal.resize(1, 1)
        terminal.resize(100, 30)
        terminal.until("NOT YET", at)


def test_a_book_that_cannot_be_opened_ends_with_its_reason(tmp_path: Path) -> None:
    setup = """
class session:
    pass
def show(open_session, kept, show=show):
    def fails():
        raise OSError("The folder can't be read.")
    return show(fails, kept)
"""
    with Terminal(tmp_path / "line", setup) as terminal:
        assert terminal.end() == 2
        assert b"The folder can't be read." in terminal.seen
        assert all(code in terminal.seen for code in LEFT)
    assert not (tmp_path / "line").exists()
