"""From arguments to a command, and from trouble to a message and an exit code."""

import os
import sys
from argparse import Namespace
from collections.abc import Callable, Sequence
from datetime import date

from journal.cli import judging, recording, starting
from journal.cli.arguments import parse
from journal.cli.out import trouble
from journal.record.day import parse_day
from journal.record.refusal import Refusal
from journal.session.clock import Clock
from journal.session.place import book_folder, state_folder
from journal.session.session import Session
from journal.store.change import NotABook, NotSaved
from journal.store.stamp import computer_name

Command = Callable[[Session, Namespace], int]

COMMANDS: dict[str, Command] = {
    "log": recording.log,
    "set": recording.set_fact,
    "undo": recording.undo,
    "redo": recording.redo,
    "amend": recording.amend,
    "strike": recording.strike,
    "list": recording.listing,
    "flags": judging.flags,
    "due": judging.due,
    "rules": judging.rules,
    "check": recording.check,
}
"""Commands on an open book."""


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command; returns its exit code."""
    given = parse(sys.argv[1:] if arguments is None else arguments)
    try:
        clock = Clock(given.today or _today_of_environment())
        session = Session(book_folder(given.book), computer_name(state_folder()), clock)
        match given.command:
            case None:
                return starting.open_journal(session)
            case "setup":
                return starting.setup(session, given)
            case "demo":
                return starting.demo(given, clock)
            case name:
                return COMMANDS[name](session.open(), given)
    except (NotABook, NotSaved, Refusal) as error:
        return trouble(str(error))
    except BrokenPipeError:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0


def _today_of_environment() -> date | None:
    text = os.environ.get("SWARDBOOK_TODAY")
    return parse_day(text) if text else None
