"""House numbers of soil, phosphorus, lime and the shed."""

from journal.facts.citation import memory, practice
from journal.facts.factors import mm
from journal.facts.liming import DOSE, DOSE_BASIS, LARGE_DOSE, LARGE_DOSE_BASIS
from journal.facts.number import Number
from journal.facts.soil_test import RETEST_BASIS
from journal.facts.sources import judgment

_LIME_UREA = memory("from 7 to 30 days are told, and that the same day is fine; no bulletin confirmed a number")

SOIL: tuple[Number, ...] = (
    Number("soil-test-stale", "days", 1095, "d", 365, 3650, RETEST_BASIS, "a soil test speaks for so long"),
    Number("phosphate-reason", "seeding-days", 30, "d", 7, 120,
           judgment("laws speak of a season, habit of the day of sowing"), "a sowing so near is a reason"),
    Number("supplement-early", "seasons", 2, "x", 1, 5,
           practice("supplements from the second growing season on; none was seen proven on a home lawn"),
           "supplements from this growing season after the renovation on"),
    Number("lime-dose", "most", DOSE, "g/m2", DOSE / 5, 2 * DOSE, DOSE_BASIS, "a note above this much lime"),
    Number("lime-dose", "loss", LARGE_DOSE, "g/m2", DOSE / 5, 2 * LARGE_DOSE, LARGE_DOSE_BASIS, "a loss above"),
    Number("lime-dose", "days", 30, "d", 1, 180, DOSE_BASIS, "what goes down within so many days counts together"),
    Number("lime-urea", "days", 14, "d", 1, 60, _LIME_UREA, "lime and quick nitrogen lie so far apart"),
    Number("rate-off", "over", 1.2, "x", 1, 3, judgment("a spreader is set within 5 %; a fifth is beyond it"),
           "a note above so many times the label's high rate"),
    Number("rate-off", "under", 0.8, "x", 0, 1, judgment("the same"), "a note below so many times its low rate"),
    Number("feed-buffer", "distance", mm(1200), "mm", 0, mm(12000),
           judgment("four times the widest that was seen in a law, 25 ft", "vermont-1266b"),
           "a zone this near water or nearer is asked about its edge"),
    Number("stock-short", "ahead-days", 28, "d", 1, 120, judgment("time to buy"), "looked for so long before a sowing"),
    Number("photo-gap", "days", 35, "d", 7, 365, judgment("a month and a few days over"), "a point is late after"),
    Number("photo-gap", "step-days", 30, "d", 7, 365, judgment("monthly shows the change"), "the step opens after"),
)  # fmt: skip
