"""Entries as rows of a spreadsheet."""

import csv
import io
from collections.abc import Iterable

from journal.line.words import summary
from journal.record.entry import Entry
from journal.record.lawn import Lawn

COLUMNS = ("id", "kind", "date", "time", "zones", "what", "cost", "remark", "line")
_FORMULA = ("=", "+", "-", "@")


def entries_csv(entries: Iterable[Entry], lawn: Lawn) -> str:
    """One row an entry, a header first. A cell that a spreadsheet would run as a formula gets a quote before it."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(COLUMNS)
    for entry in entries:
        cost = "" if entry.cost is None else f"{entry.cost:.2f}"
        time = entry.time.isoformat("minutes") if entry.time else ""
        cells = (entry.id, entry.kind, entry.date.isoformat(), time, " ".join(entry.zones), summary(entry, lawn))
        writer.writerow([_plain(cell) for cell in (*cells, cost, entry.remark, entry.line)])
    return out.getvalue()


def _plain(cell: str) -> str:
    return f"'{cell}" if cell.startswith(_FORMULA) else cell
