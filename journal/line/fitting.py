"""One line being fitted to the slots of its kind: what has been understood so far."""

from dataclasses import dataclass, field
from datetime import date
from typing import Any

from journal.line.reading import Span
from journal.line.token import Token
from journal.line.when import Lean, Phrase, Reckoning
from journal.record.entry import Entry, slots
from journal.record.lawn import Lawn
from journal.record.refusal import Refusal
from journal.record.slot import Role, Slot, is_said

DOSE = ("product", "amount_g", "amount_ml", "rate_g_per_m2", "rate_ml_per_m2")


@dataclass(slots=True)
class Fitting:
    """One line being fitted: what has been understood so far. Lives only while a line is read.

    `old` is the entry that the line replaces: its zones and products can be named even when they are gone.
    """

    kind: type[Entry]
    tokens: tuple[Token, ...]
    lawn: Lawn
    today: date
    rules: tuple[str, ...]
    phrase: Phrase | None
    old: Entry | None = None
    values: dict[str, Any] = field(default_factory=dict)
    groups: list[dict[str, Any]] = field(default_factory=list)
    zones: list[str] = field(default_factory=list)
    spans: list[Span] = field(default_factory=list)
    bags: tuple[float, Token] | None = None
    cups: tuple[float, Token] | None = None
    ounces: tuple[str, Token] | None = None
    places: dict[str, Span] = field(default_factory=dict)
    at: int = 1

    @property
    def slots(self) -> dict[str, Slot]:
        """The kind's own slots."""
        return slots(self.kind)

    @property
    def zone_names(self) -> tuple[str, ...]:
        """The zones that can be named."""
        more = self.old.zones if self.old else ()
        return (*self.lawn.zone_names, *(zone for zone in more if zone not in self.lawn.zone_names))

    @property
    def target(self) -> str:
        """The field that the first date of the line fills, or ''."""
        return next((name for name, slot in self.slots.items() if slot.role is Role.DAY and not slot.keyword), "")

    def dates(self, lean: Lean = Lean.BACK, base: date | None = None) -> Reckoning:
        """How dates are understood on this line."""
        return Reckoning(self.today, self.lawn.units == "us", self.phrase, lean, base)

    def put(self, name: str, value: Any, token: Token, role: str, used: int = 1) -> int:
        """Keep a value; a second one for the same field is refused. Returns the words used."""
        if is_said(self.values.get(name)):
            raise Refusal(token.text, f"{name.split('_')[0]} has been said already.")
        self.values[name] = value
        self.mark(role, used)
        self.places[name] = self.spans[-1]
        return used

    def mark(self, role: str, used: int = 1) -> None:
        """Note what the next words were taken for."""
        last = self.tokens[min(self.at + used, len(self.tokens)) - 1]
        self.spans.append(Span(self.tokens[self.at].start, last.end, role))

    def after(self, steps: int = 1) -> Token | None:
        """A word further on, or None."""
        return self.tokens[self.at + steps] if self.at + steps < len(self.tokens) else None

    def needed(self, token: Token, what: str) -> Token:
        """The next word. Raises Refusal when the line ends."""
        after = self.after()
        if after is None:
            raise Refusal(token.text, f"{what} is wanted after it.")
        return after
