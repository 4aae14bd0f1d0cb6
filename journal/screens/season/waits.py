"""How long what was put down keeps a zone closed to seed."""

from dataclasses import dataclass
from datetime import date

from journal.facts.citation import Known
from journal.reckon.residue import LONGEST_DAYS, RESIDUES, Residue, residues
from journal.record.entry import Entry
from journal.screens.season.scene import Scene
from journal.season.history import Past
from journal.season.stand import stand_mix


@dataclass(frozen=True, slots=True)
class Closed:
    """One use of one product: closed from its day (an ordinal) to the day before `opens`. `by` says who has it so."""

    entry: Entry
    product: str
    day: int
    opens: int
    by: str


def closures(scene: Scene, zone: str) -> tuple[Closed, ...]:
    """Every use that closes the zone to seed on any of the cells' days, the one that opens last at the end."""
    return scene.once(("closures", zone), lambda: _closures(scene, scene.pasts[zone]))


def _closures(scene: Scene, past: Past) -> tuple[Closed, ...]:
    mix = stand_mix(past)
    first, last = scene.cells.first, min(scene.cells.last, scene.today)
    found: dict[tuple[int, str], Residue] = {}
    earlier = any(past[kind].between(first - LONGEST_DAYS, last - LONGEST_DAYS - 1) for kind in RESIDUES)
    for day in (first, last) if earlier else (last,):
        then = past.history.on(past.zone, date.fromordinal(day))
        found |= {(id(residue.entry), residue.product): residue for residue in residues(then, mix)}
    closed = [Closed(one.entry, one.product, one.entry.day, one.over.toordinal(), _by(one)) for one in found.values()]
    return tuple(sorted((one for one in closed if one.opens > first), key=lambda one: one.opens))


def _by(residue: Residue) -> str:
    if residue.wait.basis.kind is Known.LABEL:
        return "label"
    return f"{residue.wait.by}, label not entered" if residue.wait.by != "kind" else "default, label not entered"


def open_on(closed: tuple[Closed, ...], day: int) -> int:
    """The first day on which seed may go down again, as seen on a day; that day itself when nothing closes it."""
    return max((one.opens for one in closed if one.day <= day < one.opens), default=day)
