"""Phosphorus wants a reason: a sowing near it, or a soil test whose category is low."""

import pytest

from journal.season.history import History
from tests.rules.soil_shed import SHED
from tests.scenario import LAWN, book, draft, judged, later, lawn, level, raised, rules_raised, the

FED = "2026-06-10 feed oat-hill 7lb front"


def under(place: str, more: str = "", toml: str = LAWN) -> History:
    return lawn(('name = "North Lane"', f'name = "North Lane"\nlocal_rules = "{place}"{more}'), toml=toml)


def phosphate(history: History, on: str = "2026-06-10") -> str:
    return level(history, on, "phosphate-reason")


def test_a_starter_on_an_old_lawn_is_a_note_for_thirty_days() -> None:
    diary = book(FED)
    assert [phosphate(diary, str(later(FED[:10], at))) for at in (-1, 0, 29, 30)] == ["", "note", "note", ""]
    flag = raised(diary, "2026-06-10", "phosphate-reason")
    assert flag is not None
    assert flag.subject == "oat-hill"
    assert "24 % phosphate" in flag.why
    assert str(flag.clears_on) == "2026-07-10"


def test_nothing_is_said_of_a_fertilizer_without_phosphorus() -> None:
    assert phosphate(book("2026-06-10 feed pond-ridge 5lb front", "2026-06-11 feed grey-lime 20lb front",
                          on=lawn(toml=SHED)), "2026-06-12") == ""  # fmt: skip


@pytest.mark.parametrize(("percent", "expected"), [("0.67", ""), ("0.68", "note")])
def test_above_0_67_percent_it_is_a_phosphorus_fertilizer(percent: str, expected: str) -> None:
    """Vermont Agency of Agriculture, Phosphorous Fertilizer Information - Turf (10 V.S.A. s.1266b)."""
    thin = lawn(('analysis = "24-0-11"\n\n[[product]]\nname = "slow-oak"',
                 f'analysis = "24-{percent}-11"\n\n[[product]]\nname = "slow-oak"'))  # fmt: skip
    assert phosphate(book("2026-06-10 feed pond-ridge 5lb front", on=thin)) == expected


@pytest.mark.parametrize(("apart", "expected"), [(-30, "note"), (-29, ""), (0, ""), (29, ""), (30, "note")])
def test_a_sowing_within_thirty_days_on_either_side_is_a_reason(apart: int, expected: str) -> None:
    sown = later("2026-08-20", apart)
    diary = book(f"{sown} seed three-river 9lb front", "2026-08-20 feed oat-hill 7lb front")
    assert phosphate(diary, str(max(sown, later("2026-08-20", 0)))) in ("", expected)
    assert phosphate(diary, "2026-09-18") == expected


def test_so_is_a_sowing_that_is_meant_and_a_patch() -> None:
    meant = book("2026-08-01 intend seed three-river 2026-09-06 front", "2026-08-10 feed oat-hill 7lb front")
    assert phosphate(meant, "2026-08-10") == ""
    patch = book("2026-06-01 seed three-river 0.5lb spot 20sqft front", FED)
    assert phosphate(patch) == ""


def test_a_dormant_sowing_counts_from_growth_start_as_its_starter_does() -> None:
    diary = book("2026-01-20 seed quick-rye 9lb front", "2026-04-15 feed oat-hill 7lb front")
    assert phosphate(diary, "2026-04-15") == ""


@pytest.mark.parametrize(
    ("test", "expected"),
    [
        ("p low", ""), ("p very-low", ""), ("p medium", "note"), ("p high", "note"),
        ("p 12ppm", "note"),  # a laboratory's figure means nothing without its method: no category, no reason
        ("k low", "note"),
    ],
)  # fmt: skip
def test_a_soil_test_speaks_by_the_laboratorys_own_category(test: str, expected: str) -> None:
    assert phosphate(book(f"2026-03-01 soil {test} front", FED)) == expected


@pytest.mark.parametrize(("days", "expected"), [(1094, ""), (1095, "note")])
def test_for_three_years(days: int, expected: str) -> None:
    """Minn. Stat. s.18C.60 and others: three years, 36 months."""
    diary = book(f"{later('2026-06-10', -days)} soil p low front", FED)
    assert phosphate(diary) == expected


def test_or_for_as_long_as_the_local_rule_says() -> None:
    old = f"{later('2026-06-10', -560)} soil p low front"
    assert phosphate(book(old, FED)) == ""
    assert phosphate(book(old, FED, on=under("us-vt"))) == "harm"
    connecticut = f"{later('2026-06-10', -740)} soil p low front"
    assert phosphate(book(connecticut, FED, on=under("us-ct"))) == "harm"


def test_a_binding_local_rule_makes_it_harm_and_holds_the_line_back() -> None:
    found = judged(under("us-md"), "2026-06-10", "feed oat-hill 7lb front")
    assert found.holds_back
    flag = next(flag for flag in found.raised if flag.rule == "phosphate-reason")
    assert "Maryland" in flag.why
    assert flag.do.endswith("Check with your local authority.")


