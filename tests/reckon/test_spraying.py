"""Product and water by the tank, as typed, against worked examples in print (the source beside each)."""

from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from journal.facts.safety import SENTENCES
from journal.reckon.spraying import mix
from tests.reckon.called import answer, figures, notes

SLIDES = "1/128 Method of Calibration, training slides"
GROWERS = "Extension text in a fruit growers' mailing list, 2009"
ALBANY = "Albany County (Wyoming) Weed and Pest, Calibrating your sprayer"
LARIMER = "Sprayer calibration sheet beside that of the Larimer County (Colorado) Weed District"


@pytest.mark.parametrize(
    ("rate", "carrier", "tank", "floz", "within", "source"),
    [
        ("32floz/acre", "40gal/acre", "1gal", 0.8, 0.001, SLIDES),
        ("48floz/acre", "65gal/acre", "1gal", 0.74, 0.005, GROWERS),  # 3 pints an acre
        ("32floz/acre", "20gal/acre", "20gal", 32, 0.001, ALBANY),
        ("7floz/acre", "100gal/acre", "50gal", 3.5, 0.001, LARIMER),
    ],
)
def test_product_in_a_tank(rate: str, carrier: str, tank: str, floz: float, within: float, source: str) -> None:
    found = figures(f"spray --rate {rate} --area 1acre --carrier {carrier} --tank {tank}")
    assert found["product_floz_per_tank"] == pytest.approx(floz, abs=within), source


def test_a_lawn_with_a_tank_on_the_back() -> None:
    assert figures("spray --rate 1.5floz/k --area 5000sqft --carrier 1gal/k --tank 4gal") == {
        "product_floz": 7.5,
        "water_gal": 5.0,
        "tanks": 1.25,
        "product_floz_per_tank": 6.0,
    }


@pytest.mark.parametrize(
    ("area", "words"),
    [
        ("5000sqft", "Tanks filled to the mark: 1. The last one: 1 gal (3.79 l) of spray with 1.5 fl oz (44.4 ml)"),
        ("2000sqft", "Less than one tank is needed: mix 2 gal (7.57 l) of spray with 3 fl oz (88.7 ml)"),
    ],
)
def test_the_last_tank_is_not_filled(area: str, words: str) -> None:
    assert words in notes(f"spray --rate 1.5floz/k --area {area} --carrier 1gal/k --tank 4gal")


def test_tanks_that_come_out_even_have_no_last_one() -> None:
    assert "tank" not in answer("spray --rate 0.5ml/m2 --area 300m2 --carrier 40ml/m2 --tank 4l").notes[0].split(".")[0]


def test_the_safety_words_stand_there_and_the_label_goes_first() -> None:
    said = notes("spray --rate 1.5floz/k --area 5000sqft --carrier 1gal/k --tank 4gal")
    assert [sentence for sentence in SENTENCES if sentence not in said] == []
    assert "The label's own rate" in said


@given(st.floats(0.01, 10), st.floats(1, 1e5), st.floats(10, 1e3), st.floats(100, 1e5))
def test_the_tanks_hold_all_of_it(rate: float, area: float, carrier: float, tank: float) -> None:
    found = mix(rate, area, carrier, tank)
    assert found.per_tank_ml * found.tanks == pytest.approx(found.product_ml, rel=1e-12)
    assert found.tanks * tank == pytest.approx(found.spray_ml, rel=1e-12)
    whole = found.full_tanks + (0 if found.last_share == 1 else found.last_share)
    assert whole == pytest.approx(found.tanks, rel=1e-6, abs=1e-6)


@pytest.mark.parametrize(
    ("options", "word", "why"),
    [
        ("--rate 1.5floz/k --area 5000sqft --carrier 1gal/k", "--tank", "is missing"),
        ("--rate 3lb/k --area 5000sqft --carrier 1gal/k --tank 4gal", "--rate 3lb/k", "wrong kind"),
        ("--rate 1.5floz --area 5000sqft --carrier 1gal/k --tank 4gal", "--rate 1.5floz", "wrong kind"),
        ("--rate 0floz/k --area 5000sqft --carrier 1gal/k --tank 4gal", "--rate 0floz/k", "more than nothing"),
        ("--rate 2gal/k --area 5000sqft --carrier 1gal/k --tank 4gal", "--rate", "more product than spray"),
        ("--rate 1floz/k --area 5000sqft --carrier 0gal/k --tank 4gal", "--carrier 0gal/k", "more than nothing"),
        ("--rate 1floz/k --area 5000sqft --carrier 1gal/k --tank -4gal", "--tank -4gal", "below zero"),
        ("--rate 1floz/k --area 5000sqft --carrier 1gal/k --tank 4in", "--tank 4in", "wrong kind"),
        ("--rate 1floz/k --area 99acre --carrier 1gal/k --tank 1ml", "--tank", "far too small"),
    ],
)
def test_what_can_not_be_used_is_refused_by_its_word(
    options: str, word: str, why: str, refused: Callable[[str, str, str], None]
) -> None:
    refused(f"spray {options}", word, why)
