"""`flags --history`: what was flagged, from when to when."""

import pytest

from tests.cli.conftest import Run


@pytest.fixture
def mown(lawn: Run) -> Run:
    """Two cuts thirteen days apart, and one more."""
    for today in ("2026-06-01", "2026-06-14", "2026-06-20"):
        assert lawn("log", "mow", "3in", "all", today=today).code == 0
    return lawn


def test_a_gap_is_told_with_its_days(mown: Run) -> None:
    found = mown("flags --history --json", today="2026-06-25").json
    assert (found["as_of"], found["since"]) == ("2026-06-25", "2026-04-01")
    (gap,) = [one for one in found["flags"] if one["rule"] == "mow-gap" and one["rose"] >= "2026-06-01"]
    assert gap["id"] == "mow-gap/front+back"
    assert (gap["rose"], gap["cleared"], gap["ended"]) == ("2026-06-12", "2026-06-14", "cleared")
    assert gap["stages"] == [{"since": "2026-06-12", "level": "late", "headline": "not mown for 11 days"}]
    assert gap["hidden"] == []


def test_what_stands_has_null(mown: Run) -> None:
    found = mown("flags --history --json", today="2026-07-10").json["flags"]
    (gap,) = [one for one in found if one["rule"] == "mow-gap" and one["cleared"] is None]
    assert (gap["rose"], gap["ended"]) == ("2026-07-05", None)


def test_every_day_of_the_history_is_what_was_flagged_that_day(mown: Run) -> None:
    assert mown("log", "aside", "mow-gap", "back", "--", "a meadow", today="2026-06-13").code == 0
    told = mown("flags --history --json --until 2026-07-12", today="2026-07-20").json["flags"]
    for day in ("2026-06-11", "2026-06-12", "2026-06-13", "2026-06-14", "2026-07-04", "2026-07-05", "2026-07-12"):
        stood = mown(f"flags --all --json --as-of {day}", today="2026-07-20").json["flags"]
        by_day = {(one["rule"], zone, one["subject"], bool(one["hidden"])) for one in stood for zone in one["zones"]}
        told_of = {
            (one["rule"], zone, one["subject"], any(_in(day, h["since"], h["until"]) for h in one["hidden"]))
            for one in told
            for zone in one["zones"]
            if _in(day, one["rose"], one["cleared"])
        }
        assert told_of == by_day, day


def _in(day: str, first: str, end: str | None) -> bool:
    return first <= day and (end is None or day < end)


def test_since_and_zone_narrow_it(mown: Run) -> None:
    found = mown("flags --history --json --since 2026-06-13 --zone back", today="2026-06-25").json
    assert found["since"] == "2026-06-13"
    assert {tuple(one["zones"]) for one in found["flags"]} == {("back",)}
    assert all(one["cleared"] is None or one["cleared"] > "2026-06-13" for one in found["flags"])


def test_in_words_it_fits_the_terminal(mown: Run) -> None:
    shown = mown("flags --history", today="2026-07-10").out
    assert "mow-gap  front, back  Fri 12 Jun, cleared Sun 14 Jun: 2 days" in shown
    assert "Sun 5 Jul, stands: 6 days so far" in shown
    assert "late  not mown for 11 days" in shown
    assert "standing then." in shown.splitlines()[-1]
    assert max(map(len, shown.splitlines())) <= 80


def test_nothing_flagged_is_said(lawn: Run) -> None:
    assert "Nothing was flagged up to 2026-03-01" in lawn("flags --history --until 2026-03-01").out


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ("flags --since 2026-05-01", "go with --history"),
        ("flags --until 2026-05-01", "go with --history"),
        ("flags --history --as-of 2026-05-01", "do not go with it"),
        ("flags --history --fail-on late", "do not go with it"),
        ("flags --history --since 2026-06-02 --until 2026-06-01", "lies after"),
        ("flags --history --zone frnt", "Did you mean front?"),
        ("flags --history --since soon", "soon"),
    ],
)
def test_what_does_not_fit_is_refused(lawn: Run, words: str, said: str) -> None:
    ran = lawn(words)
    assert ran.code == 2
    assert said in ran.err
    assert ran.out == ""


def test_a_snooze_hides_is_shown_with_all_and_is_undone(mown: Run) -> None:
    def ids(*more: str) -> set[str]:
        return {one["id"] for one in mown("flags", "--json", *more, today="2026-07-10").json["flags"]}

    assert "mow-gap/front+back" in ids()
    assert mown("log", "snooze", "mow-gap", "7d", "front", today="2026-07-10").code == 0
    assert "mow-gap/back" in ids()
    assert "mow-gap/front" not in ids()
    assert {"mow-gap/front", "mow-gap/back"} <= ids("--all")
    assert mown("undo", today="2026-07-10").code == 0
    assert "mow-gap/front+back" in ids()


def test_flags_of_one_entry_name_the_flag_that_heads_their_card(lawn: Run) -> None:
    assert lawn("log", "seed", "three-river", "9lb", "front", today="2026-08-28").code == 0
    assert lawn("log", "mow", "1in", "front", today="2026-09-01").code == 0
    found = lawn("flags --json", today="2026-09-01").json["flags"]
    by_id = {one["id"]: one for one in found}
    assert all(by_id[one["card"]]["card"] == one["card"] for one in found)
    cut = next(one for one in found if one["rule"] == "mow-first-early")
    assert set(cut["evidence"]) & set(by_id[cut["card"]]["evidence"])
