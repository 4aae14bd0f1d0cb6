"""Owners who do it right, and are left alone."""

import pytest

from journal.rules.flag import Level
from journal.season.history import History
from journal.standing import findings
from tests.scenario import LAWN, book, later, lawn, level, rules_raised, weather


def nagged(history: History, first: str, days: int, zone: str = "front") -> set[tuple[str, str]]:
    """Rule and level of all that stood on any of so many days, above a note."""
    return {
        (flag.rule, str(flag.level))
        for at in range(days)
        for flag in findings(history, later(first, at))
        if zone in flag.zones and flag.level is not Level.NOTE
    }


def test_a_year_of_weekly_cuts_and_four_feedings() -> None:
    cuts = [f"{later('2026-04-20', 7 * week)} mow 3in front" for week in range(30)]
    timer = "2026-05-01 schedule front 20min mon thu 6:00 from 5/1 to 9/30"
    fed = [f"2026-{on} feed pond-ridge 5lb front" for on in ("05-10", "07-01", "08-25", "10-10")]
    assert nagged(book(timer, *sorted(cuts + fed)), "2026-04-10", 300) == set()


@pytest.mark.parametrize("month", ["2026-07", "2026-08", "2026-10"])
def test_a_cut_every_two_weeks_when_it_grows_slowly(month: str) -> None:
    cuts = [f"{later(f'{month}-02', 14 * at)} mow 3in front" for at in (0, 1)]
    assert level(book(*cuts), later(f"{month}-02", 14), "mow-gap") == ""


def test_a_september_renovation_done_right() -> None:
    diary = book(
        "2026-07-01 treat leaf-off 2floz front", "2026-09-04 mow 1.5in front", "2026-09-05 dethatch front",
        "2026-09-06 mow 1.5in front", "2026-09-06 seed three-river 9lb front", "2026-09-06 feed oat-hill 7lb front",
        "2026-09-06 schedule front 5min 7:00", "2026-09-06 schedule front 5min 15:00",
        "2026-10-04 mow 3in bag front", "2026-10-06 feed pond-ridge 4lb front",
        *(f"{later('2026-10-11', 7 * week)} mow 3in bag front" for week in range(5)),
    )  # fmt: skip
    assert nagged(diary, "2026-09-06", 216) == set()
    assert "mow-height" not in rules_raised(diary, "2026-09-06")


def test_a_starter_with_mesotrione_as_its_label_allows() -> None:
    listed = LAWN.replace(
        'slow = "20% of n"', 'slow = "20% of n"\nactives = ["mesotrione"]\n[product.label]\nto_seed = "0 d"', 1
    )
    diary = book("2026-09-06 seed three-river 9lb front", "2026-09-06 feed oat-hill 7lb front", on=lawn(toml=listed))
    assert rules_raised(diary, "2026-09-07") & {"seed-over-residue", "starter-wrong", "starter-missing"} == set()


def test_the_day_28_feeding_is_free() -> None:
    diary = book(
        "2026-09-06 seed three-river 9lb front", "2026-09-06 feed oat-hill 7lb front",
        "2026-10-04 feed pond-ridge 4lb front",
    )  # fmt: skip
    assert level(diary, "2026-10-04", "starter-wrong") == ""


def test_a_spring_patch_leaves_the_zone_as_it_was() -> None:
    diary = book(
        "2026-04-20 mow 3in front", "2026-05-01 seed three-river 0.5lb spot 20sqft front", "2026-05-02 water front",
        *(f"{later('2026-04-27', 7 * week)} mow 3in front" for week in range(5)),
    )  # fmt: skip
    assert nagged(diary, "2026-05-01", 35) == set()
    assert rules_raised(diary, "2026-05-10") & {"seedbed-dry", "mow-first-early", "starter-missing"} == set()


def test_a_lawn_left_to_rest_in_drought() -> None:
    diary = book(
        "2026-06-20 mow 3in front", "2026-06-28 see dormant front", *weather("2026-06-01", 90, "88F 66F 0in"),
        on=lawn(("irrigated = true", "irrigated = false")),
    )  # fmt: skip
    assert nagged(diary, "2026-06-28", 29) == set()
    assert nagged(diary, "2026-07-27", 30) == {("dormant-thirst", "late")}
    drink = book("2026-07-25 water 0.5in front", "2026-08-22 water 0.5in front", on=diary)
    assert nagged(drink, "2026-06-28", 60) == set()


def test_a_sprinkler_owner_is_never_told_of_dryness() -> None:
    diary = book(
        "2026-06-01 schedule front 25min mon wed fri 6:00", "2026-08-20 schedule front 5min 6:00",
        "2026-08-20 schedule front 5min 14:00", "2026-08-25 seed quick-rye 9lb front",
        "2026-08-25 feed oat-hill 7lb front", *weather("2026-06-01", 120, "80F 60F 0in"),
    )  # fmt: skip
    for at in range(100):
        found = rules_raised(diary, later("2026-06-10", at))
        assert found & {"seedbed-dry", "water-unlogged"} == set(), later("2026-06-10", at)


def test_winter_is_quiet() -> None:
    diary = book("2026-10-25 mow 3in front", "2026-11-08 mow 1.5in front", "2026-09-20 feed pond-ridge 7lb front")
    assert rules_raised(diary, "2026-11-22") == set()
    for at in range(130):
        assert rules_raised(diary, later("2026-11-22", at)) == set()
