"""What a check of the book found."""

from __future__ import annotations

from dataclasses import dataclass

from journal.store.change import JSON


@dataclass(frozen=True, slots=True)
class Report:
    """The state of every file of the log, read afresh from the disk.

    files: names read. records: lines that count. damaged: (file, offset in bytes, why), each costing itself only.
    gaps: computer -> (first, last) numbers of records that are missing. oversize, ignored: files not read although
    they look like logs. waiting: files not read and rightly so (unfinished imports, packed copies). newer: files that
    hold records of a later format. vanished: records in memory whose lines are no longer on the disk.
    """

    files: tuple[str, ...]
    records: int
    damaged: tuple[tuple[str, int, str], ...]
    gaps: dict[str, tuple[tuple[int, int], ...]]
    oversize: tuple[str, ...]
    ignored: tuple[tuple[str, str], ...]
    waiting: tuple[str, ...]
    newer: tuple[str, ...]
    vanished: int

    @property
    def problems(self) -> bool:
        """Whether anything is missing, damaged or unread."""
        return bool(self.damaged or self.gaps or self.oversize or self.ignored or self.newer or self.vanished)

    def as_json(self) -> JSON:
        """The report as plain data, for scripts."""
        return {
            "problems": self.problems,
            "files": list(self.files),
            "records": self.records,
            "damaged": [{"file": file, "offset": offset, "why": why} for file, offset, why in self.damaged],
            "gaps": {by: [list(gap) for gap in gaps] for by, gaps in self.gaps.items()},
            "oversize": list(self.oversize),
            "ignored": [{"file": file, "why": why} for file, why in self.ignored],
            "waiting": list(self.waiting),
            "newer": list(self.newer),
            "vanished": self.vanished,
        }


def gaps_in(numbers: set[int]) -> tuple[tuple[int, int], ...]:
    """The runs missing from 1 up to the largest of `numbers`."""
    missing = []
    expected = 1
    for number in sorted(numbers):
        if number > expected:
            missing.append((expected, number - 1))
        expected = number + 1
    return tuple(missing)
