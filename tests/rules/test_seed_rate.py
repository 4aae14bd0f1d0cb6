"""How thick. Ranges for overseeding and bare soil: Univ. of Maryland Extension, 2017; Univ. of California IPM, 2017;
Cornell Univ., Seeding rates; K-State Extension, 2019. Pure live seed: LSU AgCenter. A quarter beside them: judgment.
"""

import pytest

from journal.facts.factors import g_per_m2
from journal.reckon.seed_rate import bare_soil_range, overseeding_range
from tests.scenario import LAWN, book, judged, later, lawn, level, raised

ON = "2026-08-20"
FESCUE = LAWN + '\n[[product]]\nname = "broad-leaf"\nkind = "seed"\nmix = [{grass="tall fescue", percent=98}]\n'


def test_published_ranges_are_weighed_by_share() -> None:
    fescue = overseeding_range({"tall fescue": 100})  # 3 to 4 lb Maryland, 4 to 6 lb K-State
    assert fescue is not None
    assert (fescue.low, fescue.high) == pytest.approx((g_per_m2(3), g_per_m2(6)))
    half = overseeding_range({"kentucky bluegrass": 50, "perennial ryegrass": 50})  # 0.5 to 1.5 and 2 to 4.5
    assert half is not None
    assert (half.low, half.high) == pytest.approx((g_per_m2(1.25), g_per_m2(3)))
    bare = bare_soil_range({"tall fescue": 90, "kentucky bluegrass": 10})  # 5 to 10 and 1 to 3
    assert bare is not None
    assert (bare.low, bare.high) == pytest.approx((g_per_m2(4.6), g_per_m2(9.3)))
    assert overseeding_range({"unknown": 100}) is None
    assert overseeding_range({"zoysiagrass": 100}) is None


@pytest.mark.parametrize(
    ("rate", "expected"),
    [("2lb/k", "note"), ("2.3lb/k", ""), ("6lb/k", ""), ("7.6lb/k", ""), ("8lb/k", "note"), ("12lb/k", "note"),
     ("13lb/k", "loss")],
)  # fmt: skip
def test_a_quarter_beside_the_range_and_twice_the_high(rate: str, expected: str) -> None:
    diary = book(f"{ON} seed broad-leaf {rate} front", on=lawn(toml=FESCUE))
    assert level(diary, ON, "seed-rate") == expected


def test_an_amount_is_taken_over_the_zone() -> None:
    diary = book(f"{ON} seed broad-leaf 24lb front", on=lawn(toml=FESCUE))
    flag = raised(diary, ON, "seed-rate")
    assert flag is not None
    assert flag.why.startswith("10 lb/k Thu 20 Aug; published is 3 to 6")
    metric = lawn(('name = "North Lane"', 'name = "North Lane"\nunits = "metric"'), toml=FESCUE)
    said = raised(book(f"{ON} seed broad-leaf 49g/m2 front", on=metric), ON, "seed-rate")
    assert said is not None
    assert said.why.startswith("49 g/m2 Thu 20 Aug; published is 15 to 29")


def test_it_stands_sixty_days() -> None:
    diary = book(f"{ON} seed broad-leaf 10lb/k front", on=lawn(toml=FESCUE))
    assert [level(diary, later(ON, at), "seed-rate") for at in (59, 60)] == ["note", ""]


def test_bare_soil_takes_more_and_dormant_seed_half_as_much_again() -> None:
    shed = lawn(toml=FESCUE)
    assert level(book(f"{ON} seed broad-leaf new 9lb/k front", on=shed), ON, "seed-rate") == ""
    assert level(book(f"{ON} seed broad-leaf new 3lb/k front", on=shed), ON, "seed-rate") == "note"
    assert level(book("2026-12-01 seed broad-leaf 11lb/k front", on=shed), "2026-12-01", "seed-rate") == ""
    assert level(book("2026-12-01 seed broad-leaf 12lb/k front", on=shed), "2026-12-01", "seed-rate") == "note"


def test_of_a_spot_it_is_not_known_whether_it_was_bare() -> None:
    shed = lawn(toml=FESCUE)
    for amount, expected in (("0.4lb", ""), ("0.12lb", ""), ("0.7lb", "note"), ("0.06lb", "note")):
        spot = book(f"{ON} seed broad-leaf {amount} spot 40sqft front", on=shed)
        assert level(spot, ON, "seed-rate") == expected, amount
    assert level(book(f"{ON} seed broad-leaf 5lb spot front", on=shed), ON, "seed-rate") == ""


