"""Products that work in the soil and still lie on top."""

from collections.abc import Sequence
from datetime import timedelta

from journal.facts.safety import BASIS as LABEL_LAW
from journal.facts.sources import published
from journal.reckon.reentry import trod
from journal.reckon.threshold import in_force
from journal.reckon.uses import Use
from journal.reckon.watering_in import (
    AFTER_USE,
    LONGEST_DAYS,
    Watered,
    WaterIn,
    used_within,
    water_in,
    watered,
    watered_from,
)
from journal.record.kinds.sighting import Sighting
from journal.record.kinds.watering import Watering
from journal.record.lawn import Lawn
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import DEFAULT, LABEL, Numbers, in_words
from journal.rules.turns import after
from journal.rules.use_days import each_day_after_use
from journal.rules.words import on
from journal.season.history import Past
from journal.season.hours import Within, days_of
from journal.season.water import water_on_file

ON_FILE_DAYS = 14
_GRAVEST = (Level.NOTE, Level.LATE, Level.HARM)


def _follows(use: Use, lawn: Lawn) -> int:
    return -1 if water_in(use, lawn) is None else LONGEST_DAYS


@rule(
    "water-in-missing",
    levels=(Level.HARM, Level.LATE, Level.NOTE),
    watches=(*AFTER_USE, Sighting),
    turns=(*each_day_after_use(_follows, LONGEST_DAYS), after(Sighting)),
    basis=(LABEL_LAW, published("label-40896", "illinois-220")),
)
def water_in_missing(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """Too little water, since it was put down, for what has to be watered in."""
    if not (recent := used_within(past, LONGEST_DAYS)):
        return ()
    found: dict[str, tuple[Level, Use, WaterIn, Watered]] = {}
    for use in recent:
        wanted = water_in(use, past.lawn)
        if wanted is None or past.day <= _start(use, past.lawn) + _note_days(past.lawn):
            continue
        had = watered(past, use, wanted.depth_mm)
        if had.enough is not None or had.timer or (use.spot and _spot_watered(past, use)):
            continue
        level = _level(past, use, had)
        held = found.get(use.name)
        if held is None or _GRAVEST.index(held[0]) <= _GRAVEST.index(level):
            found[use.name] = level, use, wanted, had
    if not found or not water_on_file(past, ON_FILE_DAYS):
        return ()
    return tuple(_finding(past, *row, n) for row in found.values())


def _start(use: Use, lawn: Lawn) -> int:
    return watered_from(use, lawn).toordinal()


def _note_days(lawn: Lawn) -> int:
    return round(in_force(lawn, "water-in-missing", "note-days"))


def _late_name(use: Use) -> str:
    return "late-days-insect" if use.kind == "insect" else "late-days-barrier"


def _late_days(use: Use, lawn: Lawn) -> int:
    """Days after which it is late: by the label's deadline, else by kind."""
    minutes = use.label.water_in_within_min
    if minutes is not None:
        return days_of(minutes / 60)
    return round(in_force(lawn, "water-in-missing", _late_name(use)))


def _spot_watered(past: Past, use: Use) -> bool:
    """Whether a spot was watered since: how deep is not asked."""
    return any(one.spot or one.spot_m2 is not None for one in past[Watering].since(use.day))


def _level(past: Past, use: Use, had: Watered) -> Level:
    if use.spot or had.unmeasured is not None:
        return Level.NOTE
    if not use.spray and _trodden(past, use):
        return Level.HARM
    return Level.LATE if past.day > _start(use, past.lawn) + _late_days(use, past.lawn) else Level.NOTE


def _trodden(past: Past, use: Use) -> bool:
    """Whether anybody was seen on the granules since, and not before they were watered in."""
    seen = (one for one in past[Sighting].since(use.day) if one.subject == "traffic")
    return any(trod(past.history.on(past.zone, one.date, past.watches), use, one) is Within.YES for one in seen)


def _finding(past: Past, level: Level, use: Use, wanted: WaterIn, had: Watered, n: Numbers) -> Finding:
    units = past.lawn.units
    if wanted.by == "kind":
        n.stricter("depth")
    else:
        n.tell("depth", wanted.depth_mm, "mm", LABEL if wanted.by == "label" else DEFAULT, wanted.basis)
    minutes = use.label.water_in_within_min
    late = _late_name(use)
    n.stricter(late, of_label=None if minutes is None else minutes / 1440)
    depth = in_words(wanted.depth_mm, "mm", units)
    by = "by the label" if wanted.by == "label" else "label not entered"
    so_far = (
        f"{in_words(had.depth_mm, 'mm', units)} of water since" if had.depth_mm else "no water of known depth since"
    )
    clears_on = use.date + timedelta(LONGEST_DAYS)
    return Finding(
        level=level,
        subject=use.name,
        headline=f"{use.name} not watered in" if level is not Level.HARM else f"{use.name} not watered in, walked on",
        why=(
            f"{use.name}{' on a spot' if use.spot else ''} {on(use.date, past)}, {so_far}; {depth} takes it in, {by}"
            + ("; a watering is on file without its depth" if had.unmeasured is not None else "")
        ),
        do=_do(level, depth, had, by_label=wanted.by == "label"),
        clears=f"{depth} of water in all, or {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=(use.entry.id, *_walked(past, use, level)),
        numbers=("depth", late),
    )


def _do(level: Level, depth: str, had: Watered, *, by_label: bool) -> str:
    if had.unmeasured is not None:
        return "write down how deep it was watered, or enter the zone's water rate"
    keep = "keep people and pets off, " if level is Level.HARM else ""
    says = "as its label says" if by_label else "or what its label says"
    return f"{keep}water {depth} in all, {says}, and log it"


def _walked(past: Past, use: Use, level: Level) -> Sequence[str]:
    if level is not Level.HARM:
        return ()
    return tuple(one.id for one in past[Sighting].since(use.day) if one.subject == "traffic")
