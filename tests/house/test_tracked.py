"""What is kept in the repository: the agreed top level, no machine's own paths, nothing left for later."""

import re
import subprocess
from collections.abc import Iterable
from pathlib import Path

import pytest

from tests.house.tree import ROOT

TOP = frozenset({"README.md", "DEVELOPERS.md", "pyproject.toml", "journal", "tests", "demo"})
"""What may stand at the top, beside names that start with a dot."""

LEFT_BEHIND = re.compile(r"(^|/)(__pycache__|build|dist|\.env|\.hypothesis|\.\w+_cache|[^/]+\.egg-info)(/|$)")
"""What tools leave behind, for trees that came without git to say so."""

MACHINE = re.compile(r"(?<![\w.])(/(home|Users|root|work|tmp|opt|mnt|private|var/folders)/[\w.-]|[A-Z]:\\{1,2}Users\b)")
"""A path that only one computer has."""

LATER = re.compile(r"\b(TO" + r"DO|FIX" + r"ME)\b")


def kept(root: Path) -> list[str]:
    """Return the files git keeps or would keep, or all but what tools leave behind where there is no git."""
    if (root / ".git").exists():
        command = ["git", "ls-files", "-z", "--cached", "--others", "--exclude-standard"]
        listed = subprocess.run(command, cwd=root, capture_output=True, check=True).stdout.decode()
        files = listed.split("\0")
    else:
        files = [file.relative_to(root).as_posix() for file in root.rglob("*")]
        files = [name for name in files if not LEFT_BEHIND.search(name)]
    return sorted(name for name in files if (root / name).is_file())


def stray(names: Iterable[str]) -> list[str]:
    """Say what stands at the top that nobody agreed on."""
    tops = {name.partition("/")[0] for name in names}
    return sorted(top for top in tops if top not in TOP and not top.startswith("."))


def unclean(root: Path, names: Iterable[str]) -> list[str]:
    """Say which lines of text files name one machine's paths or put work off."""
    problems = []
    for name in names:
        data = (root / name).read_bytes()
        if b"\0" in data:
            continue
        for number, line in enumerate(data.decode("utf-8", "replace").splitlines(), 1):
            problems += [f"{name}:{number}: {found[0]}" for found in MACHINE.finditer(line)]
            problems += [f"{name}:{number}: {found[0]}" for found in LATER.finditer(line)]
    return problems


def test_the_top_level_is_as_agreed() -> None:
    assert stray(kept(ROOT)) == []
    assert TOP - {name.partition("/")[0] for name in kept(ROOT)} == set()


def test_no_file_names_a_machine_or_puts_work_off() -> None:
    assert unclean(ROOT, kept(ROOT)) == []


def test_a_stray_file_is_told() -> None:
    assert stray(["README.md", "notes.txt", ".ci/run", "extra/a.py"]) == ["extra", "notes.txt"]


@pytest.mark.parametrize(
    ("line", "clean"),
    [
        ("see /ho" + "me/ann/lawn", False),
        ("'C:\\Us" + "ers\\ann'", False),
        ("open('/t" + "mp/book')", False),
        ("to do: TO" + "DO", False),
        ("https://example.org/home/page and docs/tmp/x", True),
        ("24 h/work week, /etc/os-release", True),
    ],
)
def test_an_unclean_line_is_told(tmp_path: Path, line: str, clean: bool) -> None:
    (tmp_path / "a.md").write_text(f"first\n{line}\n", encoding="utf-8")
    told = unclean(tmp_path, kept(tmp_path))
    assert [problem.split(": ")[0] for problem in told] == ([] if clean else ["a.md:2"])


def test_without_git_what_tools_leave_is_not_kept(tmp_path: Path) -> None:
    for name in ("journal/a.py", "journal/__pycache__/a.pyc", ".env/demo/x", "swardbook.egg-info/PKG-INFO", ".ci/run"):
        (tmp_path / name).parent.mkdir(parents=True, exist_ok=True)
        (tmp_path / name).touch()
    assert kept(tmp_path) == [".ci/run", "journal/a.py"]
