"""What is taken for a feeding, an application, a sowing, a mixture of grasses, a season, and for seen or meant."""

from datetime import date

import pytest

from journal.season.history import History
from tests.rules.lawns import KBG_PRG, NAME, SOUTH, SOWN, UNDATED, grass, sown_with
from tests.rules.treated import all_flags, shed
from tests.scenario import LAWN, book, later, lawn, level, raised, rules_raised, typed, weather

# a feeding


def test_two_products_or_two_passes_on_one_day_are_one_feeding() -> None:
    diary = book("2026-05-10 feed pond-ridge 5lb front", "2026-05-10 feed slow-oak 5lb front")
    assert level(diary, "2026-05-10", "feed-too-soon") == ""
    assert level(diary, "2026-05-10", "feed-dose") == "note"


def test_weed_and_feed_and_corn_gluten_are_feedings_lime_and_iron_are_none() -> None:
    gluten = (
        '\n[[product]]\nname = "corn-gold"\nkind = "pre-emergent"\nanalysis = "10-0-0"\nactives = ["corn gluten"]\n'
    )
    rust = '\n[[product]]\nname = "deep-iron"\nkind = "iron"\nanalysis = "0-0-0"\n'
    lime = '\n[[product]]\nname = "grey-lime"\nkind = "lime"\n'
    here = lawn(toml=LAWN + gluten + rust + lime)
    first = book("2026-04-20 feed pond-ridge 9lb front", on=here)
    for line, counts in (("feed green-gate 5lb front", True), ("treat corn-gold 20lb front", True),
                         ("feed deep-iron 5lb front", False), ("feed grey-lime 40lb front", False)):  # fmt: skip
        again = typed(first, f"2026-05-05 {line}")
        assert (level(again, "2026-05-05", "feed-too-soon") == "loss") is counts, line


def test_a_feeding_without_an_amount_counts_for_the_days_and_not_for_the_dose() -> None:
    diary = book("2026-05-01 feed pond-ridge front", "2026-05-20 feed pond-ridge 5lb front")
    assert level(diary, "2026-05-20", "feed-too-soon") == "loss"
    assert level(diary, "2026-05-20", "feed-dose") == ""
    assert level(diary, "2026-05-28", "feed-overdue") == ""


# applications


def test_one_job_in_two_parts_is_one_application_and_the_whole_after_a_half_is_another() -> None:
    label = {"leaf-off": 'repeat = "28 d"\nmax_per_year = 1\nto_seed = "0 d"\nafter_seed = "0 d"'}
    for second, found in (("2026-05-02 treat leaf-off 1floz part 2/2 front", ""),
                          ("2026-05-02 treat leaf-off 1floz front", "harm")):  # fmt: skip
        diary = book("2026-05-01 treat leaf-off 1floz part 1/2 front", second, on=shed(label))
        for rule in ("label-interval", "label-year-count"):
            assert level(diary, second[:10], rule) == found, second


def test_a_spot_is_a_note_and_no_use_of_the_year() -> None:
    label = {"leaf-off": 'repeat = "28 d"\nmax_per_year = 1\nto_seed = "28 d"\nafter_seed = "3 mowings"'}
    spot = "treat leaf-off 0.1floz spot 40sqft front"
    diary = book("2026-05-01 treat leaf-off 1floz front", f"2026-05-10 {spot}", on=shed(label))
    assert level(diary, "2026-05-10", "label-interval") == "note"
    assert level(diary, "2026-05-10", "label-year-count") == ""
    sown = book(f"2026-08-20 {spot}", f"{SOWN} seed three-river 4lb front", f"2026-10-10 {spot}", on=shed(label))
    assert level(sown, SOWN, "seed-over-residue") == "note"
    assert level(sown, "2026-10-10", "new-grass-treatment") == "note"


# grasses mixed or not known


@pytest.mark.parametrize(
    ("mix", "height", "found"),
    [
        ("90 perennial ryegrass,10 kentucky bluegrass", "1.75in", "loss"),
        ("91 perennial ryegrass,9 kentucky bluegrass", "1.75in", ""),
        ("91 perennial ryegrass,9 kentucky bluegrass", "1.25in", "loss"),
    ],
)
def test_the_lowest_cut_is_the_highest_low_end_from_a_tenth_on(mix: str, height: str, found: str) -> None:
    diary = book("2026-04-12 seed three-river 9lb front", f"2026-06-20 mow {height} front", on=sown_with(mix))
    assert level(diary, "2026-06-20", "mow-too-low") == found


@pytest.mark.parametrize(("height", "found"), [("1.9in", "loss"), ("2in", "")])
def test_a_grass_not_known_is_cut_as_bluegrass(height: str, found: str) -> None:
    assert level(book(f"2026-06-20 mow {height} front", on=grass("unknown")), "2026-06-20", "mow-too-low") == found
    unset = lawn((KBG_PRG + "\n", ""))
    assert level(book(f"2026-06-20 mow {height} front", on=unset), "2026-06-20", "mow-too-low") == found


