"""How long the parts take as the book grows: python3 tests/bench.py [COUNT ...]. A report; nothing passes or fails."""

from __future__ import annotations

import os
import statistics
import sys
import tempfile
import time
from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))

from journal.line.read import read  # noqa: E402
from journal.record.document import from_document, to_document  # noqa: E402
from journal.record.entry import Entry  # noqa: E402
from journal.season.history import History  # noqa: E402
from journal.standing import preflight, standing  # noqa: E402
from journal.store.book import Book  # noqa: E402
from journal.store.bulk import write_bulk  # noqa: E402
from tests.generated import TODAY, generated  # noqa: E402

COUNTS = (0, 1_000, 10_000, 50_000)


def median_ms(work: Callable[[], object], times: int) -> float:
    """The median of so many runs, in milliseconds."""
    taken = []
    for _ in range(times):
        start = time.perf_counter()
        work()
        taken.append((time.perf_counter() - start) * 1000)
    return statistics.median(taken)


def raw_append(folder: Path) -> Callable[[], None]:
    """The floor of any durable save: one line appended and synced."""
    fd = os.open(folder / "raw", os.O_WRONLY | os.O_CREAT | os.O_APPEND, 0o600)
    sync = getattr(os, "fdatasync", os.fsync)

    def work() -> None:
        os.write(fd, b"x" * 300 + b"\n")
        sync(fd)

    return work


def figures(count: int) -> dict[str, float]:
    """Medians for one size of book."""
    entries = generated(count)
    history = History.of(entries)
    draft = read("mow 3in front", history, TODAY).draft
    assert draft is not None
    found = {
        "index": median_ms(lambda: History.of(entries), 5),
        "plus": median_ms(lambda: history.plus(draft), 200),
        "read": median_ms(lambda: read("mow 3in bag front 40min", history, TODAY), 200),
        "standing": median_ms(lambda: standing(history, TODAY), 30),
        "preflight": median_ms(lambda: preflight(history, draft, TODAY), 30),
    }
    return found | stored(entries, draft)


def stored(entries: list[Entry], draft: Entry) -> dict[str, float]:
    """Opening, decoding and inserting, with the raw append beside it."""
    with tempfile.TemporaryDirectory() as scratch:
        folder = Path(scratch) / "book"

        def clock() -> datetime:
            return datetime.now(UTC)

        book = Book.create(folder, computer="bench", clock=clock)
        write_bulk(book, ((entry.id, to_document(entry)) for entry in entries))
        book.close()
        opened = median_ms(lambda: Book.open(folder, computer="bench", clock=clock).close(), 3)
        book = Book.open(folder, computer="bench", clock=clock)
        documents = book.entries()
        decode = median_ms(lambda: [from_document(id, documents[id]) for id in documents], 3)
        document = to_document(replace(draft, id=""))
        raw = raw_append(Path(scratch))
        inserts, raws = [], []
        for _ in range(60):
            inserts.append(median_ms(lambda: book.add([document]), 1))
            raws.append(median_ms(raw, 1))
        book.close()
        return {
            "open": opened, "decode": decode, "insert": statistics.median(inserts), "raw": statistics.median(raws),
        }  # fmt: skip


def main() -> int:
    """Print one table: rows are parts, columns the sizes, the last column largest against smallest."""
    counts = [int(word) for word in sys.argv[1:]] or list(COUNTS)
    columns = [figures(count) for count in counts]
    print("median ms     " + "".join(f"{count:>12,}" for count in counts) + "    last/first")
    for name in columns[0]:
        row = [column[name] for column in columns]
        print(f"{name:<14}" + "".join(f"{value:>12.3f}" for value in row) + f"{row[-1] / max(row[0], 1e-9):>12.1f}x")
    ratio = [column["insert"] / column["raw"] for column in columns]
    print("insert/raw    " + "".join(f"{value:>11.2f}x" for value in ratio))
    return 0


if __name__ == "__main__":
    sys.exit(main())
