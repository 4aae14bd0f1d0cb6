"""Seed to the day and to the point: odd books, lines put right, two zones at once, both halves of the world."""

from dataclasses import replace

import pytest

from journal.record.entry import Entry
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.treatment import Treatment
from journal.record.kinds.watering import Watering
from journal.season.history import History
from tests.scenario import (
    LAWN,
    book,
    draft,
    find,
    judged,
    later,
    lawn,
    level,
    raised,
    rules_raised,
    the,
    typed,
    weather,
)

ON = "2026-09-06"
SEED = f"{ON} seed three-river 9lb front"
METRIC = (
    LAWN.replace("[lawn]\n", '[lawn]\nunits = "metric"\n')
    .replace('"2400 sqft"', '"220 m2"')
    .replace('"3100 sqft"', '"290 m2"')
    .replace("0.6 in/h", "15 mm/h")
)
SOUTH = (
    ("42.3", "-37.8"), ('last_frost = "05-06"', 'last_frost = "10-20"'),
    ('first_frost = "10-05"', 'first_frost = "05-01"'),
    ('["04-10", "11-10"]', '["10-01", "06-05"]'),
)  # fmt: skip
FESCUE_MIX = 'mix = [{grass="kentucky bluegrass", percent=50}, {grass="perennial ryegrass", percent=50}]'


def the_entry(history: History, kind: type[Entry], at: int = -1, zone: str = "front") -> Entry:
    return history.on(zone, later(ON, 100))[kind].all[at]


def instead(history: History, old: Entry, line: str) -> History:
    """The book after that line was put right."""
    return history.minus(old).plus(replace(draft(history, line), id=old.id))


# the same seed, or another


@pytest.mark.parametrize(("rye", "found"), [(55, ""), (56, "loss"), (45, ""), (44, "loss")])
def test_five_points_apart_is_one_lot_beside_the_next(rye: int, found: str) -> None:
    other = (
        f'mix = [{{grass="kentucky bluegrass", percent={100 - rye}}}, {{grass="perennial ryegrass", percent={rye}}}]'
    )
    own = lawn(('mix = [{grass="perennial ryegrass", percent=100}]', other))
    twice = book("2025-09-06 seed three-river 9lb front", f"{ON} seed quick-rye 9lb front", on=own)
    assert level(twice, ON, "seed-switch") == found


def test_a_switch_is_told_of_every_zone_of_the_line_and_goes_when_it_is_put_right() -> None:
    before = book("2026-04-20 seed three-river 9lb front back")
    both = typed(before, f"{ON} seed stone-wall 30lb front back")
    assert (level(both, ON, "seed-switch"), level(both, ON, "seed-switch", "back")) == ("loss", "loss")
    right = instead(both, the_entry(both, Seeding), f"{ON} seed stone-wall 30lb back")
    assert (level(right, ON, "seed-switch"), level(right, ON, "seed-switch", "back")) == ("", "loss")
    struck = right.minus(the_entry(right, Seeding, zone="back"))
    assert level(struck, ON, "seed-switch", "back") == ""


def test_a_spot_of_another_seed_is_a_switch_and_changes_nothing_else() -> None:
    diary = book("2025-09-06 seed three-river 9lb front", f"{ON} seed quick-rye 0.5lb spot 40sqft front")
    assert level(diary, ON, "seed-switch") == "loss"
    assert rules_raised(diary, later(ON, 10)) & {"seedbed-dry", "starter-missing", "mow-first-early"} == set()


def test_two_sowings_of_the_new_seed_in_one_year_settle_nothing() -> None:
    before = ("2024-09-06 seed three-river 9lb front", "2025-04-20 seed stone-wall 30lb front")
    assert level(book(*before, "2025-09-06 seed stone-wall 30lb front"), "2025-09-07", "seed-switch") == "loss"
    assert level(book(*before, "2026-04-20 seed stone-wall 30lb front"), "2026-04-21", "seed-switch") == ""


# when


@pytest.mark.parametrize(
    ("on", "found"),
    [("2026-03-20", ""), ("2026-04-03", ""), ("2026-04-04", "note"), ("2026-04-17", "note"), ("2026-04-18", "loss")]
)  # fmt: skip
def test_nine_weeks_and_seven_before_growth_ends_in_the_south_too(on: str, found: str) -> None:
    sown = book(f"{on} seed three-river 9lb front", on=lawn(*SOUTH))
    assert level(sown, on, "seed-short-season") == found


