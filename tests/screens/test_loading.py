"""What is loaded before the first paint, and in which direction the screens look: counts, not clocks."""

import ast
import subprocess
import sys
from collections.abc import Iterable, Mapping
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
LATER = ("journal.standing", "journal.rules", "journal.plan", "journal.line.read", "journal.record.entry",
         "journal.screens.pages", "journal.screens.acts", "journal.screens.opening", "journal.session.session",
         "journal.season", "pendulum", "tinydb", "PIL", "markdown_it", "pygments")  # fmt: skip

PAINTED = """
import sys
from journal.app import furnisher
from journal.screens.ink import DARK
from journal.screens.kept import Kept
from journal.screens.shell import Shell

class Framed(Shell):
    async def _open(self):
        strips = self.screen._compositor.render_strips()
        print("".join(segment.text for strip in strips for segment in strip))
        print(*sys.modules, sep="\\n")
        self.exit(0)

Framed(None, furnisher, DARK, Kept(None)).run(headless=True)
"""


def _ran(code: str) -> str:
    command = [sys.executable, "-c", code]
    return subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=True, timeout=60).stdout


def test_importing_the_app_loads_nothing_that_the_first_paint_does_not_show() -> None:
    loaded = set(_ran("import sys, journal.app; print(*sys.modules, sep='\\n')").split())
    assert "journal.screens.shell" in loaded
    assert [name for name in LATER if name in loaded] == []


def test_the_frame_is_painted_with_nothing_more_loaded() -> None:
    painted = _ran(PAINTED)
    assert "reading the book" in painted
    loaded = set(painted.split())
    assert "textual.app" in loaded
    assert [name for name in LATER if name in loaded] == []


def _named(tree: ast.AST, modules: Iterable[str]) -> set[str]:
    """Every module named in an import, wherever it stands: for types alone and within functions too."""
    found: set[str] = set()
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and node.module:
            found |= {node.module, *(f"{node.module}.{alias.name}" for alias in node.names)}
    return found & set(modules)


def _reached(start: str, imports: Mapping[str, set[str]]) -> set[str]:
    seen: set[str] = set()
    waiting = [start]
    while waiting:
        for name in imports[waiting.pop()] - seen:
            seen.add(name)
            waiting.append(name)
    return seen


def test_no_two_files_of_the_screens_import_each_other() -> None:
    files = [ROOT / "journal" / "app.py", *(ROOT / "journal" / "screens").rglob("*.py")]
    names = {file: ".".join(file.relative_to(ROOT).with_suffix("").parts).removesuffix(".__init__") for file in files}
    trees = {names[file]: ast.parse(file.read_text("utf-8")) for file in files}
    imports = {name: _named(tree, trees) - {name} for name, tree in trees.items()}
    assert imports["journal.app"]
    assert [name for name in imports if name in _reached(name, imports)] == []
