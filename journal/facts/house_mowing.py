"""House numbers of mowing."""

from journal.facts.citation import memory, practice
from journal.facts.cut_growth import LEAST_BASIS
from journal.facts.factors import mm
from journal.facts.growth import LATE_GAP, SLOW_MONTH_GAP, USUAL_GAP
from journal.facts.number import Number
from journal.facts.sources import judgment, published

_FIRST_CUT = practice("publications say about 21 days")
_TREATED = memory("labels count so many cuts")
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
    Number("mow-first-late", "days", 42, "d", 28, 120,
           judgment("3 weeks are printed for a good season, 8 for bluegrass are from memory", "osu-ec1550"),
           "late after, from sowing"),
    Number("mow-first-late", "days-bluegrass", 56, "d", 28, 120, memory("half bluegrass or more"),
           "late after, with bluegrass"),
    Number("mow-too-low", "low", mm(2), "mm", mm(0.5), mm(5),
           published("ask-158965", "purdue-ay8", note="never below 2 in for bluegrass; each grass has its own low end"),
           "lowest cut, where the grass has none of its own"),
    Number("mow-too-low", "stands-days", 14, "d", 1, 60, judgment(), "stands at most"),
    Number("mow-one-third", "share", 34, "%", 25, 60,
           published("cornell-third", "psu-third", note="a third, and a hair for the ruler; a quarter is advised too"),
           "too much at once above"),
    Number("mow-one-third", "stands-days", 14, "d", 1, 60, judgment(), "stands at most"),
    Number("mow-one-third", "least-gap", 7, "d", 1, 30, judgment(), "growth is estimated from a gap of"),
    Number("mow-one-third", "most-gap", 21, "d", 7, 60, judgment(), "and up to"),
    Number("mow-one-third", "growth", 1, "x", 0, 3, LEAST_BASIS, "times the least that it grows in a month"),
    Number("mow-clippings", "days", 28, "d", 7, 90, practice(), "bag for so long from the first cut"),
    Number("mow-clippings", "mowings", 3, "x", 1, 10, _TREATED, "cuts after a weed product whose clippings are left"),
    Number("mow-blade", "minutes", 600, "min", 60, 6000, published("kstate-blade", note="every 10 hours"),
           "sharpen after mowing for"),
    Number("mow-blade", "mowings", 12, "x", 2, 100, practice("where no times are kept"), "sharpen after cuts"),
    Number("mow-blade", "first-days", 60, "d", 7, 365, practice("a dull blade pulls seedlings out"),
           "sharp for the first cut: within"),
    Number("mow-blade", "stands-days", 28, "d", 1, 60, judgment(), "said of a first cut for"),
    Number("mow-wet", "rain", mm(0.5), "mm", mm(0.1), mm(3), judgment("more is taken to leave it wet", "ncsu-lee"),
           "wet after rain above"),
    Number("mow-wet", "hours", 24, "x", 1, 72, judgment(), "hours for which it counts"),
    Number("mow-wet", "stands-days", 14, "d", 1, 60, judgment(), "stands at most"),
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
