"""Sowing: when, with what, and what in the soil forbids it.

The step is offered where the owner intends to sow (`intend seed ...`), and on a zone that was never sown in this book
while no renovation is on file and the shed holds seed. An established zone is left alone in autumn.
"""

import math
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, timedelta

from journal.plan.declare import step
from journal.plan.offer import Offer, Spread
from journal.plan.stage import STAGE, new_stand, said
from journal.plan.step import State
from journal.reckon.feedings import last_feeding
from journal.reckon.residue import RESIDUES, Residue, residues
from journal.reckon.seed_season import LATE_SPRING, LATE_SUMMER, SUMMER, growth_wanted, slower
from journal.reckon.seeding import sowing_rate
from journal.reckon.starter import is_plain_starter, phosphorus_barred
from journal.reckon.threshold import in_force
from journal.record.kinds.intention import Intention
from journal.record.kinds.soil import SoilTest
from journal.record.product import Product
from journal.season.growth import in_season, month_here, season, season_before
from journal.season.history import Past
from journal.season.stand import grass_mix, intentions, mix_of, sown

BEST_FROM = 87
"""Days before growth ends from which on it is late summer: with growth to 10 November, 15 August."""

EARLY_DAYS = 56
"""A sowing so long before the day it was meant for still is the one that was meant: judgment."""

LAST_OF_SPRING = LATE_SPRING.shifted(-1)


@dataclass(frozen=True, slots=True)
class _Season:
    """When to sow: first day, best days, last day, and a word for the line (`dormant`) or none."""

    earliest: date
    best: tuple[date, date]
    latest: date
    tail: str = ""


@step("seed", watches=(*STAGE, *RESIDUES, Intention, SoilTest))
def seed(past: Past) -> Offer | None:
    """The same seed as before, in late summer, once nothing in the soil forbids it."""
    meant = next((one for one in intentions(past, "seed") if not _sown_early(past, one)), None)
    stand = new_stand(past)
    if meant is None and stand is not None and stand.is_news:
        return Offer(
            state=State.DONE, earliest=stand.seeding.date,
            why=f"sown {said(stand.seeding.date, past)}: {stand.seeding.product}",
        )  # fmt: skip
    if meant is None and not _never_sown(past):
        return None
    product = _product(past, meant)
    mix = mix_of(past.lawn, product.name) if product else grass_mix(past.lawn, past.zone)
    window = _window(past, meant.target if meant else None, mix)
    if window is None:
        return None
    return _offer(past, meant, product, mix, window)


def _sown_early(past: Past, meant: Intention) -> bool:
    """Whether what was meant was done well before its day."""
    last = sown(past)
    return (
        last is not None
        and meant.target is not None
        and meant.date <= last.date
        and timedelta(0) <= meant.target - last.date <= timedelta(EARLY_DAYS)
    )


def _never_sown(past: Past) -> bool:
    return (
        sown(past) is None
        and past.lawn.renovated is None
        and any(product.kind == "seed" for product in past.lawn.products)
    )


def _offer(past: Past, meant: Intention | None, product: Product | None, mix: Mapping[str, float], w: _Season) -> Offer:
    holds = [r for r in residues(past, mix) if r.over > max(past.date, w.earliest)]
    residue = holds[-1] if holds else None
    earliest = max(w.earliest, residue.over) if residue else w.earliest
    state, waits_for = _state(past, w, residue)
    fed = _fed_before(past, w) if state is State.OPEN else None
    if fed is not None:
        earliest = fed[1]
        state, waits_for = State.WAITING, f"fed {said(fed[0], past)}: seed from {said(earliest, past)}, with a starter"
    shut = state in (State.BARRED, State.MISSED)
    spread = None if shut else _spread(product, mix)
    return Offer(
        state=state,
        earliest=earliest,
        best=(max(earliest, w.best[0]), w.best[1]) if earliest <= w.best[1] else None,
        latest=w.latest,
        why=_why(past, meant, w, state),
        waits_for=waits_for,
        amount="" if spread or shut else _wanted(product),
        verb=f"seed {product.name}" if product and spread else "",
        tail=w.tail,
        spread=spread,
        meant=meant.target if meant else None,
    )


