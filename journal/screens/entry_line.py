"""The one input. It always has the focus; while it is empty its keys are the page's."""

from collections.abc import Callable

from rich.cells import cell_len
from rich.segment import Segment
from textual.events import Blur, Key, Paste
from textual.strip import Strip
from textual.widgets import Input

from journal.screens.ink import Palette
from journal.screens.picture import Ink, safe

PROMPT_WIDTH = 2
READY, SAVING, FAILED = ">", "~", "!"
"""The prompt: at rest, while the book is saving, after a save that failed."""

_MOST_DRAWN = 4096
"""Characters of a line that are looked at to draw it: more never fit any terminal."""


class EntryLine(Input):
    """Text, ghost and problem on one row behind a prompt. Every key is first offered to `answer`."""

    DEFAULT_CSS = """
    EntryLine { height: 1; border: none; padding: 0; width: 100%; background: transparent; }
    EntryLine:focus { border: none; background-tint: transparent 0%; }
    """
    ALLOW_SELECT = False

    def __init__(
        self,
        palette: Palette,
        answer: Callable[[str], bool],
        pasted: Callable[[str], None],
        changed: Callable[[], None],
    ) -> None:
        super().__init__(select_on_focus=False, validate_on=())
        self.cursor_blink = False
        self.palette = palette
        self.prompt = READY
        self.ghost = ""
        self.marked = (0, 0)
        self._answer, self._pasted, self._changed = answer, pasted, changed
        self._left = 0

    @property
    def empty(self) -> bool:
        """Whether keys belong to the page."""
        return not self.value

    def put(self, text: str) -> None:
        """Replace the whole text; the cursor goes to its end."""
        self.value = text
        self.cursor_position = len(text)

    def swap(self, start: int, end: int, text: str) -> None:
        """Put `text` in the place of the characters from start to end."""
        self.value = self.value[:start] + text + self.value[end:]
        self.cursor_position = start + len(text)

    def adorn(self, *, prompt: str, ghost: str = "", marked: tuple[int, int] = (0, 0)) -> None:
        """Set what is drawn beside the text: the prompt, the ghost word, the word in question."""
        if (prompt, ghost, marked) != (self.prompt, self.ghost, self.marked):
            self.prompt, self.ghost, self.marked = prompt, ghost, marked
            self.refresh()

    async def on_key(self, event: Key) -> None:
        """The shell may take any key; what it leaves is editing."""
        if self._answer(spelled(event)):
            event.stop()
            event.prevent_default()

    def on_paste(self, event: Paste) -> None:
        """Several lines or a path need more care than a word."""
        event.stop()
        event.prevent_default()
        self._pasted(event.text)

    def on_blur(self, _event: Blur) -> None:
        """Nothing else may have the focus."""
        if self.app.app_focus:
            self.focus()

    def watch_value(self, _value: str) -> None:
        """Tell the shell."""
        self._changed()

    def watch_selection(self) -> None:
        """A moved cursor may end the ghost."""
        self._changed()

    def render_line(self, y: int) -> Strip:
        """Prompt, then as much of the text around the cursor as there is room for."""
        width, ground = self.size.width, self.palette.foot
        if y or width <= PROMPT_WIDTH:
            return Strip([Segment(" " * width, self.palette.style(Ink.PLAIN, ground))], width)
        head = Ink.PROBLEM if self.prompt == FAILED else Ink.SAID
        segments = [Segment(f"{self.prompt} ", self.palette.style(head, ground))]
        room = width - PROMPT_WIDTH
        cursor, low = self.cursor_position, min(self.selection)
        self._follow(cursor, room)
        used = 0
        shown = self.value[self._left : self._left + _MOST_DRAWN]
        tail = f"{self.ghost} " if cursor == len(self.value) and self.selection.is_empty else " "
        for at, char in enumerate(shown + tail, self._left):
            char = safe(char)
            size = cell_len(char)
            if used + size > room:
                break
            ink = Ink.GHOST if at >= len(self.value) else Ink.STRONG
            if self.marked[0] <= at < self.marked[1]:
                ink = Ink.PROBLEM
            if at == cursor or low <= at < max(self.selection):
                ink = Ink.CURSOR
            segments.append(Segment(char, self.palette.style(ink, ground)))
            used += size
        drawn = list(Segment.simplify(segments))
        rest = width - sum(cell_len(segment.text) for segment in drawn)
        drawn.append(Segment(" " * rest, self.palette.style(Ink.PLAIN, ground)))
        return Strip(drawn, width)

    def _follow(self, cursor: int, room: int) -> None:
        """Move the window over the text so that the cursor stands in it."""
        if cursor < self._left or not self.value:
            self._left = max(0, cursor - 1)
        while self._left < cursor and cell_len(self.value[self._left : cursor][-_MOST_DRAWN:]) >= room:
            self._left += max(1, (cursor - self._left - room) if cursor - self._left > 2 * room else 1)


_SPELLED = {"ctrl+i": "tab", "ctrl+m": "enter", "ctrl+j": "enter"}


def spelled(event: Key) -> str:
    """One name a key: the character itself where it prints, else textual's name for the key."""
    if event.character is not None and event.is_printable and event.character != " ":
        return event.character
    return _SPELLED.get(event.key, event.key)
