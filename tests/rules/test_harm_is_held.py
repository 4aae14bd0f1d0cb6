"""Harm is said before it is saved, and keeps the line back until it ends in ` !`: by whatever way it comes."""

import pytest

from journal.line.read import read_change
from journal.line.token import unconfirmed
from journal.record.kinds.hiding import Aside
from journal.rules.catalogue import rules
from journal.rules.flag import Level
from journal.screens.newest import written_lines
from journal.season.history import History
from journal.standing import Preflight, preflight_change
from tests.rules.treated import shed
from tests.scenario import SET_UP, book, day, judged, later, lawn, level

ON = "2026-06-10"
LEAF = 'repeat = "28 d"\nmax_per_year = 2\nmax_amount_per_year = "5 floz/k"\nwind_max = "6 mph"'
NEAR = ('area = "1000 sqft"', 'area = "1000 sqft"\nnear_water = "20 ft"')


def _shed(*changes: tuple[str, str]) -> History:
    own = shed({"leaf-off": LEAF, "clover-out": "professional = true"}, *changes)
    return book(f"{SET_UP} set leaf-off rate 1floz/k 1.5floz/k", on=own)


SPRAYED, SPREAD = f"{ON} treat leaf-off 1floz front 9:00", f"{ON} treat grub-end 2lb front"
MARYLAND = ("[lawn]", '[lawn]\nlocal_rules = "us-md"')
CASES: dict[str, tuple[History, str, str]] = {
    "label-rate": (_shed(), ON, "treat leaf-off 2floz front"),
    "label-interval": (book(SPRAYED, on=_shed()), str(later(ON, 27)), "treat leaf-off 1floz front"),
    "label-year-count": (
        book("2026-03-10 treat leaf-off 1floz front", "2026-04-20 treat leaf-off 1floz front", on=_shed()),
        ON,
        "treat leaf-off 1floz front",
    ),
    "label-year-amount": (
        book("2026-03-10 treat leaf-off 4.5floz front !", on=_shed()),
        ON,
        "treat leaf-off 1floz front",
    ),
    "treat-windy": (_shed(), ON, "treat leaf-off 1floz front wind 7mph"),
    "not-for-lawns": (_shed(), ON, "treat clover-out 1floz front"),
    "buffer": (_shed(NEAR), ON, "treat leaf-off 1floz front"),
    "bloom": (book("2026-06-09 see flowering front", on=_shed()), ON, "treat grub-end 2lb front"),
    "reentry": (book(SPRAYED, on=_shed()), ON, "see traffic front 9:30"),
    "water-in-missing": (book(SPREAD, f"{ON} rain 0in", on=_shed()), str(later(ON, 3)), "see traffic front"),
    "exposure": (book(SPRAYED, on=_shed()), ON, "see exposure"),
    "sign": (
        book(f"{SET_UP} set local_sign 48h", f"{ON} see sign front", SPRAYED, on=_shed()),
        str(later(ON, 1)),
        "see sign-down front",
    ),
    "feed-closed": (lawn(MARYLAND), "2026-12-01", "feed pond-ridge 5lb front"),
    "feed-dose": (lawn(MARYLAND), "2026-05-20", "feed pond-ridge 12lb front"),
    "feed-year": (
        book("2026-04-20 feed pond-ridge 2lb front", on=lawn(("[lawn]", '[lawn]\nlocal_year_n = "0.5 lb/k"'))),
        "2026-06-20",
        "feed pond-ridge 6lb front",
    ),
    "feed-buffer": (
        lawn(("[lawn]", '[lawn]\nlocal_buffer = "25 ft"'), ('name = "front"', 'name = "front"\nnear_water = "10 ft"')),
        "2026-05-20",
        "feed pond-ridge 5lb front",
    ),
    "phosphate-reason": (
        lawn(("[lawn]", '[lawn]\nlocal_rules = "us-mn"')), "2026-05-20", "feed oat-hill 5lb front",
    ),
}  # fmt: skip


def test_every_rule_of_harm_is_among_these() -> None:
    assert {rule.id for rule in rules() if Level.HARM in rule.levels} == set(CASES)


@pytest.mark.parametrize("rule", CASES)
def test_harm_holds_the_line_back(rule: str) -> None:
    history, on, line = CASES[rule]
    found = judged(history, on, line)
    assert rule in _harm(found)
    assert found.holds_back


@pytest.mark.parametrize("rule", CASES)
def test_a_line_that_is_set_aside_beforehand_is_held_back_all_the_same(rule: str) -> None:
    history, on, line = CASES[rule]
    aside = Aside(id="000900", date=day(on), flag=rule, remark="known")
    assert rule in _harm(judged(history.plus(aside), on, line))


def _harm(found: Preflight) -> set[str]:
    return {flag.rule for flag in found.raised if flag.level is Level.HARM}


