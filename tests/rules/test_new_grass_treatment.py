"""Weed, insect and disease products on new grass.

Purdue Univ. Turfgrass Science, 2011, Part III: a three-way broadleaf product after 2 to 3 mowings; a label holding
2,4-D says the second to third. Mesotrione again 28 days after emergence and 2 mowings: from memory.
"""

import pytest

from tests.scenario import LAWN, book, judged, later, lawn, level, raised

RULE = "new-grass-treatment"
SOWN = "2026-09-06 seed three-river 9lb front"
CUTS = ("2026-10-04 mow 3in front", "2026-10-11 mow 3in front", "2026-10-18 mow 3in front")
STARTER = LAWN.replace('slow = "20% of n"\n', 'slow = "20% of n"\nactives = ["mesotrione"]\n', 1)
EXTRA = """
[[product]]
name = "beetle-stop"
kind = "insect"

[[product]]
name = "grub-wall"
kind = "insect"
actives = ["chlorantraniliprole"]

[[product]]
name = "spot-clear"
kind = "disease"

[[product]]
name = "all-gone"
kind = "nonselective"
actives = ["glyphosate"]
"""


def labelled(words: str) -> str:
    return LAWN + f'[product.label]\nafter_seed = "{words}"\n'


def test_a_broadleaf_spray_waits_for_three_mowings_from_day_21() -> None:
    two = book(SOWN, *CUTS[:2], "2026-10-14 treat leaf-off 2floz front")
    flag = raised(two, "2026-10-14", RULE)
    assert flag is not None
    assert flag.level == "loss"
    assert "3 mowings from day 21 by 2,4-d, label not entered" in flag.why
    assert "up Sun 27 Sep (assumed)" in flag.why
    assert level(two, "2026-10-13", RULE) == ""
    third = book("2026-10-18 mow 3in front", on=two)
    assert (level(third, "2026-10-17", RULE), level(third, "2026-10-18", RULE)) == ("loss", "")
    three = book(SOWN, *CUTS, "2026-10-19 treat leaf-off 2floz front")
    assert level(three, "2026-10-19", RULE) == ""


def test_a_mowing_before_day_21_does_not_count() -> None:
    on = later("2026-09-06", 20)
    early = book(SOWN, f"{on} mow 3in front", *CUTS[:2], "2026-10-14 treat leaf-off 2floz front")
    assert level(early, "2026-10-14", RULE) == "loss"
    in_time = book(SOWN, f"{later(on, 1)} mow 3in front", *CUTS[:2], "2026-10-14 treat leaf-off 2floz front")
    assert level(in_time, "2026-10-14", RULE) == ""


def test_it_stands_sixty_days_at_most() -> None:
    diary = book(SOWN, "2026-10-14 treat leaf-off 2floz front")
    assert level(diary, later("2026-10-14", 59), RULE) == "loss"
    assert level(diary, later("2026-10-14", 60), RULE) == ""


def test_days_count_from_emergence() -> None:
    """A barrier of prodiamine waits 60 days from emergence and 3 mowings; day 56 of the sowing is too soon."""
    mown = (*CUTS, "2026-10-25 mow 3in front")
    up = "2026-09-16 see emerged front"
    for days, found in ((59, "loss"), (60, "")):
        on = later("2026-09-16", days)
        assert level(book(SOWN, up, *mown, f"{on} treat spring-wall 4lb front"), on, RULE) == found
        slow = later("2026-09-06", 21 + days)
        assert level(book(SOWN, *mown, f"{slow} treat spring-wall 4lb front"), slow, RULE) == found
    assert level(book(SOWN, up, *mown, "2026-11-01 treat spring-wall 4lb front"), "2026-11-01", RULE) == "loss"


def test_a_stand_is_new_for_a_hundred_and_twenty_days() -> None:
    spring = "2026-04-20 seed three-river 9lb front"
    for days, found in ((119, "loss"), (120, "")):
        on = later("2026-04-20", days)
        assert level(book(spring, f"{on} treat leaf-off 2floz front"), on, RULE) == found
    own = book("2026-01-02 set new-grass-treatment within-days 60", spring)
    assert level(book("2026-06-20 treat leaf-off 2floz front", on=own), "2026-06-20", RULE) == ""


@pytest.mark.parametrize(("words", "found"), [("28d", "loss"), ("17d", ""), ("2 mowings", ""), ("0d", "")])
def test_the_label_goes_first(words: str, found: str) -> None:
    diary = book(SOWN, *CUTS[:2], "2026-10-14 treat leaf-off 2floz front", on=lawn(toml=labelled(words)))
    assert level(diary, "2026-10-14", RULE) == found


def test_the_flag_clears_on_the_day_the_labels_wait_is_over() -> None:
    diary = book(SOWN, "2026-10-14 treat leaf-off 2floz front", on=lawn(toml=labelled("28d")))
    flag = raised(diary, "2026-10-14", RULE)
    assert flag is not None
    assert flag.clears_on == later("2026-09-27", 28)
    assert flag.numbers["wait"].origin == "label"
    assert (level(diary, "2026-10-24", RULE), level(diary, "2026-10-25", RULE)) == ("loss", "")


