"""Feeding beside water without keeping the edge."""

from datetime import timedelta

from journal.facts.citation import Basis
from journal.facts.local_rules import CHECK
from journal.facts.sources import judgment
from journal.reckon.dose import doses
from journal.reckon.feeding import holds_nitrogen
from journal.reckon.feedings import FEEDINGS
from journal.reckon.near_water import WaterEdge, water_edge
from journal.reckon.phosphate import brings_phosphorus
from journal.record.entry import Entry
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.treatment import Treatment
from journal.record.lawn import Lawn
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import LOCAL, Numbers
from journal.rules.turns import after
from journal.rules.words import on
from journal.season.history import Past
from journal.season.local import local_rules

STANDS_DAYS = 7
LIMIT = "local-buffer"


@rule(
    "feed-buffer",
    levels=(Level.HARM, Level.NOTE),
    watches=FEEDINGS,
    turns=tuple(after(kind, STANDS_DAYS - 1) for kind in FEEDINGS),
    basis=(judgment("granules on the bank or on paving end in the water", "ny-dec", "vermont-1266b"),),
)
def feed_buffer(past: Past, n: Numbers) -> Finding | None:
    """Nitrogen or phosphorus on a zone near water, and nothing says that the edge was kept."""
    found: list[tuple[Level, WaterEdge, Entry]] = []
    for kind in FEEDINGS:
        for entry in past[kind].within(STANDS_DAYS):
            lawn = past.history.lawn(entry.date)
            edge = water_edge(lawn, past.zone)
            if edge is None or _kept(entry) or not _feeds(entry, lawn):
                continue
            if edge.broken:
                found.append((Level.HARM, edge, entry))
            elif edge.distance_mm <= n["distance"]:
                found.append((Level.NOTE, edge, entry))
    if not found:
        return None
    gravest = max(level.gravity for level, _, _ in found)
    worst = sorted((row for row in found if row[0].gravity == gravest), key=lambda row: (row[2].day, row[2].id))
    level, edge, entry = worst[-1]
    return _finding(past, level, edge, entry, tuple(row[2].id for row in worst), n)


def _finding(past: Past, level: Level, edge: WaterEdge, entry: Entry, evidence: tuple[str, ...], n: Numbers) -> Finding:
    lawn = past.history.lawn(entry.date)
    bases: tuple[Basis, ...] = ()
    number = "distance"
    law = f"most local rules that name a distance want {edge.say(_LEAST_MM, lawn)} to {edge.say(_MOST_MM, lawn)}"
    if edge.stated is not None:
        sure = "" if edge.stated.confirmed else ", which is not confirmed"
        law = f"{edge.place(local_rules(lawn))} asks for {edge.say(edge.stated.value, lawn)}{sure}"
        bases = (edge.stated.basis,)
    if level is Level.HARM and edge.stated is not None:
        number = LIMIT
        n.tell(LIMIT, edge.stated.value, "mm", LOCAL, edge.stated.basis)
    clears_on = entry.date + timedelta(STANDS_DAYS)
    return Finding(
        level=level,
        headline="fed near water, edge not kept" if level is Level.HARM else "fed near water, edge not mentioned",
        why=f"fed {on(entry.date, past)}; water is {edge.say(edge.distance_mm, lawn)} away, and {law}",
        do=(
            "sweep or blow granules off paving and off the bank; if the strip along the water was left out, or a drop "
            f"spreader or deflector kept it clean, amend the line with `edge kept`. {CHECK}"
        ),
        clears=f"`edge kept` on the line, or {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=evidence,
        numbers=(number,),
        basis=bases,
    )


_LEAST_MM, _MOST_MM = 914.4, 7620.0
"""3 ft with a guard in New York and Michigan, 25 ft in Vermont."""


def _kept(entry: Entry) -> bool:
    return isinstance(entry, Feeding | Treatment) and entry.edge_kept


def _feeds(entry: Entry, lawn: Lawn) -> bool:
    products = (lawn.product(dose.product) for dose in doses(entry))
    return any(p is not None and (holds_nitrogen(p) or brings_phosphorus(p, lawn)) for p in products)
