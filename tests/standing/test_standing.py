"""What stands on one day, said once for all zones it holds for."""

from datetime import date

import pytest

from journal.rules.flag import Level
from journal.season.history import History
from journal.standing import Standing, ZoneFacts, standing
from tests.scenario import book, day, later, lawn


def on(history: History, when: str | date) -> Standing:
    return standing(history, day(when))


def zone(found: Standing, name: str) -> ZoneFacts:
    return next(facts for facts in found.zones if facts.zone == name)


def test_zones_of_which_the_same_is_said_share_a_flag() -> None:
    found = on(book("2026-06-01 mow 3in front back"), "2026-06-12")
    (gap,) = [flag for flag in found.flags if flag.rule == "mow-gap"]
    assert gap.id == "mow-gap/front+back"
    assert gap.zones == ("front", "back")
    assert found.counts[Level.LATE] == sum(flag.level is Level.LATE for flag in found.flags)
    assert found.counts[Level.HARM] == 0
    apart = on(book("2026-06-01 mow 3in front", "2026-05-31 mow 3in back"), "2026-06-12")
    assert {flag.id for flag in apart.flags if flag.rule == "mow-gap"} == {"mow-gap/front", "mow-gap/back"}


def test_the_gravest_comes_first_then_the_oldest() -> None:
    diary = book("2026-06-01 mow 3in front", "2026-06-02 seed stone-wall 9lb back", "2026-06-05 mow 3in back")
    levels = [flag.level.gravity for flag in on(diary, "2026-06-20").flags]
    assert levels == sorted(levels, reverse=True)
    late = [flag.rose for flag in on(diary, "2026-06-20").flags if flag.level is Level.LATE]
    assert late == sorted(late)


def test_every_flag_tells_all_of_itself() -> None:
    diary = book(
        "2026-08-01 treat leaf-off front", "2026-08-20 feed pond-ridge 7lb front", "2026-08-20 seed three-river front",
        "2026-08-22 seed stone-wall 9lb back", "2026-08-28 mow 1in front",
    )  # fmt: skip
    found = on(diary, "2026-08-30").flags
    wanted = {"mow-first-early", "mow-height", "starter-missing", "amount-missing", "starter-wrong"}
    assert wanted <= {flag.rule for flag in on(diary, "2026-08-28").flags + found}
    for flag in found:
        for words in (flag.headline, flag.why, flag.do, flag.clears):
            assert words == words.strip() != ""
        assert flag.basis, flag.rule
        assert flag.rose <= day("2026-08-30")
        assert "safe" not in f"{flag.headline} {flag.why} {flag.do}".split()
        assert "legal" not in f"{flag.headline} {flag.why} {flag.do}".split()


def test_an_owner_who_starts_in_july_sees_nothing_late() -> None:
    diary = lawn(set_up="2026-07-15")
    for ahead in range(15):
        assert {flag.level for flag in on(diary, later("2026-07-15", ahead)).flags} <= {Level.NOTE}


def test_an_empty_book_has_nothing_to_say_but_what_it_lacks() -> None:
    assert [flag.rule for flag in on(History.of([]), "2026-06-01").flags] == ["growth-unknown"]


def test_the_figures_of_a_zone() -> None:
    diary = book(
        "2026-05-01 feed pond-ridge 7lb front", "2026-06-01 mow 3in front", "2026-06-03 rain 0.5in",
        "2026-06-04 water 20min front",
    )  # fmt: skip
    front = zone(on(diary, "2026-06-08"), "front")
    assert front.area_m2 == pytest.approx(222.967, abs=0.001)
    assert (front.cut_mm, front.cut_on, front.mown_days_ago) == (76.2, date(2026, 6, 1), 7)
    assert front.n_g_per_m2 == pytest.approx(0.7 * 4.88243, abs=0.001)
    assert front.n_cap_g_per_m2 == pytest.approx(2.7 * 4.88243, abs=0.001)
    assert front.water_mm_7d == pytest.approx(12.7 + 5.08)
    assert (front.sown_on, front.growing, front.stage) == (None, True, "growing")
    back = zone(on(lawn(), "2026-06-08"), "back")
    assert (back.cut_on, back.mown_days_ago, back.water_mm_7d) == (None, None, None)


@pytest.mark.parametrize(
    ("when", "stage"),
    [
        ("2026-08-24", "growing"),
        ("2026-08-25", "seedbed"),
        ("2026-10-21", "new grass"),
        ("2026-12-01", "at rest"),
        ("2027-07-20", "growing"),
        ("2027-07-21", "dormant"),
        ("2027-11-25", "sown dormant"),
    ],
)
def test_the_stage_of_a_zone(when: str, stage: str) -> None:
    diary = book(
        "2026-08-25 seed three-river 9lb front", *(f"2026-10-{d} mow 3in front" for d in (22, 26, 30)),
        "2027-07-21 see dormant front", "2027-09-01 see green front", "2027-11-20 seed three-river 9lb front",
    )  # fmt: skip
    assert zone(on(diary, when), "front").stage == stage


def test_a_rule_that_is_switched_off_is_silent() -> None:
    diary = book("2026-06-01 set mow-gap off", "2026-06-01 mow 3in front")
    assert "mow-gap" not in {flag.rule for flag in on(diary, "2026-06-20").flags}