@pytest.mark.parametrize(
    ("mix", "found"),
    [
        ("51 fine fescue,49 kentucky bluegrass", "note"),
        ("50 fine fescue,50 kentucky bluegrass", ""),
        ("100 fine fescue", "note"),
    ],
)
def test_a_year_of_fine_fescue_is_fed_half(mix: str, found: str) -> None:
    diary = book(
        "2026-04-12 seed three-river 9lb front", "2026-06-01 feed pond-ridge 8lb front",
        "2026-08-20 feed pond-ridge 8lb front", on=sown_with(mix),
    )  # fmt: skip
    assert level(diary, "2026-08-20", "feed-year") == found


@pytest.mark.parametrize(
    ("mix", "last"),
    [("99 perennial ryegrass,1 kentucky bluegrass", 27), ("100 perennial ryegrass", 20), ("100 tall fescue", 20)],
)
def test_a_seedbed_is_kept_damp_for_the_slowest_grass(mix: str, last: int) -> None:
    sown = "2026-08-20"
    rain = [f"{later(sown, at)} rain 0in" for at in range(32)]
    diary = book(f"{sown} seed three-river 9lb front", f"{sown} water 0.1in front", *rain, on=sown_with(mix))
    assert level(diary, later(sown, last + 1), "seedbed-dry") == "loss"
    assert level(diary, later(sown, last + 2), "seedbed-dry") == ""


def test_seedlings_nobody_saw_are_assumed_by_the_slowest_grass_and_the_flag_says_so() -> None:
    diary = book("2026-08-12 seed three-river 4lb front", "2026-10-01 treat spring-wall 3lb front", on=shed())
    flag = raised(diary, "2026-10-01", "new-grass-treatment")
    assert flag is not None
    assert "up Wed 2 Sep (assumed)" in flag.why
    seen = book("2026-08-12 seed three-river 4lb front", "2026-08-24 see emerged front",
                "2026-10-01 treat spring-wall 3lb front", on=shed())  # fmt: skip
    flag = raised(seen, "2026-10-01", "new-grass-treatment")
    assert flag is not None
    assert "up Mon 24 Aug," in flag.why


# seeding


def test_a_cut_of_day_3_ends_no_seedbed() -> None:
    sown = "2026-08-20"
    rain = [f"{later(sown, at)} rain 0in" for at in range(12)]
    diary = book(f"{sown} seed three-river 9lb front", f"{sown} water 0.1in front", f"{later(sown, 3)} mow 3in front",
                 *rain, f"{later(sown, 10)} see traffic front")  # fmt: skip
    assert level(diary, later(sown, 10), "seedbed-dry") == "loss"
    assert level(diary, later(sown, 10), "seedbed-traffic") == "note"
    assert rules_raised(diary, later(sown, 30)) & {"mow-gap"} == set()


def test_a_top_up_within_three_weeks_starts_no_new_count() -> None:
    base = book(f"{SOWN} seed three-river 9lb front")
    topped = typed(base, "2026-09-20 seed three-river 4lb front")
    again = typed(base, "2026-09-20 seed three-river 5lb front")
    cut = "2026-10-05 mow 3in bag front"
    assert level(typed(topped, cut), "2026-10-05", "mow-first-early") == ""
    assert level(typed(again, cut), "2026-10-05", "mow-first-early") == "loss"


def test_a_patch_leaves_cuts_and_feedings_as_they_were_and_is_named_in_its_notes() -> None:
    diary = book("2026-04-20 mow 3in front", "2026-05-01 seed three-river 0.5lb spot 20sqft front")
    assert level(diary, "2026-05-01", "mow-gap") == "late"
    assert level(diary, "2026-06-06", "feed-overdue") == "late"
    sprayed = typed(diary, "2026-05-15 treat leaf-off 1floz front")
    flag = raised(sprayed, "2026-05-15", "new-grass-treatment")
    assert flag is not None
    assert flag.level == "note"
    assert "spot" in flag.headline + flag.why


# dormant seed


def test_seed_that_lies_till_spring_counts_from_growth_start() -> None:
    diary = book("2026-11-11 seed three-river 9lb front")
    quiet = {
        "seed-short-season",
        "seedbed-dry",
        "starter-missing",
        "starter-wrong",
        "mow-first-early",
        "mow-first-late",
    }
    for at in range(150):
        assert rules_raised(diary, later("2026-11-11", at)) & quiet == set(), at
    early = typed(diary, "2027-05-07 mow 3in front")
    assert level(early, "2027-05-07", "mow-first-early") == "note"
    assert level(typed(diary, "2027-05-08 mow 3in front"), "2027-05-08", "mow-first-early") == ""


@pytest.mark.parametrize(("on", "found"), [("2026-11-09", "loss"), ("2026-09-30", "loss"), ("2026-10-20", "loss")])
def test_sown_with_too_little_growth_left_is_lost(on: str, found: str) -> None:
    assert level(book(f"{on} seed three-river 9lb front"), on, "seed-short-season") == found
    assert level(book(f"{on} seed three-river 9lb dormant front"), on, "seed-short-season") == ""


