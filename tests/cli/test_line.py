"""Log lines through the command line: what is saved, what is refused, and what is left alone."""

from pathlib import Path

import pytest

from journal.cli.arguments import LEVELS
from journal.rules.flag import Level
from tests.cli.conftest import Run

EVERY_KIND = (
    "mow 3in bag front 40min", "water 20min back", "water 0.5in", "water deep back", "rain 0.6in",
    "schedule back 20min mon wed fri 6:00 from 5/15 to 9/30", "schedule off back", "weather 71F 48F 0.2in",
    "feed oat-hill-starter 12lb front back", "feed pond 4lb/k", "feed pond half bag front",
    "treat dry-creek 5.5floz front wind 4mph temp 68F", "treat unknown by service", "seed three-river 9lb front",
    "aerate 2x front", "dethatch front", "topdress 0.25in front", "rake back", "height 3.6in front",
    "see red-thread 10% back", "see emerged", "count grubs 4/sqft back", "photo gate.jpg from gate front -- words",
    "soil ph 6.1 p low k 95ppm om 4.2% front", "sharpen", "blade new",
    "buy three-river 2x 48lb $31 pure 97 germ 85 tested 2026-03", "intend seed three-river 2026-09-05 front",
    "snooze mow-gap 7d", "aside seed-switch front -- reason", "set mow-gap days 12",
    "set front area 2100sqft from 2026-05-01", "zone side 1200sqft", "product new-hill lime bag 40lb",
    "note moles along the fence",
)  # fmt: skip

METRIC_KIND = (
    "mow 75mm bag front 40min", "water 12mm", "rain 15mm", "weather 22C 9C 5mm", "feed pond 25g/m2",
    "feed pond 6kg front back", "treat dry-creek 100ml front wind 2m/s temp 20C", "seed three-river 4kg front",
    "height 90mm front", "count grubs 40/m2 back", "zone side 110m2", "mow 14 may", "topdress 6mm back",
)  # fmt: skip


@pytest.mark.parametrize("line", EVERY_KIND)
def test_a_line_of_every_kind_is_saved_and_listed(lawn: Run, line: str) -> None:
    ran = lawn("log", *line.split(" "), "--json")
    if ran.code == 1:
        ran = lawn("log", *line.split(" "), "!", "--json")
    assert ran.code == 0, ran.err
    assert set(ran.json) == {"entry", "assumed", "flags", "cleared"}
    assert ran.json["entry"] in lawn("list", "--json").json


@pytest.mark.parametrize("line", METRIC_KIND)
def test_the_same_in_metric(metric_lawn: Run, line: str) -> None:
    ran = metric_lawn("log", *line.split(" "), "--json")
    assert ran.code == 0, ran.err
    assert ran.json["entry"] in metric_lawn("list", "--json").json


def test_slashes_are_refused_where_day_and_month_could_be_mistaken(metric_lawn: Run) -> None:
    ran = metric_lawn("log", "mow", "6/7")
    assert ran.code == 2
    assert "day or month first" in ran.err


@pytest.mark.parametrize(
    ("line", "word"),
    [
        ("feed unknwon 3lb", "unknwon"), ("mow 300in", "300in"), ("mow on 31 feb", "31 feb"), ("[red]", "[red]"),
        ("see [/", "[/"), ("mow frnt", "frnt"), ("mow 2026-07-01", "2026-07-01"), ("mow 3", "3"),
    ],
)  # fmt: skip
def test_a_bad_word_is_pointed_at_and_nothing_is_written(lawn: Run, tmp_path: Path, line: str, word: str) -> None:
    before = written(tmp_path)
    ran = lawn("log", line)
    assert ran.code == 2
    assert ran.out == ""
    said, shown, mark = ran.err.splitlines()
    assert word in said
    assert shown[mark.index("^") : mark.rindex("^") + 1] == word
    assert written(tmp_path) == before


