"""What every page can do. Pages keep nothing: they draw a standing and turn keys into another view."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Protocol

from journal.screens.picture import Picture
from journal.screens.view import View

if TYPE_CHECKING:
    from journal.standing import Standing


@dataclass(frozen=True, slots=True)
class Size:
    """Columns and rows the page may use."""

    width: int
    height: int


class Page(Protocol):
    """One page. `keys` are (key, what it does here) for the help; `examples` lines to type, made for this lawn."""

    number: int
    name: str
    keys: tuple[tuple[str, str], ...]

    def draw(self, standing: Standing, view: View, size: Size) -> Picture:
        """The whole page: size.height rows, none wider than size.width."""
        ...

    def press(self, key: str, standing: Standing, view: View, size: Size) -> View | None:
        """The view after a key that belongs to the page (`up down left right pageup pagedown home end tab
        shift+tab space plus minus` and its own digit), or None when the key means nothing here.
        """
        ...
