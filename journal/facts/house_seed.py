"""House numbers of seed."""

from journal.facts.citation import memory, practice
from journal.facts.factors import celsius, g_per_m2, mm
from journal.facts.number import Number
from journal.facts.sources import judgment, published

_DAMP = published("ncsu-seeding", "isu-watering", "nebraska-lifeline", note="one to three times a day are printed")
_STARTER = practice("a starter at seeding; publications want it only where a soil test or the law allows")

SEED: tuple[Number, ...] = (
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
