"""Flags of one entry on one card: the gravest heads it, the others are lines in it."""

from collections.abc import Iterable
from dataclasses import dataclass

from journal.rules.flag import Flag

FEEDING_HEADS = ("feed-closed", "feed-dormant", "feed-heat", "feed-too-soon", "feed-dose")
"""What is wrong with the day of a feeding comes before how much it was."""


@dataclass(frozen=True, slots=True)
class Card:
    """A flag, and what else is said of an entry that it rests on."""

    head: Flag
    lines: tuple[Flag, ...] = ()

    @property
    def flags(self) -> tuple[Flag, ...]:
        """The head, then its lines."""
        return self.head, *self.lines


def cards(flags: Iterable[Flag]) -> tuple[Card, ...]:
    """Each flag on the card of the gravest one that shares an entry with it; one that shares none has its own.

    Cards come gravest first, then oldest; lines keep the order in which the flags came.
    """
    heads: dict[str, Flag] = {}
    lines: dict[str, list[Flag]] = {}
    of_entry: dict[str, Flag] = {}
    for flag in sorted(flags, key=lambda one: (-one.level.gravity, one.rose, _rank(one))):
        head = next((of_entry[id] for id in flag.evidence if id in of_entry), None)
        if head is not None:
            lines[head.id].append(flag)
            continue
        heads[flag.id], lines[flag.id] = flag, []
        of_entry |= {id: flag for id in flag.evidence if id not in of_entry}
    return tuple(Card(head, tuple(lines[id])) for id, head in heads.items())


def _rank(flag: Flag) -> int:
    """Of flags as grave and as old as each other, the one that goes deepest heads the card."""
    return FEEDING_HEADS.index(flag.rule) if flag.rule in FEEDING_HEADS else len(FEEDING_HEADS)
