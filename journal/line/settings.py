"""Lines that change facts: `set`, `zone`, `product`. Each value is read once here so that a bad one never enters."""

import datetime as dt
import re
from dataclasses import dataclass, field
from datetime import date
from typing import Any

from journal.facts.grasses import UnknownGrass, grass
from journal.facts.house import NUMBERS, number, numbers
from journal.facts.number import Number
from journal.line.bounds import check_bounds
from journal.line.name import find_name, new_name
from journal.line.reading import Span
from journal.line.token import Token
from journal.line.when import Lean, Phrase, Reckoning, find_date
from journal.line.words import neat
from journal.record.clean import LONGEST_LINE, clean
from journal.record.fold import OFF, USUAL, keys, read_fact, term_of
from journal.record.lawn import WHOLE, Lawn
from journal.record.quantity import in_unit, looks_like_quantity, parse, parse_as, plain
from journal.record.refusal import Refusal, nearest
from journal.record.unit import UNITS, Dimension, unit_for

SHORT = {"zone": "area", "product": "kind"}
"""The key that may be left out right after the name."""


@dataclass(slots=True)
class Facts:
    """What a settings line says. Lives only while a line is read."""

    what: str = ""
    name: str = ""
    values: list[tuple[str, str]] = field(default_factory=list)
    since: dt.date | None = None
    date: dt.date | None = None
    spans: list[Span] = field(default_factory=list)


def read_facts(
    what: str, tokens: tuple[Token, ...], lawn: Lawn, today: date, rules: tuple[str, ...], phrase: Phrase | None
) -> Facts:
    """Read the words after the verb. Raises Refusal naming the word at fault."""
    facts = Facts(what=what)
    rest = _dated(list(tokens), lawn, today, phrase, facts)
    if what == "":
        rest = _whose(rest, lawn, rules, facts)
    else:
        if not rest:
            raise Refusal(what, f"which {what}? Write a name after it.")
        token = rest.pop(0)
        facts.name = _name(what, token, lawn, rules)
        facts.spans.append(Span(token.start, token.end, what))
    _pairs(rest, facts, lawn.units)
    new = facts.name not in (*lawn.zone_names, *(p.name for p in lawn.products))
    if what == "product" and new and "kind" not in dict(facts.values):
        raise Refusal(facts.name, "what kind of product is it? Write `kind starter`, `kind seed` and so on.")
    if facts.what == "lawn":
        check_lawn(facts.values, lawn, today)
    if not facts.values and not (what == "zone" and (new or facts.name == WHOLE)):
        raise Refusal(facts.name or what, "what about it? Write a key and its value.")
    return facts


def _name(what: str, token: Token, lawn: Lawn, rules: tuple[str, ...]) -> str:
    """The name of a zone or product that is there, or a new one that nothing else is called by."""
    zones, products = lawn.zone_names, tuple(product.name for product in lawn.products)
    if token.word in (zones if what == "zone" else products):
        return token.word
    if token.word in (*zones, *products, *rules):
        raise Refusal(token.text, "this name means something else already; choose another.", f"my-{token.word}")
    return new_name(token.text)


def _dated(tokens: list[Token], lawn: Lawn, today: date, phrase: Phrase | None, facts: Facts) -> list[Token]:
    """Take `from DATE` (of this year when no year is said) and `on DATE` off the end."""
    leans = {"from": Lean.THIS_YEAR, "on": Lean.BACK}
    if len(tokens) > 2 and tokens[-1].word in leans and not tokens[-1].quoted:
        raise Refusal(tokens[-1].text, "a date is wanted after it.")
    for _ in range(2):
        for back in range(2, min(5, len(tokens)) + 1):
            head = tokens[-back]
            if head.word not in leans or head.quoted:
                continue
            how = Reckoning(today, lawn.units == "us", phrase, leans[head.word])
            found = find_date(tokens, len(tokens) - back + 1, how)
            if found and found.used == back - 1:
                if head.word == "from":
                    facts.since = found.date
                elif found.date > today:
                    raise Refusal(tokens[-1].text, "lies ahead.")
                else:
                    facts.date = found.date
                facts.spans.append(Span(head.start, tokens[-1].end, "date"))
                del tokens[-back:]
                break
    return tokens