# growing


def test_a_cold_autumn_ends_what_is_late_but_not_what_was_sown() -> None:
    cold = weather("2026-10-06", 20, "45F 35F 0in")
    diary = book("2026-09-10 seed quick-rye 9lb front", *cold)
    assert level(diary, "2026-10-24", "seed-short-season") == level(
        book("2026-09-10 seed quick-rye 9lb front"), "2026-10-24", "seed-short-season"
    )
    assert level(diary, "2026-10-25", "mow-first-late") == ""


def test_without_frost_dates_one_note_asks_for_them() -> None:
    diary = book("2026-06-01 mow 3in front", "2026-09-30 seed three-river 9lb front", on=lawn(*UNDATED))
    needing = {
        "mow-gap",
        "mow-first-late",
        "feed-overdue",
        "feed-dormant",
        "seed-short-season",
        "seedling-feed",
        "mow-blade",
    }
    for on in ("2026-07-01", "2026-10-20", "2027-01-10"):
        assert rules_raised(diary, on) & needing == set()
        assert level(diary, on, "growth-unknown") == "note"


def test_months_are_turned_in_the_south() -> None:
    south = lawn(*SOUTH)
    assert level(book("2026-12-01 mow 2.5in front", on=south), "2026-12-01", "mow-height") == "note"
    assert level(book("2027-03-01 mow 2.5in front", on=south), "2027-03-01", "mow-height") == ""
    assert level(book("2026-12-10 seed three-river 9lb front", on=south), "2026-12-10", "seed-season") == "loss"
    assert level(book("2027-03-01 seed three-river 9lb front", on=south), "2027-03-01", "seed-season") == ""


# what was seen


def test_a_cut_of_the_usual_height_does_not_end_a_rest_and_spring_does() -> None:
    diary = book("2026-07-01 see dormant front", "2026-08-01 mow 3in front", "2026-08-01 height 4in front")
    assert level(typed(diary, "2026-08-10 feed pond-ridge 5lb front"), "2026-08-10", "feed-dormant") == "loss"
    assert level(typed(diary, "2027-04-10 feed pond-ridge 5lb front"), "2027-04-10", "feed-dormant") == ""


def _still_brown(diary: History, on: date) -> bool:
    return any(flag.subject == "still brown" for flag in all_flags(diary, on, "dormant-thirst"))


def test_still_brown_is_asked_every_28_days() -> None:
    diary = book("2026-07-01 see dormant front", *weather("2026-06-20", 80, "80F 60F 0.1in"))
    asked = [at for at in range(70) if _still_brown(diary, later("2026-07-01", at))]
    assert asked[0] == 28
    assert 56 in asked
    assert 40 not in asked


@pytest.mark.parametrize(
    ("between", "found"),
    [
        ((), True),
        (("2026-12-03 see thawed front",), False),
        (tuple(weather("2026-12-02", 3, "46F 30F 0in")), False),
    ],
)
def test_frozen_ground_until_it_thaws(between: tuple[str, ...], found: bool) -> None:
    diary = book("2026-12-01 see frozen front", *between, "2026-12-05 feed pond-ridge 5lb front")
    assert (level(diary, "2026-12-05", "feed-closed") == "harm") is found
    late = book("2026-12-01 see frozen front", "2026-12-15 feed pond-ridge 5lb front")
    assert level(late, "2026-12-15", "feed-closed") == ""


def test_the_gauge_of_the_zone_beats_the_weather_and_is_not_added() -> None:
    seed = (f"{SOWN} seed three-river 9lb front", f"{SOWN} water 0.1in front", f"{SOWN} water 0.1in front")
    wet = book(*seed, "2026-09-07 weather 70F 50F 0.3in")
    assert level(wet, "2026-09-08", "seedbed-dry") == ""
    gauged = typed(wet, "2026-09-07 rain 0in front")
    assert level(gauged, "2026-09-08", "seedbed-dry") == "late"


# what is meant


def test_what_is_meant_lapses_after_two_weeks_and_raises_nothing() -> None:
    barrier = ("2026-04-15 treat spring-wall 3lb front", "2026-06-01 intend seed three-river 2026-06-20 front")
    diary = book(*barrier, on=shed())
    assert level(diary, "2026-07-03", "barrier-before-seed") != ""
    assert level(diary, "2026-07-04", "barrier-before-seed") == ""
    bound = lawn((NAME, f'{NAME}\nlocal_closed = ["06-15", "06-30"]'))
    fed = book("2026-06-01 intend feed pond-ridge 2026-06-20 front", on=bound)
    assert level(fed, "2026-06-01", "feed-closed") == "harm"
    done = typed(fed, "2026-06-08 feed pond-ridge 5lb front")
    assert level(done, "2026-06-08", "feed-closed") == ""
