"""What spreaders and sprayers put out, as typed, against worked examples in print (the source beside each)."""

from collections.abc import Callable

import pytest

from tests.reckon.called import answer, figures, notes

CONSUMER = "Consumer Reports, How to calibrate a drop spreader, 2006"
MASSACHUSETTS = "UMass Ext. Turf Program, Rotary Spreader Calibration Procedures"
TEXAS = "Texas A&M Turf (Gray), rotary spreader calibration: 21-0-0 at 4.76 lb into a pan of one square foot"
LABEL = "Label of a pre-emergent granule holding dithiopyr, 50 lb bag over 8,772 sq ft"
SLIDES = "1/128 Method of Calibration, training slides"
GROWERS = "Extension text in a fruit growers' mailing list, 2009"
ALBANY = "Albany County (Wyoming) Weed and Pest, Calibrating your sprayer"


@pytest.mark.parametrize(
    ("caught", "area", "printed", "within", "source"),
    [
        ("0.5lb", "50sqft", 10, 1e-9, CONSUMER),
        ("2.16g", "1sqft", 4.76, 0.005, TEXAS),
        ("50lb", "8772sqft", 5.70, 0.005, LABEL),
    ],
)
def test_a_spreader(caught: str, area: str, printed: float, within: float, source: str) -> None:
    line = f"calibrate-spreader --caught {caught} --area {area}"
    assert figures(line)["rate_lb_per_1000sqft"] == pytest.approx(printed, abs=within), source


@pytest.mark.parametrize(
    ("caught", "off", "verdict"),
    [
        ("4.75lb", -5, "Good"),  # MASSACHUSETTS: 5.00 lb, within 5 %: 4.75 to 5.25 lb
        ("5.25lb", 5, "Good"),
        ("4.74lb", -5.2, "Too little"),
        ("5.26lb", 5.2, "Too much"),
        ("5lb", 0, "Good"),
    ],
)
def test_the_band_around_the_target(caught: str, off: float, verdict: str) -> None:
    line = f"calibrate-spreader --caught {caught} --area 1000sqft --target 5lb/k"
    assert figures(line)["off_percent"] == pytest.approx(off, abs=1e-9), MASSACHUSETTS
    assert answer(line).notes[0].startswith(verdict)
    assert "within 5 % of the target" in notes(line)


def test_without_a_target_nothing_is_off() -> None:
    line = "calibrate-spreader --caught 250g --area 5m2"
    assert answer(line).as_json()["off_percent"] is None
    assert "without --target" in notes(line)
    assert figures(line)["rate_lb_per_1000sqft"] == pytest.approx(50 / 4.882427636, rel=1e-9)


@pytest.mark.parametrize(
    ("caught", "area", "printed", "within", "source"),
    [
        ("40floz", "340sqft", 40, 0.05, SLIDES),
        ("40floz", "340.3125sqft", 40, 1e-9, ALBANY),
        ("1.5gal", "1000sqft", 65, 0.5, GROWERS),
        ("1.5gal", "1000sqft", 65.34, 1e-9, "1.5 x 43.56: definition of the acre"),
    ],
)
def test_a_sprayer(caught: str, area: str, printed: float, within: float, source: str) -> None:
    found = figures(f"calibrate-sprayer --caught {caught} --area {area}")
    assert found["gal_per_acre"] == pytest.approx(printed, abs=within), source
    assert found["gal_per_acre"] == pytest.approx(43.56 * found["gal_per_1000sqft"], rel=1e-9)


@pytest.mark.parametrize(
    ("line", "word", "why"),
    [
        ("calibrate-spreader --area 50sqft", "--caught", "is missing"),
        ("calibrate-spreader --caught 0lb --area 50sqft", "--caught 0lb", "more than nothing"),
        ("calibrate-spreader --caught 8floz --area 50sqft", "--caught 8floz", "wrong kind"),
        ("calibrate-spreader --caught 1lb --area 50ft", "--area 50ft", "wrong kind"),
        ("calibrate-spreader --caught 1lb --area 50sqft --target 0lb/k", "--target 0lb/k", "more than nothing"),
        ("calibrate-spreader --caught 1lb --area 50sqft --target 5lb", "--target 5lb", "wrong kind"),
        ("calibrate-spreader --caught 90lb --area 1sqft", "--caught", "so small an area"),
        ("calibrate-sprayer --caught 40floz", "--area", "is missing"),
        ("calibrate-sprayer --caught 40oz --area 340sqft", "--caught 40oz", "wrong kind"),
        ("calibrate-sprayer --caught 40floz --area -1sqft", "--area -1sqft", "below zero"),
        ("calibrate-sprayer --caught 90gal --area 1sqft", "--caught", "so small a plot"),
    ],
)
def test_what_can_not_be_used_is_refused_by_its_word(
    line: str, word: str, why: str, refused: Callable[[str, str, str], None]
) -> None:
    refused(line, word, why)
