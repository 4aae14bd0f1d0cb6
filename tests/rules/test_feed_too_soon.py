"""Feedings that came too soon after the one before.

About 30 days between full feedings of quick nitrogen: Virginia Dept. of Conservation and Recreation, Name is a clue:
Fertilize cool-season grasses Sept.-Oct., 2003; six to eight weeks for slow: Purdue Univ., 2008. The bands are judgment.
Half a pound of nitrogen a month after sowing: K-State Extension in The Kansan, A tall fescue calendar, 2021.
"""

import pytest

from tests.scenario import book, judged, later, lawn, level, raised

FED = "2026-05-01"
FULL = f"{FED} feed pond-ridge 3.75lb/k front"
SOWN = "2026-09-06"
SEED = f"{SOWN} seed three-river 9lb front"
STARTER = f"{SOWN} feed oat-hill 4lb/k front"


def again(days: int, *lines: str, words: str = "feed pond-ridge 2lb/k front") -> str:
    """The level on the day of a second feeding so many days later."""
    on = later(FED, days)
    return level(book(*(lines or (FULL,)), f"{on} {words}"), on, "feed-too-soon")


def test_a_wait_of_28_days_is_over_on_day_28() -> None:
    assert again(27) == "loss"
    assert again(28) == ""


@pytest.mark.parametrize(("percent", "days"), [(14, 28), (15, 42), (49, 42), (50, 56), (79, 56), (80, 84)])
def test_slow_nitrogen_of_the_earlier_feeding_asks_for_more(percent: int, days: int) -> None:
    slow = lawn(('slow = "60% of n"', f'slow = "{percent}% of n"'))
    for gap, expected in ((days - 1, "loss"), (days, "")):
        on = later(FED, gap)
        diary = book(f"{FED} feed slow-oak 3.75lb/k front", f"{on} feed pond-ridge 2lb/k front", on=slow)
        assert level(diary, on, "feed-too-soon") == expected


def test_half_a_feeding_asks_for_half_the_gap_and_more_than_a_full_one_for_no_more() -> None:
    half = f"{FED} feed pond-ridge 1.875lb/k front"
    assert (again(13, half), again(14, half)) == ("loss", "")
    much = f"{FED} feed pond-ridge 6lb/k front"
    assert (again(27, much), again(28, much)) == ("loss", "")


def test_an_amount_not_known_asks_for_the_whole_gap() -> None:
    unknown = f"{FED} feed pond-ridge front"
    assert (again(27, unknown), again(28, unknown)) == ("loss", "")


def test_a_starter_of_four_pounds_asks_for_34_days() -> None:
    # 0.72 lb of nitrogen, a fifth of it slow: 42 x 0.72 / 0.9
    starter = f"{FED} feed oat-hill 4lb/k front"
    assert (again(33, starter), again(34, starter)) == ("loss", "")


def test_two_passes_on_one_day_spots_and_trifles_are_one_feeding() -> None:
    assert again(0) == ""
    assert again(5, words="feed pond-ridge 1lb spot 40sqft front") == ""
    assert again(5, words="feed pond-ridge 0.5lb/k front") == ""
    assert (
        level(book(FULL, f"{later(FED, 5)} feed pond-ridge 2lb/k back"), later(FED, 5), "feed-too-soon", "back") == ""
    )


def test_it_stands_until_the_gap_has_passed_and_says_what_to_do() -> None:
    diary = book(FULL, f"{later(FED, 20)} feed pond-ridge 2lb/k front")
    flag = raised(diary, later(FED, 20), "feed-too-soon")
    assert flag is not None
    assert flag.headline == "fed again after 20 days, 8 days too soon"
    assert flag.clears_on == later(FED, 28)
    assert "feed nothing before Fri 5 Jun" in flag.do
    assert level(diary, later(FED, 27), "feed-too-soon") == "loss"
    assert level(diary, later(FED, 28), "feed-too-soon") == ""
    slow = book(f"{FED} feed slow-oak 3.75lb/k front", f"{later(FED, 1)} feed pond-ridge 2lb/k front",
                on=lawn(('slow = "60% of n"', 'slow = "90% of n"')))  # fmt: skip
    assert level(slow, later(FED, 60), "feed-too-soon") == "loss"
    assert level(slow, later(FED, 61), "feed-too-soon") == ""


def test_the_owners_own_gap_and_its_range() -> None:
    diary = book("2026-04-01 set feed-too-soon days 35d", FULL, f"{later(FED, 30)} feed pond-ridge 2lb/k front")
    flag = raised(diary, later(FED, 30), "feed-too-soon")
    assert flag is not None
    assert (flag.numbers["days"].words, flag.numbers["days"].origin) == ("35 d", "yours")
    full = book("2026-04-01 set feed-too-soon full-dose 1.2lb/k", FULL, f"{later(FED, 22)} feed pond-ridge 2lb/k front")
    assert level(full, later(FED, 22), "feed-too-soon") == ""


@pytest.mark.parametrize(("age", "expected"), [(27, "loss"), (28, ""), (33, ""), (34, "")])
def test_the_light_feeding_of_new_grass_is_free_from_day_28(age: int, expected: str) -> None:
    diary = book(SEED, STARTER, f"{later(SOWN, age)} feed pond-ridge 2lb/k front")
    assert level(diary, later(SOWN, age), "feed-too-soon") == expected


def test_only_one_only_to_day_56_and_only_a_light_one() -> None:
    late = f"{later(SOWN, 27)} feed oat-hill 4lb/k front"
    rows = ((56, "2lb/k", ""), (57, "2lb/k", "loss"), (50, "2.1lb/k", ""), (50, "2.2lb/k", "loss"), (50, "", ""))
    for age, amount, expected in rows:
        diary = book(SEED, late, f"{later(SOWN, age)} feed pond-ridge {amount} front")
        assert level(diary, later(SOWN, age), "feed-too-soon") == expected, (age, amount)
    twice = book(SEED, STARTER, *(f"{later(SOWN, age)} feed pond-ridge 2lb/k front" for age in (29, 40)))
    assert level(twice, later(SOWN, 40), "feed-too-soon") == "loss"


def test_a_line_says_so_before_it_is_saved() -> None:
    found = judged(book(FULL), later(FED, 20), "feed pond-ridge 2lb/k front").raised
    assert "feed-too-soon" in {flag.rule for flag in found}
