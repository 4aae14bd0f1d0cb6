"""A page as rows of inked text: the only thing a page makes, and the only thing the canvas draws."""

import re
from dataclasses import dataclass
from enum import StrEnum


class Ink(StrEnum):
    """What a piece of text means; the theme decides how it looks. Never the only sign of a meaning."""

    PLAIN = "plain"
    DIM = "dim"
    STRONG = "strong"
    TITLE = "title"
    RULE = "rule"
    HARM = "harm"
    LOSS = "loss"
    LATE = "late"
    NOTE = "note"
    DONE = "done"
    AHEAD = "ahead"
    BARRED = "barred"
    GAP = "gap"
    FUSE = "fuse"
    WATER = "water"
    SEED = "seed"
    CURSOR = "cursor"
    USUAL = "usual"
    PROBLEM = "problem"
    KEY = "key"
    BAR = "bar"
    AWAY = "away"
    TAB = "tab"
    GHOST = "ghost"
    SAID = "said"


_STEERING = re.compile("[\x00-\x1f\x7f-\x9f]")


def safe(text: str) -> str:
    """The text with a dot for every control character: none reaches the terminal, whatever the book held."""
    return _STEERING.sub("·", text) if _STEERING.search(text) else text


@dataclass(frozen=True, slots=True)
class Span:
    """Text in one ink. It is never read as markup, and holds no control character."""

    text: str
    ink: Ink = Ink.PLAIN

    def __post_init__(self) -> None:
        if _STEERING.search(self.text):
            object.__setattr__(self, "text", safe(self.text))


Row = tuple[Span, ...]
EMPTY_ROW: Row = ()


@dataclass(frozen=True, slots=True)
class Target:
    """A place the cursor can stand on: its row, the line that Enter puts at the foot, the entry Delete strikes.

    `name` tells the row from one standing to the next, where neither an entry nor a flag does.
    Where the row is made of cells, `cells` is (column of the first, its number, columns a cell, how many).
    """

    row: int
    left: int = 0
    right: int = 0
    line: str = ""
    entry: str = ""
    flag: str = ""
    name: str = ""
    cells: tuple[int, int, int, int] | None = None

    def cell_at(self, column: int) -> int:
        """The cell in a column; -1 where the row has none there."""
        if self.cells is None:
            return -1
        first, number, width, count = self.cells
        at = (column - first) // width
        return number + at if 0 <= at < count else -1


@dataclass(frozen=True, slots=True)
class Picture:
    """Exactly as many rows as the page is high; no row is wider than the page.

    `under` is the target the cursor stands on, None when there is no cursor.
    """

    rows: tuple[Row, ...]
    targets: tuple[Target, ...] = ()
    under: Target | None = None


A_NEW_ONE: Row = (Span("  that entry stays as it was; what you type now is a new one", Ink.DIM),)
"""Said when the line that amended an entry has been emptied by hand."""


def plain_text(row: Row) -> str:
    """The row without its inks."""
    return "".join(span.text for span in row)
