"""No more than a third of the height at once.

At 3 in mow at or before 4.5 in: Cornell Gardening, The 'One-Third Rule'; Penn State Extension, 2016. What grows in a
month is from memory, at its low end.
"""

import pytest

from journal.reckon.standing_height import removed_share
from tests.scenario import book, judged, later, lawn, level, raised, the


def test_the_published_third() -> None:
    assert removed_share(4.5, 3) == pytest.approx(1 / 3)
    assert removed_share(1.5, 1) == pytest.approx(1 / 3)


@pytest.mark.parametrize(("height", "expected"), [("4.5in", ""), ("4.54in", ""), ("4.6in", "loss"), ("6in", "loss")])
def test_more_than_a_third_of_what_was_measured_is_a_loss(height: str, expected: str) -> None:
    diary = book("2026-05-04 mow 3in front", f"2026-05-10 height {height} front", "2026-05-10 mow 3in front")
    assert level(diary, "2026-05-10", "mow-one-third") == expected


@pytest.mark.parametrize(("measured", "expected"), [("2026-05-08", "loss"), ("2026-05-07", "")])
def test_a_height_counts_on_its_day_and_two_more(measured: str, expected: str) -> None:
    diary = book("2026-05-04 mow 3in front", f"{measured} height 6in front", "2026-05-10 mow 3in front")
    assert level(diary, "2026-05-10", "mow-one-third") == expected


def test_a_height_before_an_earlier_cut_does_not_count_for_the_next() -> None:
    diary = book("2026-05-10 height 6in front", "2026-05-10 mow 4in front", "2026-05-12 mow 3in front")
    assert level(diary, "2026-05-12", "mow-one-third") == ""


def test_nor_one_that_was_measured_after_the_cut() -> None:
    diary = book(
        "2026-05-04 mow 3in front", "2026-05-10 height 4.5in front 8:00", "2026-05-10 height 6in front 11:00",
        "2026-05-10 mow 3in front 9:00",
    )  # fmt: skip
    assert level(diary, "2026-05-10", "mow-one-third") == ""


def test_it_clears_with_the_next_cut_or_after_two_weeks() -> None:
    diary = book("2026-05-10 height 6in front", "2026-05-10 mow 3in front")
    assert level(diary, "2026-05-23", "mow-one-third") == "loss"
    assert level(diary, "2026-05-24", "mow-one-third") == ""
    assert level(book("2026-05-16 mow 3in front", on=diary), "2026-05-16", "mow-one-third") == ""


def test_before_sowing_a_scalp_is_advised() -> None:
    diary = book("2026-09-04 height 4in front", "2026-09-04 mow 1.5in front")
    assert level(diary, "2026-09-04", "mow-one-third") == "loss"
    assert level(book("2026-09-06 seed three-river 9lb front", on=diary), "2026-09-06", "mow-one-third") == ""


@pytest.mark.parametrize(
    ("cut", "expected"),
    [("2026-05-15", "note"), ("2026-05-14", ""), ("2026-05-25", "note"), ("2026-05-26", "")],
)
def test_by_growth_alone_it_is_a_note_from_a_late_cut_to_three_weeks(cut: str, expected: str) -> None:
    """At an inch a week 11 days bring 3 in to 4.57 in; ten days are in time."""
    diary = book("2026-05-04 mow 3in front", f"{cut} mow 3in front")
    assert level(diary, cut, "mow-one-third") == expected


def test_an_estimate_says_that_it_is_one() -> None:
    note = raised(book("2026-05-04 mow 3in front", "2026-05-18 mow 3in front"), "2026-05-18", "mow-one-third")
    assert note is not None
    assert note.headline == "about 40 % of the height cut at once, by estimate"
    assert "nothing was measured" in note.why


def test_a_cut_in_time_but_much_lower_than_the_last_is_told() -> None:
    diary = book("2026-05-04 mow 4in front", "2026-05-12 mow 2.5in front")
    assert level(diary, "2026-05-12", "mow-one-third") == "note"
    assert level(book("2026-05-04 mow 4in front", "2026-05-09 mow 2.5in front"), "2026-05-09", "mow-one-third") == ""


def test_no_estimate_for_the_first_cut_of_a_year_or_after_sowing() -> None:
    assert level(book("2026-04-24 mow 2.5in front"), "2026-04-24", "mow-one-third") == ""
    sown = book(
        "2026-08-30 mow 4in front", "2026-08-31 seed quick-rye 9lb front", "2026-09-20 height 3.6in front",
        "2026-09-20 mow 2.5in front",
    )  # fmt: skip
    assert level(sown, "2026-09-20", "mow-one-third") == ""


def test_a_dry_lawn_that_nobody_waters_has_not_grown() -> None:
    dry = lawn(("irrigated = true", "irrigated = false"))
    rain = [f"{later('2026-05-20', 2 * at)} rain 0in" for at in range(20)]
    diary = book(*rain, "2026-06-12 mow 3in front", "2026-06-30 mow 2.5in front", on=dry)
    assert level(diary, "2026-06-30", "mow-one-third") == ""
    assert (
        level(book("2026-06-12 mow 3in front", "2026-06-30 mow 2.5in front"), "2026-06-30", "mow-one-third") == "note"
    )


def test_after_sowing_it_is_a_note_at_most() -> None:
    """Old turf over the seed is about 7 in tall on day 28."""
    diary = book("2026-08-25 seed three-river 9lb front", "2026-09-22 height 7in front", "2026-09-22 mow 3in front")
    assert level(diary, "2026-09-22", "mow-one-third") == "note"


def test_the_first_cut_at_two_thirds_raises_nothing() -> None:
    diary = book("2026-08-25 seed three-river 9lb front", "2026-09-22 height 7in front")
    step = the(diary, "2026-09-22", "first-mow")
    assert step.line == "mow 4.75in bag front"
    assert "then down every 2 to 4 days" in step.amount
    assert "mow-one-third" not in {flag.rule for flag in judged(diary, "2026-09-22", step.line).raised}


def test_the_owners_own_third() -> None:
    diary = book("2026-04-01 set mow-one-third share 25%", "2026-05-10 height 4.2in front", "2026-05-10 mow 3in front")
    assert level(diary, "2026-05-10", "mow-one-third") == "loss"


def test_in_the_south_october_grows_like_april() -> None:
    south = lawn(
        ("latitude = 42.3", "latitude = -42.3"), ('growth = ["04-10", "11-10"]', 'growth = ["09-10", "05-10"]')
    )
    cuts = "2026-11-04 mow 3in front", "2026-11-18 mow 3in front"
    assert level(book(*cuts, on=south), "2026-11-18", "mow-one-third") == "note"
    assert level(book(*cuts), "2026-11-18", "mow-one-third") == ""
