"""The guided set-up: six questions at most, each with a default that Enter takes."""

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date, timedelta

from journal.line.name import new_name
from journal.line.settings import check_fact
from journal.line.token import words
from journal.line.when import Reckoning, When, find_date
from journal.record.clean import clean
from journal.record.entry import Entry
from journal.record.kinds.setting import Setting
from journal.record.kinds.treatment import UNKNOWN, Treatment
from journal.record.refusal import Refusal

Facts = tuple[tuple[str, str, str, str], ...]
"""(what, name, key, value); an empty key only names the thing."""

_NO_IDEA = (
    "",
    "?",
    "unknown",
    "no idea",
    "i have no idea",
    "i don't know",
    "don't know",
    "dont know",
    "not sure",
    "none",
)
_ANY_DAY = date(2026, 12, 31)
"""Frost days have no year: any day at a year's end reads them all as of that year."""


@dataclass(frozen=True, slots=True)
class Question:
    """What is asked, what Enter alone answers, an example, and how the answer is read (raises Refusal)."""

    key: str
    ask: str
    why: str
    default: str
    example: str
    read: Callable[[str], Facts]


def _lawn(key: str) -> Callable[[str], Facts]:
    def read(answer: str) -> Facts:
        text = clean(answer)
        check_fact("lawn", key, text)
        return (("lawn", "", key, text),)

    return read


def _zones(units: str) -> Callable[[str], Facts]:
    """`front 2400sqft, back 3100`: a bare number is in the book's own unit, and the areas may be left out."""
    return lambda answer: _zones_in(answer, "m2" if units == "metric" else "sqft")


def _zones_in(answer: str, unit: str) -> Facts:
    found: list[tuple[str, str, str, str]] = []
    for item in clean(answer).replace(";", ",").split(","):
        parts = item.split()
        if not parts:
            continue
        name = new_name(parts[0])
        if any(name == known for _, known, _, _ in found):
            raise Refusal(parts[0], "this zone is named twice.")
        area = " ".join(parts[1:])
        if re.fullmatch(r"[\d.]+", area):
            area += unit
        if area:
            check_fact("zone", "area", area)
        found.append(("zone", name, "area" if area else "", area))
    if not found:
        raise Refusal(answer, "name at least one zone, like front 2400sqft.")
    return tuple(found)


def _frost(answer: str) -> Facts:
    """Two month-days, or `skip`."""
    text = clean(answer).replace(",", " ").replace(" to ", " ")
    if text.casefold() in ("skip", *_NO_IDEA):
        return ()
    days = _month_days(text)
    if len(days) != 2:
        raise Refusal(answer, "two days are wanted, like 05-06 10-05 or May 6, Oct 5. Or skip.")
    for key, word in zip(("last_frost", "first_frost"), days, strict=True):
        check_fact("lawn", key, word)
    return (("lawn", "", "last_frost", days[0]), ("lawn", "", "first_frost", days[1]))


def _month_days(text: str) -> list[str]:
    """Days of the year as 05-06, from whatever way of writing a date the line takes."""
    tokens, found, at = words(text), list[str](), 0
    while at < len(tokens):
        if re.fullmatch(r"\d{1,2}-\d{1,2}", tokens[at].text):
            found.append(tokens[at].text)
            at += 1
            continue
        day = find_date(tokens, at, Reckoning(_ANY_DAY, True))
        if day is None:
            raise Refusal(tokens[at].text, "not a day of the year: write it like 05-06 or May 6.")
        found.append(f"{day.date:%m-%d}")
        at += day.used
    return found


def _grass(answer: str) -> Facts:
    text = clean(answer)
    return _lawn("grass")("unknown" if text.casefold().strip(" .!?") in _NO_IDEA else text)


_NOTHING = ("no", "none", "nothing", "never", "nope", "n")
_ASKED_DAYS = 365
"""The last question asks about a year."""


def _treated(units: str) -> Callable[[str], Facts]:
    """Only looks whether it can be read; what it makes hangs on the day."""

    def read(answer: str) -> Facts:
        _treated_when(answer, _ANY_DAY, units)
        return ()

    return read


def _treated_when(answer: str, today: date, units: str) -> When | None:
    """The day of a treatment; None for a no, and for an answer that leaves it open. Raises Refusal."""
    text = clean(answer).strip(" .!?")
    if text.casefold() in (*_NOTHING, "skip", *_NO_IDEA):
        return None
    tokens = words(text)
    found = find_date(tokens, 0, Reckoning(today, units != "metric")) if tokens else None
    if found is None or found.used != len(tokens):
        word = tokens[found.used if found else 0].text if tokens else answer
        raise Refusal(word, "a no, a day like in april or 2026-04-15, or skip.")
    if found.date > today:
        raise Refusal(text, "that day is still to come.")
    return found


def _known_since(answer: str, today: date, units: str) -> Facts:
    """From which day on all treatments are written down, where the last question was answered."""
    text = clean(answer).strip(" .!?").casefold()
    if text not in _NOTHING and _treated_when(answer, today, units) is None:
        return ()
    return (("lawn", "", "treatments_since", f"{today - timedelta(_ASKED_DAYS)}"),)


def questions(units: str) -> tuple[Question, ...]:
    """The questions, with `units` (us or metric) as the guess."""
    metric = units == "metric"
    zones = "front 220m2, back 290m2" if metric else "front 2400sqft, back 3100sqft"
    return (
        Question("name", "What do you call this lawn?", "Only a title.", "Home lawn", "North Lane", _lawn("name")),
        Question("units", "US or metric units?", "For showing; either may be typed.", units, units, _lawn("units")),
        Question("zones", "Which parts has it, and how large?", "Amounts are worked out from areas; they may wait.",
                 "front, back", zones, _zones(units)),
        Question("frost", "Average last frost of spring and first of autumn, month-day?",
                 "They tell when the grass grows. `skip` leaves the reminders that need it silent.",
                 "skip", "05-06 10-05", _frost),
        Question("grass", "Which grasses? `unknown` is a fair answer.", "For heights of cut and how long seed takes.",
                 "unknown", "kentucky bluegrass, perennial ryegrass", _grass),
        Question("treated", "Anything put down for weeds or insects in the last 12 months, and about when?",
                 "Seed waits for what lies in the soil. `no`, a day or a month, or `skip`.",
                 "skip", "in april", _treated(units)),
    )  # fmt: skip


def entries_from_answers(answers: Mapping[str, str], today: date, units: str = "us") -> tuple[Entry, ...]:
    """The settings that the answers make, and the treatment of an unknown product that the last one tells of."""
    settings = settings_from_answers(answers, today, units)
    told = _treated_when(answers.get("treated") or "skip", today, answers.get("units") or units)
    if told is None:
        return settings
    zones = tuple(setting.name for setting in settings if setting.what == "zone")
    return (*settings, Treatment(date=told.date, about=True, zones=zones, product=UNKNOWN))


def settings_from_answers(answers: Mapping[str, str], today: date, units: str = "us") -> tuple[Setting, ...]:
    """The settings that the answers make; a question without an answer takes its default. Raises Refusal."""
    units = answers.get("units") or units
    facts = [fact for q in questions(units) for fact in q.read(answers.get(q.key) or q.default)]
    facts += _known_since(answers.get("treated") or "skip", today, units)
    order = dict.fromkeys((what, name) for what, name, _, _ in facts)
    return tuple(
        Setting(
            date=today,
            what=what,
            name=name,
            values=tuple((key, value) for w, n, key, value in facts if (w, n) == (what, name) and key),
        )
        for what, name in order
    )
