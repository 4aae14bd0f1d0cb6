"""Owners who sow as they should, or mend a patch, and are not nagged about their seed."""

from journal.rules.flag import Level
from journal.season.history import History
from journal.standing import findings
from tests.scenario import book, judged, later, level, rules_raised, weather

SEED_RULES = {
    "seed-switch", "seed-two-kinds", "seed-short-season", "seed-season", "seed-rate", "seed-unopened", "seed-mix",
    "seedbed-dry", "seedbed-traffic", "not-emerged", "seed-wash", "seed-over-residue", "starter-missing",
    "starter-wrong",
}  # fmt: skip
SOWN = "2026-09-06"


def nagged(history: History, first: str, days: int) -> set[tuple[str, str]]:
    return {
        (flag.rule, str(flag.level))
        for at in range(days)
        for flag in findings(history, later(first, at))
        if "front" in flag.zones and flag.rule in SEED_RULES
    }


def test_a_september_renovation_raises_nothing_of_its_seed() -> None:
    diary = book(
        "2026-09-04 mow 1.5in front", "2026-09-05 aerate 3x front", f"{SOWN} seed three-river 6lb front",
        f"{SOWN} feed oat-hill 7lb front", f"{SOWN} schedule front 5min 7:00", f"{SOWN} schedule front 5min 15:00",
        "2026-09-20 see emerged front", "2026-10-04 mow 3in bag front", "2026-10-06 feed pond-ridge 4lb front",
        *weather(SOWN, 40, "72F 50F 0.05in"),
    )  # fmt: skip
    assert nagged(diary, "2026-09-04", 250) == set()


def test_the_same_with_nitrogen_alone_where_the_soil_has_phosphorus() -> None:
    diary = book(
        "2026-08-01 soil p high front", "2026-09-05 rake front", f"{SOWN} seed three-river 6lb front",
        f"{SOWN} feed pond-ridge 6lb front", "2026-10-04 mow 3in bag front",
    )  # fmt: skip
    assert nagged(diary, SOWN, 60) <= {("seedbed-dry", "note")}


def test_a_spring_patch_is_a_note_at_most_and_no_seedbed() -> None:
    patch = "2026-04-25 seed three-river 0.2lb spot 40sqft front"
    diary = book("2026-04-20 mow 3in front", patch, "2026-04-26 water spot front", "2026-04-30 mow 3in front")
    assert nagged(diary, "2026-04-25", 70) == {("seed-season", "note")}
    assert {f.level for f in judged(book(), "2026-04-25", patch[11:]).raised if f.rule in SEED_RULES} == {Level.NOTE}


def test_a_spring_patch_asks_for_no_water_and_holds_up_no_mowing() -> None:
    patch = "2026-05-10 seed three-river 0.4lb spot 40sqft front"
    diary = book("2026-05-08 mow 3in front", "2026-05-09 water front", patch, "2026-05-15 mow 3in front")
    for at in range(30):
        assert rules_raised(diary, later("2026-05-10", at)) & {"seedbed-dry", "not-emerged", "mow-first-early"} == set()


def test_a_sprinkler_owners_seedbed_is_not_called_dry_and_no_water_is_one_note() -> None:
    timer = (f"{SOWN} schedule front 5min 7:00", f"{SOWN} schedule front 5min 15:00")
    watered = book(
        "2026-09-05 rake front", f"{SOWN} seed three-river 6lb front", *timer, *weather(SOWN, 40, "80F 60F 0in")
    )
    assert "seedbed-dry" not in {rule for rule, _ in nagged(watered, SOWN, 40)}
    unlogged = book("2026-09-05 rake front", f"{SOWN} seed three-river 6lb front")
    assert "seedbed-dry" not in {rule for rule, _ in nagged(unlogged, SOWN, 40)}


def test_a_late_starter_clears_what_asked_for_it() -> None:
    diary = book(f"{SOWN} seed three-river 6lb front")
    assert level(diary, later(SOWN, 8), "starter-missing") == "late"
    fed = book(f"{later(SOWN, 8)} feed oat-hill 7lb front", on=diary)
    assert level(fed, later(SOWN, 8), "starter-missing") == ""


def test_dormant_seed_is_left_alone_in_winter() -> None:
    diary = book("2026-11-10 rake front", "2026-11-20 seed stone-wall 9lb front dormant")
    assert nagged(diary, "2026-11-20", 140) <= {("seed-switch", "note")}
