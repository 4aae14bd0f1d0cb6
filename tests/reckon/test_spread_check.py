"""What went down against what the label says: 3 to 4 lb/k, 1 to 1.5 fl oz/k."""

from datetime import date

import pytest

from journal.reckon.spread_check import SpreadCheck, spread_checks
from journal.season.history import History
from tests.reckon.garden import LB_PER_K, book


def checks(history: History) -> tuple[SpreadCheck, ...]:
    return spread_checks(history, date(2026, 1, 1), date(2026, 12, 31))


def test_a_spreader_that_gives_too_much() -> None:
    (found,) = checks(book("2026-05-16 feed pond-ridge 22.5lb front back"))
    assert found.rate / LB_PER_K == pytest.approx(4.5)
    assert found.off_percent == pytest.approx(12.5)
    assert found.zones == ("front", "back")
    assert found.by_label


def test_a_spreader_that_gives_too_little() -> None:
    (found,) = checks(book("2026-05-16 feed pond-ridge 12lb front back"))
    assert found.off_percent == pytest.approx(-20)


@pytest.mark.parametrize("pounds", [15, 20, 20.9, 14.3])
def test_inside_the_label_and_five_percent_beside_it_nothing_is_said(pounds: float) -> None:
    assert checks(book(f"2026-05-16 feed pond-ridge {pounds}lb front back")) == ()


@pytest.mark.parametrize("pounds", [21.2, 14.2])
def test_more_than_five_percent_beside_it_is_told(pounds: float) -> None:
    assert len(checks(book(f"2026-05-16 feed pond-ridge {pounds}lb front back"))) == 1


def test_two_passes_of_half_the_rate_are_one_application() -> None:
    passes = ["2026-05-16 feed pond-ridge 8lb front back", "2026-05-16 feed pond-ridge 8lb front back"]
    assert checks(book(*passes)) == ()
    (found,) = checks(book(*passes, "2026-05-16 feed pond-ridge 8lb front back"))
    assert found.rate / LB_PER_K == pytest.approx(4.8)
    assert len(found.entries) == 3


def test_a_second_pass_on_one_zone_is_that_zones_alone() -> None:
    (found,) = checks(book("2026-05-16 feed pond-ridge 18lb front back", "2026-05-16 feed pond-ridge 2lb front"))
    assert found.zones == ("front",)
    assert found.rate / LB_PER_K == pytest.approx(4.6)


def test_a_part_is_judged_by_what_it_covered() -> None:
    assert checks(book("2026-05-16 feed pond-ridge 3.5lb part 1/2 front")) == ()
    assert len(checks(book("2026-05-16 feed pond-ridge 7lb part 1/2 front"))) == 1


def test_a_spot_and_a_service_are_no_spreader_of_ours() -> None:
    assert checks(book("2026-05-16 feed pond-ridge 2lb spot 40sqft front")) == ()
    assert checks(book("2026-05-16 feed pond-ridge 22lb front by service")) == ()


def test_a_light_feeding_was_meant() -> None:
    (found,) = checks(book("2026-05-16 feed pond-ridge 8lb front back light"))
    assert found.light


def test_a_sprayer_too() -> None:
    (found,) = checks(book("2026-05-20 treat leaf-off 4floz front wind 3mph"))
    assert found.off_percent == pytest.approx(100 / 3)


def test_with_a_pass_of_unknown_amount_only_too_much_can_be_told() -> None:
    unknown = "2026-05-16 feed pond-ridge front back"
    assert checks(book("2026-05-16 feed pond-ridge 8lb front back", unknown)) == ()
    assert len(checks(book("2026-05-16 feed pond-ridge 22lb front back", unknown))) == 1


def test_without_a_label_rate_the_nitrogen_tells_a_slip() -> None:
    (found,) = checks(book("2026-05-16 feed oat-hill 20lb front"))
    assert not found.by_label
    assert checks(book("2026-05-16 feed oat-hill 8lb front")) == ()
