"""The house numbers: thresholds that an owner can change, each with unit, range, default and basis.

Units are those everything is kept in: d, mm, g/m2, C, %, x (times). A label number or a local rule beats them.
"""

from dataclasses import dataclass

from journal.facts.citation import Basis, memory, practice
from journal.facts.factors import celsius, g_per_m2, mm, mph
from journal.facts.feeding import (
    MOST,
    MOST_BASIS,
    MOST_SOLUBLE,
    MOST_SOLUBLE_BASIS,
    MOST_SOLUBLE_NEW,
    MOST_SOLUBLE_NEW_BASIS,
)
from journal.facts.growth import LATE_GAP, SLOW_MONTH_GAP, USUAL_GAP
from journal.facts.sources import judgment, published


@dataclass(frozen=True, slots=True)
class Number:
    """One threshold of one rule; `low` and `high` are the least and the most an owner may set, both allowed."""

    rule: str
    name: str
    default: float
    unit: str
    low: float
    high: float
    basis: Basis
    words: str

    def allows(self, value: float) -> bool:
        """True when an owner may set it to `value`, given in its unit."""
        return self.low <= value <= self.high


_SIX_TO_EIGHT = practice("every 6 to 8 weeks; no bulletin confirms it, some say none from June to August")
_STEP = judgment("never before the gap that feed-too-soon asks", "virginia-2003")
_SLOW = judgment("by the slow-release share of the nitrogen", "virginia-2003", "purdue-fall-n", "purdue-ay22")
_FIRST_CUT = practice("publications say about 21 days")
_HEIGHT = practice("publications ask 2.5 to 4 in by grass")
_SHADE = published("purdue-ay8", note="half an inch to an inch higher")
_SUMMER = published("isu-mowing")
_LAST_CUT = published("umd-calendar", note="others keep the same height")
_DAMP = published("ncsu-seeding", "isu-watering", "nebraska-lifeline", note="one to three times a day are printed")
_STARTER = practice("a starter at seeding; publications want it only where a soil test or the law allows")

_FEED = (
    Number("feed-overdue", "step-days", 42, "d", 14, 180, _SIX_TO_EIGHT, "step opens, under 15 % slow"),
    Number("feed-overdue", "step-days-15", 42, "d", 14, 180, _STEP, "step opens, 15 to 49 % slow"),
    Number("feed-overdue", "step-days-50", 56, "d", 14, 180, _STEP, "step opens, 50 to 79 % slow"),
    Number("feed-overdue", "step-days-80", 84, "d", 14, 240, _STEP, "step opens, 80 % slow and more"),
    Number("feed-overdue", "days", 56, "d", 14, 240, _SIX_TO_EIGHT, "overdue after, under 15 % slow"),
    Number("feed-overdue", "days-15", 70, "d", 14, 240, _SLOW, "overdue after, 15 to 49 % slow"),
    Number("feed-overdue", "days-50", 84, "d", 14, 240, _SLOW, "overdue after, 50 to 79 % slow"),
    Number("feed-overdue", "days-80", 112, "d", 14, 365, _SLOW, "overdue after, 80 % slow and more"),
    Number("feed-overdue", "seeded-days", 69, "d", 0, 180, judgment(), "held to this day after seeding"),
    Number("feed-overdue", "hot-high", celsius(85), "C", celsius(70), celsius(100),
           judgment("slow nitrogen seldom burns above 85 F", "purdue-ay22", "isu-summer"),
           "held while the week's highs average"),
    Number("feed-overdue", "cap-left", g_per_m2(0.2), "g/m2", 0, g_per_m2(1), judgment(),
           "held with less of the year's nitrogen left"),
    Number("feed-overdue", "late-days", 21, "d", 0, 90,
           judgment("publications disagree on November", "umn-feed"), "held in the last days of growth"),
    Number("feed-too-soon", "days", 28, "d", 7, 180, _SLOW, "gap after a full feeding, under 15 % slow"),
    Number("feed-too-soon", "days-15", 42, "d", 7, 180, _SLOW, "gap after a full feeding, 15 to 49 % slow"),
    Number("feed-too-soon", "days-50", 56, "d", 7, 180, _SLOW, "gap after a full feeding, 50 to 79 % slow"),
    Number("feed-too-soon", "days-80", 84, "d", 7, 240, _SLOW, "gap after a full feeding, 80 % slow and more"),
    Number("feed-too-soon", "full-dose", g_per_m2(0.9), "g/m2", g_per_m2(0.3), g_per_m2(1.5),
           published("pennsylvania-6813", "umd-schedule"), "a full feeding of nitrogen; less shortens the gap"),
)  # fmt: skip

