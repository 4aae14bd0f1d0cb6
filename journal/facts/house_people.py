"""House numbers of what follows an application: people, bees, water and clippings."""

from journal.facts.citation import memory
from journal.facts.factors import mm
from journal.facts.number import Number
from journal.facts.sources import judgment, published

_RAIN_FREE = published("isu-broadleaf", "ufl-weeds", note="6 to 24 hours are printed; the label goes first")
_NEAR_A_CUT = published("isu-broadleaf", "clemson-herbicides",
                        note="2 to 3 days before, 3 to 4 after; some labels say 7")  # fmt: skip
_WATER_IN = published("label-40896", "illinois-220", note="half an inch; the label goes first")
_EDGE = judgment("a default; local rules name 15 to 25 ft for fertilizer, labels their own", "label-82447")

PEOPLE: tuple[Number, ...] = (
    Number("keep-off", "rain-days", 3, "d", 0, 14,
           published("npic-yardspray", note="off again until dry where rain falls within a few days; three here"),
           "rain in so many days makes it wet again"),
    Number("keep-off", "rain", mm(0.04), "mm", mm(0.01), mm(0.4), judgment("less does not wet the leaves through"),
           "as much rain does"),
    Number("reentry", "depth", mm(0.25), "mm", mm(0.25), mm(1),
           judgment("as much as waters a feeding in", "npic-yardspray"),
           "water that takes granules in where neither label, active nor kind names a depth"),
    Number("bloom", "hours", 48, "x", 12, 48, published("illinois-955", "uga-c1127", note="mow flower heads off first"),
           "hours before in which it was mown"),
    Number("buffer", "distance", mm(12 * 25), "mm", mm(12 * 25), mm(12 * 300), _EDGE, "kept from water"),
    Number("buffer", "slope-distance", mm(12 * 100), "mm", mm(12 * 100), mm(12 * 1000), _EDGE,
           "kept from water on a steep slope"),
    Number("exposure", "days", 30, "d", 14, 60, judgment("what was put down this long ago is named"),
           "products put down in so many days are named"),
    Number("wash-off", "hours", 24, "x", 24, 72, _RAIN_FREE, "hours without rain or watering, the label blank"),
    Number("wash-off", "water", mm(0.04), "mm", mm(0.01), mm(0.2), judgment("less does not run off the leaves"),
           "as much rain washes"),
    Number("water-in-missing", "depth", mm(0.5), "mm", mm(0.5), mm(1), _WATER_IN,
           "water that barriers and insect products want, the label blank"),
    Number("water-in-missing", "note-days", 2, "d", 1, 2, judgment("48 hours", "illinois-220"), "a note after"),
    Number("water-in-missing", "late-days-barrier", 14, "d", 2, 14, published("label-40896"),
           "a barrier is late after, the label blank"),
    Number("water-in-missing", "late-days-insect", 2, "d", 1, 2,
           memory("within 24 hours, or at once; two days here"), "an insect product is late after, the label blank"),
    Number("clippings-treated", "mowings", 3, "x", 3, 10,
           published("ask-673444", note="2 to 3 mowings, 3 to 4 weeks in the same answer; the label goes first"),
           "mowings whose clippings stay on the lawn"),
    Number("clippings-treated", "days", 60, "d", 28, 300,
           judgment("a lawn that grows is cut three times by then; 3 to 4 weeks are printed", "ask-673444"),
           "no longer than, but for what lasts all season"),
    Number("mow-near-treatment", "before", 2, "d", 2, 14, _NEAR_A_CUT, "not mown before it, the label blank"),
    Number("mow-near-treatment", "after", 3, "d", 3, 14, _NEAR_A_CUT, "not mown after it, the label blank"),
)  # fmt: skip
"""None of those that stand in for a blank label may be set looser than it is."""
