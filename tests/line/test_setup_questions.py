"""The guided set-up: few questions, each with an answer that Enter takes."""

from datetime import timedelta

import pytest

from journal.line.setup_file import settings_from_toml
from journal.line.setup_questions import entries_from_answers, questions, settings_from_answers
from journal.record.fold import fold
from journal.record.kinds.treatment import Treatment
from journal.record.lawn import Lawn
from journal.record.refusal import Refusal
from tests.line.lawns import TODAY


def _by_file(toml: str) -> Lawn:
    return fold(settings_from_toml(toml, TODAY))


def test_enter_alone_answers_every_question_of_the_guided_set_up() -> None:
    lawn = fold(settings_from_answers({}, TODAY, "metric"))
    assert (lawn.name, lawn.units, lawn.zone_names) == ("Home lawn", "metric", ("front", "back"))
    assert lawn.grass == ("unknown",)
    assert lawn.last_frost is None
    assert 1 <= len(questions("us")) <= 6
    for question in (*questions("us"), *questions("metric")):
        question.read(question.default)
        question.read(question.example)


def test_answers_make_the_lawn_that_a_file_would() -> None:
    answers = {
        "name": "North Lane",
        "units": "us",
        "zones": "front 2400 sq ft; back",
        "frost": "05-06 to 10-05",
        "grass": "kbg",
    }
    lawn = fold(settings_from_answers(answers, TODAY))
    same = _by_file(
        '[lawn]\nname = "North Lane"\nunits = "us"\nlast_frost = "05-06"\nfirst_frost = "10-05"\ngrass = ["kbg"]\n'
        '[[zone]]\nname = "front"\narea = "2400 sqft"\n[[zone]]\nname = "back"\n'
    )
    assert lawn == same


@pytest.mark.parametrize(
    ("key", "answer", "word"),
    [("zones", "front 3lb", "3lb"), ("zones", "front, front", "front"), ("zones", "mow", "mow"),
     ("frost", "05-06", "05-06"),
     ("frost", "05-06 13-01", "13-01"), ("grass", "moss", "moss"), ("units", "uk", "uk"), ("zones", ";", ";"),
     ("treated", "perhaps", "perhaps"), ("treated", "4/15 ok", "ok"), ("treated", "13/45", "13/45")],
)  # fmt: skip
def test_an_answer_that_can_not_be_used_names_the_word(key: str, answer: str, word: str) -> None:
    with pytest.raises(Refusal) as caught:
        settings_from_answers({key: answer}, TODAY)
    assert caught.value.word == word


def _told(answer: str, units: str = "us") -> tuple[Lawn, list[Treatment]]:
    made = entries_from_answers({"treated": answer}, TODAY, units)
    assert len({type(entry) for entry in made}) <= 2
    treatments = [entry for entry in made if isinstance(entry, Treatment)]
    return fold(settings_from_answers({"treated": answer}, TODAY, units)), treatments


def test_a_treatment_of_the_last_year_is_written_down_as_unknown_on_about_its_day() -> None:
    lawn, (entry,) = _told("in april")
    assert (entry.product, entry.about, entry.zones) == ("unknown", True, ("front", "back"))
    assert (entry.date.month, entry.date.day) == (4, 30)
    assert entry.date <= TODAY
    assert lawn.treatments_since == TODAY - timedelta(365)


@pytest.mark.parametrize("answer", ["no", "None.", "nothing"])
def test_a_no_tells_that_the_year_before_is_known(answer: str) -> None:
    lawn, treatments = _told(answer)
    assert (lawn.treatments_since, treatments) == (TODAY - timedelta(365), [])


@pytest.mark.parametrize("answer", ["skip", "not sure", "?", ""])
def test_left_open_nothing_is_known(answer: str) -> None:
    lawn, treatments = _told(answer)
    assert (lawn.treatments_since, treatments) == (None, [])
