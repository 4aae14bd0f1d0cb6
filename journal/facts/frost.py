"""What a freeze is, and how many years and days it takes to tell a date by it, or what is normal."""

from journal.facts.citation import Basis, memory
from journal.facts.factors import celsius
from journal.facts.sources import judgment, published

FREEZE_C = celsius(32)
"""A day whose low is at or below this had a freeze."""

FREEZE_BASIS: Basis = published(
    "nws-freeze", "ncei-freeze", "mrcc-freeze",
    note="a low at or below 32 F (0 C) is a freeze; a hard freeze is 28 F",
)  # fmt: skip

CHANCES = (10, 50, 90)
"""Percent: the chance of a freeze after the date (spring) or before it (autumn), as NCEI's tables put it."""

LEAST_YEARS = 10
"""Years without which no chance is given: their dates are listed instead."""

ENOUGH = 0.9
"""The part of a half-year's days whose low must be on file for its year to count."""

YEARS_BASIS: Basis = judgment(f"fewer than {LEAST_YEARS} years tell no chance, 30 are better")

MISSING_DAYS = 3
"""So many days without temperatures a month may have and still count; its rain must be on file whole."""

NORMAL_YEARS = 30
"""Years that a published normal is made from."""

NORMAL_BASIS: Basis = memory(f"a climate normal is a mean of {NORMAL_YEARS} years")
