"""A set of local rules as rows for a page: what it is about, what it says, and how that is known."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import TypeVar

from journal.facts.citation import Basis, Known, local_rule
from journal.facts.local_rules import CHECK, Binds, Closed, LocalRules, Stated
from journal.record.day import MONTHS, MonthDay
from journal.record.quantity import in_unit, plain
from journal.record.unit import Dimension, unit_for

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class LocalRow:
    """One row of the table. `says` ends with how sure it is where it is not confirmed."""

    what: str
    says: str
    known: Basis


_UNSURE = {Known.MEMORY: "from memory", Known.JUDGMENT: "not confirmed"}


def rows(rules: LocalRules, units: str) -> tuple[LocalRow, ...]:
    """All that a set says, amounts in `us` or `metric` units: the law first, whom to ask last."""
    of_all = _of_all(rules)
    return (
        LocalRow("law", f"{rules.place}: {rules.reference}", of_all),
        LocalRow("binds", _binds(rules), of_all),
        *(_row(what, stated) for what, stated in _in_order(rules, units) if stated is not None),
        LocalRow("certainty", rules.certainty, of_all),
        LocalRow("check", _check(rules), of_all),
    )


def _of_all(rules: LocalRules) -> Basis:
    return Basis(Known.PUBLISHED, rules.citations) if rules.citations else local_rule("as you entered it")


def _binds(rules: LocalRules) -> str:
    return rules.binds if rules.binds is Binds.OWNERS else f"{rules.binds}: shown here, not held against a feeding"


_SHOWN = "Distance from water is watched on zones set up as near it; paving is shown here, not watched."


def _check(rules: LocalRules) -> str:
    if rules.read is None:
        return f"{_SHOWN} {CHECK}"
    read = f"{rules.read.day} {MONTHS[rules.read.month - 1].title()} {rules.read.year}"
    return f"A stored copy was read on {read} and may be out of date. {_SHOWN} {CHECK}"


def _row(what: str, stated: Stated[str]) -> LocalRow:
    unsure = _UNSURE.get(stated.basis.kind)
    return LocalRow(what, f"{stated.value} ({unsure})" if unsure else stated.value, stated.basis)


def _in_order(rules: LocalRules, units: str) -> Iterator[tuple[str, Stated[str] | None]]:
    for span in rules.closed:
        yield "closed", Stated(_closed(span.value, units), span.basis)
    yield "ground", rules.ground
    yield "nitrogen at once", _rate(rules.most_n_g_per_m2, units)
    yield "soluble at once", _rate(rules.most_soluble_n_g_per_m2, units)
    yield "nitrogen a year", _rate(rules.year_n_g_per_m2, units)
    yield "slow release", _slow(rules)
    yield "phosphorus", rules.phosphorus
    yield "P2O5", _worded(rules.phosphate_percent, lambda most: f"a phosphorus fertilizer has more than {most:g} %")
    yield "soil test", _worded(rules.soil_test_months, lambda months: f"counts for {months} months")
    yield "sowing", _worded(rules.sowing, str)
    yield "sign", _worded(rules.sign_hours, lambda hours: f"stands for {hours:g} h after a treatment")
    yield "from water", _distance(rules.buffer_mm, units)
    yield "careful spread", _distance(rules.buffer_careful_mm, units, _CAREFUL)
    yield "water", rules.water
    yield "paving", rules.paving
    for one in rules.further:
        yield "further", one


_CAREFUL = " with a drop spreader, a deflector or a targeted spray"


def _closed(span: Closed, units: str) -> str:
    above = f" above {_amount(span.above_n_g_per_m2, Dimension.MASS_RATE, units)}" if span.above_n_g_per_m2 else ""
    return f"{_day(span.first)} to {_day(span.last)}, both days closed to {span.closes}{above}"


def _day(day: MonthDay) -> str:
    return f"{day.day} {MONTHS[day.month - 1].title()}"


def _amount(value: float, dimension: Dimension, units: str) -> str:
    """`0.9 lb/k` or `4.39 g/m2`; distances in feet or metres."""
    if dimension is Dimension.LENGTH:
        return f"{plain(value / 304.8, 3)} ft" if units == "us" else f"{plain(value / 1000, 2)} m"
    unit = unit_for(dimension, units)
    return f"{plain(in_unit(value, unit), 3)} {unit.name}"


def _worded(stated: Stated[T] | None, words: Callable[[T], str]) -> Stated[str] | None:
    return None if stated is None else Stated(words(stated.value), stated.basis)


def _rate(stated: Stated[float] | None, units: str) -> Stated[str] | None:
    return _worded(stated, lambda value: f"at most {_amount(value, Dimension.MASS_RATE, units)}")


def _distance(stated: Stated[float] | None, units: str, how: str = "") -> Stated[str] | None:
    return _worded(
        stated,
        lambda value: f"{'at least ' + _amount(value, Dimension.LENGTH, units) if value else 'no distance'}{how}",
    )


def _slow(rules: LocalRules) -> Stated[str] | None:
    of = " of granules" if rules.slow_in_granules_only else ""
    return _worded(rules.least_slow_share, lambda share: f"at least {100 * share:.3g} % of the nitrogen{of}")
