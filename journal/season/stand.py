"""The stand of grass in a zone on a day: what was sown last, how old it is, and what is meant for it."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, timedelta

from journal.facts.grasses import UNKNOWN, UnknownGrass, grass
from journal.facts.mixture import slowest_emergence_days
from journal.record.entry import Entry
from journal.record.kinds.cultivation import Cultivation
from journal.record.kinds.equipment import Equipment
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.intention import Intention
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.photo import Photo
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import WEEDS, Sighting
from journal.record.kinds.soil import SoilTest
from journal.record.kinds.treatment import Treatment
from journal.record.kinds.watering import Watering
from journal.record.lawn import Lawn
from journal.season.growth import next_start, season
from journal.season.history import Past
from journal.season.remembered import remembered

STAND: tuple[type[Entry], ...] = (Seeding, Mowing, Sighting)
"""What this file looks at, apart from intentions and what settles them."""

TOP_UP_DAYS = 21
COUNTS_FROM_DAY = 21
"""Mowings count from this day after sowing."""
SEEDBED_DAYS = 56
NEW_GRASS_MOWINGS = 3
NEW_GRASS_MOST_DAYS = 365
"""Three mowings are not waited for longer than a year, in a book that keeps few of them: judgment."""
LAPSES_DAYS = 14
FLOWERING_DAYS = 21
WEEDS_DAYS = 400


@remembered
def sown(past: Past) -> Seeding | None:
    """The last sowing that made a new stand: not a spot, not a top-up.

    A top-up comes within 21 days of the sowing before it, with less than half its amount.
    """
    real: Seeding | None = None
    for seeding in _lately(past):
        if not _tops_up(seeding, real, past):
            real = seeding
    return real


def _lately(past: Past) -> tuple[Seeding, ...]:
    """The newest sowings, oldest first, back to one that can't be a top-up: nothing was sown shortly before it."""
    seen = past[Seeding]
    return seen.track.once(("lately", seen.end), lambda: _newest(seen.all))


def _newest(sowings: tuple[Seeding, ...]) -> tuple[Seeding, ...]:
    newest: list[Seeding] = []
    for seeding in reversed(sowings):
        if _is_spot(seeding):
            continue
        if newest and newest[-1].day - seeding.day >= TOP_UP_DAYS:
            break
        newest.append(seeding)
    return tuple(reversed(newest))


def _is_spot(seeding: Seeding) -> bool:
    return seeding.spot or seeding.spot_m2 is not None


def _tops_up(later: Seeding, earlier: Seeding | None, past: Past) -> bool:
    if earlier is None or later.day - earlier.day >= TOP_UP_DAYS:
        return False
    more, less = _rate(earlier, past), _rate(later, past)
    if (more is None or less is None) and earlier.zones == later.zones:
        more, less = earlier.amount_g, later.amount_g
    return more is not None and less is not None and less < more / 2


def _rate(seeding: Seeding, past: Past) -> float | None:
    """Grams on each square metre of its zones, by the areas known on its day."""
    if seeding.rate_g_per_m2 is not None or seeding.amount_g is None:
        return seeding.rate_g_per_m2
    area = past.history.lawn(seeding.date).area_m2(seeding.zones)
    return seeding.amount_g / area if area else None


def is_dormant(lawn: Lawn, seeding: Seeding) -> bool:
    """Whether the seed lies until spring: so marked, or sown between growth end and the next growth start."""
    window = season(lawn, seeding.date)
    return seeding.dormant or (window is not None and seeding.date < window[0])


def day_zero_of(lawn: Lawn, seeding: Seeding) -> date:
    """The day from which its days are counted: of a dormant sowing the next growth start, where that is known."""
    if not is_dormant(lawn, seeding):
        return seeding.date
    return next_start(lawn, seeding.date) or seeding.date


@remembered
def day_zero(past: Past) -> date | None:
    """Day 0 of the zone's stand; None when nothing was sown."""
    seeding = sown(past)
    return day_zero_of(past.lawn, seeding) if seeding else None


def age(past: Past) -> int | None:
    """Days since day 0: below 0 while a dormant sowing waits for spring, None when nothing was sown."""
    zero = day_zero(past)
    return None if zero is None else past.day - zero.toordinal()


@remembered
def mowings_counted(past: Past) -> int:
    """Days since sowing, from day 21 on, on which the zone was mown; 0 when nothing was sown."""
    zero = day_zero(past)
    if zero is None:
        return 0
    return len({mowing.day for mowing in past[Mowing].since(zero.toordinal() + COUNTS_FROM_DAY)})


@remembered
def first_mowing_after_sowing(past: Past) -> Mowing | None:
    """The first mowing that counts: on day 21 after sowing or later."""
    zero = day_zero(past)
    return None if zero is None else past[Mowing].first_since(zero.toordinal() + COUNTS_FROM_DAY)


@remembered
def in_seedbed(past: Past) -> bool:
    """From day 0 to the first mowing on or after day 21, at the latest through day 56."""
    days = age(past)
    return days is not None and 0 <= days <= SEEDBED_DAYS and first_mowing_after_sowing(past) is None


