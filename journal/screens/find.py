"""Finding by a part of the text: entries newest first, then verbs, zones and products."""

from functools import partial

from journal.line.say import say
from journal.record.day import MONTHS, WEEKDAYS
from journal.record.entry import VERBS, Entry
from journal.screens.newest import newest
from journal.screens.page import Size
from journal.screens.paper import Paper
from journal.screens.picture import Ink, Picture, Row, Span, Target
from journal.screens.rows import left, text
from journal.screens.title import day_words
from journal.screens.today.latest import entry_row
from journal.screens.view import View
from journal.season.history import History
from journal.standing import Standing

_SEARCHED = 5000
_SHOWN = 100


def find_picture(typed: str, standing: Standing, view: View, size: Size) -> Picture:
    """Everything that holds every word after the slash."""
    paper = Paper(view, size.width)
    wanted = typed[1:].casefold().split()
    _words(paper, wanted, standing)
    found = INDEX.holding(wanted, standing)
    if found:
        paper.heading("ENTRIES")
    for entry in found:
        line = partial(say, entry, standing.lawn)
        # Enter without a cursor takes the first.
        target = Target(0, line="" if paper.stops else line(), entry=entry.id)
        paper.stop(INDEX.row(entry, standing), target, lit=1, line=line)
    if not paper.stops:
        paper.add(text("   nothing holds these words", Ink.DIM))
    day = f"{day_words(view)} " if view.away else ""
    words = f" Find {left(typed[1:], max(1, size.width - 6 - len(day)))}{day}"
    return paper.picture((Span(words, Ink.AWAY if view.away else Ink.BAR),), size, view)


def _words(paper: Paper, wanted: list[str], standing: Standing) -> None:
    if not wanted:
        return
    lawn = standing.lawn
    things = [(verb.name, verb.says, f"{verb.name} ") for verb, _ in VERBS.values()]
    things += [(zone, "zone", f"set {zone} ") for zone in lawn.zone_names]
    things += [(product.name, f"product, {product.kind}", f"set {product.name} ") for product in lawn.products]
    found = [thing for thing in things if _holds(f"{thing[0]} {thing[1]}".casefold(), wanted)]
    if found:
        paper.heading("TO TYPE")
    for name, says, line in found[:8]:
        row = (Span(" "), Span(left(name, 20), Ink.KEY), Span(f" {says}"))
        paper.stop(row, Target(0, line=line), lit=1)


class Index:
    """The words of the newest entries, put together once for a history and as far as they were looked at."""

    def __init__(self) -> None:
        self._history: History | None = None
        self._day = 0
        self._entries: list[Entry] = []
        self._spoken: list[str] = []
        self._rows: dict[str, Row] = {}

    def holding(self, wanted: list[str], standing: Standing) -> list[Entry]:
        """The newest entries that hold all the words."""
        self._look_at(standing)
        found: list[Entry] = []
        for at, entry in enumerate(self._entries):
            if at == len(self._spoken):
                self._spoken.append(_spoken(entry).casefold())
            if _holds(self._spoken[at], wanted):
                found.append(entry)
                if len(found) == _SHOWN:
                    break
        return found

    def row(self, entry: Entry, standing: Standing) -> Row:
        """The entry's row in the list."""
        if entry.id not in self._rows:
            self._rows[entry.id] = entry_row(entry, standing.lawn, standing.as_of)
        return self._rows[entry.id]

    def _look_at(self, standing: Standing) -> None:
        if self._history is not standing.history or self._day != standing.as_of.toordinal():
            self._history, self._day = standing.history, standing.as_of.toordinal()
            self._entries = newest(standing.history, standing.as_of, _SEARCHED)
            self._spoken, self._rows = [], {}


INDEX = Index()

_WORDED = ("what", "product", "subject", "clippings", "point", "text", "file", "flag")


def _spoken(entry: Entry) -> str:
    """The words of an entry that one may remember."""
    day = f"{WEEKDAYS[entry.date.weekday()]} {entry.date.day} {MONTHS[entry.date.month - 1]} {entry.date.isoformat()}"
    own = (getattr(entry, name, "") for name in _WORDED)
    return " ".join((entry.kind, day, *entry.zones, *own, entry.remark, entry.line))


def _holds(folded: str, wanted: list[str]) -> bool:
    return all(word in folded for word in wanted)
