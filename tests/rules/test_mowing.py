"""Cuts that are late, too early, too low or too high.

Weekly mowing is common practice; a third at once and a higher cut in summer: Iowa State Univ. Extension, Yard and
Garden: Lawn Care, 2013; the ranges by grass: Purdue Univ., AY-8, 1998; about three weeks to the first cut: Oregon State
Univ. Extension, EC 1550, 2022.
"""

import pytest

from journal.record.kinds.mowing import Mowing
from tests.scenario import book, later, lawn, level, raised, the, weather

SERVICE = ('name = "front"', 'name = "front"\nmowing = "service"')
DRY = ("irrigated = true", "irrigated = false")


@pytest.mark.parametrize(
    ("mown", "last_fine_day"),
    [
        ("2026-06-01", 10),
        ("2026-07-02", 14),
        ("2026-08-03", 14),
        ("2026-09-03", 10),
        ("2026-10-02", 14),
        ("2026-10-19", 21),
    ],
)
def test_a_cut_is_late_by_the_season(mown: str, last_fine_day: int) -> None:
    diary = book(f"{mown} mow 3in front")
    assert level(diary, later(mown, last_fine_day), "mow-gap") == ""
    assert level(diary, later(mown, last_fine_day + 1), "mow-gap") == "late"


def test_the_headline_counts_the_days_and_a_cut_clears_it() -> None:
    diary = book("2026-06-01 mow 3in front")
    late = raised(diary, "2026-06-16", "mow-gap")
    assert late is not None
    assert late.headline.startswith("not mown for 15 days")
    assert "two weeks" in late.headline
    assert late.evidence == (diary.track("front", Mowing).entries[0].id,)
    assert late.rose == later("2026-06-01", 11)
    assert late.numbers["days"].words == "10 d"
    assert late.numbers["days"].origin == "default"
    assert level(book("2026-06-16 mow 3in front", on=diary), "2026-06-16", "mow-gap") == ""


def test_the_owners_own_number_moves_it() -> None:
    diary = book("2026-06-01 set mow-gap days 12", "2026-06-01 mow 3in front")
    assert level(diary, "2026-06-13", "mow-gap") == ""
    late = raised(diary, "2026-06-14", "mow-gap")
    assert late is not None
    assert late.numbers["days"].origin == "yours"


def test_no_cut_yet_counts_from_two_weeks_into_growth() -> None:
    diary = lawn()
    assert level(diary, later("2026-04-10", 14 + 10), "mow-gap") == ""
    late = raised(diary, later("2026-04-10", 14 + 11), "mow-gap")
    assert late is not None
    assert late.headline == "not mown yet this season"


def test_nothing_is_late_before_the_book_was_begun() -> None:
    diary = lawn(set_up="2026-07-15")
    assert level(diary, "2026-07-15", "mow-gap") == ""
    assert level(diary, later("2026-07-15", 14), "mow-gap") == ""
    assert level(diary, later("2026-07-15", 15), "mow-gap") == "late"


def test_winter_and_a_resting_lawn_are_not_mown() -> None:
    diary = book("2026-11-01 mow 3in front")
    assert level(diary, "2026-11-23", "mow-gap") == ""
    diary = book("2026-06-01 mow 3in front", "2026-06-05 see dormant front")
    assert level(diary, "2026-06-20", "mow-gap") == ""
    green = book("2026-06-20 see green front", on=diary)
    assert level(green, "2026-06-30", "mow-gap") == ""
    late = raised(green, "2026-07-05", "mow-gap")
    assert late is not None
    assert late.why.startswith("green again Sat 20 Jun, no cut since")
    assert late.headline == "not mown for 15 days"


def test_a_service_is_not_reminded() -> None:
    assert level(book("2026-06-01 mow 3in front", on=lawn(SERVICE)), "2026-06-20", "mow-gap") == ""


def test_a_lawn_that_is_left_dry_is_silent_and_one_without_a_gauge_is_not() -> None:
    unwatered = lawn(DRY)
    mown = book("2026-06-20 mow 3in front", on=unwatered)
    assert level(mown, "2026-07-05", "mow-gap") == "late"
    dry = book("2026-07-01 rain 0.1in", on=mown)
    assert level(dry, "2026-07-05", "mow-gap") == ""
    wet = book("2026-07-02 rain 0.4in", on=dry)
    assert level(wet, "2026-07-09", "mow-gap") == ""
    assert level(wet, "2026-07-10", "mow-gap") == "late"
    without_rain = book(*weather("2026-06-15", 21, "80F 60F 0in"), on=mown)
    assert level(without_rain, "2026-07-05", "mow-gap") == ""


