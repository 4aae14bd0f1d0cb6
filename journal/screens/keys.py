"""The key table: one place for what a key does on the empty line, what on a line with text, and the help's words."""

from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True)
class KeyRow:
    """A row of the help. `empty` and `typing` map a key to what the shell does; a key absent from one is text there."""

    shown: str
    on_empty: str
    on_text: str
    empty: dict[str, str] = field(default_factory=dict)
    typing: dict[str, str] = field(default_factory=dict)


def _page(*keys: str) -> dict[str, str]:
    """Keys that are the page's own, by the names pages know."""
    return {key: f"press {_PAGE_NAMES.get(key, key)}" for key in keys}


DIGITS = "1..9"
"""The row of the digits: the help names those that have a page."""

_PAGE_NAMES = {"+": "plus", "=": "plus", "-": "minus", "_": "minus"}

TABLE: tuple[KeyRow, ...] = (
    KeyRow("letters", "start a line", "text"),
    KeyRow(
        DIGITS,
        "page; the same digit again: next zone",
        "text",
        {str(number): f"page {number}" for number in range(1, 10)},
    ),
    KeyRow(
        "Ctrl+PgUp PgDn",
        "previous, next page",
        "the same, text stays",
        {"ctrl+pageup": "turn -1", "ctrl+pagedown": "turn 1"},
        {"ctrl+pageup": "turn -1", "ctrl+pagedown": "turn 1"},
    ),
    KeyRow(
        "Up Down",
        "cursor to the row above, below",
        "older, newer line that begins so",
        _page("up", "down"),
        {"up": "older", "down": "newer"},
    ),
    KeyRow(
        "Left Right",
        "cursor to the cell, day or week beside",
        "in the text; Right at its end takes the ghost",
        _page("left", "right"),
        {"right": "take_right"},
    ),
    KeyRow("PgUp PgDn", "scroll the page", "scroll the page", _page("pageup", "pagedown"), _page("pageup", "pagedown")),
    KeyRow("Home End", "first, last row or cell", "start, end of the text", _page("home", "end")),
    KeyRow(
        "Tab Shift+Tab",
        "next, previous flag or step",
        "take the ghost; again: next candidate, back",
        _page("tab", "shift+tab"),
        {"tab": "complete 1", "shift+tab": "complete -1"},
    ),
    KeyRow(
        "Enter",
        "the line of the row under the cursor; a flag has the line that clears it",
        "save; harm only with a closing !",
        {"enter": "fetch"},
        {"enter": "save"},
    ),
    KeyRow("Space", "open, close the row's details", "text", _page("space")),
    KeyRow(
        "Delete",
        "strike the entry under the cursor; on a flag: the line that hides it",
        "delete to the right",
        {"delete": "strike"},
    ),
    KeyRow(
        "Esc",
        "close; drop the cursor; back to today",
        "put the line aside, on top of the older lines",
        {"escape": "leave"},
        {"escape": "put_aside"},
    ),
    KeyRow(
        ", .",
        "the day judged: one back, one on   (also [ ])",
        "text",
        {",": "as_of -1", "[": "as_of -1", ".": "as_of 1", "]": "as_of 1"},
    ),
    KeyRow(
        "< >",
        "a week back, on   (also { })",
        "text",
        {"<": "as_of -7", "{": "as_of -7", ">": "as_of 7", "}": "as_of 7"},
    ),
    KeyRow("0", "back to today", "text", {"0": "as_of 0"}),
    KeyRow("+ -", "Season: days or weeks; lanes or years", "text", _page("+", "=", "-", "_")),
    KeyRow("/", "find entries, verbs, zones, products", "text"),
    KeyRow(
        "?   F1",
        "this page's keys and lines to type",
        "F1: help on the word under the cursor",
        {"?": "help", "f1": "help"},
        {"f1": "word_help"},
    ),
    KeyRow(
        "Ctrl+P Ctrl+N",
        "older, newer line",
        "the same",
        {"ctrl+p": "older", "ctrl+n": "newer"},
        {"ctrl+p": "older", "ctrl+n": "newer"},
    ),
    KeyRow("Ctrl+O", "", "a long remark, in your own editor", {"ctrl+o": "edit"}, {"ctrl+o": "edit"}),
    KeyRow(
        "Ctrl+Z Ctrl+Y",
        "undo, redo this window's newest change",
        "the same; the text stays",
        {"ctrl+z": "undo", "ctrl+y": "redo"},
        {"ctrl+z": "undo", "ctrl+y": "redo"},
    ),
    KeyRow(
        "Ctrl+L Ctrl+Q",
        "draw anew, quit",
        "the same; the text is kept for next time",
        {"ctrl+l": "redraw", "ctrl+q": "quit", "ctrl+c": "how_to_quit"},
        {"ctrl+l": "redraw", "ctrl+q": "quit", "ctrl+c": "how_to_quit"},
    ),
    KeyRow("paste", "a path becomes photo PATH; of several lines the first, the rest wait as older lines", ""),
    KeyRow("mouse", "wheel scrolls, a click moves the cursor, a double click is Enter", ""),
)

ON_EMPTY: dict[str, str] = {key: act for row in TABLE for key, act in row.empty.items()}
ON_TEXT: dict[str, str] = {key: act for row in TABLE for key, act in row.typing.items()}
