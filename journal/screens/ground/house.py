"""HOUSE NUMBERS: what each rule counts with, whose number it is, and on what authority the default stands."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from functools import lru_cache, partial

from journal.facts.number import Number
from journal.record.fold import USUAL
from journal.record.kinds.setting import Setting
from journal.record.lawn import Lawn
from journal.rules.catalogue import rules
from journal.rules.declare import RULES, Rule
from journal.rules.families import families
from journal.rules.numbers import HOUSE, in_words
from journal.screens.ground.authority import Key, set_line
from journal.screens.ground.basis import basis_in_full, basis_short
from journal.screens.ground.fact import GLYPHS, INKS, WIDE, Stand, known_by, named, said_on
from journal.screens.paper import Paper
from journal.screens.picture import EMPTY_ROW, Ink, Row, Span, Target
from journal.screens.rows import ends, left, middle, right, text
from journal.standing import Standing

OFF = "off"
OFF_MARK = "✗"
_LONGEST = 66
"""Columns that the words of any number need."""
ROOMY, _LINE = 160, 44
"""Columns from which on a number's line has room in its row, and how many it takes."""
_NAME, _VALUE, _RANGE, _BASIS = 16, 8, 21, 11


@dataclass(frozen=True, slots=True)
class House:
    """What all rows of the group need: whose lawn, who said what, and how wide the values are."""

    lawn: Lawn
    authors: Mapping[Key, Setting]
    today: date
    value: int


def draw_house(paper: Paper, standing: Standing, authors: Mapping[Key, Setting], today: date, *, airy: bool) -> None:
    """Family by family, rule by rule: the rule with its switch, then its numbers; `airy` parts the rules."""
    lawn = standing.lawn
    house = House(lawn, authors, today, max(_VALUE, *map(len, values(lawn))))
    count = sum(len(rule.numbers) for rule in rules())
    words = f"  {len(lawn.numbers)} of {count} yours; a label or a local rule beats both"
    paper.heading("HOUSE NUMBERS", (Span(words, Ink.DIM),))
    for name, some in families(rules()).items():
        paper.add()
        _draw_family(paper, name, some, lawn)
        for at, rule in enumerate(some):
            if airy and at and (rule.numbers or some[at - 1].numbers):
                paper.add()
            _draw_rule(paper, rule, house)
            for number in rule.numbers:
                _draw_number(paper, number, house)


def _draw_family(paper: Paper, name: str, rules: Sequence[Rule], lawn: Lawn) -> None:
    """Its heading: Tab goes from one to the next."""
    numbers = [number for rule in rules for number in rule.numbers]
    yours = sum((number.rule, number.name) in lawn.numbers for number in numbers)
    off = sum(rule.id in lawn.off for rule in rules)
    said = [f"{len(rules)} rule{'' if len(rules) == 1 else 's'}"]
    said += [f"{len(numbers)} number{'' if len(numbers) == 1 else 's'}"] if numbers else []
    said += [f"{yours} yours"] * bool(yours) + [f"{off} off"] * bool(off)
    row = (Span(" "), Span(name.upper(), Ink.TITLE), Span(f"  {', '.join(said)}", Ink.DIM))
    paper.stop(row, Target(0, name=f"family {name}"), lit=1)


def values(lawn: Lawn) -> list[str]:
    """Every number that holds, in words."""
    return [value_words(number, lawn) for rule in rules() for number in rule.numbers]


def value_words(number: Number, lawn: Lawn) -> str:
    """The owner's, else the default."""
    own = lawn.numbers.get((number.rule, number.name))
    return _words(number.default if own is None else own, number.unit, lawn.units)


def switch_line(rule: Rule, lawn: Lawn) -> str:
    """The line that switches it off, or on again; '' for one that stays on."""
    if not rule.can_be_off:
        return ""
    return f"set {rule.id} {'on' if rule.id in lawn.off else OFF}"


def number_line(number: Number, lawn: Lawn, since: date | None = None) -> str:
    """`set mow-gap days 10`: the number that holds, in the owner's words or the units of the book."""
    said = lawn.said.get(("rule", number.rule, number.name))
    words = said or _words(number.default, number.unit, lawn.units).replace(" ", "").removesuffix("d")
    return set_line("rule", number.rule, number.name, words, since)


def _draw_rule(paper: Paper, rule: Rule, house: House) -> None:
    line = switch_line(rule, house.lawn)
    row = _rule_row(rule.id, paper.width, off=rule.id in house.lawn.off)
    more = partial(_rule_opened, rule, line, house, paper.width)
    enter = line if rule.id in house.lawn.off or not line else f"set {rule.id} "  # off is never one key away
    paper.stop(row, Target(0, line=enter, name=f"rule {rule.id}"), lit=1, main=False, details=more)


