"""What follows a use to the hour and the day: dry leaves, watered soil, people, bees, the pond and the mower."""

import pytest

from journal.record.kinds.treatment import Treatment
from journal.season.history import History
from tests.rules.treated import all_flags, alone, flags, shed
from tests.scenario import SET_UP, book, find, judged, later, level, raised, the, typed, weather

ON = "2026-06-10"


def _own(line: str, **labels: str) -> History:
    return book(f"{SET_UP} set {line}", on=shed(labels))


@pytest.mark.parametrize(("hours", "free"), [("24", 2), ("48", 3), ("72", 4)])
def test_the_owners_own_dry_hours_hold_for_rule_and_plan_alike(hours: str, free: int) -> None:
    """One number: of what washes off, of a seedbed that stays dry, of a feeding that is to be watered in."""
    own = _own(f"wash-off hours {hours}")
    sprayed = book(f"{ON} treat leaf-off 1floz front", on=own)
    for day, found in ((free - 1, "note"), (free, "")):
        wet = typed(sprayed, f"{later(ON, day)} rain 0.3in")
        assert [flag.level.value for flag in alone(wet, later(ON, day), "wash-off")] == ([found] if found else [])
    fed = book(f"{ON} feed green-gate 2lb front", f"{later(ON, -3)} water 20min back", on=own)
    fed = typed(fed, f"{later(ON, -3)} rain 0.3in")
    assert level(fed, later(ON, free), "feed-water-in") == ""
    assert level(fed, later(ON, free + 1), "feed-water-in") == "note"


@pytest.mark.parametrize(("hours", "free"), [("24", 2), ("72", 4)])
def test_a_seedbed_under_a_spray_is_not_called_dry_until_the_hours_are_over(hours: str, free: int) -> None:
    lines = ("2026-09-01 seed three-river 2lb front", *(f"{later('2026-09-01', d)} water 5min front" for d in range(4)))
    spray = "2026-09-05 treat leaf-off 1floz front"
    held = book(*lines, "2026-09-01 rain 0in", spray, on=_own(f"wash-off hours {hours}"))
    assert the(held, later("2026-09-05", free - 1), "damp").state.value == "waiting"
    assert the(held, later("2026-09-05", free), "damp").state.value != "waiting"
    assert level(held, later("2026-09-05", free), "seedbed-dry") == ""
    assert level(held, later("2026-09-05", free + 1), "seedbed-dry") != ""


def test_no_watering_is_planned_onto_leaves_whose_label_was_not_entered() -> None:
    dry = ["2026-05-30 water deep front", *weather("2026-05-30", 14, "84F 60F 0in")]
    book_of = book(*dry, on=shed(None, ('area = "1000 sqft"', 'area = "1000 sqft"\nsoil = "sand"')))
    assert the(book_of, "2026-06-12", "water").state.value in ("open", "late")
    sprayed = typed(book_of, "2026-06-12 treat leaf-off 1floz front")
    step = the(sprayed, "2026-06-12", "water")
    assert step.state.value == "waiting"
    assert "leaf-off is to stay dry (label not entered)" in step.waits_for
    assert str(step.earliest) == "2026-06-14"


def test_the_spray_waits_for_the_leaf_by_the_number_that_judges_the_cut() -> None:
    own = book(f"{SET_UP} set mow-near-treatment before 4d", f"{SET_UP} set leaf-off rate 1floz/k 1.5floz/k", on=shed())
    mown = book("2026-09-20 see dandelion front", "2026-09-21 mow 3in front", on=own)
    assert the(mown, "2026-09-24", "broadleaf").state.value == "waiting"
    assert the(mown, "2026-09-25", "broadleaf").state.value == "open"
    for day, found in (("2026-09-24", "note"), ("2026-09-25", "")):
        assert level(typed(mown, f"{day} treat leaf-off 1floz front"), day, "mow-near-treatment") == found


def test_fertilizer_with_a_weed_product_in_it_works_on_the_leaf_too() -> None:
    kind = ('kind = "weed-and-feed"', 'kind = "fertilizer"')
    fed = book(f"{ON} feed green-gate 2lb front", f"{later(ON, 1)} rain 0.3in", on=shed(None, kind))
    assert [flag.subject for flag in alone(fed, later(ON, 1), "wash-off")] == ["green-gate"]


def test_watered_in_by_the_third_day_or_told() -> None:
    put = book(f"{ON} treat grub-off 2lb front", f"{ON} rain 0in", on=shed())
    assert level(put, later(ON, 2), "water-in-missing") == ""
    assert level(put, later(ON, 3), "water-in-missing") == "late"
    half = typed(put, f"{later(ON, 1)} rain 0.3in")
    assert level(half, later(ON, 3), "water-in-missing") == "late"
    assert level(typed(half, f"{later(ON, 2)} rain 0.2in"), later(ON, 3), "water-in-missing") == ""


