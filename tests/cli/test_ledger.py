"""`ledger` in words and for scripts."""

from pathlib import Path

import pytest

from tests.cli.conftest import US, Run, set_up

RATES = ("n", "soluble_n", "p2o5", "k2o", "seed")
SUMS = {
    *(f"{name}_{unit}" for name in RATES for unit in ("lb_per_1000sqft", "g_per_m2")),
    "water_in", "water_mm", "rain_in", "rain_mm", "cost",
}  # fmt: skip
ZONE = {
    "area_sqft", "area_m2", *SUMS, "feedings", "limit", "n_left_lb_per_1000sqft", "n_left_g_per_m2",
    "n_left_at_most", "local", "unknown", "seasons",
}  # fmt: skip


@pytest.fixture
def fed(lawn: Run) -> Run:
    lawn("log buy pond-ridge 1x 50lb $40", today="2026-04-20")
    lawn("log feed pond-ridge 22lb front back", today="2026-05-16")
    lawn("log seed three-river 12lb front back", today="2026-09-05")
    lawn("log feed pond-ridge front", today="2026-10-10")
    return lawn


def test_a_script_gets_every_key_that_was_promised(fed: Run) -> None:
    fed("log feed pond-ridge 8lb back", today="2026-10-11")
    ran = fed("ledger --json", today="2026-10-31")
    assert ran.code == 0
    assert "NaN" not in ran.out
    assert set(ran.json) == {"year", "as_of", "zones", "lawn", "checks", "short"}
    assert (ran.json["year"], ran.json["as_of"]) == (2026, "2026-10-31")
    front = ran.json["zones"]["front"]
    assert set(front) == ZONE
    assert set(front["feedings"][0]) == {"date", "product", "n_lb_per_1000sqft", "n_g_per_m2", "entry"}
    assert set(front["limit"]) == {"n_lb_per_1000sqft", "n_g_per_m2", "from", "says", "basis"}
    assert set(front["unknown"][0]) == {"entry", "date", "what", "why"}
    assert set(front["seasons"][0]) == {"from", "to", *SUMS}
    assert set(ran.json["lawn"]) == {"cost", "spent"}
    assert set(ran.json["checks"][0]) == {
        "entry", "date", "product", "zones", "rate_lb_per_1000sqft", "rate_g_per_m2", "label_low_lb_per_1000sqft",
        "label_high_lb_per_1000sqft", "off_percent", "says",
    }  # fmt: skip


def test_the_numbers_in_both_units(lawn: Run) -> None:
    lawn("log feed pond-ridge 22lb front back", today="2026-05-16")
    front = lawn("ledger --json", today="2026-06-01").json["zones"]["front"]
    assert front["area_sqft"] == 2400
    assert front["n_lb_per_1000sqft"] == pytest.approx(0.96)
    assert front["n_g_per_m2"] == pytest.approx(0.96 * 4.882427636)
    assert front["limit"]["n_lb_per_1000sqft"] == pytest.approx(2.7)
    assert front["limit"]["from"] == "default"
    assert front["n_left_lb_per_1000sqft"] == pytest.approx(1.74)
    assert front["local"] is None


def test_in_words_it_fits_eighty_columns_and_says_whose_number_the_limit_is(fed: Run) -> None:
    ran = fed("ledger", today="2026-10-31")
    assert ran.code == 0
    assert all(len(row) <= 80 for row in ran.out.splitlines())
    assert ran.out.startswith("2026, as of 31 Oct 2026.")
    words = " ".join(ran.out.split())
    assert "front, back: at most 2.7 lb/k of nitrogen in a calendar year, for kentucky bluegrass (Univ. of" in words
    assert "nitrogen 0.96 lb/k 0.96 lb/k" in words
    assert "left <= 1.74 lb/k 1.74 lb/k" in words
    assert "10 Oct pond-ridge, front: no amount was written down." in words
    assert "rain none on file none on file" in words
    assert "front, back: since 5 Sep 2026 and still running: nitrogen 0 lb/k" in words
    assert "The lawn cost $17.60: work, and products as they were used." in words
    assert "Laid out in the year: $40.00" in words


def test_a_spreader_that_is_off_is_told(lawn: Run) -> None:
    lawn("log feed pond-ridge 25lb front back", today="2026-05-16")
    words = " ".join(lawn("ledger", today="2026-06-01").out.split())
    assert "16 May pond-ridge, front, back: 4.55 lb/k went down, the label says 3 to 4: check the spreader." in words
    (check,) = lawn("ledger --json", today="2026-06-01").json["checks"]
    assert check["off_percent"] == pytest.approx(13.6363636)
    assert check["label_high_lb_per_1000sqft"] == pytest.approx(4)


def test_a_sprayer_has_no_pounds(lawn: Run) -> None:
    lawn("log treat dry-creek 6floz front wind 3mph 9:00 temp 65F !", today="2026-05-16")
    (check,) = lawn("ledger --json", today="2026-06-01").json["checks"]
    assert (check["rate_lb_per_1000sqft"], check["label_low_lb_per_1000sqft"]) == (None, None)
    assert check["says"] == "2.5 fl oz/k went down, the label says 1 to 1.5: check the sprayer."


