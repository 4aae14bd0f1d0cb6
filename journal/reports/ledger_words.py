"""What a ledger's limits, local rules and checks say, in the book's own units."""

from datetime import date

from journal.facts.citation import Known
from journal.facts.local_rules import Binds, LocalRules
from journal.line.words import neat
from journal.reckon.ledger import Limit
from journal.reckon.spread_check import SpreadCheck
from journal.record.day import MONTHS
from journal.record.quantity import show
from journal.record.unit import Dimension

_PLACES = {
    ("us", Dimension.AREA): 0, ("us", Dimension.LENGTH): 1, ("metric", Dimension.AREA): 0,
    ("metric", Dimension.LENGTH): 0, ("metric", Dimension.MASS_RATE): 1,
}  # fmt: skip


def amount(value: float, dimension: Dimension, units: str) -> str:
    """`0.72 lb/k`, `3.5 g/m2`, `12.3 in`: with the same decimals in every row of a table."""
    return show(value, dimension, units, places=_PLACES.get((units, dimension), 2))


def short_day(day: date, year: int) -> str:
    """`24 Apr`, with the year only where it is another."""
    words = f"{day.day} {MONTHS[day.month - 1].title()}"
    return words if day.year == year else f"{words} {day.year}"


def limit_says(limit: Limit, units: str) -> str:
    """Whose number it is."""
    most = f"at most {neat(limit.n_g_per_m2, Dimension.MASS_RATE, units)} of nitrogen in a calendar year"
    match limit.origin:
        case "yours":
            return f"{most}, by the local rule as you entered it"
        case "local rule":
            return f"{most}, by the local rule"
    grass = "grass that is not known" if limit.grass == "unknown" else limit.grass
    return f"{most}, for {grass}"


def local_says(rules: LocalRules, units: str) -> str:
    """What the set of local rules says of a year's nitrogen, and whom it speaks to."""
    if rules.year_n_g_per_m2 is None:
        if rules.id == "own":
            return "You entered no most for the year; that does not mean that there is none."
        told = [f"{one.value} ({one.basis.words()})" for one in rules.further if "year" in one.value.casefold()]
        if told:
            return f"{rules.place}: {'; '.join(told)}. No number of it is built in: look it up."
        return f"{rules.place}: nothing was seen of a most for the year; that does not mean that there is none."
    most = neat(rules.year_n_g_per_m2.value, Dimension.MASS_RATE, units)
    known = rules.year_n_g_per_m2.basis.words()
    if rules.year_n_g_per_m2.basis.kind is Known.LOCAL_RULE:
        place = "" if rules.id == "own" else f", in the place of what {rules.place} says"
        return f"Your own number: at most {most} of nitrogen in a year{place} ({known})."
    to_others = "" if rules.binds is Binds.OWNERS else f" It speaks to {rules.binds}."
    return f"{rules.place}: at most {most} of nitrogen in a year ({known}).{to_others}"


def check_says(check: SpreadCheck, units: str) -> str:
    """`4.1 lb/k went down, the label says 2.5 to 3.75: check the spreader.`"""
    dimension = check.range.dimension
    low, high = (neat(end, dimension, units).partition(" ")[0] for end in (check.range.low, check.range.high))
    wanted = low if low == high else f"{low} to {high}"
    went = f"{neat(check.rate, dimension, units)} went down"
    if not check.by_label:
        unit = neat(check.range.high, dimension, units).partition(" ")[2]
        return f"{went}; its nitrogen would make {wanted} {unit} likely: check the amount and the area."
    if check.light:
        return f"{went}, the label says {wanted}: light, as you wrote."
    machine = "spreader" if dimension is Dimension.MASS_RATE else "sprayer"
    return f"{went}, the label says {wanted}: check the {machine}."
