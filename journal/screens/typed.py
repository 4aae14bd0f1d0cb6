"""What the text on the line means right now, and what Tab would make of it."""

from dataclasses import dataclass, field

from journal.line.complete import Completion
from journal.line.reading import Reading
from journal.screens.session_like import CompletionLike, SessionLike
from journal.standing import Preflight

NOTHING = Reading("")
FIND = "/"


@dataclass(slots=True)
class Typed:
    """The reading, what saving would do, what may come next. `refused` is set when Enter found the line wanting."""

    reading: Reading = NOTHING
    preflight: Preflight = field(default_factory=Preflight)
    completion: CompletionLike = field(default_factory=Completion)
    refused: bool = False
    amends: str = ""
    """The entry that this line will replace; '' for a new one."""
    _at: int = -1
    _word: tuple[int, int] = (0, 0)
    _cycled: str = ""

    @property
    def finding(self) -> bool:
        """Whether the line is a search and not an entry."""
        return self.reading.text.startswith(FIND)

    @property
    def held_back(self) -> bool:
        """Whether harm keeps the line from being saved until it is confirmed."""
        draft = self.reading.draft
        return self.preflight.holds_back and draft is not None and not draft.confirmed

    @property
    def taken(self) -> int:
        """Which candidate Tab has put in, -1 for none."""
        return self._at

    def update(self, session: SessionLike, text: str, cursor: int) -> None:
        """Read the text anew, if it changed; look at the word at the cursor in any case."""
        if text != self.reading.text or (self.reading is NOTHING and text):
            self.refused = False
            if text.startswith(FIND):
                self.reading, self.preflight = Reading(text), Preflight()
            else:
                self.reading = session.read_change(self.amends, text) if self.amends else session.read(text)
                # A reading cuts a line that is too long to be kept; what was typed stays whole here.
                if self.reading.text != text:
                    self.reading = Reading(text, self.reading.draft, self.reading.problem, self.reading.spans)
                self.preflight = session.judge(self.reading) if self.reading.draft is not None else Preflight()
        if self._at >= 0 and text == self._cycled:
            return
        self._at = -1
        self.completion = Completion() if self.finding else session.complete(text, cursor)

    def clear(self) -> None:
        """The line is empty."""
        self.reading, self.preflight, self.completion = NOTHING, Preflight(), Completion()
        self.refused, self.amends, self._at = False, "", -1

    def tab(self, text: str, cursor: int, way: int) -> tuple[int, int, str] | None:
        """What Tab puts where: the ghost, then candidate after candidate; a suggestion when there is none."""
        found = self.completion.candidates
        if self._at >= 0:
            at = (self._at + way) % len(found)
        elif found:
            start = cursor - len(text[:cursor].rpartition(" ")[2])
            self._word = (start, cursor)
            at = 0 if way > 0 else len(found) - 1
        else:
            return self._suggested()
        start, end = self._word
        self._at, self._word = at, (start, start + len(found[at]))
        self._cycled = text[:start] + found[at] + text[end:]
        return start, end, found[at]

    def _suggested(self) -> tuple[int, int, str] | None:
        problem = self.reading.problem
        if problem is None or not problem.suggestion:
            return None
        return problem.start, problem.end, problem.suggestion
