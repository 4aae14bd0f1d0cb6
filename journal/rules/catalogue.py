"""Every rule there is. A file beside this one that declares rules is found by its being here."""

import importlib
import pkgutil
from typing import Any

import journal.rules as _rules
from journal.facts.number import Number
from journal.record.lawn import Lawn
from journal.rules.declare import RULES, Rule
from journal.rules.numbers import DEFAULT, YOURS, in_words

for _module in pkgutil.iter_modules(_rules.__path__):
    importlib.import_module(f"{_rules.__name__}.{_module.name}")


def rules() -> tuple[Rule, ...]:
    """Every rule, by id."""
    return tuple(RULES[id] for id in sorted(RULES))


def listing(lawn: Lawn) -> tuple[dict[str, Any], ...]:
    """Every rule as JSON wants it: id, says, levels, off, numbers with range and basis, basis in words."""
    return tuple(
        {
            "id": rule.id,
            "says": rule.says,
            "levels": [level.value for level in sorted(rule.levels, key=lambda level: -level.gravity)],
            "can_be_off": rule.can_be_off,
            "off": rule.id in lawn.off,
            "numbers": [_number(one, lawn) for one in rule.numbers],
            "basis": [basis.as_json() for basis in rule.basis],
        }
        for rule in rules()
    )


def _number(one: Number, lawn: Lawn) -> dict[str, Any]:
    own = lawn.numbers.get((one.rule, one.name))
    return {
        "name": one.name,
        "says": one.words,
        "unit": one.unit,
        "default": one.default,
        "low": one.low,
        "high": one.high,
        "value": one.default if own is None else own,
        "words": in_words(one.default if own is None else own, one.unit, lawn.units),
        "default_words": in_words(one.default, one.unit, lawn.units),
        "range_words": f"{in_words(one.low, one.unit, lawn.units)} to {in_words(one.high, one.unit, lawn.units)}",
        "origin": DEFAULT if own is None else YOURS,
        "basis": one.basis.as_json(),
    }
