"""What a line means, word by word."""

from dataclasses import dataclass

from journal.record.entry import Entry


@dataclass(frozen=True, slots=True)
class Span:
    """One word of the line: where it stands and what it was taken for ('' when it could not be)."""

    start: int
    end: int
    role: str


@dataclass(frozen=True, slots=True)
class Problem:
    """Why a line can't be saved: the word in question, a sentence, one suggestion or ''."""

    start: int
    end: int
    word: str
    why: str
    suggestion: str = ""

    def __str__(self) -> str:
        tail = f" Did you mean {self.suggestion}?" if self.suggestion else ""
        return f"{self.word}: {self.why}{tail}" if self.word else f"{self.why}{tail}"


@dataclass(frozen=True, slots=True)
class Reading:
    """A draft ready to be saved, or the problem; never both.

    `words` says in full what will be saved, with what was assumed; `verb` is the verb as far as it is known.
    """

    text: str
    draft: Entry | None = None
    problem: Problem | None = None
    spans: tuple[Span, ...] = ()
    verb: str = ""
    words: str = ""
