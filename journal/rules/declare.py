"""How a rule declares itself, and what it finds."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from datetime import date

from journal.facts.citation import Basis
from journal.facts.house import numbers as house_numbers
from journal.facts.number import Number
from journal.record.entry import Entry
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import Turn
from journal.season.history import Past


@dataclass(frozen=True, slots=True, kw_only=True)
class Finding:
    """What a rule says of one zone on one day. `numbers` names those that decided (none named: all that were read)."""

    level: Level
    headline: str
    why: str
    do: str
    clears: str
    subject: str = ""
    clears_on: date | None = None
    evidence: tuple[str, ...] = ()
    numbers: tuple[str, ...] = ()
    basis: tuple[Basis, ...] = ()


Found = Finding | tuple[Finding, ...] | None
Predicate = Callable[[Past, Numbers], Found]


@dataclass(frozen=True, slots=True)
class Rule:
    """A predicate on one zone and one day, and all that can be known of it without calling it.

    `watches` are the kinds of entry it may look at, `turns` the days on which its answer can change. A rule of the
    `whole_lawn` looks at other zones too.
    """

    id: str
    says: str
    levels: tuple[Level, ...]
    watches: frozenset[str]
    turns: tuple[Turn, ...]
    numbers: tuple[Number, ...]
    basis: tuple[Basis, ...]
    whole_lawn: bool
    predicate: Predicate

    @property
    def can_be_off(self) -> bool:
        """Whether an owner may switch it off: not where it warns of harm or loss."""
        return not {Level.HARM, Level.LOSS} & {*self.levels}

    def find(self, past: Past, numbers: Numbers) -> tuple[Finding, ...]:
        """What it finds on that day, in a tuple. Raises ValueError for a level that was not declared."""
        found = self.predicate(past, numbers)
        findings = () if found is None else (found,) if isinstance(found, Finding) else found
        for finding in findings:
            if finding.level not in self.levels:
                raise ValueError(f"{self.id} declares no level {finding.level}.")
        return findings


RULES: dict[str, Rule] = {}
"""Every rule that was declared, by id."""


def rule(
    id: str,
    *,
    levels: Iterable[Level],
    watches: Iterable[type[Entry]],
    turns: Iterable[Turn],
    basis: Iterable[Basis],
    whole_lawn: bool = False,
) -> Callable[[Predicate], Predicate]:
    """Declare a rule. Its house numbers are those of the same id; its first line of docstring says what it is about.

    Raises ValueError for a second one of that id, and for one that says nothing of itself.
    """

    def declare(predicate: Predicate) -> Predicate:
        if id in RULES:
            raise ValueError(f"two rules are called {id}.")
        says = (predicate.__doc__ or "").strip().partition("\n")[0]
        if not says:
            raise ValueError(f"{id} does not say what it is about.")
        kinds = frozenset(kind.kind for kind in watches)
        RULES[id] = Rule(
            id, says, tuple(levels), kinds, tuple(turns), house_numbers(id), tuple(basis), whole_lawn, predicate
        )
        return predicate

    return declare
