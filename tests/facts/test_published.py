"""Figures that were printed in other units than they are kept in, each with its publication beside it."""

import pytest

from journal.facts.degree_days import BANDS, near
from journal.record.day import MonthDay

FIDANZA = "Fidanza, Dernoeden & Zhang, Crop Science 36, 1996: soil of Maryland, over 12 C from 1 April"


@pytest.mark.parametrize(
    ("event", "celsius", "fahrenheit"),
    [("first smooth crabgrass", (42, 78), (75.6, 140.4)), ("most smooth crabgrass", (140, 230), (252, 414))],
)
def test_degree_days_printed_in_celsius(
    event: str, celsius: tuple[float, float], fahrenheit: tuple[float, float]
) -> None:
    (band,) = (band for band in BANDS if band.event == event)
    assert (band.low_f, band.high_f) == pytest.approx(fahrenheit, rel=1e-12), FIDANZA
    assert (band.low_f, band.high_f) == pytest.approx([1.8 * sum_c for sum_c in celsius], rel=1e-12), FIDANZA
    assert (band.base_f, str(band.start), band.medium) == (53.6, "04-01", "soil at 1 in"), FIDANZA


def test_the_bands_of_maryland_are_near_their_own_base_alone() -> None:
    assert {band.event for band in near(100, 53.6, "average", MonthDay(4, 1))} == {"first smooth crabgrass"}, FIDANZA
    assert "first smooth crabgrass" not in {band.event for band in near(100, 50, "average", MonthDay(4, 1))}, FIDANZA
