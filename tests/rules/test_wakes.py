"""A rule that says what wakes it has nothing to say without it."""

from collections.abc import Iterator
from datetime import date, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from journal.facts.sources import judgment
from journal.record.entry import Entry
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.rules.catalogue import rules
from journal.rules.declare import RULES, Finding, Rule, rule
from journal.rules.flag import Level
from journal.rules.judge import flags_of
from journal.rules.numbers import Numbers
from journal.rules.turns import near_bits, ones
from journal.season.history import History, Past
from tests.rules.seasons import BEGINS, SPAN, entries, kept, lawns, numbered
from tests.rules.test_in_every_book import EDGES
from tests.scenario import book, day

SLEEPERS = [one for one in rules() if one.wakes]
DAYS = range(0, SPAN + 60, 2)


@pytest.fixture
def _own_rules() -> Iterator[None]:
    before = dict(RULES)
    yield
    RULES.clear()
    RULES.update(before)


def _says_nothing_asleep(history: History, one: Rule) -> None:
    for ahead in DAYS:
        past = history.on("front", BEGINS + timedelta(ahead))
        if not one.awake(past):
            assert one.find(past, Numbers(one.id, past.lawn)) == (), f"{one.id} talks in its sleep on {past.date}"


@pytest.mark.parametrize("one", SLEEPERS, ids=lambda one: str(one.id))
@settings(max_examples=8, derandomize=True)
@given(lawns, st.data())
def test_asleep_it_says_nothing(one: Rule, name: str, data: st.DataObject) -> None:
    diary: list[Entry] = numbered(data.draw(entries(one.watches)))
    _says_nothing_asleep(kept(name, diary), one)


@pytest.mark.parametrize("one", SLEEPERS, ids=lambda one: str(one.id))
def test_asleep_it_says_nothing_at_the_edges(one: Rule) -> None:
    for history in EDGES.values():
        _says_nothing_asleep(history, one)


@pytest.mark.usefixtures("_own_rules")
def test_it_wakes_with_the_entry_and_sleeps_when_that_is_too_old() -> None:
    @rule(
        "a-test", levels=(Level.NOTE,), watches=(Mowing, Seeding), turns=(), basis=(judgment("for a test"),),
        wakes={Seeding: 20},
    )  # fmt: skip
    def look(_past: Past, _n: Numbers) -> Finding | None:
        """Always speaks."""
        return Finding(level=Level.NOTE, headline="a", why="b", do="c", clears="d")

    history = book("2026-06-10 seed three-river 9lb front")
    on = {f"2026-{when}": bool(flags_of(RULES["a-test"], history.on("front", day(f"2026-{when}"))))
          for when in ("06-09", "06-10", "06-30", "07-01")}  # fmt: skip
    assert list(on.values()) == [False, True, True, False]
    assert not flags_of(RULES["a-test"], history.on("back", day("2026-06-10")))


@pytest.mark.usefixtures("_own_rules")
@pytest.mark.parametrize(("kind", "wide"), [(Feeding, False), (Mowing, True)])
def test_it_can_only_be_woken_by_what_it_watches_in_its_own_zone(kind: type[Entry], wide: bool) -> None:
    def look(_past: Past, _n: Numbers) -> None:
        """Says nothing."""

    with pytest.raises(ValueError, match="woken by what it does not watch"):
        rule("a-test", levels=(), watches=(Mowing,), turns=(), basis=(), whole_lawn=wide, wakes={kind: 3})(look)


@given(st.lists(st.integers(0, 60), min_size=1, max_size=6), st.integers(0, 20))
def test_the_days_near_an_entry(days: list[int], near: int) -> None:
    first = date(2026, 6, 1)
    history = History.of(Mowing(id=f"{n}", date=first + timedelta(d), zones=("front",)) for n, d in enumerate(days))
    track, start = history.track("front", Mowing), first.toordinal() + 10
    found = ones(near_bits(track, near, start, start + 80))
    assert found == [at for at in range(81) if track.near(start + at, near)]
