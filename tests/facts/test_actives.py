"""Actives by any of their names: waits on new grass, water, yearly limits, injury, and what stands behind each."""

import pytest

from journal.facts.actives import ACTIVES, UnknownActive, active, fallback
from journal.facts.citation import Known
from journal.facts.factors import mm
from journal.facts.grasses import GRASSES
from journal.facts.injuries import INJURIES, injured

BLUE = {"kentucky bluegrass": 100.0}
NAMES = [one.name for one in ACTIVES]


@pytest.mark.parametrize(
    ("typed", "name"),
    [
        ("2,4-D", "2,4-d"),
        ("MCPP", "mecoprop-p"),
        ("Mesotrione", "mesotrione"),
        (" prodiamine ", "prodiamine"),
        ("FeHEDTA", "iron hedta"),
        ("cgm", "corn gluten meal"),
    ],
)
def test_an_active_answers_to_its_names(typed: str, name: str) -> None:
    assert active(typed).name == name


def test_a_misspelt_active_is_refused_with_the_nearest_name() -> None:
    with pytest.raises(UnknownActive, match="Did you mean prodiamine") as caught:
        active("prodiamin")
    assert caught.value.suggestion == "prodiamine"


def test_every_active_of_the_trade_list_is_here() -> None:
    assert set(NAMES) == {
        "mesotrione", "topramezone", "2,4-d", "mecoprop-p", "dicamba", "triclopyr", "clopyralid", "quinclorac",
        "sulfentrazone", "carfentrazone", "halosulfuron", "fenoxaprop", "prodiamine", "dithiopyr", "pendimethalin",
        "siduron", "corn gluten meal", "glyphosate", "iron hedta", "chlorantraniliprole", "imidacloprid",
        "trichlorfon", "azoxystrobin", "propiconazole",
    }  # fmt: skip
    assert len(set(NAMES)) == len(NAMES)


@pytest.mark.parametrize(
    ("kind", "mowings", "days", "repeat", "year"),
    [
        ("pre-emergent", 4, 60, 60, 2),
        ("weed", 4, 28, 28, 2),
        ("weed-and-feed", 4, 28, 28, 2),
        ("insect", 4, 0, 90, 1),
        ("disease", 2, 0, 14, 2),
    ],
)
def test_unknown_products_on_new_grass_and_again(kind: str, mowings: int, days: int, repeat: int, year: int) -> None:
    unknown = fallback(kind)
    assert (unknown.new_grass_mowings, unknown.new_grass_days_after_emergence) == (mowings, days)
    assert (unknown.repeat_days, unknown.max_per_year) == (repeat, year)
    assert not unknown.never_on_turf
    assert unknown.basis.kind is Known.JUDGMENT


def test_a_non_selective_product_is_never_for_turf() -> None:
    assert fallback("nonselective").never_on_turf
    assert fallback("nonselective").repeat_days == 14
    assert active("glyphosate").never_on_turf


@pytest.mark.parametrize(
    ("name", "mowings", "days"),
    [
        pytest.param("2,4-d", 3, 0, id="2,4-D: label second to third mowing"),
        pytest.param("mcpp", 3, 0, id="mecoprop-p: Purdue Part III 2 to 3 mowings"),
        pytest.param("dicamba", 3, 0, id="dicamba: Purdue Part III 2 to 3 mowings"),
        pytest.param("siduron", 0, 0, id="siduron: Purdue Part II, at seeding"),
    ],
)
def test_published_waits_on_new_grass(name: str, mowings: int, days: int) -> None:
    one = active(name)
    assert (one.new_grass_mowings, one.new_grass_days_after_emergence) == (mowings, days)
    assert one.new_grass_basis.kind is Known.PUBLISHED


@pytest.mark.parametrize(
    ("name", "mowings", "days"),
    [
        ("mesotrione", 2, 28),
        ("topramezone", 0, 28),
        ("triclopyr", 4, 0),
        ("quinclorac", 0, 28),
        ("sulfentrazone", 3, 0),
        ("carfentrazone", 0, 28),
        ("halosulfuron", 4, 0),
        ("fenoxaprop", 3, 28),
        ("prodiamine", 3, 60),
        ("dithiopyr", 3, 0),
        ("pendimethalin", 4, 0),
        ("corn gluten meal", 4, 0),
        ("iron hedta", 4, 0),
    ],
)
def test_unconfirmed_waits_on_new_grass_say_so(name: str, mowings: int, days: int) -> None:
    one = active(name)
    assert (one.new_grass_mowings, one.new_grass_days_after_emergence) == (mowings, days)
    assert one.new_grass_basis.kind in (Known.MEMORY, Known.JUDGMENT)


