"""What has been seen to happen at how many degree days. A figure holds for its own base, method and start only."""

from dataclasses import dataclass

from journal.facts.citation import Basis
from journal.facts.sources import published
from journal.record.day import MonthDay

AVERAGE = "average"
CAPPED = "capped"
SINE = "sine"

CAPPED_BASIS: Basis = published("iastate-541")
"""Of the method that sets each temperature between the base and the cap first."""


@dataclass(frozen=True, slots=True)
class Band:
    """From `low_f` to `high_f` degree days (F) over `base_f`, counted from `start`; None where the start isn't told.

    `medium` says where the temperature was taken.
    """

    event: str
    low_f: float
    high_f: float
    base_f: float
    start: MonthDay | None
    basis: Basis
    method: str = AVERAGE
    medium: str = "air"


_JAN_1 = MonthDay(1, 1)
_APR_1 = MonthDay(4, 1)
_SOIL = "soil at 1 in"
_MARYLAND = published("fidanza-1996", note="soil of Maryland, 12 C")

BANDS: tuple[Band, ...] = (
    Band("northern forsythia, first to full bloom", 58, 94, 50, _JAN_1, published("osu-forsythia")),
    Band("crabgrass starts to come up", 70, 140, 50, None, published("vt-2007")),
    Band("first seedlings of smooth and of large crabgrass", 155, 211, 50, _JAN_1, published("osu-bygl-1235")),
    Band("crabgrass germinates", 200, 200, 50, None, published("purdue-crabgrass")),
    Band("the weeks before crabgrass comes up", 250, 500, 32, MonthDay(2, 15),
         published("msu-model", note="the range itself from a superintendent's note of 2012")),
    Band("first smooth crabgrass", 42 * 1.8, 78 * 1.8, 53.6, _APR_1, _MARYLAND, medium=_SOIL),
    Band("most smooth crabgrass", 140 * 1.8, 230 * 1.8, 53.6, _APR_1, _MARYLAND, medium=_SOIL),
)  # fmt: skip

NEAR_SHARE = 0.25
"""A band lies near when the sum is in it, or within a quarter of either end: judgment."""


def near(degree_days_f: float, base_f: float, method: str, start: MonthDay) -> tuple[Band, ...]:
    """The bands of just that base (F), method and start that the sum of air temperatures lies in or close to.

    A band whose start isn't told is taken to count from 1 January, as most do: judgment.
    """
    return tuple(
        band
        for band in BANDS
        if abs(band.base_f - base_f) < 0.05
        and band.method == method
        and (band.start or _JAN_1) == start
        and band.low_f * (1 - NEAR_SHARE) <= degree_days_f <= band.high_f * (1 + NEAR_SHARE)
    )
