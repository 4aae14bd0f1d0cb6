"""History on one date, judged: the one immutable value that every page and command shows."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from datetime import date
from types import MappingProxyType

from journal.plan.step import Step
from journal.plan.steps import steps
from journal.reckon.feedings import nitrogen_of_year, year_cap
from journal.record.entry import Entry
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.setting import Setting
from journal.record.lawn import Lawn
from journal.rules.catalogue import rules
from journal.rules.declare import Rule
from journal.rules.flag import Flag, Level
from journal.rules.hiding import hidden
from journal.rules.judge import flag_id, flags_of
from journal.rules.precedence import settled
from journal.season.growth import dormant_open, growing
from journal.season.history import History, Past
from journal.season.stand import age, in_seedbed, new_grass, sown
from journal.season.water import depth_mm

NEWEST = "\U0010ffff"
"""The id of a draft while it is judged: it was written after everything else on its day."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ZoneFacts:
    """One zone in figures on one date. Metric; None where not known. Nitrogen is the calendar year's so far.

    `stage` is `sown dormant`, `seedbed`, `new grass`, `dormant`, `growing` or `at rest`.
    """

    zone: str
    area_m2: float | None
    cut_mm: float | None
    cut_on: date | None
    mown_days_ago: int | None
    n_g_per_m2: float
    n_cap_g_per_m2: float
    water_mm_7d: float | None
    sown_on: date | None
    growing: bool
    stage: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Standing:
    """Flags gravest first; steps by what is lost by waiting; facts zone by zone.

    `flags` and `hidden` say once what holds for several zones, `by_zone` has every flag of every zone, hidden ones
    too. `counts` leaves out what is hidden.
    """

    as_of: date
    history: History
    lawn: Lawn
    flags: tuple[Flag, ...]
    hidden: tuple[Flag, ...]
    by_zone: tuple[Flag, ...]
    steps: tuple[Step, ...]
    zones: tuple[ZoneFacts, ...]
    counts: Mapping[Level, int]


@dataclass(frozen=True, slots=True)
class Preflight:
    """What a draft would raise and clear, gravest first; nothing is saved."""

    raised: tuple[Flag, ...] = ()
    cleared: tuple[Flag, ...] = ()

    @property
    def gravest(self) -> Flag | None:
        """The flag that matters most, or None."""
        return self.raised[0] if self.raised else None

    @property
    def holds_back(self) -> bool:
        """Whether the line must end in `!` to be saved."""
        return any(flag.level is Level.HARM for flag in self.raised)


def standing(history: History, as_of: date) -> Standing:
    """Everything that stands on that day. What is dated later changes nothing."""
    lawn = history.lawn(as_of)
    found = findings(history, as_of)
    shown = _gathered((flag for flag in found if not flag.hidden), lawn)
    return Standing(
        as_of=as_of,
        history=history,
        lawn=lawn,
        flags=shown,
        hidden=_gathered((flag for flag in found if flag.hidden), lawn),
        by_zone=found,
        steps=steps(history, as_of),
        zones=tuple(zone_facts(history.on(zone, as_of)) for zone in lawn.zone_names),
        counts=MappingProxyType({level: sum(flag.level is level for flag in shown) for level in Level}),
    )


def findings(history: History, as_of: date) -> tuple[Flag, ...]:
    """Every flag of every zone on that day, each for one zone, hidden ones too, after precedence."""
    return _judged(history, as_of, rules(), history.lawn(as_of).zone_names)


def _judged(history: History, day: date, among: Iterable[Rule], zones: Iterable[str]) -> tuple[Flag, ...]:
    among = tuple(among)
    found: list[Flag] = []
    for zone in zones:
        past = history.on(zone, day)
        flags = settled(flag for rule in among for flag in flags_of(rule, past))
        found += (hidden(flag, past) for flag in flags)
    return tuple(found)


def _gathered(flags: Iterable[Flag], lawn: Lawn) -> tuple[Flag, ...]:
    """Zones of which the same is said share one flag; gravest first, then the oldest."""
    groups: dict[tuple[object, ...], list[Flag]] = {}
    for flag in flags:
        said = (flag.rule, flag.subject, flag.level, flag.headline, flag.why, flag.do, flag.clears_on, flag.hidden)
        groups.setdefault(said, []).append(flag)
    return tuple(sorted((_one(group, lawn) for group in groups.values()), key=_order))


def _one(group: list[Flag], lawn: Lawn) -> Flag:
    named = {zone for flag in group for zone in flag.zones}
    zones = tuple(zone for zone in lawn.zone_names if zone in named)
    evidence = tuple(dict.fromkeys(id for flag in group for id in flag.evidence))
    rose = min(flag.rose for flag in group)
    first = group[0]
    return replace(first, id=flag_id(first.rule, zones, first.subject), zones=zones, rose=rose, evidence=evidence)


def _order(flag: Flag) -> tuple[int, date, str]:
    return -flag.level.gravity, flag.rose, flag.id


def zone_facts(past: Past) -> ZoneFacts:
    """The figures of one zone on one day."""
    zone, last, seeding = past.lawn.zone(past.zone), past[Mowing].last, sown(past)
    return ZoneFacts(
        zone=past.zone,
        area_m2=zone.area_m2 if zone else None,
        cut_mm=last.height_mm if last else None,
        cut_on=last.date if last else None,
        mown_days_ago=past.day - last.day if last else None,
        n_g_per_m2=nitrogen_of_year(past, past.date.year),
        n_cap_g_per_m2=year_cap(past),
        water_mm_7d=depth_mm(past, past.day - 6, past.day),
        sown_on=seeding.date if seeding else None,
        growing=growing(past),
        stage=_stage(past),
    )


