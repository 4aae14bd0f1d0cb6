"""How a step declares itself."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from journal.plan.offer import Offer
from journal.record.entry import Entry
from journal.season.history import Past

Find = Callable[[Past], Offer | None]


@dataclass(frozen=True, slots=True)
class Declared:
    """A step's name, the kinds of entry it looks at, and how it is worked out for one zone on one day."""

    name: str
    watches: frozenset[str]
    find: Find


def step(name: str, *, watches: Iterable[type[Entry]]) -> Callable[[Find], Declared]:
    """Declare the pure function that says where this step stands in one zone, or None when it has no place there."""
    kinds = frozenset(kind.kind for kind in watches)

    def declare(find: Find) -> Declared:
        return Declared(name, kinds, find)

    return declare
