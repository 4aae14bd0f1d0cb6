"""The house number in force: the owner's own where one was set, else the default."""

from journal.facts.house import NUMBERS, by_slow_share, number
from journal.record.lawn import Lawn

_DEFAULTS = {(one.rule, one.name): one.default for one in NUMBERS}


def in_force(lawn: Lawn, rule: str, name: str) -> float:
    """The number in its base unit (d, mm, g/m2, C, %). Raises LookupError for one that does not exist."""
    own = lawn.numbers.get((rule, name))
    if own is not None:
        return own
    default = _DEFAULTS.get((rule, name))
    return number(rule, name).default if default is None else default


def in_force_by_slow_share(lawn: Lawn, rule: str, name: str, slow: float | None) -> float:
    """The number for a slow-release share of the nitrogen (0 to 1); not said counts as none."""
    return in_force(lawn, rule, by_slow_share(rule, name, 100 * (slow or 0.0)).name)
