"""LOCAL RULES: the set that the lawn is under, what it says and how that is known, and the owner's own numbers."""

from collections.abc import Callable, Mapping
from datetime import date
from functools import partial

from journal.facts.citation import Known
from journal.facts.local_rules import CHECK, LocalRules, Sowing
from journal.facts.local_rules_sets import named, sets
from journal.facts.local_words import LocalRow, rows
from journal.record.kinds.setting import Setting
from journal.record.lawn import Lawn
from journal.record.quantity import write
from journal.record.unit import Dimension
from journal.screens.ground.authority import Key, set_line, start_line
from journal.screens.ground.basis import basis_in_full, basis_short
from journal.screens.ground.fact import GLYPHS, INKS, Fact, Stand, draw_fact, known_by, said_on
from journal.screens.ground.fact import named as told
from journal.screens.ground.words import example
from journal.screens.paper import Paper, Within
from journal.screens.picture import EMPTY_ROW, Ink, Row, Span, Target
from journal.screens.rows import cut, left, wrapped
from journal.season.local import local_rules
from journal.standing import Standing

NONE = "none"
LAW = "§"
"""Before what stands in a law, as far as the book knows."""
_WHAT, _BASIS = 17, 11

OWN: Mapping[str, str] = {
    "local_closed": "closed", "local_most_n": "nitrogen at once", "local_most_soluble": "soluble at once",
    "local_year_n": "nitrogen a year", "local_slow": "slow release", "local_buffer": "from water",
    "local_test_months": "soil test", "local_seeding": "sowing",
    "local_sign": "sign",
}  # fmt: skip
"""Fact of the lawn -> the row of the table that it takes the place of."""


def draw_local(paper: Paper, standing: Standing, authors: Mapping[Key, Setting], today: date) -> None:
    """Whom to ask, the set by its name, what it says, and what else could be entered."""
    lawn = standing.lawn
    paper.heading("LOCAL RULES", (Span(f"  {CHECK}", Ink.STRONG),))
    draw_fact(paper, _set(lawn, authors, today), main=True)
    if named(lawn.local_rules) is None:
        for line in wrapped(f"built in: {' '.join(sets())}", paper.width - 6):
            paper.add((Span("   "), Span(line, Ink.DIM)))
    rules = local_rules(lawn)
    found = rows(rules, lawn.units) if rules is not None else ()
    keys = {what: key for key, what in OWN.items()}
    for row in found:
        _draw(paper, row, keys.get(row.what, ""), rules, lawn, authors, today)
    known = {row.what for row in found}
    _not_said(paper, [key for key, what in OWN.items() if what not in known], lawn)


def _not_said(paper: Paper, keys: list[str], lawn: Lawn) -> None:
    """What nothing is known of, in one row that opens to a line for each."""
    if not keys:
        return
    facts = [
        Fact(
            name=OWN[key], value="", stand=Stand.MISSING, known=Stand.MISSING.value,
            line=set_line("lawn", "", key, example(key, lawn)), start=start_line("lawn", "", key),
        )
        for key in keys
    ]  # fmt: skip
    row = (
        Span(" "),
        Span(f"{GLYPHS[Stand.MISSING]} {left('not said', _WHAT)}", Ink.DIM),
        Span(", ".join(OWN[key] for key in keys), Ink.DIM),
    )

    def inside() -> Paper:
        inner = Paper(paper.view, paper.width)
        for fact in facts:
            draw_fact(inner, fact, indent=3)
        inner.add()
        return inner

    targets = tuple(Target(0, line=fact.enter, name=fact.start) for fact in facts)
    first = Target(0, line=facts[0].enter, name="local not said")
    paper.stop(cut(row, paper.width), first, lit=1, main=False, within=Within(targets, inside))


