"""What is said of the past is what was said on each of its days."""

from collections.abc import Iterator
from datetime import date, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from journal.record.entry import Entry
from journal.record.kinds.hiding import Aside, Snooze
from journal.rules.flag import Flag, Level
from journal.season.history import History
from journal.spells import End, Spell, first_day, spells
from journal.standing import findings
from tests.rules.seasons import BEGINS, SPAN, entries, kept, lawns, numbered
from tests.rules.test_in_every_book import EDGES
from tests.scenario import book, weather

LAST = BEGINS + timedelta(SPAN + 60)
Said = tuple[str, str, str, Level, bool]
"""Rule, zone, subject, level, and whether it is out of sight."""

few = settings(max_examples=12, derandomize=True, deadline=None)

_hidings = st.lists(
    st.tuples(
        st.sampled_from(["mow-gap", "seedbed-dry", "feed-overdue", "mow-height/front", "seed-switch/front/stone-wall"]),
        st.sampled_from([(), ("front",)]),
        st.integers(60, SPAN), st.sampled_from([None, 3, 30]),
    ),
    max_size=4,
)  # fmt: skip


def _hidden(made: list[tuple[str, tuple[str, ...], int, int | None]]) -> Iterator[Entry]:
    for flag, zones, ahead, days in made:
        on = BEGINS + timedelta(ahead)
        if days is None:
            yield Aside(date=on, zones=zones, flag=flag, remark="as we like it")
        else:
            yield Snooze(date=on, zones=zones, flag=flag, until=on + timedelta(days))


def _gravest(found: tuple[Flag, ...]) -> set[Said]:
    """One of each flag: where a rule says two things of one subject, the graver."""
    said: dict[tuple[str, str, str], Flag] = {}
    for flag in found:
        key = flag.rule, flag.zones[0], flag.subject
        if key not in said or flag.level.gravity > said[key].level.gravity:
            said[key] = flag
    return {(*key, flag.level, bool(flag.hidden)) for key, flag in said.items()}


def _on(found: tuple[Spell, ...], day: date) -> set[Said]:
    """What these spells say of one day."""
    return {
        (spell.rule, zone, spell.subject, [s.level for s in spell.stages if s.since <= day][-1], _unseen(spell, day))
        for spell in found
        for zone in spell.zones
        if spell.rose <= day and (spell.cleared is None or day < spell.cleared)
    }


def _unseen(spell: Spell, day: date) -> bool:
    return any(one.since <= day and (one.until is None or day < one.until) for one in spell.unseen)


def _every_day(history: History) -> list[date]:
    first = first_day(history)
    assert first is not None
    return [first + timedelta(ahead) for ahead in range((LAST - first).days + 1)]


def _telling_days(history: History, found: tuple[Spell, ...]) -> list[date]:
    """Every day on which something is said to change, the day before it, and one day a week."""
    changes = {stage.since for spell in found for stage in spell.stages}
    changes |= {spell.cleared for spell in found if spell.cleared}
    changes |= {day for spell in found for one in spell.unseen for day in (one.since, one.until) if day}
    near = changes | {day - timedelta(1) for day in changes}
    return [day for at, day in enumerate(_every_day(history)) if day in near or not at % 7]


def _the_same(history: History) -> None:
    found = spells(history, LAST)
    for day in _telling_days(history, found):
        assert _on(found, day) == _gravest(findings(history, day)), day


@few
@given(lawns, entries(), _hidings)
def test_spells_are_what_was_found_day_by_day(
    name: str, diary: list[Entry], made: list[tuple[str, tuple[str, ...], int, int | None]]
) -> None:
    _the_same(kept(name, numbered([*diary, *_hidden(made)])))


@pytest.mark.parametrize("name", EDGES)
def test_spells_of_the_edges_are_what_was_found_day_by_day(name: str) -> None:
    _the_same(EDGES[name])


RENOVATION = book(
    "2026-04-20 treat spring-wall 9lb front", "2026-05-02 mow 3in front back", "2026-06-14 snooze mow-gap 7d front",
    "2026-08-20 treat leaf-off front", "2026-08-28 seed stone-wall 9lb front", "2026-08-28 feed pond-ridge 7lb front",
    "2026-09-02 mow 1in front", "2026-09-10 aside seed-switch front -- a darker blend", "2026-09-12 water front",
    *weather("2026-08-25", 30, "78F 55F 0in"),
)  # fmt: skip


def test_every_single_day_of_a_renovation_gone_wrong() -> None:
    found = spells(RENOVATION, LAST)
    for day in _every_day(RENOVATION):
        assert _on(found, day) == _gravest(findings(RENOVATION, day)), day


def test_looking_back_from_a_day_is_what_was_known_that_day() -> None:
    for day in (date(2026, 6, 20), date(2026, 9, 1)):
        found = spells(RENOVATION, day)
        assert _on(found, day) == _gravest(findings(RENOVATION, day))
        assert all(spell.cleared is None or spell.cleared <= day for spell in found)


def test_since_leaves_out_what_was_over_by_then() -> None:
    day = date(2026, 9, 1)
    every, later = spells(RENOVATION, LAST), spells(RENOVATION, LAST, day)
    assert later == tuple(spell for spell in every if spell.cleared is None or spell.cleared > day)
    assert any(spell.rose < day for spell in later)
    assert {spell.ended for spell in every} <= {*End, None}