def _stage(past: Past) -> str:
    days = age(past)
    if days is not None and days < 0:
        return "sown dormant"
    if in_seedbed(past):
        return "seedbed"
    if dormant_open(past):
        return "dormant"
    if new_grass(past):
        return "new grass"
    return "growing" if growing(past) else "at rest"


def preflight(history: History, draft: Entry, today: date, before: Standing | None = None) -> Preflight:
    """What saving the draft would change, judged today or on the draft's own later day.

    `before` is what stands on that day, where that is known already. A flag that stood is raised again where the
    draft is part of what it rests on.
    """
    day = max(today, draft.date)
    written = replace(draft, id=NEWEST)
    then = history.plus(written)
    found = _compared(history, then, day, (written,), before)
    return _with_harm_of(draft.date, day, history, then, (written,), found)


def preflight_change(history: History, old: Entry, new: Entry, today: date) -> Preflight:
    """What putting `new` in the place of `old` would change."""
    day = max(today, new.date)
    then = history.minus(old).plus(new)
    found = _compared(history, then, day, (old, new), None)
    return _with_harm_of(new.date, day, history, then, (old, new), found)


def _with_harm_of(
    own: date, day: date, history: History, then: History, entries: tuple[Entry, ...], found: Preflight
) -> Preflight:
    """With the harm that a back-dated entry did on its own day, be it over by now."""
    if own >= day:
        return found
    said = {(flag.rule, flag.subject) for flag in found.raised}
    past = _compared(history, then, own, entries, None)
    done = [f for f in past.raised if f.level is Level.HARM and (f.rule, f.subject) not in said]
    return Preflight(tuple(sorted((*found.raised, *done), key=_order)), found.cleared) if done else found


def _compared(
    history: History, then: History, day: date, entries: tuple[Entry, ...], before: Standing | None
) -> Preflight:
    local, wide = _concerned(entries) if history.kept_since == then.kept_since else ([], list(rules()))
    zones = _zones(then.lawn(day), entries)
    everywhere = then.lawn(day).zone_names
    stood = _standing_now(history, day, local, wide, zones, before)
    stands = (*_judged(then, day, local, zones), *_judged(then, day, wide, everywhere))
    was = {(flag.rule, flag.zones[0], flag.subject, flag.level): flag for flag in stood}
    ids = {entry.id for entry in entries}

    def rises(flag: Flag) -> bool:
        """Whether it did not stand, or rests on the draft, or is harm that says something else of a changed entry."""
        held = was.get((flag.rule, flag.zones[0], flag.subject, flag.level))
        if held is None or NEWEST in flag.evidence:
            return True
        said, says = ((f.evidence, f.headline, f.why) for f in (held, flag))
        return flag.level is Level.HARM and bool(ids & set(flag.evidence)) and said != says

    raised = [
        replace(flag, hidden="") for flag in stands if (not flag.hidden or flag.level is Level.HARM) and rises(flag)
    ]
    left = {(flag.rule, flag.zones[0], flag.subject) for flag in stands}
    cleared = [flag for flag in stood if not flag.hidden and (flag.rule, flag.zones[0], flag.subject) not in left]
    lawn = then.lawn(day)
    return Preflight(
        tuple(_as_draft(flag) for flag in _gathered(raised, lawn)),
        _gathered(cleared, lawn),
    )


def _concerned(entries: tuple[Entry, ...]) -> tuple[list[Rule], list[Rule]]:
    """The rules that look at entries of these kinds: those of one zone, and those of the whole lawn.

    Where the book is kept from another day than before, all are concerned: what was not logged counts from there.
    """
    if any(isinstance(entry, Setting) for entry in entries):
        return [], list(rules())
    kinds = {entry.kind for entry in entries}
    found = [rule for rule in rules() if rule.watches & kinds]
    return [r for r in found if not r.whole_lawn], [r for r in found if r.whole_lawn]


def _zones(lawn: Lawn, entries: tuple[Entry, ...]) -> tuple[str, ...]:
    """The zones that the entries name; all where one names none."""
    if any(not entry.zones for entry in entries):
        return lawn.zone_names
    named = {zone for entry in entries for zone in entry.zones}
    return tuple(zone for zone in lawn.zone_names if zone in named)


def _standing_now(
    history: History, day: date, local: list[Rule], wide: list[Rule], zones: tuple[str, ...], before: Standing | None
) -> tuple[Flag, ...]:
    """What stands already of these rules, zone by zone."""
    everywhere = history.lawn(day).zone_names
    if before is None or before.history is not history or before.as_of != day:
        here = tuple(zone for zone in zones if zone in everywhere)
        return (*_judged(history, day, local, here), *_judged(history, day, wide, everywhere))
    ids = {rule.id for rule in local}, {rule.id for rule in wide}
    return tuple(
        flag for flag in before.by_zone if flag.rule in ids[1] or (flag.rule in ids[0] and flag.zones[0] in zones)
    )


def _as_draft(flag: Flag) -> Flag:
    return replace(flag, evidence=tuple("" if id == NEWEST else id for id in flag.evidence))
