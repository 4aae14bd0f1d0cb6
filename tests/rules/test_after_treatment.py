"""Bees, water's edge, cuts and clippings around a treatment, and somebody who was exposed to one."""

from collections.abc import Mapping

import pytest

from journal.facts.house import number
from journal.facts.safety import EMERGENCY
from journal.season.history import History
from tests.rules.treated import all_flags, alone, shed
from tests.scenario import book, judged, lawn, level, raised, the

GRUBS = "2026-07-06 treat grub-off 3lb front"
SPRAYED = "2026-05-04 treat leaf-off 1floz front"
MOW_LABEL = {"leaf-off": 'mow_before = "2 d"\nmow_after = "3 d"'}


# bees


def test_an_insect_product_on_flowers_is_harm_for_a_week() -> None:
    flowers = book("2026-07-01 see flowering front", GRUBS, on=shed())
    assert level(flowers, "2026-07-06", "bloom") == "harm"
    assert level(flowers, "2026-07-12", "bloom") == "harm"
    assert level(flowers, "2026-07-13", "bloom") == ""
    assert level(flowers, "2026-07-05", "bloom") == ""


@pytest.mark.parametrize(("mown", "found"), [("2026-07-03", "note"), ("2026-07-04", ""), ("2026-07-05", "")])
def test_mown_in_the_two_days_before_nothing_is_in_flower(mown: str, found: str) -> None:
    flowers = book("2026-07-01 see flowering front", f"{mown} mow 3in front", GRUBS, on=shed())
    assert level(flowers, "2026-07-06", "bloom") == found


def test_a_cut_of_the_same_day_asks_for_the_times() -> None:
    flowers = book("2026-07-01 see flowering front", "2026-07-06 mow 3in front", GRUBS, on=shed())
    assert level(flowers, "2026-07-06", "bloom") == "note"
    timed = "2026-07-06 treat grub-off 3lb front 18:00"
    first = book("2026-07-01 see flowering front", "2026-07-06 mow 3in front 10:00", timed, on=shed())
    assert level(first, "2026-07-06", "bloom") == ""
    after = book("2026-07-01 see flowering front", "2026-07-06 mow 3in front 19:00", timed, on=shed())
    assert level(after, "2026-07-06", "bloom") == "harm"


def test_a_cut_before_they_were_seen_in_flower_took_none_off() -> None:
    flowers = book("2026-07-04 mow 3in front", "2026-07-05 see flowering front", GRUBS, on=shed())
    assert level(flowers, "2026-07-06", "bloom") == "harm"


def test_from_april_to_october_it_is_asked_whether_anything_is_in_flower() -> None:
    assert level(book(GRUBS, on=shed()), "2026-07-06", "bloom") == "note"
    assert level(book("2026-07-02 see no-flowers front", GRUBS, on=shed()), "2026-07-06", "bloom") == ""
    assert level(book("2026-06-15 see no-flowers front", GRUBS, on=shed()), "2026-07-06", "bloom") == "note"
    assert level(book("2026-03-31 treat grub-off 3lb front", on=shed()), "2026-03-31", "bloom") == ""
    assert level(book("2026-04-01 treat grub-off 3lb front", on=shed()), "2026-04-01", "bloom") == "note"


def test_in_the_south_it_is_asked_half_a_year_on() -> None:
    south = shed(
        None, ("latitude = 42.3", "latitude = -42.3"), ('growth = ["04-10", "11-10"]', 'growth = ["09-10", "05-10"]')
    )
    assert level(book("2026-12-06 treat grub-off 3lb front", on=south), "2026-12-06", "bloom") == "note"
    assert level(book(GRUBS, on=south), "2026-07-06", "bloom") == ""


def test_other_products_are_not_asked_about_flowers() -> None:
    assert level(book("2026-05-01 see flowering front", SPRAYED, on=shed()), "2026-05-04", "bloom") == ""


def test_the_owner_may_want_the_cut_nearer() -> None:
    near = book(
        "2026-01-02 set bloom hours 24", "2026-07-01 see flowering front", "2026-07-04 mow 3in front", GRUBS, on=shed()
    )
    assert level(near, "2026-07-06", "bloom") == "note"
    assert not number("bloom", "hours").allows(72)


# the edge of water


def _beside(distance: str, slope: str = "none", labels: Mapping[str, str] | None = None) -> History:
    front = 'name = "front"\narea = "1000 sqft"'
    return shed(labels, (front, f'{front}\nnear_water = "{distance}"\nslope = "{slope}"'))


