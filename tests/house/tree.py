"""The source as the house rules see it: parsed modules, each in a layer."""

import ast
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]

LAYERS = (
    ("__main__",),
    ("cli",),
    ("app",),
    ("screens", "reports"),
    ("session",),
    ("standing", "spells"),
    ("rules", "plan"),
    ("line",),
    ("reckon",),
    ("season",),
    ("facts",),
    ("record",),
)
"""Highest first. A module imports from its own layer and from rows below its own, never from its row's others."""

PURE = frozenset(name for row in LAYERS[LAYERS.index(("standing", "spells")) :] for name in row)
"""Layers without clock, files or globals: what they say follows from what they are given."""

STORE = "store"
"""Stands beside the rows: it knows the record alone, and few know it."""

STORE_USERS = frozenset({STORE, "session", "cli", "app"})


@dataclass(frozen=True, slots=True)
class Module:
    """One parsed source file; `path` is relative to the root, with slashes, and `layer` "" for the package."""

    path: str
    layer: str
    text: str
    tree: ast.Module

    @property
    def package(self) -> list[str]:
        """The dotted package the module's relative imports start from, in parts."""
        return self.path.split("/")[:-1]


def modules(root: Path, top: str = "journal") -> list[Module]:
    """Parse every Python file below `root`/`top`, in order of path."""
    return [parse(file.relative_to(root), file.read_text("utf-8")) for file in sorted((root / top).rglob("*.py"))]


def parse(path: Path, text: str) -> Module:
    """Parse one file; its layer is the first name below the package."""
    parts = path.with_suffix("").parts[1:]
    return Module(path.as_posix(), "" if parts[0] == "__init__" else parts[0], text, ast.parse(text))


def imports(module: Module) -> Iterator[tuple[int, str]]:
    """Yield line and full dotted name of all a module imports anywhere, functions and type checking included."""
    for node in ast.walk(module.tree):
        if isinstance(node, ast.Import):
            yield from ((node.lineno, alias.name) for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            up = module.package[: len(module.package) - node.level + 1] if node.level else []
            base = ".".join([*up, *([node.module] if node.module else [])])
            yield from ((node.lineno, f"{base}.{alias.name}") for alias in node.names)


def dotted(node: ast.expr) -> str:
    """Return `a.b.c` for a chain of names, else ""."""
    if isinstance(node, ast.Name):
        return node.id
    if isinstance(node, ast.Attribute):
        base = dotted(node.value)
        return f"{base}.{node.attr}" if base else ""
    return ""


def calls(module: Module) -> Iterator[tuple[int, str]]:
    """Yield line and full dotted name of all a module calls by name, as far as its imports tell."""
    known: dict[str, str] = {}
    for node in ast.walk(module.tree):
        if isinstance(node, ast.Import):
            known |= {alias.asname: alias.name for alias in node.names if alias.asname}
        elif isinstance(node, ast.ImportFrom) and node.module:
            known |= {alias.asname or alias.name: f"{node.module}.{alias.name}" for alias in node.names}
    for node in ast.walk(module.tree):
        if isinstance(node, ast.Call) and (name := dotted(node.func)):
            first, _, rest = name.partition(".")
            yield node.lineno, ".".join(filter(None, [known.get(first, first), rest]))
