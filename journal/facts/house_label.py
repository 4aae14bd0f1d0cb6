"""House numbers beside a label."""

from journal.facts.factors import mph
from journal.facts.number import Number
from journal.facts.sources import published

LABEL: tuple[Number, ...] = (
    Number("treat-windy", "most", mph(8), "m/s", 0.5, mph(15),
           published("stewardship-weather", note="5 to 15 mph are printed; the label goes first"),
           "a spray is harm above, where the label says nothing; never more"),
    Number("treat-windy", "calm", mph(5), "m/s", 0.5, mph(15), published("isu-broadleaf"), "a note above"),
)  # fmt: skip
