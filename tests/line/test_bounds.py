"""Values that can be read and can't have been meant, and taking back one's own."""

from datetime import date

import pytest

from journal.line.read import read
from journal.line.settings import check_fact
from journal.record.fold import fold
from journal.record.kinds.setting import Setting
from journal.record.refusal import Refusal
from tests.line.lawns import TODAY, US, a_history, logged

BOOK = a_history(US)


@pytest.mark.parametrize(
    ("key", "text", "why"),
    [
        ("local_slow", "0.2", "Write 20% or 0.2%"), ("local_rules", "us-mdd", "us-md"), ("local_rules", "off", "none"),
        ("local_rules", "Maryland", "us-md"), ("local_rules", "md", "us-md"), ("local_test_months", "5%", "months"),
        ("local_most_n", "1000000lb/k", "20lb/k"), ("local_buffer", "9000ft", "1000ft"),
        ("local_most_n", "\u0664lb/k", "not a number"),
    ],
)  # fmt: skip
def test_what_cannot_be_meant_is_refused_with_what_may_be(key: str, text: str, why: str) -> None:
    with pytest.raises(Refusal, match=why):
        check_fact("lawn", key, text)


def test_an_older_book_keeps_what_is_refused_today() -> None:
    values = (("local_most_n", "1000lb/k"), ("local_slow", "0.2"), ("local_rules", "us-mdd"))
    lawn = fold([Setting(date=date(2026, 1, 1), what="lawn", name="", values=values, line="")])
    assert not lawn.problems
    assert (lawn.local_slow_percent, lawn.local_rules) == (0.2, "us-mdd")
    assert lawn.local_most_n_g_per_m2


def test_ones_own_number_is_taken_back() -> None:
    said = logged(BOOK, ["set local_closed 12-01 03-01", "set front near_water 30ft"])
    assert said.lawn(TODAY).local_closed
    back = logged(said, ["set local_closed none", "set front near_water none"]).lawn(TODAY)
    zone = back.zone("front")
    assert back.local_closed is None
    assert zone is not None
    assert zone.near_water_mm is None
    assert ("lawn", "", "local_closed") not in back.said


def test_a_granule_is_not_bought_by_the_gallon() -> None:
    line = "buy oat-hill-starter 1x 50gal $9"
    problem = read(line, BOOK, TODAY).problem
    assert problem is not None
    assert line[problem.start : problem.end] == "50gal"
    assert "write it like 50lb" in problem.why
