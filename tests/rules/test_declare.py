"""How rules declare themselves, read their numbers, and are listed."""

import json
from collections.abc import Iterator
from dataclasses import replace

import pytest

from journal.facts.citation import Known
from journal.facts.house import NUMBERS
from journal.facts.sources import judgment
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.watering import Watering
from journal.rules.catalogue import listing, rules
from journal.rules.declare import RULES, Finding, rule
from journal.rules.flag import Level
from journal.rules.judge import flags_of
from journal.rules.numbers import HOUSE, Numbers, in_words
from journal.season.history import NotWatched, Past
from tests.scenario import book, day, lawn

BASIS = (judgment("for a test"),)


@pytest.fixture(autouse=True)
def _own_rules() -> Iterator[None]:
    before = dict(RULES)
    yield
    RULES.clear()
    RULES.update(before)


def _plain(level: Level = Level.NOTE) -> Finding:
    return Finding(level=level, headline="a", why="b", do="c", clears="d")


def test_a_rule_sees_only_what_it_declared() -> None:
    @rule("a-test", levels=(Level.NOTE,), watches=(Mowing,), turns=(), basis=BASIS)
    def look(past: Past, _n: Numbers) -> Finding | None:
        """Looks too far."""
        return _plain() if past[Watering] else None

    with pytest.raises(NotWatched):
        flags_of(RULES["a-test"], lawn().on("front", day("2026-06-01")))


def test_a_rule_raises_only_levels_it_declared() -> None:
    @rule("a-test", levels=(Level.NOTE,), watches=(), turns=(), basis=BASIS)
    def shout(_past: Past, _n: Numbers) -> Finding:
        """Shouts."""
        return _plain(Level.HARM)

    with pytest.raises(ValueError, match="a-test"):
        flags_of(RULES["a-test"], lawn().on("front", day("2026-06-01")))


def test_harm_is_never_switched_off() -> None:
    @rule("a-test", levels=(Level.NOTE, Level.HARM), watches=(), turns=(), basis=BASIS)
    def both(_past: Past, _n: Numbers) -> tuple[Finding, ...]:
        """Two at once."""
        return (_plain(), _plain(Level.HARM))

    past = book("2026-06-01 mow 3in front").on("front", day("2026-06-01"))
    off = replace(past, lawn=replace(past.lawn, off=frozenset({"a-test"})))
    assert [flag.level for flag in flags_of(RULES["a-test"], off)] == [Level.HARM]


def test_no_two_rules_share_an_id_and_each_says_what_it_is_about() -> None:
    with pytest.raises(ValueError, match="mow-gap"):
        rule("mow-gap", levels=(), watches=(), turns=(), basis=BASIS)(lambda _past, _n: None)
    with pytest.raises(ValueError, match="a-test"):
        rule("a-test", levels=(), watches=(), turns=(), basis=BASIS)(lambda _past, _n: None)


def test_label_then_owner_then_default() -> None:
    here = lawn().lawn(day("2026-06-01"))
    own = book("2026-06-01 set mow-gap days 12").lawn(day("2026-06-01"))

    def spoken(n: Numbers) -> tuple[float, str]:
        (used,) = n.used("days").values()
        return n._read["days"][0], used.origin

    n = Numbers("mow-gap", here)
    assert n["days"] == 10
    assert spoken(n) == (10, "default")
    n = Numbers("mow-gap", own)
    assert n["days"] == 12
    assert spoken(n) == (12, "yours")
    assert n.bases() == ()
    assert n.stricter("days", of_label=30) == 30
    assert spoken(n) == (30, "label")
    assert n.stricter("days", of_label=30, of_local=40) == 40
    assert spoken(n) == (40, "local rule")
    assert n.stricter("days", of_label=30, of_local=40, strictest=min) == 30
    assert n.bases("days")[0].kind is Known.LABEL


def test_a_number_the_rule_does_not_have() -> None:
    with pytest.raises(LookupError, match=r"mow-gap has no number nights; it has days"):
        Numbers("mow-gap", lawn().lawn(day("2026-06-01")))["nights"]


@pytest.mark.parametrize(
    ("value", "unit", "system", "words"),
    [(10, "d", "us", "10 d"), (88.9, "mm", "us", "3.5 in"), (88.9, "mm", "metric", "88.9 mm"), (2, "x", "us", "2"),
     (15.5555555, "C", "us", "60 f"), (0.67, "%", "us", "0.67 %"), (4.394, "g/m2", "us", "0.9 lb/k")],
)  # fmt: skip
def test_numbers_in_words(value: float, unit: str, system: str, words: str) -> None:
    assert in_words(value, unit, system).casefold() == words


def test_the_listing_is_json_and_names_every_number() -> None:
    rows = json.loads(json.dumps(listing(book("2026-06-01 set mow-gap days 12").lawn(day("2026-06-01")))))
    by_id = {row["id"]: row for row in rows}
    assert set(by_id) == {one.id for one in rules()}
    assert {"feed-overdue", "mow-gap", "seed-switch", "mow-first-early", "mow-height", "seedbed-dry", "starter-missing",
            "starter-wrong", "seed-over-residue", "amount-missing"} <= set(by_id)  # fmt: skip
    gap = by_id["mow-gap"]
    assert gap["levels"] == ["late"]
    (days,) = [number for number in gap["numbers"] if number["name"] == "days"]
    assert (days["default"], days["value"], days["origin"], days["unit"]) == (10, 12, "yours", "d")
    assert days["low"] < days["default"] < days["high"]
    assert days["basis"]["kind"] == "common practice"


def test_every_house_number_belongs_to_a_rule() -> None:
    assert {one.rule for one in NUMBERS} <= {one.id for one in rules()}
    assert set(HOUSE) == {(one.rule, one.name) for one in NUMBERS}
