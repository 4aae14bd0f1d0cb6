"""Lines that change facts of the lawn, their order, and taking one back."""

from dataclasses import replace
from datetime import date

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from journal.facts.house import NUMBERS
from journal.line.read import read, read_change
from journal.line.say import say
from journal.record.clean import clean
from journal.record.fold import Ground
from journal.record.kinds.setting import Setting
from journal.season.history import History
from tests.line.lawns import TODAY, US, a_history, drafted, logged

BOOK = a_history(US)


def area(history: History, day: date) -> float | None:
    zone = history.lawn(day).zone("front")
    assert zone is not None
    return None if zone.area_m2 is None else round(zone.area_m2 / 0.09290304)


def test_a_correction_holds_for_the_past_and_a_dated_change_from_its_day_on() -> None:
    history = logged(BOOK, ["set front area 2300sqft", "set front area 2100sqft from 2027-04-01"])
    assert area(history, date(2020, 1, 1)) == 2300
    assert area(history, date(2027, 3, 31)) == 2300
    assert area(history, date(2027, 4, 1)) == 2100
    later = logged(history, ["set front area 2350sqft"])
    assert area(later, date(2027, 3, 31)) == 2350
    assert area(later, date(2027, 4, 1)) == 2100


def test_dated_changes_follow_each_other_by_their_days_not_by_when_they_were_written() -> None:
    history = logged(BOOK, ["set front area 2000sqft from 2027-03-01", "set front area 1900sqft from 2026-03-01"])
    days = [date(2026, 1, 1), date(2026, 3, 1), date(2027, 2, 28), date(2027, 3, 1)]
    assert [area(history, day) for day in days] == [2400, 1900, 1900, 2000]


def test_of_two_corrections_the_later_written_counts_whatever_order_they_come_in() -> None:
    one = Setting(id="a1", date=TODAY, what="zone", name="front", values=(("area", "1sqft"),))
    two = Setting(id="a2", date=date(2026, 1, 1), what="zone", name="front", values=(("area", "2sqft"),))
    for order in ((one, two), (two, one)):
        zone = Ground.of(order).on(TODAY).zone("front")
        assert zone is not None
        assert zone.area_m2 == pytest.approx(0.18580608)


def test_a_change_not_yet_saved_counts_as_the_newest() -> None:
    draft = drafted("set front area 1000sqft", BOOK)
    assert draft.id == ""
    assert area(BOOK.plus(draft), TODAY) == 1000


def test_taking_a_setting_back_restores_what_was() -> None:
    for line in ("set front area 2100sqft from 2027-04-01", "set front area 2100sqft", "zone side 10sqft",
                 "set mow-gap off",
                 "set mow-gap days 12", "set quiet-lane bag 40lb", "product dusk-mix kind seed",
                 "set units metric"):  # fmt: skip
        setting = replace(drafted(line, BOOK), id="z1")
        changed = BOOK.plus(setting)
        assert changed.lawn(TODAY) != BOOK.lawn(TODAY), line
        back = changed.minus(setting)
        assert back.lawn(TODAY) == BOOK.lawn(TODAY)
        assert back.lawn(date(2027, 4, 1)) == BOOK.lawn(date(2027, 4, 1))
        assert dict(back.lawn(TODAY).said) == dict(BOOK.lawn(TODAY).said)


def test_every_threshold_can_be_set_within_its_range_and_only_there() -> None:
    for number in NUMBERS:
        unit = {"x": "x", "%": "%", "d": "d"}.get(number.unit, number.unit)
        for value, allowed in ((number.low, True), (number.high, True), (number.high * 1.01 + 1, False)):
            line = f"set {number.rule} {number.name} {value:.12f}{unit}".replace("-0.000000000000", "0")
            if number.unit == "C" or value != number.low:
                reading = read(line, BOOK, TODAY)
                assert (reading.problem is None) or not allowed or value in (number.low, number.high), line
            if not allowed:
                assert read(line, BOOK, TODAY).problem is not None, line
        default = f"set {number.rule} {number.name} {number.default:.9f}{unit}"
        lawn = logged(BOOK, [default]).lawn(TODAY)
        assert lawn.numbers[number.rule, number.name] == pytest.approx(number.default, abs=1e-6)


def test_a_threshold_may_leave_out_the_unit_of_days_and_times() -> None:
    lawn = logged(BOOK, ["set mow-gap days 12"]).lawn(TODAY)
    assert lawn.numbers["mow-gap", "days"] == 12
    assert lawn.said["rule", "mow-gap", "days"] == "12d"


def test_a_rule_is_switched_off_and_on() -> None:
    off = logged(BOOK, ["set mow-gap off"])
    assert off.lawn(TODAY).off == {"mow-gap"}
    assert logged(off, ["set feed-overdue off", "set mow-gap on"]).lawn(TODAY).off == {"feed-overdue"}


def test_a_document_that_says_nonsense_is_told_and_harms_nothing() -> None:
    history = BOOK
    for number, (what, values) in enumerate(
        [("planet", (("area", "3m2"),)), ("zone", (("area", "blue"),)), ("lawn", (("growth", "99-99 1"),)),
         ("product", (("colour", "red"),)), ("rule", (("days", "x"),)), ("lawn", (("last_frost", "99999999999-1"),))]
    ):  # fmt: skip
        history = history.plus(Setting(id=f"x{number}", date=TODAY, what=what, name="front", values=values))
    assert len(history.lawn(TODAY).problems) == 6
    assert area(history, TODAY) == 2400


LINES = [
    "set front area 2100sqft from 2027-04-01 on 2027-03-30 -- measured again",
    "set name Home on the hill",
    'set name "walk on mon"',
    'set name "it\'s 5"" high"',
    'set quiet-lane site "lawns from 5/15 on"',
    'set quiet-lane maker "rate and bag"',
    "set mow-gap off",
    "set mow-gap on",
    "set mow-gap days 12 from 2027-06-01",
    "zone side",
    "zone side 10sqft sun part trees yes !",
    "set front circuits A 60% 0.5in/h; B 40% 0.9in/h",
    "product dusk-mix kind seed mix kentucky bluegrass 50%, tall fescue 50%",
    "set gate actives prodiamine 0.38%; 2,4-D",
    "set quiet-lane rate 3 lb/k to 4 lb/k",
]


@pytest.mark.parametrize("line", LINES)
def test_a_setting_said_is_the_setting_again(line: str) -> None:
    entry = replace(drafted(line, BOOK), id="s9")
    assert isinstance(entry, Setting)
    said = say(entry, BOOK.lawn(TODAY))
    bare = Setting(id="s9", date=date(2024, 1, 1))
    reading = read_change(said, bare, BOOK, TODAY)
    assert reading.draft is not None, f"{said}: {reading.problem}"
    assert replace(reading.draft, line="") == replace(entry, line="")


@settings(max_examples=60)
@given(st.text(min_size=1, max_size=30).map(clean).filter(bool), st.sampled_from(["name", "local_rules"]))
def test_any_words_of_a_free_fact_are_said_again(words: str, key: str) -> None:
    entry = Setting(id="s9", date=TODAY, what="lawn", values=((key, words),))
    reading = read_change(say(entry, BOOK.lawn(TODAY)), Setting(id="s9", date=date(2024, 1, 1)), BOOK, TODAY)
    assert reading.draft is not None, reading.problem
    assert replace(reading.draft, line="") == entry