def test_cold_weather_ends_growth_early_and_a_warm_spell_does_not_reopen_it() -> None:
    diary = book(
        "2026-10-01 mow 3in front", *weather("2026-09-20", 16, "60F 50F 0in"),
        *weather("2026-10-06", 12, "45F 35F 0in"), *weather("2026-10-18", 10, "70F 55F 0in"),
    )  # fmt: skip
    assert level(diary, "2026-10-27", "mow-gap") == ""
    assert level(book("2026-10-01 mow 3in front"), "2026-10-27", "mow-gap") == "late"


def test_a_seedbed_is_not_late_and_an_old_one_is() -> None:
    diary = book("2026-08-20 mow 3in front", "2026-08-22 seed three-river 9lb front")
    assert level(diary, later("2026-08-22", 56), "mow-gap") == ""
    assert level(diary, later("2026-08-22", 57), "mow-gap") == ""  # its first cut is late instead
    assert level(diary, later("2026-08-22", 57), "mow-first-late") == "late"
    cut = book("2026-10-05 mow 3in front", on=diary)
    assert level(cut, "2026-10-19", "mow-gap") == ""
    assert level(cut, "2026-10-20", "mow-gap") == "late"


@pytest.mark.parametrize(("days", "expected"), [(1, "loss"), (20, "loss"), (21, "note"), (27, "note"), (28, "")])
def test_new_grass_is_cut_too_early(days: int, expected: str) -> None:
    sown = "2026-08-25"
    cut = later(sown, days)
    diary = book(f"{sown} seed three-river 9lb front", f"{cut} mow 3in front")
    assert level(diary, cut, "mow-first-early") == expected
    assert level(diary, later(sown, 28), "mow-first-early") == ""


def test_the_first_cut_flag_names_the_day_it_clears() -> None:
    diary = book("2026-08-25 seed three-river 9lb front", "2026-09-05 mow 3in front")
    early = raised(diary, "2026-09-10", "mow-first-early")
    assert early is not None
    assert early.clears_on == later("2026-08-25", 28)
    assert early.rose == later("2026-09-05", 0)


def test_a_measured_height_allows_the_cut() -> None:
    sown = "2026-08-25"
    high = book(f"{sown} seed three-river 9lb front", f"{later(sown, 17)} height 3.5in front")
    assert level(book(f"{later(sown, 18)} mow 3in front", on=high), later(sown, 18), "mow-first-early") == ""
    old = book(f"{sown} seed three-river 9lb front", f"{later(sown, 13)} height 3.5in front")
    assert level(book(f"{later(sown, 18)} mow 3in front", on=old), later(sown, 18), "mow-first-early") == "loss"
    low = book(f"{sown} seed three-river 9lb front", f"{later(sown, 17)} height 3.4in front")
    assert level(book(f"{later(sown, 18)} mow 3in front", on=low), later(sown, 18), "mow-first-early") == "loss"


def test_tall_old_turf_over_the_seed_is_a_note_with_advice() -> None:
    sown = "2026-08-25"
    cut = later(sown, 8)
    lines = (f"{sown} seed three-river 9lb front", f"{cut} height 4.6in front", f"{cut} mow 3in front")
    early = raised(book(*lines), cut, "mow-first-early")
    assert early is not None
    assert early.level == "note"
    assert "light machine" in early.do
    bare = (lines[0].replace("front", "new front"), *lines[1:])
    assert level(book(*bare), cut, "mow-first-early") == "loss"


def test_the_cut_before_sowing_on_the_same_day_is_right() -> None:
    diary = book("2026-09-06 mow 1.5in front", "2026-09-06 seed three-river 9lb front")
    assert level(diary, "2026-09-06", "mow-first-early") == ""
    after = book("2026-09-06 seed three-river 9lb front 9:00", "2026-09-06 mow 3in front 15:00")
    assert level(after, "2026-09-06", "mow-first-early") == "loss"


def test_the_owners_own_first_cut() -> None:
    diary = book(
        "2026-08-01 set mow-first-early days 24", "2026-08-25 seed three-river 9lb front", "2026-09-18 mow 3in front"
    )
    assert level(diary, "2026-09-18", "mow-first-early") == ""


