"""How the width and the height are spent."""

from dataclasses import dataclass

from journal.screens.page import Size
from journal.screens.season.cells import COUNT

LABEL = 8
"""Columns before the grid."""
NARROWEST, LOWEST = 60, 13
"""Columns and rows below which nothing is drawn; the shell's own three rows come on top."""
WIDER, WIDEST = 120, 200
"""From these widths on a cell is two and three columns wide."""
SHORT_NOW = 6
LONG_NOW = 19
MOST_NOW = 28


@dataclass(frozen=True, slots=True)
class Layout:
    """Columns a cell takes, cells left out at the left, and columns for the numbers now."""

    cell: int
    hidden: int
    now: int

    @property
    def grid(self) -> int:
        """Columns of the grid."""
        return (COUNT - self.hidden) * self.cell

    def column(self, cell: int) -> int:
        """The first column of a cell on the page."""
        return LABEL + (cell - self.hidden) * self.cell


def layout(width: int) -> Layout:
    """The numbers now go before any cell does, and cells at the left before those at the right."""
    cell = 3 if width >= WIDEST else 2 if width >= WIDER else 1
    spare = width - LABEL - COUNT * cell
    now = 0 if spare < SHORT_NOW else SHORT_NOW if spare < LONG_NOW else min(MOST_NOW, spare)
    return Layout(cell, max(0, -spare), now)


def too_small(size: Size) -> bool:
    """Whether there is no room for a page."""
    return size.width < NARROWEST or size.height < LOWEST
