"""A watering split into runs that the soil takes up."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from journal.facts.soils import SOILS
from journal.reckon.answer import Answer
from journal.reckon.calls import reckonings
from journal.reckon.declare import RECKONINGS
from journal.reckon.soaking import cycles, cycles_on
from journal.record.refusal import Refusal


def asked(words: str) -> Answer:
    """The answer to the options as they are typed."""
    assert reckonings()
    answer = RECKONINGS["soak"].read(words.split()).answer()
    assert isinstance(answer, Answer)
    return answer


# Worked by hand: 0.5 / 1.6 x 60 = 18.75; 60 x 0.1 / 1.4 = 4.2857; 3.75 x 1.4 / 0.2 = 26.25
def test_half_an_inch_from_a_fast_sprinkler_on_slow_soil() -> None:
    assert asked("--depth 0.5in --rate 1.6in/h --intake 0.2in/h --storage 0.1in").as_json() == {
        "minutes": pytest.approx(18.75), "cycle_max_min": pytest.approx(4.285714, abs=1e-6), "cycles": 5,
        "cycle_min": pytest.approx(3.75), "soak_min": pytest.approx(26.25),
    }  # fmt: skip


# Texas A&M AgriLife, Odessa American, 26 July 2020: 20 minutes wanted, "10 minutes 2 times"
def test_twenty_minutes_in_two_runs_of_ten() -> None:
    found = asked("--depth 20mm --rate 60mm/h --intake 30mm/h --storage 6mm").as_json()
    assert (found["minutes"], found["cycles"], found["cycle_min"]) == (20, 2, 10)


def test_one_run_where_the_soil_keeps_up() -> None:
    answer = asked("--depth 10mm --rate 15mm/h --intake 15mm/h --storage 1mm")
    assert answer.as_json() == {
        "minutes": 40, "cycle_max_min": None, "cycles": 1, "cycle_min": 40, "soak_min": 0,
    }  # fmt: skip
    assert any("one run" in note for note in answer.notes)


def test_a_soil_stands_in_for_what_was_not_measured_and_says_that_it_is_from_memory() -> None:
    clay = asked("--depth 0.5in --rate 0.6in/h --soil clay --slope steep")
    assert clay.as_json()["cycle_max_min"] == pytest.approx(60 * 0.1 / 0.5)
    assert any("from memory, not confirmed" in note for note in clay.notes)
    measured = asked("--depth 0.5in --rate 1.6in/h --intake 0.2in/h --storage 0.1in --soil clay")
    assert measured.as_json()["cycles"] == 5
    assert not any("from memory" in note for note in measured.notes)


def test_it_says_what_was_given_and_changed_nothing() -> None:
    both = " ".join(
        asked("--depth 0.5in --rate 1.6in/h --intake 0.2in/h --storage 0.1in --soil clay --slope steep").notes
    )
    assert "--soil clay changes nothing" in both
    assert "--slope steep changes nothing" in both
    one = asked("--depth 0.5in --rate 1.6in/h --intake 0.2in/h --soil clay").notes
    assert one[0].startswith("Storage of clay: ")


def test_more_runs_than_a_morning_bears_go_over_several_mornings() -> None:
    told = asked("--depth 0.5in --rate 1.6in/h --intake 0.2in/h --storage 0.1in").notes
    assert told[-1] == "So put it down over 2 mornings, at most 3 of the 5 runs on each."


@pytest.mark.parametrize(
    ("words", "at_fault"),
    [
        ("--depth 0in --rate 1in/h --intake 0.2in/h --storage 0.1in", "--depth 0in"),
        ("--depth 1in --rate 1in --intake 0.2in/h --storage 0.1in", "--rate 1in"),
        ("--depth 1in --rate 1in/h --storage 0.1in", "--intake"),
        ("--depth 1000mm --rate 900mm/h --intake 1mm/h --storage 0.1mm", "--storage"),
        ("--depth 12in --rate 0.1in/h --intake 0.2in/h --storage 0.1in", "--depth"),
        ("--depth 0.2in --rate 1in/h --intake 0.0001in/h --storage 0.1in", "--intake"),
        ("--depth 2m --rate 1in/h --intake 0.2in/h --storage 0.1in", "--depth 2m"),
    ],
)
def test_what_cannot_be_meant_is_refused_by_name(words: str, at_fault: str) -> None:
    with pytest.raises(Refusal) as refused:
        asked(words)
    assert refused.value.word == at_fault


@given(st.floats(1, 50), st.floats(1, 80), st.floats(1, 40), st.floats(1, 12))
def test_no_run_is_longer_than_the_soil_bears(depth: float, rate: float, intake: float, storage: float) -> None:
    found = cycles(depth, rate, intake, storage)
    assert found.count * found.run_min == pytest.approx(depth / rate * 60)
    if found.longest_min is not None:
        assert found.run_min <= found.longest_min * (1 + 1e-6)
        standing = (rate - intake) * found.run_min / 60
        assert found.count == 1 or found.pause_min * intake / 60 == pytest.approx(standing)


@pytest.mark.parametrize("soil", SOILS)
def test_a_steeper_slope_never_takes_fewer_runs(soil: str) -> None:
    counts = [cycles_on(soil, slope, 20, 40).count for slope in ("none", "gentle", "steep")]
    assert counts == sorted(counts)
