"""PLACE: where the lawn lies, when it grows, and how the book goes about it."""

from collections.abc import Callable, Mapping
from dataclasses import replace
from datetime import date, timedelta
from typing import Any

from journal.facts.growth import DAYS_AFTER_FIRST_FROST, DAYS_BEFORE_LAST_FROST, GROWTH_BASIS
from journal.line.words import neat
from journal.record.day import MonthDay
from journal.record.fold import LAWN_TERMS
from journal.record.kinds.setting import Setting
from journal.record.lawn import Lawn
from journal.record.month_normal import MonthNormal
from journal.record.unit import Dimension
from journal.screens.ground.authority import Key, set_line, start_line
from journal.screens.ground.fact import Fact, Stand, briefly, dated, draw_fact, known_by, month_day, said_on
from journal.screens.ground.words import COSTS, USES, example
from journal.screens.paper import Paper
from journal.season.growth import season
from journal.standing import Standing

ELSEWHERE = "local_"
"""Facts whose key begins so stand with the local rules."""

_NAMES = {
    "growth": "growing season", "height": "height of cut", "late_fall": "late feeding", "normals": "monthly normals",
}  # fmt: skip
_FEEDING = {"interval": "weeks since the last one", "months": "in the months that suit the grass"}


def draw_place(
    paper: Paper, standing: Standing, authors: Mapping[Key, Setting], today: date, told: Mapping[str, Fact]
) -> None:
    """A row a fact, in the order in which they are declared; what the weather tells of one stands beneath it."""
    for at, key in enumerate(key for key in LAWN_TERMS if not key.startswith(ELSEWHERE)):
        fact = replace(_fact(key, standing, authors, today), start=start_line("lawn", "", key))
        draw_fact(paper, fact, main=at == 0)
        if key in told:
            draw_fact(paper, told[key])


def _fact(key: str, standing: Standing, authors: Mapping[Key, Setting], today: date) -> Fact:
    lawn = standing.lawn
    said = lawn.said.get(("lawn", "", key))
    setting = authors.get(("lawn", "", key))
    field, term = LAWN_TERMS[key]
    value = getattr(lawn, field)
    if said is not None:
        since = setting.since if setting else None
        known = known_by(setting, today)
        return Fact(
            name=_name(key), value=_words(key, value, lawn), stand=Stand.YOURS, known=known,
            shown=briefly(known, setting, standing.history.set_up),
            line=set_line("lawn", "", key, said, since), use=USES.get(key, ""), more=said_on(setting, today),
        )  # fmt: skip
    line = set_line("lawn", "", key, _offered(key, standing, today) or term.example)
    return _UNSAID.get(key, _by_default)(key, value, standing, line)


def _name(key: str) -> str:
    return _NAMES.get(key, key.replace("_", " "))


def _words(key: str, value: Any, lawn: Lawn) -> str:
    """The value as it is read, never as it was typed."""
    match value:
        case None | () | "":
            return ""
        case MonthDay():
            return month_day(value)
        case (MonthDay() as first, MonthDay() as last):
            return f"{month_day(first)} to {month_day(last)}"
        case date():
            return f"{dated(value, date.min)}"
        case bool():
            return "yes" if value else "no"
        case (MonthNormal(), *_):
            return f"of {len(value)} month{'s' * (len(value) > 1)}"
        case tuple():
            return ", ".join(str(one) for one in value)
    if key == "height":
        return neat(value, Dimension.LENGTH, lawn.units)
    if key == "feeding":
        return f"{value}: {_FEEDING[value]}"
    if key == "latitude":
        return f"{abs(value):g} {'south' if value < 0 else 'north'}"
    return str(value)


def _offered(key: str, standing: Standing, today: date) -> str:
    """An example that can be saved as it stands."""
    if key == "renovated":
        month = 3 if standing.lawn.latitude is not None and standing.lawn.latitude < 0 else 9
        return date(min(standing.as_of, today).year - 1, month, 6).isoformat()
    if key == "treatments_since":
        return (min(standing.as_of, today) - timedelta(365)).isoformat()
    if key == "kept_since":
        return (standing.history.kept_since or min(standing.as_of, today)).isoformat()
    return example(key, standing.lawn)


def _by_default(key: str, value: Any, standing: Standing, line: str) -> Fact:
    words = _words(key, value, standing.lawn)
    stand = Stand.DEFAULT if words else Stand.MISSING
    return Fact(
        name=_name(key), value=words, stand=stand, known=stand.value, line=line, use=USES.get(key, ""),
        costs="" if words else COSTS.get(key, ""),
    )  # fmt: skip


def _grown(key: str, _: Any, standing: Standing, line: str) -> Fact:
    """The season that the frosts make, with how it was made."""
    window = season(standing.lawn, standing.as_of)
    if window is None:
        return _by_default(key, None, standing, line)
    first, last = (MonthDay(day.month, min(day.day, 28) if day.month == 2 else day.day) for day in window)
    how = f"{DAYS_BEFORE_LAST_FROST} days before the last frost to {DAYS_AFTER_FIRST_FROST} after the first"
    return Fact(
        name=_name(key), value=_words(key, (first, last), standing.lawn), stand=Stand.WORKED,
        known="worked out: frosts", line=set_line("lawn", "", key, f"{first} {last}"), use=USES[key],
        more=(("how", how), ("basis", GROWTH_BASIS.words())),
    )  # fmt: skip


def _kept(key: str, _: Any, standing: Standing, line: str) -> Fact:
    history = standing.history
    since = history.kept_since
    if since is None:
        return _by_default(key, None, standing, line)
    known = "worked out: set-up" if history.set_up else "worked out: oldest"
    how = "the day of set-up" if history.set_up else "the day of the oldest entry"
    return Fact(
        name=_name(key), value=_words(key, since, standing.lawn), stand=Stand.WORKED, known=known, line=line,
        use=USES[key], more=(("how", how),),
    )  # fmt: skip


def _half_known(key: str, value: Any, standing: Standing, line: str) -> Fact:
    """A frost that is not said costs nothing where the season itself was said."""
    fact = _by_default(key, value, standing, line)
    if standing.lawn.growth is None:
        return fact
    return Fact(name=fact.name, value="", stand=fact.stand, known=fact.known, line=line, use=fact.use)


_UNSAID: Mapping[str, Callable[[str, Any, Standing, str], Fact]] = {
    "growth": _grown, "kept_since": _kept, "last_frost": _half_known, "first_frost": _half_known,
}  # fmt: skip
