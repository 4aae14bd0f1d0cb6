"""The sets of local rules that are built in, by their names, and the one that was probably meant."""

import re
from collections.abc import Mapping
from functools import cache
from types import MappingProxyType

from journal.facts.local_rules import LocalRules
from journal.record.refusal import nearest

STATES = "us-"
"""What the id of every set begins with."""


@cache
def sets() -> Mapping[str, LocalRules]:
    """By id, like us-ma. They are loaded when first asked for: most lawns are under none."""
    from journal.facts import (
        local_rules_atlantic,
        local_rules_florida,
        local_rules_inland,
        local_rules_new_england,
    )

    regions = (local_rules_new_england, local_rules_atlantic, local_rules_inland, local_rules_florida)
    return MappingProxyType({one.id: one for region in regions for one in region.SETS})


def named(name: str) -> LocalRules | None:
    """The set of that name, in whatever case; None where none is built in."""
    return sets().get(_plain(name))


def meant(name: str) -> str:
    """The id of the set that a name comes close to, by its id or its place; '' where none does.

    Two letters of a state are a state of its own, however close to another's.
    """
    word = _plain(name)
    places = {_plain(rules.place): key for key, rules in sets().items()}
    for sure in (places.get(word, ""), f"{STATES}{word}"):
        if sure in sets():
            return sure
    if re.fullmatch(rf"{STATES}[a-z]{{2}}", word):
        return ""
    near = nearest(word, [*sets(), *places])
    return places.get(near, near)


def _plain(name: str) -> str:
    return "-".join(name.casefold().replace("_", " ").replace("-", " ").split())