def test_a_metric_book_speaks_metric(metric_lawn: Run) -> None:
    metric_lawn("log feed pond-ridge 18g/m2 front", today="2026-05-16")
    words = " ".join(metric_lawn("ledger", today="2026-06-01").out.split())
    assert "per square metre of the whole zone" in words
    assert "nitrogen 4.3 g/m2 0.0 g/m2" in words
    assert "lb/k" not in words


def test_a_rule_of_the_place_is_named_with_whom_to_ask(lawn: Run) -> None:
    lawn("set local_year_n 2lb/k")
    words = " ".join(lawn("ledger", today="2026-06-01").out.split())
    assert "at most 2 lb/k of nitrogen in a calendar year, by the local rule as you entered it" in words
    assert "Check with your local authority." in words
    front = lawn("ledger --json", today="2026-06-01").json["zones"]["front"]
    assert front["limit"]["from"] == "yours"
    assert set(front["local"]) == {"name", "n_lb_per_1000sqft", "says", "check"}
    assert front["local"]["n_lb_per_1000sqft"] == pytest.approx(2)
    assert front["local"]["check"] == "Check with your local authority."


def test_a_set_of_local_rules_is_shown_beside_a_stricter_grass(lawn: Run) -> None:
    lawn("set local_rules us-nj", today="2026-04-02")
    ran = lawn("ledger --json", today="2026-06-01")
    front = ran.json["zones"]["front"]
    assert front["local"]["name"] == "us-nj"
    assert front["limit"]["from"] == "default"
    assert "Check with your local authority." in " ".join(lawn("ledger", today="2026-06-01").out.split())


def test_over_the_limit_is_said_so(lawn: Run) -> None:
    for day in ("2026-04-25", "2026-06-10", "2026-08-25", "2026-10-12"):
        lawn("log feed pond-ridge 4lb/k front !", today=day)
    ran = lawn("ledger", today="2026-10-31")
    assert "over 1.14 lb/k" in ran.out
    assert lawn("ledger --json", today="2026-10-31").json["zones"]["front"]["n_left_g_per_m2"] == 0


def test_a_year_that_has_not_begun(lawn: Run) -> None:
    ran = lawn("ledger 2031", today="2026-06-01")
    assert (ran.code, ran.out) == (2, "")
    assert "2031 has not begun: the ledger goes up to today, 2026-06-01." in ran.err


def test_a_year_before_the_book(lawn: Run) -> None:
    ran = lawn("ledger 2019 --json", today="2026-06-01")
    assert (ran.code, ran.out) == (2, "")
    assert "nothing is on file of 2019: this book begins on 2026-04-01." in ran.err


def test_an_empty_year_is_all_noughts(lawn: Run) -> None:
    front = lawn("ledger --json", today="2026-06-01").json["zones"]["front"]
    rain = {"rain_in", "rain_mm"}
    assert all(front[key] == 0 for key in SUMS - rain)
    assert all(front[key] is None for key in rain), "nobody wrote any down"
    assert (front["feedings"], front["unknown"], front["seasons"]) == ([], [], [])
    assert "Not in these sums" not in lawn("ledger", today="2026-06-01").out


def test_what_happens_often_is_told_together(lawn: Run) -> None:
    for day in range(1, 7):
        lawn(f"log water back deep 2026-05-0{day}", today="2026-06-01")
    words = " ".join(lawn("ledger", today="2026-06-01").out.split())
    assert "1 May to 6 May watering, back, 6 times: how much water it gave is not known." in words


def test_many_zones_stand_in_several_tables(tmp_path: Path, run: Run) -> None:
    extra = "".join(f'[[zone]]\nname = "long-named-strip-{n}"\narea = "400 sqft"\n\n' for n in range(5))
    lawn = set_up(tmp_path, run, US.replace("[[product]]", f"{extra}[[product]]", 1))
    ran = lawn("ledger", today="2026-06-01")
    assert all(len(row) <= 80 for row in ran.out.splitlines())
    assert ran.out.count("\nnitrogen ") == 3
    assert ran.out.count("long-named-strip-4") >= 1


def test_more_used_than_was_ever_bought_is_said(lawn: Run) -> None:
    lawn("log buy pond-ridge 1x 10lb $9", today="2026-04-20")
    lawn("log feed pond-ridge 22lb front back", today="2026-05-16")
    short = lawn("ledger --json", today="2026-06-01").json["short"]
    assert [(one["product"], one["lb"], one["floz"]) for one in short] == [("pond-ridge", pytest.approx(12), None)]
    assert "pond-ridge: 12 lb went down beyond all that had been bought" in lawn("ledger", today="2026-06-01").out


def test_the_owners_own_number_and_a_table_without_a_number_are_told_apart(lawn: Run) -> None:
    lawn("log set local_rules us-md", today="2026-04-20")
    assert "table for each grass" in " ".join(lawn("ledger", today="2026-06-01").out.split())
    lawn("log set local_year_n 1lb/k", today="2026-04-20")
    said = " ".join(lawn("ledger", today="2026-06-01").out.split())
    assert "Your own number: at most 1 lb/k" in said
    assert "Maryland: at most" not in said
