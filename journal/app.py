"""Opens the screen on a book."""

import gc
import os
import sys
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from journal.screens.ink import choose
from journal.screens.kept import Kept, kept_for
from journal.screens.shell import Shell
from journal.store.change import NotABook

if TYPE_CHECKING:
    from textual.driver import Driver

    from journal.screens.session_like import SessionLike
    from journal.screens.shell import Furnish
    from journal.session.session import Session


def run(make_session: "Callable[[], Session]", folder: Path, state: Path) -> int:
    """Show the session's book until the user leaves; with questions first where there is none.

    `make_session` is called once, behind the first paint. `folder` is the book's, `state` the one for lines left
    unsaved. Returns the exit code: 0, or 2 when the book could not be opened, with the reason on standard error.
    """
    made: list[Session] = []

    def opened() -> "Session":
        session = make_session()
        made.append(session)
        gc.disable()  # what is read stays: looking for garbage among it only costs time
        try:
            return session.open()
        except NotABook:
            if any(folder.glob("*")):
                raise
            return session
        finally:
            gc.freeze()
            gc.enable()

    try:
        return show(opened, kept_for(folder, state))
    finally:
        for session in made:
            session.close()


def show(open_session: "Callable[[], SessionLike]", kept: Kept) -> int:
    """Show what `open_session` opens; it is called once, off the screen's thread."""
    shell = Shell(open_session, furnisher, choose(os.environ), kept, _driver())
    try:
        shell.run()
    finally:
        _keep(shell)
    if shell.unopened:
        sys.stderr.write(f"{shell.unopened}\n")
        return 2
    return shell.return_code or 0


def furnisher() -> "Furnish":
    """What the first paint does without; it is loaded behind it."""
    from journal.screens.opening import furnish

    return furnish


def _keep(shell: Shell) -> None:
    """Keep what was typed and not saved; where that fails, the words at least stay on the terminal."""
    try:
        shell.keep()
    except OSError as error:
        lines = "\n".join(shell.unsaved)
        sys.stderr.write(f"What was not saved could not be kept for next time ({error}):\n{lines}\n")


def _driver() -> "type[Driver] | None":
    """The quick terminal driver where there is one."""
    if sys.platform == "win32":
        return None
    from journal.screens.quick_driver import QuickDriver, hasten

    hasten()
    return QuickDriver
