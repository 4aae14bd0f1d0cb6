"""Uses of products against weeds, insects or disease: what was put down where, whether or not the amount is known."""

from bisect import bisect_left, bisect_right
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, time
from functools import cached_property
from typing import Any

from journal.facts.active import Active
from journal.facts.actives import active, fallback, is_active
from journal.reckon.dose import doses, is_spot
from journal.reckon.protection import PROTECTED, is_protective
from journal.record.dose import Dose
from journal.record.entry import Entry
from journal.record.kinds.treatment import UNKNOWN, Treatment
from journal.record.product import PROTECTS, Label, Product
from journal.season.history import Past
from journal.season.track import Track, order

BLANK = Label()
WEED_KINDS = ("pre-emergent", "weed", "weed-and-feed", "nonselective")


@dataclass(frozen=True)
class Use:
    """One product of one entry in one zone. `product` is None where it is not in the shed, or `unknown`.

    `kind` is what it is used for: one of PROTECTS. A starter or fertilizer with an active counts as weed-and-feed,
    and a product that nobody knows as a pre-emergent, which waits longest.
    """

    name: str
    product: Product | None
    kind: str
    dose: Dose
    entry: Entry

    @property
    def date(self) -> date:
        """The day of it."""
        return self.entry.date

    @property
    def day(self) -> int:
        """The same as an ordinal."""
        return self.entry.day

    @property
    def time(self) -> time | None:
        """When, where that was written down."""
        return self.entry.time

    @cached_property
    def spot(self) -> bool:
        """Whether only a spot was treated."""
        return is_spot(self.entry)

    @property
    def label(self) -> Label:
        """What the owner copied from its label; all blank where nothing is known of it."""
        return self.product.label if self.product else BLANK

    @cached_property
    def spray(self) -> bool:
        """Whether it went out as a liquid. What says neither is taken for one: a spray drifts further."""
        if self.dose.amount_ml is not None or self.dose.rate_ml_per_m2 is not None:
            return True
        if isinstance(self.entry, Treatment) and self.entry.ready_to_use:
            return True
        if self.product is not None and (self.product.form or self.product.liquid):
            return self.product.liquid
        return isinstance(self.entry, Treatment) and self.dose.amount_g is None and self.dose.rate_g_per_m2 is None

    @cached_property
    def actives(self) -> tuple[Active, ...]:
        """The actives in it that are known here."""
        return actives_of(self.product)

    @cached_property
    def leaf_applied(self) -> bool:
        """Whether it works through the leaf, by its actives, else by its kind."""
        return leaf_applied(self.product, self.kind)

    @cached_property
    def on_leaves(self) -> bool:
        """Whether it was put on the leaves to work there: a spray, or granules of a weed-and-feed.

        Barriers and grub granules work in the soil, and a starter with an active goes to the seed.
        """
        fed = self.kind == "weed-and-feed" and self.product is not None and self.product.kind != "starter"
        return self.leaf_applied and (self.spray or fed)

    @cached_property
    def against_weeds(self) -> bool:
        """Whether it is a weed product of any sort."""
        return self.kind in WEED_KINDS


def actives_of(product: Product | None) -> tuple[Active, ...]:
    """The actives of a product that are known here, as it lists them."""
    return () if product is None else tuple(active(one.name) for one in product.actives if is_active(one.name))


def leaf_applied(product: Product | None, kind: str) -> bool:
    """Whether a product works through the leaf, by its actives, else by its kind (one of PROTECTS)."""
    known = actives_of(product)
    return any(one.leaf_applied for one in known) if known else fallback(kind).leaf_applied


def kind_of(product: Product) -> str:
    """What it is used for: one of PROTECTS. A starter or fertilizer with an active counts as weed-and-feed."""
    return product.kind if product.kind in PROTECTS else "weed-and-feed"


def uses(past: Past, since: int) -> tuple[Use, ...]:
    """Those of the zone from that day (an ordinal) on, oldest first; several where a tank held several."""
    parts = [some for kind in PROTECTED if (some := _of_kind(past, kind, since))]
    if len(parts) < 2:
        return parts[0] if parts else ()
    return tuple(sorted((use for part in parts for use in part), key=lambda use: order(use.entry)))


def _of_kind(past: Past, kind: type[Entry], since: int) -> tuple[Use, ...]:
    """Those of one kind of entry; all of a zone are worked out once, for they change only with the entries."""
    seen = past[kind]
    track, ground = seen.track, past.history.ground
    # the ground is kept beside what was worked out on it, so that its id stays its own
    _, days, found = track.once(("uses", id(ground)), lambda: (ground, *_all(past, track)))
    return found[bisect_left(days, since) : bisect_right(days, past.day)]


def _all(past: Past, track: Track[Any]) -> tuple[list[int], tuple[Use, ...]]:
    found = uses_in(past, track.entries)
    return [use.day for use in found], found


def uses_in(past: Past, entries: Iterable[Entry]) -> tuple[Use, ...]:
    """Those in these entries, in their order; none for one that puts nothing of the sort down."""
    return tuple(use for entry in entries for use in _of(past, entry))


def _of(past: Past, entry: Entry) -> list[Use]:
    lawn = past.history.lawn(entry.date)
    found = []
    for dose in doses(entry):
        product = lawn.product(dose.product)
        if dose.product == UNKNOWN or (product is None and isinstance(entry, Treatment)):
            found.append(Use(dose.product, None, "pre-emergent", dose, entry))
        elif product is not None and is_protective(product):
            found.append(Use(dose.product, product, kind_of(product), dose, entry))
    return found
