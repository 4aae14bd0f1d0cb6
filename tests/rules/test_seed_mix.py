"""What a seed's label gives away.

Weed seed 0.3 % and other crop 0.5 %: LSU AgCenter, Best Buy on Grass Seed, 2005. A test is good for 15 months: Univ. of
Kentucky Regulatory Services. Tall fescue is 85 % and more beside bluegrass: Cornell Univ., Seeding rates.
"""

import pytest

from journal.facts.house import number
from tests.scenario import LAWN, book, judged, later, lawn, level, raised

ON = "2026-09-06"


def shed(mix: str, *more: str) -> str:
    return LAWN + "\n".join(("\n[[product]]", 'name = "corner-bag"', 'kind = "seed"', f'mix = "{mix}"', *more, ""))


def on(mix: str, *more: str, line: str = f"{ON} seed corner-bag 6lb front", day: str = "") -> str:
    return level(book(line, on=lawn(toml=shed(mix, *more))), day or line[:10], "seed-mix")


GOOD = "kentucky bluegrass 50%, perennial ryegrass 50%"


def test_the_numbers_are_those_in_print() -> None:
    assert number("seed-mix", "weed").default == 0.3
    assert number("seed-mix", "crop").default == 0.5
    assert number("seed-mix", "tested-days").default == 15 * 365 // 12
    assert {number("seed-mix", name).basis.citations[0].key for name in ("weed", "crop")} == {"lsu-best-buy"}


@pytest.mark.parametrize(
    ("term", "expected"),
    [('weed_seed = "0.3%"', ""), ('weed_seed = "0.31%"', "note"), ('other_crop = "0.5%"', ""),
     ('other_crop = "0.6%"', "note")],
)  # fmt: skip
def test_weeds_and_other_crops(term: str, expected: str) -> None:
    assert on(GOOD, term) == expected


def test_a_good_label_or_none_is_left_alone() -> None:
    assert on(GOOD) == ""
    assert on(GOOD, 'weed_seed = "0.1%"', 'other_crop = "0.1%"', 'tested = "2026-03"') == ""


@pytest.mark.parametrize(("sown", "expected"), [("2026-06-30", ""), ("2026-07-01", "note")])
def test_a_test_counts_for_fifteen_months_from_the_end_of_its_own(sown: str, expected: str) -> None:
    assert on(GOOD, 'tested = "2025-03"', line=f"{sown} seed corner-bag 6lb front") == expected


def test_the_lots_own_tag_goes_first() -> None:
    old = lawn(toml=shed(GOOD, 'tested = "2024-03"'))
    fresh = book("2026-08-01 buy corner-bag 1x 20lb tested 2026-05", f"{ON} seed corner-bag 6lb front", on=old)
    assert level(fresh, ON, "seed-mix") == ""
    stale = book("2026-08-01 buy corner-bag 1x 20lb tested 2024-05", on=lawn(toml=shed(GOOD)))
    flag = raised(stale, "2026-08-01", "seed-mix")
    assert flag is not None
    assert "tested in May 2024" in flag.why


@pytest.mark.parametrize(("fescue", "expected"), [(49, ""), (50, "note"), (84, "note"), (85, ""), (90, "")])
def test_tall_fescue_with_bluegrass_wants_the_upper_hand(fescue: int, expected: str) -> None:
    assert on(f"tall fescue {fescue}%, kentucky bluegrass {100 - fescue}%") == expected


def test_tall_fescue_without_bluegrass_is_another_matter() -> None:
    assert on("tall fescue 60%, fine fescue 40%") == ""


@pytest.mark.parametrize("grass", ["annual ryegrass", "rough bluegrass"])
def test_grasses_that_show_as_patches_are_a_loss(grass: str) -> None:
    # Penn State Univ. News, 2001, of annual ryegrass; the Courier-Post, 2015, of rough bluegrass
    assert on(f"kentucky bluegrass 99%, {grass} 1%") == "loss"
    assert on(f"kentucky bluegrass 99.5%, {grass} 0.5%") == ""
    assert on(f"kentucky bluegrass 90%, {grass} 10%", line=f"{ON} buy corner-bag 1x 20lb") == "note"
    meant = "2026-08-01 intend seed corner-bag 2026-09-05 front"
    assert on(f"kentucky bluegrass 90%, {grass} 10%", line=meant) == "loss"


def test_it_stands_sixty_days_once_for_the_seed() -> None:
    labelled = lawn(toml=shed(GOOD, 'weed_seed = "0.9%"'))
    diary = book("2026-08-20 buy corner-bag 1x 20lb", f"{ON} seed corner-bag 6lb front", on=labelled)
    assert [level(diary, later(ON, at), "seed-mix") for at in (0, 59, 60)] == ["note", "note", ""]
    assert level(diary, later("2026-08-20", 60), "seed-mix", "back") == ""
    assert raised(diary, later(ON, 1), "seed-mix") is not None
    winter = [level(diary, later("2026-11-20", 7 * at), "seed-mix") for at in range(20)]
    assert set(winter) == {""}


def test_all_that_speaks_against_it_stands_in_one_flag() -> None:
    bad = lawn(toml=shed("kentucky bluegrass 97%, annual ryegrass 2%", 'weed_seed = "0.9%"', 'tested = "2024-01"'))
    found = [flag for flag in judged(bad, ON, "seed corner-bag 6lb front").raised if flag.rule == "seed-mix"]
    assert len(found) == 1
    assert all(word in found[0].why for word in ("annual ryegrass", "weed seed 0.9 %", "January 2024"))


def test_the_owners_own_number() -> None:
    own = book("2026-08-01 set seed-mix weed 1", on=lawn(toml=shed(GOOD, 'weed_seed = "0.9%"')))
    assert level(book(f"{ON} seed corner-bag 6lb front", on=own), ON, "seed-mix") == ""
