"""Water on leaves that were to stay dry."""

from datetime import date, timedelta

from journal.facts.safety import BASIS as LABEL_LAW
from journal.reckon.uses import Use
from journal.reckon.washing import Wash, washed
from journal.reckon.watering_in import AFTER_USE, LONGEST_DAYS, rain_free_hours, used_within
from journal.record.lawn import Lawn
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.use_days import each_day_after_use
from journal.rules.words import on
from journal.season.history import Past
from journal.season.hours import Within, days_of

STANDS_DAYS = 14


def _follows(use: Use, lawn: Lawn) -> int:
    hours = rain_free_hours(use, lawn)
    return days_of(hours) + 1 + STANDS_DAYS if hours else -1


@rule(
    "wash-off",
    levels=(Level.LOSS, Level.NOTE),
    watches=AFTER_USE,
    turns=each_day_after_use(_follows, LONGEST_DAYS),
    basis=(LABEL_LAW,),
)
def wash_off(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """Rain or watering within the rain-free hours of a product on the leaves."""
    found: dict[str, tuple[Use, Wash, Level]] = {}
    for use in used_within(past, LONGEST_DAYS):
        water = washed(past, use, n["water"])
        if water is None or past.day - water.day >= STANDS_DAYS:
            continue
        by_label = use.label.rain_free_min is not None
        level = Level.LOSS if by_label and water.how is Within.YES else Level.NOTE
        held = found.get(use.name)
        if held is None or held[2].gravity <= level.gravity:
            found[use.name] = use, water, level
    return tuple(_finding(past, *row, n) for row in found.values())


def _finding(past: Past, use: Use, water: Wash, level: Level, n: Numbers) -> Finding:
    minutes = use.label.rain_free_min
    hours = n.stricter("hours", of_label=None if minutes is None else minutes / 60)
    unsure = water.how is Within.PERHAPS
    clears_on = date.fromordinal(water.day) + timedelta(STANDS_DAYS)
    return Finding(
        level=level,
        subject=use.name,
        headline=f"{water.words} within {hours:g} h of {use.name}",
        why=(
            f"{use.name}{' on a spot' if use.spot else ''} {on(use.date, past)}, {water.words} {on(water.day, past)}; "
            f"leaves stay dry for {hours:g} h"
            + (" by the label" if minutes is not None else ", label not entered; 6 to 24 h are printed")
            + ("; which came first is not known" if unsure and water.day == use.day else "")
        ),
        do=(
            "log the time of both, like 9:00; if it came first, nothing was washed off"
            if unsure and water.day == use.day
            else "wait and see whether it worked; put no more down before the label's interval is over"
        ),
        clears=f"two weeks after, {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=(use.entry.id, *water.ids),
    )
