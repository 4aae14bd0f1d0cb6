"""The command `reckon`: keys, tables, and what is refused; no book is needed for it."""

import json

import pytest

from journal.reckon.calls import reckonings
from tests.cli.conftest import Run

SPREAD = "reckon spread --analysis 24-0-11 --n 0.9lb/k --area 8200sqft"
SPREAD_KEYS = {
    "product_lb_per_1000sqft", "product_lb", "per_pass_lb", "bags", "bag_covers_sqft", "n_lb_per_1000sqft",
    "p2o5_lb_per_1000sqft", "k2o_lb_per_1000sqft", "soluble_n_lb_per_1000sqft", "cost", "cost_per_lb_n",
}  # fmt: skip

CALLS = [
    (f"{SPREAD} --slow-share 40% --bag 50lb --price 42 --passes 2", SPREAD_KEYS),
    (f"{SPREAD} --slow-n 9.6%", SPREAD_KEYS),
    ("reckon spread --analysis 24-0-11 --amount 15lb --area 5000sqft", SPREAD_KEYS),
    (
        "reckon seed --rate 4lb/k --area 2400sqft --purity 95 --germination 85",
        {"pls_percent", "pls_lb", "bulk_lb", "bulk_lb_per_1000sqft"},
    ),
    (
        "reckon spray --rate 1.5floz/k --area 5000sqft --carrier 1gal/k --tank 4gal",
        {"product_floz", "water_gal", "tanks", "product_floz_per_tank"},
    ),
    ("reckon calibrate-spreader --caught 0.5lb --area 50sqft", {"rate_lb_per_1000sqft", "off_percent"}),
    ("reckon calibrate-spreader --caught 0.5lb --area 50sqft --target 10lb/k", {"rate_lb_per_1000sqft", "off_percent"}),
    ("reckon calibrate-sprayer --caught 40floz --area 340sqft", {"gal_per_acre", "gal_per_1000sqft"}),
    (
        "reckon lime --need 110lb/k --max 50lb/k --cce 80 --area 5000sqft",
        {"doses", "lb_per_dose_per_1000sqft", "total_lb"},
    ),
    ("reckon area --rect 40ft,60ft --triangle 30ft,20ft --minus --circle 12ft", {"sqft", "m2"}),
]


@pytest.mark.parametrize(("line", "keys"), CALLS)
def test_the_keys_of_a_call(line: str, keys: set[str], run: Run) -> None:
    ran = run(f"{line} --json")
    assert (ran.code, ran.err) == (0, "")
    assert set(ran.json) == keys
    assert all(value is None or isinstance(value, (int, float)) for value in ran.json.values())


@pytest.mark.parametrize("line", [line for line, _ in CALLS])
def test_the_table_of_a_call(line: str, run: Run) -> None:
    ran = run(line)
    assert (ran.code, ran.err) == (0, "")
    assert max(map(len, ran.out.splitlines())) <= 80
    assert ran.out.strip()


def test_figures_stand_in_columns_in_both_systems(run: Run) -> None:
    ran = run(f"{SPREAD} --bag 50lb --price 42")
    rows = ran.out.split("\n\n")[0].splitlines()
    assert rows[:5] == [
        "product                 3.75 lb/k   (18.3 g/m2)",
        "product in all          30.8 lb     (13.9 kg)",
        "in each of 2 passes     15.4 lb     (6.97 kg)",
        "bags used              0.615",
        "one bag covers        13,333 sq ft  (1,239 m2)",
    ]
    assert rows[-2:] == ["cost of what is used  $25.83", "cost of the nitrogen   $3.50 a lb   ($7.72 a kg)"]


def test_what_can_not_be_given_is_null_and_left_out_of_the_table(run: Run) -> None:
    line = "reckon calibrate-spreader --caught 0.5lb --area 50sqft"
    assert run(f"{line} --json").json == {"rate_lb_per_1000sqft": 10.0, "off_percent": None}
    assert "off the target" not in run(line).out


def test_one_area_is_one_row(run: Run) -> None:
    assert run("reckon area --rect 40ft,60ft").out == "area  2,400 sq ft  (223 m2)\n"


def test_whole_numbers_have_no_fraction(run: Run) -> None:
    assert '"doses": 3,' in run("reckon lime --need 110lb/k --area 5000sqft --json").out


def test_options_of_the_program_may_stand_among_those_of_the_reckoning(run: Run) -> None:
    line = "reckon seed --json --rate 4lb/k --today 2026-05-01 --area 2400sqft --purity 95 --germination 85"
    assert run(line).json["bulk_lb"] == 9.6


def test_without_a_name_all_are_listed_with_an_example(run: Run) -> None:
    ran = run("reckon")
    assert (ran.code, ran.err) == (0, "")
    assert max(map(len, ran.out.splitlines())) <= 80
    typed = ran.out.replace(" \\\n   ", "")
    for one in reckonings():
        assert f"{one.name}: " in ran.out
        assert f"swardbook reckon {one.example}" in typed
    assert run("reckon --help").out == ran.out
    assert {one["name"] for one in run("reckon --json").json} == {one.name for one in reckonings()}


