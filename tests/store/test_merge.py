"""Copies of a book that grew apart: whatever is brought together, in any order, gives the same."""

from __future__ import annotations

import random
import shutil
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from journal.store.change import NotSaved, Part, Version
from journal.store.codec import decode, encode
from journal.store.heads import Lineage
from journal.store.scan import scan
from journal.store.stamp import as_stamp
from tests.store.rigs import Clock, a_book, mowing, reopened

History = tuple[list[tuple[str, int, Any]], list[int], random.Random]
COMPUTERS = ("attic", "barn", "cellar")
ENTRIES = ("a", "b", "c")


class Computer:
    """One copy of the book, in memory, with a clock that may be wrong."""

    def __init__(self, name: str, ahead: int) -> None:
        self.name = name
        self.clock = Clock()
        self.clock.later(days=ahead)
        self.lineage = Lineage()
        self.lines: list[bytes] = []

    def write(self, *wanted: tuple[str, int | None]) -> None:
        lines = self.lineage.table("entries")
        parts = [
            Part("entries", entry, tuple(head.name for head in lines.heads(entry)), doc if doc is None else {"x": doc})
            for entry, doc in wanted
        ]
        self.clock.later(seconds=1)
        n = self.lineage.latest_n.get(self.name, 0) + 1
        self.take_in([encode(n, as_stamp(self.clock()), self.name, parts)])

    def take_in(self, lines: list[bytes]) -> None:
        self.lines += [line for line in lines if line not in self.lines]
        self.lineage.take_in(version for line in lines for version in decode(line))


def view(lineage: Lineage) -> tuple[object, ...]:
    lines = lineage.table("entries")
    return (
        {id: version.name for id, version in lines.winner.items()},
        lines.documents == {id: v.document for id, v in lines.winner.items() if v.document is not None},
        dict(lines.documents),
        {id: [loser.name for loser in losers] for id, losers in lines.losers.items()},
        {id: [head.name for head in lines.heads(id)] for id in lines.winner},
    )


def of(lines: list[bytes]) -> Lineage:
    lineage = Lineage()
    lineage.take_in(version for line in lines for version in decode(line))
    return lineage


steps = st.lists(
    st.one_of(
        st.tuples(
            st.just("write"),
            st.sampled_from(range(3)),
            st.dictionaries(st.sampled_from(ENTRIES), st.none() | st.integers(0, 3), min_size=1, max_size=2),
        ),
        st.tuples(st.just("bring"), st.sampled_from(range(3)), st.sampled_from(range(3))),
    ),
    max_size=14,
)
histories = st.tuples(steps, st.lists(st.integers(-2, 2000), min_size=3, max_size=3), st.randoms(use_true_random=False))


def lived(history: History) -> list[Computer]:
    acted, ahead, chance = history
    computers = [Computer(name, days) for name, days in zip(COMPUTERS, ahead, strict=True)]
    for what, who, more in acted:
        if what == "write":
            computers[who].write(*more.items())
        else:
            lines = computers[more].lines
            computers[who].take_in(chance.sample(lines, chance.randint(0, len(lines))))
    return computers


