"""Lime in doses, as typed, against publications (the source beside each)."""

from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from journal.reckon.liming import doses
from tests.reckon.called import figures, notes

VIRGINIA = "Virginia Coop. Ext. 452-717 (SPES-306P), soil test note on lawns: at most 50 lb per 1,000 sq ft at once"
PENN_STATE = "Penn State Agricultural Analytical Services Lab, Home Lawn - Maintain: at most 100 lb at once"


@pytest.mark.parametrize(
    ("options", "count", "each", "source"),
    [
        ("--need 110lb/k --max 50lb/k", 3, 110 / 3, VIRGINIA),
        ("--need 110lb/k", 3, 110 / 3, VIRGINIA),
        ("--need 110lb/k --max 100lb/k", 2, 55, PENN_STATE),
        ("--need 50lb/k", 1, 50, VIRGINIA),
        ("--need 50.1lb/k", 2, 25.05, VIRGINIA),
        ("--need 1000lb/k", 20, 50, VIRGINIA),
    ],
)
def test_doses(options: str, count: int, each: float, source: str) -> None:
    found = figures(f"lime {options} --area 1000sqft")
    assert found["doses"] == count, source
    assert found["lb_per_dose_per_1000sqft"] == pytest.approx(each, rel=1e-9)
    assert found["total_lb"] == pytest.approx(each * count, rel=1e-9)


def test_weak_lime_is_weighed_out_heavier() -> None:
    # 75 lb at a calcium carbonate equivalent of 80 % is 94 lb: Penn State, Home Lawn - Maintain
    found = figures("lime --need 75lb/k --cce 80 --max 100lb/k --area 1000sqft")
    assert found["total_lb"] == pytest.approx(94, abs=0.5), PENN_STATE
    assert found["doses"] == 1


def test_strong_lime_is_split_by_what_it_stands_for() -> None:
    found = figures("lime --need 110lb/k --cce 135 --area 1000sqft")
    assert found["total_lb"] == pytest.approx(110 / 1.35, rel=1e-9)
    assert found["doses"] == 3


@given(st.floats(1, 2000), st.floats(50, 500), st.floats(10, 180))
def test_no_dose_is_above_the_most(need: float, most: float, strength: float) -> None:
    found = doses(need, most, strength)
    assert found.each_g_per_m2 <= most * (1 + 1e-8)
    assert found.each_g_per_m2 * strength / 100 <= most * (1 + 1e-8)
    assert found.count * found.each_g_per_m2 == pytest.approx(need * 100 / strength, rel=1e-12)
    assert found.count == 1 or max(need, found.all_g_per_m2) > (found.count - 1) * most


def test_both_publications_are_told_and_more_than_either_is_warned_of() -> None:
    said = notes("lime --need 110lb/k --area 5000sqft")
    assert "Virginia Cooperative Extension" in said
    assert "Penn State" in said
    assert "more than any publication" not in said
    assert "more than any publication" in notes("lime --need 200lb/k --max 150lb/k --area 5000sqft")


@pytest.mark.parametrize(
    ("options", "word", "why"),
    [
        ("--area 5000sqft", "--need", "is missing"),
        ("--need 110lb/k", "--area", "is missing"),
        ("--need 0lb/k --area 5000sqft", "--need 0lb/k", "more than nothing"),
        ("--need 110lb --area 5000sqft", "--need 110lb", "wrong kind"),
        ("--need 9000lb/k --area 5000sqft", "--need 9000lb/k", "can't be meant"),
        ("--need 110lb/k --max 0lb/k --area 5000sqft", "--max 0lb/k", "more than nothing"),
        ("--need 110lb/k --max 1lb/k --area 5000sqft", "--max", "110 doses"),
        ("--need 110lb/k --cce 0 --area 5000sqft", "--cce 0", "from 10 to 180"),
        ("--need 110lb/k --cce 80 --cce 90 --area 5000sqft", "--cce", "already"),
    ],
)
def test_what_can_not_be_used_is_refused_by_its_word(
    options: str, word: str, why: str, refused: Callable[[str, str, str], None]
) -> None:
    refused(f"lime {options}", word, why)
