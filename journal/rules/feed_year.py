"""Too much nitrogen in one calendar year."""

from datetime import date

from journal.facts.citation import Known
from journal.facts.local_rules import CHECK
from journal.facts.mixture import nitrogen_cap
from journal.facts.rounding import exceeds, over_the_law
from journal.reckon.dose import doses
from journal.reckon.feeding import nutrients_mean
from journal.reckon.feedings import FEEDINGS, nitrogen_between, nitrogen_of_year
from journal.record.day import MonthDay
from journal.record.kinds.seeding import Seeding
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import DEFAULT, LOCAL, Numbers, in_words
from journal.rules.turns import after, at, each_year
from journal.rules.words import on
from journal.season.history import Past
from journal.season.local import local_rules
from journal.season.stand import sown, stand_mix

LIMIT, CAP, LOSS = "limit", "cap", "loss"
"""The local rule's number, the grass's own, and the one above which it is a loss."""


@rule(
    "feed-year",
    levels=(Level.HARM, Level.LOSS, Level.NOTE),
    watches=(*FEEDINGS, Seeding),
    turns=(*(after(kind) for kind in (*FEEDINGS, Seeding)), at(each_year(MonthDay(1, 1)))),
    basis=(),
)
def feed_year(past: Past, n: Numbers) -> Finding | None:
    """More nitrogen in a calendar year than the grass wants, or than a local rule allows."""
    total = nitrogen_of_year(past, past.date.year)
    found = _over(past, total, n)
    if found is None:
        return None
    level, number = found
    units, seeding = past.lawn.units, sown(past)
    said = in_words(total, "g/m2", units)
    than = {LIMIT: "the local rule allows", CAP: f"{nitrogen_cap(stand_mix(past)).name} wants", LOSS: "any lawn wants"}
    sum_of_stand = ""
    if seeding is not None:
        since = in_words(nitrogen_between(past, seeding.day, past.day), "g/m2", units)
        sum_of_stand = f"; {since} since the sowing of {on(seeding.date, past)}"
    new_year = date(past.date.year + 1, 1, 1)
    return Finding(
        level=level,
        headline=f"{said} of nitrogen this year, more than {than[number]}",
        why=f"{n.used(number)[number].words} is {_whose(past, number)}{sum_of_stand}",
        do="feed no more nitrogen this year" + (f". {CHECK}" if number == LIMIT else ""),
        clears=f"the new year, {on(new_year, past)}",
        clears_on=new_year,
        evidence=_evidence(past),
        numbers=(number,),
    )


def _over(past: Past, total: float, n: Numbers) -> tuple[Level, str] | None:
    """How bad it is and the number that decides. A local number that is not confirmed is a note at most."""
    rules = local_rules(past.lawn)
    stated = rules.year_n_g_per_m2 if rules is not None else None
    by_law = rules.heeds(stated) if rules is not None else None
    broken = stated is not None and by_law is not None and over_the_law(total, by_law)
    if broken and stated is not None and by_law is not None:
        n.tell(LIMIT, by_law, "g/m2", LOCAL, stated.basis)
        if stated.confirmed:
            return Level.HARM, LIMIT
    if exceeds(total, n[LOSS]):
        return Level.LOSS, LOSS
    if broken:
        return Level.NOTE, LIMIT
    grass = nitrogen_cap(stand_mix(past))
    if exceeds(total, grass.nitrogen_cap_g_per_m2):
        n.tell(CAP, grass.nitrogen_cap_g_per_m2, "g/m2", DEFAULT, grass.nitrogen_basis)
        return Level.NOTE, CAP
    return None


def _whose(past: Past, number: str) -> str:
    rules = local_rules(past.lawn)
    if number == LIMIT and rules is not None and rules.year_n_g_per_m2 is not None:
        own = rules.year_n_g_per_m2.basis.kind is Known.LOCAL_RULE
        sure = "" if rules.year_n_g_per_m2.confirmed else ", which is not confirmed"
        return f"the most in a calendar year by {'your local rule' if own else rules.place}{sure}"
    return "the most for the grass in a calendar year" if number == CAP else "more than a lawn takes up in a year"


def _evidence(past: Past) -> tuple[str, ...]:
    """Every entry of the year that brought nitrogen."""
    first = date(past.date.year, 1, 1).toordinal()
    found = []
    for kind in FEEDINGS:
        for entry in past[kind].since(first):
            lawn = past.history.lawn(entry.date)
            brought = [nutrients_mean(dose, entry, lawn) for dose in doses(entry)]
            if any(one is not None and one.n for one in brought):
                found.append((entry.day, entry.id))
    return tuple(id for _, id in sorted(found))
