"""Somebody, or an animal, may have come to harm from a product."""

from collections.abc import Iterable
from datetime import timedelta

from journal.facts.first_aid import BASIS, ROUTES, help_lines
from journal.facts.safety import BASIS as LABEL_LAW
from journal.reckon.protection import PROTECTED
from journal.reckon.uses import Use, uses
from journal.record.kinds.sighting import Sighting
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after
from journal.rules.words import days, on
from journal.season.history import Past

STANDS_DAYS = 14
NAMED = 3


@rule(
    "exposure",
    levels=(Level.HARM,),
    watches=(Sighting, *PROTECTED),
    turns=(after(Sighting, STANDS_DAYS - 1),),
    basis=(BASIS, LABEL_LAW),
    whole_lawn=True,
)
def exposure(past: Past, n: Numbers) -> Finding | None:
    """Somebody is sick or was exposed: the products, the label's first aid, and whom to call."""
    seen = [one for one in past[Sighting].within(STANDS_DAYS) if one.subject in ("sick", "exposure")]
    if not seen:
        return None
    last = seen[-1]
    look_back = n.days("days")
    lately = _newest(past, last, look_back)
    names = ", ".join(_product(use) for use in lately)
    clears_on = last.date + timedelta(STANDS_DAYS)
    what = "sick" if last.subject == "sick" else "exposed"
    return Finding(
        level=Level.HARM,
        headline=f"{what}: {names}" if lately else f"{what}: no product on file in {days(look_back)}",
        why=(
            f"{last.subject} logged {on(last.date, past)}; "
            + (
                "; ".join(f"{use.name} {on(use.date, past)}" for use in lately)
                if lately
                else "what it was is not known"
            )
        ),
        do=f"the first aid on the label first; {help_lines(past.lawn.units)}; have the label at hand. {ROUTES}",
        clears=f"two weeks after, {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=tuple(one.id for one in seen) + tuple(use.entry.id for use in lately),
    )


def _newest(past: Past, seen: Sighting, look_back: int) -> list[Use]:
    """The newest use of each product on the whole lawn, the newest first: people walk from zone to zone."""
    found: dict[str, Use] = {}
    for use in _everywhere(past, seen.day - look_back):
        if use.day <= seen.day and (use.name not in found or found[use.name].day <= use.day):
            found[use.name] = use
    return sorted(found.values(), key=lambda use: (-use.day, use.name))[:NAMED]


def _everywhere(past: Past, since: int) -> Iterable[Use]:
    for zone in past.lawn.zone_names:
        yield from uses(past.elsewhere(zone), since)


def _product(use: Use) -> str:
    """`leaf-off (2,4-d)`: with its actives, as far as they are entered."""
    actives = use.product.actives if use.product is not None else ()
    named = ", ".join(one.name + (f" {one.percent:g} %" if one.percent is not None else "") for one in actives)
    return f"{use.name} ({named or 'actives not entered'})"
