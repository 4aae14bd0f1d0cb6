"""Raises writers and kills them: run as `python nursery.py kill|share|bring FOLDER ROUNDS`, prints JSON.

A process of its own, without threads, so that it can fork: starting Python for each writer would take too long.
"""

from __future__ import annotations

import json
import os
import random
import select
import signal
import sys
import time
from datetime import UTC, datetime
from pathlib import Path

from journal.store.book import Book

ACT = 600
"""Entries of one act: more than one line of the log can hold."""


def clock() -> datetime:
    return datetime.now(UTC)


def write(folder: Path, acknowledge: int, count: int, name: int) -> None:
    """Add entries, naming each on the pipe once the book has acknowledged it."""
    book = Book.open(folder, computer="desk-7f3a", clock=clock)
    for n in range(count):
        if n % 3:
            changes = book.add([{"kind": "note", "nth": n, "writer": name}])
        else:
            changes = book.add([{"kind": "note", "nth": n, "writer": name, "half": half} for half in (1, 2)])
        os.write(acknowledge, "".join(f"{change.id} " for change in changes).encode())


def raised(folder: Path, count: int, name: int) -> tuple[int, int]:
    """A child that writes; its process id and the end of the pipe to read from."""
    read, acknowledge = os.pipe()
    child = os.fork()
    if child == 0:
        code = 1
        try:
            os.close(read)
            write(folder, acknowledge, count, name)
            code = 0
        finally:
            os._exit(code)
    os.close(acknowledge)
    return child, read


def acknowledged(read: int) -> list[str]:
    pieces = []
    while piece := os.read(read, 65536):
        pieces.append(piece)
    os.close(read)
    text = b"".join(pieces).decode()
    return text[: text.rfind(" ") + 1].split()


def kill(folder: Path, rounds: int) -> dict[str, object]:
    chance = random.Random(20260503)
    Book.create(folder, computer="desk-7f3a", clock=clock).close()
    acks: list[str] = []
    lost = partial = busy = 0
    for name in range(rounds):
        child, read = raised(folder, 100_000, name)
        if name % 5:  # else it may be killed while it is still opening the book
            select.select([read], [], [])
        time.sleep(chance.uniform(0.0, 0.015))
        os.kill(child, signal.SIGKILL)
        os.waitpid(child, 0)
        new = acknowledged(read)
        busy += bool(new)
        acks += new
        book = Book.open(folder, computer="reader-0000", clock=clock)
        entries = book.entries()
        lost += sum(ack not in entries for ack in acks)
        halves = [(d["writer"], d["nth"]) for d in entries.values() if "half" in d]
        partial += sum(halves.count(half) != 2 for half in set(halves)) if name == rounds - 1 else 0
    report = book.check()
    return {
        "rounds": rounds, "busy": busy, "acknowledged": len(acks), "entries": len(entries), "lost": lost,
        "partial": partial, "report": report.as_json(),
    }  # fmt: skip


def share(folder: Path, count: int) -> dict[str, object]:
    Book.create(folder, computer="desk-7f3a", clock=clock).close()
    children = [raised(folder, count, name) for name in (1, 2)]
    acks = [ack for _, read in children for ack in acknowledged(read)]
    codes = [os.waitstatus_to_exitcode(os.waitpid(child, 0)[1]) for child, _ in children]
    book = Book.open(folder, computer="reader-0000", clock=clock)
    return {
        "codes": codes, "acknowledged": len(acks), "lost": sum(ack not in book.entries() for ack in acks),
        "entries": len(book.entries()), "conflicts": len(book.conflicts()), "report": book.check().as_json(),
        "files": sorted(path.name for path in (folder / "log").iterdir()),
    }  # fmt: skip


def brings(folder: Path, name: int) -> int:
    """A child that puts all entries in place as one act; its process id."""
    child = os.fork()
    if child == 0:
        try:
            book = Book.open(folder, computer="desk-7f3a", clock=clock)
            book.bring({f"day{n}": {"kind": "note", "nth": n, "writer": name} for n in range(ACT)})
        finally:
            os._exit(0)
    return child


def bring(folder: Path, rounds: int) -> dict[str, object]:
    """Kills writers that change many entries as one act: after each the book holds it whole, or as it was before."""
    chance = random.Random(20260504)
    Book.create(folder, computer="desk-7f3a", clock=clock).close()
    began = time.monotonic()
    os.waitpid(brings(folder, 0), 0)
    takes = time.monotonic() - began
    book = Book.open(folder, computer="desk-7f3a", clock=clock)
    whole = torn = 0
    for name in range(1, rounds + 1):
        child = brings(folder, name)
        time.sleep(chance.uniform(0.0, takes))
        os.kill(child, signal.SIGKILL)
        os.waitpid(child, 0)
        book.refresh()
        writers = {document["writer"] for document in book.entries().values()}
        whole += writers == {name}
        torn += len(writers) != 1 or len(book.entries()) != ACT
    return {"whole": whole, "torn": torn, "damaged": book.check().damaged}


if __name__ == "__main__":
    task = {"kill": kill, "share": share, "bring": bring}[sys.argv[1]]
    print(json.dumps(task(Path(sys.argv[2]), int(sys.argv[3]))))
