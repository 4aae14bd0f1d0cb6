"""The ledger of a year: what every zone got, what may still go down, and what the sums can't hold.

The calendar year is what laws count by; from sowing to sowing is what the grass counts by.
"""

from dataclasses import dataclass
from datetime import date, timedelta

from journal.facts.citation import Basis, Known
from journal.facts.local_rules import LocalRules
from journal.facts.mixture import nitrogen_cap
from journal.reckon.ledger_year import NitrogenRow, Sums, Uncounted, gathered
from journal.reckon.money import lawn_cost, spent
from journal.reckon.spread_check import SpreadCheck, spread_checks
from journal.reckon.stock import Shelf, shelves
from journal.record.kinds.seeding import Seeding
from journal.season.history import History, Past
from journal.season.local import local_rules
from journal.season.stand import sown, stand_mix


@dataclass(frozen=True, slots=True)
class Limit:
    """The most nitrogen in a calendar year, in g/m2: the stricter of the grass's own and a local rule's.

    `origin` is "default", "local rule", or "yours" for a rule as the owner entered it. `grass` is the one whose cap
    it is, '' for a rule.
    """

    n_g_per_m2: float
    origin: str
    grass: str
    basis: Basis


@dataclass(frozen=True, slots=True)
class Season:
    """From a whole-zone sowing to the day before the next; `to` None while it runs."""

    since: date
    to: date | None
    sums: Sums


@dataclass(frozen=True, slots=True)
class ZoneLedger:
    """One zone in one year. `left_g_per_m2` is what may still go down of the limit; never below 0."""

    zone: str
    area_m2: float | None
    sums: Sums
    nitrogen: tuple[NitrogenRow, ...]
    uncounted: tuple[Uncounted, ...]
    limit: Limit
    local: LocalRules | None
    seasons: tuple[Season, ...]

    @property
    def left_g_per_m2(self) -> float:
        """The nitrogen that is left of the year's limit."""
        return max(0.0, self.limit.n_g_per_m2 - self.sums.n)

    @property
    def at_most(self) -> bool:
        """Whether less may be left: something with nitrogen went down unmeasured."""
        return any(row.n_g_per_m2 is None for row in self.nitrogen)


@dataclass(frozen=True, slots=True)
class Ledger:
    """A year up to `as_of`: its last day, or the day on which it is looked at while it runs.

    `short` are the shelves from which more was used by then than had been bought; what was never bought is not
    among them.
    """

    year: int
    as_of: date
    zones: tuple[ZoneLedger, ...]
    cost: float
    spent: float
    checks: tuple[SpreadCheck, ...]
    short: tuple[Shelf, ...]


def ledger(history: History, year: int, as_of: date) -> Ledger:
    """What is on file of that year on that day. A year that lies ahead of it is empty."""
    first, last = date(year, 1, 1), min(date(year, 12, 31), max(as_of, date(year, 1, 1)))
    days = first.toordinal(), last.toordinal()
    return Ledger(
        year=year,
        as_of=last,
        zones=tuple(_zone(history, name, first, last, as_of) for name in history.lawn(last).zone_names),
        cost=lawn_cost(history, *days),
        spent=spent(history, *days),
        checks=spread_checks(history, first, last),
        short=tuple(one for one in shelves(history, last) if one.lots and one.short > 0),
    )


def _zone(history: History, name: str, first: date, last: date, as_of: date) -> ZoneLedger:
    """A gauge read in January tells of December too: rain is summed as it is known today."""
    then = history.on(name, last)
    known, zone = then.history.on(then.zone, max(as_of, last)), then.lawn.zone(name)
    seasons = [(since, to) for since, to in _seasons(then) if to is None or to >= first]
    got = gathered(known, min([first, *(since for since, _ in seasons)]), last)
    return ZoneLedger(
        zone=name,
        area_m2=zone.area_m2 if zone else None,
        sums=got.sums(first, last),
        nitrogen=got.nitrogen(first, last),
        uncounted=got.uncounted(first, last),
        limit=_limit(then),
        local=local_rules(then.lawn),
        seasons=tuple(Season(since, to, got.sums(since, min(to or last, last))) for since, to in seasons),
    )


def _limit(past: Past) -> Limit:
    """A local rule that does not speak to owners is shown, and limits nothing."""
    grass, rules = nitrogen_cap(stand_mix(past)), local_rules(past.lawn)
    stated = rules.year_n_g_per_m2 if rules else None
    most = rules.heeds(stated) if rules else None
    if stated is not None and most is not None and most < grass.nitrogen_cap_g_per_m2:
        return Limit(most, "yours" if stated.basis.kind is Known.LOCAL_RULE else "local rule", "", stated.basis)
    return Limit(grass.nitrogen_cap_g_per_m2, "default", grass.name, grass.nitrogen_basis)


def _seasons(past: Past) -> list[tuple[date, date | None]]:
    """First and last day of every season of the zone. A spot begins none, and neither does a top-up."""
    days = {seeding.date for seeding in past[Seeding].all}
    stands = (sown(past.history.on(past.zone, day)) for day in days)
    starts = sorted({seeding.date for seeding in stands if seeding is not None})
    ends = [*(start - timedelta(1) for start in starts[1:]), None]
    return list(zip(starts, ends, strict=True)) if starts else []
