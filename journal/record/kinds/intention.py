"""What is meant to be done on a day ahead."""

from dataclasses import dataclass
from datetime import date
from typing import Any

from journal.record.entry import Entry, Verb, entry_kind
from journal.record.kinds.stock import EVERYTHING
from journal.record.refusal import Refusal
from journal.record.slot import choice, mark, product, target_day

PLANS = (
    "seed",
    "feed",
    "treat",
    "aerate",
    "dethatch",
    "topdress",
    "rake",
    "mow",
    "water",
    "soil",
    "photo",
    "sharpen",
)


@entry_kind(
    "intention", Verb("intend", "something planned", "intend seed PRODUCT 2026-09-05 front", pin="i"), everywhere=True
)
@dataclass(frozen=True, slots=True, kw_only=True)
class Intention(Entry):
    """Meant for `target`; its own date is the day it was written down."""

    what: str = choice(*PLANS)
    product: str = product(EVERYTHING, usual=False)
    target: date | None = target_day()
    rental: bool = mark("rental")

    @classmethod
    def settle(cls, values: dict[str, Any]) -> None:
        """An intention says what and when."""
        if not values.get("what"):
            raise Refusal("intend", "to do what? Write it like intend seed PRODUCT 2026-09-05.")
        if values.get("target") is None:
            raise Refusal("intend", "for which day? Write it like 2026-09-05 or 9/5.")
        if values["target"] < values["date"]:
            raise Refusal("target", "a plan can't be for a day gone by.")
