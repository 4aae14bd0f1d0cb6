"""Reckonings called as they are typed."""

from journal.reckon.answer import Answer
from journal.reckon.calls import reckonings

_BY_NAME = {one.name: one for one in reckonings()}


def answer(line: str) -> Answer:
    """`answer("lime --need 110lb/k --area 1000sqft")`, for those that need nothing but their options."""
    name, *words = line.split()
    found: Answer = _BY_NAME[name].read(words).answer()
    return found


def figures(line: str) -> dict[str, float]:
    """The figures that can be given, by key."""
    return {key: value for key, value in answer(line).as_json().items() if value is not None}


def notes(line: str) -> str:
    """All notes, one after another."""
    return " ".join(answer(line).notes)
