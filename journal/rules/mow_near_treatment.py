"""A cut that takes a weed product away with the leaf."""

from datetime import timedelta

from journal.facts.safety import BASIS as LABEL_LAW
from journal.reckon.near_a_cut import NEAR_A_CUT, TooNear, too_near
from journal.record.kinds.mowing import Mowing
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after
from journal.rules.words import days, on
from journal.season.history import Past

STANDS_DAYS = 7


@rule(
    "mow-near-treatment",
    levels=(Level.LOSS, Level.NOTE),
    watches=NEAR_A_CUT,
    turns=(after(Mowing, STANDS_DAYS - 1), *(after(kind, STANDS_DAYS - 1) for kind in NEAR_A_CUT)),
    basis=(LABEL_LAW,),
)
def mow_near_treatment(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """Mown too near a weed product on the leaves, before or after it."""
    found: dict[str, TooNear] = {}
    for one in too_near(past, past.day - STANDS_DAYS + 1):
        held = found.get(one.use.name)
        if held is None or (_level(held).gravity, held.day) <= (_level(one).gravity, one.day):
            found[one.use.name] = one
    return tuple(_finding(past, one, n) for one in found.values())


def _level(one: TooNear) -> Level:
    return Level.LOSS if one.by_label and one.sure else Level.NOTE


def _finding(past: Past, one: TooNear, n: Numbers) -> Finding:
    n.stricter(one.number, of_label=one.wait if one.by_label else None)
    use, mowing = one.use, one.mowing
    gap = mowing.day - use.day
    when = "on the day of" if not gap else f"{days(abs(gap))} {'after' if gap > 0 else 'before'}"
    clears_on = max(use.date, mowing.date) + timedelta(STANDS_DAYS)
    first = "" if one.sure else "; which came first is not known"
    return Finding(
        level=_level(one),
        subject=use.name,
        headline=f"mown {when} {use.name}",
        why=(
            f"{use.name} {on(use.date, past)}, mown {on(mowing.date, past)}; the leaf is wanted "
            f"for {days(one.wait)} {one.number} it{' by the label' if one.by_label else ', label not entered'}{first}"
        ),
        do=(
            "nothing to undo: see whether the weeds die, and put no more down before the label's interval is over; "
            "leave clippings on the lawn"
        ),
        clears=f"a week after, {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=(use.entry.id, mowing.id),
        numbers=(one.number,),
    )