def _changed(history: History, line: str, on: str, back: int = 1) -> Preflight:
    """What an entry, the newest or one so many before it, would raise as another line."""
    entries = {e.id: e for track in history.tracks.values() for e in track.entries}
    old = entries[f"{history.size - back:06}"]
    reading = read_change(line, old, history, day(on))
    assert reading.draft is not None, reading.problem
    return preflight_change(history, old, reading.draft, day(on))


def test_an_entry_that_is_made_worse_is_held_back_though_its_flag_stood_before() -> None:
    over = book(f"{ON} treat leaf-off 2floz front !", on=_shed())
    assert _harm(_changed(over, f"treat leaf-off 20floz front on {ON}", "2026-06-11")) >= {"label-rate"}
    assert _harm(_changed(over, f"treat leaf-off 2floz front $5 on {ON}", "2026-06-11")) == set()
    assert _harm(_changed(over, f"treat leaf-off 1floz front on {ON}", "2026-06-11")) == set()


def test_a_change_is_held_back_though_another_entry_has_that_flag() -> None:
    windy = book("2026-06-09 treat leaf-off 1floz front wind 8mph !", f"{ON} treat plain-can 1floz front", on=_shed())
    assert "treat-windy" in _harm(_changed(windy, f"treat plain-can 1floz front wind 20mph on {ON}", "2026-06-11"))


@pytest.mark.parametrize("when", ["2026-06-12", "2026-06-30", "2026-09-30"])
def test_harm_of_a_day_gone_by_is_said_when_it_is_written_down(when: str) -> None:
    found = judged(_shed(), when, f"treat leaf-off 5floz front wind 20mph on {ON}")
    assert _harm(found) == {"label-rate", "treat-windy"}
    assert [flag.rule for flag in found.raised].count("label-rate") == 1
    assert not judged(_shed(), when, f"treat leaf-off 1floz front wind 4mph on {ON}").holds_back


def test_a_use_set_between_two_others_is_held_back() -> None:
    twice = book("2026-05-20 treat leaf-off 1floz front", "2026-06-20 treat leaf-off 1floz front", on=_shed())
    assert "label-interval" in _harm(judged(twice, "2026-06-21", "treat leaf-off 1floz front on 6/5"))


@pytest.mark.parametrize("tail", ["by service", "edge kept", "40%", "part 1/2", "back"])
def test_none_of_these_words_lets_a_dose_past(tail: str) -> None:
    assert "label-rate" in _harm(judged(_shed(), ON, f"treat leaf-off 4floz front {tail}"))


def test_the_second_product_of_a_tank_holds_it_back_too() -> None:
    assert "label-rate" in _harm(judged(_shed(), ON, "treat plain-can 1floz + leaf-off 2floz front"))
    assert "bloom" in _harm(
        judged(book("2026-06-09 see flowering front", on=_shed()), ON, "treat plain-can 1floz + grub-end 2lb front")
    )


def test_a_label_or_an_area_put_right_shows_the_harm_that_was_done() -> None:
    used = book(f"{ON} treat leaf-off 1.4floz front", on=_shed())
    for fact in ("set leaf-off rate 0.5floz/k 1floz/k", "set front area 500sqft", "set leaf-off site golf courses"):
        assert judged(used, "2026-06-11", fact).holds_back, fact


def test_an_unknown_product_is_held_to_wind_and_water() -> None:
    assert _harm(judged(_shed(NEAR), ON, "treat unknown front by service wind 20km/h")) == {"buffer", "treat-windy"}


def test_without_an_area_it_is_said_that_the_dose_cannot_be_judged() -> None:
    bare = lawn(('area = "2400 sqft"\n', ""))
    found = judged(bare, ON, "treat leaf-off 20floz front").raised
    assert any(flag.rule == "amount-missing" and "give no rate" in flag.why for flag in found)


def test_a_spot_is_a_note_for_dose_and_days_but_not_for_wind_and_bees() -> None:
    seen = book(SPRAYED, "2026-06-09 see flowering front", on=_shed())
    found = judged(seen, "2026-06-11", "treat leaf-off 1floz spot 40sqft front wind 20mph")
    assert _harm(found) == {"treat-windy"}
    assert {flag.rule for flag in found.raised} >= {"label-rate", "label-interval"}
    assert "bloom" in _harm(judged(seen, "2026-06-11", "treat grub-end spot front"))


def test_a_harm_of_wind_stands_for_a_week() -> None:
    windy = book(f"{ON} treat leaf-off 1floz front wind 20mph !", on=_shed())
    assert level(windy, later(ON, 6), "treat-windy") == "harm"
    assert level(windy, later(ON, 7), "treat-windy") == ""


def test_an_older_line_comes_back_without_its_confirmation() -> None:
    over = book(f"{ON} treat leaf-off 2floz front !", on=_shed())
    assert written_lines(over, 1) == ["treat leaf-off 2floz front"]
    assert unconfirmed("treat leaf-off 2floz front -- watch out!") == "treat leaf-off 2floz front -- watch out!"