def _set(lawn: Lawn, authors: Mapping[Key, Setting], today: date) -> Fact:
    place = ("lawn", "", "local_rules")
    said, setting = lawn.said.get(place), authors.get(place)
    found = named(lawn.local_rules)
    if found is not None:
        value = f"{lawn.local_rules}: {found.place}"
    elif lawn.local_rules == NONE:
        value = "none: name one, or enter your own"
    else:
        value = f"{lawn.local_rules}: nothing is known of it here"
    return Fact(
        name="local rules", value=value, stand=Stand.DEFAULT if said is None else Stand.YOURS,
        known=Stand.DEFAULT.value if said is None else known_by(setting, today),
        line=set_line("lawn", "", "local_rules", lawn.local_rules, setting.since if setting else None),
        start=start_line("lawn", "", "local_rules"),
        use="what a law or an ordinance asks is held against every feeding that it speaks of",
        more=(*said_on(setting, today), ("built in", " ".join(sets())), ("check", CHECK)),
    )  # fmt: skip


def _draw(
    paper: Paper, row: LocalRow, key: str, rules: LocalRules | None, lawn: Lawn, authors: Mapping[Key, Setting],
    today: date,
) -> None:  # fmt: skip
    said = lawn.said.get(("lawn", "", key)) if key else None
    setting = authors.get(("lawn", "", key)) if key else None
    words = said or (_VALUES[key](rules, lawn.units) if key and rules is not None else "")
    line = set_line("lawn", "", key, words, setting.since if setting else None) if words else ""
    room = min(100, paper.width - 4 - _WHAT - _BASIS)
    first, *more = wrapped(row.says, room) or [""]
    loose = row.known.kind in (Known.MEMORY, Known.JUDGMENT)
    stand = Stand.YOURS if said is not None else None
    basis = stand.value if stand else basis_short(row.known)
    shown = (
        Span(" "),
        Span(GLYPHS[stand] if stand else LAW, INKS[stand] if stand else Ink.AHEAD),
        Span(f" {left(row.what, _WHAT)}", Ink.STRONG if stand else Ink.PLAIN),
        Span(left(first, room)),
        Span(f" {left(basis, _BASIS)}", Ink.LATE if loose else Ink.DIM),
    )
    known = known_by(setting, today) if stand else ""
    paper.stop(
        shown,
        Target(0, line=line, name=f"local {row.what}"),
        main=False,
        details=partial(_opened, row, known, line, paper.width),
        beneath=[(Span(" " * (3 + _WHAT)), Span(words)) for words in more],
    )


def _opened(row: LocalRow, yours: str, line: str, width: int) -> list[Row]:
    said = [(row.what, row.says), ("known", yours), *(() if yours else basis_in_full(row.known))]
    return [*told([*[pair for pair in said if pair[1]], ("Enter", line)], width), EMPTY_ROW]


def _closed(rules: LocalRules, _: str) -> str:
    """All spans as one, where one goes on from the other; one's own takes the place of all."""
    return f"{rules.closed[0].value.first} {rules.closed[-1].value.last}"


def _rate(name: str) -> Callable[[LocalRules, str], str]:
    return lambda rules, units: write(getattr(rules, name).value, Dimension.MASS_RATE, units)


def _buffer(rules: LocalRules, units: str) -> str:
    if rules.buffer_mm is None:
        return ""
    mm = rules.buffer_mm.value
    return f"{mm / 1000:.1f}m" if units == "metric" else f"{mm / 304.8:g}ft"


_VALUES: Mapping[str, Callable[[LocalRules, str], str]] = {
    "local_closed": _closed,
    "local_most_n": _rate("most_n_g_per_m2"),
    "local_most_soluble": _rate("most_soluble_n_g_per_m2"),
    "local_year_n": _rate("year_n_g_per_m2"),
    "local_slow": lambda rules, _: f"{100 * rules.least_slow_share.value:.3g}%" if rules.least_slow_share else "",
    "local_buffer": _buffer,
    "local_test_months": lambda rules, _: str(rules.soil_test_months.value) if rules.soil_test_months else "",
    "local_seeding": lambda rules, _: "yes" if rules.sowing and rules.sowing.value is Sowing.ANY else "no",
    "local_sign": lambda rules, _: f"{rules.sign_hours.value:g}h" if rules.sign_hours else "",
}
"""What a set says, in the words that would enter it as one's own."""