@pytest.mark.parametrize(
    ("treated", "cuts", "found"),
    [("beetle-stop", 3, "loss"), ("beetle-stop", 4, ""), ("grub-wall", 0, ""), ("spot-clear", 1, "loss"),
     ("spot-clear", 2, ""), ("unknown", 3, "loss")],
)  # fmt: skip
def test_insect_and_disease_products_have_waits_of_their_own(treated: str, cuts: int, found: str) -> None:
    mown = [f"{later('2026-10-04', 3 * at)} mow 3in front" for at in range(cuts)]
    diary = book(SOWN, *mown, f"2026-10-20 treat {treated} front", on=lawn(toml=LAWN + EXTRA))
    assert level(diary, "2026-10-20", RULE) == found


def test_a_spot_is_a_note_and_so_is_a_patch_that_was_sown() -> None:
    assert level(book(SOWN, "2026-10-10 treat leaf-off 1floz spot 40sqft front"), "2026-10-10", RULE) == "note"
    patch = book("2026-09-06 seed three-river 1lb spot 40sqft front", "2026-10-10 treat leaf-off 2floz front")
    flag = raised(patch, "2026-10-10", RULE)
    assert flag is not None
    assert (flag.level, "on a spot" in flag.why) == ("note", True)


def test_what_kills_grass_has_no_day() -> None:
    diary = book(SOWN, *CUTS, "2026-11-01 treat all-gone 4floz front", on=lawn(toml=LAWN + EXTRA))
    flag = raised(diary, "2026-11-01", RULE)
    assert flag is not None
    assert "it kills grass" in flag.why
    again = book("2026-11-05 intend seed three-river 2026-11-20 front", on=diary)
    assert level(again, "2026-11-05", RULE) == ""
    walk = book(SOWN, "2026-11-01 treat all-gone 1floz spot 20sqft front", on=lawn(toml=LAWN + EXTRA))
    assert level(walk, "2026-11-01", RULE) == ""


@pytest.mark.parametrize("days", [-3, 0, 5, 7, 20])
def test_a_starter_with_mesotrione_goes_down_with_the_seed(days: int) -> None:
    on = later("2026-09-06", days)
    diary = book(*sorted((SOWN, f"{on} feed oat-hill 7lb front")), on=lawn(toml=STARTER))
    assert level(diary, max(on, later("2026-09-06", 0)), RULE) == ""


def test_but_not_once_the_seedlings_are_up_and_not_twice() -> None:
    up = "2026-09-16 see emerged front"
    late = book(SOWN, up, "2026-09-18 feed oat-hill 7lb front", on=lawn(toml=STARTER))
    assert level(late, "2026-09-18", RULE) == "loss"
    again = book(SOWN, "2026-09-06 feed oat-hill 7lb front", "2026-09-13 feed oat-hill 7lb front",
                 on=lawn(toml=STARTER))  # fmt: skip
    assert level(again, "2026-09-13", RULE) == "loss"


@pytest.mark.parametrize(("days", "cuts", "found"), [(27, 2, "loss"), (28, 1, "loss"), (28, 2, "")])
def test_mesotrione_again_28_days_after_emergence_and_two_mowings(days: int, cuts: int, found: str) -> None:
    labels = STARTER.replace('actives = ["mesotrione"]\n', 'actives = ["mesotrione"]\n[product.label]\nto_seed = "0d"\n'
                             'after_seed = "0d"\n', 1)  # fmt: skip
    on = later("2026-09-16", days)
    for toml in (STARTER, labels):
        diary = book(SOWN, "2026-09-06 feed oat-hill 7lb front", "2026-09-16 see emerged front", *CUTS[:cuts],
                     f"{on} feed oat-hill 7lb front", on=lawn(toml=toml))  # fmt: skip
        assert level(diary, on, RULE) == found


def test_too_much_fine_fescue_is_not_listed() -> None:
    fescue = STARTER.replace('{grass="perennial ryegrass", percent=50}', '{grass="fine fescue", percent=50}', 1)
    diary = book(SOWN, "2026-09-10 feed oat-hill 7lb front", on=lawn(toml=fescue))
    assert level(diary, "2026-09-10", RULE) == "loss"


def test_on_the_day_of_sowing_what_keeps_seed_out_is_told_once() -> None:
    diary = book(SOWN, "2026-09-06 treat leaf-off 2floz front")
    assert level(diary, "2026-09-06", "seed-over-residue") == "loss"
    assert level(diary, "2026-09-06", RULE) == ""


def test_a_new_sowing_ends_it() -> None:
    diary = book("2026-08-20 seed three-river 9lb front", "2026-09-20 treat leaf-off 2floz front")
    assert level(diary, "2026-09-20", RULE) == "loss"
    assert level(book("2026-10-19 seed three-river 9lb front", on=diary), "2026-10-19", RULE) == ""


def test_a_service_mows_unseen() -> None:
    served = lawn(('name = "front"\n', 'name = "front"\nmowing = "service"\n'))
    for days, found in ((41, "loss"), (42, "")):
        on = later("2026-09-06", days)
        assert level(book(SOWN, f"{on} treat leaf-off 2floz front", on=served), on, RULE) == found


def test_the_draft_says_so_before_it_is_saved() -> None:
    found = judged(book(SOWN), "2026-10-10", "treat leaf-off 2floz front")
    assert RULE in {flag.rule for flag in found.raised}


def test_in_winter_the_day_named_lies_in_spring() -> None:
    flag = raised(book(SOWN, "2026-11-05 treat leaf-off 2floz front"), "2026-11-20", RULE)
    assert flag is not None
    assert "no more of it before Sat 8 May 2027" in flag.do
