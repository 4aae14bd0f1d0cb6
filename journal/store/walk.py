"""Which changes can be taken back, and which can be brought back again. Pure, over the set of versions.

An undo is a version that restores what stood before another, and names it in `undoes`; an undo of an undo is a redo.
All that one computer wrote in one act bears the same `at`, and no two acts of one computer share it.
"""

from __future__ import annotations

from collections.abc import Iterator
from operator import attrgetter

from journal.store.change import Version
from journal.store.heads import Lineage


def standing_for(lineage: Lineage, head: Version) -> Iterator[Version]:
    """`head`, then each earlier version whose very document it restored."""
    seen: set[str] = set()
    now: Version | None = head
    while now is not None and now.name not in seen:
        yield now
        seen.add(now.name)
        undone = lineage.names.get(now.undoes) if now.undoes else None
        now = lineage.before(undone) if undone else None


def is_undo(lineage: Lineage, version: Version) -> bool:
    """Whether `version` takes a change back, rather than making one or bringing one back."""
    odd, seen = False, {version.name}
    while version.undoes is not None:
        odd = not odd
        target = lineage.names.get(version.undoes)
        if target is None or target.name in seen:
            break
        seen.add(target.name)
        version = target
    return odd


def undone(lineage: Lineage, name: str) -> bool:
    """Whether a version is taken back, by an undo that is not itself taken back."""
    known: dict[str, bool] = {}
    stack = [name]
    while stack:
        top = stack[-1]
        undoers = lineage.undoers.get(top, ())
        waiting = [v.name for v in undoers if v.name not in known and v.name not in stack]
        if waiting:
            stack += waiting
            continue
        known[top] = any(not known.get(v.name, False) for v in undoers)
        stack.pop()
    return known[name]


def acts(lineage: Lineage, computer: str, table: str) -> Iterator[list[Version]]:
    """The acts of one computer on one table, newest first; each in the order it was written."""
    own = lineage.by.get(computer, [])
    own.sort(key=_order)  # as good as sorted already, but for files read in another order
    act: list[Version] = []
    for version in reversed(own):
        if act and version.at != act[-1].at:
            yield act[::-1]
            act = []
        if version.table == table:
            act.append(version)
    if act:
        yield act[::-1]


_order = attrgetter("at", "n", "place")


def newest_undoable(lineage: Lineage, computer: str, table: str) -> list[Version]:
    """The newest act that is neither an undo (or redo) nor undone; [] if there is none."""
    for act in acts(lineage, computer, table):
        if all(v.undoes is None and not undone(lineage, v.name) for v in act):
            return act
    return []


def newest_redoable(lineage: Lineage, computer: str, table: str) -> list[Version]:
    """The newest undo, not yet taken back, that each of its entries still stands by; [] if there is none."""
    for act in acts(lineage, computer, table):
        if all(is_undo(lineage, v) and not undone(lineage, v.name) and stands(lineage, v) for v in act):
            return act
    return []


def stands(lineage: Lineage, version: Version) -> bool:
    """Whether nothing but undoing and redoing happened to the entry since `version`."""
    heads = lineage.table(version.table).heads(version.id)
    return len(heads) == 1 and version in standing_for(lineage, heads[0])
