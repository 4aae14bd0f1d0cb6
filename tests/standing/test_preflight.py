"""What a line would change before it is saved."""

from dataclasses import replace
from datetime import date

from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.rules.flag import Flag
from journal.standing import preflight, preflight_change, standing
from tests.scenario import book, day, draft, judged, later, lawn


def rules(flags: tuple[Flag, ...]) -> set[str]:
    return {flag.rule for flag in flags}


def test_a_mowing_clears_the_gap() -> None:
    diary = book("2026-06-01 mow 3in front back")
    found = judged(diary, "2026-06-14", "mow 3in front")
    assert rules(found.cleared) == {"mow-gap"}
    assert found.cleared[0].zones == ("front",)
    assert found.raised == ()
    assert found.gravest is None


def test_each_early_cut_is_told_again() -> None:
    diary = book("2026-08-25 seed three-river 9lb front", "2026-08-30 mow 3in front")
    found = judged(diary, "2026-09-03", "mow 3in front")
    assert rules(found.raised) == {"mow-first-early"}
    assert "" in found.raised[0].evidence


def test_what_stood_already_is_not_raised() -> None:
    diary = book("2026-08-25 seed stone-wall 9lb front", "2026-08-25 feed oat-hill 7lb front")
    assert rules(judged(diary, "2026-08-26", "water 5min front").raised) == set()


def test_a_line_for_an_earlier_day_is_judged_today() -> None:
    diary = book("2026-08-25 seed three-river 9lb front")
    late = preflight(diary, draft(diary, "2026-08-28 mow 3in front"), day("2026-10-01"))
    assert rules(late.raised) == set()
    now = preflight(diary, draft(diary, "2026-08-28 mow 3in front"), day("2026-08-30"))
    assert rules(now.raised) == {"mow-first-early"}


def test_an_intention_is_judged_today() -> None:
    diary = book("2026-09-06 seed three-river 9lb front")
    assert "seed-switch" in rules(judged(diary, "2027-08-01", "intend seed stone-wall 2027-09-05 front").raised)


def test_a_draft_is_the_newest_of_its_day() -> None:
    diary = book("2026-09-06 mow 1in front")
    found = judged(diary, "2026-09-06", "mow 3in front")
    assert rules(found.cleared) == {"mow-height", "mow-too-low"}


def test_a_setting_is_judged_by_every_rule() -> None:
    diary = book("2026-06-01 mow 3in front back")
    found = judged(diary, "2026-06-13", "set mow-gap days 20")
    assert rules(found.cleared) == {"mow-gap"}
    stricter = judged(diary, "2026-06-09", "set mow-gap days 5")
    assert rules(stricter.raised) == {"mow-gap"}


def test_only_the_drafts_zones_are_spoken_of() -> None:
    diary = book("2026-06-01 mow 3in front back")
    assert judged(diary, "2026-06-14", "mow 3in back").cleared[0].zones == ("back",)
    assert {f.zones for f in judged(diary, "2026-06-14", "mow 3in front back").cleared} == {("front", "back")}


def test_what_is_known_already_gives_the_same() -> None:
    diary = book("2026-08-25 seed three-river 9lb front", "2026-08-25 seed three-river 9lb back")
    on = day("2026-08-30")
    line = draft(diary, f"{on} mow 1in front")
    assert preflight(diary, line, on) == preflight(diary, line, on, standing(diary, on))


def test_nothing_is_saved() -> None:
    diary = book("2026-06-01 mow 3in front")
    size = diary.size
    judged(diary, "2026-06-02", "mow 3in front")
    assert diary.size == size


def test_changing_a_line_clears_and_raises() -> None:
    diary = book("2026-08-25 seed three-river 9lb front", "2026-09-01 mow 3in front")
    (cut,) = diary.track("front", Mowing).entries
    moved = preflight_change(diary, cut, replace(cut, date=date(2026, 8, 25)), later("2026-09-01", 1))
    assert rules(moved.cleared) == {"mow-first-early"}
    (seeding,) = diary.track("front", Seeding).entries
    other = preflight_change(diary, seeding, replace(seeding, product="stone-wall"), later("2026-09-01", 1))
    assert "seed-switch" in rules(other.raised)
    elsewhere = preflight_change(diary, cut, replace(cut, zones=("back",)), later("2026-09-01", 1))
    assert ("mow-first-early", ("front",)) in {(flag.rule, flag.zones) for flag in elsewhere.cleared}


def test_a_snooze_raises_nothing() -> None:
    found = judged(book("2026-06-01 mow 3in front", on=lawn()), "2026-06-14", "snooze mow-gap 7d front")
    assert found.raised == ()


def test_a_line_older_than_the_book_counts_for_its_own_kind_only() -> None:
    diary = lawn(set_up="2026-05-20")
    assert "mow-gap" not in {flag.rule for flag in standing(diary, day("2026-05-28")).flags}
    watered = preflight(diary, draft(diary, "2026-05-10 water 20min front"), day("2026-05-28"))
    assert rules(watered.raised) == set()
    mown = preflight(diary, draft(diary, "2026-05-10 mow 3in front"), day("2026-05-28"))
    assert {(flag.rule, flag.zones) for flag in mown.raised} == {("mow-gap", ("front",))}


def test_the_day_from_which_the_book_is_kept_is_asked_of_every_rule() -> None:
    diary = lawn(set_up="2026-06-20")
    found = judged(diary, "2026-06-25", "set kept_since 2026-04-01")
    assert {"mow-gap", "feed-overdue"} <= rules(found.raised)
