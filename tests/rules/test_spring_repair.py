"""A patch sown in spring: the zone stays the lawn it was, and only the patch is kept damp."""

from tests.scenario import book, find, later, level, rules_raised, the
from tests.standing.test_standing import on, zone

PATCH = "2026-04-25"
SPOT = f"{PATCH} seed three-river 0.5lb spot 40sqft front"
OF_THE_SEED = {"seed-switch", "seed-season", "seed-rate"}
"""What is said of the patch itself."""
LAWN_LINES = ("2026-04-20 mow 3in front", "2026-04-22 feed pond-ridge 7lb front")


def test_the_patch_changes_no_flag_of_the_zone() -> None:
    without, with_it = book(*LAWN_LINES), book(*LAWN_LINES, SPOT)
    for at in range(0, 110, 2):
        day = later(PATCH, at)
        assert rules_raised(with_it, day) - OF_THE_SEED == rules_raised(without, day) - {"seed-switch"}, day
        if at < 60:
            assert "starter-missing" not in rules_raised(with_it, day)
            assert "seedbed-dry" not in rules_raised(with_it, day)


def test_the_weekly_cut_goes_on_and_is_not_too_early() -> None:
    diary = book(*LAWN_LINES, SPOT, f"{later(PATCH, 3)} mow 3in front")
    assert level(diary, later(PATCH, 3), "mow-first-early") == ""
    assert find(diary, later(PATCH, 4), "first-mow") is None
    assert the(diary, later(PATCH, 10), "mow").state == "open"
    assert level(diary, later(PATCH, 14), "mow-gap") == "late"


def test_the_zone_is_fed_as_ever_and_is_no_seedbed() -> None:
    diary = book(*LAWN_LINES, SPOT)
    assert the(diary, "2026-06-10", "feed").state == "open"
    assert level(diary, "2026-06-18", "feed-overdue") == "late"
    front = zone(on(diary, later(PATCH, 5)), "front")
    assert (front.stage, front.sown_on) == ("growing", None)


def test_the_patch_alone_is_kept_damp() -> None:
    step = the(book(*LAWN_LINES, SPOT), later(PATCH, 5), "damp")
    assert (step.title, step.zones, step.line) == ("damp spot", ("front",), "water spot front")
    assert find(book(*LAWN_LINES, SPOT), later(PATCH, 40), "damp") is None


def test_a_patch_in_young_grass_leaves_its_age_alone() -> None:
    young = ("2026-04-20 seed three-river 9lb front", "2026-04-21 feed oat-hill 7lb front")
    late_patch = "2026-05-14 seed three-river 0.5lb spot 40sqft front"
    assert the(book(*young, late_patch), "2026-05-18", "first-mow").earliest == later("2026-04-20", 28)
    assert zone(on(book(*young, late_patch), "2026-05-18"), "front").sown_on == later("2026-04-20", 0)
