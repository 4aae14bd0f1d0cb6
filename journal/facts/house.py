"""The house numbers: thresholds that an owner can change, each with unit, range, default and basis.

Units are those everything is kept in: d, mm, g/m2, C, %, x (times). A label number or a local rule beats them.
"""

from journal.facts.house_feeding import FEEDING
from journal.facts.house_label import LABEL
from journal.facts.house_mowing import MOWING
from journal.facts.house_people import PEOPLE
from journal.facts.house_seed import SEED
from journal.facts.house_soil import SOIL
from journal.facts.house_water import WATER
from journal.facts.house_weeds import WEEDS
from journal.facts.number import Number

NUMBERS: tuple[Number, ...] = (*FEEDING, *SOIL, *MOWING, *SEED, *WATER, *LABEL, *PEOPLE, *WEEDS)

SLOW_BANDS: tuple[tuple[float, str], ...] = ((80.0, "-80"), (50.0, "-50"), (15.0, "-15"), (0.0, ""))


_BY_RULE: dict[str, dict[str, Number]] = {}
for _one in NUMBERS:
    _BY_RULE.setdefault(_one.rule, {})[_one.name] = _one


def numbers(rule: str) -> tuple[Number, ...]:
    """The house numbers of a rule, in reading order; none for a rule that has none."""
    return tuple(_BY_RULE.get(rule, {}).values())


def number(rule: str, name: str) -> Number:
    """One house number. Raises LookupError naming those that the rule has."""
    found = _BY_RULE.get(rule, {}).get(name)
    if found is None:
        known = ", ".join(_BY_RULE.get(rule, {})) or "none"
        raise LookupError(f"{rule} has no number {name}; it has {known}.")
    return found


def by_slow_share(rule: str, name: str, slow_percent: float) -> Number:
    """The number for a slow-release share of the nitrogen, 0 to 100 %: the bands begin at 0, 15, 50 and 80 %."""
    share = round(slow_percent, 6)
    tail = next((tail for least, tail in SLOW_BANDS if share >= least), "")
    return number(rule, name + tail)
