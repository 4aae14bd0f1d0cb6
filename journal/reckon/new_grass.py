"""Whether new grass was old enough for what was put down on it. The label first, else the actives, else the kind.

Days count from emergence, mowings from day 21 after sowing.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date, timedelta

from journal.facts.citation import label
from journal.facts.new_grass import NewGrassWait, goes_down_with, new_grass_wait
from journal.reckon.dose import is_spot
from journal.reckon.protection import PROTECTED
from journal.reckon.residue import wait_before_seed
from journal.reckon.threshold import in_force
from journal.reckon.uses import Use, uses
from journal.record.dose import Dose
from journal.record.entry import Entry
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.intention import Intention
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Sighting
from journal.record.product import PROTECTS, Product
from journal.season.growth import season
from journal.season.history import Past
from journal.season.stand import (
    COUNTS_FROM_DAY,
    NEW_GRASS_MOST_DAYS,
    Emergence,
    day_zero_of,
    emergence,
    intentions,
    sown,
    sown_mix,
)

NEW_GRASS: tuple[type[Entry], ...] = (Seeding, Mowing, Sighting, Intention, *PROTECTED)
"""What this file looks at."""

BEFORE_DAYS = 7
"""What went down so long before the seed counts as put down with it."""

NEWEST = "\U0010ffff"
"""The id of what is written down last on its day."""

SERVICE_FROM_DAY, EVERY_DAYS = 28, 7
"""A service's mowings are not written down: one a week from day 28 is taken as mown (judgment)."""


@dataclass(frozen=True, slots=True)
class Early:
    """A use before the wait was over. `mowings` had been done by then; `over` is None while mowings are lacking."""

    use: Use
    seeding: Seeding
    wait: NewGrassWait
    emergence: Emergence
    mowings: int
    over: date | None
    patch: bool
    """Whether only a spot was sown or treated."""


def wait_of(product: Product | None, kind: str) -> NewGrassWait:
    """How old the grass must be for it."""
    if product is not None and product.label.after_seed is not None:
        age = product.label.after_seed
        return NewGrassWait(round(age.days), age.mowings, "label", label())
    return _by_actives(product, kind)


def wait_for(product: Product) -> NewGrassWait:
    """The same for a product of the shed; a fertilizer with an active counts as weed-and-feed."""
    return wait_of(product, product.kind if product.kind in PROTECTS else "weed-and-feed")


def _by_actives(product: Product | None, kind: str) -> NewGrassWait:
    return new_grass_wait(_names(product), kind)


def _names(product: Product | None) -> tuple[str, ...]:
    return tuple(content.name for content in product.actives) if product else ()


def _mix(past: Past, seeding: Seeding) -> Mapping[str, float]:
    return sown_mix(past.lawn, past.zone, seeding)


def mowing_days(past: Past, seeding: Seeding) -> tuple[int, ...]:
    """The days (ordinals) from day 21 on, up to the past's, on which it was mown."""
    zero = day_zero_of(past.lawn, seeding).toordinal()
    found = {mowing.day for mowing in past[Mowing].since(zero + COUNTS_FROM_DAY)}
    zone = past.lawn.zone(past.zone)
    if zone is not None and zone.mowing == "service":
        found.update(range(zero + SERVICE_FROM_DAY, past.day + 1, EVERY_DAYS))
    return tuple(sorted(found))


def over_on(past: Past, seeding: Seeding, wait: NewGrassWait) -> date | None:
    """The day from which on the grass is old enough; None while mowings are lacking, and of what kills grass."""
    if wait.never:
        return None
    mown = mowing_days(past, seeding)
    if len(mown) < wait.mowings:
        return None
    by_days = emergence(past, seeding).date + timedelta(wait.days)
    return max(by_days, date.fromordinal(mown[wait.mowings - 1])) if wait.mowings else by_days


def expected(past: Past, seeding: Seeding, wait: NewGrassWait) -> date:
    """The same as it may come about: what mowings are lacking a week apart, the first on day 28 or later."""
    mown = mowing_days(past, seeding)
    lacking = max(0, wait.mowings - len(mown))
    by_days = emergence(past, seeding).date + timedelta(wait.days)
    if not lacking:
        return over_on(past, seeding, wait) or by_days
    first = day_zero_of(past.lawn, seeding).toordinal() + SERVICE_FROM_DAY
    after = date.fromordinal(max(first, past.day, mown[-1] + EVERY_DAYS if mown else first))
    return max(by_days, _in_growth(past, after) + timedelta(EVERY_DAYS * (lacking - 1)))


