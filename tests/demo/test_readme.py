"""What the README says can be typed into the demo can be."""

import re
from functools import cache

import pytest

from journal.cli.demo import OPENS
from journal.cli.demo.book import entries
from journal.line.read import read
from journal.rules.catalogue import rules
from journal.season.history import History
from journal.standing import preflight
from tests.house.tree import ROOT

README = (ROOT / "README.md").read_text("utf-8")


def typed() -> list[str]:
    """The lines of the first plain-text block, without what is said beside them."""
    block = README.partition("```text\n")[2].partition("```")[0]
    return [re.split(r"\s{2,}", line)[0] for line in block.splitlines()]


@cache
def demo() -> History:
    return History.of(entries())


def test_there_are_lines_to_type() -> None:
    assert len(typed()) >= 10


@pytest.mark.parametrize("line", typed())
def test_a_line_of_the_readme_can_be_saved_in_the_demo_as_it_stands(line: str) -> None:
    reading = read(line, demo(), OPENS)
    assert reading.problem is None, reading.problem
    assert reading.draft is not None
    assert not preflight(demo(), reading.draft, OPENS).holds_back


def test_the_readme_names_every_rule_that_is_watched() -> None:
    table = README.partition("## What it watches")[2].partition("and plans the steps")[0]
    assert set(re.findall(r"`([a-z-]+)`", table)) == {rule.id for rule in rules()}


def test_every_file_that_the_readme_points_to_is_there() -> None:
    named = re.findall(r"\]\(([^)#:]+)\)", README)
    assert named
    assert [name for name in named if not (ROOT / name).is_file()] == []
