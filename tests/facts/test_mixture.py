"""What a mixture of grasses asks for: cut, emergence, nitrogen; and how alike two mixtures are."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from journal.facts import mixture
from journal.facts.factors import mm
from journal.facts.grasses import GRASSES, UnknownGrass

FESCUE_BLUE = {"tall fescue": 90, "kentucky bluegrass": 10}
SHADE = {"chewings fescue": 30, "creeping red fescue": 30, "kentucky bluegrass": 40}

KNOWN = [kind.name for kind in GRASSES if kind.name != "unknown"]
mixes = st.dictionaries(st.sampled_from(KNOWN), st.integers(0, 100).map(float), min_size=1, max_size=5)


def test_low_end_is_the_highest_low_end_among_grasses_of_ten_percent() -> None:
    assert mixture.low_end_mm({"prg": 90, "kbg": 10}) == mm(2)
    assert mixture.low_end_mm({"prg": 91, "kbg": 9}) == mm(1.5)
    assert mixture.low_end_mm({"bentgrass": 95, "tall fescue": 5}) == mm(0.5)


def test_high_end_is_the_highest_high_end() -> None:
    assert mixture.high_end_mm({"kbg": 100}) == mm(3.5)
    assert mixture.high_end_mm(FESCUE_BLUE) == mm(4)


def test_the_slowest_grass_sets_emergence() -> None:
    assert mixture.slowest_emergence_days(FESCUE_BLUE) == 21
    assert mixture.slowest_emergence_days({"prg": 50, "tttf": 50}) == 10
    assert mixture.slowest_emergence_days({"prg": 100}) == 7
    assert mixture.slowest(FESCUE_BLUE).name == "kentucky bluegrass"


@pytest.mark.parametrize("lawn", [{}, {"unknown": 100}, {"unknown": 40, "tall fescue": 60}])
def test_an_unknown_lawn_is_taken_to_have_bluegrass(lawn: dict[str, float]) -> None:
    assert mixture.is_unknown(lawn)
    assert mixture.has_bluegrass(lawn)
    assert mixture.bluegrass_percent(lawn) == 0
    assert mixture.slowest_emergence_days(lawn) == 21
    assert mixture.low_end_mm(lawn) == mm(2)


def test_bluegrass_means_kentucky_bluegrass() -> None:
    assert mixture.has_bluegrass({"kbg": 1, "tttf": 99})
    assert mixture.bluegrass_percent(SHADE) == 40
    assert not mixture.has_bluegrass({"rough bluegrass": 5, "tttf": 95})
    assert not mixture.has_bluegrass({"tttf": 100, "kbg": 0})


def test_the_fine_fescues_count_together() -> None:
    assert mixture.fine_fescue_percent(SHADE) == 60
    assert mixture.shares(SHADE) == {"fine fescue": 60, "kentucky bluegrass": 40}


@pytest.mark.parametrize(
    ("lawn", "cap"),
    [
        ({"fine fescue": 100}, 1.4),
        (SHADE, 1.4),
        ({"fine fescue": 50, "kbg": 50}, 2.7),
        (FESCUE_BLUE, 2.7),
        ({"unknown": 100}, 2.7),
        ({}, 2.7),
        ({"zoysia": 100}, 1.8),
    ],
)
def test_fine_fescue_above_half_lowers_the_nitrogen_cap(lawn: dict[str, float], cap: float) -> None:
    assert mixture.nitrogen_cap(lawn).nitrogen_cap_lb_per_k == cap


def test_overlap_is_the_sum_of_the_smaller_shares() -> None:
    assert mixture.overlap_percent(FESCUE_BLUE, {"tall fescue": 60, "perennial ryegrass": 40}) == 60
    assert mixture.overlap_percent(FESCUE_BLUE, {"prg": 70, "fine fescue": 30}) == 0
    assert mixture.overlap_percent({"unknown": 100}, {"unknown": 100}) == 0


def test_same_seed_bears_five_points_and_no_other_grass() -> None:
    assert mixture.same_seed(FESCUE_BLUE, {"tttf": 95, "kbg": 5})
    assert not mixture.same_seed(FESCUE_BLUE, {"tttf": 84.9, "kbg": 15.1})
    assert not mixture.same_seed(FESCUE_BLUE, {"tttf": 90, "kbg": 9, "prg": 1})
    assert mixture.same_seed(FESCUE_BLUE, {"tttf": 80, "kbg": 20}, points=10)


def test_an_unknown_mixture_is_never_the_same_seed() -> None:
    assert not mixture.same_seed({"unknown": 100}, {"unknown": 100})
    assert not mixture.same_seed({}, {})


@pytest.mark.parametrize("percent", [-1, 101, float("nan"), float("inf")])
def test_a_share_that_is_no_percentage_is_refused(percent: float) -> None:
    with pytest.raises(ValueError, match="kbg"):
        mixture.shares({"kbg": percent})


def test_a_grass_that_is_not_known_is_refused_by_name() -> None:
    with pytest.raises(UnknownGrass, match="fescoo"):
        mixture.low_end_mm({"fescoo": 100})


@given(mixes, mixes)
def test_overlap_is_the_same_both_ways_and_never_more_than_either(a: dict[str, float], b: dict[str, float]) -> None:
    overlap = mixture.overlap_percent(a, b)
    assert overlap == pytest.approx(mixture.overlap_percent(b, a))
    assert 0 <= overlap <= min(sum(a.values()), sum(b.values())) + 1e-9


@given(mixes)
def test_a_mixture_overlaps_itself_wholly(a: dict[str, float]) -> None:
    assert mixture.overlap_percent(a, a) == pytest.approx(sum(a.values()))


@given(mixes, mixes)
def test_same_seed_is_the_same_both_ways(a: dict[str, float], b: dict[str, float]) -> None:
    assert mixture.same_seed(a, b) == mixture.same_seed(b, a)


@given(mixes, st.data())
def test_a_lot_within_five_points_is_the_same_seed(a: dict[str, float], data: st.DataObject) -> None:
    sown = {name: share for name, share in a.items() if 6 <= share <= 95} or {"tall fescue": 50.0}
    lot = {name: share + data.draw(st.floats(-5, 5)) for name, share in sown.items()}
    assert mixture.same_seed(sown, sown)
    assert mixture.same_seed(sown, lot)
    assert mixture.overlap_percent(sown, lot) >= sum(sown.values()) - 5 * len(sown) - 1e-6


@given(mixes)
def test_the_order_of_the_label_never_matters(a: dict[str, float]) -> None:
    turned = dict(reversed(a.items()))
    assert mixture.low_end_mm(a) == mixture.low_end_mm(turned)
    assert mixture.shares(a) == mixture.shares(turned)
    assert list(mixture.shares(a)) == list(mixture.shares(turned))


@given(mixes)
def test_the_ends_of_a_mixture_are_those_of_its_grasses(a: dict[str, float]) -> None:
    lows = {kind.low_cut_mm for kind in GRASSES}
    assert mixture.low_end_mm(a) in lows
    assert mixture.low_end_mm(a) <= mixture.high_end_mm(a)
