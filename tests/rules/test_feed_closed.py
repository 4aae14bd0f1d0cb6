"""Feeding on days that a local rule closes (Maryland, Agriculture Article s.8-803.5), and on frozen ground."""

import pytest

from journal.facts.house import number
from journal.season.history import History
from tests.scenario import LAWN, book, judged, later, lawn, level, raised, weather

POTASH = '\n[[product]]\nname = "pot-ash"\nkind = "fertilizer"\nanalysis = "0-0-50"\n'
PHOSPHATE = '\n[[product]]\nname = "bone-hill"\nkind = "fertilizer"\nanalysis = "0-20-0"\n'


def under(*facts: str) -> History:
    return lawn(
        toml=LAWN.replace('name = "North Lane"', "\n".join(('name = "North Lane"', *facts))) + POTASH + PHOSPHATE
    )


OWN = under('local_closed = ["11-16", "03-01"]')


@pytest.mark.parametrize(
    ("on", "says"),
    [("2026-11-15", ""), ("2026-11-16", "harm"), ("2026-12-31", "harm"), ("2027-01-01", "harm"), ("2027-03-01", "harm"),
     ("2027-03-02", "")],
)  # fmt: skip
def test_from_the_first_closed_day_to_the_last(on: str, says: str) -> None:
    assert level(book(f"{on} feed pond-ridge 2lb/k front", on=OWN), on, "feed-closed") == says


def test_it_stands_thirty_days_and_on_that_zone_alone() -> None:
    diary = book("2026-11-20 feed pond-ridge 2lb/k front", on=OWN)
    assert level(diary, later("2026-11-20", 29), "feed-closed") == "harm"
    assert level(diary, later("2026-11-20", 30), "feed-closed") == ""
    assert level(diary, "2026-11-20", "feed-closed", "back") == ""


@pytest.mark.parametrize(
    "what", ["feed oat-hill 2lb/k", "feed bone-hill 2lb/k", "treat green-gate 3lb/k", "feed pond-ridge"]
)
def test_starter_phosphate_weed_and_feed_and_no_amount_count(what: str) -> None:
    assert level(book(f"2026-11-20 {what} front", on=OWN), "2026-11-20", "feed-closed") == "harm"


def test_leap_day_goes_with_the_day_before() -> None:
    diary = book("2028-02-29 feed pond-ridge 2lb/k front", on=under('local_rules = "us-md"'))
    flag = raised(diary, "2028-02-29", "feed-closed")
    assert flag is not None
    assert "until Wed 1 Mar" in flag.why


def test_potash_does_not() -> None:
    assert level(book("2026-11-20 feed pot-ash 2lb/k front", on=OWN), "2026-11-20", "feed-closed") == ""


def test_no_local_rule_closes_nothing() -> None:
    assert level(book("2026-12-20 feed pond-ridge 2lb/k front"), "2026-12-20", "feed-closed") == ""


def test_a_line_says_so_before_it_is_saved() -> None:
    (flag,) = [f for f in judged(OWN, "2026-11-20", "feed pond-ridge 2lb/k front").raised if f.rule == "feed-closed"]
    assert flag.level == "harm"
    assert "your local rule closes these days" in flag.why
    assert "until Tue 2 Mar" in flag.why
    assert "local authority" in flag.do


def test_a_place_is_named_and_unconfirmed_dates_are_a_note() -> None:
    maryland = under('local_rules = "us-md"')
    flag = raised(book("2026-12-20 feed pond-ridge 2lb/k front", on=maryland), "2026-12-20", "feed-closed")
    assert flag is not None
    assert (flag.level, "Maryland closes these days" in flag.why) == ("harm", True)
    connecticut = under('local_rules = "us-ct"')
    for what, says in (("oat-hill", "note"), ("pond-ridge", "")):
        diary = book(f"2026-12-20 feed {what} 2lb/k front", on=connecticut)
        assert level(diary, "2026-12-20", "feed-closed") == says
    virginia = level(book("2026-12-20 feed pond-ridge 2lb/k front", on=under('local_rules = "us-va"')), "2026-12-20",
                     "feed-closed")  # fmt: skip
    assert virginia == ""


@pytest.mark.parametrize(("amount", "says"), [("1lb/k", ""), ("2lb/k", ""), ("2.2lb/k", "harm"), ("", "note")])
def test_pennsylvania_lets_half_a_pound_pass(amount: str, says: str) -> None:
    diary = book(f"2026-12-20 feed pond-ridge {amount} front", on=under('local_rules = "us-pa"'))
    assert level(diary, "2026-12-20", "feed-closed") == says


