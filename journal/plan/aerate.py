"""Opening the soil before seed goes down."""

from datetime import date, timedelta

from journal.plan.declare import step
from journal.plan.measure import height
from journal.plan.offer import Offer
from journal.plan.seed import seed
from journal.plan.stage import STAGE, new_stand, said
from journal.plan.step import State
from journal.reckon.residue import RESIDUES
from journal.reckon.seed_opened import opened_before
from journal.record.day import MonthDay
from journal.record.kinds.cultivation import Cultivation
from journal.record.kinds.intention import Intention
from journal.record.kinds.soil import SoilTest
from journal.season.growth import in_season, month_here, northern_day, season
from journal.season.history import Past
from journal.season.stand import intentions

BEFORE_DAYS = 7
"""Cores are pulled on the day of sowing or in the week before: common practice, no source."""

PASSES = 3
"""2 to 4 are printed before overseeding: K-State Horticulture Newsletter, Fall Lawn Seeding Tips, 2016."""

LOW_CUT_MM = 38.1
"""1 to 1.5 in are printed: K-State Extension, Renovating fescue lawns, Chanute Tribune; Nebraska has 2.5 to 3."""

HEAT = MonthDay(6, 1), MonthDay(8, 31)
"""No cores in summer heat: Univ. of Idaho Extension, Thatch Removal/Management, 2012. Maryland's calendar has them from
mid-August."""

_CORES = (
    "2 to 4 passes; first flag sprinkler heads, shallow cables and the pet fence; "
    "moist soil, not sodden: water 1 to 2 d before"
)
_RAKE = "scratch the soil open with a rake, or slit the seed in"


@step("aerate", watches=(*STAGE, *RESIDUES, Intention, SoilTest, Cultivation))
def aerate(past: Past) -> Offer | None:
    """Cores, or a raking where it is too hot or too cold for cores, on the day of sowing or in the week before."""
    sowing = seed.find(past)
    if sowing is None or sowing.state in (State.MISSED, State.BARRED):
        return None
    if sowing.state is State.DONE:
        stand = new_stand(past)
        return _done(past, opened_before(past, stand.seeding.date)) if stand else None
    if sowing.earliest is None:
        return None
    aimed = sowing.meant or (sowing.best[0] if sowing.best else sowing.earliest)
    day = max(aimed, sowing.earliest, past.date)
    opened = opened_before(past, day)
    if opened is not None:
        return _done(past, opened)
    opens = _opens(past, max(aimed, sowing.earliest))
    rake = bool(sowing.tail) or _too_hot(past, max(opens, past.date))
    waits = past.date < opens
    plans = intentions(past, "aerate")
    return Offer(
        state=State.WAITING if waits else State.OPEN,
        earliest=opens,
        best=(opens, day),
        latest=day if past.date <= aimed else sowing.latest,
        title="rake" if rake else "aerate",
        why=_why(past, day, rake=rake, dormant=bool(sowing.tail), held=waits and opens > day - timedelta(BEFORE_DAYS)),
        waits_for=f"opens {said(opens, past)}" if waits else "",
        amount=(_low_cut(past, sowing) if not sowing.tail else "") + (_RAKE if rake else _CORES),
        verb="rake" if rake else f"aerate {PASSES}x",
        meant=plans[0].target if plans else None,
    )


def _opens(past: Past, day: date) -> date:
    """A week before the sowing; not in the heat where cooler days come in time."""
    opens = day - timedelta(BEFORE_DAYS)
    window = season(past.lawn, day)
    if window is None or not _too_hot(past, opens) or _too_hot(past, day):
        return opens
    return in_season(past.lawn, window, HEAT[1].shifted(1))


def _low_cut(past: Past, sowing: Offer) -> str:
    """Only before a sowing that is meant: a low cut for nothing would be one too low."""
    return f"cut low before, to about {height(LOW_CUT_MM, past.lawn)}; " if sowing.meant is not None else ""


def _too_hot(past: Past, day: date) -> bool:
    return HEAT[0] <= northern_day(past.lawn, day) <= HEAT[1]


def _why(past: Past, day: date, *, rake: bool, dormant: bool, held: bool) -> str:
    text = "for the sowing" if day == past.date else f"for the sowing of {said(day, past)}, 0 to {BEFORE_DAYS} d before"
    if dormant:
        return f"{text}; no cores while nothing grows"
    hot = (month_here(past.lawn, month) for month in ("June", "August"))
    return f"{text}; no cores from {' to '.join(hot)}" if rake or held else text


def _done(past: Past, opened: Cultivation | None) -> Offer | None:
    if opened is None:
        return None
    did = {"aerate": "aerated", "dethatch": "dethatched", "topdress": "topdressed"}.get(opened.what, "raked")
    return Offer(state=State.DONE, earliest=opened.date, why=f"{did} {said(opened.date, past)}")
