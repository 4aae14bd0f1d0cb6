"""How long a soil test is good for."""

from journal.facts.citation import Basis
from journal.facts.sources import published

RETEST_BASIS: Basis = published(
    "psu-home-lawn",
    "umc-turf-test",
    note="every 3 years; 2 to 4 are printed too, and yearly while it is being put right",
)
"""Of the three years after which a soil test no longer speaks."""
