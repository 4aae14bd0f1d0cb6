"""What has to stand wherever a product against weeds, insects or disease is written down, planned or looked back on."""

from collections.abc import Mapping
from types import MappingProxyType

from journal.facts.citation import Basis, Citation, Known

EMERGENCY = Citation(
    "epa-emergency",
    "US Environmental Protection Agency",
    "In Case of Pesticide Emergency (snapshot)",
    2017,
    "19january2017snapshot.epa.gov",
)
LABEL_LAW = Citation(
    "epa-label-law",
    "US Environmental Protection Agency",
    "Label Review Training, Module 1: Label Basics, page 16",
    None,
    "epa.gov/pesticide-labels/label-review-training-module-1-label-basics-page-16",
)
BASIS = Basis(Known.PUBLISHED, (LABEL_LAW, EMERGENCY))

LABEL = "Read the label: it is the law and comes before anything said here."
KEEP_OFF = "Keep people and pets off until the spray has dried, or the granules are watered in and dry again."
GEAR = "Wear what the label asks: at the least gloves, eye protection, long sleeves and trousers, closed shoes."
"""Univ. of California ANR; Clemson Univ. Extension, PPE for Homeowner Pesticide Usage, 2022."""
LOCAL = "Local rules and licensed practice come first."
POISON = "Poison help in the US: 1-800-222-1222; elsewhere your own country's number."

SENTENCES = (LABEL, GEAR, KEEP_OFF, LOCAL, POISON)
"""In the order in which they are said, where there is room."""

SHORT = "The label is law. People and pets off until dry. Poison help 1-800-222-1222."
"""For one row of a narrow screen: at most 78 cells."""

METRIC_SHORT = "The label is law. People and pets off until dry. Know your poison helpline."
"""The same where the American number is of no use."""


def one_row(units: str) -> str:
    """The short words for a book that uses `us` or `metric` units."""
    return METRIC_SHORT if units == "metric" else SHORT


def as_json() -> Mapping[str, object]:
    """Keys: words (a list of sentences) and basis."""
    return MappingProxyType({"words": list(SENTENCES), "basis": BASIS.as_json()})
