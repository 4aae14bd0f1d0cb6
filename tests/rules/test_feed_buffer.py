"""Feeding beside water: the edge is kept, or it is asked about."""

import pytest

from journal.line.read import read
from journal.season.history import History
from tests.rules.soil_shed import SHED
from tests.scenario import book, draft, judged, later, lawn, level, raised, the

FED = "2026-06-10 feed pond-ridge 7lb front"


def by_water(place: str = "none", near: str = "20 ft", more: str = "") -> History:
    return lawn(
        ('name = "North Lane"', f'name = "North Lane"\nlocal_rules = "{place}"{more}'),
        ('near_water = "20 ft"', f'near_water = "{near}"'),
        toml=SHED,
    )


def buffer(history: History, on: str = "2026-06-10", zone: str = "front") -> str:
    return level(history, on, "feed-buffer", zone)


def test_without_a_law_it_is_a_note_for_a_week() -> None:
    diary = book(FED, on=by_water())
    assert [buffer(diary, str(later("2026-06-10", at))) for at in (-1, 0, 6, 7)] == ["", "note", "note", ""]


def test_the_zone_away_from_the_water_is_left_alone() -> None:
    assert buffer(book("2026-06-10 feed pond-ridge 9lb front back", on=by_water()), zone="back") == ""


@pytest.mark.parametrize("words", ["edge kept"])
def test_it_is_gone_once_the_line_says_that_the_edge_was_kept(words: str) -> None:
    assert buffer(book(f"{FED} {words}", on=by_water("us-vt"))) == ""


@pytest.mark.parametrize(
    ("place", "near", "expected"),
    [
        ("us-vt", "24 ft", "harm"), ("us-vt", "25 ft", "note"),  # 25 ft: 10 V.S.A. s.1266b
        ("us-ny", "19 ft", "harm"), ("us-ny", "20 ft", "note"),  # 20 ft: Environmental Conservation Law s.17-2103
        ("us-md", "14 ft", "harm"), ("us-md", "15 ft", "note"),  # 15 ft: Agriculture Article s.8-803.5
        ("us-ma", "10 ft", "note"),  # remembered, not confirmed
        ("us-il", "10 ft", "note"),  # speaks to those who are hired
        ("us-mn", "10 ft", "note"),  # no distance in it
    ],
)  # fmt: skip
def test_inside_a_confirmed_distance_it_is_harm(place: str, near: str, expected: str) -> None:
    assert buffer(book(FED, on=by_water(place, near))) == expected


def test_the_owners_own_local_distance_counts() -> None:
    own = '\nlocal_buffer = "50 ft"'
    assert buffer(book(FED, on=by_water(near="40 ft", more=own))) == "harm"
    flag = raised(book(FED, on=by_water(near="40 ft", more=own)), "2026-06-10", "feed-buffer")
    assert flag is not None
    assert "your local rule asks for 50 ft" in flag.why


def test_harm_holds_the_line_back() -> None:
    assert judged(by_water("us-vt"), "2026-06-10", "feed pond-ridge 7lb front").holds_back


def test_lime_and_a_supplement_are_let_pass_and_a_weed_and_feed_is_not() -> None:
    assert buffer(book("2026-06-10 feed grey-lime 60lb front", on=by_water("us-vt"))) == ""
    assert buffer(book("2026-06-10 feed kelp-mix 9floz front", on=by_water("us-vt"))) == ""
    assert buffer(book("2026-06-10 treat green-gate 7lb front", on=by_water("us-vt"))) == "harm"
    assert buffer(book("2026-06-10 treat green-gate 7lb front edge kept", on=by_water("us-vt"))) == ""


def test_how_far_is_far_is_the_owners_to_say() -> None:
    assert buffer(book(FED, on=by_water(near="120 ft"))) == ""
    assert buffer(book("2026-05-01 set feed-buffer distance 150ft", FED, on=by_water(near="120 ft"))) == "note"
    assert buffer(book("2026-05-01 set feed-buffer distance 0ft", FED, on=by_water("us-vt"))) == "harm"


def test_distances_are_said_in_feet_or_metres() -> None:
    flag = raised(book(FED, on=by_water("us-vt")), "2026-06-10", "feed-buffer")
    assert flag is not None
    assert "water is 20 ft away, and Vermont asks for 25 ft" in flag.why
    assert flag.numbers["local-buffer"].words == "25 ft"
    metric = book(FED, on=by_water("us-vt", "6 m", '\nunits = "metric"'))
    said = raised(metric, "2026-06-10", "feed-buffer")
    assert said is not None
    assert "water is 6 m away, and Vermont asks for 7.6 m" in said.why


def test_what_the_plan_offers_there_keeps_the_edge_and_is_not_asked_about() -> None:
    diary = book("2026-04-20 feed pond-ridge 4lb/k front back edge kept", on=by_water("us-vt"))
    step = the(diary, "2026-06-10", "feed")
    assert step.line.endswith(" front edge kept")
    assert "leave out the strip along the water" in step.amount
    assert read(step.line, diary, draft(diary, "2026-06-10 note here").date).problem is None
    assert "feed-buffer" not in {flag.rule for flag in judged(diary, "2026-06-10", step.line).raised}
    assert not the(diary, "2026-06-10", "feed", "back").line.endswith("edge kept")
