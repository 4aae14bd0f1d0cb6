"""A downpour on fresh seed: an inch in a day, judgment."""

import pytest

from tests.scenario import book, later, level, raised

SOWN = "2026-09-06"
SEED = f"{SOWN} seed three-river 6lb front"


def washed(rain: str, day: int = 5) -> str:
    return level(book(SEED, f"{later(SOWN, day)} {rain}"), later(SOWN, max(day, 0)), "seed-wash")


@pytest.mark.parametrize(
    ("rain", "expected"), [("rain 0.9in", ""), ("rain 1in", "note"), ("weather 70F 55F 1.4in", "note")]
)
def test_an_inch_in_a_day(rain: str, expected: str) -> None:
    assert washed(rain) == expected


@pytest.mark.parametrize(("day", "expected"), [(-1, ""), (0, "note"), (14, "note"), (15, "")])
def test_on_days_0_to_14(day: int, expected: str) -> None:
    assert washed("rain 1.2in", day) == expected


def test_it_stands_two_weeks() -> None:
    diary = book(SEED, f"{later(SOWN, 5)} rain 1.2in")
    assert [level(diary, later(SOWN, at), "seed-wash") for at in (4, 5, 18, 19)] == ["", "note", "note", ""]
    flag = raised(diary, later(SOWN, 5), "seed-wash")
    assert flag is not None
    assert flag.why == "1.2 in of rain Fri 11 Sep, day 5 after sowing"


def test_a_reading_for_several_days_is_spread_over_them() -> None:
    assert washed("rain 1.5in since 2026-09-07") == ""
    assert washed("rain 6in since 2026-09-07") == "note"


def test_a_gauge_beats_the_weather() -> None:
    diary = book(SEED, f"{later(SOWN, 5)} weather 70F 55F 1.4in", f"{later(SOWN, 5)} rain 0.3in front")
    assert level(diary, later(SOWN, 5), "seed-wash") == ""


def test_nothing_sown_nothing_washed() -> None:
    assert level(book(f"{SOWN} rain 2in"), SOWN, "seed-wash") == ""
    spot = book(f"{SOWN} seed three-river 0.5lb spot 40sqft front", f"{later(SOWN, 2)} rain 2in")
    assert level(spot, later(SOWN, 2), "seed-wash") == ""


def test_the_owners_own_number() -> None:
    own = book("2026-09-01 set seed-wash rain 2in", SEED, f"{later(SOWN, 5)} rain 1.2in")
    assert level(own, later(SOWN, 5), "seed-wash") == ""