def test_words_of_the_year_fit_the_southern_half() -> None:
    own = lawn(*SOUTH)
    hot = raised(book("2026-12-11 seed three-river 9lb front", on=own), "2026-12-12", "seed-season")
    assert hot is not None
    assert "from late November to mid-February" in hot.why
    assert hot.do.endswith("from mid-February")
    edge = raised(book("2026-11-20 seed three-river 9lb front", on=own), "2026-11-21", "seed-season")
    assert edge is not None
    assert edge.do.endswith("from mid-February")
    meant = book("2026-01-10 intend seed three-river 2026-03-02 front", on=own)
    assert the(meant, "2026-01-20", "aerate").why.endswith("no cores from December to February")
    late = the(meant, "2026-03-03", "aerate", "front")
    assert "no cores" not in late.why


def test_no_season_and_no_frost_is_asked_for_once_and_judges_no_sowing() -> None:
    bare = lawn(('growth = ["04-10", "11-10"]\n', ""), ('last_frost = "05-06"\nfirst_frost = "10-05"\n', ""))
    sown = book("2026-10-20 seed three-river 9lb front", on=bare)
    found = rules_raised(sown, "2026-10-21")
    assert "growth-unknown" in found
    assert found & {"seed-short-season", "seed-season", "not-emerged"} == set()


# what lies in the soil


@pytest.mark.parametrize(("sown", "found"), [("2026-09-16", "loss"), ("2026-09-17", "")])
def test_a_wait_of_28_days_is_over_on_day_28(sown: str, found: str) -> None:
    sprayed = book("2026-08-20 treat leaf-off 2floz front")
    assert level(typed(sprayed, f"{sown} seed three-river 9lb front"), sown, "seed-over-residue") == found


def test_a_mix_in_one_tank_is_two_waits_and_each_is_told() -> None:
    tank = book("2026-08-20 treat leaf-off 2floz + spring-wall 4lb front")
    raised_now = judged(tank, ON, "seed three-river 9lb front").raised
    said = {flag.subject: flag.headline for flag in raised_now if flag.rule == "seed-over-residue"}
    assert said == {
        "leaf-off": "sown 17 days after leaf-off; the wait is 28",
        "spring-wall": "sown 17 days after spring-wall; the wait is 210",
    }


def test_a_spray_written_down_late_is_told_and_one_put_right_to_another_zone_is_not() -> None:
    late = book(SEED, "2026-09-10 treat leaf-off 2floz front on 9/1")
    assert level(late, "2026-09-10", "seed-over-residue") == "loss"
    right = instead(late, the_entry(late, Treatment), "2026-09-10 treat leaf-off 2floz back on 9/1")
    assert level(right, "2026-09-10", "seed-over-residue") == ""


@pytest.mark.parametrize(("fescue", "found"), [(19, ""), (20, "loss")])
def test_mesotrione_goes_with_seed_below_a_fifth_of_fine_fescue(fescue: int, found: str) -> None:
    mix = (
        f'mix = [{{grass="kentucky bluegrass", percent={100 - fescue}}}, {{grass="chewings fescue", percent={fescue}}}]'
    )
    own = lawn((FESCUE_MIX, mix), ('actives = ["2,4-d"]', 'actives = ["mesotrione"]'))
    sprayed = book(f"{later(ON, -3)} treat leaf-off 1floz front", SEED, on=own)
    assert level(sprayed, ON, "seed-over-residue") == found


# how much


def test_metric_books_say_grams_and_millimetres() -> None:
    own = lawn(toml=METRIC)
    thick = raised(book(f"{ON} seed three-river 12kg front back", on=own), ON, "seed-rate", "back")
    assert thick is not None
    assert thick.why.startswith("24 g/m2 Sun 6 Sep; published is 6.1 to 15")
    washed = raised(
        book(f"{ON} seed three-river 3kg front", f"{later(ON, 3)} rain 30mm", on=own), later(ON, 4), "seed-wash"
    )
    assert washed is not None
    assert washed.why == "30 mm of rain Wed 9 Sep, day 3 after sowing"


def test_an_amount_put_right_clears_the_rate() -> None:
    thick = book(f"{ON} seed three-river 90lb front")
    assert level(thick, later(ON, 1), "seed-rate") == "loss"
    right = instead(thick, the_entry(thick, Seeding), SEED)
    assert level(right, later(ON, 1), "seed-rate") == ""