def test_a_spot_is_a_note_at_most() -> None:
    assert level(book(f"{ON} seed broad-leaf 3lb spot 20sqft front", on=lawn(toml=FESCUE)), ON, "seed-rate") == "note"


def test_the_labels_range_goes_first() -> None:
    labelled = lawn(('name = "three-river"\n', 'name = "three-river"\nrate = "3lb/k 5lb/k"\n'))
    assert level(book(f"{ON} seed three-river 4lb/k front"), ON, "seed-rate") == "note"
    diary = book(f"{ON} seed three-river 4lb/k front", on=labelled)
    assert level(diary, ON, "seed-rate") == ""
    thick = raised(book(f"{ON} seed three-river 7lb/k front", on=labelled), ON, "seed-rate")
    assert thick is not None
    assert "the label says 3 to 5" in thick.why


def test_pure_live_seed_where_the_label_means_that() -> None:
    # 48 % pure, 80 % germination: 0.384 of the bag is alive, LSU AgCenter, Pure Live Seed Calculation
    pls = FESCUE.replace("percent=98}]\n", 'percent=98}]\nrate_basis = "pls"\npurity = 48\ngermination = 80\n')
    assert level(book(f"{ON} seed broad-leaf 12lb/k front", on=lawn(toml=pls)), ON, "seed-rate") == ""
    assert level(book(f"{ON} seed broad-leaf 5lb/k front", on=lawn(toml=pls)), ON, "seed-rate") == "note"
    lot = book("2026-08-01 buy broad-leaf 1x 20lb pure 96 germ 90", on=lawn(toml=pls))
    assert level(book(f"{ON} seed broad-leaf 5lb/k front", on=lot), ON, "seed-rate") == ""
    assert level(book(f"{ON} seed broad-leaf 12lb/k front", on=lot), ON, "seed-rate") == "note"
    blank = FESCUE.replace("percent=98}]\n", 'percent=98}]\nrate_basis = "pls"\n')
    assert level(book(f"{ON} seed broad-leaf 30lb/k front", on=lawn(toml=blank)), ON, "seed-rate") == ""


def test_two_passes_at_half_the_rate_are_one_sowing_and_parts_are_a_whole() -> None:
    shed = lawn(toml=FESCUE)
    passes = book(*[f"{ON} seed broad-leaf 2lb/k front"] * 2, on=shed)
    assert level(passes, ON, "seed-rate") == ""
    parts = book(*[f"{ON} seed broad-leaf 5lb part {at}/2 front" for at in (1, 2)], on=shed)
    assert level(parts, ON, "seed-rate") == ""
    heavy = book(*[f"{ON} seed broad-leaf 15lb part {at}/2 front" for at in (1, 2)], on=shed)
    assert level(heavy, ON, "seed-rate") == "loss"  # 12.5 lb/k


def test_a_top_up_may_be_thin() -> None:
    topped = book(
        f"{ON} seed broad-leaf 5lb/k front", f"{later(ON, 12)} seed broad-leaf 1lb/k front", on=lawn(toml=FESCUE)
    )
    assert level(topped, later(ON, 12), "seed-rate") == ""


def test_without_an_area_or_an_amount_nothing_is_said() -> None:
    blank = lawn(('area = "2400 sqft"\n', ""), toml=FESCUE)
    assert level(book(f"{ON} seed broad-leaf 90lb front", on=blank), ON, "seed-rate") == ""
    assert level(book(f"{ON} seed broad-leaf front", on=lawn(toml=FESCUE)), ON, "seed-rate") == ""


def test_the_owners_own_numbers() -> None:
    own = book(f"{ON} set seed-rate over 1.6", on=lawn(toml=FESCUE))
    assert level(book(f"{ON} seed broad-leaf 9lb/k front", on=own), ON, "seed-rate") == ""


def test_it_is_told_before_it_is_saved() -> None:
    found = judged(lawn(toml=FESCUE), ON, "seed broad-leaf 13lb/k front")
    assert ("seed-rate", "loss") in {(flag.rule, str(flag.level)) for flag in found.raised}
    assert not found.holds_back
