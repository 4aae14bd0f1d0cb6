"""How source files look: short, named after what they hold, explained, and plain with users' words."""

import ast
import re
from collections.abc import Iterable
from pathlib import Path

from tests.house.tree import ROOT, Module, calls, modules, parse

LONGEST = 300
"""Lines a file may have."""

LONGEST_WITH_REASON = 350
"""Lines a file named in LONGER may have."""

LONGER: dict[str, str] = {}
"""Files over LONGEST, each with the reason why it stays whole."""

VAGUE_FILES = frozenset({"util", "utils", "helper", "helpers", "manager", "managers", "common", "misc"})
VAGUE_ENDINGS = frozenset({"Util", "Utils", "Helper", "Helpers", "Manager", "Managers", "Common", "Misc"})

PRINTERS = frozenset({"__main__", "cli", "reports"})
"""Layers that may write to standard output."""

_Definition = ast.FunctionDef | ast.AsyncFunctionDef | ast.ClassDef


def too_long(found: Iterable[Module], longer: dict[str, str]) -> list[str]:
    """Say which files have too many lines, and which excuses are no longer needed."""
    lines = {module.path: module.text.count("\n") for module in found}
    over = [
        f"{path}: {count} lines"
        for path, count in lines.items()
        if count > (LONGEST_WITH_REASON if path in longer else LONGEST)
    ]
    return over + [f"{path}: excused without need" for path in longer if lines.get(path, 0) <= LONGEST]


def vague(found: Iterable[Module]) -> list[str]:
    """Say which files, folders and classes have names that say nothing."""
    problems = []
    for module in found:
        parts = set(module.path.removesuffix(".py").split("/"))
        problems += [f"{module.path}: {part}" for part in sorted(parts & VAGUE_FILES)]
        for node in ast.walk(module.tree):
            if isinstance(node, ast.ClassDef) and set(re.findall("[A-Z][a-z]*", node.name)[-1:]) & VAGUE_ENDINGS:
                problems.append(f"{module.path}:{node.lineno}: {node.name}")
    return problems


def unexplained(found: Iterable[Module]) -> list[str]:
    """Say which modules, and which public classes and functions in them, have no docstring."""
    problems = []
    for module in found:
        if not ast.get_docstring(module.tree):
            problems.append(f"{module.path}: the module")
        for node in module.tree.body:
            if isinstance(node, _Definition) and node.name[0] != "_" and not ast.get_docstring(node):
                problems.append(f"{module.path}:{node.lineno}: {node.name}")
    return problems


def marked_up(found: Iterable[Module]) -> list[str]:
    """Say where text is read as markup: a user's brackets must stay brackets."""
    return [
        f"{module.path}:{line}: {name}"
        for module in found
        for line, name in calls(module)
        if name.split(".")[-1] == "from_markup"
    ]


def printing(found: Iterable[Module]) -> list[str]:
    """Say where a layer prints that has no business with standard output."""
    return [
        f"{module.path}:{line}: print"
        for module in found
        if module.layer not in PRINTERS
        for line, name in calls(module)
        if name == "print"
    ]


def test_files_are_short() -> None:
    assert too_long(modules(ROOT), LONGER) == []


def test_names_say_something() -> None:
    assert vague([*modules(ROOT), *modules(ROOT, "tests"), *modules(ROOT, "demo")]) == []


def test_what_is_public_is_explained() -> None:
    assert unexplained(modules(ROOT)) == []


def test_no_text_is_read_as_markup() -> None:
    assert marked_up(modules(ROOT)) == []


def test_only_the_command_line_prints() -> None:
    assert printing(modules(ROOT)) == []


def _one(text: str, path: str = "journal/rules/a.py") -> list[Module]:
    return [parse(Path(path), text)]


def test_a_long_file_is_told_and_an_idle_excuse_too() -> None:
    path = "journal/rules/a.py"
    assert too_long(_one("\n" * 300), {}) == []
    assert too_long(_one("\n" * 301), {}) == [f"{path}: 301 lines"]
    assert too_long(_one("\n" * 350), {path: "one table"}) == []
    assert too_long(_one("\n" * 351), {path: "one table"}) == [f"{path}: 351 lines"]
    assert too_long(_one("\n" * 300), {path: "one table"}) == [f"{path}: excused without need"]


def test_a_vague_name_is_told() -> None:
    assert vague(_one("", "journal/rules/helpers.py")) == ["journal/rules/helpers.py: helpers"]
    assert vague(_one("", "journal/common/a.py")) == ["journal/common/a.py: common"]
    assert vague(_one("class BookManager: ...")) == ["journal/rules/a.py:1: BookManager"]
    assert vague(_one("class CommonName: ...", "journal/facts/common_names.py")) == []


def test_a_missing_docstring_is_told() -> None:
    text = "class Open: ...\nasync def run(): ...\ndef _own(): ...\ndef said():\n    'x'"
    told = unexplained(_one(text))
    assert told == ["journal/rules/a.py: the module", "journal/rules/a.py:1: Open", "journal/rules/a.py:2: run"]


def test_markup_and_printing_are_told() -> None:
    assert marked_up(_one("from rich.text import Text\nText.from_markup('x')")) != []
    assert marked_up(_one("from_markup = 1")) == []
    assert printing(_one("print('x')")) == ["journal/rules/a.py:1: print"]
    assert printing(_one("print('x')", "journal/cli/a.py")) == []