@pytest.mark.parametrize("line", ["", "   ", "mow " * 2500, "note \x1b[2J", "mow 3in -- a\x07b", "mow \x9b31m"])
def test_empty_endless_and_control_lines_are_refused(lawn: Run, tmp_path: Path, line: str) -> None:
    before = written(tmp_path)
    ran = lawn("log", line)
    assert ran.code == 2
    assert ran.err.startswith("swardbook: ")
    assert not any(ord(c) < 32 and c != "\n" for c in ran.err)
    assert written(tmp_path) == before


def written(folder: Path) -> dict[str, bytes]:
    """Every byte of the log."""
    return {file.name: file.read_bytes() for file in (folder / "book" / "log").iterdir()}


def test_markup_in_a_remark_is_only_text(lawn: Run) -> None:
    assert lawn("log", "mow 3in -- [red]x[/] see [/ [@click=app.quit]").code == 0
    assert lawn("list", "--json", "--kind", "mowing").json[0]["remark"] == "[red]x[/] see [/ [@click=app.quit]"


def test_a_dry_run_says_the_same_and_saves_nothing(lawn: Run, tmp_path: Path) -> None:
    before = written(tmp_path)
    dry = lawn("log mow 3in front --dry-run --json")
    assert written(tmp_path) == before
    wet = lawn("log mow 3in front --json")
    for ran in (dry, wet):
        ran.json["entry"].pop("id")
    assert {**dry.json, "entry": {**dry.json["entry"], "id": ""}} == {
        **wet.json,
        "entry": {**wet.json["entry"], "id": ""},
    }


def test_words_of_a_line_are_not_options(lawn: Run) -> None:
    assert lawn("log", "mow", "-1d", "--", "with", "--json", "inside").code == 0
    entry = lawn("list", "--json", "--kind", "mowing").json[0]
    assert entry["date"] == "2026-05-31"
    assert entry["remark"] == "with --json inside"


def test_undo_redo_amend_strike(lawn: Run) -> None:
    id = lawn("log mow 3in front --json").json["entry"]["id"]
    assert lawn("undo").code == 0
    assert lawn("list --json --kind mowing").json == []
    assert lawn("redo").code == 0
    assert lawn("amend", id, "mow", "3.5in", "--json").json["entry"]["zones"] == ["front"]
    assert lawn("list --json --kind mowing").json[0]["height_mm"] == pytest.approx(88.9)
    assert lawn("undo").code == 0
    assert lawn("list --json --kind mowing").json[0]["height_mm"] == pytest.approx(76.2)
    assert lawn("strike", id[-6:]).code == 0
    assert lawn("list --json --kind mowing").json == []
    assert lawn("strike", id).code == 2


def test_undo_goes_back_through_the_changes_one_by_one(lawn: Run) -> None:
    for height in ("3in", "3.2in", "3.4in"):
        lawn("log", "mow", height, "front")
    for left in (2, 1, 0):
        assert lawn("undo").code == 0
        assert len(lawn("list --json --kind mowing").json) == left


def test_a_phrase_for_a_date(lawn: Run) -> None:
    assert lawn("log mow 2 weeks ago --json").json["entry"]["date"] == "2026-05-18"
    assert lawn("log mow 1 month ago --json").json["entry"]["date"] == "2026-05-01"
    assert lawn("log mow last friday --json").json["entry"]["date"] == "2026-05-29"


def test_the_first_mowing_of_a_new_book_is_one_letter(lawn: Run) -> None:
    ran = lawn("log m --json")
    assert ran.json["entry"]["zones"] == ["front", "back"]
    assert ran.json["entry"]["height_mm"] == pytest.approx(76.2)
    assert {"zones", "height_mm"} <= set(ran.json["assumed"])


def test_a_feeding_takes_the_usual_product_never_an_amount(lawn: Run) -> None:
    lawn("log feed pond-ridge 15lb all", today="2026-05-01")
    ran = lawn("log f 17lb --json")
    assert ran.json["entry"]["product"] == "pond-ridge"
    assert "product" in ran.json["assumed"]
    assert ran.json["entry"]["amount_g"] == pytest.approx(17 * 453.59237)


