"""One window on one book."""

import threading
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date
from pathlib import Path

from journal.line.complete import Completion, complete
from journal.line.read import Known, read, read_change
from journal.line.reading import Reading
from journal.line.words import in_words
from journal.record.document import Unknown, from_document, to_document
from journal.record.entry import Entry
from journal.record.kinds.setting import Setting
from journal.rules.catalogue import rules
from journal.rules.flag import Flag
from journal.season.daily import DayWeather
from journal.season.history import History
from journal.session.clock import Clock
from journal.session.intake import Intake, sort_in
from journal.session.memory import SHORTEST_END, Memory
from journal.session.phrase import read_phrase
from journal.standing import Preflight, Standing, preflight, preflight_change, standing
from journal.store.book import Book
from journal.store.change import Change, NotABook, NotSaved
from journal.store.stamp import new_id

_KEPT_STANDINGS = 16


class HeldBack(Exception):
    """The line would raise a `harm` flag and doesn't end in ` !`; nothing was written."""

    def __init__(self, judged: Preflight) -> None:
        gravest = judged.gravest
        why = f"{gravest.rule}, {gravest.headline}" if gravest else "harm"
        super().__init__(f"Held back: {why}. End the line in ` !` to save it all the same.")
        self.judged = judged


@dataclass(frozen=True, slots=True)
class Saved:
    """What a save did: the entries as they now stand, a sentence, and the flags that rose and cleared."""

    entries: tuple[Entry, ...]
    said: str
    raised: tuple[Flag, ...] = ()
    cleared: tuple[Flag, ...] = ()


