"""Imports point downward only, and the pure layers know neither screen nor disk nor clock."""

from collections.abc import Iterable
from pathlib import Path

import pytest

from tests.house.tree import LAYERS, PURE, ROOT, STORE, STORE_USERS, Module, calls, imports, modules, parse

OUTSIDE = frozenset({"textual", "rich", "tinydb", "pendulum"})
"""Libraries of the shell."""

WORLD = frozenset(
    {"os", "pathlib", "glob", "shutil", "tempfile", "subprocess", "socket", "time", "random", "logging", "threading"}
)
"""Standard modules through which the world gets in."""

CLOCKS = frozenset(
    {
        "datetime.date.today",
        "datetime.datetime.now",
        "datetime.datetime.today",
        "datetime.datetime.utcnow",
        "time.time",
        "time.localtime",
        "time.monotonic",
    }
)

_ROW = {name: row for row, names in enumerate(LAYERS) for name in names}


def upward(found: Iterable[Module]) -> list[str]:
    """Say which imports between layers do not point downward, and which modules are in no layer."""
    problems = []
    for module in found:
        if module.layer not in {*_ROW, STORE, ""}:
            problems.append(f"{module.path}: {module.layer} has no place in the layers")
            continue
        for line, name in imports(module):
            package, _, rest = name.partition(".")
            target = rest.partition(".")[0]
            if package == "journal" and target in {*_ROW, STORE} and not _may(module.layer, target):
                problems.append(f"{module.path}:{line}: {module.layer or 'journal'} imports {target}")
    return problems


def _may(layer: str, target: str) -> bool:
    if layer == target:
        return True
    if STORE in (layer, target):
        return target == "record" if layer == STORE else layer in STORE_USERS
    return layer != "" and _ROW[target] > _ROW[layer]


def impure(found: Iterable[Module]) -> list[str]:
    """Say where a pure layer reaches for a library of the shell, a file or the clock."""
    problems = []
    for module in found:
        if module.layer not in PURE:
            continue
        for line, name in imports(module):
            if name.partition(".")[0] in OUTSIDE | WORLD:
                problems.append(f"{module.path}:{line}: imports {name}")
        for line, name in calls(module):
            if name in CLOCKS or name == "open":
                problems.append(f"{module.path}:{line}: calls {name}")
    return problems


def test_layers_import_downward_only() -> None:
    assert upward(modules(ROOT)) == []


def test_pure_layers_reach_for_nothing_outside() -> None:
    assert impure(modules(ROOT)) == []


def _one(path: str, text: str) -> list[Module]:
    return [parse(Path(path), text)]


@pytest.mark.parametrize(
    ("path", "text", "told"),
    [
        ("journal/record/a.py", "from journal.facts import x", "record imports facts"),
        ("journal/record/a.py", "def f():\n    import journal.season.b", "record imports season"),
        ("journal/record/a.py", "from ..facts.b import x", "record imports facts"),
        ("journal/record/deep/a.py", "from ... import season", "record imports season"),
        ("journal/standing.py", "from .session import Session", "standing imports session"),
        ("journal/rules/a.py", "from journal import plan", "rules imports plan"),
        ("journal/plan/a.py", "from journal.rules import mow", "plan imports rules"),
        ("journal/reports/a.py", "from journal.screens import x", "reports imports screens"),
        ("journal/screens/a.py", "from journal.store import Book", "screens imports store"),
        ("journal/store/a.py", "from journal.facts import x", "store imports facts"),
        ("journal/__init__.py", "from journal.record import x", "journal imports record"),
        ("journal/odds.py", "", "odds has no place"),
    ],
)
def test_an_upward_import_is_told(path: str, text: str, told: str) -> None:
    (problem,) = upward(_one(path, text))
    assert told in problem


@pytest.mark.parametrize(
    ("path", "text"),
    [
        ("journal/facts/a.py", "from journal.record.day import Day\nfrom .b import c"),
        ("journal/session.py", "from journal.store import Book\nfrom journal import standing, __version__"),
        ("journal/store/a.py", "from journal.record import entry\nfrom . import b\nimport tinydb"),
        ("journal/cli/a.py", "from journal.app import App\nfrom .b import c"),
    ],
)
def test_a_downward_import_is_fine(path: str, text: str) -> None:
    assert upward(_one(path, text)) == []


@pytest.mark.parametrize(
    "text",
    [
        "import rich.text",
        "from pendulum import now",
        "import os",
        "import datetime\nx = datetime.date.today()",
        "from datetime import datetime as clock\nx = clock.now()",
        "import datetime as dt\nx = dt.datetime.now(dt.UTC)",
        "x = open('a')",
    ],
)
def test_an_impure_line_is_told_in_a_pure_layer_only(text: str) -> None:
    assert len(impure(_one("journal/rules/a.py", text))) == 1
    assert impure(_one("journal/session.py", text)) == []
