"""What a reckoning answers: figures by name, and what has to be said with them."""

from dataclasses import dataclass
from fractions import Fraction

from journal.record.quantity import in_unit
from journal.record.unit import POUND, UNITS, Dimension, Unit

SIGNIFICANT = 12
"""Digits that are given: what lies behind them is the noise of binary fractions."""

PRICES = {
    "$/lb": Unit("$/lb", Dimension.MONEY, 1 / POUND),
    "$/kg": Unit("$/kg", Dimension.MONEY, Fraction(1, 1000)),
}
"""Money for a weight; kept by the gram. Nobody types these, so the line does not know them."""


@dataclass(frozen=True, slots=True)
class Figure:
    """One figure. `key` names its unit at the end, `value` is in the base unit of `unit` (a bare number without one).

    `value` None is a figure that can't be given; `notes` of the answer say why. Figures after one another that say
    the same are one thing in several units.
    """

    key: str
    says: str
    value: float | None
    unit: Unit | None = None

    @property
    def number(self) -> float | int | None:
        """The value in the unit that the key names; whole numbers without a fraction."""
        if self.value is None or isinstance(self.value, int):
            return self.value
        exact = self.value if self.unit is None else in_unit(self.value, self.unit)
        return float(f"{exact:.{SIGNIFICANT}g}")


@dataclass(frozen=True, slots=True)
class Answer:
    """Figures in reading order; `notes` are sentences: what was assumed, on whose authority, what to mind."""

    figures: tuple[Figure, ...]
    notes: tuple[str, ...] = ()

    def as_json(self) -> dict[str, float | int | None]:
        """The figures by key."""
        return {figure.key: figure.number for figure in self.figures}


def figure(key: str, says: str, value: float | None, unit: str = "") -> Figure:
    """A figure in a unit named as the line spells it (`lb/k`, `sqft`, `mm`), `$/lb` too; '' for a bare number."""
    return Figure(key, says, value, (UNITS.get(unit) or PRICES[unit]) if unit else None)
