"""Seed and what was sprayed before it.

Waits: Univ. of Delaware Cooperative Extension, Kent County, 2008; slit-seeding: Weed Technology 19(1), 2005. The label
goes first.
"""

import pytest

from tests.scenario import LAWN, book, judged, later, lawn, level, raised

LABELLED = LAWN + '[product.label]\nto_seed = "42 d"\n'


@pytest.mark.parametrize(("treated", "wait"), [("treat spring-wall 4lb", 210), ("treat leaf-off 2floz", 28)])
def test_sown_inside_the_published_wait(treated: str, wait: int) -> None:
    on = "2026-04-15"
    early = later(on, wait - 1)
    diary = book(f"{on} {treated} front", f"{early} seed three-river 9lb front")
    flag = raised(diary, early, "seed-over-residue")
    assert flag is not None
    assert flag.level == "loss"
    assert flag.clears_on == later(on, wait)
    assert flag.numbers["wait"].words == f"{wait} d"
    assert flag.numbers["wait"].origin == "default"
    assert "label not entered" in flag.why
    assert level(diary, later(on, wait), "seed-over-residue") == ""
    in_time = book(f"{on} {treated} front", f"{later(on, wait)} seed three-river 9lb front")
    assert level(in_time, later(on, wait), "seed-over-residue") == ""


def test_it_stands_sixty_days_at_most() -> None:
    diary = book("2026-04-15 treat spring-wall 4lb front", "2026-04-20 seed three-river 9lb front")
    flag = raised(diary, "2026-04-20", "seed-over-residue")
    assert flag is not None
    assert flag.clears_on == later("2026-04-20", 60)
    assert level(diary, later("2026-04-20", 59), "seed-over-residue") == "loss"
    assert level(diary, later("2026-04-20", 60), "seed-over-residue") == ""


def test_the_label_beats_what_is_published() -> None:
    diary = book("2026-08-01 treat leaf-off 2floz front", on=lawn(toml=LABELLED))
    early = book(f"{later('2026-08-01', 41)} seed three-river 9lb front", on=diary)
    flag = raised(early, later("2026-08-01", 41), "seed-over-residue")
    assert flag is not None
    assert flag.numbers["wait"].origin == "label"
    assert flag.basis[0].kind == "label"
    fine = book(f"{later('2026-08-01', 42)} seed three-river 9lb front", on=diary)
    assert level(fine, later("2026-08-01", 42), "seed-over-residue") == ""


def test_the_last_use_counts() -> None:
    diary = book(
        "2026-07-01 treat leaf-off 2floz front", "2026-08-20 treat leaf-off 2floz front",
        "2026-09-06 seed three-river 9lb front",
    )  # fmt: skip
    flag = raised(diary, "2026-09-06", "seed-over-residue")
    assert flag is not None
    assert flag.clears_on == later("2026-08-20", 28)


def test_weed_and_feed_waits_as_its_actives_do() -> None:
    diary = book("2026-08-20 feed green-gate 7lb front", "2026-09-06 seed three-river 9lb front")
    assert level(diary, "2026-09-06", "seed-over-residue") == "loss"


def test_mesotrione_may_go_down_with_the_seed_it_is_listed_for() -> None:
    listed = LAWN.replace('slow = "20% of n"', 'slow = "20% of n"\nactives = ["mesotrione"]')
    diary = book("2026-09-06 feed oat-hill 7lb front", on=lawn(toml=listed))
    assert level(book("2026-09-06 seed three-river 9lb front", on=diary), "2026-09-06", "seed-over-residue") == ""
    fescue = listed.replace('{grass="tall fescue", percent=90}', '{grass="fine fescue", percent=90}')
    diary = book("2026-09-06 feed oat-hill 7lb front", on=lawn(toml=fescue))
    assert level(book("2026-09-06 seed stone-wall 9lb front", on=diary), "2026-09-06", "seed-over-residue") == "loss"


def test_a_spot_is_a_note() -> None:
    spot = book("2026-08-20 treat leaf-off 1floz spot 40sqft front", "2026-09-06 seed three-river 9lb front")
    assert level(spot, "2026-09-06", "seed-over-residue") == "note"
    patch = book("2026-08-20 treat leaf-off 2floz front", "2026-09-06 seed three-river 1lb spot 40sqft front")
    assert level(patch, "2026-09-06", "seed-over-residue") == "note"


def test_slit_seeding_waits_for_the_trials_value() -> None:
    short = LAWN.replace('form = "granule"\n', 'form = "granule"\n[product.label]\nto_seed = "90 d"\n', 1)
    treated = book("2026-05-01 treat spring-wall 4lb front", on=lawn(toml=short))
    on = later("2026-05-01", 100)
    assert level(book(f"{on} seed three-river 9lb front", on=treated), on, "seed-over-residue") == ""
    assert level(book(f"{on} seed three-river slit 9lb front", on=treated), on, "seed-over-residue") == "loss"


def test_an_unknown_product_waits_longest_and_the_draft_says_so() -> None:
    treated = book("2026-04-01 treat unknown by service front")
    found = judged(treated, "2026-09-06", "seed three-river 9lb front")
    assert "seed-over-residue" in {flag.rule for flag in found.raised}


def test_another_zone_is_free() -> None:
    diary = book("2026-08-20 treat leaf-off 2floz back", "2026-09-06 seed three-river 9lb front")
    assert level(diary, "2026-09-06", "seed-over-residue") == ""
