"""A feeding that came too soon after the one before."""

from datetime import timedelta
from itertools import pairwise

from journal.facts.house import by_slow_share
from journal.reckon.feed_gap import gap_over, is_follow_up, longest_gap
from journal.reckon.feedings import FEEDINGS, FeedingDay, feeding_days, minimum_gap_days
from journal.record.kinds.seeding import Seeding
from journal.rules.declare import Finding, rule
from journal.rules.feed_days import PARTS_DAYS, each_day_fed, fed_within, ids
from journal.rules.flag import Level
from journal.rules.numbers import Numbers, in_words
from journal.rules.words import days, on
from journal.season.history import Past


@rule(
    "feed-too-soon",
    levels=(Level.LOSS,),
    watches=(*FEEDINGS, Seeding),
    turns=each_day_fed("feed-too-soon", "stands-days"),
    basis=(),
)
def feed_too_soon(past: Past, n: Numbers) -> Finding | None:
    """Fed again before the last feeding was used up."""
    newest = list(fed_within(past, n.days("stands-days")))
    if not newest:
        return None
    fed = feeding_days(past, past.day - longest_gap(past.lawn) - PARTS_DAYS)
    for before, feeding in reversed(tuple(pairwise(fed))):
        if past.date >= gap_over(before, past.lawn) or feeding.date >= gap_over(before, past.lawn):
            continue
        if feeding in newest and not is_follow_up(past.history.on(past.zone, feeding.date, past.watches), feeding, fed):
            return _finding(past, before, feeding, n)
    return None


def _finding(past: Past, before: FeedingDay, feeding: FeedingDay, n: Numbers) -> Finding:
    number = by_slow_share("feed-too-soon", "days", 100 * (before.slow_share or 0.0)).name
    gap, least = feeding.day - before.day, minimum_gap_days(before, past.lawn)
    n.days(number)
    small = before.n_g_per_m2 is not None and before.n_g_per_m2 < n["full-dose"]
    free = max(gap_over(before, past.lawn), gap_over(feeding, past.lawn))
    clears_on = min(gap_over(before, past.lawn), feeding.date + timedelta(n.days("stands-days")))
    return Finding(
        level=Level.LOSS,
        headline=f"fed again after {days(gap)}, {days(least - gap)} too soon",
        why=(
            f"fed {on(before.date, past)}{_brought(past, before)} and {on(feeding.date, past)}; the first wants "
            f"{days(least)} after it. Bulletins print 30 days for quick nitrogen, and two months and more for slow"
        ),
        do=f"water it in well, and feed nothing before {on(free, past)}",
        clears=f"{on(clears_on, past)}",
        clears_on=clears_on,
        evidence=(*ids(before), *ids(feeding)),
        numbers=(number, *(("full-dose",) if small else ())),
    )


def _brought(past: Past, feeding: FeedingDay) -> str:
    """How much, and how much of it slow."""
    amount = feeding.n_g_per_m2
    much = "" if amount is None else f"{in_words(amount, 'g/m2', past.lawn.units)} of nitrogen"
    slow = f"{100 * feeding.slow_share:.0f} % slow" if feeding.slow_share else ""
    said = ", ".join(words for words in (much, slow) if words)
    return f" ({said})" if said else ""
