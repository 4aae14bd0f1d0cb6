"""How much water turf uses, how deep its roots draw, and how much of a rain counts."""

from journal.facts.citation import Basis, memory
from journal.facts.factors import mm
from journal.facts.grasses import TALL_FESCUE, Grass
from journal.facts.sources import judgment, published

COOL_SEASON = (0.61, 0.64, 0.75, 1.04, 0.95, 0.88, 0.94, 0.86, 0.74, 0.75, 0.69, 0.60)
WARM_SEASON = (0.61, 0.54, 0.76, 0.72, 0.79, 0.68, 0.71, 0.71, 0.62, 0.54, 0.58, 0.55)
"""Water use of turf as a share of the reference, January to December of the northern half of the world."""

COEFFICIENT_BASIS: Basis = published("uc-turf-kc", note="measured in California; elsewhere it is an estimate")


def coefficient(month: int, *, southern: bool, cool_season: bool) -> float:
    """Share of the reference water use that turf uses in that month (1 to 12); six months on in the south."""
    table = COOL_SEASON if cool_season else WARM_SEASON
    return table[(month - 1 + (6 if southern else 0)) % 12]


REFERENCE_BASIS: Basis = published(
    "fao-56", "fisher-2013", note="from two temperatures; off by about 0.7 mm a day, too low in wind"
)
"""Of the reference water use by Hargreaves and Samani."""

FAR_NORTH = 55.0
FAR_NORTH_BASIS: Basis = published("ncl-radext", note="less exact beyond 55 degrees of latitude")

ROOTS_MM = mm(6)
ROOTS_BASIS: Basis = published("agrilife-2020", "ncsu-ag763w", note="dig and see: roots may be shallower")
DEEP_ROOTS_MM = mm(8)
DEEP_ROOTS_BASIS: Basis = judgment("8 to 12 in for tall fescue and warm-season grasses", "hagan-1953")


def deep_rooted(kind: Grass) -> bool:
    """Whether the grass draws from deeper soil than most: tall fescue and the warm-season grasses."""
    return kind is TALL_FESCUE or not kind.cool_season


ALLOWED_SHARE = 0.5
ALLOWED_BASIS: Basis = published("ny-golf", "emswcd")
"""The share of what the root zone holds that may be used before it is watered again."""

RAIN_LOST_MM = mm(0.1)
RAIN_FULL_MM = mm(1)
RAIN_MOST_MM = mm(2)
RAIN_SHARE_ABOVE = 2 / 3
RAIN_BASIS: Basis = published("tamu-effective-rain", note="of a day's rain the first 0.1 in is lost")

SOAKING_MM = mm(1)
SOAKING_DAYS = 3
SOAKING_BASIS: Basis = judgment("an inch fills about 6 in of soil", "agrilife-inch")
"""So much water in so many days fills the root zone, whatever was missing in it."""

FULL_BASIS: Basis = judgment("rain and thaw of the cold months fill it")
"""Of the root zone being full on the first day of growth, where nothing soaked it since."""

MOST_AT_ONCE_MM = mm(1)
"""The most that one watering puts down: deeper than the roots reach it is lost. Judgment."""

CHECKBOOK_BASIS: Basis = published("ndsu-ae792")
"""Of the day-by-day account of the root zone."""

MOST_CYCLES = 3
SOAK_BASIS: Basis = published("tamu-soak", note="2 or 3 short cycles half an hour to an hour apart are advised")

CANS_NEEDED = 8
CANS_BASIS: Basis = published("jawra-2007", note="with fewer cans the rate may be off by 25 %")
CANS_WANTED = 24
CANS_WANTED_BASIS: Basis = published("uc-davis-cans", note="24 cans or more, a multiple of 4")
CANS_WIND_BASIS: Basis = published("nmsu-h510", note="set cans out on a calm day, at the hour at which you water")
UNIFORMITY_BASIS: Basis = published("spreval")
DRIEST_BASIS: Basis = published("sc-course")
MULTIPLIER_BASIS: Basis = memory("the lower-half form, 1 / (0.4 + 0.6 DU)")
