"""What a spreader puts out at its setting."""

from dataclasses import dataclass

from journal.facts.calibration import AGAIN_BASIS, OFF_BASIS, OFF_PERCENT
from journal.facts.safety import LABEL
from journal.reckon.answer import Answer, figure
from journal.reckon.asking import BIN, LAWN, up_to
from journal.reckon.calibration import off_percent, output_per_m2
from journal.reckon.declare import reckoning
from journal.record.refusal import Refusal
from journal.record.term import asked, term
from journal.record.unit import Dimension

_MOST = "1000lb/k"


@reckoning(
    "calibrate-spreader",
    "what a spreader puts out at its setting, and how far that is off",
    "calibrate-spreader --caught 0.5lb --area 50sqft --target 10lb/k",
    explains={
        "caught": "what was caught, or is missing from the hopper",
        "area": "length of the run times the width that is covered",
        "target": "the rate wanted at this setting: half the whole for two passes",
    },
)
@dataclass(frozen=True, slots=True, kw_only=True)
class CalibrateSpreader:
    """Caught in g, area in m2, target in g/m2."""

    caught: float = asked("caught", up_to(BIN, Dimension.MASS), "0.5lb")
    area: float = asked("area", up_to(LAWN, Dimension.AREA), "50sqft")
    target: float | None = term("target", up_to(_MOST, Dimension.MASS_RATE), "10lb/k")

    def answer(self) -> Answer:
        """The rate, and by how many percent it lies beside the target."""
        rate = output_per_m2(self.caught, self.area)
        if rate > _TOO_MUCH:
            raise Refusal("--caught", f"far too much for so small an area: more than {_MOST}.")
        off = None if self.target is None else off_percent(rate, self.target)
        return Answer(
            (
                figure("rate_lb_per_1000sqft", "output", rate, "lb/k"),
                figure("off_percent", "off the target", off, "%"),
            ),
            (
                _verdict(off),
                f"Calibrate again for each product and each person who walks it: {AGAIN_BASIS.words()}.",
                f"The label's own rate goes first. {LABEL}",
            ),
        )


_TOO_MUCH = up_to(_MOST, Dimension.MASS_RATE)(_MOST)


def _verdict(off: float | None) -> str:
    band = f"within {OFF_PERCENT:g} % of the target ({OFF_BASIS.words()})"
    if off is None:
        return f"How far it is off can't be given without --target; a setting is good {band}."
    if abs(off) <= OFF_PERCENT + 1e-9:
        return f"Good: {band}."
    way = "Too much: close the spreader a little" if off > 0 else "Too little: open the spreader a little"
    return f"{way} and catch again, until it is {band}."
