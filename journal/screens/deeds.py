"""What the shell asks of whoever does things: the shell holds what is looked at and knows nobody above it."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

if TYPE_CHECKING:
    from journal.screens.picture import Row


class Deeds(Protocol):
    """The keys, the mouse and the clipboard, answered."""

    def answer(self, key: str) -> bool:
        """Whether the key was used up; what was not is text or editing."""
        ...

    def do(self, act: str) -> bool:
        """Do what the key table says; False leaves the key to editing."""
        ...

    def say(self, row: Row) -> None:
        """Show a row until the next key that does something."""
        ...

    def pasted(self, words: str) -> None:
        """Text was pasted."""
        ...

    def clicked(self, x: int, y: int, *, twice: bool) -> None:
        """A cell of the page was pressed."""
        ...

    def wheeled(self, way: int) -> None:
        """The wheel turned: 1 is down."""
        ...

    async def look_around(self) -> None:
        """Has midnight passed; did another terminal write?"""
        ...
