"""Names and times: stamps that never go backward, entry ids, and this computer's name."""

from __future__ import annotations

import json
import os
import re
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path

from journal.store.codec import is_computer

Clock = Callable[[], datetime]

_DIGITS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"  # Crockford's base 32: in order, and none mistaken for another
_PAIRS = [first + second for first in _DIGITS for second in _DIGITS]
_HOST_LONGEST = 20
_BELIEVED = timedelta(days=1)  # another computer's clock may be this far ahead and still move ours


def as_stamp(moment: datetime) -> str:
    """UTC with milliseconds, 24 characters: 2026-05-03T14:22:31.123Z. A moment without a zone is local time."""
    return moment.astimezone(UTC).isoformat(timespec="milliseconds").removesuffix("+00:00") + "Z"


def next_stamp(now: datetime, latest: dict[str, str], computer: str) -> str:
    """The stamp of this computer's next act: now, but later than every act of its own in the log.

    `latest` is the latest stamp of each computer. Others' count too, unless they lie more than a day ahead:
    one wrong clock must not drag all the others along.
    """
    stamp = as_stamp(now)
    for by, at in latest.items():
        if at >= stamp and (by == computer or at <= as_stamp(now + _BELIEVED)):
            stamp = _just_after(at)
    return stamp


def _just_after(at: str) -> str:
    try:
        return as_stamp(datetime.fromisoformat(at) + timedelta(milliseconds=1))
    except OverflowError:  # the last millisecond there is
        return at


def id_of(milliseconds: int, tail: int) -> str:
    """26 characters: 48 bits of time (milliseconds since 1970, UTC), then 80 bits that tell entries apart."""
    number = (min(max(milliseconds, 0), 2**48 - 1) << 80) | tail
    return "".join([_PAIRS[number >> shift & 1023] for shift in range(120, -1, -10)])


def new_ids(clock: Clock, count: int) -> list[str]:
    """`count` fresh ids, in order."""
    now = int(clock().timestamp() * 1000)
    return sorted([id_of(now, int.from_bytes(os.urandom(10), "big")) for _ in range(count)])


def new_id(clock: Clock) -> str:
    """A fresh id: 26 characters, in order of time, random beyond the millisecond."""
    return new_ids(clock, 1)[0]


def computer_name(state_dir: Path) -> str:
    """This computer's name in records: its host's name and four random characters, kept in `state_dir`.

    It is kept outside the book, since a book may be copied to another computer. A changed host name makes a new
    name: the state was copied along with a home folder. Losing it is harmless, two computers sharing it is not,
    so whenever in doubt there is a new one; it lasts for this run only if `state_dir` cannot be written.
    """
    import socket  # asked for once in a computer's life

    host = re.sub(r"[^a-z0-9]+", "-", socket.gethostname().lower().split(".")[0])[:_HOST_LONGEST].strip("-")
    kept = state_dir / "computer.json"
    name = _kept_name(kept, host)
    if name:
        return name
    name = f"{host or 'computer'}-{os.urandom(2).hex()}"
    fresh = kept.with_name(f"computer-{os.urandom(4).hex()}.part")
    try:
        state_dir.mkdir(mode=0o700, parents=True, exist_ok=True)
        fd = os.open(fresh, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
        with os.fdopen(fd, "w", encoding="utf-8") as file:
            json.dump({"host": host, "name": name}, file)
        fresh.replace(kept)
    except OSError:
        return name
    return _kept_name(kept, host) or name


def _kept_name(kept: Path, host: str) -> str:
    try:
        saved = json.loads(kept.read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return ""
    if not isinstance(saved, dict) or saved.get("host") != host:
        return ""
    name = saved.get("name")
    return name if isinstance(name, str) and is_computer(name) else ""
