"""Soils, water use of turf, and what of a rain counts."""

from dataclasses import fields

import pytest

from journal.facts.citation import Known
from journal.facts.factors import INCH_MM
from journal.facts.irrigation import (
    ALLOWED_SHARE,
    COOL_SEASON,
    MULTIPLIER_BASIS,
    ROOTS_MM,
    WARM_SEASON,
    coefficient,
)
from journal.facts.soils import INCH_PER_FOOT_MM_PER_M, INTAKE_BASIS, SOILS, STORAGE_BY_SLOPE, storage_mm
from journal.reckon.rain_credit import effective_mm
from journal.record.refusal import Refusal
from journal.record.term import terms
from journal.record.zone import Zone

INCH = float(INCH_MM)


# East Multnomah Soil & Water Conservation District, Irrigation scheduling, table 1
def test_loam_holds_150_mm_in_a_metre() -> None:
    assert pytest.approx(83.3333, abs=1e-4) == INCH_PER_FOOT_MM_PER_M
    assert SOILS["loam"].available_mm_per_m == pytest.approx(150)
    assert SOILS["sandy-loam"].available_mm_per_m == pytest.approx(100)
    assert SOILS["clay-loam"].available_mm_per_m == pytest.approx(183.3, abs=0.05)


# Univ. of California, Turfgrass Crop Coefficients: the means of the printed months
def test_the_monthly_shares_of_the_table() -> None:
    assert sum(COOL_SEASON) / 12 == pytest.approx(0.7875)
    assert sum(WARM_SEASON) / 12 == pytest.approx(0.650833, abs=1e-6)


def test_the_south_has_its_july_in_january() -> None:
    assert coefficient(7, southern=False, cool_season=True) == coefficient(1, southern=True, cool_season=True) == 0.94
    assert coefficient(10, southern=True, cool_season=True) == 1.04


# Worked by hand: 1.8 in/ft x 0.5 ft x 50 % = 0.45 in; at 0.15 in a day that is 3 days
def test_six_inches_of_loam_last_three_days() -> None:
    allowed = SOILS["loam"].available_mm_per_m * ROOTS_MM / 1000 * ALLOWED_SHARE
    assert allowed / INCH == pytest.approx(0.45)
    assert allowed / (0.15 * INCH) == pytest.approx(3)


# Texas A&M University, TexasET, Effective Rainfall
@pytest.mark.parametrize(
    ("rain", "counts"),
    [(0, 0), (0.05, 0), (0.1, 0), (0.5, 0.4), (1, 0.9), (1.5, 1.23333), (2, 1.56667), (3, 1.56667)],
)
def test_what_of_a_rain_counts(rain: float, counts: float) -> None:
    assert effective_mm(rain * INCH) / INCH == pytest.approx(counts, abs=1e-5)


def test_every_soil_that_a_zone_can_have_is_known() -> None:
    field = next(f for f in fields(Zone) if f.name == "soil")
    read = terms(Zone)["soil"][1].read
    assert field.default == ""
    assert {read(soil) for soil in SOILS} == set(SOILS)
    with pytest.raises(Refusal, match=", ".join(SOILS)):
        read("mud")
    slope = terms(Zone)["slope"][1].read
    assert [slope(word) for word in STORAGE_BY_SLOPE] == list(STORAGE_BY_SLOPE)


def test_finer_soil_takes_water_more_slowly_and_a_slope_holds_less_of_it() -> None:
    found = list(SOILS.values())
    assert [soil.intake_mm_h for soil in found] == sorted((s.intake_mm_h for s in found), reverse=True)
    assert storage_mm(SOILS["loam"], "steep") == pytest.approx(0.15 * INCH)


def test_what_is_from_memory_says_so() -> None:
    assert INTAKE_BASIS.kind is MULTIPLIER_BASIS.kind is Known.MEMORY
    assert all(soil.available_basis.kind in (Known.PUBLISHED, Known.JUDGMENT) for soil in SOILS.values())
