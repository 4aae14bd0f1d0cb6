"""House numbers of feeding."""

from journal.facts.citation import practice
from journal.facts.factors import celsius, g_per_m2
from journal.facts.feeding import (
    MOST,
    MOST_BASIS,
    MOST_SOLUBLE,
    MOST_SOLUBLE_BASIS,
    MOST_SOLUBLE_NEW,
    MOST_SOLUBLE_NEW_BASIS,
)
from journal.facts.house_feeding_care import CARE
from journal.facts.number import Number
from journal.facts.sources import judgment, published

_SIX_TO_EIGHT = practice("every 6 to 8 weeks; no bulletin confirms it, some say none from June to August")
_STEP = judgment("never before the gap that feed-too-soon asks", "virginia-2003")
_SLOW = judgment("by the slow-release share of the nitrogen", "virginia-2003", "purdue-fall-n", "purdue-ay22")
_FOLLOW_UP = published("kstate-calendar", note="half a pound of nitrogen a month after sowing")

FEEDING: tuple[Number, ...] = (
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
    Number("feed-too-soon", "light", g_per_m2(0.5), "g/m2", 0, g_per_m2(0.9), _FOLLOW_UP,
           "one feeding of no more may come sooner on new grass"),
    Number("feed-too-soon", "light-from-day", 28, "d", 14, 90, _FOLLOW_UP, "from day, after sowing"),
    Number("feed-too-soon", "light-to-day", 56, "d", 14, 120, judgment("four to six weeks, and four to eight, are said",
           "kstate-calendar"), "to day"),
    Number("feed-too-soon", "stands-days", 60, "d", 1, 60, judgment(), "stands no longer than"),
    Number("seedling-feed", "open-day", 28, "d", 14, 90, _FOLLOW_UP, "opens on day, after sowing"),
    Number("seedling-feed", "late-day", 45, "d", 21, 120, judgment("one month is printed; four to eight weeks are said",
           "kstate-calendar"), "late after day"),
    Number("seedling-feed", "to-day", 70, "d", 28, 150, judgment("then the usual feedings begin"), "to day"),
    Number("seedling-feed", "counts-from-day", 21, "d", 1, 60, judgment(), "a feeding counts from day"),
    Number("seedling-feed", "after-starter-days", 28, "d", 0, 90, _FOLLOW_UP, "so long after a starter"),
    Number("seedling-feed", "before-end-days", 7, "d", 0, 60, judgment(), "not in the last days of growth"),
    Number("seedling-feed", "most", g_per_m2(0.5), "g/m2", g_per_m2(0.2), g_per_m2(0.9), _FOLLOW_UP,
           "nitrogen, at most"),
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
    Number("feed-year", "loss", g_per_m2(4), "g/m2", g_per_m2(1), g_per_m2(6),
           judgment("no cool-season programme seen prints so much"), "a loss above this much nitrogen in a year"),
    *CARE,
)  # fmt: skip
