"""Processes that are killed, and processes that share a book."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="forks")

ROOT = Path(__file__).parents[2]


def nursery(*words: object) -> dict[str, Any]:
    done = subprocess.run(
        [sys.executable, Path(__file__).with_name("nursery.py"), *map(str, words)],
        env=os.environ | {"PYTHONPATH": str(ROOT)}, capture_output=True, text=True, timeout=120, check=False,
    )  # fmt: skip
    assert done.returncode == 0, done.stderr
    found: dict[str, Any] = json.loads(done.stdout)
    return found


def test_fifty_writers_killed_at_any_moment(tmp_path: Path) -> None:
    found = nursery("kill", tmp_path / "lawn", 50)
    assert found["rounds"] == 50
    assert found["busy"] >= 40  # most of them had something to lose
    assert found["acknowledged"] >= 40
    assert found["lost"] == 0
    assert found["partial"] == 0
    assert found["entries"] - found["acknowledged"] <= 2 * 50  # one act each may be done and not yet acknowledged
    assert found["report"]["gaps"] == {}
    assert all("cut short" in place["why"] for place in found["report"]["damaged"])


def test_two_writers_at_once(tmp_path: Path) -> None:
    found = nursery("share", tmp_path / "lawn", 100)
    assert found["codes"] == [0, 0]
    assert found["lost"] == 0
    assert found["acknowledged"] == found["entries"] == 2 * (100 + 34)
    assert found["conflicts"] == 0
    assert not found["report"]["problems"]
    assert found["report"]["records"] == 200


def test_thirty_killed_while_they_bring_many_entries_as_one_act(tmp_path: Path) -> None:
    found = nursery("bring", tmp_path / "lawn", 30)
    assert found["torn"] == 0
    assert found["whole"] < 30  # some were killed before they were done
    assert found["damaged"] == []
