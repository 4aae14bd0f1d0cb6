"""Products that are not meant for a home lawn."""

import re
from collections.abc import Iterator
from functools import lru_cache

from journal.facts.actives import active, is_active
from journal.facts.citation import label
from journal.facts.safety import BASIS as LABEL_LAW
from journal.facts.sources import published
from journal.reckon.dose import doses
from journal.reckon.protection import PROTECTED, is_protective
from journal.record.entry import Entry
from journal.record.product import Product
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after
from journal.rules.words import on
from journal.season.history import Past

NEWEST = 3
"""So many uses are named."""

_HOME = ("residential", "home", "lawn", "yard")
_TURF = ("turf", "grass")
_ELSEWHERE = ("golf", "sod", "sport", "athletic", "commercial", "farm", "agricult", "pasture", "industrial")
_NOT = re.compile(r"\b(?:not|no|never|except|excluding|other than|non)\b[^,;.]*?(?:residential|home|lawn|yard)")
_RESTRICTED = re.compile(r"\brestricted\b")


@rule(
    "not-for-lawns",
    levels=(Level.HARM, Level.NOTE),
    watches=PROTECTED,
    turns=[after(kind) for kind in PROTECTED],
    basis=(label("where it may be used, and by whom"), LABEL_LAW, published("label-82514")),
)
def not_for_lawns(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """A product was used that is for professionals only, restricted, or not for a home lawn."""
    return tuple(finding for product in past.lawn.products for finding in _of(past, product))


def _of(past: Past, product: Product) -> Iterator[Finding]:
    found = why_not(product)
    if found is None:
        return
    level, why, by_service_too = found
    used = _uses(past, product.name)
    if not by_service_too:
        used = [entry for entry in used if not entry.by_service]
    if used:
        newest = used[-NEWEST:]
        yield Finding(
            level=level,
            subject=product.name,
            headline=f"{product.name} {'is not for this lawn' if level is Level.HARM else 'may not be for a lawn'}",
            why=f"{why}; used {', '.join(on(entry.date, past) for entry in newest)}",
            do=(
                "use no more of it here; what is left goes where your community takes such products. If its label "
                f"names home lawns, put that down: set {product.name} site residential lawn"
            ),
            clears="its label as entered, or set it aside",
            evidence=tuple(entry.id for entry in newest),
        )


def why_not(product: Product) -> tuple[Level, str, bool] | None:
    """How bad, why, and whether a service may not use it either; None for what nothing speaks against."""
    if not is_protective(product):
        return None
    site = product.label.site.casefold()
    if not (site or product.label.professional or product.actives):
        return None
    if site and not _fits(site):
        return Level.HARM, f"its label says: {product.label.site}", True
    if product.label.professional:
        return Level.HARM, "its label leaves it to professionals", False
    if _RESTRICTED.search(site):
        return Level.HARM, f"its label says: {product.label.site}", False
    held = () if site else _seldom_at_home(tuple(one.name for one in product.actives))
    if held:
        return Level.NOTE, f"{held[0]} is seldom meant for a home lawn, and its label's site is not entered", False
    return None


@lru_cache(maxsize=512)
def _seldom_at_home(names: tuple[str, ...]) -> tuple[str, ...]:
    return tuple(name for name in names if is_active(name) and not active(name).home_lawn)


def _fits(site: str) -> bool:
    """Whether the words name a home lawn. Turf alone may be one; a golf course is none."""
    if _NOT.search(site):
        return False
    if any(word in site for word in _HOME) or _RESTRICTED.search(site):
        return True
    return any(word in site for word in _TURF) and not any(word in site for word in _ELSEWHERE)


def _uses(past: Past, name: str) -> list[Entry]:
    def holds(entry: Entry) -> bool:
        return any(dose.product == name for dose in doses(entry))

    found: list[Entry] = []
    for kind in PROTECTED:
        found += past[kind].picked(f"uses of {name}", holds).newest(NEWEST * 2)
    return sorted(found, key=lambda entry: (entry.day, entry.id))
