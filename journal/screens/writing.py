"""What is written, and what is said about it: saves that fail give their line back, and nothing typed is lost."""

from __future__ import annotations

from collections.abc import Coroutine
from pathlib import Path
from typing import TYPE_CHECKING, Any

from journal.line.words import USUAL
from journal.record.clean import control_at
from journal.record.refusal import Refusal
from journal.screens.desk import Done
from journal.screens.picture import Ink, Row, Span
from journal.screens.rows import ends, text
from journal.screens.showing import show_book

if TYPE_CHECKING:
    from journal.screens.shell import Shell

_PICTURES = (".jpg", ".jpeg", ".png", ".heic", ".webp", ".tif", ".tiff", ".gif")


class Writing:
    """The part of the acts that needs the disk."""

    def __init__(self, shell: Shell) -> None:
        self.shell = shell

    def say(self, row: Row) -> None:
        """Show a row at the foot until the next key that does something."""
        self.shell.toast = row
        self.shell.draw()

    def write(self, change: Coroutine[Any, Any, Done], line: str = "", amends: str = "") -> None:
        """Make a change beside the screen; `line` is what comes back if it fails, still amending `amends`."""
        self.shell.run_worker(self._written(change, line, amends), group="write")

    async def _written(self, change: Coroutine[Any, Any, Done], line: str, amends: str) -> None:
        shell = self.shell
        done = await change
        if line:
            shell.saving -= 1
        if done.error:
            self._failed(done.error, line, amends)
            return
        shell.failure = ""
        if not line:
            shell.view = shell.view.but(open=False)
        await shell.judge()
        tail = (*text(f"{done.flags_said}   ", Ink.DIM), Span("Ctrl+Z", Ink.KEY), Span(" undo "))
        said = done.said.replace(f" {USUAL}", "")
        self.say(ends((Span("✓ ", Ink.SAID), Span(said, Ink.STRONG)), tail, shell.foot.size.width))

    def _failed(self, why: str, line: str, amends: str) -> None:
        shell = self.shell
        if not line:
            self.say((Span("  "), Span(why)))
            return
        shell.failure = why
        shell.returned.append((line, amends))
        self.give_back()
        shell.draw()

    def give_back(self) -> None:
        """Put a line that could not be saved on the line again, once that is free."""
        shell = self.shell
        if shell.returned and shell.line.empty:
            failure = shell.failure
            line, shell.typed.amends = shell.returned.pop(0)
            shell.line.put(line)
            shell.failure = failure
            shell.draw()

    def pasted(self, words: str) -> None:
        """One line goes in at the cursor; of several the first, the rest wait as older lines; a path is a photo."""
        shell = self.shell
        lines = [line.strip() for line in words.replace("\r", "\n").split("\n") if line.strip()]
        if not lines:
            return
        if shell.setup is None and len(lines) > 1:
            for line in reversed(lines[1:]):
                shell.recall.add(_clear(line))
        first = _clear(lines[0])
        if shell.line.empty and shell.setup is None and is_picture(first):
            first = f"photo {quoted(first)} "
        low, high = sorted(shell.line.selection)
        shell.line.swap(low, high, first)
        if shell.setup is None and len(lines) > 1:
            waiting = f"{len(lines) - 1} more pasted lines wait" if len(lines) > 2 else "one more pasted line waits"
            self.say(text(f"  {waiting}: Ctrl+P brings the next", Ink.DIM))

    async def look_around(self) -> None:
        """Has midnight passed; did another terminal write? The screen follows."""
        shell, desk = self.shell, self.shell.desk
        if desk.busy or shell.setup is not None or shell.standing is None:
            return
        today = desk.session.today
        changed = await desk.refresh()
        if isinstance(changed, Exception):
            self.say((Span("! ", Ink.LOSS), Span(str(changed))))
            return
        if today != shell.view.today:
            home = not shell.view.away
            shell.view = shell.view.but(today=today, as_of=today if home else shell.view.as_of)
            changed = True
        if changed:
            await shell.judge()

    def set_up_key(self, key: str) -> bool:
        """The guided set-up has the keys Enter, Esc and Tab; everything else is text."""
        shell, setup = self.shell, self.shell.setup
        if key in ("ctrl+q", "ctrl+l", "ctrl+c"):
            return False if key == "ctrl+c" else shell.acts.do("quit" if key == "ctrl+q" else "redraw")
        if setup is not None and not setup.over and key == "tab":
            offered = setup.offered(shell.line.value)
            if offered is not None:
                shell.line.swap(*offered)
            return True
        if setup is None or setup.over or key not in ("enter", "escape"):
            return key in ("shift+tab", "up", "down")
        if key == "escape":
            before = setup.back()
            shell.line.put(before)
        elif setup.answer(shell.line.value):
            shell.line.put("")
        if setup.over:
            shell.run_worker(self._make_book(), group="write")
        shell.draw()
        return True

    async def _make_book(self) -> None:
        shell, setup = self.shell, self.shell.setup
        if setup is None:
            return
        try:
            settings = setup.settings(shell.desk.session.today)
        except Refusal as refusal:
            setup.back()
            setup.wrong = str(refusal)
            shell.draw()
            return
        done = await shell.desk.set_up(settings)
        if done.error:
            setup.back()
            setup.wrong = done.error
            shell.draw()
            return
        shell.setup = None
        await show_book(shell)

    async def quit(self) -> None:
        """Wait for what is being written, and leave; what was not written is kept on the way out."""
        await self.shell.desk.rest()
        self.shell.exit(0)


def is_picture(words: str) -> bool:
    """Whether pasted text is the path of a picture, as terminals paste a dropped file."""
    path = words.strip("'\"").removeprefix("file://").replace("\\ ", " ")
    return path.casefold().endswith(_PICTURES) and (path.startswith(("/", "~", "./", "../")) or path[1:3] == ":\\")


def quoted(words: str) -> str:
    """The path as one word of the line."""
    path = str(Path(words.strip("'\"").removeprefix("file://").replace("\\ ", " ")))
    return f'"{path}"' if " " in path else path


def _clear(words: str) -> str:
    """Pasted text without the control characters no keyboard types."""
    return "".join(" " if char == "\t" else char for char in words if char == "\t" or control_at(char) is None)
