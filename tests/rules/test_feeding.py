"""Feedings that are overdue.

Every 6 to 8 weeks is common practice, and no bulletin confirms it; longer after slow nitrogen: Virginia Dept. of
Conservation and Recreation, 2003; the yearly cap: Univ. of Maryland Extension, Lawn Fertilizer Schedule Table, 2023.
"""

import pytest

from tests.scenario import book, later, lawn, level, raised, weather

DRY = ("irrigated = true", "irrigated = false")
MONTHS = ('name = "North Lane"', 'name = "North Lane"\nfeeding = "months"')
FED = "2026-04-20 feed pond-ridge 7lb front"


def test_57_days_without_a_feeding_are_too_many() -> None:
    diary = book(FED)
    assert level(diary, later("2026-04-20", 56), "feed-overdue") == ""
    late = raised(diary, later("2026-04-20", 57), "feed-overdue")
    assert late is not None
    assert late.headline == "not fed for 57 days"
    assert late.rose == later("2026-04-20", 57)
    assert "no bulletin confirms it" in late.why
    fed = book("2026-06-16 feed pond-ridge 7lb front", on=diary)
    assert level(fed, "2026-06-16", "feed-overdue") == ""


@pytest.mark.parametrize(("percent", "days"), [(14, 56), (15, 70), (50, 84), (80, 112)])
def test_slow_nitrogen_lasts_longer(percent: int, days: int) -> None:
    slow = lawn(('slow = "60% of n"', f'slow = "{percent}% of n"'))
    diary = book("2026-04-20 feed slow-oak 7lb front", on=slow)
    assert level(diary, later("2026-04-20", days), "feed-overdue") == ""
    assert level(diary, later("2026-04-20", days + 1), "feed-overdue") == "late"


def test_the_owners_own_number_moves_it() -> None:
    diary = book("2026-04-01 set feed-overdue days 40", FED)
    assert level(diary, later("2026-04-20", 40), "feed-overdue") == ""
    late = raised(diary, later("2026-04-20", 41), "feed-overdue")
    assert late is not None
    assert late.numbers["days"].origin == "yours"


def test_without_a_feeding_it_counts_from_growth_start() -> None:
    assert level(lawn(), later("2026-04-10", 56), "feed-overdue") == ""
    assert level(lawn(), later("2026-04-10", 57), "feed-overdue") == "late"


def test_never_in_winter_nor_in_the_last_three_weeks() -> None:
    diary = book("2026-08-20 feed pond-ridge 7lb front")
    assert level(diary, "2026-10-20", "feed-overdue") == "late"
    assert level(diary, "2026-10-21", "feed-overdue") == ""
    assert level(diary, "2026-12-20", "feed-overdue") == ""
    late_fall = book("2026-08-01 set late_fall yes", "2026-08-20 feed pond-ridge 7lb front")
    assert level(late_fall, "2026-11-10", "feed-overdue") == "late"
    assert level(late_fall, "2026-11-11", "feed-overdue") == ""


def test_an_owner_who_starts_in_july_is_not_behind() -> None:
    diary = lawn(set_up="2026-07-15")
    assert level(diary, later("2026-07-15", 56), "feed-overdue") == ""
    assert level(diary, later("2026-07-15", 57), "feed-overdue") == "late"


def test_heat_and_a_dry_summer_hold_it() -> None:
    hot = book(FED, *weather("2026-06-20", 7, "88F 70F 0in"))
    assert level(hot, "2026-06-26", "feed-overdue") == ""
    mild = book(FED, *weather("2026-06-20", 7, "84F 70F 0in"))
    assert level(mild, "2026-06-26", "feed-overdue") == "late"
    dry = book(FED.replace("04-20", "04-11"), on=lawn(DRY))
    assert level(dry, "2026-06-14", "feed-overdue") == "late"
    assert level(dry, "2026-06-15", "feed-overdue") == ""
    assert level(dry, "2026-08-14", "feed-overdue") == ""
    assert level(dry, "2026-08-29", "feed-overdue") == ""
    assert level(dry, "2026-08-30", "feed-overdue") == "late"


def test_a_resting_lawn_is_not_fed() -> None:
    diary = book(FED, "2026-06-10 see dormant front")
    assert level(diary, "2026-07-01", "feed-overdue") == ""


def test_a_new_stand_is_held_to_day_69_and_has_two_weeks_from_there() -> None:
    sown = "2026-06-20"
    diary = book(FED, f"{sown} seed three-river 9lb front")
    assert level(diary, later(sown, 84), "feed-overdue") == ""
    assert level(diary, later(sown, 85), "feed-overdue") == "late"


def test_nothing_is_due_when_the_years_nitrogen_is_used() -> None:
    much = book("2026-04-12 feed pond-ridge 27lb front")
    assert level(much, "2026-07-10", "feed-overdue") == ""
    less = book("2026-04-12 feed pond-ridge 24lb front")
    assert level(less, "2026-07-10", "feed-overdue") == "late"


def test_lime_spots_and_trifles_are_no_feeding() -> None:
    diary = book(FED, "2026-06-10 feed pond-ridge 1lb spot 40sqft front", "2026-06-11 feed pond-ridge 1lb front")
    assert level(diary, later("2026-04-20", 57), "feed-overdue") == "late"


def test_by_months_the_flag_rises_in_a_windows_last_week() -> None:
    diary = lawn(MONTHS)
    assert level(diary, "2026-06-10", "feed-overdue") == ""
    assert level(diary, "2026-09-23", "feed-overdue") == ""
    assert level(diary, "2026-09-24", "feed-overdue") == "late"
    assert level(diary, "2026-10-21", "feed-overdue") == "late"
    assert level(diary, "2026-10-22", "feed-overdue") == ""
    fed = book("2026-09-01 feed pond-ridge 7lb front", on=diary)
    assert level(fed, "2026-09-28", "feed-overdue") == ""
    assert level(fed, "2026-11-03", "feed-overdue") == ""
    assert level(fed, "2026-11-04", "feed-overdue") == "late"
    assert level(fed, "2026-11-11", "feed-overdue") == ""


def test_fine_fescue_has_one_window() -> None:
    fescue = lawn(MONTHS, ('grass = ["kentucky bluegrass", "perennial ryegrass"]', 'grass = ["fine fescue"]'))
    assert level(fescue, "2026-10-08", "feed-overdue") == ""
    assert level(fescue, "2026-10-09", "feed-overdue") == "late"
    assert level(fescue, "2026-11-06", "feed-overdue") == ""


def test_by_months_an_owner_who_starts_in_the_window_is_not_behind() -> None:
    assert level(lawn(MONTHS, set_up="2026-09-10"), "2026-09-28", "feed-overdue") == ""


def test_it_never_stands_where_feeding_would_come_too_soon() -> None:
    for programme in (lawn(), lawn(MONTHS)):
        diary = book("2026-04-01 set feed-overdue days 20", "2026-08-15 feed pond-ridge 9lb front", on=programme)
        assert level(diary, later("2026-08-15", 27), "feed-overdue") == ""
