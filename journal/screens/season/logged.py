"""An entry as a sentence of the pane."""

from journal.record.entry import Entry
from journal.screens.picture import Ink
from journal.screens.season.figures import short_day
from journal.screens.season.mark import Said


def logged(entry: Entry, text: str, ink: Ink) -> Said:
    """The sentence under the entry's day; the owner's own words may have brought their full stop."""
    text = text[:-1] if text.endswith(("..", "!.", "?.")) else text
    return Said(text, short_day(entry.day), ink, entry)
