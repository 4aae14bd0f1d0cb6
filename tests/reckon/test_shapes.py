"""Pieces of lawn put together from shapes, as typed, against worked examples in print (the source beside each)."""

import math
from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from journal.reckon.shapes import circle_m2, rectangle_m2, triangle_m2
from tests.reckon.called import figures, notes


@pytest.mark.parametrize(
    ("shapes", "sqft", "within", "source"),
    [
        ("--rect 50ft,2.5ft", 125, 1e-9, "Univ. of Arizona (Kopec), Calibrating a Drop Spreader for Home Lawns, 1999"),
        ("--rect 83.3333ft,12ft", 1000, 0.01, "Turf spreader training slides: 1,000 sq ft in a swath of 12 ft"),
        ("--rect 18.5ft,18.5ft", 342.25, 1e-9, "Larimer County (Colorado) Weed District, Sprayer calibration"),
        ("--rect 10ft,34ft", 340, 1e-9, "1/128 Method of Calibration, training slides"),
        ("--rect 1.5ft,228ft", 342, 1e-9, "1/128 Method of Calibration, training slides"),
    ],
)  # fmt: skip
def test_areas_in_print(shapes: str, sqft: float, within: float, source: str) -> None:
    assert figures(f"area {shapes}")["sqft"] == pytest.approx(sqft, abs=within), source


@pytest.mark.parametrize(
    ("shapes", "sqft"),
    [
        ("--rect 40ft,60ft", 2400),
        ("--rect 40ft, 60ft", 2400),
        ("--rect 40ft x 60ft", 2400),
        ("--rect 40ft 60ft", 2400),
        ("--rect 40 ft, 60 ft", 2400),
        ('--rect 480in 720"', 2400),
        ("--rect=40ft,60ft", 2400),
        ("--circle 12ft", math.pi * 144),
        ("--triangle 30ft,20ft", 300),
        ("--rect 40ft,60ft --triangle 30ft,20ft --minus --rect 10ft,10ft", 2600),
        ("--minus --rect 10ft,10ft --rect 40ft,60ft", 2300),
        ("--rect 40ft,60ft --minus --rect 10ft,10ft --rect 10ft,10ft", 2400),
        ("--rect 40ft,60ft --rect 10ft,10ft --minus --circle 12ft", 2500 - math.pi * 144),
    ],
)
def test_shapes_are_added_and_taken_away(shapes: str, sqft: float) -> None:
    found = figures(f"area {shapes}")
    assert found["sqft"] == pytest.approx(sqft, rel=1e-11)
    assert found["m2"] == pytest.approx(sqft * 0.09290304, rel=1e-11)


def test_metres() -> None:
    assert figures("area --rect 12m,8.5m --minus --rect 200cm x 500mm")["m2"] == pytest.approx(101, rel=1e-12)
    assert figures("area --rect 6,5m x 4m")["m2"] == pytest.approx(26, rel=1e-12)


def test_a_circle_says_that_its_length_was_the_radius() -> None:
    assert "radius" in notes("area --circle 12ft")
    assert notes("area --rect 40ft,60ft") == ""


LENGTH = st.floats(1, 1e5)


@given(LENGTH, LENGTH, st.floats(0.1, 10))
def test_areas_grow_with_the_square(a: float, b: float, times: float) -> None:
    for area in (rectangle_m2, triangle_m2):
        assert area(a * times, b * times) == pytest.approx(area(a, b) * times**2, rel=1e-12)
        assert area(a, b) == pytest.approx(area(b, a), rel=1e-12)
    assert 2 * triangle_m2(a, b) == pytest.approx(rectangle_m2(a, b), rel=1e-12)
    assert circle_m2(a) == pytest.approx(math.pi * rectangle_m2(a, a), rel=1e-12)


@pytest.mark.parametrize(
    ("options", "word", "why"),
    [
        ("", "", "at least one of --rect, --circle, --triangle is wanted"),
        ("--rect 40ft", "--rect 40ft", "two lengths"),
        ("--rect 40ft,60ft,2ft", "--rect 40ft,60ft,2ft", "two lengths"),
        ("--circle 12ft,12ft", "--circle 12ft,12ft", "one length"),
        ("--rect 0ft,60ft", "--rect 0ft", "more than nothing"),
        ("--rect 40ft,-60ft", "--rect -60ft", "below zero"),
        ("--rect 40,60ft", "--rect 40", "a unit is missing"),
        ("--rect 40ft,60sqft", "--rect 60sqft", "wrong kind"),
        ("--rect 40ft,12m", "--rect 12m", "mixed"),
        ("--rect 40ft,9000m", "--rect 9000m", "can't be meant"),
        ("--rect 40ft,60ft --minus", "--minus", "a shape is wanted"),
        ("--rect 40ft,60ft --minus --minus --circle 1ft", "--minus", "twice"),
        ("--rect 4ft,6ft --minus --circle 12ft", "--minus", "more is taken away"),
        ("--minus", "--minus", "a shape is wanted"),
        ("--minus 3 --rect 4ft,6ft", "--minus 3", "stands alone"),
        ("--square 4ft", "--square", "not asked here"),
    ],
)
def test_what_can_not_be_used_is_refused_by_its_word(
    options: str, word: str, why: str, refused: Callable[[str, str, str], None]
) -> None:
    refused(f"area {options}", word, why)