def test_halves_sown_on_two_days_are_at_the_rate_of_their_own_ground() -> None:
    halves = book(
        f"{ON} seed three-river 4.5lb part 1/2 front", f"{later(ON, 1)} seed three-river 4.5lb part 2/2 front"
    )
    assert level(halves, later(ON, 2), "seed-rate") == ""


# the seedbed


def damp(first: int, last: int, zone: str = "front", times: int = 2) -> list[str]:
    return [f"{later(ON, at)} water 5min {zone}" for at in range(first, last + 1) for _ in range(times)]


DRY_SKY = weather(ON, 40, "80F 62F 0in")


def test_two_zones_on_one_line_are_told_apart() -> None:
    both = book(
        f"{ON} seed three-river 22lb front back", f"{later(ON, 1)} water 5min front back",
        f"{later(ON, 1)} water 5min front", *DRY_SKY,
    )  # fmt: skip
    assert level(both, later(ON, 2), "seedbed-dry") == ""
    assert level(both, later(ON, 2), "seedbed-dry", "back") == "note"


def test_water_written_down_afterwards_counts_on_its_day_and_struck_it_does_not() -> None:
    dry = book(SEED, *damp(1, 3), *DRY_SKY)
    assert level(dry, later(ON, 6), "seedbed-dry") == "loss"
    told = typed(typed(dry, f"{later(ON, 6)} water 5min front on 9/10"), f"{later(ON, 6)} water 5min front on 9/11")
    assert level(told, later(ON, 6), "seedbed-dry") == "note"
    struck = told.minus(the_entry(told, Watering))
    assert level(struck, later(ON, 6), "seedbed-dry") == "late"


def test_a_watered_spot_waters_no_seedbed_and_a_hose_does() -> None:
    spot = book(SEED, *damp(1, 1), f"{later(ON, 2)} water spot front", f"{later(ON, 2)} water spot front", *DRY_SKY)
    assert level(spot, later(ON, 3), "seedbed-dry") == "late"
    hose = book(SEED, *damp(1, 1), f"{later(ON, 2)} water front", f"{later(ON, 2)} water front", *DRY_SKY)
    assert level(hose, later(ON, 3), "seedbed-dry") == ""


def test_the_running_day_is_never_judged() -> None:
    assert level(book(SEED, *damp(1, 3), *DRY_SKY), later(ON, 4), "seedbed-dry") == ""
    assert level(book(SEED, *damp(1, 3), *DRY_SKY), later(ON, 5), "seedbed-dry") == "late"


@pytest.mark.parametrize(("days", "found"), [(27, ""), (28, "late")])
def test_no_seedlings_are_asked_for_on_day_28_and_sown_again_while_growth_is_left(days: int, found: str) -> None:
    quiet = book("2026-08-20 seed three-river 9lb front")
    assert level(quiet, later("2026-08-20", days), "not-emerged") == found
    if found:
        flag = raised(quiet, later("2026-08-20", days), "not-emerged")
        assert flag is not None
        assert "sow again by Tue 22 Sep" in flag.do


def test_traffic_a_third_time_in_a_week_is_a_loss_and_a_week_later_is_not() -> None:
    seen = [f"{later(ON, at)} see traffic front" for at in (2, 5)]
    assert level(book(SEED, *seen), later(ON, 5), "seedbed-traffic") == "note"
    assert level(book(SEED, *seen, f"{later(ON, 8)} see traffic front"), later(ON, 8), "seedbed-traffic") == "loss"
    assert level(book(SEED, *seen, f"{later(ON, 9)} see traffic front"), later(ON, 9), "seedbed-traffic") == "note"


def test_a_patch_in_may_is_mown_over_and_asks_for_no_more_than_its_damp() -> None:
    diary = book(
        "2026-05-01 mow 3in front", "2026-05-03 seed three-river 0.3lb spot 20sqft front", "2026-05-05 mow 3in front",
        "2026-05-06 see traffic front",
    )  # fmt: skip
    assert find(diary, "2026-05-06", "first-mow") is None
    assert (the(diary, "2026-05-06", "damp").title, level(diary, "2026-05-06", "seedbed-traffic")) == (
        "damp spot",
        "note",
    )
    assert level(diary, "2026-05-06", "mow-first-early") == ""
