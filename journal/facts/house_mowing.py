"""House numbers of mowing."""

from journal.facts.citation import practice
from journal.facts.factors import mm
from journal.facts.growth import LATE_GAP, SLOW_MONTH_GAP, USUAL_GAP
from journal.facts.number import Number
from journal.facts.sources import judgment, published

_FIRST_CUT = practice("publications say about 21 days")
_HEIGHT = practice("publications ask 2.5 to 4 in by grass")
_SHADE = published("purdue-ay8", note="half an inch to an inch higher")
_SUMMER = published("isu-mowing")
_LAST_CUT = published("umd-calendar", note="others keep the same height")

MOWING: tuple[Number, ...] = (
    Number("mow-gap", USUAL_GAP.number, USUAL_GAP.days, "d", 1, 60, USUAL_GAP.basis, "late after"),
    Number("mow-gap", SLOW_MONTH_GAP.number, SLOW_MONTH_GAP.days, "d", 1, 60, SLOW_MONTH_GAP.basis,
           "late after, in July, August and October"),
    Number("mow-gap", LATE_GAP.number, LATE_GAP.days, "d", 1, 60, LATE_GAP.basis, "late after, as growth ends"),
    Number("mow-gap", "step-days", 7, "d", 1, 60, practice("weekly"), "step opens after"),
    Number("mow-gap", "first-days", 14, "d", 0, 60, judgment(), "first cut counted from growth start plus"),
    Number("mow-gap", "dry-days", 21, "d", 7, 60, judgment(), "not irrigated: silent when so long"),
    Number("mow-gap", "dry-water", mm(0.5), "mm", 0, mm(3), judgment(), "with less water than this"),
    Number("mow-first-early", "days", 28, "d", 14, 90, _FIRST_CUT, "first cut from day"),
    Number("mow-first-early", "loss-days", 21, "d", 7, 90, published("osu-ec1550", note="about 3 weeks"),
           "a loss before day"),
    Number("mow-first-early", "height", mm(3.5), "mm", mm(2), mm(6),
           published("kansas-tips", "cornell-spot", note="2 to 4 in are printed"), "or once it stands"),
    Number("mow-first-early", "height-from-day", 14, "d", 0, 60, judgment(), "a height counts from day"),
    Number("mow-first-early", "tall", mm(4.5), "mm", mm(3), mm(10), judgment(), "overseeded old turf is a note above"),
    Number("mow-height", "low", mm(2.5), "mm", mm(0.5), mm(5), _HEIGHT, "lowest cut"),
    Number("mow-height", "high", mm(3.5), "mm", mm(1), mm(6), _HEIGHT, "highest cut, where the grass has no higher"),
    Number("mow-height", "shade", mm(0.5), "mm", 0, mm(1), _SHADE, "higher in shade by"),
    Number("mow-height", "summer", mm(0.5), "mm", 0, mm(1), _SUMMER, "higher from June to August by"),
    Number("mow-height", "last", mm(0.5), "mm", 0, mm(1), _LAST_CUT, "lower for the last cuts by"),
    Number("mow-height", "late-days", 21, "d", 0, 60, judgment(), "last cuts: the last days of growth"),
    Number("mow-height", "before-seeding-days", 7, "d", 0, 30, judgment("a low cut before sowing is advised"),
           "silent before sowing or dethatching"),
    Number("mow-height", "stands-days", 14, "d", 1, 60, judgment(), "stands at most"),
)  # fmt: skip
