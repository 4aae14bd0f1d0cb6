"""House numbers beside a label. None of those that stand in for a blank label may be set looser than it is."""

from journal.facts.citation import memory
from journal.facts.factors import celsius, mph
from journal.facts.number import Number
from journal.facts.sources import judgment, published

_SLOW = judgment("deliberately slow, by the kind of product; the label goes first")
_YEARLY = memory("labels count by the calendar year or by any 365 days; both are watched while it is not entered")
_DRIFT = published("stewardship-weather", note="no wind may mean an inversion, in which fine drops hang and drift")
_HOT = published("isu-broadleaf", note="not above 85 F within 24 hours; 80 F is advised too, and labels print 90 F")
_VAPOUR = published("ohio-dandelion", "purdue-ester", note="60 to 70 F are printed; some esters are less volatile")

LABEL: tuple[Number, ...] = (
    Number("treat-windy", "most", mph(8), "m/s", 0.5, mph(15),
           published("stewardship-weather", note="5 to 15 mph are printed; the label goes first"),
           "a spray is harm above, where the label says nothing; never more"),
    Number("treat-windy", "calm", mph(5), "m/s", 0.5, mph(15), published("isu-broadleaf"), "a note above"),
    Number("treat-still", "least", mph(3), "m/s", 0, mph(5), _DRIFT, "a spray is a note below"),
    Number("treat-still", "hours", 2, "x", 0, 6, judgment("near dawn and dusk", "stewardship-weather"),
           "hours from sunrise and before sunset in which it counts"),
    Number("treat-hot", "most", celsius(85), "C", celsius(70), celsius(95), _HOT,
           "too hot above, where the label says nothing"),
    Number("treat-cold", "least", celsius(50), "C", celsius(35), celsius(65), published("kstate-salina"),
           "a note below, where the label says nothing"),
    Number("treat-cold", "loss", celsius(40), "C", celsius(30), celsius(60), published("purdue-potw"), "a loss below"),
    Number("label-interval", "days-barrier", 60, "d", 60, 365, _SLOW, "a barrier waits for, its label blank"),
    Number("label-interval", "days-weed", 28, "d", 28, 365, _SLOW, "a weed product waits for, its label blank"),
    Number("label-interval", "days-nonselective", 14, "d", 14, 365, _SLOW, "what kills all waits for, its label blank"),
    Number("label-interval", "days-insect", 90, "d", 90, 365, _SLOW, "an insect product waits for, its label blank"),
    Number("label-interval", "days-disease", 14, "d", 14, 365, _SLOW, "a disease product waits for, its label blank"),
    Number("label-year-count", "most", 2, "x", 0, 2, _YEARLY, "uses in a year, the label blank"),
    Number("label-year-count", "most-insect", 1, "x", 0, 1, _YEARLY, "uses of an insect product, the label blank"),
    Number("group-repeat", "in-a-row", 3, "x", 2, 6,
           memory("no more than two in a row of one single-site group; publications say to rotate, not how often"),
           "uses of one group in a row that are too many"),
    Number("group-repeat", "within-days", 365, "d", 60, 365, judgment("twelve months"), "all of them within"),
    Number("tree-root", "ester-note", celsius(70), "C", celsius(50), celsius(90), _VAPOUR,
           "an ester is a note above"),
    Number("tree-root", "ester-loss", celsius(80), "C", celsius(60), celsius(95),
           judgment("well into the warmth in which esters turn to vapour", "ohio-dandelion"), "a loss above"),
)  # fmt: skip
