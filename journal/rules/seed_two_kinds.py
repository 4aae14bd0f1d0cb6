"""Two kinds of seed side by side."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from journal.facts.citation import practice
from journal.facts.mixture import overlap_percent, same_seed
from journal.facts.sources import published
from journal.reckon.dose import is_spot
from journal.reckon.threshold import in_force
from journal.record.kinds.seeding import Seeding
from journal.record.zone import Zone
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after
from journal.rules.words import blend
from journal.season.history import Past
from journal.season.stand import mix_of


@dataclass(frozen=True, slots=True)
class _Run:
    """The seed that a zone was sown with last, and every sowing of it since another was sown; newest last."""

    zone: Zone
    product: str
    mix: Mapping[str, float]
    sowings: tuple[Seeding, ...]

    @property
    def years(self) -> frozenset[int]:
        return frozenset(seeding.date.year for seeding in self.sowings)

    @property
    def newest(self) -> tuple[int, str, str]:
        return self.sowings[-1].day, self.sowings[-1].id, self.zone.name


@rule(
    "seed-two-kinds",
    levels=(Level.NOTE,),
    watches=(Seeding,),
    turns=(after(Seeding),),
    basis=(
        practice("one seed for all that is seen at once"),
        published("ask-877015", "premium-blend", note="another leaf, colour or green-up shows as patches"),
    ),
    whole_lawn=True,
)
def seed_two_kinds(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """Two zones in view of each other were sown with different seed in one year."""
    here = _run(past)
    if here is None or here.zone.out_of_view:
        return ()
    return tuple(_finding(past, here, other, n) for other in _others(past, here, n))


def _others(past: Past, here: _Run, n: Numbers) -> Iterator[_Run]:
    """The zones sown before this one that do not match it: what was sown last is what differs."""
    for zone in past.lawn.zones:
        if zone.name == past.zone or zone.out_of_view or zone.sun != here.zone.sun:
            continue
        other = _run(past.elsewhere(zone.name))
        if other is None or other.newest > here.newest or not here.years & other.years:
            continue
        if not (other.mix and here.mix) or _same(past, other.mix, here.mix):
            continue
        if min(len(other.years), len(here.years)) < n["sowings"]:
            yield other


def _run(past: Past) -> _Run | None:
    """None for a zone that was never sown as a whole."""
    zone, found = past.lawn.zone(past.zone), past[Seeding]
    if zone is None or not found:
        return None
    sowings: list[Seeding] = []
    mix: Mapping[str, float] = {}
    for seeding in reversed(found.all):
        if is_spot(seeding):
            continue
        its = mix_of(past.history.lawn(seeding.date), seeding.product)
        if sowings and seeding.product != sowings[0].product and not _same(past, mix, its):
            break
        mix = mix or its
        sowings.append(seeding)
    return _Run(zone, sowings[0].product, mix, tuple(reversed(sowings))) if sowings else None


def _same(past: Past, one: Mapping[str, float], other: Mapping[str, float]) -> bool:
    return same_seed(one, other, in_force(past.lawn, "seed-switch", "points"))


def _finding(past: Past, here: _Run, other: _Run, n: Numbers) -> Finding:
    year = max(here.years & other.years)
    return Finding(
        level=Level.NOTE,
        subject=other.zone.name,
        headline=f"{past.zone} and {other.zone.name} were sown with different seed",
        why=(
            f"in {year}, {past.zone}: {here.product}, {blend(here.mix)}; {other.zone.name}: {other.product}, "
            f"{blend(other.mix)}; {overlap_percent(here.mix, other.mix):.0f} % in common"
        ),
        do="sow one of them on both from now on; where they are not seen together, set out_of_view on one",
        clears=f"one seed on both, each its own in {n['sowings']:.0f} years, or set aside",
        evidence=(here.sowings[-1].id, other.sowings[-1].id),
        numbers=("sowings",),
    )
