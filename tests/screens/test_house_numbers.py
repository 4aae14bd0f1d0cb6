"""Every house number there is: on the line, on the command line and on the Ground page."""

from datetime import date
from functools import cache

import pytest

from journal.facts.house import NUMBERS
from journal.facts.number import Number
from journal.line.read import Known, read
from journal.line.reading import Reading
from journal.record.kinds.setting import Setting
from journal.record.quantity import in_unit, plain
from journal.record.unit import Dimension, unit_for
from journal.rules.catalogue import listing, rules
from journal.rules.families import families
from journal.rules.numbers import in_words
from journal.screens.ground.paper import build
from journal.screens.page import Size
from journal.screens.picture import plain_text
from journal.screens.view import View
from journal.season.history import History
from journal.session.phrase import read_phrase
from journal.standing import standing
from tests.scenario import lawn

TODAY = date(2026, 6, 1)
SYSTEMS = ("us", "metric")
KNOWN = Known(tuple(rule.id for rule in rules()), frozenset(), read_phrase)
UNITS = {
    "us": {
        "d": "d",
        "mm": "in ft",
        "g/m2": "lb/k",
        "C": "F",
        "%": "%",
        "x": "",
        "m/s": "mph",
        "/m2": "/sqft",
        "min": "min",
    },
    "metric": {
        "d": "d",
        "mm": "mm m",
        "g/m2": "g/m2",
        "C": "C",
        "%": "%",
        "x": "",
        "m/s": "m/s",
        "/m2": "/m2",
        "min": "min",
    },
}


@cache
def lawn_of(system: str) -> History:
    """A lawn in these units."""
    return lawn(('name = "North Lane"', f'name = "North Lane"\nunits = "{system}"'))


def said(number: Number, words: str, system: str) -> Reading:
    """What the line that sets it means."""
    return read(f"set {number.rule} {number.name} {words}", lawn_of(system), TODAY, KNOWN)


def shown(value: float, number: Number, system: str) -> str:
    """The value as the Ground page shows it, without the blank."""
    unit = unit_for(Dimension(number.unit), system)
    return f"{plain(in_unit(value, unit), 3)}{unit.name}"


def kept(number: Number, words: str, system: str) -> float | None:
    """What the lawn holds once the line is saved; None for no own number."""
    draft = said(number, words, system).draft
    assert isinstance(draft, Setting), said(number, words, system).problem
    return lawn_of(system).plus(draft).lawn(TODAY).numbers.get((number.rule, number.name))


def names(one: Number) -> str:
    """For the report."""
    return f"{one.rule} {one.name}"


@pytest.mark.parametrize("system", SYSTEMS)
@pytest.mark.parametrize("number", NUMBERS, ids=names)
def test_it_can_be_set_from_end_to_end_and_no_further(number: Number, system: str) -> None:
    near = 0.01 * max(abs(number.low), abs(number.high))
    for end in (number.low, number.default, number.high):
        held = kept(number, shown(end, number, system), system)
        assert held == pytest.approx(end, abs=near)
    for beyond in (number.low - 5 * near - 1, number.high + 5 * near + 1):
        refused = said(number, shown(beyond, number, system), system)
        assert refused.draft is None
        assert refused.problem is not None
    above = said(number, shown(number.high + 5 * near + 1, number, system), system).problem
    assert above is not None
    assert "may be" in above.why
    assert "`default` is" in above.why


@pytest.mark.parametrize("number", NUMBERS, ids=names)
def test_default_takes_ones_own_back(number: Number) -> None:
    own = lawn_of("us")
    for words in (shown(number.high, number, "us"), "default"):
        draft = read(f"set {number.rule} {number.name} {words}", own, TODAY, KNOWN).draft
        assert draft is not None
        own = own.plus(draft)
    assert own.lawn(TODAY).numbers == {}
    assert own.lawn(TODAY).problems == ()


@pytest.mark.parametrize("number", NUMBERS, ids=names)
def test_the_default_lies_in_the_range_and_rests_on_something(number: Number) -> None:
    assert number.low <= number.default <= number.high
    assert number.low < number.high
    assert number.basis.words()
    assert number.words


@cache
def ground(system: str, width: int) -> list[str]:
    """The whole Ground page."""
    judged = standing(lawn_of(system), TODAY)
    paper = build(judged, View(as_of=TODAY, today=TODAY, page=5), Size(width, 40))
    return [plain_text(row) for row in paper.rows]


@pytest.mark.parametrize("system", SYSTEMS)
def test_the_ground_shows_each_with_its_unit_range_and_basis(system: str) -> None:
    page = ground(system, 140)
    for number in NUMBERS:
        value = in_words(number.default, number.unit, system)
        low, high = (in_words(end, number.unit, system) for end in (number.low, number.high))
        spans = (f"{low} to {high}", f"{low.partition(' ')[0]} to {high}")
        wanted = [f" {value}  {span[:18]}" for span in spans]
        assert any(words in row for row in page for words in wanted), (number.rule, number.name, *wanted)


@pytest.mark.parametrize("width", [80, 120, 200])
def test_no_row_of_them_is_wider_than_the_page(width: int) -> None:
    page = ground("us", width)
    start = next(at for at, row in enumerate(page) if row.startswith(" HOUSE NUMBERS"))
    assert max(map(len, page[start:])) <= width


@pytest.mark.parametrize("system", SYSTEMS)
def test_the_listing_has_each_with_its_unit(system: str) -> None:
    listed = {
        (rule["id"], one["name"]): one for rule in listing(lawn_of(system).lawn(TODAY)) for one in rule["numbers"]
    }
    assert set(listed) == {(one.rule, one.name) for one in NUMBERS}
    for number in NUMBERS:
        one = listed[number.rule, number.name]
        assert (one["default"], one["low"], one["high"], one["unit"]) == (
            number.default, number.low, number.high, number.unit,
        )  # fmt: skip
        unit = str(one["words"]).partition(" ")[2]
        assert unit in UNITS[system][number.unit].split() or unit == UNITS[system][number.unit]


def test_every_rule_belongs_to_one_family_and_its_heading_counts_its_numbers() -> None:
    found = families(rules())
    assert sorted(rule.id for some in found.values() for rule in some) == [rule.id for rule in rules()]
    page = ground("us", 120)
    for name, some in found.items():
        (heading,) = [row for row in page if row.startswith(f" {name.upper()}  {len(some)} rule")]
        count = sum(len(rule.numbers) for rule in some)
        assert not count or f"{count} number" in heading