@remembered
def new_grass(past: Past) -> bool:
    """Through day 56, and until 3 mowings from day 21 on, whichever is later, for a year at the most.

    A service's mowings aren't waited for.
    """
    days = age(past)
    if days is None or not 0 <= days < NEW_GRASS_MOST_DAYS:
        return False
    if days <= SEEDBED_DAYS:
        return True
    zone = past.lawn.zone(past.zone)
    return (zone is None or zone.mowing == "self") and mowings_counted(past) < NEW_GRASS_MOWINGS


@dataclass(frozen=True, slots=True)
class Emergence:
    """The day the seedlings were up; `assumed` when nobody saw it and the slowest grass of the mix decides."""

    date: date
    assumed: bool


@remembered
def emerged_on(past: Past) -> Emergence | None:
    """When the last sowing came up; None when nothing was sown or it is not due yet."""
    seeding = sown(past)
    found = emergence(past, seeding) if seeding else None
    return found if found is not None and found.date <= past.date else None


def emergence(past: Past, seeding: Seeding) -> Emergence:
    """When that sowing came up: as seen, else by the slowest grass of its mix, be that still to come."""
    seen = next((s for s in past[Sighting].since(seeding.day) if s.subject == "emerged"), None)
    if seen is not None:
        return Emergence(seen.date, assumed=False)
    days = slowest_emergence_days(sown_mix(past.lawn, past.zone, seeding))
    return Emergence(day_zero_of(past.lawn, seeding) + timedelta(days), assumed=True)


def mix_of(lawn: Lawn, product: str) -> Mapping[str, float]:
    """Grass -> percent of a seed in the shed; empty when the product or its mix is not known."""
    found = lawn.product(product)
    return _by_grass(found.shares) if found else {}


def grass_mix(lawn: Lawn, zone: str) -> Mapping[str, float]:
    """The zone's grass as set up, in equal shares; empty when not said."""
    names = lawn.grass_of(zone)
    return _by_grass({name: 100 / len(names) for name in names})


def _by_grass(mix: Mapping[str, float]) -> dict[str, float]:
    """By the grasses' standard names; a word that no grass goes by counts as a grass not known."""
    total: dict[str, float] = {}
    for word, percent in mix.items():
        try:
            name = grass(word).name
        except UnknownGrass:
            name = UNKNOWN.name
        total[name] = total.get(name, 0.0) + percent
    return total


def sown_mix(lawn: Lawn, zone: str, seeding: Seeding) -> Mapping[str, float]:
    """The mix of one sowing, else the zone's grass."""
    return mix_of(lawn, seeding.product) or grass_mix(lawn, zone)


@remembered
def stand_mix(past: Past) -> Mapping[str, float]:
    """What grows there: the zone's grass as set up, else the mix sown last; empty when neither is known."""
    seeding = sown(past)
    return grass_mix(past.lawn, past.zone) or (mix_of(past.lawn, seeding.product) if seeding else {})


_SETTLED_BY: Mapping[str, type[Entry]] = {
    "seed": Seeding, "feed": Feeding, "treat": Treatment, "mow": Mowing, "water": Watering, "soil": SoilTest,
    "photo": Photo, "sharpen": Equipment,
    **dict.fromkeys(("aerate", "dethatch", "topdress", "rake"), Cultivation),
}  # fmt: skip


def settled_by(what: str) -> type[Entry]:
    """The kind of entry that settles an intention to do `what`; to be watched together with Intention."""
    return _SETTLED_BY[what]


def intentions(past: Past, what: str) -> tuple[Intention, ...]:
    """What is still meant to be done, the nearest first.

    One lapses 14 days after its date, or once the thing was logged less than 14 days from it, on either side (and not
    before it was written down).
    """
    kind = settled_by(what)
    done = [entry for entry in past[kind].within(4 * LAPSES_DAYS) if getattr(entry, "what", what) == what]
    standing = [
        one
        for one in (*past.lawnwide(Intention).all, *past[Intention].all)
        if one.what == what and one.target is not None and not _settled(one, one.target, done, past.date)
    ]
    return tuple(sorted(standing, key=lambda one: (one.target or one.date, one.id)))


def given_up(past: Past, what: str) -> date | None:
    """The newest day, up to the past's own, on which an intention lapsed that was never carried out; None if none."""
    done = [entry for entry in past[settled_by(what)].within(4 * LAPSES_DAYS) if getattr(entry, "what", what) == what]
    ends = [
        one.target + timedelta(LAPSES_DAYS)
        for one in (*past.lawnwide(Intention).all, *past[Intention].all)
        if one.what == what and one.target is not None and not _done(one, one.target, done)
    ]
    return max((day for day in ends if day <= past.date), default=None)


def _settled(one: Intention, target: date, done: list[Entry], today: date) -> bool:
    if today - target >= timedelta(LAPSES_DAYS):
        return True
    return _done(one, target, done)


def _done(one: Intention, target: date, done: list[Entry]) -> bool:
    return any(entry.day >= one.day and abs((entry.date - target).days) < LAPSES_DAYS for entry in done)


def weed_seen(past: Past, *subjects: str) -> Sighting | None:
    """The newest sighting of one of these weeds (of any, if none is named) in the last 400 days."""
    wanted = subjects or WEEDS
    seen = past[Sighting].last_where(lambda s: s.subject in wanted)
    return seen if seen is not None and past.day - seen.day < WEEDS_DAYS else None
