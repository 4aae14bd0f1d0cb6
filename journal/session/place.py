"""Where the book and the program's own small state live on this machine."""

import os
from pathlib import Path

from platformdirs import PlatformDirs

_DIRS = PlatformDirs("swardbook", appauthor=False)


def book_folder(said: str | None) -> Path:
    """The folder said on the command line, else the environment's, else the user's data folder."""
    chosen = said or os.environ.get("SWARDBOOK_BOOK")
    return Path(chosen).expanduser() if chosen else Path(_DIRS.user_data_dir) / "book"


def state_folder() -> Path:
    """For this computer's name and the line left unsaved: outside the book, which may be copied elsewhere."""
    return Path(_DIRS.user_state_dir)
