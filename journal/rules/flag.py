"""What a rule raises."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from journal.facts.citation import Basis


class Level(StrEnum):
    """How bad, by consequence."""

    HARM = "harm"
    LOSS = "loss"
    LATE = "late"
    NOTE = "note"

    @property
    def gravity(self) -> int:
        """0 for a note to 3 for harm: sort by this, gravest last."""
        return ("note", "late", "loss", "harm").index(self.value)


@dataclass(frozen=True, slots=True)
class NumberUsed:
    """A threshold that spoke: its value in words with the unit, and where it came from."""

    name: str
    words: str
    origin: str
    """`label`, `local rule`, `yours` (the owner's own) or `default`."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Flag:
    """One warning on one date. `id` is rule/zones/subject and never holds a date.

    `rose` is the first day of this flag; `clears` says in words what ends it, `clears_on` the day if one is known.
    `evidence` lists the ids of the entries it rests on; a draft not yet saved has the id ''.
    """

    id: str
    rule: str
    level: Level
    zones: tuple[str, ...]
    subject: str = ""
    rose: date
    cleared: date | None = None
    headline: str
    why: str
    do: str
    clears: str
    clears_on: date | None = None
    evidence: tuple[str, ...] = ()
    numbers: Mapping[str, NumberUsed]
    basis: tuple[Basis, ...]
    hidden: str = ""
    """Why it is out of sight (snoozed until, or the owner's reason); '' when it shows."""
