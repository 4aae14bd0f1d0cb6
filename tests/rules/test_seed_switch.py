"""The same seed as before, or a reason. Common practice, no source."""

from journal.record.kinds.seeding import Seeding
from journal.standing import standing
from tests.scenario import LAWN, book, day, judged, lawn, level, raised

OTHER_LOT = """
[[product]]
name = "three-river-new"
kind = "seed"
mix = [{grass="kentucky bluegrass", percent=54}, {grass="perennial ryegrass", percent=46}]
maker = "hollow-creek"
"""
SOWN = "2026-09-06 seed three-river 9lb front"
SWITCHED = "2027-09-04 seed stone-wall 9lb front"


def test_another_seed_a_year_later() -> None:
    diary = book(SOWN, SWITCHED)
    assert level(diary, "2027-09-03", "seed-switch") == ""
    flag = raised(diary, "2027-09-04", "seed-switch")
    assert flag is not None
    assert flag.level == "loss"
    assert flag.id == "seed-switch/front/stone-wall"
    assert "three-river: kentucky bluegrass 50 %, perennial ryegrass 50 %" in flag.why
    assert "stone-wall: tall fescue 90 %, kentucky bluegrass 10 %" in flag.why
    assert "10 % in common" in flag.why
    sown, switched = diary.track("front", Seeding).entries
    assert flag.evidence == (switched.id, sown.id)
    assert level(diary, "2028-08-01", "seed-switch") == "loss"


def test_it_is_told_before_it_is_sown() -> None:
    found = judged(book(SOWN), "2027-09-04", "seed stone-wall 9lb front")
    assert found.gravest is not None
    assert found.gravest.rule == "seed-switch"
    assert found.gravest.evidence[0] == ""
    assert not found.holds_back


def test_the_same_seed_in_another_bag_is_the_same() -> None:
    diary = book(SOWN, "2027-09-04 seed three-river-new 9lb front", on=lawn(toml=LAWN + OTHER_LOT))
    assert level(diary, "2027-09-04", "seed-switch") == ""


def test_six_points_are_another_seed() -> None:
    other = OTHER_LOT.replace("54", "56").replace("46", "44")
    diary = book(SOWN, "2027-09-04 seed three-river-new 9lb front", on=lawn(toml=LAWN + other))
    assert level(diary, "2027-09-04", "seed-switch") == "loss"
    wider = book("2027-01-01 set seed-switch points 6%", on=diary)
    assert level(wider, "2027-09-04", "seed-switch") == ""


def test_another_makers_same_mix_is_a_note_for_two_months() -> None:
    toml = LAWN.replace('name = "three-river"\n', 'name = "three-river"\nmaker = "bell-hill"\n')
    diary = book(SOWN, "2027-09-04 seed three-river-new 9lb front", on=lawn(toml=toml + OTHER_LOT))
    assert level(diary, "2027-09-04", "seed-switch") == "note"
    assert level(diary, "2027-11-02", "seed-switch") == "note"
    assert level(diary, "2027-11-03", "seed-switch") == ""


def test_sown_in_two_years_the_new_seed_is_the_seed() -> None:
    diary = book(SOWN, SWITCHED, "2027-09-20 seed stone-wall 9lb front")
    assert level(diary, "2028-06-01", "seed-switch") == "loss"
    diary = book("2028-09-01 seed stone-wall 9lb front", on=diary)
    assert level(diary, "2028-09-01", "seed-switch") == ""
    assert level(book("2029-09-01 seed three-river 9lb front", on=diary), "2029-09-01", "seed-switch") == "loss"


def test_going_back_to_the_old_seed_ends_it() -> None:
    diary = book(SOWN, SWITCHED, "2028-09-01 seed three-river 9lb front")
    assert level(diary, "2028-09-01", "seed-switch") == ""


def test_an_intention_is_judged_like_a_sowing() -> None:
    diary = book(SOWN, "2027-08-01 intend seed stone-wall 2027-09-04 front")
    flag = raised(diary, "2027-08-01", "seed-switch")
    assert flag is not None
    assert flag.level == "loss"
    assert "meant for" in flag.why
    assert level(diary, "2027-09-17", "seed-switch") == "loss"
    assert level(diary, "2027-09-18", "seed-switch") == ""


def test_buying_another_seed_is_a_note_for_the_whole_lawn() -> None:
    diary = book(SOWN, "2026-09-06 seed three-river 9lb back", "2027-08-01 buy stone-wall 1x 20lb")
    (flag,) = [f for f in standing(diary, day("2027-08-01")).flags if f.rule == "seed-switch"]
    assert (flag.level, flag.zones) == ("note", ("front", "back"))
    assert level(diary, "2027-09-29", "seed-switch") == "note"
    assert level(diary, "2027-09-30", "seed-switch") == ""


def test_buying_what_one_zone_was_sown_with_is_fine() -> None:
    diary = book(SOWN, "2026-09-06 seed stone-wall 9lb back", "2027-08-01 buy stone-wall 1x 20lb")
    assert [f.rule for f in judged(diary, "2027-08-01", "buy three-river 1x 20lb").raised] == []
    assert "bought" not in {f.why[:6] for f in standing(diary, day("2027-08-01")).flags}


def test_a_zone_never_sown_is_measured_by_the_lawns_seed() -> None:
    diary = book(SOWN, "2027-09-04 seed stone-wall 9lb back")
    assert level(diary, "2027-09-04", "seed-switch", "back") == "loss"
    assert level(diary, "2027-09-04", "seed-switch", "front") == ""


def test_the_first_sowing_is_compared_with_the_grass_and_is_a_note_at_most() -> None:
    assert level(book("2026-09-06 seed stone-wall 9lb front"), "2026-09-06", "seed-switch") == "note"
    assert level(book("2026-09-06 seed stone-wall 9lb front"), "2026-11-05", "seed-switch") == ""
    assert level(book(SOWN), "2026-09-06", "seed-switch") == ""
    unknown = lawn(('grass = ["kentucky bluegrass", "perennial ryegrass"]', 'grass = ["unknown"]'))
    assert level(book("2026-09-06 seed stone-wall 9lb front", on=unknown), "2026-09-06", "seed-switch") == ""


def test_it_stands_until_it_is_set_aside() -> None:
    diary = book(SOWN, SWITCHED)
    assert level(diary, "2029-05-01", "seed-switch") == "loss"
    aside = book("2027-09-05 aside seed-switch front -- wanted a darker lawn", on=diary)
    assert level(aside, "2027-09-04", "seed-switch") == "loss"
    assert level(aside, "2027-09-05", "seed-switch") == ""
    (hidden,) = standing(aside, day("2027-09-05")).hidden
    assert "wanted a darker lawn" in hidden.hidden


def test_a_mix_that_is_not_entered_is_a_note() -> None:
    blank = LAWN + '\n[[product]]\nname = "corner-bag"\nkind = "seed"\n'
    diary = book(SOWN, "2027-09-04 seed corner-bag 9lb front", on=lawn(toml=blank))
    flag = raised(diary, "2027-09-04", "seed-switch")
    assert flag is not None
    assert flag.level == "note"
    assert "not entered" in flag.why
