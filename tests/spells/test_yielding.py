"""Flags that give way to others, in days: two made-up rules under the names of a row of the table."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import date

import pytest

from journal.facts.sources import judgment
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.treatment import Treatment
from journal.rules.declare import RULES, Finding, Found, rule
from journal.rules.flag import Level
from journal.rules.numbers import LABEL, Numbers
from journal.rules.turns import after
from journal.season.history import History, Past
from journal.spells import End, Spell, of_zone
from tests.scenario import book, day

FIRST, LAST = day("2026-06-01"), day("2026-07-31")
Days = list[tuple[date, date | None, End | None]]


@pytest.fixture(autouse=True)
def _own_rules() -> Iterator[None]:
    before = dict(RULES)
    yield
    RULES.clear()
    RULES.update(before)


def _stands(id: str, kind: type[Mowing] | type[Treatment], stands: int, level: Level = Level.LATE) -> None:
    """A rule that speaks so many days after each entry of a kind, and rests on that entry."""
    RULES.pop(id, None)

    @rule(id, levels=(level,), watches=(kind, Mowing), turns=(after(kind, stands - 1), after(Mowing)),
          basis=(judgment("for a test"),))  # fmt: skip
    def look(past: Past, _n: Numbers) -> Finding | None:
        """Speaks for a few days."""
        last = past[kind].last
        if last is None or past.day - last.day >= stands:
            return None
        mown = past[Mowing].last
        evidence = (last.id, mown.id) if mown is not None and mown.day == past.day else (last.id,)
        return Finding(level=level, headline=f"{id} speaks", why="b", do="c", clears="d", evidence=evidence)


def _of(history: History, loser: str, winner: str) -> list[Spell]:
    found = of_zone(history, "front", FIRST, LAST, (RULES[loser], RULES[winner]))
    return sorted((one for one in found if one.rule == loser), key=lambda one: one.rose)


def _days(found: list[Spell]) -> Days:
    return [(one.rose, one.cleared, one.ended) for one in found]


def test_it_goes_when_the_other_comes_and_comes_back_after_it() -> None:
    _stands("barrier-before-seed", Treatment, 20)
    _stands("seed-over-residue", Mowing, 5, Level.LOSS)
    diary = book("2026-06-10 treat leaf-off front", "2026-06-15 mow 3in front")
    assert _days(_of(diary, "barrier-before-seed", "seed-over-residue")) == [
        (date(2026, 6, 10), date(2026, 6, 15), End.YIELDED), (date(2026, 6, 20), date(2026, 6, 30), End.CLEARED),
    ]  # fmt: skip


def test_in_another_zone_it_stays() -> None:
    _stands("barrier-before-seed", Treatment, 20)
    _stands("seed-over-residue", Mowing, 5, Level.LOSS)
    diary = book("2026-06-10 treat leaf-off front", "2026-06-15 mow 3in back")
    assert len(_of(diary, "barrier-before-seed", "seed-over-residue")) == 1


def test_over_one_entry_it_yields_only_on_days_on_which_both_rest_on_it() -> None:
    _stands("treat-hot", Treatment, 20)
    _stands("treat-dormant", Mowing, 5, Level.LOSS)
    diary = book("2026-06-10 treat leaf-off front", "2026-06-15 mow 3in front")
    assert _days(_of(diary, "treat-hot", "treat-dormant")) == [
        (date(2026, 6, 10), date(2026, 6, 15), End.YIELDED), (date(2026, 6, 16), date(2026, 6, 30), End.CLEARED),
    ]  # fmt: skip


@pytest.mark.parametrize(("level", "ended"), [(Level.NOTE, End.YIELDED), (Level.LOSS, End.CLEARED)])
def test_a_row_for_one_level_leaves_the_others(level: Level, ended: End) -> None:
    _stands("label-interval", Treatment, 10, level)
    _stands("label-unknown", Mowing, 5)
    diary = book("2026-06-10 treat leaf-off front", "2026-06-19 mow 3in front")
    assert _of(diary, "label-interval", "label-unknown")[0].ended is ended


def test_a_row_for_defaults_leaves_what_the_label_says() -> None:
    _stands("label-interval", Treatment, 10, Level.NOTE)
    _stands("label-unknown", Mowing, 5)
    diary = book("2026-06-10 treat leaf-off front", "2026-06-19 mow 3in front")
    find = RULES["label-interval"].predicate

    def of_the_label(past: Past, n: Numbers) -> Found:
        n.tell("repeat", 28, "d", LABEL, judgment("for a test"))
        return find(past, n)

    RULES["label-interval"] = replace(RULES["label-interval"], predicate=of_the_label)
    assert _of(diary, "label-interval", "label-unknown")[0].ended is End.CLEARED
