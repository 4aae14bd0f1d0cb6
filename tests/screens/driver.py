"""Driving the app by facts: keys are handed over at once, and the app is awaited until nothing is left to do.

Looks into textual's own state (version 8.2.8), and is the only test file that does.
"""

import asyncio
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path

from rich.style import Style
from textual import events
from textual.app import App
from textual.drivers.headless_driver import HeadlessDriver
from textual.geometry import Size
from textual.keys import _character_to_key

from journal.app import furnisher
from journal.screens.ink import DARK, Palette
from journal.screens.kept import Kept
from journal.screens.shell import Shell
from tests.screens.pretend import PretendSession

PATIENCE = 4.0
"""Seconds after which an app that is still busy has hung."""


class Driven:
    """A running app under test."""

    def __init__(self, app: Shell) -> None:
        self.app = app

    async def press(self, *keys: str) -> list[str]:
        """Press keys by name, or single characters; the rows once the app is at rest."""
        for key in keys:
            name, character = (_character_to_key(key), key) if len(key) == 1 else (key, _PRINTED.get(key))
            self.app.post_message(events.Key(name, character))
        return await self.rest()

    async def type(self, text: str) -> list[str]:
        """Type text as fast as a terminal can hand it over."""
        return await self.press(*text)

    async def paste(self, text: str) -> list[str]:
        """Paste text."""
        self.app.post_message(events.Paste(text))
        return await self.rest()

    async def resize(self, width: int, height: int) -> list[str]:
        """Give the terminal another size."""
        size = Size(width, height)
        assert isinstance(self.app._driver, HeadlessDriver)
        self.app._driver._size = size
        self.app.post_message(events.Resize(size, size))
        while self.app.screen._compositor.size != size:
            await asyncio.sleep(0.001)
        return await self.rest()

    async def rest(self) -> list[str]:
        """Wait until no message, worker or repaint is outstanding and two looks agree; the rows."""
        before: list[str] | None = None
        end = asyncio.get_running_loop().time() + PATIENCE
        while asyncio.get_running_loop().time() < end:
            await asyncio.sleep(0)
            if self.app._exit:
                return []
            self.app.screen._on_timer_update()
            if not _busy(self.app):
                now = self.rows
                if now == before:
                    return now
                before = now
            else:
                await asyncio.sleep(0.0005)
        raise AssertionError("\n".join(["the app never came to rest:", *self.rows]))

    @property
    def rows(self) -> list[str]:
        """What stands on the screen."""
        return ["".join(text for text, _ in row) for row in self.runs]

    @property
    def runs(self) -> list[list[tuple[str, Style | None]]]:
        """The screen as styled pieces of text."""
        strips = self.app.screen._compositor.render_strips()
        return [[(segment.text, segment.style) for segment in strip] for strip in strips]

    @property
    def screen(self) -> str:
        """All rows as one text."""
        return "\n".join(self.rows)

    @property
    def line(self) -> str:
        """The text on the line."""
        return self.app.line.value

    @property
    def prompt(self) -> str:
        """The prompt before it."""
        return self.app.line.prompt

    @property
    def reading(self) -> str:
        """The row under the line."""
        return self.rows[-2].strip()

    @property
    def hints(self) -> str:
        """The last row."""
        return self.rows[-1].strip()


_PRINTED = {"space": " ", "tab": "\t", "enter": "\r"}


def _busy(app: App[int]) -> bool:
    pumps = [app, app.screen, *app.screen.walk_children()]
    return (
        any(pump.message_queue_size or pump._next_callbacks for pump in pumps)
        or any(not worker.is_finished for worker in app.workers)
        or bool(app.screen._callbacks or app.screen._dirty_widgets or app.screen._layout_required)
    )


@asynccontextmanager
async def opened(
    session: PretendSession | None = None,
    *,
    size: tuple[int, int] = (80, 24),
    palette: Palette = DARK,
    kept: Path | None = None,
) -> AsyncIterator[Driven]:
    """The app on a session, at rest."""
    book = session or PretendSession()
    shell = Shell(lambda: book, furnisher, palette, Kept(kept))
    async with shell.run_test(size=size):
        driven = Driven(shell)
        while not shell.ready:
            await asyncio.sleep(0.001)
        await driven.rest()
        yield driven
