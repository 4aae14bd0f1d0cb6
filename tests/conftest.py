"""What every test may rely on: no book, date, colour choice or home folder of the person who runs it."""

import os
from collections.abc import Iterator
from itertools import count
from pathlib import Path

import pytest
from hypothesis import settings

settings.register_profile("swardbook", deadline=None, derandomize=bool(os.environ.get("CI")))
settings.load_profile("swardbook")

HOMES = ("HOME", "USERPROFILE", "APPDATA", "LOCALAPPDATA")
"""Where the platforms keep a user's files; the XDG folders come on top."""

XDG = ("XDG_DATA_HOME", "XDG_CONFIG_HOME", "XDG_STATE_HOME", "XDG_CACHE_HOME", "XDG_RUNTIME_DIR")

_homes = count(1)


@pytest.fixture(scope="session")
def _homes_folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return tmp_path_factory.mktemp("homes")


@pytest.fixture(autouse=True)
def _nobody(_homes_folder: Path) -> Iterator[None]:
    """Each test gets a home of its own, which nothing has been written to (and which nobody has made)."""
    home = _homes_folder / str(next(_homes))
    with pytest.MonkeyPatch.context() as patch:
        for name in ("SWARDBOOK_BOOK", "SWARDBOOK_TODAY", "NO_COLOR"):
            patch.delenv(name, raising=False)
        for name in HOMES:
            patch.setenv(name, str(home))
        for name in XDG:
            patch.setenv(name, str(home / name.lower()))
        yield
