"""What one step looks like for one zone, before zones that share it are put together."""

from dataclasses import dataclass
from datetime import date

from journal.plan.step import State
from journal.record.product import Product


@dataclass(frozen=True, slots=True)
class Spread:
    """A product to put down: grams per m2 of the zone, and `notes`, more about the dose in words."""

    product: Product
    rate_g_per_m2: float
    notes: str = ""
    round_down: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Offer:
    """A step of one zone. Equal offers of several zones become one step, so nothing here names the zone.

    `verb` begins the ready line (`mow 3in bag`), `tail` ends it; '' for `verb` means that there is no line.
    `amount` is words that hold for one zone as for several; with `spread` the total is added in front.
    """

    state: State
    earliest: date | None = None
    best: tuple[date, date] | None = None
    latest: date | None = None
    title: str = ""
    why: str = ""
    waits_for: str = ""
    amount: str = ""
    verb: str = ""
    tail: str = ""
    spread: Spread | None = None
    meant: date | None = None
    whole_lawn: bool = False
    """Whether its line names no zone: it is done once for all."""
