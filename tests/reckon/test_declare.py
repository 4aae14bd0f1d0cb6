"""How reckonings are declared and their options read, whatever is typed."""

import math
from dataclasses import dataclass
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from journal.reckon.answer import Answer, figure
from journal.reckon.calls import reckonings
from journal.reckon.declare import RECKONINGS, Needs, Reckoning, bare, in_order, mark, reckoning
from journal.record.refusal import Refusal
from journal.record.term import Term, asked, term, yes_no
from journal.reports.reckoned import answer_text


@dataclass(frozen=True, slots=True, kw_only=True)
class Made:
    """One field of each kind."""

    must: bool = asked("must_say", yes_no, "yes")
    may: bool = term("may", yes_no, "no", True)
    quiet: bool = mark("quiet")
    steps: tuple[tuple[str, Any], ...] = in_order(Term("up", yes_no, "yes"), bare("down"))


MADE = Reckoning("made", "says", "made", Needs.NOTHING, Made, {})


def test_options_of_every_kind_are_read() -> None:
    read = MADE.read(["--up", "yes", "--must-say", "no", "--down", "--up=no", "--quiet"])
    assert read == Made(must=False, may=True, quiet=True, steps=(("up", True), ("down", True), ("up", False)))


def test_options_keep_their_order_of_declaration_and_know_what_is_needed() -> None:
    options = MADE.options
    assert list(options) == ["must-say", "may", "quiet", "up", "down"]
    assert [name for name, option in options.items() if option.needed] == ["must-say", "up", "down"]
    assert [name for name, option in options.items() if option.bare] == ["quiet", "down"]
    assert options["must-say"].example == "--must-say yes"
    assert options["quiet"].example == "--quiet"


@pytest.mark.parametrize(
    ("words", "word", "why"),
    [
        ("--up yes", "--must-say", "is missing: write it like --must-say yes"),
        ("--must-say yes", "", "at least one of --up"),
        ("--must-say yes --up yes --quiet now", "--quiet now", "stands alone"),
        ("--must-say yes --up yes --quiet --quiet", "--quiet", "already"),
        ("--must-say yes --up", "--up", "a value is wanted"),
        ("--must-say perhaps --up yes", "--must-say perhaps", "yes or no"),
        ("--must-say yes --up " + "y" * 5000, "--up", "far too long"),
    ],
)
def test_what_does_not_fit_is_refused(words: str, word: str, why: str) -> None:
    with pytest.raises(Refusal) as caught:
        MADE.read(words.split())
    assert caught.value.word == word
    assert why in caught.value.why


def test_two_reckonings_of_one_name_are_a_fault() -> None:
    with pytest.raises(ValueError, match="two reckonings"):
        reckoning("spread", "again", "spread")(Made)
    assert RECKONINGS["spread"].asks is not Made


def test_figures_are_given_in_the_unit_that_the_key_names() -> None:
    answer = Answer(
        (figure("lb", "weight", 453.59237, "lb"), figure("n", "count", 3), figure("each", "price", 0.01, "$/kg"))
    )
    assert answer.as_json() == {"lb": 1.0, "n": 3, "each": 10.0}
    assert isinstance(answer.as_json()["n"], int)


VALUES = st.one_of(
    st.sampled_from(
        ["", "0", "-1", "1", "50", "100%", "nan", "1e9", "40%", "24-0-11", "0-0-0", "0.0001lb/k", "20lb/k", "1g/m2",
         "1kg/ha", "20000l", "0.0001ml", "100acre", "1cm", "1m2", "0.001m2", "4ml/m2", "100gal/k", "1floz/k", "99lb",
         "40ft,60ft", "1mm,1mm", "2000m,2000m", "12ft", "3m,4ft", "$5", "100000", "8", "x", ",", "--", "1/3lb", "1/0lb"]
    ),
    st.text(max_size=6),
)  # fmt: skip
PLAIN = [one for one in reckonings() if one.needs is Needs.NOTHING]


@given(st.data())
def test_whatever_is_typed_is_answered_or_refused(data: st.DataObject) -> None:
    one = data.draw(st.sampled_from(PLAIN))
    words = []
    for name, option in one.options.items():
        if data.draw(st.sampled_from([True, option.needed])):
            value = data.draw(st.one_of(st.just(option.term.example), VALUES))
            words += [f"--{name}", *([value] if value else [])]
    try:
        answer = one.read(words).answer()
    except Refusal:
        return
    assert all(value is None or math.isfinite(value) for value in answer.as_json().values())
    assert max(map(len, answer_text(answer).splitlines())) <= 80
