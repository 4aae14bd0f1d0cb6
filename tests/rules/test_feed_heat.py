"""Quick nitrogen in heat. Slow nitrogen seldom burns above 85 F: Purdue Univ., AY-22, Fertilizing Established Lawns,
1998; that quick nitrogen does from there on, and how much of it, is judgment.
"""

import pytest

from journal.facts.house import number
from tests.scenario import book, judged, later, level, raised

ON = "2026-07-10"


def at(high: int, *after: str, words: str = "feed pond-ridge 2lb/k front") -> str:
    diary = book(f"{ON} weather {high}F 60F", f"{ON} {words}", *after)
    return level(diary, later(ON, 2), "feed-heat")


def test_from_85_degrees_on() -> None:
    assert {one.key for one in number("feed-heat", "high").basis.citations} == {"purdue-ay22"}
    assert (at(84), at(85), at(95)) == ("", "loss", "loss")


@pytest.mark.parametrize(
    ("words", "expected"),
    [("feed pond-ridge 1.04lb/k front", ""), ("feed pond-ridge 1.1lb/k front", "loss"),
     ("feed slow-oak 2.5lb/k front", ""), ("feed slow-oak 3lb/k front", "loss"), ("feed pond-ridge front", "")],
)  # fmt: skip
def test_only_more_than_a_quarter_pound_of_quick_nitrogen(words: str, expected: str) -> None:
    assert at(90, words=words) == expected


def test_water_on_the_same_day_or_the_next_makes_it_a_note() -> None:
    assert at(90, f"{ON} water 0.25in front") == "note"
    assert at(90, f"{later(ON, 1)} rain 0.3in") == "note"
    assert at(90, f"{ON} water 0.1in front", f"{later(ON, 1)} water 0.15in front") == "note"
    assert at(90, f"{ON} water 0.2in front") == "loss"
    assert at(90, f"{later(ON, 2)} water 0.5in front") == "loss"
    assert at(90, f"{ON} water front") == "note"


def test_a_watering_before_it_does_not_help_where_both_have_a_time() -> None:
    timed = "feed pond-ridge 2lb/k front 15:00"
    assert at(90, f"{ON} water 0.3in front 6:00", words=timed) == "loss"
    assert at(90, f"{ON} water 0.3in front 17:00", words=timed) == "note"


def test_on_a_watered_seedbed_it_is_a_note() -> None:
    sown = "2026-07-05 seed three-river 9lb front"
    fed = (f"{ON} weather 90F 60F", f"{ON} feed oat-hill 3lb/k front")
    assert level(book(sown, *fed, f"{ON} water 5min front"), ON, "feed-heat") == "note"
    assert level(book(sown, *fed), ON, "feed-heat") == "loss"


def test_what_the_thermometer_said_counts_until_the_days_high_is_known() -> None:
    line = f"{ON} treat green-gate 2lb/k front temp 88F"
    assert level(book(line), ON, "feed-heat") == "loss"
    assert level(book(f"{ON} weather 80F 60F", line), ON, "feed-heat") == ""


def test_it_stands_two_weeks_says_how_hot_and_the_owner_may_set_it() -> None:
    diary = book(f"{ON} weather 90F 60F", f"{ON} feed pond-ridge 2lb/k front")
    flag = raised(diary, later(ON, 13), "feed-heat")
    assert flag is not None
    assert (flag.headline, flag.clears_on) == ("quick nitrogen at 90 F: it may burn", later(ON, 14))
    assert level(diary, later(ON, 14), "feed-heat") == ""
    own = book("2026-01-02 set feed-heat high 92F", f"{ON} weather 90F 60F", f"{ON} feed pond-ridge 2lb/k front")
    assert level(own, ON, "feed-heat") == ""


def test_before_the_line_is_saved_the_days_high_on_file_counts() -> None:
    hot = judged(book(f"{ON} weather 90F 60F"), ON, "feed pond-ridge 2lb/k front").raised
    assert "feed-heat" in {flag.rule for flag in hot}
