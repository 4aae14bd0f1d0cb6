"""Commands run in this process, on a book of their own."""

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any, NamedTuple

import pytest

from journal.cli.main import main

US = """\
[lawn]
name = "Mill Lane"
units = "us"
last_frost = "05-06"
first_frost = "10-05"
grass = ["kentucky bluegrass", "perennial ryegrass"]

[[zone]]
name = "front"
area = "2400 sqft"
irrigated = true
rate = "0.6 in/h"

[[zone]]
name = "back"
area = "3100 sqft"

[[product]]
name = "oat-hill-starter"
kind = "starter"
analysis = "18-24-6"
slow = "20% of n"
bag = "48 lb"
actives = ["mesotrione"]
form = "granule"
rate = ["3 lb/k", "4 lb/k"]
[product.label]
to_seed = "0 d"
after_seed = "0 d"
repeat = "28 d"

[[product]]
name = "pond-ridge"
kind = "fertilizer"
analysis = "24-0-11"
slow_n = "9.6%"
bag = "50 lb"
rate = ["3 lb/k", "4 lb/k"]

[[product]]
name = "three-river"
kind = "seed"
mix = [{grass="kentucky bluegrass", percent=50}, {grass="perennial ryegrass", percent=50}]

[[product]]
name = "far-meadow"
kind = "seed"
mix = [{grass="tall fescue", percent=90}, {grass="kentucky bluegrass", percent=10}]

[[product]]
name = "dry-creek"
kind = "weed"
actives = ["2,4-D", "dicamba"]
form = "liquid"
rate = ["1 floz/k", "1.5 floz/k"]
[product.label]
to_seed = "28 d"
"""

METRIC = (
    US.replace('units = "us"', 'units = "metric"')
    .replace("2400 sqft", "223 m2")
    .replace("3100 sqft", "288 m2")
    .replace("0.6 in/h", "15 mm/h")
    .replace('rate = ["3 lb/k", "4 lb/k"]', 'rate = ["15 g/m2", "20 g/m2"]')
    .replace("48 lb", "22 kg")
    .replace("50 lb", "23 kg")
    .replace('rate = ["1 floz/k", "1.5 floz/k"]', 'rate = ["0.32 ml/m2", "0.48 ml/m2"]')
)


class Ran(NamedTuple):
    """What a command left: exit code, standard output, standard error."""

    code: int
    out: str
    err: str

    @property
    def json(self) -> Any:
        """Standard output as one JSON document."""
        return json.loads(self.out)


Run = Callable[..., Ran]


@pytest.fixture
def run(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> Run:
    """`run("log mow 3in", today="2026-06-01")`, or words as several arguments."""

    def command(*words: str, today: str = "2026-06-01") -> Ran:
        arguments = words[0].split(" ") if len(words) == 1 else list(words)
        capsys.readouterr()
        try:
            code = main(["--book", str(tmp_path / "book"), "--today", today, *arguments])
        except SystemExit as left:
            code = int(left.code or 0)
        ran = capsys.readouterr()
        return Ran(code, ran.out, ran.err)

    return command


@pytest.fixture
def lawn(tmp_path: Path, run: Run) -> Run:
    """The same, with a two-zone lawn in US units set up on 1 April 2026."""
    return set_up(tmp_path, run, US)


@pytest.fixture
def metric_lawn(tmp_path: Path, run: Run) -> Run:
    """The same lawn in metric units."""
    return set_up(tmp_path, run, METRIC)


def set_up(folder: Path, run: Run, text: str) -> Run:
    """Set the book up from a file."""
    (folder / "lawn.toml").write_text(text)
    made = run("setup", "--from", str(folder / "lawn.toml"), today="2026-04-01")
    assert made.code == 0, made.err
    return run
