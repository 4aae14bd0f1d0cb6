"""The app: one canvas, one line, two rows under it. It holds what is looked at and draws it; `acts` does things.

Only what the first paint needs is imported at the top. The rest is loaded beside the screen, together with the book.
"""

from __future__ import annotations

import asyncio
import gc
import os
import signal
from collections.abc import Callable, Coroutine
from datetime import date
from typing import TYPE_CHECKING, Any

from textual.app import App, ComposeResult
from textual.driver import Driver

from journal.screens.canvas import Canvas
from journal.screens.entry_line import FAILED, READY, SAVING, EntryLine
from journal.screens.ink import Palette
from journal.screens.kept import Kept
from journal.screens.keys import ON_EMPTY
from journal.screens.picture import A_NEW_ONE, EMPTY_ROW, Ink, Picture, Row, Span, Target
from journal.screens.recall import Recall
from journal.screens.view import View

if TYPE_CHECKING:
    from journal.screens.deeds import Deeds
    from journal.screens.desk import Desk
    from journal.screens.drawing import Seen
    from journal.screens.page import Page, Size
    from journal.screens.session_like import SessionLike
    from journal.screens.setup import Setup
    from journal.screens.typed import Typed
    from journal.standing import Standing

    Furnish = Callable[["Shell", SessionLike], Coroutine[Any, Any, None]]
    """Gives the shell what it works with, and shows the book, or the questions that make one."""

FRAME: tuple[Row, ...] = ((Span(" Swardbook", Ink.BAR),), EMPTY_ROW, (Span("   reading the book", Ink.DIM),))
_EDITING = frozenset({"backspace", "delete", "left", "right", "home", "end"})


