"""Feeding on days that a local rule closes (Maryland, Agriculture Article s.8-803.5), and on frozen ground."""

import pytest

from journal.season.history import History
from tests.scenario import LAWN, book, judged, later, lawn, level, raised

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
