"""House numbers of water and drought."""

from journal.facts.factors import mm
from journal.facts.number import Number
from journal.facts.sources import judgment, published

_INCH = published("agrilife-inch", note="a rule of thumb; an irrigation engineer calls inches a week vague")
_RESCUE = published("purdue-resting", "purdue-ppdl", note="0.5 in every 4 weeks, or 1 to 1.5 in every 4 to 6")
_OFTEN = judgment("once a week, thoroughly, is advised for an established lawn", "isu-watering")

WATER: tuple[Number, ...] = (
    Number("water-deficit", "days", 2, "d", 1, 14, judgment(), "late after it could be watered"),
    Number("water-week", "water", mm(1), "mm", mm(0.25), mm(3), _INCH, "a note below, rain and watering together"),
    Number("water-week", "days", 7, "d", 3, 21, _INCH, "counted over"),
    Number("water-often", "dates", 3, "x", 1, 7, _OFTEN, "a note with more dates of watering"),
    Number("water-often", "days", 7, "d", 3, 21, _OFTEN, "counted over"),
    Number("water-often", "least", mm(0.1), "mm", 0, mm(1), judgment(), "a date counts from"),
    Number("water-runoff", "stands-days", 7, "d", 1, 60, judgment(), "stands for"),
    Number("dormant-thirst", "days", 28, "d", 14, 60, _RESCUE, "late after so long without"),
    Number(
        "dormant-thirst",
        "days-sown",
        14,
        "d",
        7,
        60,
        judgment("what was sown this spring is not let rest", "purdue-survival"),
        "a loss from so long, where it was sown this season",
    ),
    Number("dormant-thirst", "water", mm(0.5), "mm", mm(0.1), mm(2), _RESCUE, "so much water keeps it alive"),
    Number("dormant-thirst", "ask-days", 28, "d", 7, 60, judgment(), "asked again whether it is brown after"),
    Number("dormant-thirst", "ask-stands", 7, "d", 1, 28, judgment(), "asked for"),
)
