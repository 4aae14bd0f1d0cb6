"""What could come next: the ghost behind the cursor and the candidates under the line."""

from dataclasses import dataclass
from datetime import date

from journal.line.name import ALL
from journal.line.settings import RULES
from journal.line.token import words
from journal.line.usual import last_of
from journal.line.verb import find_verb
from journal.record.entry import VERBS, Entry, slots
from journal.record.fold import keys
from journal.record.kinds.remark import Remark
from journal.record.kinds.setting import Setting
from journal.record.lawn import Lawn
from journal.record.product import KINDS
from journal.record.slot import Role
from journal.season.history import History

MOST = 6
_DATES = ("yesterday", "-2d", "today")


@dataclass(frozen=True, slots=True)
class Completion:
    """`ghost` is the rest of the best candidate; `candidates` are whole words, best first, at most six."""

    ghost: str = ""
    candidates: tuple[str, ...] = ()


def complete(text: str, cursor: int, history: History, today: date, rules: tuple[str, ...] = RULES) -> Completion:
    """Candidates for the word at the cursor, or for the next word when the cursor stands behind a blank."""
    if cursor != len(text) or " -- " in text or len(text) > 1000:
        return Completion()
    typed = words(text)
    begun = "" if not typed or text[-1].isspace() else typed[-1].text
    done = tuple(token.word for token in (typed if not begun else typed[:-1]))
    lawn = history.lawn(today)
    options = tuple(sorted(VERBS)) if not done else _options(done, history, lawn, today, rules)
    folded = begun.casefold()
    given = _given(done[1:], options)
    fitting = [option for option in options if option.startswith(folded) and option not in given]
    if not fitting or (not begun and not done) or len(folded) != len(begun):
        return Completion()
    ghost = fitting[0][len(begun) :] if begun and fitting[0] != folded else ""
    if not done and find_verb(folded).name:
        fitting = [find_verb(folded).name, *(v for v in fitting if v != find_verb(folded).name)]
        ghost = fitting[0][len(begun) :] if fitting[0].startswith(folded) else ""
    return Completion(ghost, tuple(fitting[:MOST]))


def _given(done: tuple[str, ...], options: tuple[str, ...]) -> set[str]:
    """The options that were given already, in full or cut short."""
    given: set[str] = set()
    for word in done:
        begun = [word] if word in options else [option for option in options if option.startswith(word)]
        given.update(begun if len(begun) == 1 and len(word) > 1 else ())
    return given


def _options(
    done: tuple[str, ...], history: History, lawn: Lawn, today: date, rules: tuple[str, ...]
) -> tuple[str, ...]:
    found = find_verb(done[0])
    if not found.name:
        return ()
    verb, kind = VERBS[found.name]
    if kind is Remark:
        return ()
    if kind is Setting:
        return _setting_options(verb.what, done, lawn, rules)
    return tuple(dict.fromkeys([*_recent(kind, history, lawn, today), *_words(kind, lawn, rules), *_DATES]))


def _recent(kind: type[Entry], history: History, lawn: Lawn, today: date) -> list[str]:
    """The product last used with this verb comes first, then its zones."""
    last = last_of(kind, history, lawn.zone_names, today)
    product = getattr(last, "product", "") if last else ""
    return [*([product] if product and lawn.product(product) else []), *(last.zones if last else ())]


def _words(kind: type[Entry], lawn: Lawn, rules: tuple[str, ...]) -> list[str]:
    found: list[str] = []
    zones = [*lawn.zone_names, *([ALL] if len(lawn.zones) > 1 else [])]
    marks: list[str] = []
    for slot in slots(kind).values():
        match slot.role:
            case Role.PRODUCT:
                found += sorted(product.name for product in lawn.products if product.kind in slot.kinds)
            case Role.SUBJECT:
                found += slot.choices
            case Role.RULE:
                found += rules
            case Role.CHOICE | Role.MARK if not slot.keyword:
                marks += slot.choices
        if slot.keyword:
            marks.append(slot.keyword)
    return [*found, *zones, *marks]


def _setting_options(what: str, done: tuple[str, ...], lawn: Lawn, rules: tuple[str, ...]) -> tuple[str, ...]:
    products = tuple(product.name for product in lawn.products)
    if len(done) > 2 and done[-1] == "kind":
        return KINDS
    if what:
        return (lawn.zone_names if what == "zone" else products) if len(done) == 1 else keys(what)
    if len(done) == 1:
        return (*lawn.zone_names, *products, *keys("lawn"), *rules)
    if done[1] in lawn.zone_names:
        return keys("zone")
    return keys("product") if done[1] in products else keys("lawn")


def possible_words(kind: type[Entry], lawn: Lawn, rules: tuple[str, ...]) -> tuple[str, ...]:
    """Every word that could stand on a line of this kind."""
    return (*_words(kind, lawn, rules), *_DATES)
