"""Setting up from a file, and the folder that can't be used."""

from pathlib import Path

import pytest

from tests.cli.conftest import US, Run


@pytest.mark.parametrize(
    ("wrong", "instead", "key", "why"),
    [
        ('slow = "20% of n"', 'slow = "20%"', "product.slow", "of what?"),
        ('area = "2400 sqft"', 'area = "2400"', "zone.area", "unit is missing"),
        ('area = "2400 sqft"', 'aera = "2400 sqft"', "zone.aera", "Did you mean area?"),
        ('last_frost = "05-06"', 'last_frost = "05-36"', "lawn.last_frost", "not a day"),
        ('name = "back"', 'name = "front"', "zone.name", "twice"),
        ('kind = "starter"', 'kind = "startr"', "product.kind", "Did you mean starter?"),
        ('repeat = "28 d"', 'repeat = "28"', "product.label.repeat", "unit is missing"),
        ('grass="tall fescue"', 'grass="tal fescue"', "product.mix", "Did you mean tall fescue?"),
    ],
)
def test_a_wrong_value_names_its_key_and_line_and_writes_nothing(
    run: Run, tmp_path: Path, wrong: str, instead: str, key: str, why: str
) -> None:
    assert wrong in US
    text = US.replace(wrong, instead, 1)
    line = next(n for n, row in enumerate(text.splitlines(), 1) if instead in row)
    if key == "zone.name":
        line = next(n for n, row in reversed(list(enumerate(text.splitlines(), 1))) if row == instead)
    (tmp_path / "lawn.toml").write_text(text)
    ran = run("setup", "--from", str(tmp_path / "lawn.toml"))
    assert ran.code == 2
    assert f"line {line}, {key}: " in ran.err
    assert why in ran.err
    assert not (tmp_path / "book").exists()


def test_a_second_setup_is_refused_unless_it_edits(lawn: Run, tmp_path: Path) -> None:
    file = str(tmp_path / "lawn.toml")
    assert lawn("setup", "--from", file).code == 2
    (tmp_path / "lawn.toml").write_text(US.replace("2400 sqft", "2500 sqft"))
    assert lawn("setup", "--from", file, "--edit").code == 0
    settings = [e for e in lawn("list --json --kind setting").json if e["name"] == "front"]
    assert ["area", "2500 sqft"] in settings[-1]["values"]


def test_a_folder_without_a_book_is_an_error_not_a_new_book(run: Run, tmp_path: Path) -> None:
    ran = run("flags")
    assert ran.code == 2
    assert "swardbook setup" in ran.err
    assert not (tmp_path / "book").exists()


def test_a_folder_with_something_else_in_it_is_left_alone(run: Run, tmp_path: Path) -> None:
    (tmp_path / "book").mkdir()
    (tmp_path / "book" / "tax.txt").write_text("keep")
    (tmp_path / "lawn.toml").write_text(US)
    assert run("setup", "--from", str(tmp_path / "lawn.toml")).code == 2
    assert [f.name for f in (tmp_path / "book").iterdir()] == ["tax.txt"]


def test_the_demos_copy_never_goes_into_a_book_that_is_there(lawn: Run, tmp_path: Path) -> None:
    before = len(lawn("list --json").json)
    ran = lawn("demo", "--keep", str(tmp_path / "book"))
    assert ran.code == 2
    assert len(lawn("list --json").json) == before


def test_editing_with_the_same_file_writes_nothing(lawn: Run, tmp_path: Path) -> None:
    before = len(lawn("list --json").json)
    assert lawn("setup", "--from", str(tmp_path / "lawn.toml"), "--edit").code == 0
    assert len(lawn("list --json").json) == before


@pytest.mark.parametrize(
    ("fact", "why"),
    [('growth = ["11-10", "04-10"]', "before it begins"), ('kept_since = "2027-01-01"', "lies ahead")],
)
def test_facts_that_contradict_each_other_are_refused(run: Run, tmp_path: Path, fact: str, why: str) -> None:
    (tmp_path / "lawn.toml").write_text(US.replace('units = "us"', f'units = "us"\n{fact}'))
    ran = run("setup", "--from", str(tmp_path / "lawn.toml"))
    assert ran.code == 2
    assert why in ran.err
    assert "line 4, " in ran.err
