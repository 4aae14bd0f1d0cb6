"""The autumn window for broadleaf weeds. Purdue Univ. Turfgrass Science, 2013: mid-September into November."""

import pytest

from tests.scenario import LAWN, book, later, lawn, level, raised

RULE = "broadleaf-missed"
SEEN = "2026-06-01 see dandelion front"


@pytest.mark.parametrize(("on", "found"), [("2026-11-10", ""), ("2026-11-11", "late"), ("2026-12-10", "late"),
                                           ("2026-12-11", ""), ("2027-02-01", "")])  # fmt: skip
def test_late_for_thirty_days_after_growth_ends_and_not_all_winter(on: str, found: str) -> None:
    assert level(book(SEEN), on, RULE) == found


@pytest.mark.parametrize("weed", ["crabgrass", "moss", "weeds", "damage"])
def test_only_broadleaf_weeds(weed: str) -> None:
    assert level(book(f"2026-06-01 see {weed} front"), "2026-11-20", RULE) == ""


def test_only_those_of_this_season() -> None:
    diary = book("2025-10-01 see dandelion front", on=lawn(set_up="2025-01-01"))
    assert level(diary, "2025-11-20", RULE) == "late"
    assert level(diary, "2026-11-20", RULE) == ""


@pytest.mark.parametrize("line", ["2026-09-20 treat leaf-off 2floz front", "2026-06-10 treat leaf-off 2floz front",
                                  "2026-10-20 treat leaf-off 1floz spot 40sqft front",
                                  "2026-09-20 feed green-gate 7lb front", "2026-11-15 treat leaf-off 2floz front",
                                  "2026-10-01 treat unknown by service front"])  # fmt: skip
def test_not_where_something_went_down_after_it_was_seen(line: str) -> None:
    assert level(book(SEEN, line), "2026-11-20", RULE) == ""


def test_what_went_down_before_it_was_seen_and_before_the_window_does_not_count() -> None:
    assert level(book("2026-05-01 treat leaf-off 2floz front", SEEN), "2026-11-20", RULE) == "late"
    assert level(book(SEEN, "2026-04-20 treat spring-wall 4lb front"), "2026-11-20", RULE) == "late"


def test_a_barrier_is_no_weed_product() -> None:
    assert level(book(SEEN, "2026-09-20 treat spring-wall 4lb front"), "2026-11-20", RULE) == "late"


def test_new_grass_wins() -> None:
    sown = "2026-09-06 seed three-river 9lb front"
    cuts = [f"{later('2026-10-05', 8 * at)} mow 3in front" for at in range(3)]
    assert level(book(SEEN, sown, *cuts[:2]), "2026-11-20", RULE) == ""
    assert level(book(SEEN, sown, *cuts), "2026-11-20", RULE) == "late"


def test_not_in_a_book_that_begins_after_it() -> None:
    for begun, found in (("2026-11-10", "late"), ("2026-11-11", "")):
        assert level(book(SEEN, on=lawn(set_up=begun)), "2026-11-20", RULE) == found


def test_the_owners_own_number() -> None:
    own = book("2026-01-02 set broadleaf-missed stands-days 10", SEEN)
    assert (level(own, "2026-11-20", RULE), level(own, "2026-11-21", RULE)) == ("late", "")


def test_silent_where_no_season_is_known() -> None:
    bare = lawn(('growth = ["04-10", "11-10"]\n', ""), ('last_frost = "05-06"\nfirst_frost = "10-05"\n', ""))
    assert level(book(SEEN, on=bare), "2026-11-20", RULE) == ""


def test_it_names_weed_and_window() -> None:
    flag = raised(book(SEEN), "2026-11-20", RULE)
    assert flag is not None
    assert flag.headline == "dandelion seen, and the autumn window is over"
    assert "from Tue 15 Sep to Tue 10 Nov" in flag.why


def test_south_of_the_equator_the_window_opens_in_march() -> None:
    south = LAWN.replace("latitude = 42.3", "latitude = -42.3").replace('["04-10", "11-10"]', '["10-10", "05-10"]')
    diary = book("2026-01-10 see clover front", on=lawn(toml=south, set_up="2025-09-01"))
    assert (level(diary, "2026-05-10", RULE), level(diary, "2026-05-11", RULE)) == ("", "late")
    flag = raised(diary, "2026-05-11", RULE)
    assert flag is not None
    assert "from Sun 15 Mar" in flag.why