def _fed_before(past: Past, w: _Season) -> tuple[date, date] | None:
    """The day of a feeding that is no starter and so near that sowing now makes it wrong, and the first day after that.

    None where there is none, or where the season is over by then: sowing in time is worth more.
    """
    fed = last_feeding(past)
    if fed is None or fed.starter or w.tail or (phosphorus_barred(past, fed.day) and is_plain_starter(past, fed)):
        return None
    over = fed.date + timedelta(math.ceil(in_force(past.lawn, "starter-wrong", "before-days")) + 1)
    return (fed.date, over) if past.date < over <= w.latest else None


def _state(past: Past, w: _Season, residue: Residue | None) -> tuple[State, str]:
    if past.date > w.latest:
        return State.MISSED, ""
    if residue is not None:
        entry = f"{residue.product} of {said(residue.entry.date, past)}"
        if residue.over > w.latest:
            return State.BARRED, f"{entry} keeps seed out to {said(residue.over, past)}, past the last day to sow"
        return State.WAITING, f"{entry} keeps seed out to {said(residue.over, past)}"
    if past.date < w.earliest:
        return State.WAITING, f"opens {said(w.earliest, past)}"
    return State.OPEN, ""


def _why(past: Past, meant: Intention | None, w: _Season, state: State) -> str:
    last = f"last day {said(w.latest, past)}"
    if state is State.MISSED:
        august = month_here(past.lawn, "August")
        return f"too little growth left since {said(w.latest, past)}: wait for the dormant time or next {august}"
    text = f"best to {said(w.best[1], past)}, {last}" if past.date <= w.best[1] else f"the best days are over, {last}"
    if meant is not None and meant.target is not None:
        if meant.target > w.latest:
            return f"meant for {said(meant.target, past)}: too late, {last}"
        text = f"meant for {said(meant.target, past)}; {text}"
    return text


def _wanted(product: Product | None) -> str:
    if product is None:
        return "seed like what grows there, none in the shed"
    return f"{product.name}, as its label says for overseeding"


def _product(past: Past, meant: Intention | None) -> Product | None:
    """What was meant, else the same seed as last time, else what matches the zone's grass best, else the only one."""
    lawn = past.lawn
    last = sown(past)
    for name in (meant.product if meant else "", last.product if last else ""):
        found = lawn.product(name) if name else None
        if found is not None:
            return found
    seeds = [product for product in lawn.products if product.kind == "seed"]
    here = set(grass_mix(lawn, past.zone))
    alike = [product for product in seeds if set(mix_of(lawn, product.name)) == here]
    return next(iter(alike or seeds), None)


def _spread(product: Product | None, mix: Mapping[str, float]) -> Spread | None:
    rate = sowing_rate(product, mix) if product else None
    if product is None or rate is None:
        return None
    return Spread(product, rate.g_per_m2, "label" if rate.by_label else "overseeding")


def _window(past: Past, target: date | None, mix: Mapping[str, float]) -> _Season | None:
    """The days for sowing: spring or the dormant time when the owner means them, else late summer."""
    lawn = past.lawn
    growth = season(lawn, target or past.date)
    if growth is None:
        return None if target is None else _Season(target, (target, target), target + timedelta(13))
    if target is not None and target < growth[0]:
        before = season_before(lawn, target)
        first = before[1] + timedelta(1) if before else target
        return _Season(first, (target, target), growth[0] - timedelta(1), "dormant")
    if target is not None and target < in_season(lawn, growth, SUMMER[0]):
        last = in_season(lawn, growth, LAST_OF_SPRING)
        return _Season(growth[0], (min(target, last), min(target + timedelta(7), last)), last)
    end, good = growth[1], timedelta(growth_wanted(lawn, mix, "note-days"))
    opens = max(end - timedelta(BEST_FROM + slower(lawn, mix)), in_season(lawn, growth, LATE_SUMMER))
    least = timedelta(growth_wanted(lawn, mix, "loss-days"))
    return _Season(opens, (opens, max(opens, end - good)), end - least)
