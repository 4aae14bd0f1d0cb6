"""One threshold that an owner can change."""

from dataclasses import dataclass

from journal.facts.citation import Basis


@dataclass(frozen=True, slots=True)
class Number:
    """One threshold of one rule; `low` and `high` are the least and the most an owner may set, both allowed."""

    rule: str
    name: str
    default: float
    unit: str
    low: float
    high: float
    basis: Basis
    words: str

    def allows(self, value: float) -> bool:
        """True when an owner may set it to `value`, given in its unit."""
        return self.low <= value <= self.high
