"""A cut lower than the grass bears.

Kentucky bluegrass is never to go below 2 in: Ask Extension, question 158965; other grasses: Purdue Univ., AY-8, 1998.
"""

import pytest

from tests.scenario import book, judged, later, lawn, level, raised

BERMUDA = ('grass = ["kentucky bluegrass", "perennial ryegrass"]', 'grass = ["common bermuda"]')
UNKNOWN = ('grass = ["kentucky bluegrass", "perennial ryegrass"]', 'grass = ["unknown"]')


@pytest.mark.parametrize(("height", "expected"), [("2in", ""), ("1.97in", ""), ("1.9in", "loss"), ("1in", "loss")])
def test_below_two_inches_is_a_loss_for_bluegrass(height: str, expected: str) -> None:
    assert level(book(f"2026-05-10 mow {height} front"), "2026-05-10", "mow-too-low") == expected


def test_an_unknown_lawn_counts_as_bluegrass() -> None:
    assert level(book("2026-05-10 mow 1.8in front", on=lawn(UNKNOWN)), "2026-05-10", "mow-too-low") == "loss"


def test_it_stands_two_weeks_or_to_a_cut_in_range() -> None:
    low = book("2026-11-05 mow 1.5in front")
    flag = raised(low, "2026-11-18", "mow-too-low")
    assert flag is not None
    assert flag.clears_on == later("2026-11-05", 14)
    assert flag.evidence == (low.track("front", type(low.tracks["front", "mowing"].entries[0])).entries[0].id,)
    assert level(low, "2026-11-19", "mow-too-low") == ""
    assert level(book("2026-11-09 mow 2.5in front", on=low), "2026-11-09", "mow-too-low") == ""
    assert level(book("2026-11-09 mow 1.7in front", on=low), "2026-11-18", "mow-too-low") == "loss"


@pytest.mark.parametrize(
    ("after", "expected"),
    [
        ("2026-09-07 seed three-river 9lb front", ""),
        ("2026-09-08 seed three-river 9lb front", "loss"),
        ("2026-09-03 dethatch front", ""),
        ("2026-09-03 aerate front", "loss"),
    ],
)
def test_a_low_cut_within_seven_days_before_sowing_or_dethatching_is_advised(after: str, expected: str) -> None:
    assert level(book("2026-09-01 mow 1.25in front", after), "2026-09-08", "mow-too-low") == expected


def test_and_before_a_sowing_that_is_intended() -> None:
    planned = book("2026-08-20 intend seed three-river 2026-09-05 front")
    assert judged(planned, "2026-09-01", "mow 1.25in front").gravest is None
    gravest = judged(book("2026-04-20 mow 3in front"), "2026-04-27", "mow 1.25in front").gravest
    assert gravest is not None
    assert gravest.level == "loss"


def test_the_owners_own_low_end() -> None:
    diary = book("2026-04-01 set mow-too-low low 1.5in", "2026-05-10 mow 1.6in front")
    assert level(diary, "2026-05-10", "mow-too-low") == ""
    assert level(book("2026-05-11 mow 1.4in front", on=diary), "2026-05-11", "mow-too-low") == "loss"