def test_beside_water_without_a_kept_edge_is_harm_for_a_week() -> None:
    sprayed = book(SPRAYED, on=_beside("20 ft"))
    assert level(sprayed, "2026-05-04", "buffer") == "harm"
    assert level(sprayed, "2026-05-10", "buffer") == "harm"
    assert level(sprayed, "2026-05-11", "buffer") == ""
    assert level(book(f"{SPRAYED} edge kept", on=_beside("20 ft")), "2026-05-04", "buffer") == ""
    assert level(book(SPRAYED, on=shed()), "2026-05-04", "buffer") == ""


def test_twenty_five_feet_or_the_labels_own_or_more_on_a_slope() -> None:
    assert level(book(SPRAYED, on=_beside("25 ft")), "2026-05-04", "buffer") == ""
    label = {"leaf-off": 'buffer = "50 ft"'}
    assert level(book(SPRAYED, on=_beside("40 ft", labels=label)), "2026-05-04", "buffer") == "harm"
    assert level(book(SPRAYED, on=_beside("50 ft", labels=label)), "2026-05-04", "buffer") == ""
    assert level(book(SPRAYED, on=_beside("90 ft", "steep")), "2026-05-04", "buffer") == "harm"
    wider = book("2026-01-02 set buffer distance 40ft", SPRAYED, on=_beside("30 ft"))
    assert level(wider, "2026-05-04", "buffer") == "harm"
    assert not number("buffer", "distance").allows(3000)


# cuts


@pytest.mark.parametrize(
    ("mown", "found"),
    [("2026-05-02", ""), ("2026-05-03", "loss"), ("2026-05-04", "loss"), ("2026-05-06", "loss"), ("2026-05-07", "")],
)
def test_no_cut_the_day_before_nor_on_the_two_days_after(mown: str, found: str) -> None:
    assert (
        level(book(SPRAYED, f"{mown} mow 3in front", on=shed(MOW_LABEL)), "2026-05-07", "mow-near-treatment") == found
    )
    default = book(SPRAYED, f"{mown} mow 3in front", on=shed())
    assert level(default, "2026-05-07", "mow-near-treatment") == ("note" if found else "")


def test_a_default_says_that_the_label_is_not_entered() -> None:
    flag = raised(book(SPRAYED, "2026-05-05 mow 3in front", on=shed()), "2026-05-05", "mow-near-treatment")
    assert flag is not None
    assert "label not entered" in flag.why


def test_it_clears_a_week_after_the_later_of_both() -> None:
    after = book(SPRAYED, "2026-05-06 mow 3in front", on=shed())
    assert level(after, "2026-05-12", "mow-near-treatment") == "note"
    assert level(after, "2026-05-13", "mow-near-treatment") == ""


def test_spots_barriers_and_starters_may_be_mown() -> None:
    for line in ("treat leaf-off spot rtu front", "treat spring-wall 3lb front", "feed seed-start 4lb front"):
        mown = book(f"2026-05-04 {line}", "2026-05-05 mow 3in front", on=shed())
        assert level(mown, "2026-05-05", "mow-near-treatment") == "", line


def test_flower_heads_mown_off_before_an_insect_product_are_not_held_against_the_spray_beside_it() -> None:
    mown = book("2026-07-05 mow 3in front", "2026-07-06 treat leaf-off 1floz + grub-off 3lb front", on=shed())
    assert level(mown, "2026-07-06", "mow-near-treatment") == ""
    assert level(mown, "2026-07-06", "bloom") == ""


def test_a_label_without_a_wait_on_one_side_is_a_note_on_the_same_day() -> None:
    after_only = {"leaf-off": 'mow_before = "0 d"\nmow_after = "3 d"'}
    assert (
        level(book(SPRAYED, "2026-05-04 mow 3in front", on=shed(after_only)), "2026-05-04", "mow-near-treatment")
        == "note"
    )
    timed = book("2026-05-04 mow 3in front 8:00", "2026-05-04 treat leaf-off 1floz front 10:00", on=shed(after_only))
    assert level(timed, "2026-05-04", "mow-near-treatment") == ""


# clippings


def _cut(*mown: str, product: str = "leaf-off", line: str = "1floz") -> History:
    return book(f"2026-05-04 treat {product} {line} front", *(f"{on} mow 3in bag front" for on in mown), on=shed())


