"""A long remark in the user's own editor: whatever it does, the line is not lost."""

import os
import stat
import sys
from pathlib import Path

import pytest

from journal.screens.editor import NotEdited, command, edited, remark_of, with_remark
from tests.screens.driver import opened

EDITOR = """#!{python}
import os, pathlib, sys
path = pathlib.Path(sys.argv[-1])
pathlib.Path({told!r}).write_text(f"{{path}}\\n{{oct(path.stat().st_mode & 0o777)}}\\n{{os.environ.get('NO_COLOR')}}\\n"
                                   f"{{path.read_text()}}{{sys.argv[1:-1]}}")
path.write_text({gives!r})
sys.exit({ends})
"""


def an_editor(folder: Path, gives: str, ends: int = 0) -> Path:
    """A program that writes down what it was given, and leaves other words."""
    path = folder / "my editor"
    path.write_text(EDITOR.format(python=sys.executable, told=str(folder / "told"), gives=gives, ends=ends))
    path.chmod(path.stat().st_mode | stat.S_IXUSR)
    return path


@pytest.mark.parametrize(
    ("environ", "words"),
    [
        ({}, ["vi"]),
        ({"EDITOR": "nano -w"}, ["nano", "-w"]),
        ({"EDITOR": "nano", "VISUAL": "'./my editor/run' --wait"}, ["./my editor/run", "--wait"]),
        ({"EDITOR": " "}, ["vi"]),
    ],
)
@pytest.mark.skipif(sys.platform == "win32", reason="another editor is plain there")
def test_the_editor_is_the_users(environ: dict[str, str], words: list[str]) -> None:
    assert command(environ) == words


def test_an_editor_that_cannot_be_read_is_named() -> None:
    with pytest.raises(NotEdited, match="'vi: No closing quotation"):
        command({"EDITOR": "'vi"})


@pytest.mark.skipif(sys.platform == "win32", reason="the editor of the test is a script")
def test_the_words_go_through_a_file_of_ones_own_which_is_gone_afterwards(tmp_path: Path) -> None:
    editor = an_editor(tmp_path, "first\n\nsecond\n")
    words = edited("as it was", [str(editor), "-w"], {**os.environ, "NO_COLOR": "1"})
    assert words == "first\n\nsecond\n"
    path, mode, colour, before, options = (tmp_path / "told").read_text().splitlines()
    assert (mode, colour, before, options) == ("0o600", "1", "as it was", "['-w']")
    assert not Path(path).exists()


@pytest.mark.skipif(sys.platform == "win32", reason="the editor of the test is a script")
def test_an_editor_that_fails_or_is_missing_gives_nothing(tmp_path: Path) -> None:
    with pytest.raises(NotEdited, match="ended with 3"):
        edited("", [str(an_editor(tmp_path, "lost", ends=3))], os.environ)
    with pytest.raises(NotEdited, match="No such file"):
        edited("", [str(tmp_path / "nowhere")], os.environ)


@pytest.mark.parametrize(
    ("line", "words", "made"),
    [
        ("mow 3in", "", "mow 3in"),
        ("mow 3in", "damp\nand slow\t!\x1b[31m", "mow 3in -- damp and slow ![31m"),
        ("mow 3in -- old", "new", "mow 3in -- new"),
        ("mow 3in -- old", " \n", "mow 3in"),
        ("treat well-field 9floz !", "by hand", "treat well-field 9floz -- by hand !"),
        ("treat well-field 9floz", "watch out !", "treat well-field 9floz -- watch out!"),
    ],
)
def test_what_comes_back_is_the_one_remark_of_the_line(line: str, words: str, made: str) -> None:
    assert with_remark(line, words) == made


def test_the_remark_that_is_there_is_what_the_editor_begins_with() -> None:
    assert remark_of("mow 3in -- a little damp") == "a little damp"


async def test_without_a_terminal_the_line_stays_and_it_is_said() -> None:
    async with opened() as app:
        await app.type("mow 3in")
        await app.press("ctrl+o")
        assert app.line == "mow 3in"
        assert "the line is as it was" in app.hints


async def test_on_the_empty_line_it_says_what_it_is_for() -> None:
    async with opened() as app:
        await app.press("ctrl+o")
        assert "type the line first" in app.reading
