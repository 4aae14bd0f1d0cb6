"""Opening the soil: on the day of sowing or in the week before (common practice), moist, not in the heat of summer
(Univ. of Idaho Extension, 2012).
"""

import pytest

from journal.plan.step import State
from tests.plan.garden import kept
from tests.scenario import day, find, judged, the

MEANT = "2026-07-22 intend seed three-river-blend 2026-09-10 front"
SOWN = "2026-09-10 seed three-river-blend 9.6lb front"


@pytest.mark.parametrize(
    ("on", "state"),
    [("2026-09-02", State.WAITING), ("2026-09-03", State.OPEN), ("2026-09-10", State.OPEN), ("2026-09-15", State.OPEN)],
)
def test_it_opens_a_week_before_the_sowing(on: str, state: State) -> None:
    step = the(kept(MEANT), on, "aerate")
    assert (step.state, step.earliest) == (state, day("2026-09-03"))


def test_it_says_what_to_mind() -> None:
    step = the(kept(MEANT), "2026-09-04", "aerate")
    assert step.latest == day("2026-09-10")
    assert step.line == "aerate 3x front"
    for words in ("sprinkler heads", "shallow cables", "pet fence", "moist soil", "water 1 to 2 d before"):
        assert words in step.amount
    assert step.why == "for the sowing of Thu 10 Sep, 0 to 7 d before"


def test_done_it_is_done_and_the_sowing_is_not_blamed() -> None:
    book = kept(MEANT, "2026-09-05 aerate 3x front")
    step = the(book, "2026-09-05", "aerate")
    assert (step.state, step.why) == (State.DONE, "aerated Sat 5 Sep")
    assert "seed-unopened" not in {f.rule for f in judged(book, "2026-09-10", SOWN[11:]).raised}
    assert the(kept(MEANT, "2026-09-05 aerate 3x front", SOWN), "2026-09-12", "aerate").state is State.DONE
    assert "seed-unopened" in {f.rule for f in judged(kept(MEANT), "2026-09-10", SOWN[11:]).raised}


def test_cores_pulled_long_before_do_not_count() -> None:
    assert the(kept(MEANT, "2026-08-27 aerate 2x front"), "2026-09-05", "aerate").state is State.OPEN


def test_no_cores_from_june_to_august() -> None:
    early = "2026-07-22 intend seed three-river-blend 2026-08-25 front"
    step = the(kept(early), "2026-08-20", "aerate")
    assert (step.title, step.line, step.state) == ("rake", "rake front", State.OPEN)
    assert "no cores from June to August" in step.why
    september = "2026-07-22 intend seed three-river-blend 2026-09-05 front"
    step = the(kept(september), "2026-08-20", "aerate")
    assert (step.earliest, step.title) == (day("2026-09-01"), "aerate")


def test_sown_without_it_there_is_nothing_left_to_do() -> None:
    assert find(kept(MEANT, SOWN), "2026-09-11", "aerate") is None


def test_it_has_no_place_where_nothing_is_to_be_sown() -> None:
    assert find(kept(lawn={"renovated": "2024-09-06"}), "2026-09-01", "aerate") is None
    assert find(kept("2026-09-10 intend seed three-river-blend 2026-09-20 front"), "2026-09-23", "aerate") is None


def test_dormant_seed_is_raked_in() -> None:
    step = the(kept("2026-11-01 intend seed three-river-blend 2026-11-25 front"), "2026-11-20", "aerate")
    assert (step.line, step.state) == ("rake front", State.OPEN)
    assert "no cores while nothing grows" in step.why


def test_in_the_south_the_heat_is_in_january() -> None:
    south = {"latitude": "-37", "last_frost": "10-20", "first_frost": "05-01", "growth": "10-01 05-05"}
    summer = kept("2026-12-20 intend seed three-river-blend 2027-02-20 front", lawn=south)
    assert the(summer, "2027-02-18", "aerate").line == "rake front"
    autumn = kept("2026-12-20 intend seed three-river-blend 2027-03-15 front", lawn=south)
    assert the(autumn, "2027-03-10", "aerate").line == "aerate 3x front"


def test_it_names_the_day_on_which_the_machine_is_hired() -> None:
    book = kept(MEANT, "2026-08-20 intend aerate 2026-09-08 front rental")
    assert the(book, "2026-09-04", "aerate").meant == day("2026-09-08")