@pytest.mark.parametrize("name", [one.name for one in reckonings()])
@pytest.mark.parametrize("asked", ["-h", "--help"])
def test_help_shows_every_option_with_an_example(name: str, asked: str, run: Run) -> None:
    ran = run(f"reckon {name} {asked}")
    assert (ran.code, ran.err) == (0, "")
    assert max(map(len, ran.out.splitlines())) <= 80
    one = next(one for one in reckonings() if one.name == name)
    assert [option.example for option in one.options.values() if f"  {option.example}" not in ran.out] == []


@pytest.mark.parametrize("one", [one for one in reckonings() if one.needs.value == "nothing"], ids=lambda one: one.name)
def test_every_example_can_be_typed(one: object, run: Run) -> None:
    example = one.example  # type: ignore[attr-defined]
    assert run(f"reckon {example}").code == 0
    assert json.loads(run(f"reckon {example} --json").out)


def test_help_tells_the_radius_from_the_diameter(run: Run) -> None:
    assert "its radius, from the middle to the rim" in run("reckon area --help").out
    assert "taken as its radius" in run("reckon area --circle 12ft").out


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("reckon spred --n 1lb/k", "Did you mean spread?\n  spred --n 1lb/k\n  ^^^^^\n"),
        ("reckon zzz", "no reckoning is called so; there are area, "),
        ("reckon spread --analysis 24-0-11 --n 0.9lb/k", "swardbook: --area: is missing: write it like --area"),
        (
            "reckon spread --area 0sqft --analysis 24-0-11 --n 1lb/k",
            "wanted here.\n  spread --area 0sqft --analysis 24-0-11 --n 1lb/k\n                ^^^^^\n",
        ),
        (
            "reckon area --rect=40ft,12m",
            "goes before it.\n  area --rect=40ft,12m\n                   ^^^\n",
        ),
        (
            "reckon lime --need 1lb/k --need 2lb/k --area 1m2",
            "already.\n  lime --need 1lb/k --need 2lb/k --area 1m2\n                    ^^^^^^\n",
        ),
        (
            "reckon seed --germ 85",
            "there are --rate, --area, --purity, --germination, --pls.\n  seed --germ 85\n       ^^^^^^\n",
        ),
        ("reckon seed --rates 4lb/k", "Did you mean --rate?\n"),
    ],
)
def test_what_can_not_be_used_is_pointed_at(line: str, said: str, run: Run) -> None:
    ran = run(line)
    assert (ran.code, ran.out) == (2, "")
    assert said in ran.err
    assert ran.err.startswith("swardbook: ")


def test_nothing_of_a_terminal_gets_through_an_error(run: Run) -> None:
    ran = run("reckon", "lime", "--need", "\x1b[31m1lb/k", "--area", "1m2")
    assert (ran.code, ran.out) == (2, "")
    assert "\x1b" not in ran.err
    assert "--need \N{REPLACEMENT CHARACTER}[31m1lb/k: not a number" in ran.err


@pytest.mark.parametrize("line", [line for line, _ in CALLS])
def test_nothing_is_called_safe_or_legal(line: str, run: Run) -> None:
    said = f" {' '.join(run(line).out.casefold().split())} "
    assert [word for word in (" safe", " legal", " approved") if word in said] == []


@pytest.mark.parametrize("name", ["spread", "spray", "calibrate-spreader", "calibrate-sprayer", "lime"])
def test_the_label_goes_first(name: str, run: Run) -> None:
    one = next(one for one in reckonings() if one.name == name)
    said = " ".join(run(f"reckon {one.example}").out.split())
    assert "The label's own" in said


def test_no_book_is_opened_where_none_is_asked_for(run: Run, tmp_path: object) -> None:
    assert run(SPREAD).code == 0
    assert run("reckon balance --from 2026-05-01 --to 2026-05-02 --zone front").code == 2
    assert list(tmp_path.iterdir()) == []  # type: ignore[attr-defined]


WEATHER = """\
date,high (F),low (F),rain (in)
2026-05-01,74,52,0.10
2026-05-02,70,50,0
2026-05-04,40,30,0
"""


def test_a_weather_file_is_read_without_a_book(run: Run, tmp_path: object) -> None:
    file = tmp_path / "days.csv"  # type: ignore[operator]
    file.write_text(WEATHER, encoding="utf-8")
    line = f"reckon degree-days --base 50F --from 2026-05-01 --to 2026-05-04 --file {file} --json"
    assert run(line).json == {"degree_days_f": 23.0, "days": 3, "missing": 1}


@pytest.mark.parametrize(
    ("text", "said"),
    [(None, "can't be read"), (b"\xff\xfe\x00", "can't be read"), (b"when,what\n1,2\n", "no column of dates")],
)
def test_a_weather_file_that_can_not_be_read_is_named(
    text: bytes | None, said: str, run: Run, tmp_path: object
) -> None:
    file = tmp_path / "days.csv"  # type: ignore[operator]
    if text is not None:
        file.write_bytes(text)
    ran = run(f"reckon degree-days --base 50F --from 2026-05-01 --to 2026-05-04 --file {file}")
    assert (ran.code, ran.out) == (2, "")
    assert said in ran.err


def test_without_a_file_the_book_tells_the_weather(lawn: Run) -> None:
    assert lawn("log weather 74F 52F 0.1in 5/1", today="2026-05-02").code == 0
    assert lawn("log rain 0.2in", today="2026-05-02").code == 0
    line = "reckon degree-days --base 50F --from 2026-05-01 --to 2026-05-02 --json"
    assert lawn(line, today="2026-05-03").json == {"degree_days_f": 13.0, "days": 1, "missing": 1}
