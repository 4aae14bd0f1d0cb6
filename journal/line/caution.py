"""Where the safety words belong: beside what is, or will be, put down against weeds, insects or disease."""

from collections.abc import Iterable

from journal.reckon.dose import doses
from journal.reckon.protection import is_protective
from journal.record.entry import Entry
from journal.record.kinds.treatment import Treatment
from journal.record.lawn import Lawn


def shows_safety(entry: Entry, lawn: Lawn) -> bool:
    """Whether they belong beside this entry: a treatment, or anything about such a product."""
    names = [dose.product for dose in doses(entry)] or [getattr(entry, "product", "")]
    return isinstance(entry, Treatment) or any(_protects(name, lawn) for name in names if name)


def show_safety(entries: Iterable[Entry], lawn: Lawn) -> bool:
    """Whether they belong beside any of them."""
    return any(shows_safety(entry, lawn) for entry in entries)


def line_shows_safety(line: str, lawn: Lawn) -> bool:
    """The same of a line ready to be typed."""
    words = line.split()
    return words[:1] == ["treat"] or any(_protects(word, lawn) for word in words)


def _protects(name: str, lawn: Lawn) -> bool:
    found = lawn.product(name)
    return found is not None and is_protective(found)
