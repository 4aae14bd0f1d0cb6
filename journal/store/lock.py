"""One writer at a time among the terminals of one computer: an exclusive lock on an empty file of its own.

The log itself is never locked: over some network file systems that would stop others from reading it.
The lock keeps read-and-then-write tidy; nothing is lost without it, so a caller that cannot have it may write
to a file of its own instead.
"""

from __future__ import annotations

import errno
import os
import sys
import time
from pathlib import Path

from journal.store.files import Files

if sys.platform == "win32":
    import msvcrt

    def _take(fd: int) -> None:
        os.lseek(fd, 0, os.SEEK_SET)
        msvcrt.locking(fd, msvcrt.LK_NBLCK, 1)

    def _give(fd: int) -> None:
        os.lseek(fd, 0, os.SEEK_SET)
        msvcrt.locking(fd, msvcrt.LK_UNLCK, 1)

else:
    import fcntl

    def _take(fd: int) -> None:
        fcntl.flock(fd, fcntl.LOCK_EX | fcntl.LOCK_NB)

    def _give(fd: int) -> None:
        fcntl.flock(fd, fcntl.LOCK_UN)


_HELD = {errno.EWOULDBLOCK, errno.EAGAIN, errno.EACCES, errno.EDEADLK}


class WriteLock:
    """The lock of one book and computer; freed by the system when its process dies. Not re-entrant."""

    def __init__(self, path: Path, files: Files, patience: float = 2.0) -> None:
        self._path = path
        self._files = files
        self._patience = patience  # seconds
        self._hurried = False
        self._fd = -1
        self._ino = 0
        self._pid = 0

    def take(self) -> bool:
        """Take the lock; False if it cannot be had in time, or locking does not work here."""
        # A holder that has stopped would otherwise cost every save the full wait.
        patience = 0.0 if self._hurried else self._patience
        end = time.monotonic() + patience
        pause = 0.0002
        while True:
            try:
                self._open()
                _take(self._fd)
            except OSError as why:
                if self._fd < 0 or why.errno not in _HELD:
                    return False
                if time.monotonic() >= end:
                    self._hurried = True
                    return False
                time.sleep(pause * (0.5 + os.urandom(1)[0] / 255))  # uneven, so that no waiter is always second
                pause = min(pause * 1.3, 0.01)
                continue
            if self._still_there():
                self._hurried = False
                return True
            self.close()  # the file was replaced meanwhile: a lock on the old one keeps nobody out
            if time.monotonic() >= end + 1:
                return False

    def give(self) -> None:
        """Free the lock."""
        if self._fd >= 0:
            _give(self._fd)

    def close(self) -> None:
        """Let go of the file."""
        if self._fd >= 0:
            self._files.close(self._fd)
            self._fd = -1

    def _open(self) -> None:
        if self._fd >= 0 and self._pid == os.getpid():
            return
        self.close()  # after a fork the descriptor, and so the lock, would be shared with the parent
        try:
            self._fd = self._files.create(self._path)
        except FileExistsError:
            self._fd = self._files.open(self._path)
        self._ino = self._files.fstat(self._fd).st_ino
        self._pid = os.getpid()

    def _still_there(self) -> bool:
        try:
            return self._files.stat(self._path).st_ino == self._ino
        except OSError:
            return False
