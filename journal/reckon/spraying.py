"""A product in water: how much of each, and how many tanks. Volumes in mL, rates in mL/m2, area in m2.

Product in a tank is the label's rate times the ground that a tank covers: definition.
"""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Mix:
    """`spray_ml` is product and water together; `per_tank_ml` is the product in a full tank."""

    product_ml: float
    spray_ml: float
    tanks: float
    per_tank_ml: float

    @property
    def last_share(self) -> float:
        """How full the last tank is, above 0 to 1."""
        part = self.tanks % 1
        return 1.0 if min(part, 1 - part) < _ROUNDING else part

    @property
    def full_tanks(self) -> int:
        """Tanks that are filled to the mark."""
        return int(self.tanks + _ROUNDING)


_ROUNDING = 1e-9


def mix(rate_ml_per_m2: float, area_m2: float, carrier_ml_per_m2: float, tank_ml: float) -> Mix:
    """A label's rate in so much spray per m2, from a tank of that size."""
    spray = carrier_ml_per_m2 * area_m2
    return Mix(
        product_ml=rate_ml_per_m2 * area_m2,
        spray_ml=spray,
        tanks=spray / tank_ml,
        per_tank_ml=rate_ml_per_m2 * tank_ml / carrier_ml_per_m2,
    )