def _whose(tokens: list[Token], lawn: Lawn, rules: tuple[str, ...], facts: Facts) -> list[Token]:
    """`set` takes a zone, a product, a rule, or a fact of the lawn itself."""
    if not tokens:
        raise Refusal("set", "set what? A zone, a product, a rule, or a fact like `set last_frost 05-06`.")
    token = tokens[0]
    if _key(token, "lawn"):
        facts.what = "lawn"
        return tokens
    products = tuple(product.name for product in lawn.products)
    named = {"zone": lawn.zone_names, "product": products, "rule": rules}
    exact = [what for what, names in named.items() if token.word in names]
    for what in exact or named:
        found = find_name(token.word, named[what])
        if found:
            facts.what, facts.name = what, found
            facts.spans.append(Span(token.start, token.end, what))
            return tokens[1:]
    every = [*keys("lawn"), *(name for names in named.values() for name in names)]
    raise Refusal(token.text, "no zone, product, rule or fact of that name.", nearest(token.word, every))


def _key(token: Token, what: str) -> str:
    word = token.word.replace("-", "_")
    return word if not token.quoted and word in keys(what) else ""


def _pairs(tokens: list[Token], facts: Facts, units: str) -> None:
    """Keys with the words that follow them, up to the next key."""
    if facts.what == "rule":
        _threshold(tokens, facts, units)
        return
    key, words = "", list[Token]()
    if tokens and not _key(tokens[0], facts.what) and _short(facts.what, tokens):
        key = SHORT[facts.what]
    for token in tokens:
        found = _key(token, facts.what)
        if found and not (key and not words):
            if key:
                _keep(facts, key, words)
            key, words = found, []
            facts.spans.append(Span(token.start, token.end, "keyword"))
        elif key:
            words.append(token)
            facts.spans.append(Span(token.start, token.end, "value"))
        else:
            meant = nearest(token.word, keys(facts.what))
            if facts.what == "product" and re.fullmatch(r"\d+-\d+-\d+", token.text):
                meant = f"analysis {token.text}"
            raise Refusal(token.text, f"not something a {facts.what} has.", meant)
    if key:
        _keep(facts, key, words)


def _short(what: str, tokens: list[Token]) -> bool:
    """Whether the first word is a value whose key was left out, and not a key mistyped."""
    measured = [looks_like_quantity(token.text) for token in tokens[:2]]
    return what in SHORT and (measured[0] if what == "zone" else not any(measured))


def _keep(facts: Facts, key: str, words: list[Token]) -> None:
    if any(key == known for known, _ in facts.values):
        raise Refusal(key, "has been said already.")
    if not words:
        raise Refusal(key, f"a value is wanted after it, like {term_of(facts.what, key).example}.")
    text = " ".join(token.text for token in words)
    stray = _mistyped(facts.what, words)
    if stray:
        raise Refusal(stray, f"not something a {facts.what} has.", nearest(stray, keys(facts.what)))
    check_fact(facts.what, key, text)
    facts.values.append((key, clean(text)))


def _mistyped(what: str, words: list[Token]) -> str:
    """A word inside a value that was meant for a key: it has an underscore, or a quantity behind it, or both."""
    for word, after in zip(words[1:], (*words[2:], None), strict=False):
        key = word.word.replace("-", "_")
        near = nearest(key, keys(what)) if not word.quoted and not looks_like_quantity(word.text) else ""
        joined = key[:1].isalpha() and "_" in word.text
        measured = after is not None and looks_like_quantity(after.text) and len(key) > 3
        if near and (joined or (measured and what == "product" and "_" in near)):
            return word.text
    return ""


def check_fact(what: str, key: str, text: str) -> Any:
    """Read one value as it will be read when the lawn is made; None takes it back. Raises Refusal for a bad one."""
    if len(text) > LONGEST_LINE:
        raise Refusal(text[:40], f"longer than {LONGEST_LINE:,} characters.")
    value = read_fact(what, key, text)
    if value is None:
        return None
    check_bounds(what, key, text)
    if key == "grass":
        for name in value:
            known_grass(name)
    if key == "mix":
        for name, _ in value:
            known_grass(name)
    return value