def test_clippings_of_the_first_three_cuts_are_not_to_be_carried_off() -> None:
    cuts = ("2026-05-08", "2026-05-15", "2026-05-22")
    flag = raised(_cut(*cuts), "2026-05-22", "clippings-treated")
    assert flag is not None
    assert str(flag.level) == "loss"
    assert "cut number 3 after it" in flag.why
    assert "compost" in flag.do
    left = book(SPRAYED, *(f"{on} mow 3in return front" for on in cuts), "2026-05-29 mow 3in bag front", on=shed())
    assert level(left, "2026-05-29", "clippings-treated") == ""
    assert level(book(SPRAYED, "2026-05-08 mow 3in return front", on=shed()), "2026-05-08", "clippings-treated") == ""


def test_it_stands_two_weeks_and_needs_no_clock() -> None:
    cut = _cut("2026-05-08")
    assert level(cut, "2026-05-21", "clippings-treated") == "loss"
    assert level(cut, "2026-05-22", "clippings-treated") == ""


def test_a_lawn_that_nobody_cuts_holds_it_for_sixty_days() -> None:
    assert level(_cut("2026-07-02"), "2026-07-02", "clippings-treated") == "loss"
    assert level(_cut("2026-07-03"), "2026-07-03", "clippings-treated") == ""


def test_what_lasts_in_compost_counts_all_season() -> None:
    cuts = tuple(f"2026-{month:02}-10" for month in range(5, 11))
    assert level(_cut(*cuts, product="clover-out"), "2026-10-10", "clippings-treated") == "loss"
    assert level(_cut(*cuts), "2026-10-10", "clippings-treated") == ""


def test_a_cut_of_the_same_day_may_have_come_first() -> None:
    assert level(_cut("2026-05-04"), "2026-05-04", "clippings-treated") == "note"
    first = book("2026-05-04 mow 3in bag front 8:00", "2026-05-04 treat leaf-off 1floz front 10:00", on=shed())
    assert level(first, "2026-05-04", "clippings-treated") == ""


def test_insect_products_hold_no_clippings_and_the_owner_may_ask_for_more_cuts() -> None:
    assert level(_cut("2026-05-08", product="grub-off", line="3lb"), "2026-05-08", "clippings-treated") == ""
    cuts = ("2026-05-08", "2026-05-15", "2026-05-22", "2026-05-29")
    assert level(_cut(*cuts), "2026-06-06", "clippings-treated") == ""
    more = book("2026-01-02 set clippings-treated mowings 4", on=_cut(*cuts))
    assert level(more, "2026-06-06", "clippings-treated") == "loss"


def test_treated_clippings_head_the_habit_of_new_grass() -> None:
    new = book("2026-08-20 seed three-river 4lb front", "2026-09-18 mow 3in return front", on=shed())
    treated = book("2026-09-15 treat leaf-off 1floz front", on=new)
    assert level(treated, "2026-09-18", "mow-clippings") == ""


# somebody was exposed


def test_who_was_exposed_is_told_the_label_the_numbers_and_the_product_first() -> None:
    exposed = book(SPRAYED, "2026-05-05 see exposure front", on=shed())
    flag = raised(exposed, "2026-05-05", "exposure")
    assert flag is not None
    assert str(flag.level) == "harm"
    assert flag.headline == "exposed: leaf-off (2,4-d)"
    first_aid, emergency, poison = (flag.do.index(words) for words in ("label", "911", "1-800-222-1222"))
    assert first_aid < emergency < poison
    assert EMERGENCY in [citation for basis in flag.basis for citation in basis.citations]
    assert level(exposed, "2026-05-18", "exposure") == "harm"
    assert level(exposed, "2026-05-19", "exposure") == ""


def test_sick_after_nothing_on_file_says_so() -> None:
    flag = raised(book("2026-05-05 see sick front", on=shed()), "2026-05-05", "exposure")
    assert flag is not None
    assert flag.headline == "sick: no product on file in 30 days"


def test_products_of_every_zone_are_named_once_the_newest_first() -> None:
    lines = ("2026-04-20 treat spring-wall 3lb back", SPRAYED, "2026-03-01 treat plain-can 1floz front")
    exposed = book(*lines, "2026-05-05 see exposure", on=shed())
    flag = raised(exposed, "2026-05-05", "exposure")
    assert flag is not None
    assert flag.headline == "exposed: leaf-off (2,4-d), spring-wall (prodiamine)"
    front, back = (all_flags(exposed, "2026-05-05", "exposure", zone)[0] for zone in ("front", "back"))
    assert (front.why, front.do) == (back.why, back.do)


