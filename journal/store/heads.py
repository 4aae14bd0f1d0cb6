"""The set of versions -> what each entry is now. Pure: the order in which versions arrive does not matter.

Heads of an entry are its versions that no other version of it replaced. One head is the entry; of several
(edits that did not know of each other) a document wins over a strike, then the latest by (at, by, n, crc).
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

from journal.store.change import JSON, Version
from journal.store.codec import as_text


class Moved(NamedTuple):
    """An entry that new versions touched, with its winning version before (None: unknown until now) and after."""

    table: str
    id: str
    before: Version | None
    after: Version


class Lines:
    """One table: the versions of every entry, and the documents that stand."""

    __slots__ = ("documents", "losers", "replaced", "several", "winner")

    def __init__(self) -> None:
        self.several: dict[str, list[Version]] = {}  # all versions, of entries that have more than one
        self.replaced: dict[str, set[str]] = {}
        self.winner: dict[str, Version] = {}
        self.losers: dict[str, tuple[Version, ...]] = {}
        self.documents: dict[str, JSON] = {}

    def heads(self, entry: str) -> list[Version]:
        """The entry's heads, the winner first; [] for an unknown entry."""
        known = self.several.get(entry)
        if known is None:
            only = self.winner.get(entry)
            return [only] if only else []
        replaced = self.replaced.get(entry, set())
        # Replaced all round can only be a forgery; then every version stands.
        heads = [version for version in known if version.name not in replaced] or known
        return sorted(heads, key=_rank, reverse=True)

    def settle(self, entry: str) -> Version:
        """Work the entry out anew from its versions; its winner."""
        if entry not in self.several:
            only = self.winner[entry]
            if only.document is not None:
                self.documents[entry] = only.document
            return only
        heads = self.heads(entry)
        first = self.winner[entry] = heads[0]
        if first.document is None:
            self.documents.pop(entry, None)
        else:
            self.documents[entry] = first.document
        if len(heads) > 1:
            others = tuple(head for head in heads[1:] if _differs(head, first))
            if others:
                self.losers[entry] = others
                return first
        if self.losers:
            self.losers.pop(entry, None)
        return first


class Lineage:
    """Every version known, by name and by table."""

    __slots__ = ("by", "latest_at", "latest_n", "names", "tables", "undoers")

    def __init__(self) -> None:
        self.names: dict[str, Version] = {}
        self.by: dict[str, list[Version]] = {}  # computer -> its versions, as they came
        self.undoers: dict[str, list[Version]] = {}  # name of a version -> those that undo it
        self.tables: dict[str, Lines] = {}
        self.latest_n: dict[str, int] = {}
        self.latest_at: dict[str, str] = {}

    def table(self, name: str) -> Lines:
        """The lines of a table; an unknown one is empty."""
        lines = self.tables.get(name)
        if lines is None:
            lines = self.tables[name] = Lines()
        return lines

    def take_in(self, versions: Iterable[Version]) -> list[Moved]:
        """Add versions; those already known change nothing. Returns the entries touched."""
        touched: dict[tuple[str, str], Version | None] = {}
        names, latest_n, latest_at = self.names, self.latest_n, self.latest_at
        for version in versions:
            name, table, entry, was, _, undoes, at, by, n, _, _ = version
            if name in names:
                continue
            names[name] = version
            if by not in latest_n:
                self.by[by], latest_n[by], latest_at[by] = [], n, at
            self.by[by].append(version)
            if n > latest_n[by]:
                latest_n[by] = n
            if at > latest_at[by]:
                latest_at[by] = at
            if undoes is not None:
                self.undoers.setdefault(undoes, []).append(version)
            lines = self.tables.get(table) or self.table(table)
            if was:
                lines.replaced.setdefault(entry, set()).update(was)
            first = lines.winner.get(entry)
            touched.setdefault((table, entry), first)
            if first is None:
                lines.winner[entry] = version
            elif entry in lines.several:
                lines.several[entry].append(version)
            else:
                lines.several[entry] = [first, version]
        return [
            Moved(table, entry, before, self.tables[table].settle(entry)) for (table, entry), before in touched.items()
        ]

    def before(self, version: Version) -> Version | None:
        """The version that stood when `version` was written: the winner of those it replaced. None if none did."""
        known = [self.names[name] for name in version.was if name in self.names]
        return max(known, key=_rank, default=None)


def _rank(version: Version) -> tuple[bool, str, str, int, str, int]:
    return (version.document is not None, version.at, version.by, version.n, version.crc, version.place)


def _differs(head: Version, winner: Version) -> bool:
    """Whether a losing head is worth showing: a strike, or the same words said twice, is not."""
    return head.document is not None and (winner.document is None or as_text(head.document) != as_text(winner.document))
