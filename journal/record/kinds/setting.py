"""Facts about the lawn: its zones, products and thresholds, changed by a line like everything else."""

from dataclasses import dataclass
from datetime import date

from journal.record.entry import Entry, Verb, entry_kind


@entry_kind(
    "setting",
    Verb("set", "change a fact or a threshold", "set front area 2100sqft", what=""),
    Verb("zone", "a part of the lawn", "zone side 1200sqft sun full", what="zone"),
    Verb(
        "product",
        "a product, as its label says",
        "product PRODUCT kind starter analysis 18-24-6",
        what="product",
    ),
    lawnwide=True,
)
@dataclass(frozen=True, slots=True, kw_only=True)
class Setting(Entry):
    """Named values of one thing, each in the words it was written in.

    `what` is lawn, zone, product or rule; `name` the zone, product or rule ('' for the lawn). `since` dates a real
    change; without it the value is a correction and holds for the past too.
    """

    what: str = ""
    name: str = ""
    values: tuple[tuple[str, str], ...] = ()
    since: date | None = None
