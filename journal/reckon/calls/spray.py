"""A liquid product in water, by the tank."""

from dataclasses import dataclass

from journal.facts.calibration import TANK_BASIS
from journal.facts.safety import SENTENCES
from journal.reckon.answer import Answer, figure
from journal.reckon.asking import LAWN, TANK, up_to
from journal.reckon.declare import reckoning
from journal.reckon.spraying import Mix, mix
from journal.record.quantity import in_unit
from journal.record.refusal import Refusal
from journal.record.term import asked
from journal.record.unit import UNITS, Dimension

_MOST_TANKS = 10_000


@reckoning(
    "spray",
    "product and water for an area, and product for each tank",
    "spray --rate 1.5floz/k --area 5000sqft --carrier 1gal/k --tank 4gal",
    explains={
        "rate": "of the product, from its label",
        "carrier": "spray that your sprayer puts out; calibrate-sprayer finds it",
        "tank": "what the tank holds when full",
    },
)
@dataclass(frozen=True, slots=True, kw_only=True)
class Spray:
    """Rates in mL/m2, area in m2, tank in mL."""

    rate: float = asked("rate", up_to("20gal/k", Dimension.VOLUME_RATE), "1.5floz/k")
    area: float = asked("area", up_to(LAWN, Dimension.AREA), "5000sqft")
    carrier: float = asked("carrier", up_to("100gal/k", Dimension.VOLUME_RATE), "1gal/k")
    tank: float = asked("tank", up_to(TANK, Dimension.VOLUME), "4gal")

    def answer(self) -> Answer:
        """Product and spray in all, tanks, product in a full tank."""
        if self.rate > self.carrier:
            raise Refusal("--rate", "more product than spray: the --carrier is product and water together.")
        found = mix(self.rate, self.area, self.carrier, self.tank)
        if found.tanks > _MOST_TANKS:
            raise Refusal("--tank", "far too small for this area.")
        return Answer(
            (
                figure("product_floz", "product in all", found.product_ml, "floz"),
                figure("water_gal", "spray in all", found.spray_ml, "gal"),
                figure("tanks", "tanks", found.tanks),
                figure("product_floz_per_tank", "product in a full tank", found.per_tank_ml, "floz"),
            ),
            (
                *self._tanks(found),
                "Spray is product and water together. Half fill the tank with water, add the product, then fill up "
                f"to the mark: {TANK_BASIS.words()}.",
                "The label's own rate and amount of water go first, and its yearly limit.",
                *SENTENCES,
            ),
        )

    def _tanks(self, found: Mix) -> tuple[str, ...]:
        """What goes into a last tank that is not filled."""
        if found.last_share == 1.0:
            return ()
        spray, product = found.last_share * self.tank, found.last_share * found.per_tank_ml
        last = f"{_volume(spray, 'gal', 'l')} of spray with {_volume(product, 'floz', 'ml')} of product"
        if not found.full_tanks:
            return (f"Less than one tank is needed: mix {last}.",)
        return (f"Tanks filled to the mark: {found.full_tanks}. The last one: {last}.",)


def _volume(ml: float, us: str, metric: str) -> str:
    name = us.replace("floz", "fl oz")
    return f"{in_unit(ml, UNITS[us]):.3g} {name} ({in_unit(ml, UNITS[metric]):.3g} {metric})"
