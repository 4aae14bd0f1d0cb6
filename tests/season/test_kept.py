"""From which day on what is not logged counts as not done."""

from tests.scenario import LAWN, book, lawn, level, raised

JULY = lawn(set_up="2026-07-15")


def test_one_feeding_of_april_does_not_bring_back_the_cuts_of_spring() -> None:
    diary = book("2026-04-20 feed pond-ridge 5lb front", on=JULY)
    assert level(diary, "2026-07-15", "mow-gap") == ""
    assert level(diary, "2026-07-16", "mow-gap") == ""
    assert level(diary, "2026-07-16", "feed-overdue") == "late"
    assert level(diary, "2026-07-16", "feed-overdue", "back") == ""


def test_one_cut_of_june_does_not_bring_back_the_feedings() -> None:
    diary = book("2026-06-20 mow 3in front", on=JULY)
    assert level(diary, "2026-07-15", "mow-gap") == "late"
    assert level(diary, "2026-07-15", "mow-gap", "back") == ""
    assert level(diary, "2026-07-15", "feed-overdue") == ""


def test_a_weed_spray_is_no_feeding() -> None:
    diary = book("2026-04-20 treat leaf-off 2floz front", on=JULY)
    assert level(diary, "2026-07-16", "feed-overdue") == ""
    assert level(diary, "2026-09-20", "feed-overdue") == "late"


def test_water_of_its_own_kind_only() -> None:
    diary = book("2026-06-01 water 20min front", on=JULY)
    assert level(diary, "2026-07-16", "water-unlogged") == "note"
    assert level(diary, "2026-07-16", "water-unlogged", "back") == ""
    assert level(book("2026-06-01 mow 3in front", on=JULY), "2026-07-16", "water-unlogged") == ""


def test_a_day_set_by_the_owner_holds_for_everything() -> None:
    said = LAWN.replace('name = "North Lane"', 'name = "North Lane"\nkept_since = 2026-04-01')
    diary = lawn(toml=said, set_up="2026-05-20")
    flag = raised(diary, "2026-05-10", "mow-gap")
    assert flag is not None
    assert str(flag.rose) == "2026-05-05"
    flag = raised(diary, "2026-06-17", "mow-gap")
    assert flag is not None
    assert str(flag.rose) == "2026-05-05"
    assert level(diary, "2026-06-17", "feed-overdue") == "late"
    assert level(book("2026-05-02 mow 3in front", on=diary), "2026-05-13", "mow-gap") == "late"


def test_a_zone_added_later_is_not_asked_about_the_time_before() -> None:
    diary = book("2026-06-10 zone side 900sqft")
    assert level(diary, "2026-06-10", "mow-gap", "front") == "late"
    assert level(diary, "2026-06-20", "mow-gap", "side") == ""
    assert level(diary, "2026-06-21", "mow-gap", "side") == "late"
    assert level(diary, "2026-07-20", "feed-overdue", "side") == ""


def test_a_zone_from_a_day_on() -> None:
    diary = book("2026-05-01 zone side 900sqft from 2026-06-10")
    assert level(diary, "2026-06-20", "mow-gap", "side") == ""
    assert level(diary, "2026-06-21", "mow-gap", "side") == "late"


def test_a_change_to_a_zone_that_was_there_is_no_new_zone() -> None:
    diary = book("2026-06-10 set front area 2300sqft")
    assert level(diary, "2026-06-12", "mow-gap") == "late"
