"""More uses in a year than the label allows."""

from datetime import date, timedelta

from journal.facts.citation import label
from journal.facts.house import number
from journal.facts.safety import BASIS as LABEL_LAW
from journal.reckon.label_uses import COUNTS, Round
from journal.reckon.label_year import TooOften, too_often, years
from journal.reckon.protection import PROTECTED
from journal.reckon.threshold import in_force
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.label_year import STANDS_DAYS, TURNS, lately
from journal.rules.numbers import DEFAULT, LABEL, YOURS, Numbers
from journal.rules.words import on
from journal.season.history import Past


@rule(
    "label-year-count",
    levels=(Level.HARM, Level.LOSS, Level.NOTE),
    watches=PROTECTED,
    turns=TURNS,
    basis=(label("no more than its uses in a year"), LABEL_LAW),
)
def label_year_count(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """More uses of an active in a year than a label allows, whichever product holds it."""
    recent = lately(past)
    if not recent:
        return ()
    both = years(past)
    found = []
    for newest in {one.name: one for one in recent}.values():
        over = [one for one in too_often(past, newest.product, both) if newest == one.rounds[-1]]
        if over:
            found.append(_finding(past, newest, max(over, key=_rank), n))
    return tuple(found)


def _level(over: TooOften) -> Level:
    """A label means the calendar year, so that 365 days are a note beside it."""
    if over.spots or (over.by_label and over.rolling):
        return Level.NOTE
    return Level.HARM if over.by_label else Level.LOSS


def _rank(over: TooOften) -> tuple[int, bool, int]:
    """The gravest; then the calendar year, and what is furthest over."""
    return _level(over).gravity, not over.rolling, over.times - over.most


def _finding(past: Past, newest: Round, over: TooOften, n: Numbers) -> Finding:
    name = f"{newest.name} uses a year"
    if over.by_label:
        n.tell(name, over.most, "x", LABEL, label())
    else:
        blank = [COUNTS[one.kind] for one in over.rounds if one.product.label.max_per_year is None]
        key = min(blank, key=lambda one: in_force(past.lawn, "label-year-count", one))
        own = ("label-year-count", key) in past.lawn.numbers
        n.tell(name, over.most, "x", YOURS if own else DEFAULT, number("label-year-count", key).basis)
    names = tuple(dict.fromkeys(one.name for one in over.rounds))
    what = names[0] if len(names) == 1 else over.active
    year = "in 365 days" if over.rolling else "this year"
    most = f"{over.most} allowed by the label" if over.by_label else f"{over.most} assumed, label not entered"
    held = f" ({', '.join(names)})" if len(names) > 1 else ""
    spots = "; only with its spots, which the label counts" if over.spots else ""
    beside = "; a label mostly means the calendar year, ask its text" if over.by_label and over.rolling else ""
    clears_on = min(date.fromordinal(newest.last_day) + timedelta(STANDS_DAYS), over.back)
    return Finding(
        level=_level(over),
        subject=newest.name,
        headline=f"{what} used {_times(over.times)} {year}; {most}",
        why=f"put down {', '.join(on(one.day, past) for one in over.rounds[-4:])}{held}{spots}{beside}",
        do=f"put down no more {over.active} here before {on(over.back, past)}; if a line is wrong, amend it",
        clears=f"it falls back, or {STANDS_DAYS} days: {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=tuple(entry.id for one in over.rounds for entry in one.entries),
        numbers=(name,),
    )


def _times(count: int) -> str:
    return {1: "once", 2: "twice"}.get(count, f"{count} times")
