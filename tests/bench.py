"""How long the parts take. A report; nothing passes or fails.

`python3 tests/bench.py [COUNT ...]`: as the book grows. `python3 tests/bench.py targets`: against what is aimed at.
"""

from __future__ import annotations

import os
import statistics
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime
from functools import partial
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))

from journal.line.read import read  # noqa: E402
from journal.record.document import from_document, to_document  # noqa: E402
from journal.record.entry import Entry  # noqa: E402
from journal.season.history import History  # noqa: E402
from journal.spells import spells  # noqa: E402
from journal.standing import Standing, preflight, standing  # noqa: E402
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
    draft = _drafted(history, "mow 3in front")
    found = {
        "index": median_ms(lambda: History.of(entries), 5),
        "plus": median_ms(lambda: history.plus(draft), 200),
        "read": median_ms(lambda: read("mow 3in bag front 40min", history, TODAY), 200),
        "standing": median_ms(lambda: standing(history, TODAY), 30),
        "preflight": median_ms(lambda: preflight(history, draft, TODAY), 30),
    }
    return found | stored(entries, draft)


def _drafted(history: History, line: str) -> Entry:
    draft = read(line, history, TODAY).draft
    assert draft is not None, line
    return draft


LINES = (
    "mow 3in front", "water 20min back", "feed pond-ridge 12lb front back", "treat dry-creek 3floz front wind 4mph",
    "seed three-river 9lb front", "height 3.6in front", "see traffic front", "rain 0.5in", "note looks well",
    "set mow-gap days 12",
)  # fmt: skip
"""One line of each sort that an owner types."""


@dataclass(frozen=True, slots=True)
class Target:
    """What was measured beside what is aimed at, in milliseconds."""

    name: str
    median: float
    slow: float
    aim: float

    def row(self) -> str:
        """One row of the report: the slow one (one in twenty is slower) is held against the aim."""
        verdict = "ok" if self.slow <= self.aim else "over"
        return f"{self.name:<46}{self.median:>9.2f}{self.slow:>9.2f}{self.aim:>9.1f}  {verdict}"


def _taken(work: Callable[[], object], times: int) -> list[float]:
    return [median_ms(work, 1) for _ in range(times)]


def _target(name: str, taken: list[float], aim: float) -> Target:
    ordered = sorted(taken)
    return Target(name, statistics.median(ordered), ordered[min(len(ordered) - 1, int(0.95 * len(ordered)))], aim)


def targets(times: int = 40) -> Iterator[Target]:
    """The waits that an owner would notice: a keystroke, a new day or page, ten years looked back on."""
    for count in (10_000, 50_000):
        history = History.of(generated(count))
        now = standing(history, TODAY)
        if count == 10_000:
            for line in LINES:
                taken = _keystrokes(history, line, now, times)
                yield _target(f"preflight, {count:,}: {line[:26]}", taken, A_KEYSTROKE_MS)
        anew = [_cold(history) for _ in range(times)]
        yield _target(f"all rules and steps, {count:,}", _each(anew), A_STANDING_MS)
    ten_years = [_cold(History.of(generated(10_000))) for _ in range(3)]
    yield _target("flags --history, ten years, 10,000", _each(ten_years, spells), TEN_YEARS_MS)


def _keystrokes(history: History, line: str, now: Standing, times: int) -> list[float]:
    """Reading and judging the whole line anew, as after every letter."""

    def work() -> None:
        preflight(history, _drafted(history, line), TODAY, now)

    return _taken(work, times)


def _cold(history: History) -> History:
    """The same entries, with nothing worked out of any day yet."""
    return History(history.tracks, history.ground, history.size)


def _each(histories: list[History], judge: Callable[[History, date], object] = standing) -> list[float]:
    return [median_ms(partial(judge, history, TODAY), 1) for history in histories]


A_KEYSTROKE_MS, A_STANDING_MS, TEN_YEARS_MS = 16.7, 20.0, 1500.0
"""A frame at sixty a second; a page turned; ten years at a breath."""


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
    """Print one table: of targets, or of sizes (rows are parts, columns sizes, the last one largest to smallest)."""
    if sys.argv[1:] == ["targets"]:
        print(f"{'ms':<46}{'median':>9}{'1 in 20':>9}{'aim':>9}")
        for target in targets():
            print(target.row(), flush=True)
        return 0
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
