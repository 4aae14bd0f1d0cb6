"""Seed for an area, as typed, against worked examples in print (the source beside each)."""

from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from journal.reckon.seed_amount import at_bulk_rate, at_live_rate
from tests.reckon.called import figures, notes

PENN_STATE = "Penn State Center for Turfgrass Science, Calculating the Price of Pure Live Seed"
LOUISIANA = "LSU AgCenter, Pure Live Seed Calculation"
MINNESOTA = "Univ. of Minnesota Extension, Establishing a New Lawn: Purchasing Seed"
TEXAS = "Texas Dept. of Transportation, Pure live seed"
CORNELL = "Cornell Univ., Seeding rates for sports fields"


@pytest.mark.parametrize(
    ("purity", "germination", "percent", "pounds", "source"),
    [
        (92, 80, 74, 1.4, PENN_STATE),
        (85, 60, 51, 2, PENN_STATE),
        (99, 90, 89, 1.1, PENN_STATE),
        (31, 80, 24.8, None, MINNESOTA),
        (85, 75, 64, 1.56, TEXAS),
        (95, 85, 81, None, CORNELL),
    ],
)
def test_a_pound_of_pure_live_seed(
    purity: float, germination: float, percent: float, pounds: float | None, source: str
) -> None:
    found = figures(f"seed --rate 1lb/k --area 1000sqft --purity {purity} --germination {germination} --pls")
    assert found["pls_percent"] == pytest.approx(percent, rel=0.01), source
    assert found["pls_lb"] == 1
    if pounds is not None:  # printed with one or two figures, and rounded on the way
        assert found["bulk_lb"] == pytest.approx(pounds, rel=0.03), source


def test_a_large_lawn() -> None:
    # 20,000 sq ft at 1 lb of pure live seed, 48 % pure, 80 % germination: 20 lb alive, 52.6 lb from the bag; LOUISIANA
    found = figures("seed --rate 1lb/k --area 20000sqft --purity 48 --germination 80 --pls")
    assert found["pls_lb"] == pytest.approx(20, rel=1e-12)
    assert found["bulk_lb"] == pytest.approx(52.6, rel=0.02), LOUISIANA


def test_a_rate_from_the_bag() -> None:
    assert figures("seed --rate 4lb/k --area 2400sqft --purity 95 --germination 85") == {
        "pls_percent": 80.75,
        "pls_lb": 7.752,
        "bulk_lb": 9.6,
        "bulk_lb_per_1000sqft": 4.0,
    }
    assert "seed from the bag" in notes("seed --rate 20g/m2 --area 220m2 --purity 95 --germination 85")


@given(st.floats(0.1, 100), st.floats(1, 1e5), st.floats(0.01, 1))
def test_there_and_back(rate: float, area: float, share: float) -> None:
    alive = at_live_rate(rate, area, share)
    assert alive.live_g == pytest.approx(rate * area, rel=1e-12)
    assert at_bulk_rate(alive.bulk_g_per_m2, area, share).bulk_g == pytest.approx(alive.bulk_g, rel=1e-12)


@pytest.mark.parametrize(
    ("options", "word", "why"),
    [
        ("--area 2400sqft --purity 95 --germination 85", "--rate", "is missing"),
        ("--rate 4lb/k --area 2400sqft --germination 85", "--purity", "is missing"),
        ("--rate 4lb/k --area 2400sqft --purity 0 --germination 85", "--purity 0", "from 1 to 100"),
        ("--rate 4lb/k --area 2400sqft --purity 95 --germination 850", "--germination 850", "from 1 to 100"),
        ("--rate 4lb/k --area 2400sqft --purity -9 --germination 85", "--purity -9", "below zero"),
        ("--rate 4floz/k --area 2400sqft --purity 95 --germination 85", "--rate 4floz/k", "wrong kind"),
        ("--rate 4000lb/k --area 2400sqft --purity 95 --germination 85", "--rate 4000lb/k", "can't be meant"),
        ("--rate 4lb/k --area 0m2 --purity 95 --germination 85", "--area 0m2", "more than nothing"),
        ("--pls yes --rate 4lb/k --area 2400sqft --purity 95 --germination 85", "--pls yes", "stands alone"),
        ("--pls --pls --rate 4lb/k --area 2400sqft --purity 95 --germination 85", "--pls", "already"),
    ],
)
def test_what_can_not_be_used_is_refused_by_its_word(
    options: str, word: str, why: str, refused: Callable[[str, str, str], None]
) -> None:
    refused(f"seed {options}", word, why)
