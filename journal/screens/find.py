"""Finding by a part of the text: entries newest first, then verbs, zones and products."""

from journal.line.say import say
from journal.record.day import MONTHS, WEEKDAYS
from journal.record.entry import VERBS, Entry
from journal.screens.newest import newest
from journal.screens.page import Size
from journal.screens.paper import Paper
from journal.screens.picture import Ink, Picture, Span, Target
from journal.screens.rows import left, text
from journal.screens.today.latest import entry_row
from journal.screens.view import View
from journal.standing import Standing

_SEARCHED = 5000
_SHOWN = 200


def find_picture(typed: str, standing: Standing, view: View, size: Size) -> Picture:
    """Everything that holds every word after the slash."""
    paper = Paper(view, size.width)
    wanted = typed[1:].casefold().split()
    _words(paper, wanted, standing)
    entries = _entries(wanted, standing)
    if entries:
        paper.heading("ENTRIES")
    for entry in entries:
        line = say(entry, standing.lawn) if paper.here or not paper.targets else ""
        target = Target(0, line=line, entry=entry.id)
        paper.stop(entry_row(entry, standing.lawn), target, lit=1)
    if not paper.targets:
        paper.add(text("   nothing holds these words", Ink.DIM))
    room = max(1, size.width - 20)
    bar = (Span(f" Find {left(typed[1:], room)}", Ink.BAR),)
    return paper.picture(bar, size)


def _words(paper: Paper, wanted: list[str], standing: Standing) -> None:
    if not wanted:
        return
    lawn = standing.lawn
    things = [(verb.name, verb.says, f"{verb.name} ") for verb, _ in VERBS.values()]
    things += [(zone, "zone", f"set {zone} ") for zone in lawn.zone_names]
    things += [(product.name, f"product, {product.kind}", f"set {product.name} ") for product in lawn.products]
    found = [thing for thing in things if _holds(f"{thing[0]} {thing[1]}", wanted)]
    if found:
        paper.heading("TO TYPE")
    for name, says, line in found[:8]:
        row = (Span(" "), Span(left(name, 20), Ink.KEY), Span(f" {says}"))
        paper.stop(row, Target(0, line=line), lit=1)


def _entries(wanted: list[str], standing: Standing) -> list[Entry]:
    found: list[Entry] = []
    for entry in newest(standing.history, standing.as_of, _SEARCHED):
        if _holds(_spoken(entry), wanted):
            found.append(entry)
            if len(found) == _SHOWN:
                break
    return found


_WORDED = ("what", "product", "subject", "clippings", "point", "text", "file", "flag")


def _spoken(entry: Entry) -> str:
    """The words of an entry that one may remember: cheap, for it is done for thousands at every letter."""
    day = f"{WEEKDAYS[entry.date.weekday()]} {entry.date.day} {MONTHS[entry.date.month - 1]} {entry.date.isoformat()}"
    own = (getattr(entry, name, "") for name in _WORDED)
    return " ".join((entry.kind, day, *entry.zones, *own, entry.remark, entry.line))


def _holds(words: str, wanted: list[str]) -> bool:
    folded = words.casefold()
    return all(word in folded for word in wanted)
