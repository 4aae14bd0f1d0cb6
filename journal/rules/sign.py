"""Signs that a local rule asks for around a treatment."""

from datetime import timedelta

from journal.facts.citation import local_rule
from journal.facts.sources import published
from journal.reckon.protection import PROTECTED
from journal.reckon.signs import DOWN, LONGEST_DAYS, SIGNS, Sign, sign_wanted, taken_down_early
from journal.reckon.uses import Use
from journal.record.kinds.sighting import Sighting
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import LOCAL, Numbers
from journal.rules.turns import after
from journal.rules.words import on
from journal.season.history import Past
from journal.season.hours import Within

STANDS_DAYS = 7


@rule(
    "sign",
    levels=(Level.HARM, Level.NOTE),
    watches=SIGNS,
    turns=(
        *(after(kind, *range(LONGEST_DAYS + 1)) for kind in PROTECTED),
        after(Sighting, STANDS_DAYS - 1),
    ),
    basis=(local_rule("as you entered it"), published("erie-signs", "montgomery-signs", note="24 to 48 h are asked")),
)
def sign(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """A sign that the local rule asks for is not on file, or came down too early."""
    found: list[Finding] = []
    for down in past[Sighting].within(STANDS_DAYS):
        early = taken_down_early(past, down) if down.subject == DOWN else None
        if early is not None:
            found = [_early(past, down, *early, n)]
    wanted = sign_wanted(past)
    if wanted is not None and wanted.up is None:
        found.append(_missing(past, wanted, n))
    return tuple(found)


def _missing(past: Past, wanted: Sign, n: Numbers) -> Finding:
    _tell(n, wanted.hours)
    return Finding(
        level=Level.NOTE,
        subject="up",
        headline="no sign on file for the treatment",
        why=(
            f"{wanted.use.name} {on(wanted.use.date, past)}; your local rule asks for a sign, up before it and for "
            f"{wanted.hours:g} h after"
        ),
        do="put it up now if it is not there, and log `see sign`",
        clears=f"`see sign`, or {on(wanted.down_from, past)}",
        clears_on=wanted.down_from,
        evidence=(wanted.use.entry.id,),
    )


def _early(past: Past, down: Sighting, use: Use, hours: float, how: Within, n: Numbers) -> Finding:
    _tell(n, hours)
    clears_on = down.date + timedelta(STANDS_DAYS)
    unsure = how is Within.PERHAPS
    return Finding(
        level=Level.NOTE if unsure else Level.HARM,
        subject="down",
        headline="the sign came down early",
        why=(
            f"{use.name} {on(use.date, past)}, sign down {on(down.date, past)}; your local rule asks for {hours:g} h"
            + ("; which came first is not known" if unsure else "")
        ),
        do="log the time of both, like 9:00" if unsure else "put it up again until the hours are over; log `see sign`",
        clears=f"a week after, {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=(use.entry.id, down.id),
    )


def _tell(n: Numbers, hours: float) -> None:
    n.tell("hours", hours, "x", LOCAL, local_rule("as you entered it"))
