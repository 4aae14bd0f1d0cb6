"""What cans set out on the lawn tell of its sprinklers."""

import re
from dataclasses import dataclass

from journal.facts.irrigation import (
    CANS_BASIS,
    CANS_NEEDED,
    CANS_WANTED,
    CANS_WANTED_BASIS,
    CANS_WIND_BASIS,
    DRIEST_BASIS,
    MULTIPLIER_BASIS,
    UNIFORMITY_BASIS,
)
from journal.reckon.answer import Answer, figure
from journal.reckon.asking import up_to
from journal.reckon.cans import (
    QUARTER_NEEDS,
    mean,
    minutes_for,
    rate_per_h,
    run_time_multiplier,
    scheduling_coefficient,
    uniformity_christiansen,
    uniformity_low_quarter,
)
from journal.reckon.declare import reckoning
from journal.reckon.water_options import MOST_DEPTH
from journal.record.quantity import parse_as, plain
from journal.record.refusal import Refusal
from journal.record.term import asked, number, one_of, term
from journal.record.unit import UNITS, Dimension

_MOST_CANS, _LONGEST_RUN = 500, 1440
_ONE = number(0, 10_000)
_PARTED = r"\s*;\s*|\s+"

_LEAST_DEPTH = 1e-3
"""In any unit of the depths: nobody reads a can finer."""


def _depths(text: str) -> tuple[float, ...]:
    """Bare numbers after one another, parted by commas, or by semicolons or blanks: then `7,5` is a decimal."""
    words = [word for word in re.split(_PARTED if _decimal_commas(text) else r"[,;\s]+", text.strip()) if word]
    words = [word.replace(",", ".") for word in words]
    if not words or len(words) > _MOST_CANS:
        raise Refusal(text[:40], f"from 1 to {_MOST_CANS} numbers are wanted, like 0.25,0.31,0.28.")
    for word in words:
        if not re.fullmatch(r"\d+\.?\d*|\.\d+", word):
            raise Refusal(word, "bare numbers are wanted, like 0.25,0.31; --unit says what they measure.")
    found = tuple(_ONE(word) for word in words)
    for word, depth in zip(words, found, strict=True):
        if 0 < depth < _LEAST_DEPTH:
            raise Refusal(word, "far too little to be measured.")
    return found


def _decimal_commas(text: str) -> bool:
    """Whether every comma stands within a number of its own: `7,5;8,1` and `7,5 8,1`, not `0.25,0.31` nor `7, 8`."""
    words = [word for word in re.split(_PARTED, text.strip()) if word]
    return len(words) > 1 and "." not in text and all(re.fullmatch(r"\d+(,\d+)?", word) for word in words)


def _minutes(text: str) -> float:
    """A run in minutes, with or without its unit."""
    value = parse_as(text, Dimension.MINUTES, Dimension.NUMBER).value
    if not 0 < value <= _LONGEST_RUN:
        raise Refusal(text, "a run of up to a day is wanted, like 15.")
    return value


@reckoning(
    "cans",
    "how fast and how evenly the sprinklers water, from cans set out under them",
    "cans --depths 0.25,0.31,0.28,0.22,0.30,0.27,0.26,0.29 --unit in --minutes 15",
    explains={
        "depths": "what stands in each can, without a unit",
        "unit": "of the depths: in, mm or cm",
        "minutes": "how long the sprinklers ran",
        "depth": "the watering that run_min is for",
    },
)
@dataclass(frozen=True, slots=True, kw_only=True)
class Cans:
    """Depths as they were read, in `unit`; minutes; the depth wanted in mm."""

    depths: tuple[float, ...] = asked("depths", _depths, "0.25,0.31,0.28,0.22")
    unit: str = asked("unit", one_of("in", "mm", "cm"), "in")
    minutes: float = asked("minutes", _minutes, "15")
    depth: float = term("depth", up_to(MOST_DEPTH, Dimension.LENGTH), "1in", 25.4)

    def answer(self) -> Answer:
        """Rate, evenness, and the minutes for a depth; evenness is unknown with fewer than four cans."""
        if not any(self.depths):
            raise Refusal("--depths", "nothing was caught.")
        factor = float(UNITS[self.unit].factor)
        depths = tuple(depth * factor for depth in self.depths)
        rate = rate_per_h(depths, self.minutes)
        many = len(depths) >= QUARTER_NEEDS
        du = uniformity_low_quarter(depths) if many else None
        cu = uniformity_christiansen(depths) if many else None
        return Answer(
            (
                figure("rate_in_per_h", "rate", rate, "in/h"),
                figure("du_lq_percent", "evenness, driest quarter to mean", du),
                figure("cu_percent", "evenness, by Christiansen", cu),
                figure("run_min", f"minutes for {_said(self.depth, self.unit)}", minutes_for(self.depth, rate), "min"),
            ),
            self._notes(depths, du),
        )

    def _notes(self, depths: tuple[float, ...], du: float | None) -> tuple[str, ...]:
        said = [f"The cans caught {_said(mean(depths), self.unit)} on average. {CANS_WIND_BASIS.words()}."]
        if len(depths) < CANS_NEEDED:
            said.append(f"The rate is ±25 % with so few cans: {CANS_BASIS.words()}.")
        elif len(depths) < CANS_WANTED:
            said.append(f"More cans tell more: {CANS_WANTED_BASIS.words()}.")
        if du is None:
            return (*said, f"Evenness needs {QUARTER_NEEDS} cans or more.")
        said.append(f"Evenness as in {UNIFORMITY_BASIS.words()}.")
        if min(depths) > 0:
            times = plain(scheduling_coefficient(depths), 3)
            said.append(f"The driest can needs {times} times the minutes (mean / least): {DRIEST_BASIS.words()}.")
        times = plain(run_time_multiplier(du), 3)
        said.append(
            f"For most of the lawn {times} times is remembered: {MULTIPLIER_BASIS.words()}. Use one of the two."
        )
        if du < UNEVEN:
            said.append("So uneven a pattern wants its heads seen to first: running longer can't mend it (judgment).")
        return tuple(said)


UNEVEN = 55.0
"""Percent below which the heads are to be seen to first: judgment."""


def _said(mm: float, unit: str) -> str:
    return f"{plain(mm / float(UNITS[unit].factor), 3)} {unit}"
