"""A real pseudo-terminal with the program in it, for what only a terminal can tell."""

import fcntl
import os
import pty
import re
import select
import signal
import struct
import sys
import termios
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
ESCAPES = re.compile(rb"\x1b(\[[0-?]*[ -/]*[@-~]|\][^\x07]*\x07|[()][A-Z0-9]|[=>])")
PATIENCE = 15.0

PROGRAM = """
import sys
from pathlib import Path
from journal.app import show
from journal.screens.kept import Kept
from tests.screens.pretend import PretendSession
{setup}
sys.exit(show(lambda: session, Kept(Path(sys.argv[1]))))
"""


class Terminal:
    """The program running on a terminal of its own; `seen` is every byte it has written."""

    def __init__(self, kept: Path, setup: str = "session = PretendSession()", size: tuple[int, int] = (80, 24)) -> None:
        self.seen = b""
        self.status: int | None = None
        self.pid, self.handle = pty.fork()
        if self.pid == 0:
            environ = {**os.environ, "PYTHONPATH": str(ROOT), "TERM": "xterm-256color", "COLORTERM": "truecolor"}
            command = [sys.executable, "-c", PROGRAM.format(setup=setup), str(kept)]
            os.execve(sys.executable, command, {**environ, "COLUMNS": "80", "LINES": "24"})
        self.resize(*size)

    def resize(self, width: int, height: int) -> None:
        """Another size."""
        fcntl.ioctl(self.handle, termios.TIOCSWINSZ, struct.pack("HHHH", height, width, 0, 0))

    def send(self, keys: str) -> None:
        """Type."""
        os.write(self.handle, keys.encode())

    def until(self, words: str, since: int = 0) -> float:
        """Wait until these words have been written after byte `since`; the seconds it took."""
        start = time.monotonic()
        while time.monotonic() - start < PATIENCE:
            if words.encode() in ESCAPES.sub(b"", self.seen[since:]):
                return time.monotonic() - start
            if not self._read():
                break
        raise AssertionError(f"never saw {words!r} in {ESCAPES.sub(b'', self.seen[since:])[-2000:]!r}")

    def end(self) -> int:
        """Wait until the program has ended; its exit code."""
        start = time.monotonic()
        while time.monotonic() - start < PATIENCE and self._read():
            pass
        _, status = os.waitpid(self.pid, 0)
        self.status = os.waitstatus_to_exitcode(status)
        os.close(self.handle)
        return self.status

    def kill(self, number: signal.Signals) -> None:
        """Send a signal."""
        os.kill(self.pid, number)

    def _read(self) -> bool:
        """Take what there is; False when the program has closed its terminal."""
        ready, _, _ = select.select([self.handle], [], [], 0.05)
        if not ready:
            return True
        try:
            data = os.read(self.handle, 1 << 16)
        except OSError:
            return False
        self.seen += data
        return bool(data)

    def __enter__(self) -> "Terminal":
        return self

    def __exit__(self, *_: object) -> None:
        if self.status is None:
            os.kill(self.pid, signal.SIGKILL)
            os.waitpid(self.pid, 0)
            os.close(self.handle)