@pytest.mark.parametrize(("words", "last"), [("1 week", 7), ("24 hours", 1), ("2 days", 2)])
def test_a_label_that_names_a_time_keeps_people_off_so_long(words: str, last: int) -> None:
    put = book(f"{ON} treat leaf-off 1floz front", on=shed({"leaf-off": f'reentry = "{words}"'}))
    for day, found in ((last, "harm"), (last + 1, "")):
        seen = typed(put, f"{later(ON, day)} see traffic front")
        assert level(seen, later(ON, day), "reentry") == found
        assert level(put, later(ON, day), "keep-off") == ("note" if found else "")


def test_rain_within_three_days_makes_it_wet_again_and_later_rain_does_not() -> None:
    put = book(f"{ON} treat leaf-off 1floz front", on=shed())
    for day, found in ((1, "note"), (2, "note"), (3, "")):
        wet = typed(put, f"{later(ON, day)} rain 0.3in")
        assert level(wet, later(ON, day), "keep-off") == found
        assert level(wet, later(ON, day + 1), "keep-off") == ""


def test_flowers_are_open_until_they_are_mown_or_for_21_days() -> None:
    seen = book("2026-06-01 see flowering front", on=shed())
    for day, found in ((20, "harm"), (21, "note")):
        on = later("2026-06-01", day)
        assert flags(typed(seen, f"{on} treat grub-end 2lb front"), on, "bloom") == {"grub-end": found}
    mown = typed(seen, "2026-06-03 mow 3in front")
    assert flags(typed(mown, f"{ON} treat grub-end 2lb front"), ON, "bloom") == {"grub-end": "note"}


def test_what_nobody_knows_on_flowers_is_asked_about() -> None:
    seen = book("2026-06-09 see flowering front", f"{ON} treat unknown front by service", on=shed())
    (flag,) = all_flags(seen, ON, "bloom")
    assert flag.level == "note"
    assert "if it kills insects" in flag.do
    assert flags(book(f"{ON} treat unknown front by service", on=shed()), ON, "bloom") == {}


def test_the_owner_may_keep_further_from_the_pond_than_the_label_never_nearer() -> None:
    near = ('area = "1000 sqft"', 'area = "1000 sqft"\nnear_water = "30 ft"')
    put = book(f"{ON} treat leaf-off 1floz front", on=shed({"leaf-off": 'buffer = "10 ft"'}, near))
    assert flags(put, ON, "buffer") == {}
    wider = typed(put, f"{SET_UP} set buffer distance 50ft")
    (flag,) = all_flags(wider, ON, "buffer")
    assert flag.level == "harm"
    assert "keep 50 ft" in flag.why
    assert "granules" not in flag.do
    strict = shed({"leaf-off": 'buffer = "60 ft"'}, near)
    (flag,) = all_flags(typed(strict, f"{ON} treat leaf-off 1floz front"), ON, "buffer")
    assert "the label wants 60 ft" in flag.why


def test_an_unknown_product_beside_water_is_named_as_such() -> None:
    near = ('area = "1000 sqft"', 'area = "1000 sqft"\nnear_water = "20 ft"')
    (flag,) = all_flags(book(f"{ON} treat unknown front", on=shed(None, near)), ON, "buffer")
    assert flag.headline == "an unknown product near water, edge not kept"


def test_two_zones_of_one_line_are_each_judged_by_what_was_seen_there() -> None:
    seen = book("2026-06-09 see flowering front", on=shed())
    found = judged(seen, ON, "treat grub-end 2lb front back").raised
    assert {(flag.zones, flag.level.value) for flag in found if flag.rule == "bloom"} == {
        (("front",), "harm"),
        (("back",), "note"),
    }


def test_a_struck_use_takes_all_that_followed_with_it() -> None:
    put = book(f"{ON} treat grub-end 2lb front", f"{later(ON, 1)} see traffic front", on=shed())
    assert level(put, later(ON, 3), "reentry") == "harm"
    (use,) = put.track("front", Treatment).entries
    gone = put.minus(use)
    for rule in ("reentry", "keep-off", "water-in-missing", "bloom", "grub-blind"):
        assert level(gone, later(ON, 3), rule) == ""
    assert find(gone, later(ON, 3), "keep-off") is None


def test_the_notice_to_keep_off_names_the_water_that_granules_lack() -> None:
    put = book(f"{ON} treat grub-end 2lb front", on=shed())
    flag = raised(put, ON, "keep-off")
    assert flag is not None
    assert "0.5 in" in flag.do
    assert "1-800-222-1222" in flag.do
