"""From the first paint to the page: what the shell needs once there is a session."""

from __future__ import annotations

import os
from typing import TYPE_CHECKING

from journal.screens.acts import Acts
from journal.screens.desk import Desk
from journal.screens.session_like import SessionLike
from journal.screens.setup import Setup, guess_units
from journal.screens.showing import show_book
from journal.screens.typed import Typed

if TYPE_CHECKING:
    from journal.screens.shell import Shell

LOOK_EVERY = 1.0
"""Seconds between looks at the clock and at what other terminals wrote."""


async def furnish(shell: Shell, session: SessionLike) -> None:
    """Give the shell what it works with, and show the book, or the questions that make one."""
    acts = Acts(shell)
    shell.acts, shell.desk, shell.typed, shell.ready = acts, Desk(session), Typed(), True
    shell.view = shell.view.but(as_of=session.today, today=session.today)
    if session.exists:
        await show_book(shell)
    else:
        shell.setup = Setup(guess_units(os.environ))
        shell.draw()
    shell.set_interval(LOOK_EVERY, acts.look_around)
