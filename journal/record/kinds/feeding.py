"""Putting fertilizer, lime or a supplement down."""

from dataclasses import dataclass
from typing import Any

from journal.record.entry import Entry, Verb, entry_kind
from journal.record.refusal import Refusal
from journal.record.slot import mark, measure, product
from journal.record.unit import Dimension

FEEDS = ("starter", "fertilizer", "weed-and-feed", "lime", "iron", "supplement")


@entry_kind(
    "feeding",
    Verb("feed", "put fertilizer or lime down", "feed PRODUCT 12lb front back", pin="f"),
    applies=True,
)
@dataclass(frozen=True, slots=True, kw_only=True)
class Feeding(Entry):
    """A total for the zones named, or a rate. `setting` is the mark on the spreader, `temp` the air at the time."""

    product: str = product(FEEDS)
    amount_g: float | None = measure(Dimension.MASS, dose=True)
    amount_ml: float | None = measure(Dimension.VOLUME, dose=True)
    rate_g_per_m2: float | None = measure(Dimension.MASS_RATE, dose=True)
    rate_ml_per_m2: float | None = measure(Dimension.VOLUME_RATE, dose=True)
    light: bool = mark("light")
    edge_kept: bool = mark("edge kept")
    setting: float | None = measure(Dimension.NUMBER, keyword="setting", high=1000)
    temp_c: float | None = measure(Dimension.TEMPERATURE, keyword="temp", low=-60, high=60)

    @classmethod
    def settle(cls, values: dict[str, Any]) -> None:
        """A feeding names what was put down, and a total or a rate, not both."""
        need_product("feed", values)
        one_amount(values)


def need_product(verb: str, values: dict[str, Any]) -> None:
    """Raise Refusal when no product was named and none is usual."""
    if not values.get("product"):
        raise Refusal(verb, "which product? Name one from the shed.")


def one_amount(values: dict[str, Any]) -> None:
    """Raise Refusal when a total and a rate are both given, or mass and volume."""
    given = [n for n in ("amount_g", "amount_ml", "rate_g_per_m2", "rate_ml_per_m2") if values.get(n) is not None]
    if len(given) > 1:
        raise Refusal("", "give one amount: a total like 12lb, or a rate like 4lb/k.")
