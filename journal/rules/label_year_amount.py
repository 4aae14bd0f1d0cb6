"""More of an active in a year than its labels allow."""

from datetime import date, timedelta

from journal.facts.citation import label
from journal.facts.rounding import exceeds
from journal.facts.safety import BASIS as LABEL_LAW
from journal.reckon.label_amount import TooMuch, too_much
from journal.reckon.label_uses import Round
from journal.reckon.label_year import YEAR_DAYS, years
from journal.reckon.protection import PROTECTED
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.label_year import STANDS_DAYS, TURNS, lately
from journal.rules.numbers import DEFAULT, LABEL, Numbers, in_words
from journal.rules.words import on
from journal.season.history import Past


@rule(
    "label-year-amount",
    levels=(Level.HARM, Level.LOSS, Level.NOTE),
    watches=PROTECTED,
    turns=TURNS,
    basis=(label("no more than its amount in a year"), LABEL_LAW),
)
def label_year_amount(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """More of an active in a year than may be, summed over every product that holds it."""
    recent = lately(past)
    if not recent:
        return ()
    both = years(past)
    found = []
    for newest in {one.name: one for one in recent}.values():
        over = [
            one
            for one in too_much(past, newest.product, both)
            if one.rounds[-1:] == (newest,) and exceeds(one.total, one.most)
        ]
        if over:
            found.append(_finding(past, newest, max(over, key=_rank), n))
    return tuple(found)


def _level(over: TooMuch) -> Level:
    """A label means the calendar year, so that 365 days are a note beside it."""
    if over.by_label:
        return Level.NOTE if over.rolling else Level.HARM
    return Level.LOSS


def _rank(over: TooMuch) -> tuple[int, bool, float, int]:
    """The gravest; then the calendar year, what is furthest over, and what could not be added."""
    return _level(over).gravity, not over.rolling, round(over.total / over.most, 6), len(over.left_out)


def _finding(past: Past, newest: Round, over: TooMuch, n: Numbers) -> Finding:
    unit, units = "ml/m2" if over.by_volume else "g/m2", past.lawn.units
    name = f"{over.what} in a year"
    n.tell(name, over.most, unit, LABEL if over.by_label else DEFAULT, over.basis)
    total, most = in_words(over.total, unit, units), in_words(over.most, unit, units)
    year = "in 365 days" if over.rolling else "this year"
    names = tuple(dict.fromkeys(one.name for one in over.rounds))
    held = f" ({', '.join(names)})" if names != (over.what,) else ""
    left = f"; {', '.join(over.left_out)} could not be added: amount or strength not entered" if over.left_out else ""
    whose = "by the label" if over.by_label else "by what is known of it, label not entered"
    new_year = date(past.date.year + 1, 1, 1)
    back = over.rounds[0].date + timedelta(YEAR_DAYS) if over.rolling else new_year
    clears_on = min(date.fromordinal(newest.last_day) + timedelta(STANDS_DAYS), back)
    return Finding(
        level=_level(over),
        subject=newest.name,
        headline=f"{total} of {over.what} {year}, more than {most}",
        why=f"put down {', '.join(on(one.day, past) for one in over.rounds[-4:])}{held}; {most} a year {whose}{left}",
        do=(
            f"put down no more {over.what} here before {on(back, past)}; if an amount is wrong, amend its line, and "
            "do what the label says of people, pets and water"
        ),
        clears=f"it falls back, or {STANDS_DAYS} days: {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=tuple(entry.id for one in over.rounds for entry in one.entries),
        numbers=(name,),
    )
