"""From the first paint to the page: what the shell needs once there is a session."""

from __future__ import annotations

import os
from typing import TYPE_CHECKING

from journal.screens.acts import Acts
from journal.screens.desk import Desk
from journal.screens.newest import written_lines
from journal.screens.picture import Ink, Span
from journal.screens.session_like import SessionLike
from journal.screens.setup import Setup, guess_units
from journal.screens.typed import Typed

if TYPE_CHECKING:
    from journal.screens.shell import Shell

LOOK_EVERY = 1.0
"""Seconds between looks at the clock and at what other terminals wrote."""

_RECALLED = 300


async def furnish(shell: Shell, session: SessionLike) -> None:
    """Give the shell what it works with, and show the book, or the questions that make one."""
    shell.acts, shell.desk, shell.typed, shell.ready = Acts(shell), Desk(session), Typed(), True
    shell.view = shell.view.but(as_of=session.today, today=session.today)
    if session.exists:
        await show_book(shell)
    else:
        shell.setup = Setup(guess_units(os.environ))
        shell.draw()
    shell.set_interval(LOOK_EVERY, shell.acts.look_around)


async def show_book(shell: Shell) -> None:
    """There is a book: show it, and the lines left from last time."""
    await shell.judge()
    session = shell.desk.session
    shell.recall.fill(written_lines(session.history, _RECALLED))
    left = shell.kept.read()
    if left and shell.line.empty:
        shell.line.put(left.pop())
    for line in left:
        shell.recall.add(line)
    if session.read_only:
        shell.acts.say((Span("! ", Ink.LOSS), Span(session.read_only)))
    shell.changed()
