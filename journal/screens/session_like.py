"""What the screens ask of the open book."""

from datetime import date
from typing import Protocol

from journal.line.reading import Reading
from journal.record.entry import Entry
from journal.rules.flag import Flag
from journal.season.history import History
from journal.standing import Preflight, Standing


class CompletionLike(Protocol):
    """How a word may go on: the rest of the best candidate, and the candidates as whole words."""

    @property
    def ghost(self) -> str:
        """Shown faintly behind the cursor; '' when there is none."""
        ...

    @property
    def candidates(self) -> tuple[str, ...]:
        """Best first."""
        ...


class SavedLike(Protocol):
    """What a save did: the entries written, a sentence, and the flags that rose and cleared."""

    @property
    def entries(self) -> tuple[Entry, ...]:
        """Written, in order."""
        ...

    @property
    def said(self) -> str:
        """What was saved, in words."""
        ...

    @property
    def raised(self) -> tuple[Flag, ...]:
        """Flags that stand now and did not before."""
        ...

    @property
    def cleared(self) -> tuple[Flag, ...]:
        """Flags that stood before and don't now."""
        ...


class SessionLike(Protocol):
    """The open book. Reading is quick; what writes may take its time and is called off the screen's thread."""

    @property
    def today(self) -> date:
        """The clock's date; it moves at midnight."""
        ...

    @property
    def history(self) -> History:
        """Everything kept."""
        ...

    @property
    def exists(self) -> bool:
        """Whether there is a book yet."""
        ...

    @property
    def read_only(self) -> str:
        """Why nothing can be written; '' when it can."""
        ...

    def standing(self, as_of: date) -> Standing:
        """History judged on that date."""
        ...

    def read(self, text: str) -> Reading:
        """What the line means."""
        ...

    def complete(self, text: str, cursor: int) -> CompletionLike:
        """How the word at the cursor may go on."""
        ...

    def judge(self, reading: Reading) -> Preflight:
        """What saving it would raise and clear."""
        ...

    def save(self, reading: Reading) -> SavedLike:
        """Write it down. Raises NotSaved."""
        ...

    def read_change(self, id: str, text: str) -> Reading:
        """What the line means in the place of that entry: nothing is assumed."""
        ...

    def strike(self, id: str) -> str:
        """Take that entry out; says what it was."""
        ...

    def undo(self) -> str:
        """Take back this window's newest change; says what it was."""
        ...

    def redo(self) -> str:
        """Do again what was taken back; says what it was."""
        ...

    def refresh(self) -> bool:
        """Take in what other terminals wrote; True when something changed."""
        ...

    def set_up(self, settings: tuple[Entry, ...]) -> object:
        """Make the book and write its first settings."""
        ...
