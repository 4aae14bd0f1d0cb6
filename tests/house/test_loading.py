"""What gets loaded: the core runs without the shell's libraries, the command line without the screen's."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.house.tree import PURE, ROOT, modules

SHELL = frozenset({"textual", "rich", "tinydb", "pendulum"})

LAWN = """\
[lawn]
name = "Mill Lane"

[[zone]]
name = "front"
area = "2400 sqft"
"""

COMMANDS = (
    "--help",
    "--version",
    "log mow 3in front",
    "log mow 3in front --dry-run --json",
    "flags --json",
    "due --json",
    "list --json",
    "list --csv",
    "rules --json",
    "check --json",
    "reckon",
    "reckon spread --analysis 24-0-11 --n 0.9lb/k --area 8200sqft",
)
"""Command lines that open no screen."""


def python(code: str, *arguments: str) -> subprocess.CompletedProcess[str]:
    """Run `code` in a fresh interpreter at the root of the project."""
    environ = {**os.environ, "PYTHONPATH": str(ROOT), "SWARDBOOK_TODAY": "2026-05-20"}
    command = [sys.executable, "-c", code, *arguments]
    return subprocess.run(command, cwd=ROOT, env=environ, capture_output=True, text=True, timeout=60, check=False)


def loaded(code: str) -> set[str]:
    """Return the top-level packages that are loaded once `code` has run."""
    ran = python(f"{code}\nimport sys\nprint(*{{name.partition('.')[0] for name in sys.modules}})")
    assert ran.returncode == 0, ran.stderr
    return set(ran.stdout.split("\n")[-2].split())


def imports_of(layer: str) -> str:
    """Return code that imports every module of a layer."""
    names = [
        module.path.removesuffix(".py").removesuffix("/__init__") for module in modules(ROOT) if module.layer == layer
    ]
    return "\n".join(f"import {name.replace('/', '.')}" for name in names)


@pytest.mark.parametrize("layer", sorted(PURE & {module.layer for module in modules(ROOT)}))
def test_a_pure_layer_loads_no_library_of_the_shell(layer: str) -> None:
    assert loaded(imports_of(layer)) & SHELL == set()


def test_what_is_loaded_is_seen() -> None:
    assert loaded("import tinydb") & SHELL == {"tinydb"}
    assert loaded("import rich.text") & SHELL == {"rich"}


RUN = """\
import atexit, runpy, sys
from pathlib import Path
names = Path(sys.argv.pop(1))
atexit.register(lambda: names.write_text(" ".join(sys.modules)))
runpy.run_module("journal", run_name="__main__", alter_sys=True)
"""


def command(names: Path, book: Path, *arguments: str) -> tuple[int, set[str], str]:
    """Run `swardbook` on a book; return its exit code, the modules it loaded and what it complained of."""
    ran = python(RUN, str(names), "--book", str(book), *arguments)
    return ran.returncode, set(names.read_text("utf-8").split()), ran.stderr


@pytest.fixture(scope="module")
def book(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A small book of its own for this file's commands."""
    folder = tmp_path_factory.mktemp("loading")
    (folder / "lawn.toml").write_text(LAWN, encoding="utf-8")
    code, names, errors = command(folder / "names", folder / "book", "setup", "--from", str(folder / "lawn.toml"))
    assert (code, errors) == (0, "")
    assert "textual" not in names
    return folder / "book"


@pytest.mark.parametrize("line", COMMANDS)
def test_a_command_without_a_screen_never_loads_textual(line: str, book: Path, tmp_path: Path) -> None:
    code, names, errors = command(tmp_path / "names", book, *line.split())
    assert code == 0, errors
    assert "journal.cli" in names
    assert "textual" not in names


def test_a_reckoning_that_asks_nothing_of_a_book_loads_no_library_of_the_shell(book: Path, tmp_path: Path) -> None:
    line = "reckon spread --analysis 24-0-11 --n 0.9lb/k --area 8200sqft"
    code, names, errors = command(tmp_path / "names", book, *line.split())
    assert code == 0, errors
    assert names & SHELL == set()
