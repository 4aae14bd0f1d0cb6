"""Longer phrases for a date. The calendar library is loaded only when one is typed."""

import re
from datetime import date

_AGO = re.compile(r"(\d{1,3}|a|an) (day|week|month|year)s? ago$")
_LAST = re.compile(r"last (mon|tues|wednes|thurs|fri|satur|sun)day$")
_NUMBER = {"mon": 0, "tues": 1, "wednes": 2, "thurs": 3, "fri": 4, "satur": 5, "sun": 6}


def read_phrase(words: str, today: date) -> date | None:
    """`2 months ago`, `a week ago`, `last friday` (before today); None for anything else."""
    ago, last = _AGO.fullmatch(words), _LAST.fullmatch(words)
    if ago is None and last is None:
        return None
    import pendulum

    day = pendulum.date(today.year, today.month, today.day)
    if ago is None:
        assert last is not None
        then = day.previous(pendulum.WeekDay(_NUMBER[last[1]]))
    else:
        count = 1 if ago[1] in ("a", "an") else int(ago[1])
        then = day.subtract(**{f"{ago[2]}s": count})
    return date(then.year, then.month, then.day)
