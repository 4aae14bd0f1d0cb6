"""Lime in doses that grass bears."""

from dataclasses import dataclass

from journal.facts.liming import DOSE, DOSE_BASIS, FULL_STRENGTH, LARGE_DOSE, LARGE_DOSE_BASIS, STRENGTH_BASIS
from journal.facts.rounding import exceeds
from journal.reckon.answer import Answer, figure
from journal.reckon.asking import LAWN, up_to
from journal.reckon.declare import reckoning
from journal.reckon.liming import doses
from journal.record.refusal import Refusal
from journal.record.term import asked, number, term
from journal.record.unit import Dimension

_MOST_DOSES = 40


@reckoning(
    "lime",
    "lime in doses that grass bears",
    "lime --need 110lb/k --max 50lb/k --cce 80 --area 5000sqft",
    explains={
        "need": "from the soil test",
        "max": "in one dose (50lb/k)",
        "cce": "calcium carbonate equivalent in percent, from the bag (100)",
    },
)
@dataclass(frozen=True, slots=True, kw_only=True)
class Lime:
    """Need and the most of a dose in g/m2, strength in percent, area in m2."""

    need: float = asked("need", up_to("2000lb/k", Dimension.MASS_RATE), "110lb/k")
    area: float = asked("area", up_to(LAWN, Dimension.AREA), "5000sqft")
    max: float = term("max", up_to("500lb/k", Dimension.MASS_RATE), "50lb/k", DOSE)
    cce: float = term("cce", number(10, 180), "80", FULL_STRENGTH)

    def answer(self) -> Answer:
        """How many doses, how much in each, how much in all."""
        found = doses(self.need, self.max, self.cce)
        if found.count > _MOST_DOSES:
            raise Refusal("--max", f"far too little at once: that would be {found.count} doses.")
        return Answer(
            (
                figure("doses", "doses", found.count),
                figure("lb_per_dose_per_1000sqft", "in each", found.each_g_per_m2, "lb/k"),
                figure("total_lb", "lime in all", found.all_g_per_m2 * self.area, "lb"),
            ),
            self._notes(),
        )

    def _notes(self) -> tuple[str, ...]:
        strength = (
            "Taken as pure calcium carbonate; the bag tells its own equivalent (--cce)"
            if self.cce == FULL_STRENGTH
            else f"Weighed by its strength, need x 100 / {self.cce:g} %"
        )
        found = (
            f"In one dose 50 lb/k (244 g/m2) at most: {DOSE_BASIS.words()}. "
            f"Others allow 100 lb/k (488 g/m2): {LARGE_DOSE_BASIS.words()}.",
            f"{strength}: {STRENGTH_BASIS.words()}.",
            "No dose is above the most, neither by the weight of the lime nor by that of the carbonate it stands for: "
            "judgment.",
            "The need comes from a soil test that tells the acidity held in the soil; pH alone does not. "
            "The label's own rate goes first.",
        )
        if exceeds(self.max, LARGE_DOSE):
            return ("So much at once is more than any publication seen here allows.", *found)
        return found
