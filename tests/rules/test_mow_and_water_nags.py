"""Owners who mow and water as they should, or let their lawn rest, and are left alone."""

import pytest

from journal.rules.catalogue import rules
from journal.rules.judge import flags_of
from journal.rules.precedence import settled
from journal.season.history import History
from tests.scenario import book, judged, later, lawn, rules_raised, the, weather

MINE = {
    "mow-gap", "mow-too-low", "mow-height", "mow-one-third", "mow-first-early", "mow-first-late", "mow-clippings",
    "mow-blade", "mow-wet", "water-deficit", "water-week", "water-often", "water-runoff", "water-unlogged",
    "dormant-thirst",
}  # fmt: skip
LOAM = ("irrigated = true", 'irrigated = true\nsoil = "loam"')
DRY = ("irrigated = true", 'irrigated = false\nsoil = "loam"')
FESCUE = ('grass = ["kentucky bluegrass", "perennial ryegrass"]', 'grass = ["tall fescue"]')


def said(history: History, first: str, days: int) -> set[tuple[str, str]]:
    """Rule and level of all of these rules that stood in front on any of so many days."""
    mine = [rule for rule in rules() if rule.id in MINE]
    pasts = (history.on("front", later(first, at)) for at in range(days))
    stood = (settled(flag for rule in mine for flag in flags_of(rule, past)) for past in pasts)
    return {(flag.rule, str(flag.level)) for flags in stood for flag in flags}


@pytest.mark.parametrize(("height", "changes"), [("3in", ()), ("3.75in", (FESCUE,))])
def test_weekly_cuts_from_april_to_november(height: str, changes: tuple[tuple[str, str], ...]) -> None:
    cuts = [f"{later('2026-04-20', 7 * at)} mow {height} front back" for at in range(30)]
    timer = "2026-05-01 schedule front back 20min mon thu 6:00 from 5/1 to 9/30"
    sharp = ["2026-04-15 sharpen", "2026-06-20 sharpen", "2026-09-01 sharpen"]
    assert said(book(timer, *sorted(cuts + sharp), on=lawn(*changes)), "2026-04-10", 365) == set()


def test_every_two_weeks_in_july_august_and_october() -> None:
    cuts = [f"{on} mow 3in front" for on in ("2026-07-01", "2026-07-15", "2026-07-29", "2026-08-12", "2026-08-26")]
    sharp = "2026-06-30 sharpen"
    timer = "2026-05-01 schedule front back 20min mon thu 6:00 from 5/1 to 9/30"
    diary = book(timer, sharp, *cuts)
    assert said(diary, "2026-07-01", 60) == set()


def test_a_scalp_before_sowing_and_the_cut_on_day_28() -> None:
    diary = book(
        "2026-08-20 sharpen", "2026-09-02 height 4in front", "2026-09-02 mow 1.25in front",
        "2026-09-05 seed three-river 9lb front",
    )  # fmt: skip
    assert rules_raised(diary, "2026-09-06") & MINE == set()
    tall = book("2026-10-03 height 7in front", on=diary)
    step = the(tall, "2026-10-03", "first-mow")
    raised = judged(tall, "2026-10-03", step.line).raised
    assert {flag.rule for flag in raised} & MINE == set()
    low = judged(tall, "2026-10-03", "mow 3in bag front").raised
    assert {(flag.rule, str(flag.level)) for flag in low if flag.rule in MINE} >= {("mow-one-third", "note")}
    assert not [flag for flag in low if flag.rule in MINE and flag.level != "note"]


def test_one_patch_in_spring_leaves_the_zone_to_its_rhythm() -> None:
    diary = book(
        "2026-04-15 sharpen", "2026-04-20 mow 3in front", "2026-04-25 seed three-river 0.5lb spot 20sqft front",
        *(f"{later('2026-04-27', 7 * at)} mow 3in return front" for at in range(6)),
    )  # fmt: skip
    assert said(diary, "2026-04-25", 36) == set()


def test_a_lawn_left_to_rest_in_drought_hears_of_thirst_alone() -> None:
    diary = book(
        "2026-06-01 mow 3in front", "2026-06-10 mow 3in front", "2026-06-12 rain 1.2in", "2026-06-17 see dormant front",
        *weather("2026-05-20", 110, "88F 66F 0in"), on=lawn(DRY),
    )  # fmt: skip
    assert said(diary, "2026-06-17", 28) == set()
    assert said(diary, "2026-07-15", 40) == {("dormant-thirst", "note"), ("dormant-thirst", "late")}
    drink = book("2026-07-14 water 0.5in front", "2026-08-11 water 0.5in front", on=diary)
    assert said(drink, "2026-06-17", 70) == {("dormant-thirst", "note")}  # is it still brown?


def test_a_sprinkler_owner_is_never_short_and_never_waters_too_often() -> None:
    timer = "2026-05-15 schedule front back 12min 6:00 from 5/15 to 9/30"
    hot = weather("2026-05-01", 150, "92F 70F 0in")
    cuts = [f"{later('2026-05-01', 7 * at)} mow 3in front" for at in range(21)]
    sharp = ["2026-05-01 sharpen", "2026-07-10 sharpen"]
    for changes in ((), (LOAM,)):
        diary = book(timer, "2026-05-10 water deep front", *hot, *sorted(cuts + sharp), on=lawn(*changes))
        assert said(diary, "2026-05-15", 130) == set()
    without = book(timer, *sorted(cuts + sharp))
    assert said(without, "2026-05-15", 130) == set()


def test_a_book_begun_in_mid_july_is_quiet_on_its_first_screen() -> None:
    for changes in ((), (LOAM,), (DRY,)):
        young = lawn(*changes, set_up="2026-07-15")
        for at in range(7):
            assert rules_raised(young, later("2026-07-15", at)) & MINE == set()


def test_winter_hears_nothing_of_the_last_cut() -> None:
    diary = book("2026-10-25 mow 3in front", "2026-11-08 mow 1.5in front")
    assert said(diary, "2026-11-22", 140) == set()


def test_cycles_and_soaks_by_the_plan_on_clay() -> None:
    clay = lawn(("irrigated = true", 'irrigated = true\nsoil = "clay"\nslope = "steep"'))
    diary = book(*weather("2026-06-20", 10, "90F 66F 0in"), "2026-06-28 water deep front", on=clay)
    for at in range(30):
        today = later("2026-06-30", at)
        diary = book(f"{later(today, -1)} weather 90F 66F 0in", on=diary) if at else diary
        step = the(diary, today, "water")
        if step.state == "open":
            diary = book(f"{today} {step.line}", on=diary)
        assert rules_raised(diary, today) & {"water-deficit", "water-runoff", "water-often"} == set(), today
