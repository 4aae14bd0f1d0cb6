"""Sown too late to grow in before winter, or at a time of year that is hard on seedlings."""

from collections.abc import Iterable, Iterator
from datetime import timedelta

from journal.facts.citation import memory
from journal.facts.grasses import PERENNIAL_RYEGRASS
from journal.facts.mixture import shares
from journal.facts.sources import published
from journal.reckon.dose import is_spot
from journal.reckon.seed_season import (
    LATE_SPRING,
    LATE_SUMMER,
    SUMMER,
    growth_left,
    growth_wanted,
    is_cool_season,
    slower,
)
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Sighting
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after, at, seasons
from journal.rules.words import days, on
from journal.season.growth import month_here, next_start, northern_day, season
from journal.season.history import Past
from journal.season.stand import is_dormant, sown_mix

LONGEST_DAYS = 400
"""From a sowing to the end of the next spring's weeks."""


@rule(
    "seed-short-season",
    levels=(Level.LOSS, Level.NOTE),
    watches=(Seeding, Sighting),
    turns=(after(Seeding, "stands-days"), after(Sighting), at(seasons, "spring-days")),
    basis=(published("osu-ec1550", "purdue-how-late", note="seed in warm soil with too little season left is lost"),),
)
def seed_short_season(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """Sown with too little growth left before winter."""
    return _newest_each(_short(past, seeding, n) for seeding in _not_up(past))


def _short(past: Past, seeding: Seeding, n: Numbers) -> Finding | None:
    left = None if is_dormant(past.lawn, seeding) else growth_left(past.lawn, seeding.date)
    mix = sown_mix(past.lawn, past.zone, seeding)
    if left is None or not is_cool_season(mix):
        return None
    least, good = (growth_wanted(past.lawn, mix, name) for name in ("loss-days", "note-days"))
    for name in ("loss-days", "note-days", "bluegrass-days"):
        n.stricter(name)  # read by the counts above, and told as numbers of this rule
    if left >= max(least, good) or not _asks(past, seeding, n):
        return None
    spring = next_start(past.lawn, seeding.date)
    ends = spring + timedelta(n.days("spring-days")) if spring else None
    lost = left < least
    in_spring = spring is not None and past.date >= spring
    more = f", {slower(past.lawn, mix)} of them for the bluegrass" if slower(past.lawn, mix) else ""
    return Finding(
        level=Level.LOSS if lost and not is_spot(seeding) else Level.NOTE,
        subject=seeding.product,
        headline=f"{seeding.product} sown with {days(left)} of growth left",
        why=(
            f"sown {on(seeding.date, past)}, growth ends {on(seeding.date + timedelta(left), past)}; "
            f"{days(least if lost else good)} are wanted{more}" + ("; on a spot only" if is_spot(seeding) else "")
        ),
        do=(
            "look what came up, and log `see emerged`; mend bare places in late summer"
            if in_spring
            else "sow no more now: seed left over goes down dormant, once the soil is cold, or next late summer"
        ),
        clears="`see emerged`, or the first weeks of spring",
        clears_on=ends,
        evidence=(seeding.id,),
        numbers=("loss-days" if lost else "note-days", *(("bluegrass-days",) if more else ())),
    )


def _asks(past: Past, seeding: Seeding, n: Numbers) -> bool:
    """While grass still grows, and again in the first weeks of spring: in winter there is nothing to be done."""
    window = season(past.lawn, seeding.date)
    if window is not None and past.date <= window[1]:
        return past.day - seeding.day < n.days("stands-days")
    spring = next_start(past.lawn, seeding.date)
    return spring is not None and 0 <= (past.date - spring).days < n.days("spring-days")


@rule(
    "seed-season",
    levels=(Level.LOSS, Level.NOTE),
    watches=(Seeding, Sighting),
    turns=(after(Seeding, "stands-days"), after(Sighting), at(seasons)),
    basis=(
        published("isu-establish", "purdue-how-late", note="Oregon accepts early May to mid-June"),
        memory("in spring the barrier against annual weeds must wait for the seedlings"),
    ),
)
def seed_season(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """Sown in spring or summer, or ryegrass sown dormant."""
    lately = (seeding for seeding in _not_up(past) if past.day - seeding.day < n.days("stands-days"))
    return _newest_each(_hard_time(past, seeding, n) for seeding in lately)


def _hard_time(past: Past, seeding: Seeding, n: Numbers) -> Finding | None:
    mix = sown_mix(past.lawn, past.zone, seeding)
    if not is_cool_season(mix):
        return None
    if is_dormant(past.lawn, seeding):
        return _dormant_rye(past, seeding, shares(mix).get(PERENNIAL_RYEGRASS.name, 0.0), n)
    day, left = northern_day(past.lawn, seeding.date), growth_left(past.lawn, seeding.date)
    august = month_here(past.lawn, "August")
    if SUMMER[0] <= day <= SUMMER[1]:
        level, headline = Level.LOSS, "sown in summer heat"
        why = f"cool-season seed sown from late {month_here(past.lawn, 'May')} to mid-{august} usually fails"
        do = f"keep it damp and shaded by straw if it is to live; plan to sow again from mid-{august}"
    elif LATE_SPRING <= day < LATE_SUMMER:
        level, headline = Level.NOTE, "sown at the edge of summer"
        why = "seedlings meet the heat before they have roots"
        do = f"keep it watered all summer; plan to mend it from mid-{august}"
    elif day < LATE_SPRING and left is not None:
        level, headline = Level.NOTE, "sown in spring"
        why = "weeds come up with it, and the barrier against them has to wait; late summer is the better time"
        do = "keep it watered all summer, and cut it on time; pull what weeds you can"
    else:
        return None
    spot = is_spot(seeding)
    return _finding(past, seeding, Level.NOTE if spot else level, headline, f"{why}{'; a spot' if spot else ''}", do, n)


def _dormant_rye(past: Past, seeding: Seeding, share: float, n: Numbers) -> Finding | None:
    spring = next_start(past.lawn, seeding.date)
    if share < n["rye-share"] or (spring is not None and past.date >= spring):
        return None
    return _finding(
        past,
        seeding,
        Level.NOTE,
        "ryegrass sown dormant",
        f"{share:.0f} % of it is perennial ryegrass, which may sprout in a warm spell and die in the next frost",
        "look for seedlings after warm days; keep some seed back for spring",
        n,
    )


def _finding(past: Past, seeding: Seeding, level: Level, headline: str, why: str, do: str, n: Numbers) -> Finding:
    ends = [seeding.date + timedelta(n.days("stands-days"))]
    spring = next_start(past.lawn, seeding.date)
    if spring is not None and is_dormant(past.lawn, seeding):
        ends.append(spring)
    return Finding(
        level=level,
        subject=seeding.product,
        headline=f"{seeding.product}: {headline}",
        why=f"sown {on(seeding.date, past)}; {why}",
        do=do,
        clears=f"`see emerged`, or {on(min(ends), past)}",
        clears_on=min(ends),
        evidence=(seeding.id,),
        numbers=("rye-share",) if is_dormant(past.lawn, seeding) else (),
    )


def _not_up(past: Past) -> Iterator[Seeding]:
    """The sowings of the last year of which no seedlings were seen, oldest first."""
    seen = past[Sighting].picked("emerged", lambda sighting: sighting.subject == "emerged").last
    return (s for s in past[Seeding].within(LONGEST_DAYS) if seen is None or seen.day < s.day)


def _newest_each(found: Iterable[Finding | None]) -> tuple[Finding, ...]:
    """One finding for each seed: the gravest, and of these the newest sowing's."""
    each: dict[str, Finding] = {}
    for finding in found:
        known = each.get(finding.subject) if finding else None
        if finding is not None and (known is None or finding.level.gravity >= known.level.gravity):
            each[finding.subject] = finding
    return tuple(each.values())
