"""The sowings of a zone as spans of time: damp, young, established."""

from dataclasses import dataclass, replace

from journal.facts.mixture import has_bluegrass
from journal.reckon.threshold import in_force
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Sighting
from journal.season.history import Past
from journal.season.stand import (
    COUNTS_FROM_DAY,
    NEW_GRASS_MOWINGS,
    SEEDBED_DAYS,
    day_zero_of,
    sown,
    sown_mix,
)

MATTERS_DAYS = 500
"""A dormant sowing lies half a year, and is watched for as long again."""


@dataclass(frozen=True, slots=True)
class Sowing:
    """One new stand of grass. Days are ordinals; None where the thing has not come to pass.

    `zero` is the day from which its days count, `damp_to` the last day of the damp period, `bed_to` the last day of
    the seedbed, `established` the first day on which it is no longer new grass.
    """

    entry: Seeding
    sown: int
    zero: int
    damp_to: int
    bed_to: int
    emerged: int | None
    established: int | None


def sowings(past: Past, first: int, last: int) -> tuple[Sowing, ...]:
    """New stands that matter from one day to another, oldest first, the newest at any rate: no spots, no top-ups."""
    if not past[Seeding]:
        return ()
    near = [
        seeding
        for seeding in past[Seeding].between(first - MATTERS_DAYS, last)
        if sown(past.history.on(past.zone, seeding.date)) is seeding
    ]
    if not near and (newest := sown(past)) is not None and newest.day <= last:
        near = [newest]
    found: list[Sowing] = []
    for seeding in near:
        if found:
            found[-1] = _before(found[-1], seeding.day)
        found.append(_sowing(past, seeding))
    return tuple(found)


def _before(earlier: Sowing, day: int) -> Sowing:
    """A stand ends where the next begins."""
    over = earlier.established is not None and earlier.established >= day
    return replace(
        earlier,
        damp_to=min(earlier.damp_to, day - 1),
        bed_to=min(earlier.bed_to, day - 1),
        established=None if over else earlier.established,
        emerged=earlier.emerged if earlier.emerged is not None and earlier.emerged < day else None,
    )


def _sowing(past: Past, seeding: Seeding) -> Sowing:
    lawn = past.history.lawn(seeding.date)
    zero = day_zero_of(lawn, seeding).toordinal()
    mowings = past[Mowing].since(zero + COUNTS_FROM_DAY)
    days = sorted({mowing.day for mowing in mowings[:40]})
    bed_to = zero + SEEDBED_DAYS if not days else min(zero + SEEDBED_DAYS, days[0] - 1)
    mix = sown_mix(lawn, past.zone, seeding)
    damp = in_force(past.lawn, "seedbed-dry", "days-bluegrass" if has_bluegrass(mix) else "days")
    return Sowing(
        seeding,
        seeding.day,
        zero,
        zero + int(damp),
        bed_to,
        next((seen.day for seen in past[Sighting].since(seeding.day) if seen.subject == "emerged"), None),
        _established(past, zero, days),
    )


def _established(past: Past, zero: int, mown: list[int]) -> int | None:
    zone = past.lawn.zone(past.zone)
    old = zero + SEEDBED_DAYS + 1
    if zone is not None and zone.mowing != "self":
        return old
    if len(mown) < NEW_GRASS_MOWINGS:
        return None
    return max(old, mown[NEW_GRASS_MOWINGS - 1])


def stage(sowing: Sowing, day: int) -> str:
    """The stage of a stand on a day (an ordinal)."""
    if day < sowing.zero:
        return "waits for spring"
    if sowing.established is not None and day >= sowing.established:
        return "established"
    return "keep damp" if day <= sowing.damp_to else "seedbed" if day <= sowing.bed_to else "new grass"
