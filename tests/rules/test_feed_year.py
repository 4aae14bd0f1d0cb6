"""Nitrogen of a calendar year: 2.7 lb per 1,000 sq ft for most lawns, 1.4 for fine fescue."""

import pytest

from journal.season.history import History
from tests.scenario import LAWN, book, lawn, level, raised

WANTS = 'grass = ["kentucky bluegrass", "perennial ryegrass"]'


def fed(*pounds: float, on: History | None = None) -> History:
    """Nitrogen in lb per 1,000 sq ft, on the first of April, May, ..."""
    return book(
        *(f"2026-{4 + at:02}-01 feed pond-ridge {n / 0.24:.3f}lb/k front" for at, n in enumerate(pounds)), on=on
    )


@pytest.mark.parametrize(
    ("pounds", "says"),
    [((0.9, 0.9, 0.9), ""), ((0.9, 0.9, 0.95), ""), ((0.9, 0.9, 0.97), "note"), ((1, 1, 1, 1), "note"),
     ((1, 1, 1, 1, 0.1), "loss")],
)  # fmt: skip
def test_above_what_the_grass_wants_and_above_four_pounds(pounds: tuple[float, ...], says: str) -> None:
    assert level(fed(*pounds), "2026-09-01", "feed-year") == says


@pytest.mark.parametrize(("pounds", "says"), [((0.7, 0.7), ""), ((0.7, 0.75), "note")])
def test_fine_fescue_wants_half_of_it(pounds: tuple[float, ...], says: str) -> None:
    fescue = lawn((WANTS, 'grass = ["fine fescue"]'))
    assert level(fed(*pounds, on=fescue), "2026-09-01", "feed-year") == says


def test_it_stands_until_the_new_year() -> None:
    diary = fed(1, 1, 1)
    assert level(diary, "2026-05-31", "feed-year") == ""
    assert level(diary, "2026-12-31", "feed-year") == "note"
    assert level(diary, "2027-01-01", "feed-year") == ""
    assert level(diary, "2026-12-31", "feed-year", "back") == ""


@pytest.mark.parametrize(("pounds", "says"), [((0.5, 0.5), ""), ((0.5, 0.52), "harm")])
def test_a_local_limit_is_harm_from_the_second_decimal(pounds: tuple[float, ...], says: str) -> None:
    here = lawn(toml=LAWN.replace('name = "North Lane"', 'name = "North Lane"\nlocal_year_n = "1lb/k"'))
    flag = raised(fed(*pounds, on=here), "2026-09-01", "feed-year")
    assert (flag.level if flag else "") == says
    if flag:
        assert "by your local rule" in flag.why
        assert "local authority" in flag.do


def test_the_sum_since_sowing_is_told_too() -> None:
    diary = book(
        "2026-04-01 feed pond-ridge 4lb/k front", "2026-05-01 feed pond-ridge 4lb/k front",
        "2026-09-06 seed three-river 9lb front", "2026-09-07 feed pond-ridge 4lb/k front",
    )  # fmt: skip
    flag = raised(diary, "2026-09-10", "feed-year")
    assert flag is not None
    assert "0.96 lb/k since the sowing of Sun 6 Sep" in flag.why
    assert len(flag.evidence) == 3


def test_the_owners_own_loss_and_spots() -> None:
    diary = book("2026-04-01 set feed-year loss 2.8lb/k")
    assert level(fed(1, 1, 1, on=diary), "2026-09-01", "feed-year") == "loss"
    spot = book("2026-05-01 feed pond-ridge 1lb spot 20sqft front")
    assert level(spot, "2026-05-01", "feed-year") == ""