@pytest.mark.parametrize(
    ("line", "fine"),
    [
        ("2026-05-10 mow 2.5in front", True),
        ("2026-05-10 mow 2.4in front", False),
        ("2026-05-10 mow 3.5in front", True),
        ("2026-05-10 mow 3.6in front", False),
        ("2026-07-10 mow 2.9in front", False),
        ("2026-07-10 mow 3in front", True),
        ("2026-07-10 mow 4in front", True),
        ("2026-07-10 mow 4.1in front", False),
        ("2026-11-01 mow 2in front", True),
        ("2026-11-01 mow 1.9in front", False),
    ],
)
def test_height_of_cut_by_the_season(line: str, fine: bool) -> None:
    assert level(book(line), line[:10], "mow-height") == ("" if fine else "note")


def test_fescue_and_shade_are_cut_higher() -> None:
    fescue = lawn(('grass = ["kentucky bluegrass", "perennial ryegrass"]', 'grass = ["tall fescue"]'))
    assert level(book("2026-05-10 mow 3.75in front", on=fescue), "2026-05-10", "mow-height") == ""
    shade = lawn(('name = "front"', 'name = "front"\nsun = "shade"'))
    assert level(book("2026-05-10 mow 2.6in front", on=shade), "2026-05-10", "mow-height") == "note"
    assert level(book("2026-05-10 mow 4in front", on=shade), "2026-05-10", "mow-height") == ""


def test_a_height_note_goes_with_the_next_cut_or_after_two_weeks() -> None:
    diary = book("2026-11-01 mow 1.5in front")
    note = raised(diary, "2026-11-14", "mow-height")
    assert note is not None
    assert note.clears_on == later("2026-11-01", 14)
    assert level(diary, "2026-11-15", "mow-height") == ""
    assert level(book("2026-11-05 mow 2.5in front", on=diary), "2026-11-05", "mow-height") == ""


def test_a_low_cut_before_sowing_is_advised() -> None:
    low = book("2026-09-01 mow 1.5in front")
    assert level(low, "2026-09-06", "mow-height") == "note"
    assert level(book("2026-09-06 seed three-river 9lb front", on=low), "2026-09-06", "mow-height") == ""
    planned = book("2026-08-20 intend seed three-river 2026-09-05 front", "2026-09-01 mow 1.5in front")
    assert level(planned, "2026-09-01", "mow-height") == ""
    assert level(book("2026-09-02 dethatch front", on=low), "2026-09-02", "mow-height") == ""
    assert level(book("2026-09-08 seed three-river 9lb front", on=low), "2026-09-08", "mow-height") == "note"


def test_the_owners_own_range() -> None:
    diary = book("2026-04-01 set mow-height low 2in", "2026-05-10 mow 2in front")
    assert level(diary, "2026-05-10", "mow-height") == ""
    diary = book("2026-04-01 set mow-height high 3in", "2026-05-10 mow 3.2in front")
    assert level(diary, "2026-05-10", "mow-height") == "note"


def test_south_of_the_equator_the_months_are_turned() -> None:
    turned = ('growth = ["04-10", "11-10"]', 'growth = ["09-10", "05-10"]')
    south = lawn(("latitude = 42.3", "latitude = -42.3"), turned)
    diary = book("2027-01-03 mow 4in front", on=south)
    assert level(diary, "2027-01-03", "mow-height") == ""
    assert level(diary, "2027-01-17", "mow-gap") == ""
    assert level(diary, "2027-01-18", "mow-gap") == "late"
    assert level(diary, "2027-06-18", "mow-gap") == ""


def test_after_rain_it_has_a_week_to_grow_again() -> None:
    dry = book("2026-06-10 mow 3in front", "2026-06-12 rain 0in", *_dry_rain(), on=lawn(DRY))
    rained = book("2026-07-20 rain 1in", on=dry)
    assert level(dry, "2026-07-19", "mow-gap") == ""
    assert the(rained, "2026-07-19", "mow").state == "waiting"
    for ahead in range(8):
        on = later("2026-07-20", ahead)
        assert level(rained, on, "mow-gap") == ""
        assert the(rained, on, "mow").state == "open"
    assert level(rained, "2026-07-28", "mow-gap") == "late"
    assert the(rained, "2026-07-28", "mow").state == "late"


def _dry_rain() -> list[str]:
    return [f"{later('2026-06-14', at)} rain 0in" for at in range(0, 36, 2)]
