"""The demo book is read from its rows as its owner typed them; every row is a test of the line."""

import sys
from collections import Counter
from dataclasses import replace
from datetime import UTC, date, datetime
from functools import cache
from subprocess import run

import pytest

from journal.cli.demo import OPENS
from journal.cli.demo.book import DemoProblem, entries, lawn_toml, lines, read_season
from journal.line.read import read
from journal.line.say import say
from journal.line.verb import find_verb
from journal.record.document import from_document, to_document
from journal.record.entry import KINDS, VERBS, Entry, slots
from journal.record.kinds.setting import Setting
from journal.season.history import History
from journal.store.stamp import new_ids

SMALL = """
[lawn]
name = "Small"
[[zone]]
name = "front"
"""


@cache
def book() -> tuple[Entry, ...]:
    return entries()


@cache
def typed() -> tuple[tuple[date, str], ...]:
    return tuple(lines())


def written() -> tuple[Entry, ...]:
    """The entries that come from rows, one for each row."""
    return book()[len(book()) - len(typed()) :]


def test_every_row_is_read() -> None:
    assert [entry.line for entry in written()] == [line for _, line in typed()]
    assert 350 <= len(typed()) <= 600


def test_the_lawn_comes_from_the_set_up_file_alone() -> None:
    first = book()[: len(book()) - len(typed())]
    assert all(isinstance(entry, Setting) and not entry.line for entry in first)
    assert {entry.date for entry in first} == {typed()[0][0]}


def test_ids_follow_the_order_of_writing() -> None:
    ids = [entry.id for entry in book()]
    assert ids == sorted(set(ids))


def test_a_fact_changed_in_the_demo_counts_though_the_real_clock_runs_years_behind() -> None:
    history = History.of(book())
    draft = read("set side slope steep", history, OPENS).draft
    assert draft is not None
    id = new_ids(lambda: datetime(2020, 1, 1, tzinfo=UTC), 1)[0]
    zone = history.plus(replace(draft, id=id)).lawn(OPENS).zone("side")
    assert zone is not None
    assert zone.slope == "steep"


def test_days_never_go_back_and_none_lies_on_or_after_the_opening_day() -> None:
    days = [day for day, _ in typed()]
    assert days == sorted(days)
    assert days[-1] < OPENS
    assert max(entry.date for entry in book()) < OPENS
    assert (OPENS - days[0]).days > 900


def test_every_kind_of_entry_and_every_verb_occurs() -> None:
    assert set(KINDS) - {entry.kind for entry in book()} == set()
    said = {find_verb(line.split()[0]).name for _, line in typed()}
    assert set(VERBS) - said == set()


def test_any_entry_said_is_read_as_itself_again() -> None:
    history = History.of(book())
    for entry in book():
        lawn = history.lawn(entry.date)
        again = read(say(entry, lawn), history, entry.date)
        assert again.problem is None, f"{entry.line} -> {say(entry, lawn)}: {again.problem}"
        assert again.draft is not None
        assert replace(again.draft, id=entry.id, line=entry.line, assumed=entry.assumed) == entry, entry.line


def test_any_entry_is_kept_as_itself() -> None:
    for entry in book():
        assert from_document(entry.id, to_document(entry)) == entry


def test_no_row_assumes_an_amount_a_rate_or_a_date() -> None:
    never = {"date", "cost", "wind_m_s", "temp_c", "depth_mm"}
    for entry in book():
        doses = {name for name, slot in slots(type(entry)).items() if slot.dose and name != "product"}
        assert not set(entry.assumed) & (doses | never), entry.line


def test_the_usual_is_taken_often_and_zones_are_seldom_left_out() -> None:
    assumed = Counter(name for entry in book() for name in entry.assumed)
    assert assumed["height_mm"] > 10
    assert assumed["minutes"] > 10
    assert 0 < assumed["zones"] < 60


def test_no_kind_is_wallpaper() -> None:
    kinds = Counter(entry.kind for entry in book())
    assert kinds["mowing"] > 60
    assert kinds["watering"] > 40
    assert kinds["remark"] >= 10
    assert max(kinds.values()) < len(book()) / 4


def test_the_ground_can_be_read_on_every_day() -> None:
    history = History.of(book())
    assert [lawn.problems for lawn in (history.lawn(day) for day, _ in typed()) if lawn.problems] == []


@pytest.mark.parametrize(
    ("season", "told"),
    [
        ("2024-08-17  mow 3in front\n2024-08-18  mow 3lbs front\n", "row 2: mow 3lbs front: 3lbs"),
        ("# nothing\n\n2024-13-17  mow\n", "row 3: 2024-13-17"),
        ("2024-08-17 mow\n", "row 1"),
        ("2024-08-17  mow\n2024-08-16  mow\n", "row 2: 2024-08-16 comes after 2024-08-17"),
        ("# only a remark\n", "no rows"),
    ],
)
def test_a_bad_row_is_named(season: str, told: str) -> None:
    with pytest.raises(DemoProblem, match=told):
        read_season(SMALL, season)


def test_a_row_knows_only_what_came_before() -> None:
    found = read_season(SMALL, "2024-08-17  mow 2.5in front\n2024-08-20  mow\n2024-08-24  mow 3in front\n")
    assert [getattr(entry, "height_mm", None) for entry in found[-3:]] == [63.5, 63.5, 76.2]


def test_the_screens_library_is_not_needed() -> None:
    code = (
        "import sys, journal.cli.demo.book as demo; demo.entries(); "
        "sys.exit(any(name in sys.modules for name in ('textual', 'rich')))"
    )
    assert run([sys.executable, "-c", code], check=False, timeout=60).returncode == 0


def test_the_renovation_is_told_by_a_row_and_not_by_the_set_up_file() -> None:
    assert "renovated" not in lawn_toml()
