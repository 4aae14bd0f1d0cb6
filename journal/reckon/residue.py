"""What treatments left in the soil: from which day on seed may be sown again. The label first, else published waits."""

from dataclasses import dataclass
from datetime import date, timedelta
from functools import lru_cache

from journal.facts.actives import SeedWait, seed_wait, seed_wait_after_split
from journal.facts.citation import label
from journal.facts.mixture import Mixture
from journal.reckon.dose import doses, is_spot
from journal.reckon.threshold import in_force
from journal.record.entry import Entry
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.treatment import UNKNOWN, Treatment
from journal.record.lawn import Lawn
from journal.record.product import PROTECTS
from journal.season.history import Past

RESIDUES: tuple[type[Entry], ...] = (Treatment, Feeding)
"""What this file looks at."""

LONGEST_DAYS = 400
"""No wait known is longer."""


@dataclass(frozen=True, slots=True)
class Residue:
    """One product of one entry: sowing may follow on the day `over` (a wait of N days is over on day N)."""

    entry: Entry
    product: str
    over: date
    wait: SeedWait


def residues(past: Past, mix: Mixture) -> tuple[Residue, ...]:
    """The waits that treatments of the zone set before that mix is sown, the longest last; spots set none.

    A feeding counts when its product holds an active. Waits that are over by the past's day are there too.
    """
    found = []
    used: dict[str, date] = {}
    since = past.day - LONGEST_DAYS
    entries: list[Entry] = [*past[Treatment].since(since), *past[Feeding].since(since)]
    for entry in sorted(entries, key=lambda e: (e.day, e.id)):
        if is_spot(entry):
            continue
        for dose in doses(entry):
            again = dose.product in used and (entry.date - used[dose.product]).days < _split_days(past.lawn)
            used[dose.product] = entry.date
            lawn = past.history.lawn(entry.date)
            missing = isinstance(entry, Treatment) and lawn.product(dose.product) is None
            wait = wait_before_seed(UNKNOWN if missing else dose.product, lawn, mix, again=again)
            if wait is not None and wait.days > 0:
                found.append(Residue(entry, dose.product, entry.date + timedelta(wait.days), wait))
    return tuple(sorted(found, key=lambda residue: residue.over))


def _split_days(lawn: Lawn) -> float:
    return in_force(lawn, "seed-over-residue", "split-days")


def wait_before_seed(name: str, lawn: Lawn, mix: Mixture, *, again: bool = False) -> SeedWait | None:
    """How long that mix waits after a product; None for one that sets no wait. `again`: the second half of a split."""
    if name == UNKNOWN:
        return seed_wait((), "pre-emergent", mix)
    product = lawn.product(name)
    if product is None:
        return None
    if product.label.to_seed_days is not None:
        return SeedWait(round(product.label.to_seed_days), "label", label())
    actives = [content.name for content in product.actives]
    if product.kind not in PROTECTS and not actives:
        return None
    kind = product.kind if product.kind in PROTECTS else "weed-and-feed"
    return _published(tuple(actives), kind, tuple(mix.items()), again)


@lru_cache(maxsize=512)
def _published(actives: tuple[str, ...], kind: str, mix: tuple[tuple[str, float], ...], again: bool) -> SeedWait:
    """The same few products and mixes are asked about over and over."""
    return (seed_wait_after_split if again else seed_wait)(actives, kind, dict(mix))
