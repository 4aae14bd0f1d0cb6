"""The register of worked checks in print is honest: what it says is tested, is, and names its publication there."""

import ast
import re
from dataclasses import dataclass
from functools import cache
from pathlib import Path

import pytest

from tests.house.tree import ROOT

TESTS = ROOT / "tests"
HEAD = ("Publication", "In", "Printed (exact)", "Held by")
WITHOUT = "No function: "
"""How a row begins its reason for having no test."""

NO_PUBLICATION = ("by definition", "by hand", "by geometry", "by the calendar", "from memory")
_NAMED = re.compile(r"`([\w/]+\.py)::(test_\w+)`")


@dataclass(frozen=True, slots=True)
class Row:
    """One worked check: its four cells, and the line of the register that it stands on."""

    line: int
    publication: str
    given: str
    printed: str
    held: str


def tables(text: str) -> tuple[list[Row], list[str]]:
    """The rows of all tables, and what is wrong with their form."""
    rows, problems = [], []
    for number, line in enumerate(text.splitlines(), 1):
        if not line.startswith("|"):
            continue
        cells = tuple(cell.strip() for cell in line.strip().strip("|").split("|"))
        if cells == HEAD or set(line) <= set("|-"):
            continue
        if len(cells) != len(HEAD) or not all(cells):
            problems.append(f"line {number}: four cells are wanted, none of them empty")
            continue
        rows.append(Row(number, *cells))
    return rows, problems


def unheld(rows: list[Row], tests: Path) -> list[str]:
    """Say which rows have neither a test nor a reason, or name a test that is not there or cites something else."""
    problems = []
    for row in rows:
        at = f"line {row.line}"
        named = _NAMED.findall(row.held)
        if row.held.startswith(WITHOUT):
            if named or len(row.held.removeprefix(WITHOUT).split()) < 4:
                problems.append(f"{at}: a reason is wanted, in words and alone")
            continue
        if not named or _NAMED.sub("", row.held).strip():
            problems.append(f"{at}: neither a test nor a reason")
        cited = re.findall(r"\*([^*]+)\*", row.publication)
        if not cited and row.publication not in NO_PUBLICATION:
            problems.append(f"{at}: no words of the publication are marked")
        for path, name in named:
            file = tests / path
            if not file.is_file():
                problems.append(f"{at}: no file {path}")
                continue
            names, said = _read(file)
            if name not in names:
                problems.append(f"{at}: no test {name} in {path}")
            problems += [f"{at}: {path} does not name {words}" for words in cited if words.casefold() not in said]
    return problems


@cache
def _read(file: Path) -> tuple[frozenset[str], str]:
    """The tests that stand in a file, and its text with blanks and case levelled."""
    text = file.read_text(encoding="utf-8")
    names = frozenset(node.name for node in ast.parse(text).body if isinstance(node, ast.FunctionDef))
    return names, " ".join(text.split()).casefold()


def test_every_row_has_a_test_that_names_its_publication_or_a_reason() -> None:
    rows, problems = tables((TESTS / "published.md").read_text(encoding="utf-8"))
    assert problems + unheld(rows, TESTS) == []
    assert len(rows) > 100


def test_no_row_stands_twice() -> None:
    rows, _ = tables((TESTS / "published.md").read_text(encoding="utf-8"))
    seen = [(row.publication, row.given) for row in rows]
    assert sorted(set(seen)) == sorted(seen)


@pytest.mark.parametrize(
    ("cells", "told"),
    [
        ("Someone, *A Title*, 1999 | 1 | 2 | `a.py::test_it`", ""),
        ("by hand | 1 | 2 | `a.py::test_it`", ""),
        ("Someone, *A Title*, 1999 | 1 | 2 | No function: nobody asks for it yet", ""),
        ("Someone, *A Title*, 1999 | 1 | 2 | No function: later", "a reason is wanted"),
        ("Someone, *A Title*, 1999 | 1 | 2 | tested elsewhere", "neither a test nor a reason"),
        ("Someone, *A Title*, 1999 | 1 | 2 | `a.py::test_it` and more", "neither a test nor a reason"),
        ("Someone, *A Title*, 1999 | 1 | 2 | `b.py::test_it`", "no file b.py"),
        ("Someone, *A Title*, 1999 | 1 | 2 | `a.py::test_that`", "no test test_that in a.py"),
        ("Someone, *Another*, 1999 | 1 | 2 | `a.py::test_it`", "a.py does not name Another"),
        ("Someone, 1999 | 1 | 2 | `a.py::test_it`", "no words of the publication"),
        ("Someone, *A Title*, 1999 | 1 |  | `a.py::test_it`", "none of them empty"),
        ("Someone, *A Title*, 1999 | 1 | `a.py::test_it`", "four cells"),
    ],
)
def test_a_row_that_does_not_hold_is_told(cells: str, told: str, tmp_path: Path) -> None:
    (tmp_path / "a.py").write_text('SOURCE = "Someone, A title"\n\n\ndef test_it() -> None: ...\n', encoding="utf-8")
    rows, problems = tables(f"| {' | '.join(HEAD)} |\n|---|---|---|---|\n| {cells} |\n")
    found = problems + unheld(rows, tmp_path)
    assert [told in problem for problem in found] == ([True] if told else [])
