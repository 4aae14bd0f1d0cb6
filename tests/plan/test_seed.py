"""When the plan says to sow, with what, and what forbids it."""

import pytest

from journal.plan.step import State
from tests.plan.garden import PRODUCTS, kept
from tests.scenario import day, find, the

MEANT = "2026-07-22 intend seed three-river-blend 2026-09-05 front"
NO_SEED = {name: facts for name, facts in PRODUCTS.items() if facts["kind"] != "seed"}
FESCUE = PRODUCTS | {"three-river-blend": {"kind": "seed", "mix": "tall fescue 100%", "rate": "4lb/k 4lb/k"}}


def test_the_window_is_counted_back_from_the_end_of_growth_a_week_earlier_with_bluegrass() -> None:
    step = the(kept(MEANT), "2026-08-01", "seed")
    assert step.state is State.WAITING
    assert step.earliest == day("2026-08-11")
    assert step.best == (day("2026-08-11"), day("2026-09-08"))
    assert step.latest == day("2026-09-22")
    assert step.waits_for == "opens Tue 11 Aug"


def test_without_bluegrass_the_window_is_a_week_later() -> None:
    step = the(kept(MEANT, products=FESCUE), "2026-08-01", "seed")
    assert step.best == (day("2026-08-15"), day("2026-09-15"))
    assert step.latest == day("2026-09-29")


@pytest.mark.parametrize(
    ("as_of", "state"),
    [
        ("2026-08-10", State.WAITING),
        ("2026-08-11", State.OPEN),
        ("2026-09-18", State.OPEN),
    ],
)
def test_it_opens_and_stays_open(as_of: str, state: State) -> None:
    assert the(kept(MEANT), as_of, "seed").state is state


def test_after_the_last_day_it_is_missed() -> None:
    later = "2026-09-10 intend seed three-river-blend 2026-09-20 front"
    assert the(kept(later), "2026-09-22", "seed").state is State.OPEN
    step = the(kept(later), "2026-09-23", "seed")
    assert step.state is State.MISSED
    assert step.line == ""


def test_how_much_over_the_zone() -> None:
    step = the(kept(MEANT), "2026-08-20", "seed")
    assert step.line == "seed three-river-blend 9.6lb front"
    assert step.amount == "9.6 lb three-river-blend (4 lb/k, label)"


def test_a_zone_never_sown_is_offered_seed_while_the_shed_holds_some() -> None:
    assert the(kept(), "2026-08-20", "seed").zones == ("front", "back")
    assert find(kept(products=NO_SEED), "2026-08-20", "seed") is None


def test_an_established_lawn_is_not_told_to_overseed_every_autumn() -> None:
    assert find(kept(lawn={"renovated": "2024-09-06"}), "2026-08-20", "seed") is None
    assert find(kept("2026-04-20 seed three-river-blend 9lb front"), "2027-08-20", "seed") is None


def test_it_asks_for_the_same_seed_as_last_time() -> None:
    other = PRODUCTS | {"new-thing": {"kind": "seed", "mix": "tall fescue 100%", "rate": "4lb/k 4lb/k"}}
    sown = "2026-04-20 seed three-river-blend 9lb front"
    book = kept(sown, "2027-07-01 intend seed 2027-09-01 front", products=dict(reversed(other.items())))
    assert the(book, "2027-08-20", "seed").line.startswith("seed three-river-blend ")


def test_sown_it_is_done() -> None:
    book = kept(MEANT, "2026-09-06 seed three-river-blend 9.6lb front")
    step = the(book, "2026-09-06", "seed")
    assert step.state is State.DONE
    assert step.why == "sown Sun 6 Sep: three-river-blend"
    assert find(book, "2027-03-01", "seed") is None


def test_a_spot_settles_nothing() -> None:
    book = kept("2026-08-15 seed three-river-blend 0.5lb spot 40sqft front")
    assert the(book, "2026-08-20", "seed").state is State.OPEN


def test_a_spring_barrier_bars_the_autumn() -> None:
    shed = PRODUCTS | {"wall": {"kind": "pre-emergent", "rate": "3lb/k 3lb/k"}}
    step = the(kept("2026-04-15 treat wall 7lb front", MEANT, products=shed), "2026-08-01", "seed")
    assert step.state is State.BARRED
    assert step.waits_for == "wall of Wed 15 Apr keeps seed out to Wed 11 Nov, past the last day to sow"
    assert (step.line, step.amount) == ("", "")
    book = kept("2026-04-15 treat wall 7lb front", products=shed)
    assert the(book, "2026-08-01", "seed", "back").state is State.WAITING


def test_a_label_wait_that_ends_in_time_only_moves_the_day() -> None:
    shed = PRODUCTS | {"wall": {"kind": "pre-emergent", "to_seed": "28d"}}
    book = kept("2026-08-05 treat wall 7lb front", MEANT, products=shed)
    step = the(book, "2026-08-20", "seed")
    assert (step.state, step.earliest) == (State.WAITING, day("2026-09-02"))
    assert step.waits_for == "wall of Wed 5 Aug keeps seed out to Wed 2 Sep"
    assert the(book, "2026-09-02", "seed").state is State.OPEN


def test_spring_seed_is_offered_to_those_who_mean_it() -> None:
    step = the(kept("2026-03-01 intend seed three-river-blend 2026-04-20 front"), "2026-04-12", "seed")
    assert (step.state, step.earliest, step.latest) == (State.OPEN, day("2026-04-10"), day("2026-05-19"))


def test_dormant_seed_waits_for_the_end_of_growth_and_says_so_on_the_line() -> None:
    book = kept("2026-11-01 intend seed three-river-blend 2026-11-25 front")
    step = the(book, "2026-11-20", "seed")
    assert (step.state, step.earliest, step.latest) == (State.OPEN, day("2026-11-11"), day("2027-04-09"))
    assert step.line == "seed three-river-blend 9.6lb front dormant"


def test_a_day_meant_too_late_is_called_so() -> None:
    step = the(kept("2026-09-14 intend seed three-river-blend 2026-09-26 front"), "2026-09-21", "seed")
    assert step.why == "meant for Sat 26 Sep: too late, last day Tue 22 Sep"


def test_in_the_south_the_next_late_summer_is_in_february() -> None:
    south = {"latitude": "-37", "last_frost": "10-20", "first_frost": "05-01", "growth": "10-01 06-05"}
    meant = kept("2026-04-20 intend seed three-river-blend 2026-05-01 front", lawn=south)
    step = the(meant, "2026-05-02", "seed")
    assert (step.state, step.why.endswith("or next February")) == (State.MISSED, True)
