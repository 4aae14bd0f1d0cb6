"""The bytes of a log file -> the versions in them, and what is damaged where. A bad line hurts only itself."""

from __future__ import annotations

import re
from dataclasses import dataclass, field

from journal.store.change import Version
from journal.store.codec import LONGEST, Misshapen, Newer, decode, decode_many, sealed, versions

_BATCH = 2000  # lines decoded as one JSON array: about half the cost of one by one
_START = b'{"v":'
_END = re.compile(rb',"crc":"[0-9a-f]{8}"\}')
_FAILURES = 2000  # how often a damaged stretch is tried in vain for a whole record inside it


@dataclass(frozen=True, slots=True)
class Damage:
    """Bytes that are no record: where they begin in their file, and why."""

    offset: int
    why: str


@dataclass(slots=True)
class Scan:
    """What a run of bytes held. `settled` is the offset up to which nothing can change by more bytes arriving."""

    versions: list[Version] = field(default_factory=list)
    records: int = 0
    damage: list[Damage] = field(default_factory=list)
    newer: int = 0
    settled: int = 0
    open_tail: Damage | None = None

    def all_damage(self) -> list[Damage]:
        """Damage with the unfinished end of the file, in order of place."""
        found = self.damage + ([self.open_tail] if self.open_tail else [])
        return sorted(found, key=lambda damage: damage.offset)


def scan(data: bytes, base: int = 0) -> Scan:
    """Read `data`, which begins at offset `base` of its file; not inside a record that was read before."""
    found = Scan(settled=base + len(data))
    good: list[tuple[int, bytes]] = []
    pieces = data.split(b"\n")  # never splitlines(): text may hold other line ends
    last = pieces.pop()
    offset = base
    for line in pieces:
        if line:
            if sealed(line):
                good.append((offset, line))
            else:
                end = _salvage(line, offset, good, found)
                _report(line[end:], offset + end, found)
        offset += len(line) + 1
    # The checksum is the commit mark, not the newline.
    if sealed(last):
        good.append((offset, last))
    elif (end := _salvage(last, offset, good, found)) < len(last):
        found.settled = offset + end
        found.open_tail = Damage(offset + end, "cut short: the record at the end is not complete")
    _take(good, found)
    return found


def _take(good: list[tuple[int, bytes]], found: Scan) -> None:
    for first in range(0, len(good), _BATCH):
        batch = good[first : first + _BATCH]
        records = decode_many([line for _, line in batch])
        for i, (offset, line) in enumerate(batch):
            try:
                found.versions += versions(records[i], line) if records is not None else decode(line)
                found.records += 1
            except Newer:
                found.newer += 1
            except Misshapen as why:
                found.damage.append(Damage(offset, str(why)))


def _salvage(stretch: bytes, base: int, good: list[tuple[int, bytes]], found: Scan) -> int:
    """Look for whole records inside a damaged stretch: a lost newline must not cost its neighbours.

    What lies between them is reported; returns where what follows the last of them begins.
    """
    done, failed = 0, 0
    for end in _END.finditer(stretch):
        start = stretch.rfind(_START, done, end.end())  # the nearest first: junk before it does not count
        while start >= 0 and failed < _FAILURES:
            piece = stretch[start : end.end()]
            if sealed(piece):
                _report(stretch[done:start], base + done, found)
                good.append((base + start, piece))
                done = end.end()
                break
            failed += 1
            start = stretch.rfind(_START, done, start)
    return done


def _report(rest: bytes, offset: int, found: Scan) -> None:
    if not rest.strip(b"\r"):  # somebody's editor ended the lines its own way
        return
    if len(rest) > LONGEST:
        why = "longer than a record may be"
    elif not rest.strip(b"\0"):
        why = "empty: only zero bytes"
    elif _END.search(rest):
        why = "the checksum does not match"
    else:
        why = "not a complete record"
    found.damage.append(Damage(offset, why))
