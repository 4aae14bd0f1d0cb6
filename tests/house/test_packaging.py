"""What is in the tree gets into the package, and the package asks for nothing older than it says."""

import ast
import re
import sys
import tomllib
from collections.abc import Iterable
from pathlib import Path

import pytest

from tests.house.tree import ROOT, Module, imports, modules, parse

PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))

FOR_OLD_PYTHONS = ("demo/start.py", "demo/environment.py", "tests/run.py")
"""Scripts that have to get as far as saying that a Python is too old."""


def left_out(package: Path, patterns: Iterable[str]) -> list[str]:
    """Say which files below `package` an installed copy would lack."""
    problems = []
    for file in sorted(package.rglob("*")):
        if file.is_dir() or "__pycache__" in file.parts:
            continue
        name = file.relative_to(package.parent).as_posix()
        if file.suffix != ".py" and not any(file.match(pattern) for pattern in patterns):
            problems.append(f"{name}: no package data")
        if not (file.parent / "__init__.py").exists():
            problems.append(f"{name}: its folder is no package")
    return problems


def undeclared(found: Iterable[Module], dependencies: Iterable[str]) -> list[str]:
    """Say which libraries are imported that an installed copy would not bring along."""
    names = {re.split(r"[^\w.-]", one)[0].lower().replace("-", "_") for one in dependencies}
    known = {*names, *sys.stdlib_module_names, "journal"}
    return [
        f"{module.path}:{line}: {name}"
        for module in found
        for line, name in imports(module)
        if name.partition(".")[0] not in known
    ]


def test_an_installed_copy_has_every_file() -> None:
    assert left_out(ROOT / "journal", PROJECT["tool"]["setuptools"]["package-data"]["*"]) == []


def test_a_file_left_out_is_told(tmp_path: Path) -> None:
    for name in ("journal/__init__.py", "journal/a.tcss", "journal/notes.txt", "journal/bare/b.py"):
        (tmp_path / name).parent.mkdir(exist_ok=True)
        (tmp_path / name).touch()
    told = left_out(tmp_path / "journal", ["*.tcss"])
    assert told == ["journal/bare/b.py: its folder is no package", "journal/notes.txt: no package data"]


def test_every_library_imported_is_asked_for() -> None:
    assert undeclared(modules(ROOT), PROJECT["project"]["dependencies"]) == []


def test_a_library_not_asked_for_is_told() -> None:
    module = parse(Path("journal/app.py"), "import os, dateutil.tz\nfrom textual.app import App\nfrom . import cli")
    assert undeclared([module], ["textual==8.2.8"]) == ["journal/app.py:1: dateutil.tz"]


@pytest.mark.parametrize("name", FOR_OLD_PYTHONS)
def test_an_old_python_can_read_the_scripts(name: str) -> None:
    ast.parse((ROOT / name).read_text("utf-8"), feature_version=(3, 6))


def test_the_reading_of_an_old_python_can_fail() -> None:
    with pytest.raises(SyntaxError):
        ast.parse("(x := 1)", feature_version=(3, 6))


def test_dependencies_have_both_bounds() -> None:
    asked = [*PROJECT["project"]["dependencies"], *PROJECT["project"]["optional-dependencies"]["test"]]
    assert [one for one in asked if "==" not in one.split(";")[0] and not (">=" in one and ",<" in one)] == []
