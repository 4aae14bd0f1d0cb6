"""Products against weeds, insects or disease beside water."""

from datetime import timedelta

from journal.facts.safety import BASIS as LABEL_LAW
from journal.facts.sources import published
from journal.reckon.near_water import WaterEdge
from journal.reckon.protection import PROTECTED
from journal.reckon.uses import Use
from journal.reckon.watering_in import used_within
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.treatment import Treatment
from journal.record.zone import Zone
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after
from journal.rules.words import called, on
from journal.season.history import Past

STANDS_DAYS = 7


@rule(
    "buffer",
    levels=(Level.HARM,),
    watches=PROTECTED,
    turns=tuple(after(kind, STANDS_DAYS - 1) for kind in PROTECTED),
    basis=(LABEL_LAW, published("label-82447", note="no direct application to water")),
)
def buffer(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """A weed, insect or disease product on a zone near water, and nothing says that the edge was kept."""
    found: dict[str, Finding] = {}
    for use in used_within(past, STANDS_DAYS):
        zone = past.history.lawn(use.date).zone(past.zone)
        if zone is None or zone.near_water_mm is None or _kept(use):
            continue
        wanted = _distance(use, zone, n)
        if zone.near_water_mm < wanted:
            found[use.name] = _finding(past, use, zone.near_water_mm, wanted, n)
    return tuple(found.values())


def _kept(use: Use) -> bool:
    return isinstance(use.entry, Feeding | Treatment) and use.entry.edge_kept


def _name(zone: Zone) -> str:
    return "slope-distance" if zone.slope == "steep" else "distance"


def _distance(use: Use, zone: Zone, n: Numbers) -> float:
    """The label's, else the default; the owner may only want more."""
    name = _name(zone)
    own = n.lawn.numbers.get(("buffer", name))
    stated = use.label.buffer_mm
    return (
        n.stricter(name) if stated is None or (own is not None and own > stated) else n.stricter(name, of_label=stated)
    )


def _finding(past: Past, use: Use, near: float, wanted: float, n: Numbers) -> Finding:
    zone = past.history.lawn(use.date).zone(past.zone)
    clears_on = use.date + timedelta(STANDS_DAYS)
    by = "the label wants" if wanted == use.label.buffer_mm else "keep"
    if use.label.buffer_mm is None:
        by = f"label not entered: {by}"
    first = "rinse" if use.spray else "sweep granules back onto the grass and rinse"
    say = WaterEdge.say
    return Finding(
        level=Level.HARM,
        subject=use.name,
        headline=f"{called(use.name)} near water, edge not kept",
        why=(
            f"{called(use.name)}{' on a spot' if use.spot else ''} {on(use.date, past)}; "
            f"water is {say(near, past.lawn)} away, {by} {say(wanted, past.lawn)}"
        ),
        do=(f"{first} nothing towards the water; if the strip along it was left out, amend the line with `edge kept`"),
        clears=f"`edge kept` on the line, or {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=(use.entry.id,),
        numbers=(_name(zone),) if zone is not None else (),
    )
