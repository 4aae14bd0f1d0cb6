"""The light feeding of new grass: half a pound of nitrogen a month after sowing, K-State Extension in The Kansan, A
tall fescue calendar, 2021; others say four to eight weeks. Its last days are judgment.
"""

import pytest

from journal.facts.factors import g_per_m2
from journal.facts.house import number
from tests.scenario import book, later, lawn, level, raised, weather

SOWN = "2026-08-20"
SEED = f"{SOWN} seed three-river 9lb front"
STARTER = f"{SOWN} feed oat-hill 3lb/k front"
DIARY = book(SEED, STARTER)


def test_half_a_pound_is_what_is_printed() -> None:
    most = number("seedling-feed", "most")
    assert (most.default, most.basis.citations[0].key) == (g_per_m2(0.5), "kstate-calendar")


def test_it_is_late_from_day_46_to_day_70() -> None:
    for age, expected in ((45, ""), (46, "late"), (70, "late"), (71, "")):
        assert level(DIARY, later(SOWN, age), "seedling-feed") == expected, age
    flag = raised(DIARY, later(SOWN, 46), "seedling-feed")
    assert flag is not None
    assert flag.headline == "new grass not fed by day 46"
    assert "at most 0.5 lb/k of nitrogen" in flag.do
    assert "taken to be up since" in flag.why


@pytest.mark.parametrize(("age", "expected"), [(20, "late"), (21, ""), (30, ""), (50, "")])
def test_a_feeding_from_day_21_on_counts(age: int, expected: str) -> None:
    diary = book(SEED, f"{later(SOWN, age)} feed pond-ridge 2lb/k front")
    assert level(diary, later(SOWN, 52), "seedling-feed") == expected


def test_not_within_28_days_of_a_starter() -> None:
    diary = book(SEED, f"{later(SOWN, 20)} feed oat-hill 3lb/k front")
    assert level(diary, later(SOWN, 47), "seedling-feed") == ""
    assert level(diary, later(SOWN, 48), "seedling-feed") == "late"


def test_after_day_56_not_before_the_gap_is_over() -> None:
    slow = lawn(('slow = "60% of n"', 'slow = "90% of n"'))
    diary = book(SEED, f"{later(SOWN, -15)} feed slow-oak 3.75lb/k front", on=slow)
    assert level(diary, later(SOWN, 56), "seedling-feed") == "late"
    assert level(diary, later(SOWN, 57), "seedling-feed") == ""
    assert level(diary, later(SOWN, 69), "seedling-feed") == "late"


def test_not_in_the_last_week_of_growth() -> None:
    september = book("2026-09-06 seed three-river 9lb front")
    assert level(september, "2026-11-03", "seedling-feed") == "late"
    assert level(september, "2026-11-04", "seedling-feed") == ""
    assert level(book("2026-09-20 seed three-river 9lb front"), "2026-11-05", "seedling-feed") == ""


def test_not_on_closed_days_nor_in_frost_rest_or_heat() -> None:
    bound = lawn(('name = "North Lane"', 'name = "North Lane"\nlocal_closed = ["10-15", "03-31"]'))
    diary = book(SEED, STARTER, on=bound)
    assert level(diary, "2026-10-14", "seedling-feed") == "late"
    assert level(diary, "2026-10-15", "seedling-feed") == ""
    on = later(SOWN, 50)
    for line in ("see dormant front", "see frozen front", "weather 86F 60F"):
        assert level(book(f"{on} {line}", on=DIARY), on, "seedling-feed") == "", line
    assert level(book(f"{on} weather 84F 60F", on=DIARY), on, "seedling-feed") == "late"
    cold = book(*weather(later(on, -4), 5, "36F 20F"), on=DIARY)
    assert level(cold, on, "seedling-feed") == ""


def test_not_before_it_is_up_and_not_when_the_years_nitrogen_is_used() -> None:
    much = book("2026-04-12 feed pond-ridge 27lb front", SEED, STARTER)
    assert level(much, later(SOWN, 50), "seedling-feed") == ""
    spent = book("2026-01-02 set seedling-feed late-day 21d", "2026-01-02 set seedling-feed open-day 14d", SEED)
    assert level(spent, later(SOWN, 27), "seedling-feed") == ""
    assert level(spent, later(SOWN, 28), "seedling-feed") == "late"


def test_a_spot_wants_none_and_a_dormant_sowing_counts_from_growth_start() -> None:
    spot = book(f"{SOWN} seed three-river 1lb spot 40sqft front")
    assert level(spot, later(SOWN, 50), "seedling-feed") == ""
    dormant = book("2026-11-25 seed three-river 9lb front")
    assert level(dormant, later("2026-11-25", 50), "seedling-feed") == ""
    assert level(dormant, later("2027-04-10", 45), "seedling-feed") == ""
    assert level(dormant, later("2027-04-10", 46), "seedling-feed") == "late"


def test_a_book_that_was_begun_later_counts_from_then() -> None:
    diary = book(SEED, on=lawn(set_up=later(SOWN, 40)))
    assert level(diary, later(SOWN, 60), "seedling-feed") == ""


def test_the_owners_own_days() -> None:
    own = book("2026-01-02 set seedling-feed late-day 40d", "2026-01-02 set seedling-feed to-day 60d", SEED, STARTER)
    for age, expected in ((40, ""), (41, "late"), (60, "late"), (61, "")):
        assert level(own, later(SOWN, age), "seedling-feed") == expected


def test_feed_overdue_takes_over_after_it() -> None:
    diary = book("2026-04-20 seed three-river 9lb front", "2026-04-21 feed oat-hill 3lb/k front")
    for age in range(46, 100):
        on = later("2026-04-20", age)
        standing = [rule for rule in ("starter-missing", "seedling-feed", "feed-overdue") if level(diary, on, rule)]
        assert len(standing) <= 1, (age, standing)
    assert level(diary, later("2026-04-20", 85), "feed-overdue") == "late"
