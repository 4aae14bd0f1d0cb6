"""`swardbook ledger YEAR --json` on the demo book against a sheet that was worked by hand.

The working is in ledger_by_hand.md, its figures in ledger_by_hand.toml.
"""

import io
import json
import tomllib
from contextlib import redirect_stdout
from datetime import UTC, date, datetime
from pathlib import Path
from typing import Any

import pytest

from journal.cli.demo import OPENS
from journal.cli.demo.book import entries, write
from journal.cli.main import main
from journal.store.book import Book

SHEET: dict[str, Any] = tomllib.loads(Path(__file__).with_name("ledger_by_hand.toml").read_text("utf-8"))
YEARS = tuple(SHEET)
ZONES = ("front", "back", "side")
SPOKEN = [(year, zone) for year in YEARS for zone in ZONES]

NEAR = 1e-6
"""Nothing is rounded on the sheet but its eleventh digit, nor may it be in the document."""

LB_G = 453.59237
K_M2 = 1000 * 0.3048**2
INCH_MM = 25.4
NUTRIENTS = ("n", "soluble_n", "p2o5", "k2o", "seed")
"""In lb per 1,000 sq ft on the sheet; the document has them in g per m2 too."""
DEPTHS = ("water", "rain")
CAP = 2.7
"""lb N per 1,000 sq ft and year for bluegrass: Univ. of Maryland Extension, Lawn Fertilizer Schedule Table, 2023."""


@pytest.fixture(scope="module")
def ledgers(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Any]:
    """The documents of all years of one demo book, by year."""
    folder = tmp_path_factory.mktemp("ledger") / "book"
    book = Book.create(folder, computer="demo", clock=lambda: datetime(2027, 5, 3, 12, tzinfo=UTC))
    write(book)
    book.close()
    found = {}
    for year in YEARS:
        with redirect_stdout(io.StringIO()) as out:
            code = main(["--book", str(folder), "--today", OPENS.isoformat(), "ledger", year, "--json"])
        assert code == 0
        found[year] = json.loads(out.getvalue())
    return found


@pytest.fixture(scope="module")
def typed() -> dict[str, tuple[date, str]]:
    """The day and the line of every entry, by its id."""
    return {entry.id: (entry.date, entry.line) for entry in entries()}


def g_per_m2(lb_per_k: float) -> float:
    return lb_per_k * LB_G / K_M2


def worked_out(sheet: dict[str, Any]) -> dict[str, Any]:
    """The sheet's figures of a zone or a season under the keys of the document, in both its units."""
    found = {f"{name}_lb_per_1000sqft": sheet[name] for name in NUTRIENTS}
    found |= {f"{name}_g_per_m2": g_per_m2(sheet[name]) for name in NUTRIENTS}
    found |= {f"{name}_in": sheet[name] for name in DEPTHS}
    found |= {f"{name}_mm": sheet[name] * INCH_MM for name in DEPTHS}
    return found | {"cost": sheet["cost"]}


def near(sheet: Any) -> Any:
    return pytest.approx(sheet, rel=NEAR, abs=1e-9)


def said(document: dict[str, Any], keys: dict[str, Any]) -> dict[str, Any]:
    return {key: document[key] for key in keys}


def is_line(sheet: dict[str, Any], entry: str, typed: dict[str, tuple[date, str]]) -> bool:
    """Whether an id is that of the sheet's line: its day, and how it begins."""
    day, line = typed[entry]
    return day == sheet["date"] and line.startswith(sheet["line"])


@pytest.mark.parametrize("year", YEARS)
def test_a_year_is_reckoned_to_its_end_or_to_today(ledgers: dict[str, Any], year: str) -> None:
    assert ledgers[year]["year"] == int(year)
    assert ledgers[year]["as_of"] == SHEET[year]["as_of"].isoformat()
    assert tuple(ledgers[year]["zones"]) == ZONES


@pytest.mark.parametrize(("year", "zone"), SPOKEN)
def test_what_a_zone_got_in_a_year(ledgers: dict[str, Any], year: str, zone: str) -> None:
    sheet = SHEET[year]["zones"][zone]
    figures = worked_out(sheet) | {"area_sqft": sheet["area"], "area_m2": sheet["area"] * K_M2 / 1000}
    assert said(ledgers[year]["zones"][zone], figures) == near(figures)


