"""What brought phosphorus to a zone, and whether sowing is a reason for it by custom or by the local rule."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

from journal.facts.citation import Known
from journal.facts.local_rules import LocalRules, Sowing
from journal.reckon.dose import doses
from journal.reckon.feeding import holds_phosphate
from journal.reckon.feedings import FEEDINGS
from journal.record.entry import Entry
from journal.record.kinds.intention import Intention
from journal.record.kinds.seeding import Seeding
from journal.record.lawn import Lawn
from journal.record.product import Product
from journal.season.history import Past
from journal.season.local import local_rules
from journal.season.stand import day_zero_of

PHOSPHATE: tuple[type[Entry], ...] = (*FEEDINGS, Seeding, Intention)
"""What this file looks at."""

FIRST_SEASON_DAYS = 365
"""What laws call the first growing season of a stand: judgment."""


@dataclass(frozen=True, slots=True)
class Phosphate:
    """One product with phosphorus in one entry. `known` is False where its analysis was not entered."""

    entry: Entry
    product: Product
    known: bool


def phosphates(past: Past, since: int) -> Iterator[Phosphate]:
    """Those of the zone from that day (an ordinal) on."""
    for kind in FEEDINGS:
        for entry in past[kind].since(since):
            lawn = past.history.lawn(entry.date)
            for dose in doses(entry):
                product = lawn.product(dose.product)
                if product is not None and brings_phosphorus(product, lawn):
                    yield Phosphate(entry, product, product.analysis is not None)


def brings_phosphorus(product: Product, lawn: Lawn) -> bool:
    """Whether it is a phosphorus fertilizer, or a starter whose analysis nobody entered."""
    return product.kind == "starter" if product.analysis is None else holds_phosphate(product, lawn)


class Reason:
    """What sowing says for phosphorus on a zone on a day (an ordinal), `near` so many days on either side."""

    __slots__ = ("law", "meant", "near", "season", "sowing")

    def __init__(self, past: Past, day: int, near_days: int) -> None:
        lawn = past.history.lawn(date.fromordinal(day))
        self.law = local_rules(lawn)
        seedings = past[Seeding].between(day - 2 * FIRST_SEASON_DAYS, day + near_days)
        self.near = tuple(s for s in seedings if _apart(lawn, s, day) < near_days)
        self.season = tuple(s for s in seedings if 0 <= day - _zero(lawn, s) < FIRST_SEASON_DAYS)
        self.meant = any(
            one.what == "seed" and one.target is not None and abs(one.target.toordinal() - day) < near_days
            for one in (*past[Intention].all, *past.lawnwide(Intention).all)
        )
        stated = self.law.sowing if self.law is not None else None
        self.sowing = (self.law.heeds(stated) if self.law is not None else None) or Sowing.ANY

    @property
    def sown(self) -> bool:
        """Whether anything was sown, or is meant to be, near that day."""
        return bool(self.near) or self.meant

    @property
    def holds(self) -> bool:
        """Whether that is a reason, by custom or by the local rule; an unconfirmed rule is heeded too."""
        if self.sowing is Sowing.ANY:
            return self.sown
        return self.sowing is not Sowing.NONE and any(seeding.new for seeding in self.near)

    @property
    def binds(self) -> bool:
        """Whether a confirmed local rule wants a reason for phosphorus of the owner."""
        return self.law is not None and (self.law.holds(self.law.phosphorus) is not None or self.own)

    @property
    def own(self) -> bool:
        """Whether the owner has entered which sowing is a reason."""
        return self.law is not None and _is_own(self.law)

    @property
    def certain(self) -> bool:
        """Whether a binding rule is surely broken where no reason holds and no soil test speaks for phosphorus.

        A stand in its first season may be covered by wordings that name the season and not the sowing.
        """
        if not self.binds or self.law is None:
            return False
        confirmed = self.law.sowing is None or self.law.sowing.confirmed
        if self.sowing is not Sowing.ANY and not confirmed and self.sown:
            return False
        if self.sowing is Sowing.NONE and confirmed:
            return True
        return not any(self.sowing is Sowing.ANY or not confirmed or seeding.new for seeding in self.season)


def _is_own(law: LocalRules) -> bool:
    return law.sowing is not None and law.sowing.basis.kind is Known.LOCAL_RULE


def _zero(lawn: Lawn, seeding: Seeding) -> int:
    return day_zero_of(lawn, seeding).toordinal()


def _apart(lawn: Lawn, seeding: Seeding, day: int) -> int:
    """Days between, counted from the sowing or from when a dormant one begins to grow, whichever is nearer."""
    return min(abs(day - seeding.day), abs(day - _zero(lawn, seeding)))
