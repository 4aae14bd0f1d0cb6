"""`import-weather`: what it takes in, what it says, what it proposes, and what it refuses."""

import sys
from datetime import date, timedelta
from pathlib import Path

import pytest

from journal.cli import weather
from tests.cli.conftest import Run
from tests.seattle import SEATTLE

LONG = """\
XX000000001,20260501,PRCP,127,,,7,0700
XX000000001,20260501,TMAX,211,,,7,0700
XX000000001,20260501,TMIN,89,,,7,0700
XX000000001,20260502,TMAX,999,,X,7,0700
XX000000001,20260502,PRCP,0,T,,7,0700
"""


@pytest.fixture
def long(tmp_path: Path) -> str:
    return written(tmp_path, "long.txt", LONG)


def written(folder: Path, name: str, text: str) -> str:
    (folder / name).write_text(text, encoding="utf-8")
    return str(folder / name)


def twelve_years(folder: Path) -> str:
    """The last freeze on 1 to 12 April, the first on 20 to 31 October; 80 mm of rain or so in every month."""
    rows = ["date,tmax,tmin,rain"]
    day = date(2010, 1, 1)
    while day.year < 2022:
        nth = day.year - 2010
        frozen = day <= date(day.year, 4, 1 + nth) or day >= date(day.year, 10, 20 + nth)
        rows.append(f"{day},{'4.0,-3.0' if frozen else '24.0,12.0'},{8.0 if day.day % 3 == 0 else 0.0}")
        day += timedelta(1)
    return written(folder, "twelve.csv", "\n".join(rows))


def listed(run: Run) -> list[dict[str, object]]:
    found = run("list --kind weather --json")
    assert found.code == 0
    return list(found.json)


def test_the_seattle_table_comes_in_once(lawn: Run) -> None:
    first = lawn("import-weather", str(SEATTLE), "--json")
    assert first.code == 0
    told = first.json
    assert (told["read"], told["kept"], told["new"], told["known"], told["dropped"]) == (1461, 1461, 1461, 0, {})
    assert (told["units"], told["unit_words"]) == ("metric", "C, mm")
    last, autumn = told["proposed"]["last_frost"], told["proposed"]["first_frost"]
    assert last["dates"] == ["2012-03-19", "2013-03-04", "2014-02-09", "2015-03-04"]
    assert autumn["dates"] == ["2012-11-10", "2013-11-21", "2014-11-12", "2015-11-23"]
    assert (last["10"], last["50"], last["90"], last["years"], last["line"]) == (None, None, None, 4, None)
    entries = listed(lawn)
    assert len(entries) == 1461
    rain = {
        year: sum(float(str(e["rain_mm"])) for e in entries if str(e["date"]).startswith(year))
        for year in ("2012", "2013", "2014", "2015")
    }
    assert [round(mm, 1) for mm in rain.values()] == [1226.0, 828.0, 1232.8, 1139.2]
    again = lawn("import-weather", str(SEATTLE), "--json").json
    assert (again["new"], again["changed"], again["known"], again["kept"]) == (0, 0, 1461, 1461)
    assert listed(lawn) == entries


def test_undo_takes_the_whole_import_back(lawn: Run) -> None:
    lawn("log mow 3in front")
    lawn("import-weather", str(SEATTLE))
    undone = lawn("undo")
    assert undone.out.startswith("taken back: weather")
    assert "and 1460 more" in undone.out
    assert listed(lawn) == []
    assert len(lawn("list --json").json) == len(lawn("list --kind setting --json").json) + 1
    assert lawn("redo").code == 0
    assert len(listed(lawn)) == 1461
    assert lawn("check").code == 0


def test_what_it_says(lawn: Run, long: str) -> None:
    out = lawn("import-weather", long).out
    assert "Daily values of one station, a row each, XX000000001." in out
    assert "Rows read: 5. Days kept: 2, 2026-05-01 to 2026-05-02." in out
    assert "Its numbers are in tenths of C, tenths of mm (by the kind of file)." in out
    assert "high 211 = 21.1 C, 70.0 F" in out
    assert "low 89 = 8.9 C, 48.0 F" in out
    assert "rain 127 = 12.7 mm, 0.50 in" in out
    assert "Values dropped: 1 flag X: out of bounds." in out
    assert "1 traces of rain are taken as 0." in out
    assert "Saved: 2 new days, 0 corrected. Known already: 0." in out
    assert "Too little weather is on file to tell frost dates or normals." in out
    assert all(len(line) <= 120 for line in out.splitlines())