@pytest.mark.parametrize(("year", "zone"), SPOKEN)
def test_every_feeding_with_its_nitrogen(
    ledgers: dict[str, Any], typed: dict[str, tuple[date, str]], year: str, zone: str
) -> None:
    sheet, found = SHEET[year]["zones"][zone]["feedings"], ledgers[year]["zones"][zone]["feedings"]
    assert [(one["date"], one["product"]) for one in found] == [
        (one["date"].isoformat(), one["product"]) for one in sheet
    ]
    assert len({one["entry"] for one in found}) == len(found)
    for one, line in zip(found, sheet, strict=True):
        assert is_line(line, one["entry"], typed), typed[one["entry"]]
        nitrogen = line.get("n")
        assert one["n_lb_per_1000sqft"] == (None if nitrogen is None else near(nitrogen))
        assert one["n_g_per_m2"] == (None if nitrogen is None else near(g_per_m2(nitrogen)))


@pytest.mark.parametrize(("year", "zone"), SPOKEN)
def test_what_could_not_be_counted(
    ledgers: dict[str, Any], typed: dict[str, tuple[date, str]], year: str, zone: str
) -> None:
    sheet, found = SHEET[year]["zones"][zone]["unknown"], ledgers[year]["zones"][zone]["unknown"]
    told = sorted({typed[one["entry"]] for one in found})
    assert [(day.isoformat(), line.partition(" -- ")[0]) for day, line in told] == [
        (one["date"].isoformat(), one["line"]) for one in sheet
    ]
    assert all(one["what"] and one["why"] and one["date"] == typed[one["entry"]][0].isoformat() for one in found)


@pytest.mark.parametrize(("year", "zone"), SPOKEN)
def test_from_seed_to_seed(ledgers: dict[str, Any], year: str, zone: str) -> None:
    sheet, found = SHEET[year]["zones"][zone].get("seasons", []), ledgers[year]["zones"][zone]["seasons"]
    assert [(one["from"], one["to"]) for one in found] == [(one["from"].isoformat(), None) for one in sheet]
    for one, season in zip(found, sheet, strict=True):
        figures = worked_out(season)
        assert said(one, figures) == near(figures)


@pytest.mark.parametrize(("year", "zone"), SPOKEN)
def test_the_most_in_a_year_and_what_is_left_of_it(ledgers: dict[str, Any], year: str, zone: str) -> None:
    sheet, found = SHEET[year]["zones"][zone], ledgers[year]["zones"][zone]
    assert found["limit"]["n_lb_per_1000sqft"] == near(CAP)
    assert found["limit"]["n_g_per_m2"] == near(g_per_m2(CAP))
    assert found["limit"]["from"] == "default"
    assert "Maryland" in json.dumps(found["limit"]["basis"])
    assert found["n_left_lb_per_1000sqft"] == near(sheet["n_left"])
    assert found["n_left_g_per_m2"] == near(g_per_m2(sheet["n_left"]))
    assert found["local"] is None


@pytest.mark.parametrize("year", YEARS)
def test_the_money(ledgers: dict[str, Any], year: str) -> None:
    figures = {"cost": SHEET[year]["cost"], "spent": SHEET[year]["spent"]}
    assert said(ledgers[year]["lawn"], figures) == near(figures)


@pytest.mark.parametrize("year", YEARS)
def test_where_the_spreader_was_off(ledgers: dict[str, Any], typed: dict[str, tuple[date, str]], year: str) -> None:
    sheet, found = SHEET[year].get("checks", []), ledgers[year]["checks"]
    assert [(one["date"], one["product"], one["zones"]) for one in found] == [
        (one["date"].isoformat(), one["product"], one["zones"]) for one in sheet
    ]
    for one, line in zip(found, sheet, strict=True):
        assert is_line(line, one["entry"], typed), typed[one["entry"]]
        figures = {
            "rate_lb_per_1000sqft": line["rate"],
            "rate_g_per_m2": g_per_m2(line["rate"]),
            "label_low_lb_per_1000sqft": line["low"],
            "label_high_lb_per_1000sqft": line["high"],
            "off_percent": line["off_percent"],
        }
        assert said(one, figures) == near(figures)
        assert one["says"]


def test_the_sheet_adds_up() -> None:
    """The feedings on the sheet make its nitrogen, and the zones' costs the lawn's but for what names no zone."""
    for year, zone in SPOKEN:
        of_zone = SHEET[year]["zones"][zone]
        assert sum(one.get("n", 0) for one in of_zone["feedings"]) == near(of_zone["n"])
        assert of_zone["n"] + of_zone["n_left"] == near(CAP)
    blade = {"2026": 24}
    for year in YEARS:
        zones = sum(SHEET[year]["zones"][zone]["cost"] for zone in ZONES)
        assert zones + blade.get(year, 0) == near(SHEET[year]["cost"])