@pytest.mark.parametrize(
    ("name", "key"),
    [
        pytest.param("prodiamine", "label-40896", id="prodiamine: granule label"),
        pytest.param("dithiopyr", "label-82181", id="dithiopyr: granule label"),
        pytest.param("imidacloprid", "illinois-220", id="imidacloprid: Illinois article 220"),
        pytest.param("chlorantraniliprole", "illinois-220", id="chlorantraniliprole: Illinois article 220"),
        pytest.param("trichlorfon", "illinois-243", id="trichlorfon: Illinois article 243"),
    ],
)
def test_half_an_inch_of_water_as_published(name: str, key: str) -> None:
    one = active(name)
    assert one.water_in_mm == mm(0.5)
    assert not one.leaf_applied
    assert one.water_basis is not None
    assert [citation.key for citation in one.water_basis.citations] == [key]


@pytest.mark.parametrize("name", ["pendimethalin", "siduron"])
def test_half_an_inch_of_water_from_memory(name: str) -> None:
    one = active(name)
    assert one.water_in_mm == mm(0.5)
    assert one.water_basis is not None
    assert one.water_basis.kind is Known.MEMORY


def test_mesotrione_has_a_published_yearly_amount() -> None:
    """HortScience 53(11): 560 g/ha a year, which is half a pound per acre."""
    one = active("mesotrione")
    assert one.yearly_lb_per_acre == pytest.approx(560 / 453.59237 * 0.40468564224, abs=0.001)
    assert one.year_basis is not None
    assert one.year_basis.kind is Known.PUBLISHED


def test_iron_may_be_used_four_times_four_weeks_apart() -> None:
    """Univ. of Maryland Extension, Iron-Based Herbicides, 2022."""
    one = active("fehedta")
    assert one.repeat_days is not None
    assert (one.max_per_year, one.repeat_days.low) == (4, 28)
    assert one.year_basis is not None
    assert one.year_basis.kind is Known.PUBLISHED


def test_what_is_put_on_leaves_is_never_to_be_watered_in() -> None:
    assert all(not (one.leaf_applied and one.water_in_mm) for one in ACTIVES)


def test_numbers_and_their_bases_come_together() -> None:
    for one in ACTIVES:
        assert (one.repeat_days is None) == (one.repeat_basis is None), one.name
        assert (one.water_in_mm is None) == (one.water_basis is None), one.name
        assert (one.seed_wait_split_days is None) == (one.split_basis is None), one.name
        assert (one.seed_wait_trial_slit_days is None) == (one.slit_basis is None), one.name
        assert (one.fescue_limit_percent is None) == (one.fescue_basis is None), one.name
        assert bool(one.wait_by_grass) == (one.listed_basis is not None), one.name
        assert (one.year_basis is not None) == bool(one.max_per_year or one.yearly_lb_per_acre), one.name
        assert {name for name, _ in one.wait_by_grass} <= {kind.name for kind in GRASSES}, one.name


def test_clopyralid_is_no_active_for_a_home_lawn() -> None:
    assert [one.name for one in ACTIVES if not one.home_lawn] == ["clopyralid"]


def test_grasses_injured_are_named_and_single_trials_marked() -> None:
    assert {one.active for one in INJURIES} <= set(NAMES)
    assert {one.grass for one in INJURIES} <= {kind.name for kind in GRASSES}
    (tall_fescue,) = injured("mesotrione", {"tttf": 95, "fine fescue": 5})
    assert tall_fescue.one_trial
    (bent,) = injured("MCPP", {"creeping bentgrass": 10, "kbg": 90})
    assert not bent.one_trial
    assert injured("mcpp", {"bentgrass": 9, "kbg": 91}) == ()
    assert injured("something new", BLUE) == ()