_MOW = (
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

_SEED = (
    Number("seed-switch", "points", 5, "%", 0, 50, judgment("one lot differs from the next"), "same seed within"),
    Number("seed-switch", "sowings", 2, "x", 1, 10, judgment(), "settled after sowings in as many years"),
    Number("seedbed-dry", "waterings", 2, "x", 1, 6, _DAMP, "a day"),
    Number("seedbed-dry", "days", 20, "d", 7, 60, published("ncsu-seeding", note="15 to 20 days"), "to day"),
    Number("seedbed-dry", "days-bluegrass", 27, "d", 7, 60, memory("bluegrass may take 28 days"),
           "to day, with bluegrass in the mix"),
    Number("seedbed-dry", "once-from-day", 15, "d", 1, 60, published("nebraska-lifeline", note="once a day in week 3"),
           "one watering is enough from day, without bluegrass"),
    Number("seedbed-dry", "cool-high", celsius(60), "C", celsius(32), celsius(90), judgment(),
           "one watering is enough below a high of"),
    Number("seedbed-dry", "rain", mm(0.1), "mm", mm(0.05), mm(1), memory(), "rain that covers a day"),
    Number("seedbed-dry", "rain-two-days", mm(0.25), "mm", mm(0.1), mm(2), memory(), "rain that covers the next too"),
    Number("seedbed-dry", "height", mm(1.5), "mm", mm(0.5), mm(4), published("isu-watering", note="1 to 2 in"),
           "over once it stands"),
    Number("starter-missing", "from-day", 8, "d", 1, 30, _STARTER, "late from day"),
    Number("starter-missing", "to-day", 21, "d", 7, 45, _STARTER, "to day"),
    Number("starter-missing", "before-days", 7, "d", 0, 30, _STARTER, "counts from so long before seeding"),
    Number("starter-missing", "phosphate", 0.67, "%", 0, 10, published("vermont-1266b"),
           "a phosphorus fertilizer has more P2O5 than"),
    Number("starter-missing", "phosphate-share", 50, "%", 10, 200, judgment("no law sets a number"),
           "a starter has P2O5 of at least this share of its N"),
    Number("starter-missing", "plain-low", g_per_m2(0.4), "g/m2", 0, g_per_m2(2), judgment(),
           "nitrogen that counts where phosphorus is barred, from"),
    Number("starter-missing", "plain-high", g_per_m2(0.9), "g/m2", g_per_m2(0.1), g_per_m2(2),
           published("umd-schedule", "pennsylvania-6813"), "to"),
    Number("starter-wrong", "before-days", 7, "d", 0, 30, _STARTER, "from so long before seeding"),
    Number("starter-wrong", "to-day", 27, "d", 7, 60, _STARTER, "to day"),
    Number("seed-over-residue", "split-days", 90, "d", 14, 180, published("label-40896"),
           "a second use within is a split"),
)  # fmt: skip

_DOSE = (
    Number("feed-dose", "most", MOST, "g/m2", g_per_m2(0.2), g_per_m2(1.5), MOST_BASIS,
           "a note above this much nitrogen at once"),
    Number("feed-dose", "most-soluble", MOST_SOLUBLE, "g/m2", g_per_m2(0.2), g_per_m2(1.5), MOST_SOLUBLE_BASIS,
           "a note above this much soluble nitrogen at once"),
    Number("feed-dose", "most-soluble-new", MOST_SOLUBLE_NEW, "g/m2", g_per_m2(0.1), g_per_m2(1),
           MOST_SOLUBLE_NEW_BASIS, "the same on new grass"),
    Number("feed-dose", "loss", g_per_m2(1), "g/m2", g_per_m2(0.5), g_per_m2(2),
           published("isu-summer", note="the most at once; coated kinds are printed with more"), "a loss above"),
    Number("feed-dose", "loss-slow", g_per_m2(1.5), "g/m2", g_per_m2(0.5), g_per_m2(3), judgment(),
           "a loss above, where it is mostly slow"),
    Number("feed-dose", "slow-share", 50, "%", 0, 100, judgment(), "mostly slow from"),
)  # fmt: skip

_LABEL = (
    Number("treat-windy", "most", mph(8), "m/s", 0.5, mph(15),
           published("stewardship-weather", note="5 to 15 mph are printed; the label goes first"),
           "a spray is harm above, where the label says nothing; never more"),
    Number("treat-windy", "calm", mph(5), "m/s", 0.5, mph(15), published("isu-broadleaf"), "a note above"),
)  # fmt: skip

NUMBERS: tuple[Number, ...] = (*_FEED, *_DOSE, *_MOW, *_SEED, *_LABEL)

SLOW_BANDS: tuple[tuple[float, str], ...] = ((80.0, "-80"), (50.0, "-50"), (15.0, "-15"), (0.0, ""))


_BY_RULE: dict[str, dict[str, Number]] = {}
for _one in NUMBERS:
    _BY_RULE.setdefault(_one.rule, {})[_one.name] = _one


def numbers(rule: str) -> tuple[Number, ...]:
    """The house numbers of a rule, in reading order; none for a rule that has none."""
    return tuple(_BY_RULE.get(rule, {}).values())


def number(rule: str, name: str) -> Number:
    """One house number. Raises LookupError naming those that the rule has."""
    found = _BY_RULE.get(rule, {}).get(name)
    if found is None:
        known = ", ".join(_BY_RULE.get(rule, {})) or "none"
        raise LookupError(f"{rule} has no number {name}; it has {known}.")
    return found


def by_slow_share(rule: str, name: str, slow_percent: float) -> Number:
    """The number for a slow-release share of the nitrogen, 0 to 100 %: the bands begin at 0, 15, 50 and 80 %."""
    share = round(slow_percent, 6)
    tail = next((tail for least, tail in SLOW_BANDS if share >= least), "")
    return number(rule, name + tail)
