"""Seedbeds that dry out: one to three light waterings a day are printed (NC State Univ., Quick reference: seeding a new
lawn; Iowa State Univ. Extension, How should I water a newly seeded lawn?).
"""

import pytest

from tests.scenario import LAWN, book, later, lawn, level, raised, rules_raised, weather

SOWN = "2026-08-25"
RYE = f"{SOWN} seed quick-rye 9lb front"
BLUE = f"{SOWN} seed three-river 9lb front"
NO_RAIN = weather(SOWN, 40, "80F 62F 0in")


def watered(days: range, times: int = 2) -> list[str]:
    return [f"{later(SOWN, at)} water 5min front" for at in days for _ in range(times)]


def test_a_short_day_a_dry_day_two_dry_days() -> None:
    short = book(RYE, *watered(range(1, 4)), *watered(range(4, 5), 1), *NO_RAIN)
    assert level(short, later(SOWN, 4), "seedbed-dry") == ""
    assert level(short, later(SOWN, 5), "seedbed-dry") == "note"
    dry = book(RYE, *watered(range(1, 4)), *NO_RAIN)
    assert level(dry, later(SOWN, 4), "seedbed-dry") == ""
    assert level(dry, later(SOWN, 5), "seedbed-dry") == "late"
    assert level(dry, later(SOWN, 6), "seedbed-dry") == "loss"


def test_water_clears_it() -> None:
    dry = book(RYE, *watered(range(1, 4)), *NO_RAIN)
    assert level(book(f"{later(SOWN, 6)} water 5min front", on=dry), later(SOWN, 6), "seedbed-dry") == ""


@pytest.mark.parametrize(("seed", "last_judged"), [(RYE, 20), (BLUE, 27)])
def test_to_day_20_or_27_with_bluegrass(seed: str, last_judged: int) -> None:
    diary = book(seed, *watered(range(1, last_judged)), *NO_RAIN)
    assert level(diary, later(SOWN, last_judged + 1), "seedbed-dry") == "late"
    assert level(diary, later(SOWN, last_judged + 2), "seedbed-dry") == ""


def test_once_a_day_is_enough_from_day_15_without_bluegrass_or_on_a_cool_day() -> None:
    def after_one(seed: str, days: int, skies: list[str]) -> str:
        diary = book(seed, *watered(range(1, days)), *watered(range(days, days + 1), 1), *skies)
        return level(diary, later(SOWN, days + 1), "seedbed-dry")

    assert after_one(RYE, 14, NO_RAIN) == "note"
    assert after_one(RYE, 15, NO_RAIN) == ""
    assert after_one(BLUE, 15, NO_RAIN) == "note"
    assert after_one(BLUE, 15, weather(SOWN, 40, "59F 40F 0in")) == ""
    assert after_one(BLUE, 15, weather(SOWN, 40, "60F 40F 0in")) == "note"


def test_rain_covers_its_day_and_plenty_the_next() -> None:
    def after(rain: str, days: int) -> str:
        diary = book(RYE, *watered(range(1, 4)), *NO_RAIN, f"{later(SOWN, 4)} rain {rain}")
        return level(diary, later(SOWN, days), "seedbed-dry")

    assert after("0.09in", 5) == "late"
    assert after("0.1in", 5) == ""
    assert after("0.1in", 6) == "late"
    assert after("0.25in", 6) == ""
    assert after("0.25in", 7) == "late"


def test_where_rain_is_not_known_it_is_one_level_lower() -> None:
    dry = book(RYE, *watered(range(1, 4)))
    assert level(dry, later(SOWN, 5), "seedbed-dry") == "note"
    assert level(dry, later(SOWN, 6), "seedbed-dry") == "late"


def test_grass_of_an_inch_and_a_half_needs_no_seedbed_water() -> None:
    diary = book(RYE, *watered(range(1, 12)), *NO_RAIN, f"{later(SOWN, 12)} height 1.5in front")
    assert level(diary, later(SOWN, 14), "seedbed-dry") == ""
    old_turf = book(RYE, *watered(range(1, 4)), *NO_RAIN, f"{later(SOWN, 2)} height 3in front")
    assert level(old_turf, later(SOWN, 6), "seedbed-dry") == "loss"


def test_a_timer_is_believed() -> None:
    diary = book(RYE, f"{SOWN} schedule front 5min 7:00", f"{SOWN} schedule front 5min 15:00", *NO_RAIN)
    for at in range(1, 30):
        assert level(diary, later(SOWN, at), "seedbed-dry") == "", at
    off = book(f"{later(SOWN, 5)} schedule off front", on=diary)
    assert level(off, later(SOWN, 7), "seedbed-dry") == "loss"


def test_without_any_watering_there_is_one_note_and_no_loss() -> None:
    diary = book(RYE, *NO_RAIN)
    for at in range(2, 22):
        found = rules_raised(diary, later(SOWN, at)) & {"seedbed-dry", "water-unlogged"}
        assert found == {"water-unlogged"}, at
    note = raised(diary, later(SOWN, 5), "water-unlogged")
    assert note is not None
    assert note.level == "note"
    assert "schedule" in note.do


def test_a_patch_makes_no_seedbed_of_the_zone() -> None:
    diary = book(f"{SOWN} seed quick-rye 1lb spot 20sqft front", *watered(range(1, 3)), *NO_RAIN)
    assert level(diary, later(SOWN, 8), "seedbed-dry") == ""


def test_the_owners_own_number() -> None:
    once = book(f"{SOWN} set seedbed-dry waterings 1", RYE, *watered(range(1, 10), 1), *NO_RAIN)
    assert level(once, later(SOWN, 8), "seedbed-dry") == ""


def test_a_dormant_sowing_is_damp_from_spring_on() -> None:
    diary = book("2026-11-20 seed quick-rye 9lb front", "2027-04-11 water 5min front", on=lawn())
    assert level(diary, "2026-11-25", "seedbed-dry") == ""
    assert level(diary, "2027-04-13", "seedbed-dry") == "note"


def test_nothing_is_asked_while_a_spray_has_to_stay_dry_on_the_leaves() -> None:
    label = '\n[[product]]\nname = "clear-row"\nkind = "weed"\nactives = ["quinclorac"]\nform = "liquid"\n'
    spray = f"{later(SOWN, 4)} treat clear-row 2floz front"
    for hours, expected in (("", ["", "", "late", "loss"]), ('rain_free = "48h"\n', ["", "", "", "late"])):
        shed = lawn(toml=LAWN + label + hours)
        diary = book(RYE, *watered(range(1, 4)), *NO_RAIN, spray, on=shed)
        assert [level(diary, later(SOWN, at), "seedbed-dry") for at in range(5, 9)] == expected, hours
    spot = book(
        RYE, *watered(range(1, 4)), *NO_RAIN, f"{later(SOWN, 4)} treat clear-row spot front", on=lawn(toml=LAWN + label)
    )
    assert level(spot, later(SOWN, 5), "seedbed-dry") == ""


def test_a_starter_with_an_active_goes_to_the_seed_and_wants_water() -> None:
    listed = LAWN.replace('slow = "20% of n"', 'slow = "20% of n"\nactives = ["mesotrione"]')
    diary = book(
        RYE, *watered(range(1, 4)), *NO_RAIN, f"{later(SOWN, 4)} feed oat-hill 7lb front", on=lawn(toml=listed)
    )
    assert level(diary, later(SOWN, 5), "seedbed-dry") == "late"
