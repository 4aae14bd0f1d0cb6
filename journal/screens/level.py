"""How grave a flag is: its ink, and its letter for narrow places (upper case where harm or loss is done)."""

from collections.abc import Iterable

from journal.rules.flag import Flag, Level
from journal.screens.picture import Ink

LEVEL_INKS = {Level.HARM: Ink.HARM, Level.LOSS: Ink.LOSS, Level.LATE: Ink.LATE, Level.NOTE: Ink.NOTE}
LEVEL_LETTERS = {Level.HARM: "H", Level.LOSS: "L", Level.LATE: "l", Level.NOTE: "n"}


def gravest_first(flags: Iterable[Flag]) -> tuple[Flag, ...]:
    """Sorted by level, then by the day it rose, then by name."""
    return tuple(sorted(flags, key=lambda flag: (-flag.level.gravity, flag.rose, flag.id)))
