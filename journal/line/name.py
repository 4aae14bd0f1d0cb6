"""Names of zones and products: how they may be cut short, and which words can't be one."""

import re
from collections.abc import Iterable

from journal.line.verb import PINS
from journal.record.day import FULL_MONTHS, FULL_WEEKDAYS, MONTHS, WEEKDAYS
from journal.record.entry import KINDS, VERBS, slots
from journal.record.fold import keys
from journal.record.refusal import Refusal
from journal.record.slot import Role
from journal.record.unit import UNITS

ALL = "all"
_PAIRED = (
    "on", "in", "spot", "part", "by", "service", "half", "quarter", "rtu", "unknown", ALL, "today", "yesterday",
    "tomorrow", "last", "ago",
)  # fmt: skip
_NAME = re.compile(r"[a-z][a-z0-9]*(-[a-z0-9]+)*$")


def _keywords() -> frozenset[str]:
    words: set[str] = set(_PAIRED)
    for kind in KINDS.values():
        for slot in slots(kind).values():
            words.add(slot.keyword)
            if slot.role in (Role.MARK, Role.CHOICE, Role.SUBJECT):
                words.update(word for choice in slot.choices for word in choice.split())
    return frozenset(words - {""})


KEYWORDS = _keywords()
RESERVED = frozenset(
    {*VERBS, *PINS, *KEYWORDS, *WEEKDAYS, *FULL_WEEKDAYS, *MONTHS, *FULL_MONTHS, *UNITS, *keys("lawn"), *keys("zone")}
)


def new_name(word: str) -> str:
    """A name for a zone or a product. Raises Refusal for one that could be read as something else."""
    name = word.casefold()
    if name in RESERVED:
        raise Refusal(word, "this word already means something on the line; choose another name.", f"my-{name}")
    if not _NAME.match(name):
        raise Refusal(word, "a name is one word of the letters a to z, digits and hyphens, and begins with a letter.")
    if len(name) < 2 or len(name) > 40:
        raise Refusal(word, "a name has 2 to 40 letters.")
    return name


def find_name(word: str, names: Iterable[str]) -> str:
    """The name meant: exact, or the only one that begins with these 2 or more letters; '' when none does.

    Raises Refusal when two names begin so.
    """
    begun = word.casefold().replace("_", "-")
    known = tuple(names)
    if begun in known:
        return begun
    if len(begun) < 2:
        return ""
    matches = [name for name in known if name.startswith(begun)]
    if len(matches) > 1:
        raise Refusal(word, f"could be {', '.join(matches[:3])}: write a letter more.")
    return matches[0] if matches else ""
