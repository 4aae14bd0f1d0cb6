"""The numbers a rule reads: a label's or a local rule's first, then the owner's own, then the default."""

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from types import MappingProxyType

from journal.facts.citation import Basis, label, local_rule
from journal.facts.house import NUMBERS
from journal.facts.number import Number
from journal.record.lawn import Lawn
from journal.record.quantity import in_unit, plain
from journal.record.unit import UNITS, Dimension, unit_for
from journal.rules.flag import NumberUsed

HOUSE: Mapping[tuple[str, str], Number] = MappingProxyType({(one.rule, one.name): one for one in NUMBERS})

FAR_MM = 2540.0
"""From here on a length is a distance: feet and metres."""

LABEL, LOCAL, YOURS, DEFAULT = "label", "local rule", "yours", "default"


def in_words(value: float, unit: str, system: str) -> str:
    """`10 d`, `3.5 in`: three digits at most, in the units of the book."""
    dimension = Dimension(unit)
    shown = unit_for(dimension, system)
    if dimension is Dimension.LENGTH and value >= FAR_MM:
        shown = UNITS["ft" if system == "us" else "m"]
    number = plain(in_unit(value, shown), 3)
    name = {"floz/k": "fl oz/k", "sqft": "sq ft", "x": ""}.get(shown.name, shown.name)
    return f"{number} {name}".strip()


@dataclass(slots=True)
class Numbers:
    """What one rule may read on one lawn. It remembers each number it gave out and where that came from.

    Values are in the unit of the house number (d, mm, g/m2, C, %, times). Raises LookupError for a name that the
    rule does not have.
    """

    rule: str
    lawn: Lawn
    _read: dict[str, tuple[float, str, str, Basis]] = field(default_factory=dict)

    def __getitem__(self, name: str) -> float:
        return self.stricter(name)

    def days(self, name: str) -> int:
        """A number of days, rounded up."""
        return math.ceil(self[name])

    def stricter(
        self,
        name: str,
        *,
        of_label: float | None = None,
        of_local: float | None = None,
        strictest: Callable[[float, float], float] = max,
    ) -> float:
        """The label's number or the local rule's, the stricter of both; else the owner's; else the default."""
        house = HOUSE.get((self.rule, name))
        if house is None:
            known = ", ".join(n for r, n in HOUSE if r == self.rule) or "none"
            raise LookupError(f"{self.rule} has no number {name}; it has {known}.")
        value, origin, basis = _spoken(self.lawn, house, of_label, of_local, strictest)
        self._read[name] = (value, house.unit, origin, basis)
        return value

    def tightest(self, name: str, of_label: float | None = None) -> float:
        """The most that does no harm: the label's number or the default; the owner's only where it is lower."""
        house = HOUSE[self.rule, name]
        value, origin, basis = house.default, DEFAULT, house.basis
        if of_label is not None:
            value, origin, basis = of_label, LABEL, label()
        own = self.lawn.numbers.get((self.rule, name))
        if own is not None and own < value:
            value, origin = own, YOURS
        self._read[name] = (value, house.unit, origin, basis)
        return value

    def tell(self, name: str, value: float, unit: str, origin: str, basis: Basis) -> None:
        """Remember a number that is no house number, such as a label's wait."""
        self._read[name] = (value, unit, origin, basis)

    def used(self, *names: str) -> Mapping[str, NumberUsed]:
        """Those of that name that were read, or all that were."""
        return MappingProxyType(
            {
                name: NumberUsed(name, in_words(value, unit, self.lawn.units), origin)
                for name, (value, unit, origin, _) in self._read.items()
                if not names or name in names
            }
        )

    def bases(self, *names: str) -> tuple[Basis, ...]:
        """How those numbers are known; the owner's own need no basis."""
        return tuple(
            basis
            for name, (_, _, origin, basis) in self._read.items()
            if origin != YOURS and (not names or name in names)
        )


def _spoken(
    lawn: Lawn,
    house: Number,
    of_label: float | None,
    of_local: float | None,
    strictest: Callable[[float, float], float],
) -> tuple[float, str, Basis]:
    if of_label is None and of_local is None:
        own = lawn.numbers.get((house.rule, house.name))
        return (house.default, DEFAULT, house.basis) if own is None else (own, YOURS, house.basis)
    binding = [(v, o, b) for v, o, b in ((of_label, LABEL, label()), (of_local, LOCAL, local_rule())) if v is not None]
    value = binding[0][0] if len(binding) == 1 else strictest(binding[0][0], binding[1][0])
    origin, basis = next((o, b) for v, o, b in binding if v == value)
    return float(value), origin, basis
