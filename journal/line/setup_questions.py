"""The guided set-up: five questions at most, each with a default that Enter takes."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date

from journal.line.name import new_name
from journal.line.settings import check_fact
from journal.record.clean import clean
from journal.record.kinds.setting import Setting
from journal.record.refusal import Refusal

Facts = tuple[tuple[str, str, str, str], ...]
"""(what, name, key, value); an empty key only names the thing."""


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


def _zones(answer: str) -> Facts:
    """`front 2400sqft, back 3100sqft`; the areas may be left out."""
    found: list[tuple[str, str, str, str]] = []
    for item in clean(answer).replace(";", ",").split(","):
        words = item.split()
        if not words:
            continue
        name = new_name(words[0])
        if any(name == known for _, known, _, _ in found):
            raise Refusal(words[0], "this zone is named twice.")
        area = " ".join(words[1:])
        if area:
            check_fact("zone", "area", area)
        found.append(("zone", name, "area" if area else "", area))
    if not found:
        raise Refusal(answer, "name at least one zone, like front 2400sqft.")
    return tuple(found)


def _frost(answer: str) -> Facts:
    """Two month-days, or `skip`."""
    words = clean(answer).replace(",", " ").replace(" to ", " ").split()
    if [word.casefold() for word in words] == ["skip"]:
        return ()
    if len(words) != 2:
        raise Refusal(answer, "two days are wanted, month and day: 05-06 10-05. Or skip.")
    for key, word in zip(("last_frost", "first_frost"), words, strict=True):
        check_fact("lawn", key, word)
    return (("lawn", "", "last_frost", words[0]), ("lawn", "", "first_frost", words[1]))


def questions(units: str) -> tuple[Question, ...]:
    """The questions, with `units` (us or metric) as the guess."""
    metric = units == "metric"
    zones = "front 220m2, back 290m2" if metric else "front 2400sqft, back 3100sqft"
    return (
        Question("name", "What do you call this lawn?", "Only a title.", "Home lawn", "North Lane", _lawn("name")),
        Question("units", "US or metric units?", "For showing; either may be typed.", units, units, _lawn("units")),
        Question("zones", "Which parts has it, and how large?", "Amounts are worked out from areas; they may wait.",
                 "front, back", zones, _zones),
        Question("frost", "Average last frost of spring and first of autumn, month-day?",
                 "They tell when the grass grows. `skip` leaves the reminders that need it silent.",
                 "skip", "05-06 10-05", _frost),
        Question("grass", "Which grasses? `unknown` is a fair answer.", "For heights of cut and how long seed takes.",
                 "unknown", "kentucky bluegrass, perennial ryegrass", _lawn("grass")),
    )  # fmt: skip


def settings_from_answers(answers: Mapping[str, str], today: date, units: str = "us") -> tuple[Setting, ...]:
    """The settings that the answers make; a question without an answer takes its default. Raises Refusal."""
    facts = [fact for q in questions(units) for fact in q.read(answers.get(q.key) or q.default)]
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
