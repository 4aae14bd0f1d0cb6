"""What keeps out the seed that is meant for later. Waits: Univ. of Delaware Cooperative Extension, 2008."""

from tests.scenario import LAWN, book, judged, later, lawn, level, raised

RULE = "barrier-before-seed"
MEANT = "2026-04-01 intend seed three-river 2026-09-05 front"


def test_a_barrier_before_the_seed_that_is_meant() -> None:
    diary = book(MEANT, "2026-04-15 treat spring-wall 4lb front")
    flag = raised(diary, "2026-04-15", RULE)
    assert flag is not None
    assert flag.level == "loss"
    assert flag.headline == "spring-wall keeps out the seed meant for Sat 5 Sep"
    assert "to Wed 11 Nov" in flag.why
    found = judged(book(MEANT), "2026-04-15", "treat spring-wall 4lb front")
    assert [(one.rule, one.level.value) for one in found.raised if one.rule == RULE] == [(RULE, "loss")]


def test_the_other_way_round_too() -> None:
    treated = book("2026-04-15 treat spring-wall 4lb front")
    found = judged(treated, "2026-07-01", "intend seed three-river 2026-09-05 front")
    assert [(one.rule, one.level.value) for one in found.raised if one.rule == RULE] == [(RULE, "loss")]
    late = judged(treated, "2026-07-01", "intend seed three-river 2026-11-11 front")
    assert RULE not in {one.rule for one in late.raised}


def test_any_product_with_a_wait_to_the_day() -> None:
    for on, found in (("2026-08-08", ""), ("2026-08-09", "loss")):
        assert level(book(MEANT, f"{on} treat leaf-off 2floz front"), on, RULE) == found
    assert level(book(MEANT, "2026-08-20 feed green-gate 7lb front"), "2026-08-20", RULE) == "loss"


def test_it_clears_when_the_seed_is_moved_or_nobody_means_it_any_more() -> None:
    diary = book(MEANT, "2026-08-20 treat leaf-off 2floz front")
    assert (level(diary, "2026-09-16", RULE), level(diary, "2026-09-17", RULE)) == ("loss", "")
    barrier = book(MEANT, "2026-04-15 treat spring-wall 4lb front")
    assert (level(barrier, "2026-09-18", RULE), level(barrier, "2026-09-19", RULE)) == ("loss", "")


def test_once_it_is_sown_the_residue_speaks() -> None:
    diary = book(MEANT, "2026-08-20 treat leaf-off 2floz front", "2026-09-06 seed three-river 9lb front")
    assert level(diary, "2026-09-06", RULE) == ""
    assert level(diary, "2026-09-06", "seed-over-residue") == "loss"


def test_every_barrier_says_how_long_seed_waits() -> None:
    found = judged(book(), "2026-04-15", "treat spring-wall 4lb front")
    (flag,) = (one for one in found.raised if one.rule == RULE)
    assert (flag.level.value, flag.headline) == ("note", "seed waits until Wed 11 Nov")
    diary = book("2026-04-15 treat spring-wall 4lb front")
    assert (level(diary, later("2026-04-15", 13), RULE), level(diary, later("2026-04-15", 14), RULE)) == ("note", "")
    own = book("2026-01-02 set barrier-before-seed note-days 30", "2026-04-15 treat spring-wall 4lb front")
    assert level(own, later("2026-04-15", 29), RULE) == "note"
    assert level(book("2026-04-15 treat leaf-off 2floz front"), "2026-04-15", RULE) == ""


def test_the_label_goes_first() -> None:
    short = LAWN.replace('form = "granule"\n', 'form = "granule"\n[product.label]\nto_seed = "120 d"\n', 1)
    diary = book(MEANT, "2026-04-15 treat spring-wall 4lb front", on=lawn(toml=short))
    flag = raised(diary, "2026-04-15", RULE)
    assert flag is not None
    assert (flag.level.value, flag.headline) == ("note", "seed waits until Thu 13 Aug")
    assert flag.numbers["wait"].origin == "label"


def test_another_zone_is_free_and_a_spot_sets_no_wait() -> None:
    assert level(book(MEANT, "2026-08-20 treat leaf-off 2floz back"), "2026-08-20", RULE) == ""
    assert level(book(MEANT, "2026-08-20 treat leaf-off 1floz spot 40sqft front"), "2026-08-20", RULE) == ""


def test_a_product_that_nobody_knows_waits_longest() -> None:
    flag = raised(book(MEANT, "2026-05-01 treat unknown by service front"), "2026-05-01", RULE)
    assert flag is not None
    assert flag.headline.startswith("an unknown product keeps out")
