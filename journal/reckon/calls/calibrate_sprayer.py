"""What a sprayer puts out at the owner's own pace."""

from dataclasses import dataclass

from journal.facts.calibration import PLOT_BASIS
from journal.facts.safety import LABEL
from journal.reckon.answer import Answer, figure
from journal.reckon.asking import LAWN, TANK, up_to
from journal.reckon.calibration import output_per_m2
from journal.reckon.declare import reckoning
from journal.record.refusal import Refusal
from journal.record.term import asked
from journal.record.unit import Dimension

_MOST = "100gal/k"
_TOO_MUCH = up_to(_MOST, Dimension.VOLUME_RATE)(_MOST)


@reckoning(
    "calibrate-sprayer",
    "what a sprayer puts out at your own pace",
    "calibrate-sprayer --caught 40floz --area 340sqft",
    explains={
        "caught": "plain water, caught for the seconds that the plot took",
        "area": "of the plot",
    },
)
@dataclass(frozen=True, slots=True, kw_only=True)
class CalibrateSprayer:
    """Caught in mL, area in m2."""

    caught: float = asked("caught", up_to(TANK, Dimension.VOLUME), "40floz")
    area: float = asked("area", up_to(LAWN, Dimension.AREA), "340sqft")

    def answer(self) -> Answer:
        """The output an acre and per 1,000 sq ft."""
        rate = output_per_m2(self.caught, self.area)
        if rate > _TOO_MUCH:
            raise Refusal("--caught", f"far too much for so small a plot: more than {_MOST}.")
        return Answer(
            (
                figure("gal_per_acre", "output an acre", rate, "gal/acre"),
                figure("gal_per_1000sqft", "output", rate, "gal/k"),
            ),
            (
                "Calibrate with plain water. Spray the plot, count the seconds, catch as many seconds' worth.",
                "On 340 sq ft (31.6 m2), 1/128 of an acre, the fluid ounces caught are gallons an acre: "
                f"{PLOT_BASIS.words()}.",
                f"The label's own amount of water goes first. {LABEL}",
            ),
        )
