"""One zone in full: every fact with its line, the stand of grass in it, and its water."""

from collections.abc import Mapping
from dataclasses import replace
from datetime import date
from typing import Any

from journal.line.words import amount_words, doses, neat
from journal.record.fold import ZONE_TERMS
from journal.record.kinds.setting import Setting
from journal.record.lawn import Lawn
from journal.record.unit import Dimension
from journal.record.zone import Circuit, Zone
from journal.screens.ground.authority import Key, set_line, start_line
from journal.screens.ground.fact import Fact, Stand, briefly, dated, known_by, said_on
from journal.screens.ground.words import USES, example
from journal.screens.ground.zones import costs, distance
from journal.season.history import Past
from journal.season.stand import age, emerged_on, sown, stand_mix
from journal.standing import Standing


def zone_facts(name: str, standing: Standing, authors: Mapping[Key, Setting], today: date) -> list[Fact]:
    """Every fact of the zone, in the order in which they are declared; none for a zone that is not there."""
    zone = standing.lawn.zone(name)
    if zone is None:
        return []
    lacking = dict(costs(zone, standing.lawn))
    facts = [_fact(key, zone, standing.lawn, authors, today, lacking.get(key, "")) for key in ZONE_TERMS]
    written = [authors.get(("zone", name, key)) for key in ZONE_TERMS]
    return [
        replace(
            fact,
            start=start_line("zone", name, key),
            shown=briefly(fact.known, setting, standing.history.set_up) if fact.stand is Stand.YOURS else "",
        )
        for key, fact, setting in zip(ZONE_TERMS, facts, written, strict=True)
    ]


def first_line(facts: list[Fact]) -> str:
    """The line of the fact that is missed most, or else of the first."""
    return next((fact.enter for fact in facts if fact.costs), facts[0].enter if facts else "")


def _fact(key: str, zone: Zone, lawn: Lawn, authors: Mapping[Key, Setting], today: date, costs: str) -> Fact:
    place = ("zone", zone.name, key)
    said, setting = lawn.said.get(place), authors.get(place)
    field, term = ZONE_TERMS[key]
    words = _words(key, getattr(zone, field), lawn)
    name = {"near_water": "near water", "out_of_view": "out of view", "mowing": "mown by"}.get(key, key)
    if said is not None:
        return Fact(
            name=name, value=words, stand=Stand.YOURS, known=known_by(setting, today),
            line=set_line("zone", zone.name, key, said, setting.since if setting else None), use=USES.get(key, ""),
            more=said_on(setting, today),
        )  # fmt: skip
    line = set_line("zone", zone.name, key, example(key, lawn) or term.example)
    if key == "grass" and lawn.grass:
        words, known = ", ".join(lawn.grass), "the lawn's"
        return Fact(name=name, value=words, stand=Stand.DEFAULT, known=known, line=line, use=USES[key])
    if key == "rate" and zone.circuits:
        # Beside circuits a rate of the whole zone counts for nothing: they are what can be put right.
        circuits = lawn.said.get(("zone", zone.name, "circuits"), example("circuits", lawn))
        setting = authors.get(("zone", zone.name, "circuits"))
        return Fact(
            name=name, value=neat(zone.water_rate_mm_h or 0.0, Dimension.RAIN_RATE, lawn.units), stand=Stand.WORKED,
            known="from its circuits", use=USES[key],
            line=set_line("zone", zone.name, "circuits", circuits, setting.since if setting else None),
        )  # fmt: skip
    stand = Stand.DEFAULT if words else Stand.MISSING
    return Fact(name=name, value=words, stand=stand, known=stand.value, line=line, use=USES.get(key, ""), costs=costs)


def _words(key: str, value: Any, lawn: Lawn) -> str:
    match value:
        case None | () | "":
            return ""
        case bool():
            return "yes" if value else "no"
        case (Circuit(), *_):
            return "; ".join(
                f"{one.name} {one.share:g} % {neat(one.rate_mm_h, Dimension.RAIN_RATE, lawn.units)}" for one in value
            )
        case tuple():
            return ", ".join(str(one) for one in value)
    if key == "near_water":
        return distance(value, lawn.units)
    if isinstance(value, float):
        return neat(value, Dimension.AREA if key == "area" else Dimension.RAIN_RATE, lawn.units)
    return str(value)


def stand_words(past: Past, stage: str) -> list[tuple[str, str]]:
    """(name, words) for what grows there: the shares, the sowing it came from, how far it is."""
    shares = ", ".join(f"{name} {percent:.0f} %" for name, percent in stand_mix(past).items())
    said = [("grass", shares or "not known")]
    seeding, words = sown(past), [stage] if stage else []
    if seeding is None:
        words.append("never sown, as far as the book knows")
    else:
        days = age(past)
        amount = ", ".join(f"{amount_words(dose, past.lawn)} {dose.product}".strip() for dose in doses(seeding))
        count = f", day {days}" if days is not None and days >= 0 else ""
        words.append(f"sown {dated(seeding.date, past.date)}, {amount or 'seed'}{count}")
        up = emerged_on(past)
        if up is not None:
            how = "assumed, by the slowest grass" if up.assumed else "seen"
            words.append(f"up {dated(up.date, past.date)}, {how}")
    return [*said, ("stand", "; ".join(words))]
