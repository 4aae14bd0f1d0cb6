"""The same active again before the label's days are over."""

import math
from collections.abc import Iterator
from datetime import date, timedelta

from journal.facts.citation import label
from journal.facts.house import number
from journal.facts.safety import BASIS as LABEL_LAW
from journal.reckon.dose import doses
from journal.reckon.label_uses import REPEATS, TooSoon, too_soon
from journal.reckon.protection import PROTECTED
from journal.record.entry import Entry
from journal.record.term import LONGEST_WAIT
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import DEFAULT, LABEL, YOURS, Numbers
from journal.rules.turns import Site, after
from journal.rules.words import days, on
from journal.season.history import Past

STANDS_DAYS = 60


def _waits(entry: Entry, site: Site) -> Iterator[int]:
    """Every wait that may hold it apart from the next use: by any label of the shed, or by kind."""
    if any(site.lawn.product(dose.product) is not None for dose in doses(entry)):
        labels = [p.label.repeat_days for p in site.lawn.products if p.label.repeat_days is not None]
        house = [site.number("label-interval", name) for name in REPEATS.values()]
        yield from sorted({math.ceil(wait) for wait in (*labels, *house)})


@rule(
    "label-interval",
    levels=(Level.HARM, Level.LOSS, Level.NOTE),
    watches=PROTECTED,
    turns=[after(kind, STANDS_DAYS - 1, reach=_waits, within=LONGEST_WAIT) for kind in PROTECTED],
    basis=(label("no sooner than its days between two uses"), LABEL_LAW),
)
def label_interval(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """The same active again before its label's days are over, whichever product holds it."""
    found: dict[str, list[TooSoon]] = {}
    for early in too_soon(past, STANDS_DAYS):
        if past.date < _stands_to(early):
            subject = f"{early.later.name}-spot" if _is_spot(early) else early.later.name
            found.setdefault(subject, []).append(early)
    return tuple(_finding(past, subject, held, n) for subject, held in found.items())


def _stands_to(early: TooSoon) -> date:
    return min(early.over, date.fromordinal(early.later.last_day) + timedelta(STANDS_DAYS))


def _is_spot(early: TooSoon) -> bool:
    """A spot that meets the whole zone, or another spot: little ground had it twice, if any."""
    return early.earlier.spot or early.later.spot


def _level(early: TooSoon) -> Level:
    if _is_spot(early):
        return Level.NOTE
    return Level.LOSS if early.number else Level.HARM


def _finding(past: Past, subject: str, held: list[TooSoon], n: Numbers) -> Finding:
    """The gravest of them, the newest of those."""
    early = max(held, key=lambda one: (_level(one).gravity, one.later.day, one.over))
    later, earlier = early.later, early.earlier
    name = f"{subject} repeat"
    if early.number:
        own = ("label-interval", early.number) in past.lawn.numbers
        n.tell(name, early.wait, "d", YOURS if own else DEFAULT, number("label-interval", early.number).basis)
    else:
        n.tell(name, early.wait, "d", LABEL, label())
    gap = f"after {days(early.gap)}" if early.gap else "on the same day"
    whose = "label not entered, so that" if early.number else "by its label"
    other = "" if later.name == earlier.name else f"; {earlier.name} and {later.name} both hold {early.active}"
    entries = {entry.id: None for one in held for entry in (*one.earlier.entries, *one.later.entries)}
    return Finding(
        level=_level(early),
        subject=subject,
        headline=f"{early.active} again {gap}; {days(early.wait)} are wanted",
        why=(
            f"{earlier.name} {on(earlier.last_day, past)}, {later.name} {on(later.day, past)}{other}; {whose} "
            f"{days(early.wait)} lie between{'; on a spot only' if _is_spot(early) else ''}"
        ),
        do=(
            f"put down no more {early.active} here before {on(later.last_day + early.wait, past)}; if a line is wrong, "
            "amend it"
        ),
        clears=f"the days have passed, {on(_stands_to(early), past)}",
        clears_on=max(_stands_to(one) for one in held if _level(one) is _level(early)),
        evidence=tuple(entries),
        numbers=(name,),
    )
