"""Every file operation of the store, in one small object, so that a test can log it or let it fail."""

from __future__ import annotations

import errno
import os
import sys
from pathlib import Path
from stat import S_ISDIR, S_ISLNK, S_ISREG

LARGEST = 256 * 1024 * 1024  # bytes; a log file beyond this is not read (fifty thousand entries take 17 million)

_SAFELY = 0
for _flag in ("O_NOFOLLOW", "O_CLOEXEC", "O_NONBLOCK", "O_BINARY"):  # not every system has each
    _SAFELY |= getattr(os, _flag, 0)
_NO_FOLDER_SYNC = {errno.EINVAL, errno.ENOTSUP}  # some network file systems cannot sync a folder at all


class NotRegular(OSError):
    """Something that is not an ordinary file (or is too large) stands where a log should be."""


class Files:
    """The file operations. Every one raises OSError when it fails."""

    def stat(self, path: Path) -> os.stat_result:
        """What stands at `path`, links not followed."""
        return path.lstat()

    def is_folder(self, path: Path) -> bool:
        """Whether a folder (or a link to one) stands at `path`; False if nothing does."""
        try:
            return S_ISDIR(path.stat().st_mode)
        except (FileNotFoundError, NotADirectoryError):
            return False

    def list(self, folder: Path) -> list[tuple[str, os.stat_result]]:
        """Names and stats of everything in `folder`, links not followed."""
        found = []
        with os.scandir(folder) as entries:
            for entry in entries:
                try:
                    found.append((entry.name, Path(entry.path).lstat()))
                except FileNotFoundError:  # gone between the two calls
                    continue
        return sorted(found, key=lambda item: item[0])

    def may_write(self, folder: Path) -> bool:
        """Whether the system would let this user make files in `folder`."""
        return os.access(folder, os.W_OK | os.X_OK)

    def read(self, path: Path, offset: int) -> tuple[bytes, os.stat_result]:
        """The bytes of a regular file from `offset` on, and its stat."""
        fd = os.open(path, os.O_RDONLY | _SAFELY)
        try:
            stat = os.fstat(fd)
            why = unreadable(stat)
            if why:
                raise NotRegular(why)
            if offset:
                os.lseek(fd, offset, os.SEEK_SET)
            pieces = []
            while piece := os.read(fd, max(1 << 16, stat.st_size - offset + 1)):
                pieces.append(piece)
            return b"".join(pieces), stat
        finally:
            os.close(fd)

    def open(self, path: Path) -> int:
        """Open an existing regular file for appending and reading."""
        fd = os.open(path, os.O_RDWR | os.O_APPEND | _SAFELY)
        if not S_ISREG(os.fstat(fd).st_mode):
            os.close(fd)
            raise NotRegular(f"not an ordinary file: {path}")
        return fd

    def create(self, path: Path) -> int:
        """Make a new file, private to the user, for appending; FileExistsError if anything stands there."""
        return os.open(path, os.O_RDWR | os.O_APPEND | os.O_CREAT | os.O_EXCL | _SAFELY, 0o600)

    def fstat(self, fd: int) -> os.stat_result:
        """The stat of an open file."""
        return os.fstat(fd)

    def last_byte(self, fd: int, size: int) -> bytes:
        """The last of the `size` bytes of an open file."""
        os.lseek(fd, size - 1, os.SEEK_SET)
        return os.read(fd, 1)

    def write(self, fd: int, data: bytes) -> int:
        """Append; the number of bytes that were taken, which may be fewer than given."""
        return os.write(fd, data)

    def sync(self, fd: int) -> None:
        """Return only when what was written is on the medium."""
        if sys.platform == "darwin":
            import fcntl

            try:
                fcntl.fcntl(fd, fcntl.F_FULLFSYNC)  # plain fsync leaves it in the drive's cache there
                return
            except OSError as why:
                if why.errno not in (errno.ENOTSUP, errno.ENOTTY, errno.EINVAL):
                    raise
            os.fsync(fd)
        elif sys.platform == "linux":
            os.fdatasync(fd)
        else:
            os.fsync(fd)

    def truncate(self, fd: int, size: int) -> None:
        """Cut an open file back to `size` bytes."""
        os.ftruncate(fd, size)

    def close(self, fd: int) -> None:
        """Close an open file."""
        os.close(fd)

    def make_folder(self, path: Path) -> None:
        """Make one folder, private to the user."""
        path.mkdir(0o700)

    def make_private(self, folder: Path) -> None:
        """Close an existing folder to other users."""
        folder.chmod(0o700)

    def rename(self, old: Path, new: Path) -> None:
        """Give a file its final name within one folder."""
        old.replace(new)

    def remove(self, path: Path) -> None:
        """Remove a file that never became part of the book."""
        path.unlink()

    def sync_folder(self, folder: Path) -> None:
        """Return only when the names in `folder` are on the medium."""
        if sys.platform == "win32":
            return  # no such call there; a new name is journalled with the file's own flush
        fd = os.open(folder, os.O_RDONLY | os.O_DIRECTORY | os.O_CLOEXEC)
        try:
            os.fsync(fd)
        except OSError as why:
            if why.errno not in _NO_FOLDER_SYNC:
                raise
        finally:
            os.close(fd)


def unreadable(stat: os.stat_result) -> str:
    """Why a thing with this stat is not read as a log; "" if it may be. Asked before it is opened."""
    if S_ISLNK(stat.st_mode):
        return "a link, not a file"
    if S_ISDIR(stat.st_mode):
        return "a folder, not a file"
    if not S_ISREG(stat.st_mode):
        return "not an ordinary file"
    if stat.st_size > LARGEST:
        return f"too large ({stat.st_size} bytes; at most {LARGEST})"
    return ""


DISK = Files()

_WORDS = {
    errno.ENOSPC: "the disk is full",
    errno.EDQUOT: "your share of the disk is used up",
    errno.EROFS: "the disk is read-only",
    errno.EACCES: "this user may not write there",
    errno.EPERM: "this user may not write there",
    errno.EIO: "the disk reported an error",
    errno.ELOOP: "a link stands where the log should be",
    errno.ENOENT: "the book's folder is no longer there",
}


def in_words(why: OSError) -> str:
    """The reason a file operation failed, as the middle of a sentence."""
    words = _WORDS.get(why.errno or 0) or why.strerror or str(why) or type(why).__name__
    return f"{words} ({why.filename})" if why.filename else words
