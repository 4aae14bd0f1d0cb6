"""Two kinds of seed side by side: common practice; another leaf shows (Ask Extension, Larimer County, 2024)."""

from tests.scenario import book, later, lawn, level, raised

FRONT, BACK = "2026-09-06 seed three-river 6lb front", "2026-09-13 seed stone-wall 9lb back"


def test_two_zones_sown_with_different_seed_in_one_year() -> None:
    diary = book(FRONT, BACK)
    flag = raised(diary, "2026-09-13", "seed-two-kinds", "back")
    assert flag is not None
    assert (flag.level, flag.id) == ("note", "seed-two-kinds/back/front")
    assert "three-river: " not in flag.why
    assert "front: three-river, kentucky bluegrass 50 %" in flag.why
    assert "10 % in common" in flag.why
    assert level(diary, "2026-09-13", "seed-two-kinds", "front") == ""
    assert level(diary, "2026-09-12", "seed-two-kinds", "back") == ""


def test_the_same_seed_or_another_year_is_no_matter() -> None:
    same = book(FRONT, "2026-09-13 seed three-river 9lb back")
    assert level(same, "2026-09-13", "seed-two-kinds", "back") == ""
    next_year = book(FRONT, "2027-09-13 seed stone-wall 9lb back")
    assert level(next_year, "2027-09-13", "seed-two-kinds", "back") == ""


def test_only_what_is_seen_together_and_lies_in_the_same_light() -> None:
    back = 'name = "back"\n'
    for words in ("out_of_view = true\n", 'sun = "shade"\n'):
        assert level(book(FRONT, BACK, on=lawn((back, back + words))), "2026-09-13", "seed-two-kinds", "back") == ""


def test_a_spot_of_another_seed_is_the_switch_alone() -> None:
    diary = book(FRONT, "2026-09-13 seed stone-wall 0.5lb spot 40sqft back")
    assert level(diary, "2026-09-13", "seed-two-kinds", "back") == ""


def test_it_stands_until_both_bear_one_seed() -> None:
    diary = book(FRONT, BACK, "2028-09-01 seed three-river 6lb back")
    assert level(diary, "2028-08-31", "seed-two-kinds", "back") == "note"
    assert level(diary, "2028-09-01", "seed-two-kinds", "back") == ""


def test_each_its_own_in_two_years_is_meant() -> None:
    again = ("2027-09-06 seed three-river 6lb front", "2027-09-13 seed stone-wall 9lb back")
    diary = book(FRONT, BACK, *again)
    assert level(diary, "2027-09-06", "seed-two-kinds", "back") + level(diary, "2027-09-06", "seed-two-kinds") == "note"
    assert level(diary, "2027-09-13", "seed-two-kinds", "back") == ""


def test_it_can_be_set_aside() -> None:
    aside = book(FRONT, BACK, "2026-09-14 aside seed-two-kinds back -- a hedge lies between")
    assert level(aside, later("2026-09-13", 300), "seed-two-kinds", "back") == ""


def test_a_mix_that_is_not_entered_is_not_compared() -> None:
    blank = lawn(('mix = [{grass="tall fescue", percent=90}, {grass="kentucky bluegrass", percent=10}]\n', ""))
    assert level(book(FRONT, BACK, on=blank), "2026-09-13", "seed-two-kinds", "back") == ""
