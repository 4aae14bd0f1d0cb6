"""A small lawn with a stocked shed, for ledgers and shelves: round areas, so that sums can be done in the head."""

from datetime import date

from journal.reckon.ledger import ZoneLedger, ledger
from journal.record.unit import UNITS
from journal.season.history import History
from tests import scenario

LAWN = """
[lawn]
name = "Round Numbers"
last_frost = "05-06"
first_frost = "10-05"
grass = ["kentucky bluegrass", "perennial ryegrass"]

[[zone]]
name = "front"
area = "2000 sqft"
irrigated = true
rate = "0.5 in/h"

[[zone]]
name = "back"
area = "3000 sqft"

[[product]]
name = "pond-ridge"
kind = "fertilizer"
analysis = "20-0-10"
slow = "40% of n"
bag = "40 lb"
rate = ["3 lb/k", "4 lb/k"]

[[product]]
name = "oat-hill"
kind = "starter"
analysis = "18-24-6"

[[product]]
name = "green-gate"
kind = "weed-and-feed"
analysis = "25-0-5"
actives = ["2,4-d"]

[[product]]
name = "no-numbers"
kind = "fertilizer"

[[product]]
name = "rust-water"
kind = "iron"
form = "liquid"
bottle = "32 floz"

[[product]]
name = "white-dust"
kind = "lime"
bag = "40 lb"

[[product]]
name = "green-water"
kind = "fertilizer"
analysis = "12-0-0"
form = "liquid"

[[product]]
name = "leaf-off"
kind = "weed"
actives = ["2,4-d"]
form = "liquid"
bottle = "32 floz"
rate = ["1 floz/k", "1.5 floz/k"]

[[product]]
name = "leaf-on"
kind = "weed"
actives = ["dicamba"]
form = "liquid"

[[product]]
name = "soak-in"
kind = "wetting"

[[product]]
name = "three-river"
kind = "seed"
mix = [{grass="kentucky bluegrass", percent=50}, {grass="perennial ryegrass", percent=50}]
purity = 95
germination = 80

[[product]]
name = "quick-rye"
kind = "seed"
mix = [{grass="perennial ryegrass", percent=100}]
"""

LB = 453.59237
FLOZ = float(UNITS["floz"].factor)
LB_PER_K = float(UNITS["lb/k"].factor)
TODAY = date(2027, 5, 3)


def book(*lines: str, changes: tuple[tuple[str, str], ...] = ()) -> History:
    """That lawn, set up at the beginning of 2025, and these lines, each typed on its day."""
    return scenario.book(*lines, on=scenario.lawn(*changes, toml=LAWN, set_up="2025-01-01"))


def zone(history: History, name: str = "front", year: int = 2026, as_of: date = TODAY) -> ZoneLedger:
    """One zone's ledger."""
    return next(one for one in ledger(history, year, as_of).zones if one.zone == name)


def n_lb(history: History, name: str = "front", year: int = 2026) -> float:
    """Its nitrogen in lb per 1,000 sq ft."""
    return zone(history, name, year).sums.n / LB_PER_K
