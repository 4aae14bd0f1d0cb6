"""Harm on the command line: told by a dry run, held back without ` !`, saved with it."""

from tests.cli.conftest import Run

LINE = "log treat dry-creek 30floz front"


def test_a_dry_run_names_the_harm_and_saves_nothing(lawn: Run) -> None:
    before = lawn("list --json").json
    dry = lawn(f"{LINE} --dry-run --json")
    assert ("label-rate", "harm") in {(flag["rule"], flag["level"]) for flag in dry.json["flags"]}
    assert lawn("list --json").json == before


def test_it_is_held_back_until_the_line_says_so(lawn: Run) -> None:
    before = lawn("list --json").json
    held = lawn(f"{LINE} --json")
    assert held.code == 1
    assert held.json["held"]
    assert "label-rate" in held.err
    assert lawn("list --json").json == before
    assert lawn(f"{LINE} !").code == 0
    assert len(lawn("list --json").json) == len(before) + 1


def test_an_entry_is_not_made_worse_by_an_amended_line(lawn: Run) -> None:
    lawn("log treat dry-creek 4floz front !")
    (entry,) = lawn("list --json --kind treatment").json
    worse = lawn(f"amend {entry['id']} treat dry-creek 30floz front")
    assert worse.code == 1
    assert "Held back" in worse.err
    assert lawn("list --json --kind treatment").json == [entry]
    assert lawn(f"amend {entry['id']} treat dry-creek 2floz front").code == 0


def test_what_was_done_long_ago_is_held_back_too(lawn: Run) -> None:
    late = lawn(f"{LINE} wind 20mph on 6/1", today="2026-10-01")
    assert late.code == 1
    assert "Held back" in late.err
