"""What holds of every rule in every book, whatever was logged."""

import os
from datetime import date, timedelta

from hypothesis import given, settings
from hypothesis import strategies as st

from journal.record.entry import Entry
from journal.rules.catalogue import rules
from journal.rules.judge import Answer, answers, flags_of, judged
from journal.season.history import History
from journal.standing import findings, preflight, standing
from tests.rules.seasons import BEGINS, SPAN, entries, kept, lawns, numbered

MANY = int(os.environ.get("SWARDBOOK_SEASONS", "12"))
"""Seasons tried a test."""

few = settings(max_examples=MANY, derandomize=True)
FIRST = BEGINS.toordinal()
days = st.integers(0, SPAN + 60).map(lambda ahead: BEGINS + timedelta(ahead))


def _day_by_day(book: History, rule_at: int, zone: str) -> list[frozenset[Answer]]:
    rule = rules()[rule_at]
    found = []
    for ahead in range(SPAN + 90):
        past = book.on(zone, BEGINS + timedelta(ahead))
        found.append(frozenset((f.subject, f.level) for f, _ in judged(rule, past)))
    return found


@few
@given(lawns, entries(), st.integers(0, len(rules()) - 1))
def test_judging_turn_days_is_judging_every_day(name: str, diary: list[Entry], rule_at: int) -> None:
    book = kept(name, numbered(diary))
    rule = rules()[rule_at]
    every_day = _day_by_day(book, rule_at, "front")
    turned = dict(answers(rule, book, "front", FIRST, FIRST + len(every_day) - 1))
    holds = turned[FIRST]
    for ahead, found in enumerate(every_day):
        holds = turned.get(FIRST + ahead, holds)
        assert holds == found, f"{rule.id} turns on {BEGINS + timedelta(ahead)}"


@few
@given(lawns, entries(), days)
def test_a_flag_rose_on_the_first_day_of_its_spell(name: str, diary: list[Entry], on: date) -> None:
    book = kept(name, numbered(diary))
    first_on_file = min(day for day in (book.set_up, book.oldest) if day)
    for rule in rules():
        for flag in flags_of(rule, book.on("front", on)):
            day = on
            while day > first_on_file and flag.subject in {
                f.subject for f, _ in judged(rule, book.on("front", day - timedelta(1)))
            }:
                day -= timedelta(1)
            assert flag.rose == day, flag.id


@few
@given(lawns, entries(), days)
def test_what_is_dated_later_changes_no_flag(name: str, diary: list[Entry], on: date) -> None:
    diary = numbered(diary)
    everything = kept(name, diary)
    until = kept(name, [entry for entry in diary if entry.date <= on])
    assert findings(everything, on) == findings(until, on)


@few
@given(lawns, entries(), days, st.randoms(use_true_random=False))
def test_the_order_of_logging_changes_no_flag(name: str, diary: list[Entry], on: date, random: object) -> None:
    diary = numbered(diary)
    other = list(diary)
    random.shuffle(other)  # type: ignore[attr-defined]
    assert findings(kept(name, diary), on) == findings(kept(name, other), on)


@few
@given(lawns, entries(), days)
def test_one_zone_knows_nothing_of_another(name: str, diary: list[Entry], on: date) -> None:
    diary = numbered(diary)
    wide = {rule.id for rule in rules() if rule.whole_lawn}
    everything = findings(kept(name, diary), on)
    oldest = min((e for e in diary), key=lambda e: e.date)
    without = findings(kept(name, [e for e in diary if e.zones != ("back",) or e is oldest]), on)

    def front(found: object) -> list[object]:
        return [f for f in found if f.zones == ("front",) and f.rule not in wide]  # type: ignore[attr-defined]

    assert front(everything) == front(without)


@few
@given(lawns, entries(), days)
def test_a_draft_raises_what_then_stands_and_clears_what_then_is_gone(
    name: str, diary: list[Entry], today: date
) -> None:
    *diary, draft = numbered(diary)
    book = kept(name, [entry for entry in diary if entry.date <= today])
    on = max(today, draft.date)
    before, after = standing(book, on), standing(book.plus(draft), on)
    found = preflight(book, draft, today)
    assert found == preflight(book, draft, today, before)
    stands = {(f.rule, zone, f.subject, f.level) for f in after.flags for zone in f.zones}
    stood = {(f.rule, zone, f.subject, f.level) for f in before.flags for zone in f.zones}
    raised = {(f.rule, zone, f.subject, f.level) for f in found.raised for zone in f.zones}
    assert raised <= stands
    assert stands - stood <= raised
    gone = {key[:3] for key in stood} - {key[:3] for key in stands}
    assert {(f.rule, zone, f.subject) for f in found.cleared for zone in f.zones} == gone
