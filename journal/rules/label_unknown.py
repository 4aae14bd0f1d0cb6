"""Products of which the label was not entered."""

from datetime import timedelta

from journal.facts.actives import seed_wait
from journal.facts.house import number
from journal.facts.safety import BASIS as LABEL_LAW
from journal.facts.sources import judgment
from journal.reckon.label_uses import COUNTS, REPEATS, Round, default_count, default_repeat, rounds
from journal.reckon.new_grass import wait_for
from journal.reckon.protection import PROTECTED
from journal.record.product import Product
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import DEFAULT, YOURS, Numbers
from journal.rules.turns import after
from journal.rules.words import days, on
from journal.season.history import Past
from journal.season.stand import grass_mix

STANDS_DAYS = 60


@rule(
    "label-unknown",
    levels=(Level.NOTE,),
    watches=PROTECTED,
    turns=[after(kind, STANDS_DAYS - 1) for kind in PROTECTED],
    basis=(LABEL_LAW, judgment("slow defaults by kind stand in for a blank label")),
)
def label_unknown(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """A product was used whose label numbers are blank: which stand in for them."""
    by_product: dict[str, list[Round]] = {}
    for one in rounds(past, past.day - STANDS_DAYS + 1):
        by_product.setdefault(one.name, []).append(one)
    return tuple(f for held in by_product.values() if (f := _finding(past, held, n)) is not None)


def _finding(past: Past, held: list[Round], n: Numbers) -> Finding | None:
    newest = held[-1]
    product = past.lawn.product(newest.name) or newest.product
    blank = _blank(past, product, newest.kind)
    if not blank:
        return None
    _tell(past, product, newest.kind, n)
    clears_on = past.date.fromordinal(newest.last_day) + timedelta(STANDS_DAYS)
    all_of_it = len(blank) == len(_blank(past, Product(name=product.name, kind=product.kind), newest.kind))
    return Finding(
        level=Level.NOTE,
        subject=product.name,
        headline=f"{'the label' if all_of_it else 'part of the label'} of {product.name} is not entered",
        why=f"used {on(newest.last_day, past)}; until it is entered these hold: {', '.join(blank.values())}",
        do=_copy(product.name, tuple(blank)),
        clears=f"the label is entered, or {STANDS_DAYS} days: {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=tuple(entry.id for one in held for entry in one.entries),
    )


def _blank(past: Past, product: Product, kind: str) -> dict[str, str]:
    """Key of the label -> what stands in for it, for the numbers that every label prints and that are blank."""
    label, found = product.label, {}
    wait = seed_wait([one.name for one in product.actives], kind, grass_mix(past.lawn, past.zone)).days
    if label.to_seed_days is None and wait:
        found["to_seed"] = f"seed waits {days(wait)}"
    grass = wait_for(product)
    if label.after_seed is None and (grass.never or grass.days or grass.mowings):
        found["after_seed"] = _grass(never=grass.never, age=grass.days, mowings=grass.mowings)
    if label.repeat_days is None:
        found["repeat"] = f"{days(default_repeat(past.lawn, kind))} between uses"
    if label.max_per_year is None:
        times = default_count(past.lawn, kind)
        found["max_per_year"] = f"{times} use{'' if times == 1 else 's'} a year"
    return found


def _copy(name: str, keys: tuple[str, ...]) -> str:
    rest = f"; likewise {', '.join(keys[1:])}" if keys[1:] else ""
    return f"copy it from the label: set {name} {keys[0]} ...{rest}"


def _grass(*, never: bool, age: int, mowings: int) -> str:
    if never:
        return "never over turf"
    parts = [f"{days(age)} from emergence" if age else "", f"{mowings} mowings" if mowings else ""]
    return f"new grass waits {' and '.join(part for part in parts if part)}"


def _tell(past: Past, product: Product, kind: str, n: Numbers) -> None:
    """The house numbers among them."""
    for blank, of_rule, name in (
        (product.label.repeat_days, "label-interval", REPEATS[kind]),
        (product.label.max_per_year, "label-year-count", COUNTS[kind]),
    ):
        if blank is None:
            house = number(of_rule, name)
            own = past.lawn.numbers.get((of_rule, name))
            n.tell(
                f"{of_rule} {name}", house.default if own is None else own, house.unit,
                DEFAULT if own is None else YOURS, house.basis,
            )  # fmt: skip