class Shell(App[int], inherit_bindings=False):
    """What is on the screen.

    After the first paint, off the screen's thread, `furnisher` is called and then `open_session`.
    """

    CSS = """
    Screen { layout: vertical; background: transparent; overflow: hidden hidden; }
    #page { height: 1fr; width: 100%; }
    #foot { height: 2; width: 100%; }
    """
    ENABLE_COMMAND_PALETTE = False
    TITLE = "Swardbook"

    acts: Deeds
    desk: Desk
    typed: Typed
    """These three exist once `ready` is set."""

    def __init__(
        self,
        open_session: Callable[[], SessionLike],
        furnisher: Callable[[], Furnish],
        palette: Palette,
        kept: Kept,
        driver: type[Driver] | None = None,
    ) -> None:
        super().__init__(driver_class=driver, ansi_color=True)
        self.animation_level = "none"
        self.open_session, self.furnisher = open_session, furnisher
        self.palette, self.kept = palette, kept
        self.canvas = Canvas(palette, id="page")
        self.line = EntryLine(palette, self.answer, self.pasted, self.changed)
        self.foot = Canvas(palette, palette.foot, id="foot")
        self.ready = False
        self.standing: Standing | None = None
        self.setup: Setup | None = None
        self.view = View(as_of=date.min)
        self.recall = Recall()
        self.picture = Picture(())
        self.toast: Row = EMPTY_ROW
        self.word_help = False
        self.word_top = 0
        """How far the help on the line is scrolled."""
        self.saving = 0
        self.returned: list[tuple[str, str]] = []
        """Lines that could not be saved and wait for the line to be free."""
        self.failure = ""
        self.early: list[str] = []
        """Keys pressed before the book was read, from the first on that is more than text."""
        self.unopened = ""
        """Why there is no book to show; '' when there is one."""
        self.walking = False
        """Whether the next change of the text comes from walking through older lines."""
        self._drawn: tuple[Standing | None, tuple[View, Size]] | None = None
        """What the picture was drawn from: typing alone does not draw the page again."""

    @property
    def page(self) -> Page:
        """The page looked at."""
        from journal.screens.pages import page_numbered, pages

        return page_numbered(self.view.page) or pages()[0]

    @property
    def room(self) -> Size:
        """What the page may use."""
        from journal.screens.page import Size

        return Size(self.canvas.size.width, self.canvas.size.height)

    @property
    def unsaved(self) -> list[str]:
        """Every line that was typed and not saved, the one on the line last."""
        typing = [self.line.value] if self.line.value and self.setup is None else []
        return [*(line for line, _ in self.returned), *typing]

    def keep(self) -> None:
        """Keep what was not saved for next time. Raises OSError."""
        if self.standing is not None:
            self.kept.write(self.unsaved)

    def compose(self) -> ComposeResult:
        """Three widgets; nothing is ever added."""
        yield self.canvas
        yield self.line
        yield self.foot

    def on_mount(self) -> None:
        """Paint the frame, then read the book beside it."""
        self.line.focus()
        self.canvas.show(FRAME)
        if not self.is_headless:
            for name in ("SIGTERM", "SIGHUP"):
                self._leave_at(name)
        self.call_after_refresh(lambda: self.run_worker(self._open()))

    def _leave_at(self, name: str) -> None:
        """Leave in order when told to from outside: the terminal is put back and the line kept."""
        number = getattr(signal, name, None)
        if number is not None and os.name == "posix":
            asyncio.get_running_loop().add_signal_handler(number, self._leave)

    def _leave(self) -> None:
        if self.ready:
            self.acts.do("quit")
        else:
            self.exit(0)

    async def _open(self) -> None:
        """Read the book off the screen's thread; what goes wrong ends the screen with its words."""
        (loaded,) = await asyncio.gather(asyncio.to_thread(self._load), return_exceptions=True)
        if isinstance(loaded, BaseException):
            self.unopened = str(loaded) or type(loaded).__name__
            self.exit(return_code=2)
            return
        furnish, session = loaded
        await furnish(self, session)
        self._catch_up()

    def _catch_up(self) -> None:
        """Do what was asked for while the book was read; no question is answered before it was seen."""
        early, self.early = self.early, []
        for key in early if self.setup is None else ():
            if not self.acts.answer(key) and (len(key) == 1 or key == "space"):
                low, high = sorted(self.line.selection)
                self.line.swap(low, high, " " if key == "space" else key)

    def _load(self) -> tuple[Furnish, SessionLike]:
        """Import what the first paint could do without, and open the book. Nothing made here is garbage."""
        gc.disable()
        try:
            return self.furnisher(), self.open_session()
        finally:
            gc.freeze()
            gc.enable()

    async def judge(self) -> None:
        """Fetch the standing for the day looked at and draw it."""
        result = await self.desk.standing(self.view.as_of)
        if isinstance(result, Exception):
            raise result
        self.show(result)

    def show(self, standing: Standing) -> None:
        """A new standing: the cursor stays on what it stood on, or goes."""
        under = self.picture.under
        self.standing = standing
        if under is not None and under in self.picture.targets:
            targets = self.page.draw(standing, self.view.but(row=-1), self.room).targets
            same = [at for at, target in enumerate(targets) if _what(target) == _what(under)]
            self.view = self.view.but(row=same[0] if same else -1, open=self.view.open and bool(same))
        self.changed()

    def look(self, view: View) -> None:
        """Look at something else."""
        self.view = view
        self.draw()

    def answer(self, key: str) -> bool:
        """Whether a key was used up. Until the book is read text is taken, and every other key waits for it."""
        if self.ready:
            return self.acts.answer(key)
        if key == "ctrl+q":
            self.exit(0)
        waits = (self.line.empty and key in ON_EMPTY) or (len(key) > 1 and key not in _EDITING | {"space"})
        if waits or self.early:
            self.early.append(key)
        return waits or bool(self.early)

    def pasted(self, words: str) -> None:
        """Text was pasted."""
        if self.ready:
            self.acts.pasted(words)

    def changed(self) -> None:
        """The text or its cursor changed, or the book did."""
        if not self.ready or not self.is_running:
            return
        if self.setup is None and self.standing is not None:
            text = self.line.value
            if text != self.typed.reading.text:
                self._edited(text)
            if text:
                self.typed.update(self.desk.session, text, self.line.cursor_position)
        self.draw()

    def _edited(self, text: str) -> None:
        """The text is another: what was said about the old one goes."""
        if not self.walking:
            self.recall.stop()
        self.failure = ""
        self.word_help = False
        if text:
            self.toast = EMPTY_ROW
        else:
            self.toast = A_NEW_ONE if self.typed.amends else self.toast
            self.typed.clear()

    def on_canvas_sized(self, _event: Canvas.Sized) -> None:
        """Draw for the new size."""
        self.draw()

    def on_canvas_clicked(self, event: Canvas.Clicked) -> None:
        """The mouse moves the cursor; a second click is Enter."""
        if self.ready:
            self.acts.clicked(event.x, event.y, twice=event.twice)

    def on_canvas_wheeled(self, event: Canvas.Wheeled) -> None:
        """The wheel scrolls the page."""
        if self.ready:
            self.acts.wheeled(event.way)

    def draw(self) -> None:
        """Draw what changed."""
        nothing = self.standing is None and self.setup is None
        if not self.ready or nothing or not self.is_running or not self.canvas.is_attached:
            return
        from journal.screens.drawing import draw_foot, draw_page
        from journal.screens.page import Size

        seen = self._seen()
        of = (seen.view, self.room)
        if seen.over or self._drawn is None or self._drawn[0] is not seen.standing or self._drawn[1] != of:
            self._drawn = None if seen.over else (seen.standing, of)
            self.picture = draw_page(seen, self.room)
            self.canvas.show(self.picture.rows)
        self.foot.show(draw_foot(seen, Size(self.foot.size.width, self.foot.size.height), self.room))
        self.line.adorn(
            prompt=SAVING if self.saving else FAILED if self.failure else READY,
            ghost=self.typed.completion.ghost if self.typed.taken < 0 else "",
            marked=seen.marked,
        )

    def _seen(self) -> Seen:
        from journal.screens.drawing import Seen

        return Seen(
            page=self.page,
            standing=self.standing,
            view=self.view,
            setup=self.setup,
            typed=self.typed,
            line=self.line.value,
            cursor=self.line.cursor_position,
            word_help=self.word_help,
            word_top=self.word_top,
            toast=self.toast,
            failure=self.failure,
            session=self.desk.session,
        )


def _what(target: Target) -> str:
    """What a target stands for, from one standing to the next."""
    return target.entry or target.flag or target.name or target.line
