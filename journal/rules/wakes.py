"""What wakes the rules that judge one entry: without such an entry in the last days they have nothing to say.

One table, because one reason holds for many: no flag raised by an entry stands longer than 60 days. It only saves
time; a rule that is not named here is asked on every day.
"""

from collections.abc import Mapping
from types import MappingProxyType

from journal.record.entry import Entry
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.treatment import Treatment

_STANDS_DAYS = 70
"""More than the 60 days that a flag of one entry stands at the most."""
_STAND_OF_GRASS_DAYS = 500
"""More than a winter and the months in which a sowing is new, counted from the sowing."""

_PRODUCT: Mapping[type[Entry], int] = MappingProxyType({Treatment: _STANDS_DAYS, Feeding: _STANDS_DAYS})
_ANY_AMOUNT: Mapping[type[Entry], int] = MappingProxyType({**_PRODUCT, Seeding: _STANDS_DAYS})
_SOWING: Mapping[type[Entry], int] = MappingProxyType({Seeding: _STANDS_DAYS})
_NEW_GRASS: Mapping[type[Entry], int] = MappingProxyType({Seeding: _STAND_OF_GRASS_DAYS})

WAKES: Mapping[str, Mapping[type[Entry], int]] = MappingProxyType(
    {
        "amount-missing": _ANY_AMOUNT,
        **dict.fromkeys(
            (
                "barrier-past", "bloom", "buffer", "feed-buffer", "feed-dose", "feed-heat", "feed-too-soon",
                "feed-wash", "feed-water-in", "group-repeat", "label-interval", "label-rate", "label-unknown",
                "label-year-amount", "label-year-count", "lime-dose", "lime-urea", "mow-near-treatment",
                "new-grass-treatment", "rate-off", "starter-wrong", "treat-cold", "treat-dormant",
                "treat-hot", "treat-still", "treat-windy", "wash-off", "water-in-missing",
            ),
            _PRODUCT,
        ),
        **dict.fromkeys(("seed-rate", "seed-unopened", "seed-wash"), _SOWING),
        **dict.fromkeys(
            (
                "mow-clippings", "mow-first-early", "mow-first-late", "not-emerged", "seedbed-dry", "seedbed-traffic",
                "seedling-feed", "starter-missing",
            ),
            _NEW_GRASS,
        ),
    }
)  # fmt: skip