@given(histories)
@settings(max_examples=150)
def test_merging_is_commutative_associative_and_idempotent(history: History) -> None:
    computers = lived(history)
    chance = history[2]
    every = [line for computer in computers for line in computer.lines]
    one, two, three = (computer.lines for computer in computers)
    whole = view(of(every))
    assert whole[1]
    for order in (one + two + three, three + one + two, two + three + one + one, every * 2):
        assert view(of(order)) == whole
    shuffled = every + chance.sample(every, len(every) // 2)
    chance.shuffle(shuffled)
    bit_by_bit = Lineage()
    accepted: set[str] = set()
    for line in shuffled:
        bit_by_bit.take_in(decode(line))
        assert accepted <= set(bit_by_bit.names)
        accepted = set(bit_by_bit.names)
    assert view(bit_by_bit) == whole
    assert view(of(scan(b"\n".join(shuffled)).versions and shuffled)) == whole
    for computer in computers:
        assert view(computer.lineage) == view(of(computer.lines))  # a restart forgets nothing
        computer.take_in(every)
        assert view(computer.lineage) == whole


@given(histories)
@settings(max_examples=80)
def test_an_edit_that_has_seen_the_others_wins_whatever_the_clocks_say(history: History) -> None:
    computers = lived(history)
    every = [line for computer in computers for line in computer.lines]
    last = computers[0]
    last.take_in(every)
    last.clock.later(days=-5000)
    last.write(("a", 99))
    assert last.lineage.table("entries").documents["a"] == {"x": 99}
    assert [head.by for head in last.lineage.table("entries").heads("a")] == ["attic"]
    assert "a" not in last.lineage.table("entries").losers


@given(histories)
@settings(max_examples=80)
def test_an_edit_beats_a_strike_that_did_not_know_of_it(history: History) -> None:
    attic, barn, _ = lived(history)
    for computer in (attic, barn):
        computer.take_in(attic.lines + barn.lines)
    attic.write(("a", 98))
    barn.clock.later(days=4000)
    barn.write(("a", None))
    attic.take_in(barn.lines)
    lines = attic.lineage.table("entries")
    assert lines.documents["a"] == {"x": 98}
    assert len(lines.heads("a")) == 2
    assert "a" not in lines.losers  # a strike is nothing to show


def test_forged_versions_that_replace_each_other_hide_nothing() -> None:
    made = [
        Version(f"x.{n}.00000000", "entries", "a", (f"x.{3 - n}.00000000",), {"n": n}, None, f"{n}", "x", n, "", 0)
        for n in (1, 2)
    ]
    for order in (made, made[::-1]):
        lineage = Lineage()
        for version in order:
            lineage.take_in([version])
        assert lineage.table("entries").documents["a"] == {"n": 2}
        assert [loser.document for loser in lineage.table("entries").losers["a"]] == [{"n": 1}]


def test_two_copies_that_grew_apart_brought_into_one_folder(tmp_path: Path) -> None:
    desk = a_book(tmp_path / "desk")
    shared = [change.id for change in desk.add([mowing(n) for n in range(3)])]
    shutil.copytree(tmp_path / "desk", tmp_path / "laptop")
    laptop = a_book(tmp_path / "laptop", "laptop-91c0", clock=Clock(2026, 5, 4))
    desk.amend(shared[0], mowing(10))
    laptop.amend(shared[0], mowing(20))
    laptop.strike(shared[1])
    desk.amend(shared[1], mowing(11))
    only_desk, only_laptop = desk.add([mowing(12)])[0].id, laptop.add([mowing(22)])[0].id
    for path in (tmp_path / "laptop" / "log").iterdir():
        shutil.copy(path, tmp_path / "desk" / "log" / f"{path.name} (copy 1)")
    moved = {change.id: (change.before, change.after) for change in desk.refresh()}
    assert moved == {shared[0]: (mowing(10), mowing(20)), only_laptop: (None, mowing(22))}
    assert dict(desk.entries()) == {
        shared[0]: mowing(20), shared[1]: mowing(11), shared[2]: mowing(2),
        only_desk: mowing(12), only_laptop: mowing(22),
    }  # fmt: skip
    assert desk.conflicts() == {shared[0]: (mowing(10),)}
    assert desk.refresh() == ()
    assert not desk.check().problems
    for path in (tmp_path / "desk" / "log").iterdir():
        shutil.copy(path, tmp_path / "laptop" / "log" / f"from-desk-{path.name}")
    laptop.refresh()
    assert laptop.entries() == desk.entries() == reopened(tmp_path / "laptop").entries()
    assert laptop.conflicts() == desk.conflicts()
    laptop.amend(shared[0], mowing(30))
    assert laptop.conflicts() == {}


def test_what_others_wrote_is_told_once_however_it_was_noticed(tmp_path: Path) -> None:
    ours, theirs = a_book(tmp_path / "lawn"), a_book(tmp_path / "lawn", "laptop-91c0")
    (one,) = theirs.add([mowing(1)])
    theirs.amend(one.id, mowing(2))
    (two,) = theirs.add([mowing(3)])
    ours.add([mowing(9)])  # takes theirs in on the way
    theirs.refresh()
    ours.refresh()
    theirs.amend(two.id, mowing(4))
    (three,) = theirs.add([mowing(5)])
    theirs.strike(three.id)
    (told,) = [change for change in ours.refresh() if change.id == two.id]
    assert (told.before, told.after, told.by) == (mowing(3), mowing(4), "laptop-91c0")
    assert ours.refresh() == ()


@pytest.mark.parametrize("seed", range(15))
def test_a_restart_shows_what_memory_showed(tmp_path: Path, seed: int) -> None:
    chance, times = random.Random(seed), 3  # ids differ from run to run, so a story can't be replayed to the letter
    folder = tmp_path / "lawn"
    clock = Clock()
    books = [a_book(folder, name, clock=clock) for name in ("desk", "desk", "laptop")]
    refusals: list[str] = []
    for _ in range(times * 8):
        book = chance.choice(books)
        clock.later(days=chance.choice((0, 0, 0, 90)))
        book.refresh()
        ids = sorted(book.entries())
        act = chance.randrange(5)
        if act == 0 or not ids:
            book.add([mowing(chance.randrange(99)) for _ in range(chance.randint(1, 3))])
        elif act == 1:
            book.amend(chance.choice(ids), mowing(chance.randrange(99)))
        elif act == 2:
            book.strike(chance.choice(ids))
        else:
            changes = (book.newest_undoable if act == 3 else book.newest_redoable)()
            try:
                undone = book.undo(changes)
            except NotSaved as why:
                refusals.append(str(why))
            else:
                assert [change.after for change in undone] == [change.before for change in changes]
    assert all("changed since (on " in words for words in refusals)  # only another computer may come between
    for book in books:
        book.refresh()
        fresh = reopened(folder)
        assert book.entries() == fresh.entries()
        assert book.conflicts() == fresh.conflicts() == {}
        assert not book.check().problems
