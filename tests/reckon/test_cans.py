"""Cans under the sprinklers: rate, evenness and minutes, by the examples in print."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from journal.reckon.answer import Answer
from journal.reckon.calls import reckonings
from journal.reckon.cans import (
    minutes_for,
    rate_per_h,
    run_time_multiplier,
    scheduling_coefficient,
    uniformity_christiansen,
    uniformity_low_quarter,
)
from journal.reckon.declare import RECKONINGS
from journal.record.refusal import Refusal
from journal.record.unit import ACRE, FLUID_OUNCE, FOOT, GALLON, INCH, SQUARE_FOOT
from journal.reports.reckoned import answer_text, typed_units

SPREVAL = (47, 42, 45, 24, 13, 26, 33, 34, 27, 30, 40, 44, 32, 12, 12)
"""Fifteen cans, in mL: Grabow, CRAN package spreval 1.1.0, manual of DU."""


def asked(words: str) -> Answer:
    """The answer to the options as they are typed."""
    assert reckonings()
    answer = RECKONINGS["cans"].read(words.split()).answer()
    assert isinstance(answer, Answer)
    return answer


# Texas A&M AgriLife, Odessa American, 26 July 2020: a quarter inch in 5 minutes
def test_a_quarter_inch_in_five_minutes_is_an_inch_in_twenty() -> None:
    answer = asked("--depths 0.25 --unit in --minutes 5 --depth 1in").as_json()
    assert answer["rate_in_per_h"] == pytest.approx(3.0, rel=1e-9)
    assert answer["run_min"] == pytest.approx(20, rel=1e-9)


# An irrigation course page, "Scheduling coefficient": mean 12 mm/h, driest 7 mm/h, 9 mm wanted
def test_the_driest_spot_decides_by_the_scheduling_coefficient() -> None:
    times = scheduling_coefficient((7, 17))
    assert times == pytest.approx(1.7, abs=0.05)
    assert times == pytest.approx(12 / 7)
    hours = minutes_for(9, 12) / 60 * times
    assert hours == pytest.approx(1.3, abs=0.05)
    assert hours == pytest.approx(1.2857, abs=1e-4)


# Grabow, CRAN package spreval 1.1.0: a quarter of 15 cans is 4 of them
def test_fifteen_cans_of_a_package_for_sprinklers() -> None:
    assert uniformity_low_quarter(SPREVAL) == pytest.approx(49.6204, abs=1e-3)
    assert uniformity_christiansen(SPREVAL) == pytest.approx(69.1396, abs=1e-3)
    answer = asked(f"--depths {','.join(map(str, SPREVAL))} --unit mm --minutes 30").as_json()
    assert answer["du_lq_percent"] == pytest.approx(49.6204, abs=1e-3)
    assert answer["cu_percent"] == pytest.approx(69.1396, abs=1e-3)


# The lower-half form of the run-time multiplier, from memory
@pytest.mark.parametrize(("uniformity", "times"), [(75, 1.176471), (60, 1.315789)])
def test_the_multiplier_remembered(uniformity: float, times: float) -> None:
    assert run_time_multiplier(uniformity) == pytest.approx(times, abs=1e-6)


def test_the_multiplier_is_told_as_remembered_and_not_in_the_minutes() -> None:
    answer = asked("--depths 0.2,0.3,0.4,0.3,0.2,0.3,0.4,0.3 --unit in --minutes 30 --depth 0.6in")
    assert answer.as_json()["run_min"] == pytest.approx(60)
    assert any("from memory, not confirmed" in note for note in answer.notes)


def test_units_of_water_are_exact() -> None:
    """60 / 16.387064 mL a cubic inch, 96.25 = 60 x 231 / 144, 140 gal on 225 sq ft (Koski, Colorado State, 2015)."""
    assert float(60 / (INCH**3 / 1000)) == pytest.approx(3.66142, abs=1e-5)
    inch_an_hour = float(60 * GALLON / (SQUARE_FOOT * 1_000_000 / 1000) / INCH)
    assert inch_an_hour == pytest.approx(96.25, rel=1e-12)
    assert float(225 * SQUARE_FOOT * INCH * 1000 / GALLON) == pytest.approx(140.2597, abs=1e-4)
    assert float(ACRE * INCH * 1000 / GALLON) == pytest.approx(27154.29, abs=0.01)
    assert FLUID_OUNCE * 128 == GALLON
    assert FOOT == 12 * INCH


@pytest.mark.parametrize(("count", "said"), [(4, True), (7, True), (8, False), (24, False)])
def test_few_cans_are_told_to_be_rough(count: int, said: bool) -> None:
    answer = asked(f"--depths {','.join(['0.3'] * count)} --unit in --minutes 15")
    assert any("±25 %" in note for note in answer.notes) is said
    assert answer.as_json()["du_lq_percent"] == pytest.approx(100)


def test_three_cans_tell_the_rate_alone() -> None:
    answer = asked("--depths 6;8;7 --unit mm --minutes 30 --depth 14mm")
    assert answer.as_json() == {
        "rate_in_per_h": pytest.approx(14 / 25.4), "du_lq_percent": None, "cu_percent": None,
        "run_min": pytest.approx(60),
    }  # fmt: skip
    assert any("4 cans" in note for note in answer.notes)


@pytest.mark.parametrize("words", ["7,5;8,1;6,9;7,7", "7,5 8,1 6,9 7,7", "7.5,8.1,6.9,7.7", "7.5; 8.1; 6.9; 7.7"])
def test_a_comma_is_a_decimal_mark_where_something_else_parts_the_cans(words: str) -> None:
    answer = asked(f"--depths {words} --unit mm --minutes 60").as_json()
    assert answer["rate_in_per_h"] == pytest.approx(7.55 / 25.4)


def test_a_comma_and_a_blank_part_the_cans() -> None:
    assert asked("--depths 7, 8, 9, 8 --unit mm --minutes 60").as_json()["rate_in_per_h"] == pytest.approx(8 / 25.4)


@pytest.mark.parametrize(
    ("words", "units"),
    [
        ("--depths 7;8 --unit mm --minutes 15", "metric"),
        ("--area 12m,8m --rate 20g/m2", "metric"),
        ("--depth 1in --rate 12mm/h", "us"),
        ("--depths 1,2 --unit in", "us"),
        ("--base 10C --from 2026-05-01", "metric"),
        ("--need 110lb/k --area 1000sqft", "us"),
    ],
)
def test_the_units_typed_come_first_in_the_answer(words: str, units: str) -> None:
    assert typed_units(words.split()) == units
    rate = answer_text(asked("--depths 25.4 --unit mm --minutes 60"), units).splitlines()[0]
    assert rate.split()[1:] == (
        ["25.4", "mm/h", "(1", "in/h)"] if units == "metric" else ["1", "in/h", "(25.4", "mm/h)"]
    )


def test_evenness_of_nought_is_nought() -> None:
    found = uniformity_christiansen((0.1, 0.0, 0.1, 0.0))
    assert (found, str(found)) == (0, "0.0")


def test_a_dry_can_has_no_coefficient() -> None:
    answer = asked("--depths 0,8,8,8 --unit mm --minutes 30")
    assert answer.as_json()["du_lq_percent"] == 0
    assert not any("driest can needs" in note for note in answer.notes)
    assert any("heads" in note for note in answer.notes)


@pytest.mark.parametrize(
    ("words", "at_fault"),
    [
        ("--depths 0,0,0,0 --unit in --minutes 15", "--depths"),
        ("--depths 0.25in,0.3in --unit in --minutes 15", "--depths 0.25in"),
        ("--depths -1,2 --unit in --minutes 15", "--depths -1"),
        ("--depths 1e-10,2 --unit in --minutes 15", "--depths 1e-10"),
        ("--depths 0.0000001,2 --unit in --minutes 15", "--depths 0.0000001"),
        ("--depths nan,2 --unit in --minutes 15", "--depths nan"),
        ("--depths 1,2 --unit furlong --minutes 15", "--unit furlong"),
        ("--depths 1,2 --unit in --minutes 0", "--minutes 0"),
        ("--depths 1,2 --unit in --minutes 2d", "--minutes 2d"),
        ("--depths 1,2 --unit in --minutes 15 --depth 0in", "--depth 0in"),
        ("--unit in --minutes 15", "--depths"),
    ],
)
def test_what_cannot_be_meant_is_refused_by_name(words: str, at_fault: str) -> None:
    with pytest.raises(Refusal) as refused:
        asked(words)
    assert refused.value.word == at_fault


@given(st.lists(st.floats(0.01, 50), min_size=4, max_size=60), st.floats(1, 200))
def test_evenness_is_a_share_and_does_not_hang_on_the_unit(depths: list[float], minutes: float) -> None:
    du, cu = uniformity_low_quarter(depths), uniformity_christiansen(depths)
    assert 0 <= du <= 100 + 1e-9
    assert cu <= 100 + 1e-9
    inches = [depth / 25.4 for depth in depths]
    assert uniformity_low_quarter(inches) == pytest.approx(du)
    assert rate_per_h(inches, minutes) * 25.4 == pytest.approx(rate_per_h(depths, minutes))
