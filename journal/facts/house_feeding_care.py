"""House numbers of how a feeding is put down: on what ground, in what heat, and with how much water after it."""

from journal.facts.citation import Basis
from journal.facts.factors import celsius, g_per_m2, mm
from journal.facts.number import Number
from journal.facts.sources import judgment, published

_HOT = judgment("slow nitrogen seldom burns above 85 F; no bulletin prints a limit for the quick", "purdue-ay22")
_WATER_IN = published("mashpee-2014", note="a quarter of an inch; half an inch for urea is printed too")
_WASH = judgment("two inches in a day are printed as heavy, and feeding before heavy rain is barred", "pinellas",
                 "mashpee-2014")  # fmt: skip
_LATE: Basis = judgment("publications disagree on feeding as growth ends", "umn-late-fall", "purdue-late-fall")
_STANDS: Basis = judgment()

CARE: tuple[Number, ...] = (
    Number("feed-closed", "frozen-mean", 0, "C", 0, celsius(40),
           judgment("no law says how frozen ground is told from the air", "mn-responsible", "wi-94-643"),
           "frozen while the mean of 5 days is below"),
    Number("feed-dormant", "note-days", 21, "d", 0, 60, _LATE, "a note only so near to growth"),
    Number("feed-dormant", "stands-days", 30, "d", 1, 60, _STANDS, "stands so long"),
    Number("feed-heat", "high", celsius(85), "C", celsius(70), celsius(100), _HOT, "hot from a day's high of"),
    Number("feed-heat", "soluble", g_per_m2(0.25), "g/m2", 0, g_per_m2(1), judgment(),
           "counts above this much soluble nitrogen"),
    Number("feed-heat", "water", mm(0.25), "mm", mm(0.1), mm(1), _WATER_IN, "a note only once so much water followed"),
    Number("feed-heat", "stands-days", 14, "d", 1, 60, _STANDS, "stands so long"),
    Number("feed-water-in", "water", mm(0.25), "mm", mm(0.05), mm(1), _WATER_IN, "rain or irrigation wanted after it"),
    Number("feed-water-in", "days", 2, "d", 1, 7,
           judgment("a day is printed, and 2 to 5 for urea by how warm it is", "mashpee-2014", "ndsu-urea"), "within"),
    Number("feed-water-in", "stands-days", 14, "d", 4, 60, _STANDS, "stands so long after the feeding"),
    Number("feed-wash", "water", mm(0.5), "mm", mm(0.25), mm(3), _WASH, "washes out from this much in a day"),
    Number("feed-wash", "days", 1, "d", 0, 3, published("mashpee-2014", note="24 hours"), "within"),
    Number("feed-wash", "stands-days", 30, "d", 1, 60, _STANDS, "stands so long after the feeding"),
)  # fmt: skip
