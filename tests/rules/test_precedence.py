"""Which flag yields to which."""

from dataclasses import replace
from datetime import date
from types import MappingProxyType

import pytest

from journal.facts.sources import judgment
from journal.rules.flag import Flag, Level, NumberUsed
from journal.rules.precedence import TABLE, Where, Yields, settled


def flag(rule: str, *, level: Level = Level.LATE, zone: str = "front", evidence: tuple[str, ...] = ("1",)) -> Flag:
    return Flag(
        id=f"{rule}/{zone}", rule=rule, level=level, zones=(zone,), rose=date(2026, 6, 1), headline="a", why="b",
        do="c", clears="d", evidence=evidence, numbers=MappingProxyType({}), basis=(judgment(),),
    )  # fmt: skip


@pytest.mark.parametrize("row", TABLE, ids=lambda row: f"{row.loser} to {row.winner}")
def test_each_pair_of_the_table(row: Yields) -> None:
    loser = flag(row.loser, level=row.only or Level.LATE)
    winner = flag(row.winner)
    assert settled([loser, winner]) == (winner,)
    assert settled([loser]) == (loser,)
    apart = flag(row.winner, zone="back")
    assert settled([loser, apart]) == (loser, apart)
    other_entry = flag(row.winner, evidence=("2",))
    stands = (other_entry,) if row.where is Where.ZONE else (loser, other_entry)
    assert settled([loser, other_entry]) == stands


def test_only_notes_are_absorbed_by_a_label_that_is_not_entered() -> None:
    harm, unknown = flag("label-interval", level=Level.HARM), flag("label-unknown", level=Level.NOTE)
    assert settled([harm, unknown]) == (harm, unknown)


def test_nothing_yields_to_itself_and_no_two_yield_to_each_other() -> None:
    pairs = {(row.loser, row.winner) for row in TABLE}
    assert all(loser != winner for loser, winner in pairs)
    assert not pairs & {(winner, loser) for loser, winner in pairs}


def test_flags_without_a_row_stand_side_by_side() -> None:
    both = (flag("mow-gap"), flag("seed-switch"))
    assert settled(both) == both


def test_a_note_by_the_labels_own_number_stands_beside_a_label_that_is_not_entered_in_full() -> None:
    by_label = replace(
        flag("label-interval", level=Level.NOTE),
        numbers=MappingProxyType({"repeat": NumberUsed("repeat", "28 d", "label")}),
    )
    unknown = flag("label-unknown", level=Level.NOTE)
    assert settled([by_label, unknown]) == (by_label, unknown)