def test_json_of_a_sample_in_both_units(lawn: Run, long: str) -> None:
    told = lawn("import-weather", long, "--json").json
    assert told["dropped"] == {"flag X: out of bounds": 1}
    assert told["proposed"] == {"last_frost": None, "first_frost": None, "normals": None}
    assert told["dialect"] == "daily values of one station, a row each"
    assert told["sample"][0] == {
        "date": "2026-05-01", "high_c": 21.1, "low_c": 8.9, "rain_mm": 12.7,
        "high_f": 69.98, "low_f": 48.02, "rain_in": 0.5, "as_written": {"rain": "127", "high": "211", "low": "89"},
    }  # fmt: skip


def test_a_dry_run_says_the_same_and_saves_nothing(lawn: Run, tmp_path: Path) -> None:
    file = twelve_years(tmp_path)
    dry = lawn("import-weather", file, "--json", "--dry-run")
    assert listed(lawn) == []
    assert dry.json == lawn("import-weather", file, "--json").json
    assert "Would save: 0 new days" in lawn("import-weather", file, "--dry-run").out


def test_what_is_proposed_holds_only_when_its_line_is_accepted(lawn: Run, tmp_path: Path) -> None:
    settings = lawn("list --kind setting --json").json
    told = lawn("import-weather", twelve_years(tmp_path), "--json").json["proposed"]
    assert lawn("list --kind setting --json").json == settings
    # Twelve days in a row, between the sixth and the seventh: the one with the more frost behind it.
    assert told["last_frost"] | {"dates": []} == {
        "10": "04-11", "50": "04-07", "90": "04-03", "years": 12, "dates": [], "line": "set last_frost 04-07",
    }  # fmt: skip
    assert told["first_frost"]["line"] == "set first_frost 10-25"
    assert told["normals"]["years"] == 12
    assert told["normals"]["months"][0] | {"rain_mm": None} == {
        "month": 1, "high_c": 4.0, "low_c": -3.0, "rain_mm": None, "years": 12, "rain_years": 12,
    }  # fmt: skip
    assert told["normals"]["line"].startswith("set normals jan 39F 27F 3.1in, feb ")
    for line in (told["last_frost"]["line"], told["first_frost"]["line"], told["normals"]["line"]):
        assert lawn(*line.split(" ")).code == 0
    said = {key for entry in lawn("list --kind setting --json").json for key, _ in entry["values"]}
    assert {"last_frost", "first_frost", "normals"} <= said


def test_a_metric_book_gets_its_line_in_its_own_units(metric_lawn: Run, tmp_path: Path) -> None:
    line = metric_lawn("import-weather", twelve_years(tmp_path), "--json").json["proposed"]["normals"]["line"]
    assert line.startswith("set normals jan 4.0C -3.0C 80mm, feb ")
    assert metric_lawn(*line.split(" ")).code == 0


def test_frost_dates_come_from_everything_on_file(lawn: Run, tmp_path: Path) -> None:
    lawn("import-weather", twelve_years(tmp_path))
    told = lawn("import-weather", str(SEATTLE), "--json").json
    assert (told["new"], told["changed"]) == (0, 1461)  # what a later file says of a day holds
    assert told["proposed"]["last_frost"]["years"] == 12
    assert "2012-03-19" in told["proposed"]["last_frost"]["dates"]


def test_days_that_lie_ahead_are_left_out(lawn: Run, long: str) -> None:
    told = lawn("import-weather", long, "--json", today="2026-05-01").json
    assert (told["kept"], told["new"], told["dropped"]["a day that lies ahead"]) == (1, 1, 1)


