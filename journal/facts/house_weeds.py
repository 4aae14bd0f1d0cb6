"""House numbers of weeds, insects and their seasons."""

from journal.facts.factors import celsius
from journal.facts.number import Number
from journal.facts.sources import judgment, published

_MODEL = published("msu-model", note="250 to 500 degree days (F) over 32 F from 15 February; others begin on 1 March")
_SOIL = published("msu-model", note="50 to 55 F at two inches is the time, above 60 F it is late")
_FROST = judgment(
    "an estimate by the average last frost; the window moves by three weeks from year to year", "iastate-barrier"
)
_A_MONTH = judgment("long enough to be read, not until spring")
_A_SQFT = 1 / 0.09290304

WEEDS: tuple[Number, ...] = (
    Number("new-grass-treatment", "within-days", 120, "d", 30, 365, judgment(), "a stand counts as new for"),
    Number("new-grass-treatment", "with-seed-days", 7, "d", 0, 21, judgment("a starter goes down in the first week"),
           "what is listed for use at seeding may go down to day"),
    Number("new-grass-treatment", "stands-days", 60, "d", 14, 60, judgment(), "stands at the most"),
    Number("barrier-before-seed", "note-days", 14, "d", 1, 60, judgment(), "says how long seed waits for"),
    Number("barrier-past", "from", 250, "x", 50, 500, _MODEL, "degree days (F) over 32 F at which the window opens"),
    Number("barrier-past", "most", 500, "x", 250, 1000, _MODEL, "degree days (F) over 32 F at which it has closed"),
    Number("barrier-past", "soil", celsius(50), "C", celsius(40), celsius(60), _SOIL,
           "soil at which the window opens, for five days"),
    Number("barrier-past", "soil-most", celsius(60), "C", celsius(50), celsius(75), _SOIL,
           "soil at which it has closed, for five days"),
    Number("barrier-past", "split-days", 90, "d", 30, 120, published("label-40896", note="60 to 90 days"),
           "a second use within is the other half"),
    Number("barrier-past", "stands-days", 60, "d", 7, 60, judgment(), "stands"),
    Number("barrier-missed", "before-frost-days", 28, "d", 0, 60, _FROST,
           "without weather the window opens before the last frost by"),
    Number("barrier-missed", "stands-days", 30, "d", 7, 60, _A_MONTH, "stands"),
    Number("barrier-missed", "weed-days", 400, "d", 30, 800, judgment(), "a weed seen counts for"),
    Number("broadleaf-missed", "stands-days", 30, "d", 7, 60,
           judgment("the window itself is printed, not how long to say so", "purdue-too-late"), "stands"),
    Number("grub-blind", "dry", 5 * _A_SQFT, "/m2", _A_SQFT, 50 * _A_SQFT, published("msu-chafer"),
           "grubs that call for it, not irrigated"),
    Number("grub-blind", "irrigated", 10 * _A_SQFT, "/m2", _A_SQFT, 50 * _A_SQFT,
           published("illinois-243", "msu-chafer", note="10 to 12 and 15 are printed"),
           "grubs that call for it, irrigated"),
    Number("grub-blind", "count-days", 730, "d", 90, 1500, judgment("24 months", "umn-irac"), "a count holds for"),
    Number("grub-blind", "stands-days", 30, "d", 7, 60, _A_MONTH, "stands"),
    Number("unknown-treatment", "residue-days", 210, "d", 28, 365,
           judgment("as long as the longest of the usual waits", "delaware-renovation"),
           "before a sowing it must be known what was put down, for"),
    Number("unknown-treatment", "stands-days", 30, "d", 7, 60, judgment(),
           "stands"),
)  # fmt: skip
