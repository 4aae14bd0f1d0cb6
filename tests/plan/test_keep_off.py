"""Nobody on the seed, from the sowing to the first cut."""

from journal.plan.step import State
from tests.plan.garden import kept
from tests.scenario import day, find, later, the

SOWN = "2026-09-06"
SEED = f"{SOWN} seed three-river-blend 9.6lb front"
SPOT = f"{SOWN} seed three-river-blend 0.5lb spot 40sqft front"


def test_from_the_day_of_sowing_to_the_first_cut() -> None:
    book = kept(SEED, f"{later(SOWN, 28)} mow 3in bag front")
    for at in (0, 10, 27):
        step = the(book, later(SOWN, at), "keep-off")
        assert (step.state, step.earliest, step.latest) == (State.OPEN, day(SOWN), later(SOWN, 28)), at
    assert the(book, later(SOWN, 28), "keep-off").state is State.DONE
    assert find(book, later(SOWN, 100), "keep-off") is None
    assert find(kept(), SOWN, "keep-off") is None


def test_measured_tall_enough_it_ends_sooner() -> None:
    book = kept(SEED, f"{later(SOWN, 22)} height 3.6in front")
    assert the(book, later(SOWN, 22), "keep-off").latest == later(SOWN, 22)


def test_it_says_who_and_has_no_line() -> None:
    step = the(kept(SEED), SOWN, "keep-off")
    assert step.line == ""
    assert "pets" in step.amount
    assert step.title == "keep off"


def test_a_spot_has_its_own_and_the_zone_none() -> None:
    step = the(kept(SPOT), later(SOWN, 5), "keep-off")
    assert (step.title, step.latest) == ("keep off spot", later(SOWN, 28))
    assert "spot sown 5 d ago" in step.why
    cut = kept(SPOT, f"{later(SOWN, 7)} mow 3in front", f"{later(SOWN, 21)} mow 3in front")
    assert find(cut, later(SOWN, 20), "keep-off") is not None
    assert find(cut, later(SOWN, 21), "keep-off") is None
    assert find(kept(SPOT), later(SOWN, 57), "keep-off") is None


def test_a_late_sowing_is_kept_off_until_its_cut_in_spring() -> None:
    book = kept("2026-10-14 seed three-river-blend 9.6lb front")
    assert the(book, "2027-01-10", "keep-off").state is State.OPEN
    assert the(book, "2027-05-01", "keep-off").state is State.OPEN
    assert find(book, "2027-05-02", "keep-off") is None


def test_dormant_seed_waits_for_growth() -> None:
    step = the(kept("2026-12-01 seed three-river-blend 9.6lb front dormant"), "2027-01-10", "keep-off")
    assert (step.state, step.earliest) == (State.WAITING, day("2027-04-10"))


def test_who_has_the_lawn_mown_counts_to_day_28() -> None:
    zones = {"front": {"area": "2400sqft", "mowing": "service"}}
    assert the(kept(SEED, zones=zones), later(SOWN, 28), "keep-off").state is State.OPEN
    assert the(kept(SEED, zones=zones), later(SOWN, 29), "keep-off").state is State.DONE
