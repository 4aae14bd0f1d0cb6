"""An entry: one dated thing that was done or seen, and how its kinds declare themselves."""

import dataclasses
import datetime as dt
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, ClassVar, TypeVar

from journal.record.slot import Slot


@dataclass(frozen=True, slots=True)
class Verb:
    """A first word of the line. `pin` is its fixed one-letter form, `bare` lets it stand alone abbreviated."""

    name: str
    says: str
    example: str
    pin: str = ""
    bare: bool = False
    what: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Entry:
    """What every kind has. Values are metric; '' and None mean not said.

    `assumed` names the fields that were filled with the usual, `line` is what was typed, `about` marks a date the
    owner was not sure of, `confirmed` that a grave warning was seen and answered with `!`.
    """

    kind: ClassVar[str] = ""
    verbs: ClassVar[tuple[Verb, ...]] = ()
    lawnwide: ClassVar[bool] = False
    applies: ClassVar[bool] = False
    everywhere: ClassVar[bool] = False

    id: str = ""
    date: dt.date
    time: dt.time | None = None
    about: bool = False
    zones: tuple[str, ...] = ()
    share: float | None = None
    part: str = ""
    spot_m2: float | None = None
    spot: bool = False
    by_service: bool = False
    cost: float | None = None
    remark: str = ""
    confirmed: bool = False
    assumed: tuple[str, ...] = ()
    line: str = ""

    @property
    def day(self) -> int:
        """The date as a proleptic ordinal: arithmetic on days is arithmetic on integers."""
        return self.date.toordinal()

    @classmethod
    def settle(cls, values: dict[str, Any]) -> None:
        """Look once over the fields that were read (the date among them), put them in order, or raise Refusal."""


E = TypeVar("E", bound=Entry)

KINDS: dict[str, type[Entry]] = {}
VERBS: dict[str, tuple[Verb, type[Entry]]] = {}


def entry_kind(
    name: str, *verbs: Verb, lawnwide: bool = False, applies: bool = False, everywhere: bool = False
) -> Callable[[type[E]], type[E]]:
    """Declare a kind of entry and the verbs that write it.

    When the line names no zone, a `lawnwide` kind has none, an `everywhere` kind takes all, any other the zones of
    its last entry. `applies` kinds put a product down.
    """

    def declare(cls: type[E]) -> type[E]:
        cls.kind, cls.verbs, cls.lawnwide, cls.applies = name, verbs, lawnwide, applies
        cls.everywhere = everywhere
        if name in KINDS:
            raise ValueError(f"two kinds of entry are called {name}")
        KINDS[name] = cls
        for verb in verbs:
            if verb.name in VERBS:
                raise ValueError(f"two kinds of entry use the verb {verb.name}")
            VERBS[verb.name] = (verb, cls)
        return cls

    return declare


_SLOTS: dict[str, dict[str, Slot]] = {}


def slots(cls: type[Entry]) -> dict[str, Slot]:
    """The declared slots of a kind by field name, in order of declaration."""
    found = _SLOTS.get(cls.kind)
    if found is None:
        found = {f.name: f.metadata["slot"] for f in dataclasses.fields(cls) if "slot" in f.metadata}
        _SLOTS[cls.kind] = found
    return found


def pins() -> dict[str, str]:
    """Pinned letter -> verb."""
    return {verb.pin: verb.name for verb, _ in VERBS.values() if verb.pin}