def test_five_days_below_freezing_are_frozen_ground() -> None:
    # how frozen ground is told from the air no law says: judgment; that it is closed: Minn. Dept. of Agriculture
    fed = "2026-11-20 feed pond-ridge 2lb/k front"
    frozen = raised(book(*weather("2026-11-16", 5, "38F 25F"), fed), "2026-11-20", "feed-closed")
    assert frozen is not None
    assert (frozen.level, frozen.headline) == ("harm", "fed on frozen ground")
    assert "the last 5 days had a mean of 31.5 F, below 32 F" in frozen.why
    assert level(book(*weather("2026-11-16", 5, "40F 24F"), fed), "2026-11-20", "feed-closed") == ""
    assert level(book(*weather("2026-11-18", 3, "30F 20F"), fed), "2026-11-20", "feed-closed") == ""
    thawed = book(*weather("2026-11-16", 5, "38F 25F"), "2026-11-20 see thawed front", fed)
    assert level(thawed, "2026-11-20", "feed-closed") == ""
    own = book("2026-01-02 set feed-closed frozen-mean 35F", *weather("2026-11-16", 5, "40F 26F"), fed)
    assert level(own, "2026-11-20", "feed-closed") == "harm"


def test_the_owner_may_call_more_days_frozen_and_not_fewer() -> None:
    frozen = number("feed-closed", "frozen-mean")
    assert frozen.low == frozen.default < frozen.high


@pytest.mark.parametrize(
    ("closes", "expected"),
    [("2026-12-14 see thawed front", ""), ("2026-12-03 note nothing", "harm")],
)
def test_a_frost_that_was_seen_stands_two_weeks_or_until_it_thawed(closes: str, expected: str) -> None:
    diary = book("2026-12-01 see frozen front", closes, "2026-12-14 feed pond-ridge 2lb/k front")
    assert level(diary, "2026-12-14", "feed-closed") == expected
    over = book("2026-12-01 see frozen front", "2026-12-15 feed pond-ridge 2lb/k front")
    assert level(over, "2026-12-15", "feed-closed") == ""
    mild = (f"2026-12-0{day} weather 46F 30F" for day in (3, 5, 6))
    thaw = book("2026-12-01 see snow front", *mild, "2026-12-07 feed pond-ridge 2lb/k front")
    assert level(thaw, "2026-12-07", "feed-closed") == ""


def test_a_feeding_meant_for_a_closed_day_is_told_before_and_until_it_is_moved() -> None:
    (flag,) = [
        f
        for f in judged(OWN, "2026-11-01", "intend feed pond-ridge 2026-11-20 front").raised
        if f.rule == "feed-closed"
    ]
    assert flag.level == "harm"
    assert "a feeding is meant for a day" in flag.headline
    assert "put it off to Tue 2 Mar" in flag.do
    meant = book("2026-11-01 intend feed pond-ridge 2026-11-20 front", on=OWN)
    assert level(meant, "2026-11-20", "feed-closed") == "harm"
    assert level(meant, "2026-11-21", "feed-closed") == ""
    for line in ("intend feed pond-ridge 2026-11-15 front", "intend feed pot-ash 2026-11-20 front"):
        assert level(book(f"2026-11-01 {line}", on=OWN), "2026-11-01", "feed-closed") == "", line
    assert level(book("2026-11-01 intend feed 2026-11-20 front", on=OWN), "2026-11-01", "feed-closed") == "harm"
    done = book("2026-11-14 feed pond-ridge 2lb/k front", on=meant)
    assert level(done, "2026-11-14", "feed-closed") == ""


def test_where_a_small_dose_is_let_pass_a_plan_is_a_note() -> None:
    pennsylvania = under('local_rules = "us-pa"')
    meant = book("2026-11-01 intend feed pond-ridge 2026-12-20 front", on=pennsylvania)
    assert level(meant, "2026-11-01", "feed-closed") == "note"


def test_frozen_ground_is_closed_wherever_it_lies() -> None:
    fed = "2026-12-05 feed pond-ridge 2lb/k front"
    frozen = raised(book("2026-12-01 see frozen front", fed), "2026-12-05", "feed-closed")
    assert frozen is not None
    assert (frozen.level, frozen.headline) == ("harm", "fed on frozen ground")
    snow = raised(book("2026-12-01 see snow front", fed), "2026-12-05", "feed-closed")
    assert snow is not None
    assert snow.headline == "fed on snow"
    thawed = book("2026-12-01 see frozen front", "2026-12-04 see thawed front", fed)
    assert level(thawed, "2026-12-05", "feed-closed") == ""
    assert level(book(fed, "2026-12-06 see frozen front"), "2026-12-06", "feed-closed") == ""
