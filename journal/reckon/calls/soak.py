"""Water in short runs with pauses, so that none of it runs off."""

import math
from dataclasses import dataclass

from journal.facts.irrigation import MOST_CYCLES, SOAK_BASIS
from journal.facts.soils import INTAKE_BASIS, SOILS, STORAGE_BY_SLOPE, storage_mm
from journal.reckon.answer import Answer, figure
from journal.reckon.asking import up_to
from journal.reckon.declare import reckoning
from journal.reckon.soaking import Cycles, cycles
from journal.reckon.water_options import MOST_DEPTH, MOST_RATE
from journal.record.refusal import Refusal
from journal.record.term import asked, one_of, term
from journal.record.unit import Dimension

_CYCLES_BELIEVED = 100
"""More runs than this nobody sets a timer to."""

_LONGEST_MIN = 1440
"""No watering, and no pause, of more than a day is meant."""

_INTAKE, _STORAGE = "0.2in/h", "0.1in"


@reckoning(
    "soak",
    "how to split a watering into runs that the soil takes up",
    f"soak --depth 0.5in --rate 1.6in/h --intake {_INTAKE} --storage {_STORAGE}",
    explains={
        "rate": "of the sprinkler",
        "intake": "what the soil takes up in an hour",
        "storage": "what may stand on the surface without running off",
        "soil": "stands in for intake and storage",
        "slope": "with a soil: none, gentle or steep",
    },
)
@dataclass(frozen=True, slots=True, kw_only=True)
class Soak:
    """Depths in mm, rates in mm/h; intake and storage as given, else those of the soil."""

    depth: float = asked("depth", up_to(MOST_DEPTH, Dimension.LENGTH), "0.5in")
    rate: float = asked("rate", up_to(MOST_RATE, Dimension.RAIN_RATE), "1.6in/h")
    intake: float | None = term("intake", up_to(MOST_RATE, Dimension.RAIN_RATE), _INTAKE)
    storage: float | None = term("storage", up_to(MOST_DEPTH, Dimension.LENGTH), _STORAGE)
    soil: str = term("soil", one_of(*SOILS), "clay-loam", "")
    slope: str = term("slope", one_of(*STORAGE_BY_SLOPE), "gentle", "none")

    def answer(self) -> Answer:
        """Minutes in all, the longest run, how many, how long each, and the least pause between two."""
        intake, storage = self._ground()
        found = cycles(self.depth, self.rate, intake, storage)
        if found.minutes > _LONGEST_MIN:
            raise Refusal("--depth", f"at that rate it would run for {found.minutes:,.0f} min, more than a day.")
        if found.count > _CYCLES_BELIEVED:
            told = f"that would be more than {_CYCLES_BELIEVED} runs: too little stands to be meant."
            raise Refusal("--storage", told)
        if found.pause_min > _LONGEST_MIN:
            told = f"the pause would be {found.pause_min:,.0f} min, more than a day: too slow to be meant."
            raise Refusal("--intake", told)
        return Answer(
            (
                figure("minutes", "minutes in all", found.minutes, "min"),
                figure("cycle_max_min", "longest run without runoff", found.longest_min, "min"),
                figure("cycles", "runs", found.count),
                figure("cycle_min", "each run", found.run_min, "min"),
                figure("soak_min", "pause between runs, at least", found.pause_min, "min"),
            ),
            (*self._remembered(), *self._idle(), *_notes(found)),
        )

    def _ground(self) -> tuple[float, float]:
        """Intake and storage, of the soil where they were not given."""
        soil = SOILS.get(self.soil)
        intake = self.intake if self.intake is not None or soil is None else soil.intake_mm_h
        storage = self.storage if self.storage is not None or soil is None else storage_mm(soil, self.slope)
        for name, value, example in (("intake", intake, _INTAKE), ("storage", storage, _STORAGE)):
            if value is None:
                raise Refusal(f"--{name}", f"is missing: write it like --{name} {example}, or give --soil.")
        return intake or 0.0, storage or 0.0

    def _remembered(self) -> tuple[str, ...]:
        if not self.soil or None not in (self.intake, self.storage):
            return ()
        taken = (("intake", self.intake), ("storage", self.storage))
        names = " and ".join(name for name, given in taken if given is None)
        return (f"{names.capitalize()} of {self.soil}: {INTAKE_BASIS.words()}.",)

    def _idle(self) -> tuple[str, ...]:
        """Options that were given and changed nothing."""
        said = []
        if self.soil and None not in (self.intake, self.storage):
            said.append(f"--soil {self.soil} changes nothing here: intake and storage are both given.")
        if self.slope != "none" and self.storage is not None:
            said.append(f"--slope {self.slope} changes nothing here: what may stand on the surface is given.")
        return tuple(said)


def _notes(found: Cycles) -> tuple[str, ...]:
    if found.longest_min is None:
        return ("The soil takes up all that the sprinkler gives: one run is enough.",)
    said = (
        "The pause lasts until what stands on the surface has gone in. Stop a run when water runs off.",
        f"{SOAK_BASIS.words()}.",
    )
    if found.count <= MOST_CYCLES:
        return said
    mornings = math.ceil(found.count / MOST_CYCLES)
    return (*said, f"So put it down over {mornings} mornings, at most {MOST_CYCLES} of the {found.count} runs on each.")