@lru_cache(maxsize=512)
def _rule_row(id: str, width: int, *, off: bool) -> Row:
    rule = RULES[id]
    row = (
        Span(" "),
        Span(id, Ink.DIM if off else Ink.STRONG),
        Span(f"  {OFF_MARK} switched off" if off else "", Ink.LATE),
        Span(f"  {rule.says}", Ink.DIM),
    )
    return ends(row, text(f"{_levels(rule)} ", Ink.DIM), min(width, 120))


def _levels(rule: Rule) -> str:
    return " ".join(level.value for level in sorted(rule.levels, key=lambda level: -level.gravity))


def _rule_opened(rule: Rule, line: str, house: House, width: int) -> list[Row]:
    said = [("rule", rule.says), ("levels", _levels(rule))]
    if rule.id in house.lawn.off:
        setting = house.authors.get(("rule", rule.id, OFF))
        said += [("off", known_by(setting, house.today)), *said_on(setting, house.today)]
    elif not line:
        said.append(("stays on", "a rule that warns of harm or loss can't be switched off"))
    said += [pair for basis in rule.basis for pair in basis_in_full(basis)]
    return [*named([*said, ("line", line)], width), EMPTY_ROW]


def _draw_number(paper: Paper, number: Number, house: House) -> None:
    lawn, place = house.lawn, (number.rule, number.name)
    setting = house.authors.get(("rule", *place))
    line = partial(number_line, number, lawn, setting.since if setting else None)
    row = _number_row(
        place, lawn.numbers.get(place), lawn.units, Room(paper.width, house.value),
        line() if paper.width >= ROOMY else "", off=number.rule in lawn.off,
    )  # fmt: skip
    more = partial(_number_opened, number, house, setting, line, paper.width)
    paper.stop(row, Target(0, name=f"{number.rule} {number.name}"), main=False, line=line, details=more)


@dataclass(frozen=True, slots=True)
class Room:
    """Columns of the row, and of the values."""

    width: int
    value: int

    @property
    def wide(self) -> bool:
        """Whether the range has room."""
        return self.width >= WIDE

    @property
    def words(self) -> int:
        """Columns for what the number is for."""
        room = self.width - 5 - _NAME - 1 - self.value - 2 - _BASIS - (_RANGE if self.wide else 0)
        return min(room - (_LINE if self.width >= ROOMY else 0), _LONGEST)


@lru_cache(maxsize=2048)
def _number_row(place: tuple[str, str], own: float | None, units: str, room: Room, line: str, *, off: bool) -> Row:
    """The same row comes back with every page that is made anew: most numbers never change."""
    number, yours = HOUSE[place], own is not None
    stand = Stand.YOURS if yours else Stand.DEFAULT
    default = _words(number.default, number.unit, units)
    value = default if own is None else _words(own, number.unit, units)
    words = f"default {default}; {number.words}" if yours else number.words
    ink = Ink.DIM if off else Ink.STRONG if yours else Ink.PLAIN
    return (
        Span(" "),
        Span(f" {GLYPHS[stand]}", INKS[stand]),
        Span(f" {left(middle(number.name, _NAME), _NAME)} ", ink),
        Span(right(value, room.value), ink),
        Span(f"  {left(_range(number, units), _RANGE - 2)}" if room.wide else "", Ink.DIM),
        Span(f"  {left(words, room.words)} ", Ink.PLAIN if yours else ink),
        Span(left(basis_short(number.basis), _BASIS), Ink.DIM),
        Span(f"  {line}" if line else "", Ink.DIM),
    )


def _number_opened(
    number: Number, house: House, setting: Setting | None, line: Callable[[], str], width: int
) -> list[Row]:
    lawn = house.lawn
    said = [("for", number.words)]
    if (number.rule, number.name) in lawn.numbers:
        said += [("yours", f"{value_words(number, lawn)} ({known_by(setting, house.today)})")]
        said += said_on(setting, house.today)
    default = _words(number.default, number.unit, lawn.units)
    said += [("default", default), ("range", _range(number, lawn.units)), *basis_in_full(number.basis)]
    back = f"set {number.rule} {number.name} {USUAL}" if (number.rule, number.name) in lawn.numbers else ""
    return [*named([*said, ("Enter", line()), ("back", back)], width), EMPTY_ROW]


def _range(number: Number, units: str) -> str:
    """`1 to 60 d`; each end with its unit where the two differ."""
    low, high = (_words(end, number.unit, units) for end in (number.low, number.high))
    unit = high.partition(" ")[2]
    return f"{low.removesuffix(unit).strip()} to {high}" if low.partition(" ")[2] == unit else f"{low} to {high}"


@lru_cache(maxsize=1024)
def _words(value: float, unit: str, units: str) -> str:
    return in_words(value, unit, units)
