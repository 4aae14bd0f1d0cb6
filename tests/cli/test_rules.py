"""`rules` and `set`: every threshold, whose it is, and back to the default."""

from journal.facts.house import NUMBERS
from tests.cli.conftest import Run


def test_every_number_is_listed_with_default_range_and_basis(lawn: Run) -> None:
    found = lawn("rules --json").json
    listed = {(rule["id"], one["name"]) for rule in found for one in rule["numbers"]}
    assert listed == {(one.rule, one.name) for one in NUMBERS}
    for rule in found:
        for one in rule["numbers"]:
            assert one["low"] <= one["default"] <= one["high"]
            assert one["basis"]["kind"]
    shown = lawn("rules").out
    assert all(one.name in shown for one in NUMBERS)
    assert "10 d" in shown
    assert "1 d to 60 d" in shown


def test_a_number_is_set_shown_as_ones_own_and_taken_back(lawn: Run) -> None:
    def days() -> dict[str, object]:
        (gap,) = [rule for rule in lawn("rules --json").json if rule["id"] == "mow-gap"]
        return next(one for one in gap["numbers"] if one["name"] == "days")

    assert lawn("set mow-gap days 12").code == 0
    assert (days()["words"], days()["origin"]) == ("12 d", "yours")
    assert "yours, default 10 d" in lawn("rules").out
    assert lawn("set mow-gap days default").code == 0
    assert (days()["words"], days()["origin"]) == ("10 d", "default")


def test_outside_its_range_it_is_refused_with_the_range_and_the_default(lawn: Run) -> None:
    ran = lawn("set mow-gap days 61")
    assert ran.code == 2
    assert "mow-gap days may be 1 d to 60 d; `default` is 10 d." in ran.err
