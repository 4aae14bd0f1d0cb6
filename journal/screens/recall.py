"""Lines typed before, for walking back through."""

from collections.abc import Iterable
from dataclasses import dataclass, field

_MOST = 500


@dataclass(slots=True)
class Recall:
    """Older lines, oldest first, and the walk through those that begin with what was typed."""

    lines: list[str] = field(default_factory=list)
    _typed: str = ""
    _at: int = 0
    _walking: bool = False

    def fill(self, lines: Iterable[str]) -> None:
        """Put the book's own lines below those of this window."""
        known = set(self.lines)
        self.lines[:0] = [line for line in dict.fromkeys(lines) if line and line not in known]
        del self.lines[: max(0, len(self.lines) - _MOST)]

    def add(self, line: str) -> None:
        """Put a line on top; an equal older one moves up."""
        self.stop()
        if line.strip():
            self.lines = [kept for kept in self.lines if kept != line]
            self.lines.append(line)
            del self.lines[: max(0, len(self.lines) - _MOST)]

    def stop(self) -> None:
        """The text was edited: the next walk starts from it."""
        self._walking = False

    def older(self, text: str) -> str | None:
        """The next older line that begins as the walk began, or None."""
        if not self._walking:
            self._typed, self._at, self._walking = text, len(self.lines), True
        for at in range(self._at - 1, -1, -1):
            if self._fits(at, text):
                self._at = at
                return self.lines[at]
        return None

    def newer(self, text: str) -> str | None:
        """The next newer line, at last what was typed itself; None where no walk is on."""
        if not self._walking:
            return None
        for at in range(self._at + 1, len(self.lines)):
            if self._fits(at, text):
                self._at = at
                return self.lines[at]
        self.stop()
        return self._typed

    def _fits(self, at: int, text: str) -> bool:
        line = self.lines[at]
        return line != text and line.casefold().startswith(self._typed.casefold())
