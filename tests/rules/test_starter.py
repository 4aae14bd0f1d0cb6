"""The starter at sowing: common practice; publications want phosphorus only where a soil test or the law allows it
(Vermont Agency of Agriculture, Phosphorous Fertilizer Information - Turf).
"""

import pytest

from tests.scenario import book, later, lawn, level, raised

SOWN = "2026-09-06"
SEED = f"{SOWN} seed three-river 9lb front"


def test_missing_from_day_8_to_day_21() -> None:
    diary = book(SEED)
    assert level(diary, later(SOWN, 7), "starter-missing") == ""
    missing = raised(diary, later(SOWN, 8), "starter-missing")
    assert missing is not None
    assert missing.level == "late"
    assert missing.clears_on == later(SOWN, 22)
    assert level(diary, later(SOWN, 21), "starter-missing") == "late"
    assert level(diary, later(SOWN, 22), "starter-missing") == ""


@pytest.mark.parametrize(("days", "counts"), [(-8, False), (-7, True), (0, True), (10, True)])
def test_a_starter_from_a_week_before_counts(days: int, counts: bool) -> None:
    lines = sorted([SEED, f"{later(SOWN, days)} feed oat-hill 4lb front"])
    assert level(book(*lines), later(SOWN, 10), "starter-missing") == ("" if counts else "late")


def test_the_owners_own_days() -> None:
    diary = book("2026-09-01 set starter-missing from-day 4", SEED)
    assert level(diary, later(SOWN, 4), "starter-missing") == "late"


def test_a_spot_or_a_dormant_sowing_wants_none() -> None:
    spot = book(f"{SOWN} seed three-river 1lb spot 40sqft front")
    assert level(spot, later(SOWN, 10), "starter-missing") == ""
    dormant = book("2026-11-20 seed three-river 9lb front")
    assert level(dormant, "2026-12-01", "starter-missing") == ""
    assert level(dormant, "2027-04-20", "starter-missing") == ""


def test_plain_nitrogen_serves_where_the_soil_has_phosphorus() -> None:
    plain = f"{later(SOWN, 1)} feed pond-ridge 5lb front"
    tested = book("2026-08-01 soil p high front", SEED)
    assert level(tested, later(SOWN, 8), "starter-missing") == "late"
    fed = book(plain, on=tested)
    assert level(fed, later(SOWN, 8), "starter-missing") == ""
    assert level(fed, later(SOWN, 8), "starter-wrong") == ""
    untested = book(SEED, plain)
    assert level(untested, later(SOWN, 8), "starter-missing") == ""  # a starter would come too soon after it
    assert level(untested, later(SOWN, 18), "starter-missing") == "late"
    assert level(untested, later(SOWN, 8), "starter-wrong") == "loss"
    low = book("2026-08-01 soil p low front", SEED, plain)
    assert level(low, later(SOWN, 8), "starter-wrong") == "loss"


def test_an_old_soil_test_says_nothing() -> None:
    tested = book("2026-08-20 soil p high front")
    on = later("2026-08-20", 3 * 365)
    for fed, expected in ((later(on, -1), ""), (on, "loss")):
        diary = book(f"{later(on, -2)} seed three-river 9lb front", f"{fed} feed pond-ridge 5lb front", on=tested)
        assert level(diary, fed, "starter-wrong") == expected


@pytest.mark.parametrize(("days", "expected"), [(-8, ""), (-7, "loss"), (3, "loss"), (27, "loss"), (28, "")])
def test_another_feeding_is_wrong_from_a_week_before_to_day_27(days: int, expected: str) -> None:
    lines = sorted([SEED, f"{later(SOWN, days)} feed pond-ridge 7lb front"])
    assert level(book(*lines), max(later(SOWN, days), later(SOWN, 0)), "starter-wrong") == expected


def test_a_wrong_feeding_is_free_on_day_28() -> None:
    diary = book(SEED, f"{later(SOWN, 3)} feed pond-ridge 7lb front")
    assert level(diary, later(SOWN, 27), "starter-wrong") == "loss"
    assert level(diary, later(SOWN, 28), "starter-wrong") == ""


def test_weed_and_feed_is_judged_by_its_wait_alone() -> None:
    diary = book(f"{later(SOWN, -3)} feed green-gate 7lb front", SEED)
    assert level(diary, SOWN, "starter-wrong") == ""
    assert level(diary, SOWN, "seed-over-residue") == "loss"


def test_closed_dates_silence_the_missing_starter() -> None:
    bound = lawn(('name = "North Lane"', 'name = "North Lane"\nlocal_closed = ["09-10", "03-31"]'))
    assert level(book(SEED, on=bound), later(SOWN, 10), "starter-missing") == ""
    assert level(book(SEED), later(SOWN, 10), "starter-missing") == "late"


def test_a_local_rule_against_phosphorus() -> None:
    bound = lawn(('name = "North Lane"', 'name = "North Lane"\nlocal_seeding = false'))
    diary = book(SEED, f"{later(SOWN, 1)} feed pond-ridge 5lb front", on=bound)
    assert level(diary, later(SOWN, 8), "starter-missing") == ""
    assert level(diary, later(SOWN, 8), "starter-wrong") == ""
