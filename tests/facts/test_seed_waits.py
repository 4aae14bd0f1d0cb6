"""The waits before sowing: the longest over all actives, by grass, by kind, after a split, in slits."""

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from journal.facts.active import Use
from journal.facts.actives import ACTIVES, NO_WAIT_BY, active, seed_wait, seed_wait_after_split, slit_trial_wait
from journal.facts.citation import Known

BLUE = {"kentucky bluegrass": 100.0}
FESCUE = {"tall fescue": 90.0, "kentucky bluegrass": 10.0}
NAMES = [one.name for one in ACTIVES]


PUBLISHED_WAITS = [
    pytest.param("prodiamine", BLUE, 210, "delaware-renovation", id="prodiamine 210: Delaware 4 to 7 months"),
    pytest.param("dithiopyr", BLUE, 120, "delaware-renovation", id="dithiopyr 120: Delaware 3 to 4 months"),
    pytest.param("2,4-d", BLUE, 28, "label-80081", id="2,4-D 28: label 3 to 4 weeks"),
    pytest.param("glyphosate", BLUE, 7, "mercury-2020", id="glyphosate 7: The Mercury, most labels"),
    pytest.param("quinclorac", BLUE, 7, "delaware-spring", id="quinclorac 7: Delaware before bluegrass"),
    pytest.param("siduron", BLUE, 0, "purdue-part-2", id="siduron 0: Purdue Part II, at seeding"),
    pytest.param("mesotrione", BLUE, 0, "delaware-spring", id="mesotrione 0: Delaware, at seeding"),
]


@pytest.mark.parametrize(("name", "sown", "days", "key"), PUBLISHED_WAITS)
def test_published_waits_before_sowing(name: str, sown: dict[str, float], days: int, key: str) -> None:
    wait = seed_wait([name], active(name).use, sown)
    assert (wait.days, wait.by) == (days, name)
    assert wait.basis.kind is Known.PUBLISHED
    assert key in {citation.key for citation in wait.basis.citations}


@pytest.mark.parametrize(
    ("name", "days", "kind"),
    [
        ("mecoprop-p", 28, Known.MEMORY),
        ("dicamba", 28, Known.MEMORY),
        ("clopyralid", 28, Known.MEMORY),
        ("pendimethalin", 120, Known.MEMORY),
        ("corn gluten meal", 42, Known.MEMORY),
        ("topramezone", 28, Known.JUDGMENT),
        ("triclopyr", 28, Known.JUDGMENT),
        ("sulfentrazone", 60, Known.JUDGMENT),
        ("carfentrazone", 7, Known.JUDGMENT),
        ("halosulfuron", 42, Known.JUDGMENT),
        ("fenoxaprop", 28, Known.JUDGMENT),
        ("iron hedta", 14, Known.JUDGMENT),
    ],
)
def test_waits_that_no_publication_confirms_say_so(name: str, days: int, kind: Known) -> None:
    wait = seed_wait([name], "weed", FESCUE)
    assert (wait.days, wait.basis.kind) == (days, kind)


@pytest.mark.parametrize(
    "name", ["chlorantraniliprole", "imidacloprid", "trichlorfon", "azoxystrobin", "propiconazole"]
)
def test_insect_and_disease_products_set_no_wait(name: str) -> None:
    wait = seed_wait([name], active(name).use, BLUE)
    assert (wait.days, wait.by) == (0, NO_WAIT_BY)


def test_prodiamine_in_march_still_bars_a_first_of_september_sowing() -> None:
    """2026-03-25 to 2026-09-01 is 160 days: inside the 210 assumed, past a label that says 120."""
    days = (date(2026, 9, 1) - date(2026, 3, 25)).days
    assert days == 160
    assert days < seed_wait(["prodiamine"], "pre-emergent", FESCUE).days
    assert days >= 120


def test_glyphosate_counts_from_the_last_spray() -> None:
    """Sprayed 15 August and 5 September 2026: five days on the 10th, over on the 12th."""
    last = max(date(2026, 8, 15), date(2026, 9, 5))
    wait = seed_wait(["glyphosate"], "nonselective", FESCUE).days
    assert (date(2026, 9, 10) - last).days == 5
    assert (date(2026, 9, 10) - last).days < wait
    assert (date(2026, 9, 12) - last).days == wait


