"""New grass that waits too long for its first cut.

About three weeks in a good season: Oregon State Univ. Extension, EC 1550, 2022; eight for bluegrass are from memory.
"""

from tests.scenario import book, later, lawn, level, raised, rules_raised, the

RYE = "2026-04-25 seed quick-rye 9lb front"
BLUE = "2026-04-25 seed three-river 9lb front"


def test_late_after_day_42_and_56_for_bluegrass() -> None:
    assert level(book(RYE), later("2026-04-25", 42), "mow-first-late") == ""
    assert level(book(RYE), later("2026-04-25", 43), "mow-first-late") == "late"
    assert level(book(BLUE), later("2026-04-25", 56), "mow-first-late") == ""
    assert level(book(BLUE), later("2026-04-25", 57), "mow-first-late") == "late"


def test_the_step_is_late_on_the_same_days() -> None:
    for diary in (book(RYE), book(BLUE), book(RYE, "2026-05-20 height 3.6in front", "2026-05-27 height 4.6in front")):
        for at in range(14, 80):
            on = later("2026-04-25", at)
            assert (the(diary, on, "first-mow").state == "late") == (level(diary, on, "mow-first-late") == "late"), on


def test_a_height_of_four_and_a_half_inches_is_late_at_once() -> None:
    grown = book(RYE, "2026-05-15 height 4.4in front")
    assert level(grown, "2026-05-20", "mow-first-late") == ""
    tall = book("2026-05-20 height 4.5in front", on=grown)
    late = raised(tall, "2026-05-20", "mow-first-late")
    assert late is not None
    assert late.headline == "new grass stands too tall"
    assert level(book("2026-05-08 height 6in front", on=book(RYE)), "2026-05-10", "mow-first-late") == ""


def test_a_cut_or_the_end_of_growth_clears_it() -> None:
    late = book(RYE)
    assert level(book("2026-06-10 mow 3in bag front", on=late), "2026-06-10", "mow-first-late") == ""
    autumn = book("2026-09-22 seed quick-rye 9lb front")
    assert level(autumn, "2026-11-04", "mow-first-late") == "late"
    assert level(autumn, "2026-11-10", "mow-first-late") == "late"
    assert level(autumn, "2026-11-11", "mow-first-late") == ""


def test_in_spring_it_waits_for_growth_as_the_step_does() -> None:
    autumn = book("2026-09-22 seed quick-rye 9lb front")
    assert level(autumn, "2027-05-01", "mow-first-late") == ""
    assert level(autumn, "2027-05-02", "mow-first-late") == "late"
    assert the(autumn, "2027-05-01", "first-mow").latest == later("2027-04-24", 7)


def test_exactly_one_of_the_three_stands() -> None:
    three = {"mow-gap", "mow-first-early", "mow-first-late"}
    early = book("2026-04-20 mow 3in front", RYE, "2026-05-02 mow 3in front", "2026-05-12 height 4.6in front")
    never = book("2026-04-20 mow 3in front", RYE)
    for at in range(120):
        for diary in (early, never):
            assert len(rules_raised(diary, later("2026-04-25", at)) & three) <= 1
    assert rules_raised(early, "2026-05-13") & three == {"mow-first-early"}
    assert rules_raised(never, "2026-07-10") & three == {"mow-first-late"}


def test_a_sowing_from_before_the_book_is_left_to_the_weekly_cut() -> None:
    young = book(RYE, on=lawn(set_up="2026-06-25"))
    for at in range(10):
        assert level(young, later("2026-06-25", at), "mow-first-late") == ""


def test_a_resting_lawn_and_a_service_are_left_alone() -> None:
    assert level(book(RYE, "2026-06-01 see dormant front"), "2026-06-20", "mow-first-late") == ""
    service = lawn(('name = "front"', 'name = "front"\nmowing = "service"'))
    assert level(book(RYE, on=service), "2026-06-20", "mow-first-late") == ""


def test_the_owners_own_day() -> None:
    diary = book("2026-04-01 set mow-first-late days 35", RYE)
    assert level(diary, later("2026-04-25", 36), "mow-first-late") == "late"
    assert the(diary, later("2026-04-25", 36), "first-mow").state == "late"


def test_a_spot_changes_nothing() -> None:
    spot = book("2026-04-20 mow 3in front", "2026-04-25 seed quick-rye 0.5lb spot 20sqft front")
    assert level(spot, "2026-06-20", "mow-first-late") == ""
