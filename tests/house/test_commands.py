"""The two commands of the project: what makes an environment stale, and how the closing count is made."""

import importlib.util
import json
import sys
from collections.abc import Iterator
from pathlib import Path
from types import ModuleType

import pytest

from tests.house.tree import ROOT


def _script(name: str) -> ModuleType:
    spec = importlib.util.spec_from_file_location(Path(name).stem, ROOT / name)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


@pytest.fixture
def environment(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> ModuleType:
    """The maker of environments, at work in an empty project."""
    module = _script("demo/environment.py")
    monkeypatch.setattr(module, "ROOT", tmp_path)
    (tmp_path / "pyproject.toml").write_text("[project]\n", encoding="utf-8")
    return module


@pytest.fixture
def run(monkeypatch: pytest.MonkeyPatch) -> Iterator[ModuleType]:
    """The runner of checks."""
    with monkeypatch.context() as patch:
        patch.setattr(sys, "path", list(sys.path))
        patch.setattr(sys, "modules", dict(sys.modules))
        yield _script("tests/run.py")


def _finished(environment: ModuleType, folder: Path) -> None:
    python = environment.python_of(folder)
    python.parent.mkdir(parents=True)
    python.touch()
    (folder / "made-from.json").write_text(json.dumps(environment._made_from("test")), encoding="utf-8")


def test_a_finished_environment_is_kept(environment: ModuleType, tmp_path: Path) -> None:
    _finished(environment, tmp_path / ".env" / "tests")
    assert environment.is_current(tmp_path / ".env" / "tests", "test")
    assert environment.ready("tests", extra="test") == environment.python_of(tmp_path / ".env" / "tests")


def test_an_environment_goes_stale(environment: ModuleType, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    folder = tmp_path / ".env" / "tests"
    _finished(environment, folder)
    assert not environment.is_current(folder, "")
    with monkeypatch.context() as patch:
        patch.setattr(sys, "version", "3.99")
        assert not environment.is_current(folder, "test")
    environment.python_of(folder).unlink()
    assert not environment.is_current(folder, "test")
    environment.python_of(folder).touch()
    assert environment.is_current(folder, "test")
    (tmp_path / "pyproject.toml").write_text("[project]\nname = 'x'\n", encoding="utf-8")
    assert not environment.is_current(folder, "test")


@pytest.mark.parametrize("mark", ["", "{", "[]"])
def test_a_half_made_environment_is_not_current(environment: ModuleType, tmp_path: Path, mark: str) -> None:
    folder = tmp_path / "half"
    _finished(environment, folder)
    (folder / "made-from.json").write_text(mark, encoding="utf-8")
    assert not environment.is_current(folder, "test")


def test_a_failed_step_says_what_failed_and_what_to_do(environment: ModuleType) -> None:
    code = "print('no route to host'); raise SystemExit(3)"
    with pytest.raises(environment.Trouble) as told:
        environment._step([sys.executable, "-c", code], "It failed.", "Try again.")
    assert str(told.value) == "It failed. It said:\n  | no route to host\nTry again."


def test_a_python_without_its_parts_is_told(environment: ModuleType, monkeypatch: pytest.MonkeyPatch) -> None:
    environment.require_venv()
    monkeypatch.setattr(importlib.util, "find_spec", {}.get)
    monkeypatch.setattr(environment.shutil, "which", {"apt-get": "apt-get"}.get)
    with pytest.raises(environment.Trouble, match=r"sudo apt-get install python3\.\d+-venv"):
        environment.require_venv()


def test_an_old_python_is_told(environment: ModuleType, monkeypatch: pytest.MonkeyPatch) -> None:
    environment.require_python("demo/start.py")
    monkeypatch.setattr(environment, "OTHER_PYTHONS", ())
    monkeypatch.setattr(sys, "version_info", (3, 10, 13))
    with pytest.raises(environment.Trouble, match=r"needs Python 3\.11 or newer; this is Python 3\.10\.13"):
        environment.require_python("demo/start.py")


def _cases(folder: Path, *cases: str) -> Path:
    results = folder / "results.xml"
    results.write_text(f"<testsuites><testsuite>{''.join(cases)}</testsuite></testsuites>", encoding="utf-8")
    return results


def test_tests_are_counted_one_by_one(run: ModuleType, tmp_path: Path) -> None:
    results = _cases(
        tmp_path,
        "<testcase classname='a' name='x'/>",
        "<testcase classname='a' name='y'><failure/></testcase>",
        "<testcase classname='a' name='y'><error/></testcase>",
        "<testcase classname='b' name='x'><error/></testcase>",
        "<testcase classname='b' name='z'><skipped/></testcase>",
    )
    assert run.count(results) == {"passed": 1, "skipped": 1, "failed": 2}


@pytest.mark.parametrize(
    ("code", "counts", "failed", "words"),
    [
        (0, {"passed": 3, "skipped": 0, "failed": 0}, 0, "3 passed"),
        (1, {"passed": 3, "skipped": 0, "failed": 2}, 2, "3 passed, 2 failed"),
        (5, {}, 1, "no test ran"),
        (0, {"passed": 0, "skipped": 4, "failed": 0}, 1, "4 skipped"),
        (3, {"passed": 3, "skipped": 0, "failed": 0}, 1, "3 passed; pytest stopped with code 3"),
    ],
)
def test_what_cannot_be_right_counts_as_a_failure(
    run: ModuleType, code: int, counts: dict[str, int], failed: int, words: str
) -> None:
    outcome = run.judge(code, counts, 1.0)
    assert (outcome.failed, outcome.words) == (failed, words)


def test_the_last_line_is_the_count(run: ModuleType, capsys: pytest.CaptureFixture[str]) -> None:
    lint = run.Outcome("lint", 0, 1, "failed", 0.5)
    assert run.report([lint, run.Outcome("tests", 12, 2, "12 passed, 2 failed", 3.0)]) == 1
    assert capsys.readouterr().out.splitlines()[-1] == "12 passed, 3 failed"
    assert run.report([run.Outcome("tests", 12, 0, "12 passed", 3.0)]) == 0
