"""A metric book, and one south of the equator, go through all that the American one does."""

from datetime import date, timedelta
from pathlib import Path

import pytest

from tests.cli.conftest import METRIC, US, Run, set_up

SOUTH = (
    METRIC.replace('last_frost = "05-06"', 'last_frost = "10-05"\nlatitude = -37.8')
    .replace('first_frost = "10-05"', 'first_frost = "05-20"')
    .replace('rate = "15 mm/h"', 'rate = "15 mm/h"\nsoil = "loam"')
)
NORTH = METRIC.replace('last_frost = "05-06"', 'last_frost = "05-06"\nlatitude = 52.1').replace(
    'rate = "15 mm/h"', 'rate = "15 mm/h"\nsoil = "loam"'
)
AMERICAN = US.replace('last_frost = "05-06"', 'last_frost = "05-06"\nlatitude = 42.3').replace(
    'rate = "0.6 in/h"', 'rate = "0.6 in/h"\nsoil = "loam"'
)
PLACES = {"american": (AMERICAN, "2026-07-20"), "metric": (NORTH, "2026-07-20"), "southern": (SOUTH, "2027-01-20")}


@pytest.fixture(params=PLACES)
def summer(request: pytest.FixtureRequest, tmp_path: Path, run: Run) -> tuple[str, str, Run]:
    """The place, a day in high summer there, and a book with six weeks of daily weather taken in from a file."""
    text, today = PLACES[request.param]
    set_up(tmp_path, run, text)
    last = date.fromisoformat(today)
    rows = ["date,precipitation,temp_max,temp_min"]
    rows += [f"{last - timedelta(back)},{0 if back % 10 else 30},28.0,15.0" for back in range(42, 0, -1)]
    (tmp_path / "daily.csv").write_text("\n".join(rows) + "\n")
    taken = run("import-weather", str(tmp_path / "daily.csv"), "--units", "metric", "--json", today=today)
    assert (taken.code, taken.json["kept"], taken.json["new"]) == (0, 42, 42), taken.err
    return request.param, today, run


def test_taking_the_same_weather_in_again_changes_nothing(summer: tuple[str, str, Run], tmp_path: Path) -> None:
    _, today, run = summer
    again = run("import-weather", str(tmp_path / "daily.csv"), "--units", "metric", "--json", today=today).json
    assert (again["kept"], again["new"]) == (42, 0)
    assert len(run("list --kind weather --json", today=today).json) == 42


def test_the_ledger_counts_the_same_lawn_in_its_own_units(summer: tuple[str, str, Run]) -> None:
    place, today, run = summer
    us = place == "american"
    assert run(f"log feed pond-ridge {'7.2lb' if us else '3.345kg'} front", today=today).code == 0
    found = run("ledger --json", today=today).json["zones"]["front"]
    grams = 7.2 * 453.59237 / (2400 * 0.09290304) if us else 3345 / 223
    assert found["n_g_per_m2"] == pytest.approx(grams * 0.24)
    assert found["n_lb_per_1000sqft"] == pytest.approx(grams * 0.24 / 4.882427636383051)
    assert found["soluble_n_g_per_m2"] == pytest.approx(grams * (0.24 - 0.096))
    text = run("ledger", today=today).out
    assert ("lb/k" in text, "g/m2" in text) == (us, not us)


def test_a_dry_spell_ends_in_a_watering_with_its_minutes(summer: tuple[str, str, Run]) -> None:
    place, today, run = summer
    due = run("due --json", today=today).json["steps"]
    step = next(step for step in due if step["step"] == "water")
    assert step["zones"] == ["front"]
    assert step["state"] in ("open", "late")
    assert step["line"].startswith("water ")
    assert step["line"].endswith("min front")
    assert ("in)" in step["amount"] or "in;" in step["amount"]) is (place == "american")
    assert run(f"log {step['line']}", today=today).code == 0
    assert not [
        s for s in run("due --json", today=today).json["steps"] if s["step"] == "water" and s["state"] != "waiting"
    ]


def test_balance_and_degree_days_come_from_the_weather_on_file(summer: tuple[str, str, Run]) -> None:
    _, today, run = summer
    last = date.fromisoformat(today) - timedelta(1)
    span = f"--from {last - timedelta(9)} --to {last}"
    warmth = run(f"reckon degree-days --base 10C {span} --json", today=today)
    assert warmth.code == 0, warmth.err
    assert warmth.json == {"degree_days_f": pytest.approx(10 * (21.5 - 10) * 1.8), "days": 10, "missing": 0}
    balance = run(f"reckon balance {span} --zone front --json", today=today)
    assert balance.code == 0, balance.err
    assert balance.json["rain_mm"] == pytest.approx(30)
    # High summer at these latitudes: 3.5 to 6.5 mm a day by the formula, by a turf coefficient of .86 to .94.
    assert 30 < balance.json["et_mm"] < 62


def test_north_and_south_use_the_same_water_on_the_same_day_of_summer(run: Run) -> None:
    north = run("reckon et0 --lat 40 --date 2026-07-15 --tmin 15C --tmax 29C --json").json
    south = run("reckon et0 --lat -40 --date 2026-01-15 --tmin 15C --tmax 29C --json").json
    assert south["daylight_h"] == pytest.approx(north["daylight_h"], rel=0.02)
    assert south["et0_mm"] == pytest.approx(north["et0_mm"], rel=0.08)  # the sun is nearer in January
