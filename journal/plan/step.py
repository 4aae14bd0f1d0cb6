"""One piece of the plan."""

from dataclasses import dataclass
from datetime import date
from enum import StrEnum


class State(StrEnum):
    """Where a step stands on one date."""

    WAITING = "waiting"
    OPEN = "open"
    LATE = "late"
    DONE = "done"
    MISSED = "missed"
    BARRED = "barred"


_ORDER = (State.LATE, State.OPEN, State.WAITING, State.BARRED, State.MISSED, State.DONE)


def urgency(state: State, latest: date | None, earliest: date | None) -> tuple[int, date]:
    """What comes first in the plan: by state, then by the last day, or by the first where there is no last."""
    return _ORDER.index(state), latest or earliest or date.max


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """Something to do, when, how much, and the line that logs it.

    `title` is two or three words for the page (`mow`, `starter`), `why` half a sentence, `amount` words for how much
    ('' when none), `waits_for` what keeps it closed ('' when nothing). Dates are None where they can't be known.
    """

    step: str
    zones: tuple[str, ...]
    state: State
    earliest: date | None
    best: tuple[date, date] | None = None
    latest: date | None = None
    amount: str = ""
    line: str = ""
    title: str = ""
    why: str = ""
    waits_for: str = ""
    meant: date | None = None
    """The day the owner means to do it, where he said so."""
