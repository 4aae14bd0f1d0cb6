"""Supplements wait for the second growing season: common practice, no source."""

import pytest

from journal.season.history import History
from tests.rules.soil_shed import SHED
from tests.scenario import book, later, lawn, level


def early(history: History, on: str) -> str:
    return level(history, on, "supplement-early")


def renovated(sown: str, *changes: tuple[str, str]) -> History:
    return lawn(('name = "North Lane"', f'name = "North Lane"\nrenovated = "{sown}"'), *changes, toml=SHED)


@pytest.mark.parametrize(
    ("sown", "free"),
    [
        ("2025-09-06", "2027-04-10"),  # sown on or after 1 July of Y: from growth start of Y + 2
        ("2025-07-01", "2027-04-10"),
        ("2025-06-30", "2026-04-10"),  # sown earlier: from growth start of Y + 1
        ("2025-05-01", "2026-04-10"),
        ("2025-02-01", "2026-04-10"),  # sown dormant in winter
        ("2025-11-20", "2027-04-10"),
    ],
)
def test_the_second_growing_season_by_when_it_was_sown(sown: str, free: str) -> None:
    book_of = renovated(sown)
    before = later(free, -1)
    assert early(book(f"{before} feed kelp-mix 9floz front", on=book_of), str(before)) == "note"
    assert early(book(f"{free} feed kelp-mix 9floz front", on=book_of), free) == ""


def test_it_stands_for_thirty_days() -> None:
    diary = book("2026-06-10 feed kelp-mix 9floz front", on=renovated("2025-09-06"))
    assert [early(diary, str(later("2026-06-10", at))) for at in (-1, 0, 29, 30)] == ["", "note", "note", ""]


def test_the_first_sowing_on_file_stands_in_for_the_renovation_a_patch_does_not() -> None:
    fed = "2026-06-10 feed kelp-mix 9floz front"
    assert early(book("2026-05-01 seed three-river 9lb front", fed, on=lawn(toml=SHED)), "2026-06-10") == "note"
    patch = book("2026-05-01 seed three-river 0.3lb spot 20sqft front", fed, on=lawn(toml=SHED))
    assert early(patch, "2026-06-10") == ""


def test_with_no_renovation_or_no_growing_season_known_nothing_is_said() -> None:
    fed = "2026-06-10 feed kelp-mix 9floz front"
    assert early(book(fed, on=lawn(toml=SHED)), "2026-06-10") == ""
    unknown = renovated("2025-09-06", ('last_frost = "05-06"\nfirst_frost = "10-05"\n', ""),
                        ('growth = ["04-10", "11-10"]\n', ""))  # fmt: skip
    assert early(book(fed, on=unknown), "2026-06-10") == ""


def test_fertilizer_iron_and_lime_are_no_supplements() -> None:
    diary = book("2026-06-10 feed pond-ridge 5lb front", "2026-06-10 feed grey-lime 60lb front",
                 on=renovated("2025-09-06"))  # fmt: skip
    assert early(diary, "2026-06-10") == ""


def test_in_the_south_the_seasons_are_half_a_year_apart() -> None:
    south = renovated(
        "2025-03-06",
        ("latitude = 42.3", "latitude = -42.3"),
        ('growth = ["04-10", "11-10"]', 'growth = ["09-10", "05-10"]'),
    )
    assert early(book("2026-09-09 feed kelp-mix 9floz front", on=south), "2026-09-09") == "note"
    assert early(book("2026-09-10 feed kelp-mix 9floz front", on=south), "2026-09-10") == ""


def test_the_owners_own_season_counts() -> None:
    diary = ("2026-05-01 set supplement-early seasons 1", "2026-06-10 feed kelp-mix 9floz front")
    assert early(book(*diary, on=renovated("2025-09-06")), "2026-06-10") == ""