def _in_growth(past: Past, day: date) -> date:
    """That day, or two weeks into the season: nothing is mown before."""
    window = season(past.lawn, day)
    return day if window is None else max(day, window[0] + timedelta(2 * EVERY_DAYS))


def old_enough_on(past: Past, wait: NewGrassWait) -> date | None:
    """The day from which on the zone's stand is old enough, be that to come; None where nothing keeps it.

    A year after sowing nothing is waited for.
    """
    seeding = sown(past)
    if seeding is None or past.day - day_zero_of(past.lawn, seeding).toordinal() >= NEW_GRASS_MOST_DAYS:
        return None
    over = over_on(past, seeding, wait)
    if over is None:
        return expected(past, seeding, wait)
    return over if over > past.date else None


def early_uses(past: Past, since: int, within_days: int, with_seed_days: int) -> tuple[Early, ...]:
    """The uses from that day (an ordinal) on for which the grass was too young, and still is; oldest first."""
    used = uses(past, since)
    if not used:
        return ()
    if not past[Seeding]:
        return ()
    lately = sown(past)
    found = []
    for use in used:
        if lately is not None and lately.day > use.day:
            continue
        then = past.history.on(past.zone, use.date, past.watches)
        whole = sown(then)
        for seeding in (whole, _patch(then, within_days)):
            if seeding is None or use.day - day_zero_of(then.lawn, seeding).toordinal() >= within_days:
                continue
            early = _early(past, then, use, seeding, with_seed_days, patch=seeding is not whole)
            if early is not None:
                found.append(early)
                break
    return tuple(found)


def too_young(past: Past, product: Product) -> bool:
    """Whether the zone's stand would be too young for a product of the shed that went down today.

    Nothing is asked of one without an active, nor of what may go down with the seed.
    """
    seeding = sown(past)
    if seeding is None or not product.actives:
        return False
    kind = product.kind if product.kind in PROTECTS else "weed-and-feed"
    entry = Feeding(id=NEWEST, date=past.date, zones=(past.zone,), product=product.name)
    use = Use(product.name, product, kind, Dose(product.name), entry)
    with_seed = round(in_force(past.lawn, "new-grass-treatment", "with-seed-days"))
    return _early(past, past, use, seeding, with_seed, patch=False) is not None


def _patch(then: Past, within_days: int) -> Seeding | None:
    """The newest spot that was sown."""
    return next((s for s in reversed(then[Seeding].within(within_days)) if is_spot(s)), None)


def _early(past: Past, then: Past, use: Use, seeding: Seeding, with_seed_days: int, *, patch: bool) -> Early | None:
    wait = _wait(past, then, use, seeding, with_seed_days)
    if wait is None or wait.none or (wait.never and (use.spot or patch or intentions(past, "seed"))):
        return None
    came_up = emergence(past, seeding)
    mown = len(mowing_days(then, seeding))
    if not wait.never and mown >= wait.mowings and came_up.date + timedelta(wait.days) <= use.date:
        return None
    over = over_on(past, seeding, wait)
    if over is not None and over <= past.date:
        return None
    return Early(use, seeding, wait, came_up, mown, over, patch or use.spot)


def _wait(past: Past, then: Past, use: Use, seeding: Seeding, with_seed_days: int) -> NewGrassWait | None:
    """What it waits for; None for what may go down with that seed, or was there when it was sown.

    A label that asks no age means the use at seeding: what goes down again is held to its active's own wait.
    """
    mix = _mix(then, seeding)
    residue = wait_before_seed(use.name, then.lawn, mix)
    if use.day == seeding.day and residue is not None and residue.days:
        return None
    wait = wait_of(use.product, use.kind)
    if not goes_down_with(_names(use.product), mix) or (residue is not None and residue.days):
        return wait
    zero = day_zero_of(then.lawn, seeding)
    again = any(_same(one, use) and one.entry.id != use.entry.id for one in _before(then, use, zero))
    if again:
        return _by_actives(use.product, use.kind) if wait.none else wait
    with_seed = use.day <= zero.toordinal() + with_seed_days or use.date < emergence(past, seeding).date
    return None if with_seed else wait


def _before(then: Past, use: Use, zero: date) -> Iterator[Use]:
    order = (use.day, use.entry.id)
    return (one for one in uses(then, zero.toordinal() - BEFORE_DAYS) if (one.day, one.entry.id) < order)


def _same(one: Use, other: Use) -> bool:
    return one.name == other.name or bool({a.name for a in one.actives} & {a.name for a in other.actives})
