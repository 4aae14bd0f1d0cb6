"""What has to stand wherever a product against weeds, insects or disease is written down, planned or looked back on."""

from collections.abc import Mapping
from types import MappingProxyType

from journal.facts.citation import Basis, Citation, Known

POISON_HELP = Citation(
    "poison-help",
    "US Health Resources and Services Administration",
    "Poison Help line, 1-800-222-1222",
    None,
    "poisonhelp.hrsa.gov",
)
LABEL_LAW = Citation(
    "epa-label-law",
    "US Environmental Protection Agency",
    "Introduction to Pesticide Labels",
    None,
    "epa.gov/pesticide-labels/introduction-pesticide-labels",
)
BASIS = Basis(Known.PUBLISHED, (LABEL_LAW, POISON_HELP))

LABEL = "Read the label: it is the law and comes before anything said here."
KEEP_OFF = "Keep people and pets off until the spray has dried, or the granules are watered in and dry again."
LOCAL = "Local rules and licensed practice come first."
POISON = "Poison help in the US: 1-800-222-1222; elsewhere your own country's number."

SENTENCES = (LABEL, KEEP_OFF, LOCAL, POISON)
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
