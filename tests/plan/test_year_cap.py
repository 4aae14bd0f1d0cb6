"""What is left of the year's nitrogen: no feeding is offered, or missed, that would go over it."""

import pytest

from journal.facts.mixture import nitrogen_cap
from journal.plan.step import State
from journal.reckon.feedings import nitrogen_of_year
from journal.season.stand import stand_mix
from tests.scenario import LAWN, book, later, lawn, level, the

LABELLED = lawn(toml=LAWN.replace('name = "pond-ridge"', 'name = "pond-ridge"\nrate = "3lb/k 4lb/k"'))
FED = ("2026-04-20 feed pond-ridge 4lb/k front", "2026-06-08 feed pond-ridge 4lb/k front")


def test_the_labels_low_rate_does_not_fit_in_what_is_left() -> None:
    diary = book(*FED, "2026-08-01 feed pond-ridge 1.5lb/k front", on=LABELLED)
    feed = the(diary, "2026-09-20", "feed")
    assert (feed.state, feed.line, feed.amount) == (State.DONE, "", "")
    assert feed.why == "done for the year: 2.3 lb N/k of 2.7 lb N/k; pond-ridge brings 0.72 lb N/k or more by its label"
    for ahead in range(0, 60, 5):
        assert level(diary, later("2026-09-20", ahead), "feed-overdue") == ""


def test_without_a_label_the_rest_is_offered() -> None:
    diary = book(*FED, "2026-08-01 feed pond-ridge 1.5lb/k front")
    feed = the(diary, "2026-09-20", "feed")
    assert feed.state in (State.OPEN, State.LATE)
    assert "0.42 lb N/k" in feed.amount
    assert level(diary, "2026-10-10", "feed-overdue") == "late"


@pytest.mark.parametrize("rate", ["1lb/k", "2lb/k", "2.5lb/k", "3lb/k", "4lb/k", "5lb/k"])
def test_a_dose_never_exceeds_what_is_left(rate: str) -> None:
    diary = book(f"2026-04-20 feed pond-ridge {rate} front", f"2026-06-08 feed pond-ridge {rate} front", on=LABELLED)
    for ahead in range(0, 200, 9):
        on = later("2026-04-21", ahead)
        feed = the(diary, on, "feed")
        if feed.line and feed.state in (State.OPEN, State.LATE):
            fed = book(f"{on} {feed.line}", on=diary).on("front", on)
            assert nitrogen_of_year(fed, on.year) <= nitrogen_cap(stand_mix(fed)).nitrogen_cap_g_per_m2 + 1e-6
