"""Snoozed or set aside: out of sight, still there, and back when it gets worse."""

from journal.standing import standing
from tests.scenario import book, day, level, weather


def test_a_snooze_hides_until_its_day() -> None:
    diary = book("2026-06-01 mow 3in front", "2026-06-14 snooze mow-gap 7d front")
    assert level(diary, "2026-06-13", "mow-gap") == "late"
    assert level(diary, "2026-06-14", "mow-gap") == ""
    assert level(diary, "2026-06-20", "mow-gap") == ""
    assert level(diary, "2026-06-21", "mow-gap") == "late"
    found = standing(diary, day("2026-06-15"))
    assert [(flag.rule, flag.hidden) for flag in found.hidden] == [("mow-gap", "snoozed until Sun 21 Jun")]
    assert "mow-gap/front" not in {flag.id for flag in found.flags}
    assert found.hidden[0].rose == day("2026-06-12")


def test_in_its_zone_only() -> None:
    diary = book("2026-06-01 mow 3in front back", "2026-06-14 snooze mow-gap 7d front")
    assert level(diary, "2026-06-15", "mow-gap", "back") == "late"


def test_one_flag_by_its_id() -> None:
    diary = book(
        "2026-09-06 seed three-river 9lb front", "2027-08-01 intend seed stone-wall 2027-09-04 front",
        "2027-08-01 buy quick-rye 1x 20lb", "2027-08-02 aside seed-switch/front/quick-rye front -- for the dog run",
    )  # fmt: skip
    found = standing(diary, day("2027-08-02"))
    assert [flag.subject for flag in found.hidden if "front" in flag.zones] == ["quick-rye"]
    assert "stone-wall" in {flag.subject for flag in found.flags}


def test_worse_than_when_it_was_hidden_it_shows_again() -> None:
    sown = "2026-08-25"
    diary = book(
        f"{sown} seed quick-rye 9lb front", "2026-08-26 water 5min front", *weather(sown, 20, "80F 60F 0in"),
        "2026-08-27 snooze seedbed-dry 14d front",
    )  # fmt: skip
    assert level(diary, "2026-08-27", "seedbed-dry") == ""
    assert level(diary, "2026-08-28", "seedbed-dry") == "late"


def test_the_newest_word_holds() -> None:
    diary = book(
        "2026-06-01 mow 3in front", "2026-06-14 aside mow-gap front -- meadow", "2026-06-16 snooze mow-gap 2d front",
    )  # fmt: skip
    (found,) = [flag for flag in standing(diary, day("2026-06-16")).hidden if flag.rule == "mow-gap"]
    assert found.hidden.startswith("snoozed")
    (found,) = [flag for flag in standing(diary, day("2026-06-20")).hidden if flag.rule == "mow-gap"]
    assert found.hidden == "set aside for good: meadow; strike it to bring it back"
