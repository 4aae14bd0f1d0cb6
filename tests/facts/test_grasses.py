"""Grasses by any of their names, and their published heights, rates, days and caps."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from journal.facts.citation import Known
from journal.facts.factors import celsius, g_per_m2, mm
from journal.facts.grasses import GRASSES, Span, UnknownGrass, grass


@pytest.mark.parametrize(
    ("typed", "name"),
    [
        ("kbg", "kentucky bluegrass"),
        ("Kentucky Bluegrass", "kentucky bluegrass"),
        ("PRG", "perennial ryegrass"),
        ("ryegrasses", "perennial ryegrass"),
        ("tttf", "tall fescue"),
        ("turf-type tall fescue", "tall fescue"),
        ("Turf-Type  Tall Fescues", "tall fescue"),
        ("chewings", "fine fescue"),
        ("creeping red fescue", "fine fescue"),
        ("hard fescues", "fine fescue"),
        ("sheep fescue", "fine fescue"),
        ("poa trivialis", "rough bluegrass"),
        ("annual ryegrass", "annual ryegrass"),
        ("bermuda", "bermudagrass"),
        ("zoysia", "zoysiagrass"),
        ("Saint Augustine", "st. augustinegrass"),
        ("centipede", "centipedegrass"),
        ("creeping bentgrass", "bentgrass"),
        ("unknown", "unknown"),
    ],
)
def test_a_grass_answers_to_its_names(typed: str, name: str) -> None:
    assert grass(typed).name == name


@pytest.mark.parametrize(
    ("typed", "near"), [("tal fescu", "tall fescue"), ("kentuky blue", "kentucky bluegrass"), ("clover", "")]
)
def test_a_misspelt_grass_is_refused_with_the_nearest_name(typed: str, near: str) -> None:
    with pytest.raises(UnknownGrass) as caught:
        grass(typed)
    assert (caught.value.word, caught.value.suggestion) == (typed, near)
    assert typed in str(caught.value)


def test_no_name_belongs_to_two_grasses() -> None:
    names = [name for kind in GRASSES for name in (kind.name, *kind.aliases)]
    assert all(grass(name).name == kind.name for kind in GRASSES for name in (kind.name, *kind.aliases))
    assert len(set(names)) == len(names)


@given(st.sampled_from([n for kind in GRASSES for n in (kind.name, *kind.aliases)]), st.booleans())
def test_case_never_matters(name: str, shout: bool) -> None:
    assert grass(name.upper() if shout else f"  {name.title()} ") == grass(name)


CUTS = [
    pytest.param("kbg", 2, 3.5, "purdue-ay8", id="bluegrass: Purdue AY-8 2.5-3.5, Ask Extension never under 2"),
    pytest.param("tall fescue", 2, 4, "purdue-ay8", id="tall fescue: Purdue AY-8 3-4, K-State MF736 2-3"),
    pytest.param("bermuda", 0.5, 2, "uga-grass", id="bermuda: Georgia 1-2, Florida 0.5-1.5"),
    pytest.param("zoysia", 1, 3, "ncsu-lee", id="zoysia: NC State 1, Florida 1-3"),
    pytest.param("st. augustine", 2, 4, "ufl-clay", id="St. Augustine: Florida 3.5-4, NC State 2-3"),
    pytest.param("centipede", 1, 2, "uga-grass", id="centipede: Georgia 1-2"),
]


@pytest.mark.parametrize(("name", "low", "high", "key"), CUTS)
def test_heights_of_cut_as_published(name: str, low: float, high: float, key: str) -> None:
    kind = grass(name)
    assert (kind.low_cut_mm, kind.high_cut_mm) == (mm(low), mm(high))
    assert kind.cut_basis.kind is Known.PUBLISHED
    assert key in {citation.key for citation in kind.cut_basis.citations}


@pytest.mark.parametrize(
    ("name", "high_in", "key"), [("prg", 3.5, "purdue-ay8"), ("fine fescue", 4, "umn-fine-fescue")]
)
def test_a_low_end_that_no_publication_prints_is_called_a_judgment(name: str, high_in: float, key: str) -> None:
    kind = grass(name)
    assert kind.high_cut_mm == mm(high_in)
    assert kind.cut_basis.kind is Known.JUDGMENT
    assert key in {citation.key for citation in kind.cut_basis.citations}


@pytest.mark.parametrize(
    ("name", "days", "kind"),
    [
        pytest.param("prg", 7, Known.PUBLISHED, id="ryegrass 7: Nebraska 7-14, Oregon EC 1550 a week"),
        pytest.param("tttf", 10, Known.PUBLISHED, id="tall fescue 10: Nebraska 5-10 and 10-14"),
        pytest.param("kbg", 21, Known.PUBLISHED, id="bluegrass 21: Nebraska average 21"),
        pytest.param("ff", 10, Known.MEMORY, id="fine fescue 10: from memory"),
        pytest.param("unknown", 21, Known.JUDGMENT, id="unknown 21: bluegrass assumed"),
        pytest.param("bermuda", 14, Known.MEMORY, id="bermuda 14: from memory"),
        pytest.param("rough bluegrass", 14, Known.MEMORY, id="rough bluegrass 14: from memory"),
    ],
)
def test_days_to_emergence(name: str, days: int, kind: Known) -> None:
    assert grass(name).emergence_days == days
    assert grass(name).emergence_basis.kind is kind


@pytest.mark.parametrize(
    ("name", "new", "over"),
    [
        pytest.param(
            "kbg", Span(1, 3), Span(0.5, 1.5), id="bluegrass: Ohio 1-2, California 2-3, half when overseeding"
        ),
        pytest.param("tttf", Span(5, 10), Span(3, 6), id="tall fescue: Maryland 5-7 and 3-4, California 8-10"),
        pytest.param("prg", Span(4, 9), Span(2, 4.5), id="ryegrass: Cornell 4-6, California 6-9"),
        pytest.param("ff", Span(3.5, 5), Span(1.75, 2.5), id="fine fescue: California 3.5-4.5, Wisconsin 4-5"),
        pytest.param("zoysia", Span(1, 2), None, id="zoysia: LSU 1-2"),
        pytest.param("st. augustine", None, None, id="St. Augustine: LSU, no seed sold"),
    ],
)
def test_seeding_rates_in_lb_per_1000_sq_ft(name: str, new: Span | None, over: Span | None) -> None:
    assert grass(name).seed_rate_new_lb_per_k == new
    assert grass(name).overseed_rate_lb_per_k == over


def test_rates_in_metric() -> None:
    span = grass("kbg").seed_rate_new_g_per_m2
    assert span is not None
    assert (round(span.low, 1), round(span.high, 1)) == (4.9, 14.6)
    assert grass("st. augustine").seed_rate_new_g_per_m2 is None
    assert grass("bermuda").overseed_rate_g_per_m2 is None


@pytest.mark.parametrize(
    ("kilograms_per_ha", "pounds"),
    [(12, 0.25), (49, 1.0), (98, 2.0)],
    ids=["Crop Science 2004: 12 kg/ha", "Crop Science 2004: 49 kg/ha", "Crop Science 2004: 98 kg/ha"],
)
def test_research_rates_in_kg_per_ha_meet_the_pound_rates(kilograms_per_ha: float, pounds: float) -> None:
    assert g_per_m2(pounds) == pytest.approx(kilograms_per_ha / 10, rel=0.02)


@pytest.mark.parametrize(
    ("name", "cap", "key"),
    [
        pytest.param("kbg", 2.7, "umd-schedule", id="bluegrass 2.7: Maryland"),
        pytest.param("tttf", 2.7, "umd-schedule", id="tall fescue 2.7: Maryland"),
        pytest.param("ff", 1.4, "umd-schedule", id="fine fescue 1.4: Maryland"),
        pytest.param("zoysia", 1.8, "umd-schedule", id="zoysia 1.8: Maryland"),
        pytest.param("bermuda", 2.7, "umd-schedule", id="bermuda 2.7: Maryland"),
        pytest.param("st. augustine", 2.5, "ncsu-caring", id="St. Augustine 2.5: North Carolina"),
        pytest.param("centipede", 0.5, "ncsu-caring", id="centipede 0.5: North Carolina"),
    ],
)
def test_yearly_nitrogen_caps_as_published(name: str, cap: float, key: str) -> None:
    kind = grass(name)
    assert kind.nitrogen_cap_lb_per_k == cap
    assert kind.nitrogen_basis.kind is Known.PUBLISHED
    assert key in {citation.key for citation in kind.nitrogen_basis.citations}


def test_the_cap_of_a_grass_that_the_schedule_leaves_out_is_called_a_judgment() -> None:
    assert grass("prg").nitrogen_cap_lb_per_k == 2.7
    assert grass("prg").nitrogen_basis.kind is Known.JUDGMENT


def test_components_that_nobody_wants_are_marked() -> None:
    assert {kind.name for kind in GRASSES if kind.unwanted} == {"annual ryegrass", "rough bluegrass"}


def test_low_ends_lie_below_high_ends() -> None:
    for kind in GRASSES:
        assert 0 < kind.low_cut_mm < kind.high_cut_mm, kind.name
        for span in (kind.seed_rate_new_lb_per_k, kind.overseed_rate_lb_per_k):
            assert span is None or 0 < span.low < span.high, kind.name


def test_factors_are_exact() -> None:
    """NIST SP 811: 25.4 mm, 453.59237 g, 0.3048 m."""
    assert mm(1) == 25.4
    assert mm(3.5) == 88.9
    assert g_per_m2(1) == pytest.approx(4.882427636, abs=1e-9)
    assert g_per_m2(0.9) == pytest.approx(4.3942, abs=5e-5)
    assert (celsius(32), celsius(50), celsius(212)) == (0, 10, 100)
