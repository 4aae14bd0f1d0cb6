"""Which verb the first word means. The pins are data; the rule never guesses."""

from dataclasses import dataclass

import journal.record.kinds  # noqa: F401  the kinds declare their verbs
from journal.record.entry import VERBS, pins

PINS: dict[str, str] = pins()


OTHER_WORDS: dict[str, str] = {
    "cut": "mow", "mowed": "mow", "irrigate": "water", "sprinkle": "water", "fertilize": "feed", "fertilise": "feed",
    "fertilized": "feed", "lime": "feed", "fed": "feed", "spray": "treat", "sprayed": "treat", "weed": "treat",
    "overseed": "seed", "reseed": "seed", "sow": "seed", "sowed": "seed", "plan": "intend", "picture": "photo",
    "saw": "see", "seen": "see", "bought": "buy", "remark": "note", "core": "aerate", "scarify": "dethatch",
    "measure": "height", "hide": "snooze", "change": "set", "add": "product", "test": "soil",
}  # fmt: skip
"""What people say for a verb. Only suggested, never taken."""


@dataclass(frozen=True, slots=True)
class VerbFound:
    """The verb, or the verbs it could still become; `full` when it was typed out."""

    name: str
    options: tuple[str, ...] = ()
    full: bool = False


def find_verb(word: str) -> VerbFound:
    """A verb typed in full, else a pinned letter, else the only verb that begins so."""
    word = word.casefold()
    if word in VERBS:
        return VerbFound(word, full=True)
    if word in PINS:
        return VerbFound(PINS[word])
    options = tuple(sorted(verb for verb in VERBS if verb.startswith(word)))
    return VerbFound(options[0], options) if len(options) == 1 else VerbFound("", options)


def shortest(verb: str) -> str:
    """The fewest letters that mean this verb."""
    for pin, name in PINS.items():
        if name == verb:
            return pin
    for length in range(1, len(verb)):
        found = find_verb(verb[:length])
        if found.name == verb:
            return verb[:length]
    return verb


def prefix_table() -> dict[str, str]:
    """Every prefix of every verb -> the verb it means, or the verbs it can't choose between joined by `|`."""
    table = {}
    for verb in VERBS:
        for length in range(1, len(verb) + 1):
            found = find_verb(verb[:length])
            table[verb[:length]] = found.name or "|".join(found.options)
    return dict(sorted(table.items()))
