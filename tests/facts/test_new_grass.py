"""How old new grass must be, by active and by kind."""

import pytest

from journal.facts.new_grass import goes_down_with, new_grass_wait

MIX = {"kentucky bluegrass": 50.0, "perennial ryegrass": 50.0}


@pytest.mark.parametrize(
    ("actives", "kind", "days", "mowings", "by"),
    [
        (["2,4-d"], "weed", 0, 3, "2,4-d"),
        (["mesotrione"], "weed", 28, 2, "mesotrione"),
        (["2,4-d", "mesotrione"], "weed", 28, 3, "mesotrione and 2,4-d"),
        (["prodiamine"], "pre-emergent", 60, 3, "prodiamine"),
        (["dithiopyr"], "pre-emergent", 0, 3, "dithiopyr"),
        ([], "pre-emergent", 60, 4, "kind"),
        ([], "insect", 0, 4, "kind"),
        ([], "disease", 0, 2, "kind"),
        (["nobody-knows"], "weed", 28, 4, "kind"),
        (["siduron"], "pre-emergent", 0, 0, "siduron"),
    ],
)
def test_the_longest_of_days_and_mowings(actives: list[str], kind: str, days: int, mowings: int, by: str) -> None:
    wait = new_grass_wait(actives, kind)
    assert (wait.days, wait.mowings, wait.by, wait.never) == (days, mowings, by, False)
    assert wait.none is (not days and not mowings)


def test_what_kills_grass_never() -> None:
    assert new_grass_wait(["glyphosate"], "nonselective").never
    assert new_grass_wait([], "nonselective").never


def test_only_what_is_listed_for_every_grass_goes_down_with_the_seed() -> None:
    assert goes_down_with(["mesotrione"], MIX)
    assert goes_down_with(["siduron"], MIX)
    assert not goes_down_with(["mesotrione", "2,4-d"], MIX)
    assert not goes_down_with(["quinclorac"], MIX)
    assert not goes_down_with([], MIX)
    assert not goes_down_with(["mesotrione"], {"unknown": 100.0})
    assert not goes_down_with(["mesotrione"], {"bermudagrass": 100.0})
    assert goes_down_with(["mesotrione"], {"tall fescue": 81.0, "fine fescue": 19.0})
    assert not goes_down_with(["mesotrione"], {"tall fescue": 80.0, "fine fescue": 20.0})
