"""Rules that go together, in the order of the lawn's work: for lists that would be long without."""

from collections.abc import Iterable, Mapping
from types import MappingProxyType

from journal.facts.house_feeding import FEEDING
from journal.facts.house_label import LABEL
from journal.facts.house_mowing import MOWING
from journal.facts.house_people import PEOPLE
from journal.facts.house_seed import SEED
from journal.facts.house_soil import SOIL
from journal.facts.house_water import WATER
from journal.facts.house_weeds import WEEDS
from journal.facts.number import Number
from journal.rules.declare import Rule

THE_BOOK = "what the book holds"
_NUMBERS: Mapping[str, tuple[Number, ...]] = MappingProxyType(
    {
        "mowing": MOWING,
        "feeding": FEEDING,
        "soil, lime, stock and pictures": SOIL,
        "seed and seedbed": SEED,
        "water": WATER,
        "weeds, insects, disease": WEEDS,
        "labels and the weather for spraying": LABEL,
        "people, pets, bees and open water": PEOPLE,
        THE_BOOK: (),
    }
)
_BEGINNINGS: Mapping[str, str] = MappingProxyType(
    {
        "mow": "mowing",
        "feed": "feeding",
        "seed": "seed and seedbed",
        "water": "water",
        "label": "labels and the weather for spraying",
        "treat": "labels and the weather for spraying",
        "not-for-lawns": "labels and the weather for spraying",
        "exposure": "people, pets, bees and open water",
        "sign": "people, pets, bees and open water",
    }
)
"""Where a rule without a number belongs."""


def family(rule: Rule) -> str:
    """The family of its numbers; without any, that of its name; else what the book holds."""
    own = next((name for name, numbers in _NUMBERS.items() if any(one.rule == rule.id for one in numbers)), "")
    begun = (name for start, name in _BEGINNINGS.items() if f"{rule.id}-".startswith(f"{start}-"))
    return own or next(begun, THE_BOOK)


def families(rules: Iterable[Rule]) -> dict[str, list[Rule]]:
    """The families that have any of these rules, in order; rules by id."""
    found: dict[str, list[Rule]] = {name: [] for name in _NUMBERS}
    for rule in sorted(rules, key=lambda one: one.id):
        found[family(rule)].append(rule)
    return {name: some for name, some in found.items() if some}
