"""The stand of grass: what was sown last, and how old it is."""

from datetime import date

import pytest

from journal.season.history import History, Past
from journal.season.stand import (
    age,
    day_zero,
    emerged_on,
    first_mowing_after_sowing,
    in_seedbed,
    intentions,
    mix_of,
    new_grass,
    sown,
    stand_mix,
    weed_seen,
)
from tests.scenario import book, day, later, lawn

SOWN = "2026-08-25"
SEED = f"{SOWN} seed three-river 9lb front"


def front(history: History, on: str | date) -> Past:
    return history.on("front", day(on))


def product(history: History, on: str | date) -> str:
    seeding = sown(front(history, on))
    return f"{seeding.date} {seeding.product}" if seeding else ""


def test_the_last_sowing_makes_the_stand() -> None:
    diary = book(SEED, "2027-09-01 seed stone-wall 9lb front")
    assert product(diary, "2026-08-24") == ""
    assert product(diary, "2026-09-01") == "2026-08-25 three-river"
    assert product(diary, "2027-09-01") == "2027-09-01 stone-wall"


def test_a_spot_changes_nothing() -> None:
    for spot in ("spot", "spot 20sqft"):
        diary = book(SEED, f"2027-04-20 seed three-river 0.5lb {spot} front")
        assert product(diary, "2027-04-20") == "2026-08-25 three-river"
        assert not in_seedbed(front(diary, "2027-04-21"))


@pytest.mark.parametrize(
    ("days", "pounds", "tops_up"), [(20, 4.4, True), (20, 4.5, False), (21, 4.4, False), (0, 2, True)]
)
def test_a_top_up_is_small_and_soon(days: int, pounds: float, tops_up: bool) -> None:
    diary = book(SEED, f"{later(SOWN, days)} seed three-river {pounds}lb front")
    zero = day_zero(front(diary, later(SOWN, days)))
    assert zero == day(SOWN) if tops_up else zero == later(SOWN, days)


def test_a_seedbed_ends_with_the_first_cut_from_day_21_or_after_day_56() -> None:
    diary = book(SEED)
    assert in_seedbed(front(diary, SOWN))
    assert in_seedbed(front(diary, later(SOWN, 56)))
    assert not in_seedbed(front(diary, later(SOWN, 57)))
    early = book(f"{later(SOWN, 20)} mow 3in front", on=diary)
    assert in_seedbed(front(early, later(SOWN, 20)))
    cut = book(f"{later(SOWN, 21)} mow 3in front", on=diary)
    assert not in_seedbed(front(cut, later(SOWN, 21)))
    first = first_mowing_after_sowing(front(cut, later(SOWN, 30)))
    assert first is not None
    assert first.date == later(SOWN, 21)


def test_new_grass_needs_56_days_and_three_cuts() -> None:
    cuts = [f"{later(SOWN, at)} mow 3in front" for at in (28, 35, 42)]
    assert new_grass(front(book(SEED, *cuts), later(SOWN, 56)))
    assert not new_grass(front(book(SEED, *cuts), later(SOWN, 57)))
    assert new_grass(front(book(SEED, *cuts[:2]), later(SOWN, 70)))
    twice_a_day = [f"{later(SOWN, 28)} mow 3in front"] * 3
    assert new_grass(front(book(SEED, *twice_a_day), later(SOWN, 70)))


def test_a_services_cuts_are_not_waited_for() -> None:
    service = lawn(('name = "front"', 'name = "front"\nmowing = "service"'))
    assert not new_grass(front(book(SEED, on=service), later(SOWN, 57)))


@pytest.mark.parametrize("line", ["2026-11-20 seed three-river 9lb", "2026-11-05 seed three-river 9lb dormant"])
def test_a_dormant_sowing_counts_from_growth_start(line: str) -> None:
    diary = book(f"{line} front")
    assert day_zero(front(diary, "2026-12-01")) == date(2027, 4, 10)
    assert age(front(diary, "2027-04-01")) == -9
    assert not in_seedbed(front(diary, "2027-04-09"))
    assert in_seedbed(front(diary, "2027-04-10"))


def test_sown_on_the_last_day_of_growth_is_not_dormant() -> None:
    assert age(front(book("2026-11-10 seed three-river 9lb front"), "2026-11-12")) == 2


@pytest.mark.parametrize(("seed", "days"), [("three-river", 21), ("quick-rye", 7), ("stone-wall", 21)])
def test_emergence_is_assumed_by_the_slowest_grass(seed: str, days: int) -> None:
    diary = book(f"{SOWN} seed {seed} 9lb front")
    assert emerged_on(front(diary, later(SOWN, days - 1))) is None
    found = emerged_on(front(diary, later(SOWN, days)))
    assert found is not None
    assert (found.date, found.assumed) == (later(SOWN, days), True)


def test_emergence_that_was_seen() -> None:
    found = emerged_on(front(book(SEED, f"{later(SOWN, 9)} see emerged front"), later(SOWN, 30)))
    assert found is not None
    assert (found.date, found.assumed) == (later(SOWN, 9), False)


def test_mixes() -> None:
    here = lawn().lawn(day(SOWN))
    assert mix_of(here, "stone-wall") == {"tall fescue": 90, "kentucky bluegrass": 10}
    assert mix_of(here, "nowhere") == {}
    assert stand_mix(front(lawn(), SOWN)) == {"kentucky bluegrass": 50, "perennial ryegrass": 50}


def test_a_grass_nobody_knows_counts_as_unknown() -> None:
    odd = lawn(('grass = ["kentucky bluegrass", "perennial ryegrass"]', 'grass = ["unknown"]'))
    assert stand_mix(front(odd, SOWN)) == {"unknown": 100}


def test_intentions_stand_until_done_or_two_weeks_late() -> None:
    meant = book("2026-08-01 intend seed three-river 2026-09-05 front")

    def standing(history: History, on: str) -> int:
        return len(intentions(front(history, on), "seed"))

    assert standing(meant, "2026-07-31") == 0
    assert standing(meant, "2026-08-01") == 1
    assert standing(meant, "2026-09-18") == 1
    assert standing(meant, "2026-09-19") == 0
    assert standing(book("2026-08-23 seed three-river 9lb front", on=meant), "2026-08-23") == 0
    assert standing(book("2026-08-22 seed three-river 9lb front", on=meant), "2026-08-22") == 1
    assert standing(book("2026-09-04 seed three-river 9lb back", on=meant), "2026-09-04") == 1
    assert len(intentions(front(meant, "2026-08-10"), "aerate")) == 0
    again = book("2026-08-30 seed three-river 9lb front", "2026-08-31 intend seed three-river 2026-09-10 front")
    assert standing(again, "2026-08-31") == 1


def test_weeds_seen() -> None:
    seen = book("2026-05-20 see crabgrass front")
    assert weed_seen(front(seen, later("2026-05-20", 399)), "crabgrass") is not None
    assert weed_seen(front(seen, later("2026-05-20", 400)), "crabgrass") is None
    assert weed_seen(front(seen, "2026-06-01"), "clover") is None