@pytest.mark.parametrize("place", ["us-me", "us-il", "us-va"])
def test_one_for_sellers_or_for_hire_or_from_memory_leaves_it_a_note(place: str) -> None:
    assert phosphate(book(FED, on=under(place))) == "note"


@pytest.mark.parametrize("place", ["us-ny", "us-vt", "us-mn", "us-wi", "us-mi"])
def test_where_only_a_new_lawn_is_named_overseeding_is_a_note_and_a_new_lawn_none(place: str) -> None:
    """That overseeding is no reason there is our reading of the wordings, so that it is never called harm."""
    over = book("2026-08-20 seed three-river 9lb front", "2026-08-21 feed oat-hill 7lb front", on=under(place))
    assert phosphate(over, "2026-08-22") == "note"
    new = book("2026-08-20 seed three-river 9lb new front", "2026-08-21 feed oat-hill 7lb front", on=under(place))
    assert phosphate(new, "2026-08-22") == ""


def test_where_repair_is_named_overseeding_is_a_reason() -> None:
    diary = book("2026-08-20 seed three-river 9lb front", "2026-08-21 feed oat-hill 7lb front", on=under("us-md"))
    assert phosphate(diary, "2026-08-22") == ""


def test_in_a_stands_first_season_a_law_may_allow_more() -> None:
    sown = "2026-04-20 seed three-river 9lb front"
    assert phosphate(book(sown, FED, on=under("us-md"))) == "note"


def test_the_owners_own_word_on_overseeding_counts() -> None:
    over = ("2026-08-20 seed three-river 9lb front", "2026-08-21 feed oat-hill 7lb front")
    assert phosphate(book(*over, on=under("none", "\nlocal_seeding = false")), "2026-08-22") == "harm"
    assert phosphate(book(*over, on=under("none", "\nlocal_seeding = true")), "2026-08-22") == ""


def test_the_owners_own_days_tighten_and_never_loosen_a_law() -> None:
    sown = "2026-05-16 seed three-river 9lb front"
    assert phosphate(book(sown, FED)) == ""
    assert phosphate(book(sown, "2026-05-01 set phosphate-reason seeding-days 10", FED)) == "note"
    far = "2026-04-20 seed three-river 9lb front"
    assert phosphate(book(far, "2026-05-01 set phosphate-reason seeding-days 60", FED)) == ""
    assert phosphate(book(far, "2026-05-01 set phosphate-reason seeding-days 60", FED, on=under("us-md"))) == "note"


def test_a_low_test_or_a_sowing_afterwards_clears_it() -> None:
    diary = book(FED)
    assert phosphate(book("2026-06-20 soil p low front", on=diary), "2026-06-20") == ""
    assert phosphate(book("2026-06-20 seed three-river 9lb front", on=diary), "2026-06-20") == ""


def test_a_starter_without_an_analysis_is_asked_but_never_blamed() -> None:
    bare = under("us-md", toml=LAWN.replace('analysis = "18-24-6"\nslow = "20% of n"\n', ""))
    assert phosphate(book("2026-06-10 feed oat-hill 7lb front", on=bare)) == "note"


def test_it_stands_in_the_place_of_the_stale_soil_test_even_after_it_cleared() -> None:
    old = lawn(set_up="2020-01-01")
    diary = book(FED, on=old)
    assert rules_raised(diary, "2026-06-12") & {"phosphate-reason", "soil-test-stale"} == {"phosphate-reason"}
    assert rules_raised(diary, "2026-07-20") & {"phosphate-reason", "soil-test-stale"} == set()


def test_no_starter_that_the_plan_offers_is_one_that_lacks_a_reason() -> None:
    for place in ("none", "us-md", "us-vt", "us-mn", "us-fl-pinellas"):
        diary = book("2026-08-20 seed three-river 9lb front", on=under(place))
        step = the(diary, "2026-08-21", "starter")
        if step.line:
            raised_by = judged(diary, "2026-08-21", step.line).raised
            assert "phosphate-reason" not in {flag.rule for flag in raised_by}, place


def test_a_fertilizer_without_phosphorus_is_offered_before_one_with_it() -> None:
    both = lawn(('name = "pond-ridge"\nkind = "fertilizer"\nanalysis = "24-0-11"',
                 'name = "old-bag"\nkind = "fertilizer"\nanalysis = "24-6-11"\n\n[[product]]\n'
                 'name = "pond-ridge"\nkind = "fertilizer"\nanalysis = "24-0-11"'))  # fmt: skip
    step = the(book("2026-03-01 soil p high", "2026-04-12 feed old-bag 7lb front", on=both), "2026-06-20", "feed")
    assert step.line.startswith("feed pond-ridge ")
    assert draft(both, f"2026-06-20 {step.line}").kind == "feeding"
