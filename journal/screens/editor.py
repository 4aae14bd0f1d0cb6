"""A long remark, written in the user's own editor."""

from __future__ import annotations

import os
import re
import shlex
import subprocess
import sys
import tempfile
from collections.abc import Mapping
from pathlib import Path

from journal.line.token import CONFIRM, REMARK, cut
from journal.record.clean import clean

_PLAIN = "notepad" if sys.platform == "win32" else "vi"
_CONFIRMS = re.compile(rf"\s+{CONFIRM}$")


class NotEdited(Exception):
    """The editor gave nothing back; the message says why."""


def command(environ: Mapping[str, str]) -> list[str]:
    """$VISUAL, else $EDITOR, as words; vi where neither is set. Raises NotEdited when it can't be split."""
    said = environ.get("VISUAL") or environ.get("EDITOR") or _PLAIN
    try:
        words = shlex.split(said)
    except ValueError as error:
        raise NotEdited(f"{said}: {error}") from None
    return words or [_PLAIN]


def edited(words: str, editor: list[str], environ: Mapping[str, str]) -> str:
    """What the editor makes of the words, as they were written. Raises NotEdited.

    They stand in a file that only its owner can read, and which is gone afterwards.
    """
    handle, name = tempfile.mkstemp(prefix="remark-", suffix=".txt")  # made 0600
    path = Path(name)
    try:
        with os.fdopen(handle, "w", encoding="utf-8") as file:
            file.write(f"{words}\n" if words else "")
        ended = subprocess.run([*editor, name], env=dict(environ), check=False).returncode
        if ended:
            raise NotEdited(f"{editor[0]} ended with {ended}")
        return path.read_text("utf-8", "replace")
    except OSError as error:
        raise NotEdited(f"{editor[0]}: {error.strerror or error}") from None
    finally:
        path.unlink(missing_ok=True)


def remark_of(line: str) -> str:
    """The remark that the line has already."""
    return cut(line).remark


def with_remark(line: str, words: str) -> str:
    """The line with these words as its one remark, or without any; a closing ` !` stays the line's own."""
    found = cut(line)
    end = found.remark_at if found.remark_at >= 0 else found.tokens[-1].end if found.tokens else 0
    remark = _CONFIRMS.sub(CONFIRM, clean(words))
    parts = [line[:end].rstrip(), *([REMARK, remark] if remark else []), *([CONFIRM] if found.confirmed else [])]
    return " ".join(part for part in parts if part)