def check_lawn(values: list[tuple[str, str]], lawn: Lawn, today: date) -> None:
    """Facts of the lawn that only make sense together, or up to today. Raises Refusal naming the key."""
    found = {key: read_fact("lawn", key, text) for key, text in values}
    latitude = found.get("latitude", lawn.latitude)
    growth = found.get("growth", lawn.growth)
    if growth and growth[0] == growth[1]:
        raise Refusal("growth", "begins and ends on the same day.")
    if growth and growth[0] > growth[1] and (latitude is None or latitude >= 0):
        raise Refusal("growth", "ends before it begins; that is so only south of the equator (latitude below 0).")
    for key in ("kept_since", "renovated", "treatments_since"):
        if found.get(key) and found[key] > today:
            raise Refusal(key, "lies ahead.")


def known_grass(name: str) -> None:
    """Raises Refusal for a grass that isn't in the table, with the closest one that is."""
    try:
        grass(name)
    except UnknownGrass as unknown:
        raise Refusal(name, "not a grass known here.", unknown.suggestion) from None


def _threshold(tokens: list[Token], facts: Facts, units: str) -> None:
    names = tuple(n.name for n in numbers(facts.name))
    if not tokens:
        raise Refusal(facts.name, f"which number? It has {', '.join(names) or 'none'}; or `off`.")
    head = tokens[0]
    if head.word in (OFF, "on") and len(tokens) == 1:
        facts.values.append((OFF, "yes" if head.word == OFF else "no"))
        facts.spans.append(Span(head.start, head.end, "keyword"))
        return
    while tokens:
        head = tokens[0]
        if head.word not in names:
            raise Refusal(head.text, f"{facts.name} has no number of that name.", nearest(head.word, names))
        if any(head.word == name for name, _ in facts.values):
            raise Refusal(head.text, "has been said already.")
        end = next((i for i, token in enumerate(tokens[1:], 1) if token.word in names), len(tokens))
        if end == 1:
            raise Refusal(head.text, "a number is wanted after it.")
        threshold = number(facts.name, head.word)
        facts.spans.append(Span(head.start, head.end, "keyword"))
        facts.spans.append(Span(tokens[1].start, tokens[end - 1].end, "value"))
        text = " ".join(t.text for t in tokens[1:end])
        facts.values.append((threshold.name, threshold_text(threshold.rule, threshold.name, text, units)))
        tokens = tokens[end:]


def threshold_text(rule: str, name: str, text: str, units: str = "us") -> str:
    """The value of a house number with its unit, checked against its range; `default` takes the owner's own back.

    Raises Refusal outside the range.
    """
    if text.strip().casefold() == USUAL:
        return USUAL
    known = number(rule, name)
    dimension = next(d for d in Dimension if d.value == known.unit)
    try:
        quantity = parse(text)
    except Refusal as refusal:
        raise Refusal(text, refusal.why) from None
    whole = text.strip()
    if quantity.dimension is Dimension.NUMBER and dimension in (Dimension.DAYS, Dimension.TIMES, Dimension.PERCENT):
        whole += UNITS[known.unit].name
    if quantity.dimension not in (dimension, Dimension.NUMBER):
        raise Refusal(text, f"{rule} {name} is given like {neat(known.default, dimension, units).replace(' ', '')}.")
    value = parse_as(whole, dimension).value
    if not known.allows(value) and _shown(value, dimension, units) not in _ends(known, dimension, units):
        low, high = (neat(v, dimension, units) for v in (known.low, known.high))
        default = neat(known.default, dimension, units)
        raise Refusal(text, f"{rule} {name} may be {low} to {high}; `default` is {default}.")
    return whole


def _ends(known: Number, dimension: Dimension, units: str) -> tuple[str, str]:
    """Both ends of the range as the book shows them: what is shown may be typed, whatever was rounded."""
    return _shown(known.low, dimension, units), _shown(known.high, dimension, units)


def _shown(value: float, dimension: Dimension, units: str) -> str:
    return plain(in_unit(value, unit_for(dimension, units)), 3)


RULES: tuple[str, ...] = tuple(dict.fromkeys(n.rule for n in NUMBERS))
"""Rules that have a threshold; the caller may know more."""
