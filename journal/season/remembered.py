"""Work that many rules and steps ask for of the same zone on the same day, done once."""

from collections.abc import Callable
from functools import wraps
from typing import TypeVar

from journal.season.history import Past

R = TypeVar("R")


def remembered(work: Callable[[Past], R]) -> Callable[[Past], R]:
    """`work`, whose answer is kept with the history for each zone and day: for what follows from the past alone."""

    @wraps(work)
    def once(past: Past) -> R:
        kept = past.memo
        found = kept.get(work, kept)
        if found is kept:
            found = kept[work] = work(past)
        answer: R = found
        return answer

    return once
