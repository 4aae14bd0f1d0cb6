"""What is refused when a fact is typed though a book may hold it: what is already on disk is read as it always was.

The bounds are judgment: beyond them a slip of the finger is likelier than such a lawn.
"""

import re
from collections.abc import Callable
from types import MappingProxyType

from journal.facts.local_rules_sets import meant, named
from journal.record.quantity import parse_as
from journal.record.refusal import Refusal
from journal.record.unit import Dimension

_BARE = re.compile(r"\s*0?[.,][0-9]+\s*(of\s+n\s*)?", re.IGNORECASE)


def check_bounds(what: str, key: str, text: str) -> None:
    """Raises Refusal for a value that can be read and can't have been meant."""
    check = _CHECKS.get((what, key))
    if check is not None:
        check(text)


def not_a_fraction(text: str) -> None:
    """Raises Refusal for a bare number below 1 where a percentage is asked: `0.2` may be 20 % or 0.2 %."""
    if not _BARE.fullmatch(text):
        return
    value = float(re.sub(r"[^0-9.]", "", text.replace(",", ".")))
    if value:
        raise Refusal(text, f"is that {100 * value:g} % or {value:g} %? Write {100 * value:g}% or {value:g}%.")


def _within(low: str, high: str, dimension: Dimension) -> Callable[[str], None]:
    least, most = (parse_as(end, dimension).value for end in (low, high))

    def check(text: str) -> None:
        if not least <= parse_as(text, dimension).value <= most:
            raise Refusal(text, f"can't be meant here: {low} to {high} is possible.")

    return check


def _months(text: str) -> None:
    if not re.fullmatch(r"\s*[0-9]+(\.0*)?\s*", text):
        raise Refusal(text, "whole months are wanted, like 36.")


def _local_rules(text: str) -> None:
    if text.casefold() == "none" or named(text) is not None:
        return
    if text.casefold() in ("off", "no"):
        raise Refusal(text, "no set of local rules is called so.", "none")
    near = meant(text)
    if near:
        raise Refusal(text, "no set of local rules is called so.", near)


_AT_ONCE = _within("0.05lb/k", "20lb/k", Dimension.MASS_RATE)

_CHECKS = MappingProxyType[tuple[str, str], Callable[[str], None]](
    {
        ("lawn", "local_rules"): _local_rules,
        ("lawn", "local_most_n"): _AT_ONCE,
        ("lawn", "local_most_soluble"): _AT_ONCE,
        ("lawn", "local_year_n"): _AT_ONCE,
        ("lawn", "local_slow"): not_a_fraction,
        ("lawn", "local_buffer"): _within("0ft", "1000ft", Dimension.LENGTH),
        ("lawn", "local_test_months"): _months,
        ("zone", "area"): _within("1sqft", "100acre", Dimension.AREA),
    }
)
