"""Something bought."""

from dataclasses import dataclass
from datetime import date
from typing import Any

from journal.record.entry import Entry, Verb, entry_kind
from journal.record.kinds.feeding import FEEDS, need_product
from journal.record.kinds.treatment import TREATMENTS
from journal.record.slot import measure, month, product
from journal.record.unit import Dimension

EVERYTHING = tuple(dict.fromkeys((*FEEDS, *TREATMENTS, "seed")))


@entry_kind("stock", Verb("buy", "something bought", "buy PRODUCT 2x 48lb $31", pin="b"), lawnwide=True)
@dataclass(frozen=True, slots=True, kw_only=True)
class Stock(Entry):
    """So many packs of one size; a seed lot brings its own purity, germination and month of test."""

    product: str = product(EVERYTHING, usual=False)
    count: float | None = measure(Dimension.TIMES, low=1, high=1000)
    size_g: float | None = measure(Dimension.MASS, low=0.1)
    size_ml: float | None = measure(Dimension.VOLUME, low=0.1)
    purity: float | None = measure(Dimension.NUMBER, Dimension.PERCENT, keyword="pure", low=1, high=100)
    germination: float | None = measure(Dimension.NUMBER, Dimension.PERCENT, keyword="germ", low=1, high=100)
    tested: date | None = month("tested")

    @classmethod
    def settle(cls, values: dict[str, Any]) -> None:
        """What was bought has a name."""
        need_product("buy", values)