def test_numbers_in_doubt_are_asked_about(lawn: Run, tmp_path: Path) -> None:
    file = written(tmp_path, "winter.csv", "date,high,low\n2026-01-03,30,20\n2026-01-04,31,22\n")
    asked = lawn("import-weather", file)
    assert (asked.code, asked.out) == (2, "")
    assert "Say which with --units" in asked.err
    assert "high 30 = -1.1 C, 30.0 F" in asked.err
    assert "high 30 = 30.0 C, 86.0 F" in asked.err
    assert "high 30 = 3.0 C, 37.4 F" in asked.err
    assert listed(lawn) == []
    said = lawn("import-weather", file, "--units", "US", "--json")
    assert (said.code, said.json["sure"], said.json["new"]) == (0, "as you said", 2)


def test_wrong_units_are_put_right_by_a_second_import(lawn: Run, tmp_path: Path) -> None:
    file = written(tmp_path, "winter.csv", "date,high,low\n2026-01-03,30,20\n2026-01-04,31,22\n")
    lawn("import-weather", file, "--units", "us")
    assert lawn("import-weather", file, "--units", "metric", "--json").json["changed"] == 2
    assert [entry["high_c"] for entry in listed(lawn)] == [30.0, 31.0]


@pytest.mark.parametrize(
    ("content", "words"),
    [
        (b"", "the file is empty"),
        (b"PNG\0\0\0", "this is no text file"),
        (b"date,rain\n2026-05-01,lots\n", "line 2, lots: not a number for the rain"),
        (b"\xff\xfed\0a\0t\0e\0\n\0", "line 1, date: neither rain"),
        (b"caf\xe9,rain\n2026-05-01,1\n", "no column of dates"),
    ],
)
def test_a_file_that_can_not_be_used_changes_nothing(lawn: Run, tmp_path: Path, content: bytes, words: str) -> None:
    (tmp_path / "odd.csv").write_bytes(content)
    ran = lawn("import-weather", str(tmp_path / "odd.csv"))
    assert (ran.code, ran.out) == (2, "")
    assert "odd.csv" in ran.err
    assert words in ran.err
    assert listed(lawn) == []


def test_a_table_in_another_encoding(lawn: Run, tmp_path: Path) -> None:
    text = "station,name,date,rain\nX1,Ca\u00f1on,2026-05-01,12.7\nX1,Ca\u00f1on,2026-05-02,20.0\n"
    for encoding in ("utf-16", "latin-1", "utf-8-sig"):
        (tmp_path / "table.csv").write_bytes(text.encode(encoding))
        ran = lawn("import-weather", str(tmp_path / "table.csv"), "--json")
        assert ran.code == 0, ran.err
        assert ran.json["station"] == "X1 Ca\u00f1on"


def test_no_such_file_a_folder_and_one_too_large(lawn: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    missing = lawn("import-weather", str(tmp_path / "none.csv"))
    assert missing.code == 2
    assert "none.csv: No such file" in missing.err
    assert "this is a folder" in lawn("import-weather", str(tmp_path)).err
    assert lawn("import-weather", "a\0b").code == 2
    monkeypatch.setattr(weather, "LARGEST", 40)
    large = lawn("import-weather", str(SEATTLE))
    assert large.code == 2
    assert "a file of one station is wanted" in large.err


def test_units_have_three_names(lawn: Run, long: str) -> None:
    ran = lawn("import-weather", long, "--units", "metrik")
    assert ran.code == 2
    assert "--units metrik" in ran.err
    assert "Did you mean metric?" in ran.err
    assert listed(lawn) == []


def test_a_day_that_was_typed_holds(lawn: Run, long: str) -> None:
    lawn("log", "weather", "60F", "50F", "0.1in", "on", "2026-05-01")
    ran = lawn("import-weather", long)
    assert "You logged 1 of these days yourself: what you wrote holds." in ran.out
    lawn("amend", "0501", "weather", "62F", "50F")
    assert lawn("import-weather", long, "--json").json["yours"] == 1


@pytest.mark.parametrize(("patience", "terminal", "told"), [(-1, True, True), (-1, False, False), (60, True, False)])
def test_a_terminal_is_told_what_takes_long(
    lawn: Run, long: str, monkeypatch: pytest.MonkeyPatch, patience: int, terminal: bool, told: bool
) -> None:
    monkeypatch.setattr(weather, "PATIENCE", patience)
    monkeypatch.setattr(type(sys.stderr), "isatty", lambda _: terminal)
    assert ("2 days are read" in lawn("import-weather", long).err) is told
