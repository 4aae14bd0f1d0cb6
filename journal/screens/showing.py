"""The book on the screen for the first time, with the lines left from last time."""

from __future__ import annotations

from typing import TYPE_CHECKING

from journal.screens.newest import written_lines
from journal.screens.picture import Ink, Span

if TYPE_CHECKING:
    from journal.screens.shell import Shell

_RECALLED = 300


async def show_book(shell: Shell) -> None:
    """There is a book: show it, and the lines left from last time."""
    session = shell.desk.session
    shell.view = shell.view.but(read_only=bool(session.read_only))
    await shell.judge()
    shell.recall.fill(written_lines(session.history, _RECALLED))
    left = shell.kept.read()
    if left and shell.line.empty:
        shell.line.put(left.pop())
    for line in left:
        shell.recall.add(line)
    if session.read_only:
        shell.acts.say((Span("! ", Ink.LOSS), Span(session.read_only)))
    shell.changed()