def test_a_metric_book_names_its_own_country_and_no_american_number() -> None:
    metric = shed(None, ("[lawn]", '[lawn]\nunits = "metric"'))
    flag = raised(book("2026-05-05 see exposure front", on=metric), "2026-05-05", "exposure")
    assert flag is not None
    assert "1-800" not in flag.do
    assert "911" not in flag.do


def test_the_card_comes_before_it_is_saved() -> None:
    found = judged(book(SPRAYED, on=shed()), "2026-05-05", "see exposure front")
    assert found.gravest is not None
    assert found.gravest.rule == "exposure"


def test_nothing_here_says_that_anything_is_safe() -> None:
    everything = book(
        SPRAYED, GRUBS, "2026-05-04 see traffic front", "2026-05-05 rain 0.5in", "2026-05-05 mow 3in bag front",
        "2026-07-08 see traffic front", "2026-07-09 see exposure front", "2026-07-05 see flowering front",
        on=_beside("5 ft"),
    )  # fmt: skip
    rules = (
        "keep-off",
        "reentry",
        "wash-off",
        "bloom",
        "buffer",
        "mow-near-treatment",
        "clippings-treated",
        "exposure",
    )
    said = [
        f"{flag.headline} {flag.why} {flag.do} {flag.clears}".casefold()
        for on in ("2026-05-05", "2026-07-09")
        for rule in rules
        for flag in all_flags(everything, on, rule)
    ]
    assert len(said) > 8
    assert not [text for text in said if "safe" in text or "legal" in text or "!" in text]


def test_uses_of_two_products_each_have_their_own_flag() -> None:
    both = book("2026-05-04 treat leaf-off 1floz + white-tip 0.1floz front", "2026-05-05 rain 0.5in", on=shed())
    assert {flag.subject for flag in alone(both, "2026-05-05", "wash-off")} == {"leaf-off", "white-tip"}


def test_the_mow_step_waits_until_the_leaf_has_taken_it() -> None:
    sprayed = book("2026-04-27 mow 3in front", SPRAYED, on=shed())
    step = the(sprayed, "2026-05-05", "mow")
    assert str(step.state) == "waiting"
    assert str(the(sprayed, "2026-05-07", "mow").state) == "open"


def test_what_the_mow_step_offers_after_a_spray_raises_nothing_of_its_own() -> None:
    sprayed = book("2026-04-27 mow 3in front", SPRAYED, on=shed())
    step = the(sprayed, "2026-05-07", "mow")
    assert "return" in step.line
    mine = {"mow-near-treatment", "clippings-treated"}
    assert not mine & {flag.rule for flag in judged(sprayed, "2026-05-07", step.line).raised}
    early = judged(sprayed, "2026-05-06", step.line)
    assert "mow-near-treatment" in {flag.rule for flag in early.raised}


def test_a_late_cut_is_not_asked_for_while_the_leaf_is_wanted() -> None:
    sprayed = book("2026-04-27 mow 3in front", "2026-05-08 treat leaf-off 1floz front", on=shed())
    assert level(sprayed, "2026-05-07", "mow-gap") == ""
    assert level(sprayed, "2026-05-08", "mow-gap") == ""
    assert level(sprayed, "2026-05-10", "mow-gap") == ""
    assert level(sprayed, "2026-05-11", "mow-gap") == "late"


def test_treated_clippings_of_new_grass_are_left_by_the_plan_too() -> None:
    new = book("2026-08-20 seed three-river 4lb front", "2026-09-18 mow 3in bag front", on=shed())
    assert str(the(new, "2026-09-25", "bag").state) == "open"
    treated = book("2026-09-25 treat leaf-off 1floz front", on=new)
    bag = the(treated, "2026-09-26", "bag")
    assert str(bag.state) == "waiting"
    assert "leaf-off" in bag.waits_for


WITH_ACTIVE = lawn(('analysis = "18-24-6"\n', 'analysis = "18-24-6"\nactives = ["mesotrione"]\n'))


def test_a_starter_with_an_active_lets_new_grass_be_bagged_but_keeps_the_clippings_apart() -> None:
    renovated = book(
        "2026-09-06 seed three-river 9lb front", "2026-09-06 feed oat-hill 8lb front", "2026-10-04 mow 3in bag front",
        on=WITH_ACTIVE,
    )  # fmt: skip
    assert level(renovated, "2026-10-04", "clippings-treated") == "note"
    flag = raised(renovated, "2026-10-04", "clippings-treated")
    assert flag is not None
    assert "no compost" in flag.do
    step = the(renovated, "2026-10-06", "bag")
    assert (step.state, step.waits_for) == ("open", "")
    assert "no compost" in step.why
