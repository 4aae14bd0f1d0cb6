"""Phosphorus without a reason for it."""

from datetime import timedelta

from journal.facts.citation import Basis
from journal.facts.local_rules import CHECK, Sowing
from journal.facts.sources import judgment, published
from journal.reckon.feedings import FEEDINGS
from journal.reckon.phosphate import PHOSPHATE, Phosphate, Reason, phosphates
from journal.reckon.starter import need_shown, soil_test_days
from journal.reckon.threshold import in_force
from journal.record.kinds.intention import Intention
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.soil import SoilTest
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import DEFAULT, LOCAL, YOURS, Numbers
from journal.rules.turns import after
from journal.rules.words import days, on
from journal.season.history import Past

STANDS_DAYS = 30
_SHARE = published("vermont-1266b", note="a fertilizer with more is a phosphorus fertilizer")


@rule(
    "phosphate-reason",
    levels=(Level.HARM, Level.NOTE),
    watches=(*PHOSPHATE, SoilTest),
    turns=(
        *(after(kind, STANDS_DAYS - 1) for kind in FEEDINGS),
        *(after(kind) for kind in (Seeding, Intention, SoilTest)),
    ),
    basis=(judgment("most lawn soils hold enough, and what is too much runs off", "mn-18c-60", "vermont-1266b"),),
)
def phosphate_reason(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """Phosphorus without a sowing near it, and without a soil test that shows the need."""
    found: dict[str, list[tuple[Level, Phosphate, Reason]]] = {}
    for one in phosphates(past, past.day - STANDS_DAYS + 1):
        judged = _level(past, one, n)
        if judged is not None:
            found.setdefault(one.product.name, []).append((judged[0], one, judged[1]))
    return tuple(_finding(past, rows, n) for rows in found.values())


def _level(past: Past, one: Phosphate, n: Numbers) -> tuple[Level, Reason] | None:
    if need_shown(past, one.entry.day):
        return None
    reason = Reason(past, one.entry.day, n.days("seeding-days"))
    if reason.binds and (tight := round(n.tightest("seeding-days"))) < n.days("seeding-days"):
        reason = Reason(past, one.entry.day, tight)
    if reason.holds:
        return None
    return (Level.HARM if one.known and reason.certain else Level.NOTE), reason


def _finding(past: Past, rows: list[tuple[Level, Phosphate, Reason]], n: Numbers) -> Finding:
    gravest = max(level.gravity for level, _, _ in rows)
    level, one, reason = [row for row in rows if row[0].gravity == gravest][-1]
    name, entry = one.product.name, one.entry
    clears_on = entry.date + timedelta(STANDS_DAYS)
    law = reason.law if reason.binds else None
    share = f"{one.product.analysis[1]:g} % phosphate" if one.product.analysis else "its analysis not entered"
    usual, local = soil_test_days(past.lawn)
    test_days = local if law is not None else usual
    own = ("soil-test-stale", "days") in past.lawn.numbers
    n.tell("soil-test", test_days, "d", LOCAL if local != usual else YOURS if own else DEFAULT, _SHARE)
    n.tell("phosphate", in_force(past.lawn, "starter-missing", "phosphate"), "%", DEFAULT, _SHARE)
    place = "" if law is None else "your local rule" if reason.own else law.place
    return Finding(
        level=level,
        subject=name,
        headline=f"{name} brings phosphorus without a reason",
        why=f"put down {on(entry.date, past)}, {share}; {_lacking(place, reason, n)}",
        do=(
            "have the soil tested, and take a product without phosphorus meanwhile; sweep up what lies on paving"
            + (f". {CHECK}" if place else "")
        ),
        clears=f"a soil test that shows the need (soil p low), a sowing near that day, or {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=tuple(row.entry.id for _, row, _ in rows),
        basis=_bases(reason),
    )


def _lacking(place: str, reason: Reason, n: Numbers) -> str:
    within = days(n.days("seeding-days"))
    if not place:
        return f"nothing sown within {within} of it, and no soil test on file that calls it low or very low"
    if reason.sown and reason.sowing is not Sowing.ANY:
        wording = {
            Sowing.NONE: "names no sowing as a reason",
            Sowing.NEW: "names only a new lawn as a reason, not overseeding",
        }.get(reason.sowing, "may not take overseeding for a reason")
        doubt = "" if reason.certain else " as far as was read"
        return f"{place} {wording}{doubt}, and no soil test on file calls it low or very low"
    return f"{place} wants a soil test that shows the need, or a sowing; neither is on file near that day"


def _bases(reason: Reason) -> tuple[Basis, ...]:
    if reason.law is None or not reason.binds:
        return ()
    return tuple(one.basis for one in (reason.law.phosphorus, reason.law.sowing) if one is not None)