def test_a_sheet_runs_no_formula(lawn: Run) -> None:
    lawn("log", "mow 3in front -- =1+1")
    assert ",'=1+1," in lawn("list --csv --kind mowing").out


def test_cups_of_a_granule_are_weighed(lawn: Run) -> None:
    lawn("log", "set pond-ridge cup 0.5lb form granule")
    assert lawn("log feed pond 3cup front --json").json["entry"]["amount_g"] == pytest.approx(1.5 * 453.59237)
    assert "give its weight" in lawn("log feed pond 12floz front").err
    assert "give its volume" in lawn("log treat dry-creek 5lb front").err


def test_a_product_in_use_is_not_struck_from_under_its_entries(lawn: Run) -> None:
    lawn("log feed pond 15lb front")
    id = next(e["id"] for e in lawn("list --kind setting --json").json if e["name"] == "pond-ridge")
    ran = lawn("strike", id)
    assert ran.code == 2
    assert "1 entries name pond-ridge" in ran.err
    assert lawn("amend", id, "mow", "3in").code == 2
    assert lawn("check --json").json["problems"] is False


def test_the_shells_quotes_are_not_the_owners(lawn: Run) -> None:
    lawn("log", "note", "moles along the fence")
    lawn("log", "mow 3in", "front", "--", "two words")
    assert lawn("list --kind remark --json").json[0]["text"] == "moles along the fence"
    assert lawn("list --kind mowing --json").json[0]["remark"] == "two words"


def test_a_treatment_says_the_safety_words_once(lawn: Run) -> None:
    out = lawn("log treat dry-creek 2floz front wind 4mph").out
    assert out.count("The label is law.") == 1
    assert "label is law" not in lawn("log mow 3in").out


@pytest.mark.parametrize(
    "words",
    [
        ("undo", ""), ("undo", "1"), ("list", "--zone", ""), ("flags", "--zone", ""), ("due", "--within", "99999999"),
        ("log", "mow", "--book"), ("strike", ""),
    ],
)  # fmt: skip
def test_an_empty_or_absurd_word_is_refused(lawn: Run, tmp_path: Path, words: tuple[str, ...]) -> None:
    before = written(tmp_path)
    assert lawn(*words).code == 2
    assert written(tmp_path) == before


def test_a_set_aside_flag_is_shown_with_all_and_fails_nothing(lawn: Run) -> None:
    lawn("log mow 3in all", today="2026-06-01")
    assert lawn("flags", "--fail-on", "late", today="2026-06-12").code == 1
    lawn("log", "snooze mow-gap 7d", today="2026-06-12")
    lawn("log", "snooze feed-overdue 7d", today="2026-06-12")
    ran = lawn("flags", "--all", "--json", "--fail-on", "late", today="2026-06-12")
    assert ran.code == 0
    assert any(flag["hidden"] for flag in ran.json["flags"])


def test_undo_says_what_became_of_the_entry(lawn: Run) -> None:
    id = lawn("log mow 3in front --json").json["entry"]["id"]
    lawn("amend", id, "mow", "3.5in")
    assert lawn("undo").out.startswith("changed back to: mow front, at 3 in")
    assert lawn("undo").out.startswith("taken back: mow front, at 3 in")
    assert lawn("redo").out.startswith("back again: mow front, at 3 in")


def test_what_warns_of_loss_stays_on(lawn: Run) -> None:
    assert "stays on" in lawn("set seed-switch off").err
    assert lawn("set mow-gap off").code == 0


def test_about_a_month_is_its_last_day(lawn: Run) -> None:
    assert lawn("log treat unknown by service in april --json").json["entry"]["date"] == "2026-04-30"


def test_the_levels_that_may_be_asked_for_are_those_there_are() -> None:
    assert set(LEVELS) == {level.value for level in Level}
