"""Whatever a command prints of a treatment, the safety words stand under it once; where there is none, they don't."""

import pytest

from journal.facts.safety import SHORT
from tests.cli.conftest import Run

BEFORE = ("log", "treat", "dry-creek", "1.2floz/k", "front", "wind", "9mph", "!")


def _said(lawn: Run, *words: str) -> int:
    found = lawn(*words)
    assert found.code == 0, found.err
    return found.out.count(SHORT)


@pytest.mark.parametrize(
    "words", [("list",), ("flags",), ("flags", "--history"), ("ledger",), ("list", "--kind", "treatment")]
)
def test_a_treatment_that_is_told_of_brings_the_safety_words_once(lawn: Run, words: tuple[str, ...]) -> None:
    assert _said(lawn, *words) == 0
    assert _said(lawn, *BEFORE) == 1
    assert _said(lawn, "log", "feed", "oat-hill-starter", "3lb/k", "back") == 1
    assert _said(lawn, *words) == 1


def test_what_is_told_of_mowing_has_none(lawn: Run) -> None:
    assert _said(lawn, *BEFORE) == 1
    assert _said(lawn, "log", "mow", "3in", "back") == 0
    assert _said(lawn, "list", "--kind", "mowing") == 0