@pytest.mark.parametrize("name", ["mesotrione", "siduron"])
def test_products_used_at_seeding_need_every_grass_listed_and_little_fine_fescue(name: str) -> None:
    use = active(name).use
    unlisted = {"mesotrione": 28, "siduron": 210}[name]
    assert seed_wait([name], use, FESCUE).days == 0
    assert seed_wait([name], use, {"kbg": 81, "fine fescue": 19}).days == 0
    assert seed_wait([name], use, {"kbg": 80, "fine fescue": 20}).days == unlisted
    assert seed_wait([name], use, {"kbg": 80, "chewings": 10, "hard fescue": 10}).days == unlisted
    assert seed_wait([name], use, {"kbg": 99, "bentgrass": 1}).days == unlisted
    assert seed_wait([name], use, {"unknown": 100}).days == unlisted
    assert seed_wait([name], use, {}).days == unlisted


def test_the_fine_fescue_limit_says_that_it_is_a_judgment() -> None:
    for name in ("mesotrione", "siduron"):
        basis = active(name).fescue_basis
        assert basis is not None
        assert basis.kind is Known.JUDGMENT


def test_quinclorac_waits_longer_for_a_grass_that_is_not_listed() -> None:
    assert seed_wait(["quinclorac"], "weed", FESCUE).days == 7
    assert seed_wait(["quinclorac"], "weed", {"tttf": 95, "fine fescue": 5}).days == 28


def test_a_mixture_of_actives_takes_the_longest_wait() -> None:
    wait = seed_wait(["2,4-d", "MCPP", "sulfentrazone", "prodiamine"], "weed", FESCUE)
    assert (wait.days, wait.by) == (210, "prodiamine")
    assert seed_wait(["carfentrazone", "2,4-D"], "weed", FESCUE).days == 28


@pytest.mark.parametrize(
    ("kind", "days", "by"),
    [
        ("pre-emergent", 210, "kind"),
        ("weed", 28, "kind"),
        ("weed-and-feed", 28, "kind"),
        ("nonselective", 365, "kind"),
        ("insect", 0, NO_WAIT_BY),
        ("disease", 0, NO_WAIT_BY),
    ],
)
def test_a_product_whose_actives_are_not_known_waits_by_its_kind(kind: str, days: int, by: str) -> None:
    for actives in ([], [" "], ["something new"]):
        wait = seed_wait(actives, kind, FESCUE)
        assert (wait.days, wait.by) == (days, by)
        assert wait.basis.kind is Known.JUDGMENT


def test_an_unknown_active_beside_a_known_one_still_counts() -> None:
    assert seed_wait(["carfentrazone", "something new"], "weed", FESCUE).days == 28


def test_another_kind_is_refused() -> None:
    with pytest.raises(ValueError, match="moss"):
        seed_wait([], "moss", FESCUE)


@pytest.mark.parametrize(
    ("name", "days", "key"),
    [("dithiopyr", 120, "delaware-renovation"), ("prodiamine", 210, "delaware-renovation")],
    ids=["dithiopyr split 120: Delaware 4 months", "prodiamine split 210: Delaware 7 months"],
)
def test_waits_after_a_split(name: str, days: int, key: str) -> None:
    basis = active(name).split_basis
    assert seed_wait_after_split([name], "pre-emergent", FESCUE).days == days
    assert basis is not None
    assert key in {citation.key for citation in basis.citations}


@pytest.mark.parametrize(
    ("name", "weeks"),
    [("dithiopyr", 11), ("pendimethalin", 10), ("prodiamine", 16)],
    ids=lambda value: f"Weed Technology 19(1): {value}",
)
def test_slit_seeding_waits_as_the_trial_found(name: str, weeks: int) -> None:
    wait = slit_trial_wait([name])
    assert wait is not None
    assert wait.days == weeks * 7
    assert [citation.key for citation in wait.basis.citations] == ["weed-technology-2005"]
    assert wait.days < seed_wait([name], "pre-emergent", BLUE).days


def test_slit_seeding_takes_the_longest_trial_and_none_where_none_was_made() -> None:
    wait = slit_trial_wait(["dithiopyr", "prodiamine", "2,4-d", "something new"])
    assert wait is not None
    assert (wait.days, wait.by) == (112, "prodiamine")
    assert slit_trial_wait(["2,4-d"]) is None
    assert slit_trial_wait([]) is None


@given(st.lists(st.sampled_from(NAMES), min_size=1, max_size=4), st.sampled_from(NAMES))
def test_one_more_active_never_shortens_the_wait(names: list[str], other: str) -> None:
    for sown in (BLUE, FESCUE, {"fine fescue": 100.0}, {"unknown": 100.0}):
        alone = seed_wait(names, Use.WEED, sown).days
        assert seed_wait([*names, other], Use.WEED, sown).days >= alone
        assert seed_wait_after_split(names, Use.WEED, sown).days >= alone