class Session:
    """Everything the screens and commands do with a book goes through here.

    Reading is quick and may happen on any thread; what writes returns only when it is on the disk.
    """

    def __init__(self, folder: Path, computer: str, clock: Clock) -> None:
        self.folder = folder
        self.computer = computer
        self.clock = clock
        self._book: Book | None = None
        self._memory = Memory()
        self._done: list[tuple[Change, ...]] = []
        self._undone: list[tuple[Change, ...]] = []
        self._standings: dict[tuple[int, date], tuple[History, Standing]] = {}
        steady = frozenset(rule.id for rule in rules() if not rule.can_be_off)
        self._known = Known(tuple(rule.id for rule in rules()), steady, read_phrase)
        self._lock = threading.RLock()

    @property
    def today(self) -> date:
        """The clock's date; it moves at midnight unless it was set."""
        return self.clock.today()

    @property
    def history(self) -> History:
        """Everything kept, indexed."""
        return self._memory.history

    @property
    def unread(self) -> dict[str, str]:
        """Documents that this version can't understand, by id, and why."""
        return self._memory.unread

    def orphans(self) -> dict[str, str]:
        """Entries that name a zone or product which the lawn has not: id -> that name."""
        return self._memory.orphans()

    @property
    def exists(self) -> bool:
        """Whether a book is open."""
        return self._book is not None

    @property
    def book(self) -> Book:
        """The open book. Raises NotABook before `open` or `set_up`."""
        if self._book is None:
            raise NotABook(f"There is no book in {self.folder} yet.")
        return self._book

    @property
    def read_only(self) -> str:
        """Why nothing can be written, as a sentence; '' when it can."""
        return self.book.why_read_only

    def open(self) -> "Session":
        """Open the book and read everything in it. Raises NotABook when there is none."""
        with self._lock:
            self._book = Book.open(self.folder, computer=self.computer, clock=self.clock.now)
            self._memory.load(self.book.entries())
        return self

    def set_up(self, settings: Sequence[Entry]) -> Saved:
        """Make the book if there is none, and write its first settings as one act. Raises NotSaved or NotABook."""
        with self._lock:
            if self._book is None:
                self._book = Book.create(self.folder, computer=self.computer, clock=self.clock.now)
                self._memory.load(self.book.entries())
            return self._add(settings, "the lawn is set up")

    def standing(self, as_of: date) -> Standing:
        """History judged on that date; the same question is not worked out twice."""
        history = self.history
        key = (id(history), as_of)
        kept = self._standings.get(key)
        if kept and kept[0] is history:
            return kept[1]
        made = standing(history, as_of)
        if len(self._standings) >= _KEPT_STANDINGS:
            self._standings.clear()
        self._standings[key] = (history, made)
        return made

    def read(self, text: str) -> Reading:
        """What the line means, today."""
        return read(text, self.history, self.today, self._known)

    def read_change(self, id: str, text: str) -> Reading:
        """What the line means in the place of that entry: nothing is assumed."""
        return read_change(text, self.entry(id), self.history, self.today, self._known)

    def complete(self, text: str, cursor: int) -> Completion:
        """How the word at the cursor may go on."""
        return complete(text, cursor, self.history, self.today, self._known.rules)

    def judge(self, reading: Reading) -> Preflight:
        """What saving it would raise and clear; nothing for a line that can't be saved."""
        draft = reading.draft
        if draft is None:
            return Preflight()
        old = self._memory.entries.get(draft.id) if draft.id else None
        if old is not None:
            return preflight_change(self.history, old, draft, self.today)
        return preflight(self.history, draft, self.today, self.standing(max(self.today, draft.date)))

    def entry(self, id: str) -> Entry:
        """The entry of that id, or of the only id that ends so. Raises NotSaved naming it."""
        return self._memory.find(id)

    def save(self, reading: Reading) -> Saved:
        """Write a line down. Raises HeldBack (harm without ` !`), NotSaved, or ValueError for an unfinished line."""
        draft = reading.draft
        if draft is None:
            raise ValueError(str(reading.problem))
        with self._lock:
            if draft.id and isinstance(draft, Setting) is not isinstance(self.entry(draft.id), Setting):
                raise NotSaved(
                    "A fact of the lawn can't become an entry, nor an entry a fact. Strike the one, log the other."
                )
            judged = self.judge(reading)
            if judged.holds_back and not draft.confirmed:
                raise HeldBack(judged)
            if draft.id:
                return self._replace(draft, reading.words, judged)
            saved = self._add([draft], in_words(draft, self.history.lawn(self.today), self.today))
            return replace(saved, raised=judged.raised, cleared=judged.cleared)

    def amend(self, id: str, text: str) -> Saved:
        """Put this line in the place of that entry. Raises ValueError with the problem of a line that can't be read."""
        with self._lock:
            return self.save(self.read_change(id, text))

    def weigh(self, days: Sequence[DayWeather]) -> Intake:
        """What taking in these days of weather would change; nothing is written."""
        with self._lock:
            return sort_in(days, self._memory.entries, self.book.struck())

    def take_in(self, days: Sequence[DayWeather]) -> Intake:
        """Write days of weather down as one act, which one undo takes back; says what it changed. Raises NotSaved."""
        with self._lock:
            intake = self.weigh(days)
            changes = self.book.bring({entry.id: to_document(entry) for entry in intake.wanted})
            if changes:
                self._did(changes)
            return intake

    def _add(self, drafts: Sequence[Entry], said: str) -> Saved:
        """Ids are made in order, so that entries of one act keep the order they were given in."""
        ids = sorted(new_id(self.clock.now) for _ in drafts)
        changes = self.book.add([to_document(draft) for draft in drafts], ids)
        self._did(changes)
        return Saved(self._memory.those(change.id for change in changes), said)

    def _replace(self, draft: Entry, said: str, judged: Preflight) -> Saved:
        change = self.book.amend(draft.id, to_document(draft), expect=self.book.head(draft.id))
        self._did((change,))
        return Saved(self._memory.those((change.id,)), f"changed: {said}", judged.raised, judged.cleared)

    def strike(self, id: str) -> str:
        """Take an entry out; says what it was. It stays in the log and comes back by undo.

        Raises NotSaved for the fact that makes a zone or product which other entries name.
        """
        with self._lock:
            entry = self.entry(id)
            self._memory.hold_names(entry)
            words = self._words(entry)
            changes = (self.book.strike(entry.id),)
            self._did(changes)
            return f"struck: {words}"

    def undo(self) -> str:
        """Take back the newest change made in this window; says what it was. Raises NotSaved."""
        with self._lock:
            if not self._done:
                raise NotSaved("Nothing was logged in this window yet.")
            return self._turn_back(self._done, self._undone)

    def redo(self) -> str:
        """Do again what this window took back; says what it was. Raises NotSaved."""
        with self._lock:
            if not self._undone:
                raise NotSaved("Nothing was undone in this window.")
            return self._turn_back(self._undone, self._done)

    def undo_newest(self) -> str:
        """Take back this computer's newest change, whichever window made it. Raises NotSaved."""
        with self._lock:
            newest = self.book.newest_undoable()
            if not newest:
                raise NotSaved("This computer has changed nothing that could be undone.")
            return self._turn_back([newest], self._undone)

    def undo_entry(self, id: str) -> str:
        """Take back this computer's newest change, if it is one of that entry. Raises NotSaved."""
        with self._lock:
            newest = self.book.newest_undoable()
            found = [change.id for change in newest if len(id) >= SHORTEST_END and change.id.endswith(id.upper())]
            if not found:
                raise NotSaved(f"The newest change is not one of {id}; strike it instead: swardbook strike {id}")
            return self._turn_back([newest], self._undone)

    def redo_newest(self) -> str:
        """Do again what this computer took back last. Raises NotSaved."""
        with self._lock:
            newest = self.book.newest_redoable()
            if not newest:
                raise NotSaved("This computer has undone nothing that could be done again.")
            return self._turn_back([newest], self._done)

    def _turn_back(self, stack: list[tuple[Change, ...]], other: list[tuple[Change, ...]]) -> str:
        """Undoing an undo is redoing: both are the store's one act, from one stack onto the other."""
        changes = self.book.undo(stack[-1])
        stack.pop()
        other.append(changes)
        words = self._spoken(changes)
        self._memory.apply(changes)
        return words

    def _spoken(self, changes: Sequence[Change]) -> str:
        """What became of an entry, and of how many more."""
        first = changes[0]
        act = "taken back" if first.after is None else "back again" if first.before is None else "changed back to"
        try:
            words = self._words(from_document(first.id, first.after or first.before or {}))
        except Unknown:
            words = f"entry {first.id[-6:]}"
        return f"{act}: {words}" + (f" and {len(changes) - 1} more" if len(changes) > 1 else "")

    def _words(self, entry: Entry) -> str:
        return in_words(replace(entry, assumed=()), self.history.lawn(self.today), self.today)

    def _did(self, changes: tuple[Change, ...]) -> None:
        self._memory.apply(changes)
        self._done.append(changes)
        self._undone.clear()

    def refresh(self) -> bool:
        """Take in what other windows and computers wrote; True when anything changed. Raises NotABook."""
        with self._lock:
            changes = self.book.refresh()
            self._memory.apply(changes)
            return bool(changes)

    def close(self) -> None:
        """Let go of the files."""
        if self._book is not None:
            self._book.close()
