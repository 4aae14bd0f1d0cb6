"""On which days each flag of one zone stood, found by judging every rule on its turn days alone.

Days are kept as the bits of a whole number, the lowest being the first day that is judged: ten years of a flag are
then one number, and what yields to what is a matter of a few operations on such numbers.
"""

from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date

from journal.rules.declare import Finding, Rule
from journal.rules.flag import Level
from journal.rules.judge import found, judged
from journal.rules.numbers import LABEL, Numbers
from journal.rules.precedence import TABLE, Where, Yields
from journal.rules.turns import ones, sites, turn_bits
from journal.season.history import History, Past

Bits = int
"""Days: the lowest bit is the first day judged."""

Subject = tuple[str, str]
"""Rule and subject."""

Stood = Mapping[Subject, Mapping[Level, Bits]]
"""The days on which each flag stood, level by level."""


@dataclass(frozen=True, slots=True)
class Told:
    """The entries that a flag rests on, and whether a number of the label spoke."""

    evidence: frozenset[str]
    by_label: bool


NOTHING = Told(frozenset(), by_label=False)


@dataclass(slots=True)
class Court:
    """One zone, judged day after day; what was worked out of a day is kept while it is needed."""

    history: History
    zone: str
    rules: Mapping[str, Rule]
    first: int
    last: int
    _numbers: dict[tuple[str, int], Numbers] = field(default_factory=dict)
    _told: dict[tuple[str, int], Mapping[str, Told]] = field(default_factory=dict)

    def past(self, at: int) -> Past:
        """What the zone knew so many days after the first one."""
        return self.history.on(self.zone, date.fromordinal(self.first + at))

    def find(self, rule: Rule, past: Past) -> tuple[Finding, ...]:
        """What the rule finds that day. One set of numbers serves all days of a lawn."""
        key = rule.id, id(past.lawn)
        numbers = self._numbers.get(key)
        if numbers is None:
            numbers = self._numbers[key] = Numbers(rule.id, past.lawn)
        return found(rule, past, numbers)

    def told(self, rule: str, subject: str, at: int) -> Told:
        """What the flag rests on that day."""
        key = rule, at
        if key not in self._told:
            gathered: dict[str, Told] = {}
            for one, numbers in judged(self.rules[rule], self.past(at)):
                before = gathered.get(one.subject, NOTHING)
                labelled = any(number.origin == LABEL for number in numbers.used(*one.numbers).values())
                gathered[one.subject] = Told(
                    before.evidence | frozenset(one.evidence), by_label=before.by_label or labelled
                )
            self._told[key] = gathered
        return self._told[key].get(subject, NOTHING)


def raw(court: Court) -> Stood:
    """Every flag before anything yields. Day by day, so that what rules share of a day is worked out once."""
    turning: defaultdict[int, list[Rule]] = defaultdict(list)
    zones = court.history.lawn(date.fromordinal(court.last)).zone_names
    for rule in court.rules.values():
        places = sites(court.history, zones if rule.whole_lawn else (court.zone,))
        for at in ones(turn_bits(rule.id, rule.turns, places, court.first, court.last)):
            turning[at].append(rule)
    stood: defaultdict[Subject, defaultdict[Level, Bits]] = defaultdict(lambda: defaultdict(int))
    open_: dict[str, dict[tuple[str, Level], int]] = {}
    for at in sorted(turning):
        past = court.past(at)
        for rule in turning[at]:
            before, now = open_.get(rule.id), court.find(rule, past)
            if not now and not before:
                continue
            holds = {(one.subject, one.level) for one in now}
            open_[rule.id] = {key: (before or {}).get(key, at) for key in holds}
            for (subject, level), since in (before or {}).items():
                if (subject, level) not in holds:
                    stood[rule.id, subject][level] |= span(since, at)
    end = court.last - court.first + 1
    for rule_id, still in open_.items():
        for (subject, level), since in still.items():
            stood[rule_id, subject][level] |= span(since, end)
    return stood


def settled(court: Court, stood: Stood) -> Stood:
    """The same after precedence: a flag is not there on the days on which another one takes its place."""
    left = {key: dict(levels) for key, levels in stood.items()}
    for row in TABLE:
        losers = [key for key in stood if key[0] == row.loser]
        winners = [key for key in stood if key[0] == row.winner] if losers else []
        for loser in losers:
            for winner in winners:
                won = together(stood[winner].values())
                for level, days in stood[loser].items():
                    if row.only in (None, level) and days & won:
                        left[loser][level] &= ~_beaten(court, row, loser, winner, days & won)
    return left


def _beaten(court: Court, row: Yields, loser: Subject, winner: Subject, both: Bits) -> Bits:
    """Of the days on which both stand those on which the row holds, going by what they rest on where that counts."""
    if row.where is Where.ZONE and not row.by_default:
        return both
    return together(1 << at for at in ones(both) if _holds(row, court.told(*loser, at), court.told(*winner, at)))


def _holds(row: Yields, loser: Told, winner: Told) -> bool:
    if row.by_default and loser.by_label:
        return False
    return row.where is Where.ZONE or bool(loser.evidence & winner.evidence)


def together(days: Iterable[Bits]) -> Bits:
    """The days of all of them."""
    found_ = 0
    for some in days:
        found_ |= some
    return found_


def span(first: int, end: int) -> Bits:
    """The days from the first to the one before the end."""
    return ((1 << (end - first)) - 1) << first


def runs(days: Bits) -> list[tuple[int, int]]:
    """Stretches of days without a gap: the first day, and the first one after."""
    gathered = []
    while days:
        first = (days & -days).bit_length() - 1
        end = first + ((days >> first) ^ ((days >> first) + 1)).bit_length() - 1
        gathered.append((first, end))
        days = days >> end << end
    return gathered
