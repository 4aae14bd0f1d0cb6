"""One resistance group used too often in a row."""

from datetime import timedelta

from journal.facts.actives import active, is_active
from journal.facts.sources import published
from journal.reckon.label_uses import PARTS_DAYS, Round, rounds
from journal.reckon.protection import PROTECTED
from journal.record.product import Product
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after
from journal.rules.words import on
from journal.season.history import Past

STANDS_DAYS = 60
_KINDS = ("insect", "disease")


@rule(
    "group-repeat",
    levels=(Level.NOTE,),
    watches=PROTECTED,
    turns=[after(kind, STANDS_DAYS - 1) for kind in PROTECTED],
    basis=(published("uc-fungicides", note="rotate the groups, so that nothing grows resistant"),),
)
def group_repeat(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """The same resistance group again and again against insects or disease."""
    recent = [one for one in rounds(past, past.day - STANDS_DAYS + 1) if one.kind in _KINDS]
    if not recent:
        return ()
    since = recent[0].day - n.days("within-days") - PARTS_DAYS
    every = rounds(past, since)
    return tuple(
        finding
        for kind in dict.fromkeys(one.kind for one in recent)
        if (finding := _in_a_row(past, [one for one in every if one.kind == kind], kind, n)) is not None
    )


def _in_a_row(past: Past, used: list[Round], kind: str, n: Numbers) -> Finding | None:
    """Uses of other groups, and of none that is known, end the row."""
    newest = used[-1]
    for group in groups(newest.product):
        row = []
        for one in reversed(used):
            if group not in groups(one.product) or newest.day - one.day >= n.days("within-days"):
                break
            row.append(one)
        if len(row) >= n.days("in-a-row"):
            clears_on = past.date.fromordinal(newest.last_day) + timedelta(STANDS_DAYS)
            return Finding(
                level=Level.NOTE,
                subject=kind,
                headline=f"{group} {len(row)} times in a row",
                why=(
                    f"{', '.join(dict.fromkeys(one.name for one in reversed(row)))} put down "
                    f"{', '.join(on(one.day, past) for one in reversed(row[:4]))}: what survives one survives the next"
                ),
                do="if it has to be treated again, take a product of another group; this asks for no further treatment",
                clears=f"another group used, or {STANDS_DAYS} days: {on(clears_on, past)}",
                clears_on=clears_on,
                evidence=tuple(entry.id for one in reversed(row) for entry in one.entries),
                numbers=("in-a-row",),
            )
    return None


def groups(product: Product) -> tuple[str, ...]:
    """The single-site groups of its actives, like FRAC 11; none for those that act at many sites or have no group."""
    found = (active(one.name).group for one in product.actives if is_active(one.name))
    return tuple(dict.fromkeys(group for group in found if group != "none" and " M" not in group))
