"""Everything that writes, one after another, off the screen's thread. What fails comes back as words."""

import asyncio
from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from typing import TypeVar

from journal.line.reading import Reading
from journal.record.entry import Entry
from journal.rules.flag import Flag, Level
from journal.screens.session_like import SessionLike
from journal.standing import Standing

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Done:
    """What was done, in words; or why not. `raised` and `cleared` name rules."""

    said: str = ""
    error: str = ""
    raised: tuple[Flag, ...] = ()
    cleared: tuple[Flag, ...] = ()

    @property
    def flags_said(self) -> str:
        """`raises feed-dose`, `clears mow-gap`; notes stay unsaid."""
        raised = dict.fromkeys(flag.rule for flag in self.raised if flag.level is not Level.NOTE)
        cleared = dict.fromkeys(flag.rule for flag in self.cleared)
        parts = [f"raises {', '.join(raised)}"] if raised else []
        parts += [f"clears {', '.join(cleared)}"] if cleared else []
        return "; ".join(parts)


class Desk:
    """One book, one change at a time."""

    def __init__(self, session: SessionLike) -> None:
        self.session = session
        self._turn = asyncio.Lock()

    @property
    def busy(self) -> bool:
        """Whether something is being written."""
        return self._turn.locked()

    async def save(self, reading: Reading) -> Done:
        """Write the draft down; one that has an id takes that entry's place."""
        result = await self._do(lambda: self.session.save(reading))
        if isinstance(result, Exception):
            return Done(error=_why(result))
        return Done(result.said, "", result.raised, result.cleared)

    async def strike(self, id: str) -> Done:
        """Take an entry out."""
        return _told(await self._do(lambda: self.session.strike(id)))

    async def undo(self) -> Done:
        """Take back the newest change."""
        return _told(await self._do(self.session.undo))

    async def redo(self) -> Done:
        """Do it again."""
        return _told(await self._do(self.session.redo))

    async def set_up(self, settings: tuple[Entry, ...]) -> Done:
        """Make the book."""
        result = await self._do(lambda: self.session.set_up(settings))
        return Done(error=_why(result)) if isinstance(result, Exception) else Done(said="the book is made")

    async def refresh(self) -> bool | Exception:
        """Take in what others wrote."""
        return await self._do(self.session.refresh)

    async def standing(self, as_of: date) -> Standing | Exception:
        """Judge that date."""
        return await self._do(lambda: self.session.standing(as_of))

    async def rest(self) -> None:
        """Wait until nothing is being written."""
        async with self._turn:
            return

    async def _do(self, call: Callable[[], T]) -> T | Exception:
        """The call's result, or the error it ended in."""
        async with self._turn:
            (result,) = await asyncio.gather(asyncio.to_thread(call), return_exceptions=True)
        if isinstance(result, BaseException) and not isinstance(result, Exception):
            raise result
        return result


def _told(result: str | Exception) -> Done:
    return Done(error=_why(result)) if isinstance(result, Exception) else Done(result)


def _why(error: Exception) -> str:
    """The error's own words; the class is named where it has none."""
    return str(error) or type(error).__name__
