"""What the two rules on a label's year share: how long they stand, when they turn, and what they start from."""

from journal.reckon.label_uses import PARTS_DAYS, Round, rounds
from journal.reckon.label_year import YEAR_DAYS, counts
from journal.reckon.protection import PROTECTED
from journal.record.day import MonthDay
from journal.rules.turns import Turn, after, at, each_year
from journal.season.history import Past

STANDS_DAYS = 60
TURNS: tuple[Turn, ...] = (
    *(after(kind, STANDS_DAYS - 1, YEAR_DAYS - 1) for kind in PROTECTED),
    at(each_year(MonthDay(1, 1))),
)


def lately(past: Past) -> list[Round]:
    """Applications that count in a year, with anything of them in the days that such a flag stands."""
    first = past.day - STANDS_DAYS + 1
    return [one for one in rounds(past, first - PARTS_DAYS) if one.last_day >= first and counts(one)]
