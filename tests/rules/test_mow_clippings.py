"""Clippings left on new grass: bagging for four weeks is common practice, no source."""

import pytest

from tests.scenario import book, later, level

SOWN = "2026-08-25 seed three-river 9lb front"
FIRST = "2026-09-22 mow 3in bag front"


@pytest.mark.parametrize(("days", "expected"), [(0, "note"), (27, "note"), (28, "")])
def test_left_within_four_weeks_of_the_first_cut(days: int, expected: str) -> None:
    cut = later("2026-09-22", days)
    lines = [SOWN, f"{cut} mow 3in return front"] if days == 0 else [SOWN, FIRST, f"{cut} mow 3in return front"]
    assert level(book(*lines), cut, "mow-clippings") == expected


def test_scatter_is_the_same_and_a_cut_that_does_not_say_is_not_blamed() -> None:
    assert level(book(SOWN, FIRST, "2026-09-29 mow 3in scatter front"), "2026-09-29", "mow-clippings") == "note"
    assert level(book(SOWN, "2026-09-22 mow 3in front"), "2026-09-22", "mow-clippings") == ""
    usual = book("2026-08-01 mow 3in return front", SOWN, "2026-09-22 mow 3in front")
    assert level(usual, "2026-09-22", "mow-clippings") == ""


def test_it_goes_with_a_bagged_cut_or_after_the_four_weeks() -> None:
    left = book(SOWN, "2026-09-22 mow 3in return front")
    assert level(left, "2026-10-19", "mow-clippings") == "note"
    assert level(left, "2026-10-20", "mow-clippings") == ""
    assert level(book("2026-09-29 mow 3in bag front", on=left), "2026-09-29", "mow-clippings") == ""


def test_after_a_weed_product_they_are_to_be_left() -> None:
    sprayed = book(SOWN, FIRST, "2026-09-25 treat leaf-off 2floz front", "2026-09-29 mow 3in return front")
    assert level(sprayed, "2026-09-29", "mow-clippings") == ""
    third = book("2026-10-04 mow 3in return front", "2026-10-08 mow 3in return front", on=sprayed)
    assert level(third, "2026-10-08", "mow-clippings") == ""
    assert level(book("2026-10-12 mow 3in return front", on=third), "2026-10-12", "mow-clippings") == "note"


def test_old_grass_takes_its_clippings() -> None:
    assert level(book("2026-05-10 mow 3in return front"), "2026-05-10", "mow-clippings") == ""
    spot = book("2026-05-01 seed three-river 0.5lb spot 20sqft front", "2026-05-30 mow 3in return front")
    assert level(spot, "2026-05-30", "mow-clippings") == ""


def test_the_owners_own_weeks_move_the_step_too() -> None:
    diary = book("2026-08-01 set mow-clippings days 14", SOWN, FIRST, "2026-10-06 mow 3in return front")
    assert level(diary, "2026-10-06", "mow-clippings") == ""
