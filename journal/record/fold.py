"""Settings, one after another, make the lawn."""

import dataclasses
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date
from types import MappingProxyType
from typing import Any

from journal.record.kinds.setting import Setting
from journal.record.lawn import WHOLE, Lawn
from journal.record.product import Label, Product
from journal.record.quantity import parse
from journal.record.refusal import Refusal, nearest
from journal.record.term import Term, terms
from journal.record.zone import Zone

LAWN_TERMS = terms(Lawn)
ZONE_TERMS = terms(Zone)
PRODUCT_TERMS = terms(Product)
LABEL_TERMS = terms(Label)
OFF = "off"
USUAL = "default"
"""Said of a threshold: the owner's own number no longer holds."""
TAKEN_BACK = "none"
"""Said of an optional fact: what the owner has said of it no longer holds, and it is as if never said."""

_KEYS: dict[str, tuple[str, ...]] = {
    "lawn": tuple(LAWN_TERMS),
    "zone": tuple(ZONE_TERMS),
    "product": (*PRODUCT_TERMS, *LABEL_TERMS),
}


def keys(what: str) -> tuple[str, ...]:
    """The keys that a lawn, a zone or a product takes."""
    return _KEYS.get(what, ())


def term_of(what: str, key: str) -> Term:
    """The term behind a key. Raises Refusal with the nearest key."""
    tables = {"lawn": (LAWN_TERMS,), "zone": (ZONE_TERMS,), "product": (PRODUCT_TERMS, LABEL_TERMS)}
    for table in tables.get(what, ()):
        if key in table:
            return table[key][1]
    raise Refusal(key, f"not something a {what} has.", nearest(key, keys(what)))


def read_fact(what: str, key: str, words: str) -> Any:
    """The value as it is read, or None where a fact that may be missing is taken back. Raises Refusal."""
    found = term_of(what, key)
    if words.strip().casefold() == TAKEN_BACK and key in _OPTIONAL.get(what, ()):
        return None
    return found.read(words)


def _optional(*classes: type) -> frozenset[str]:
    return frozenset(
        f.metadata["term"].key
        for cls in classes
        for f in dataclasses.fields(cls)
        if "term" in f.metadata and f.default is None
    )


_OPTIONAL = {"lawn": _optional(Lawn), "zone": _optional(Zone), "product": _optional(Product, Label)}


@dataclass(slots=True)
class _Draft:
    """The lawn under construction; never leaves this file."""

    lawn: dict[str, Any]
    zones: dict[str, dict[str, Any]]
    products: dict[str, tuple[dict[str, Any], dict[str, Any]]]
    numbers: dict[tuple[str, str], float]
    off: set[str]
    said: dict[tuple[str, str, str], str]
    problems: list[str]

    def apply(self, setting: Setting) -> None:
        for key, words in setting.values:
            try:
                self._put(setting.what, setting.name, key, words)
            except Refusal as refusal:
                self.problems.append(f"{setting.what} {setting.name} {key}: {refusal}".replace("  ", " "))
            else:
                self._remember(setting.what, setting.name, key, words)
        if not setting.values:
            self._touch(setting.what, setting.name)

    def _remember(self, what: str, name: str, key: str, words: str) -> None:
        gone = words == USUAL if what == "rule" else read_fact(what, key, words) is None
        if gone:
            self.said.pop((what, name, key), None)
        else:
            self.said[what, name, key] = words

    def _touch(self, what: str, name: str) -> None:
        if what == "zone":
            self.zones.setdefault(name, {})
        elif what == "product":
            self.products.setdefault(name, ({}, {}))

    def _put(self, what: str, name: str, key: str, words: str) -> None:
        self._touch(what, name)
        if what == "rule":
            self._threshold(name, key, words)
        elif what == "product" and key in LABEL_TERMS:
            self.products[name][1][LABEL_TERMS[key][0]] = read_fact(what, key, words)
        else:
            value = read_fact(what, key, words)
            if what == "zone":
                self.zones[name][ZONE_TERMS[key][0]] = value
            elif what == "product":
                self.products[name][0][PRODUCT_TERMS[key][0]] = value
            else:
                self.lawn[LAWN_TERMS[key][0]] = value

    def _threshold(self, name: str, key: str, words: str) -> None:
        if key == OFF:
            (self.off.add if words == "yes" else self.off.discard)(name)
        elif words == USUAL:
            self.numbers.pop((name, key), None)
        else:
            self.numbers[name, key] = parse(words).value


def fold(settings: Iterable[Setting]) -> Lawn:
    """The lawn that these settings make, later ones over earlier; what can't be read is named in `problems`."""
    draft = _Draft({}, {}, {}, {}, set(), {}, [])
    for setting in settings:
        draft.apply(setting)
    zones = tuple(Zone(name=name, **values) for name, values in draft.zones.items())
    return Lawn(
        **draft.lawn,
        zones=zones or (Zone(name=WHOLE),),
        products=tuple(
            Product(name=name, label=Label(**label), **values) for name, (values, label) in draft.products.items()
        ),
        numbers=MappingProxyType(draft.numbers),
        off=frozenset(draft.off),
        said=MappingProxyType(draft.said),
        problems=tuple(draft.problems),
    )


def _written(setting: Setting) -> tuple[bool, str]:
    return not setting.id, setting.id


def _first_of_products(settings: Iterable[Setting]) -> set[int]:
    """Of settings as written: those (by `id`) that put a product into the shed. What it holds was so before that."""
    first: dict[str, Setting] = {}
    for one in settings:
        if one.what == "product":
            first.setdefault(one.name, one)
    return {id(one) for one in first.values()}


@dataclass(frozen=True, slots=True)
class Ground:
    """The lawn through time: corrections hold for the whole past, dated changes from their date on."""

    always: tuple[Setting, ...]
    dated: tuple[Setting, ...]
    newest: Lawn
    _versions: Mapping[date, Lawn]

    @classmethod
    def of(cls, settings: Iterable[Setting]) -> "Ground":
        """Settings in any order; they are folded in the order in which they were written down (their ids).

        One without an id is not written down yet, and so is the newest.
        """
        ordered = sorted(settings, key=_written)
        begun = _first_of_products(ordered)
        always = tuple(s for s in ordered if s.since is None or id(s) in begun)
        changes = (s for s in ordered if s.since is not None and id(s) not in begun)
        dated = tuple(sorted(changes, key=lambda s: (s.since, *_written(s))))
        days = sorted({s.since for s in dated if s.since is not None})
        versions = {d: fold((*always, *(s for s in dated if s.since is not None and s.since <= d))) for d in days}
        base = fold(always)
        newest = versions[days[-1]] if days else base
        return cls(always, dated, newest, MappingProxyType({date.min: base, **versions}))

    def on(self, day: date) -> Lawn:
        """The lawn as it was on that day."""
        if not self.dated:
            return self.newest
        return self._versions[max(d for d in self._versions if d <= day)]

    def plus(self, setting: Setting) -> "Ground":
        """With one more setting."""
        return Ground.of((*self.always, *self.dated, setting))

    def minus(self, setting: Setting) -> "Ground":
        """Without that setting."""
        return Ground.of(s for s in (*self.always, *self.dated) if s.id != setting.id)


def kept_since(lawn: Lawn, set_up: date | None, oldest: date | None) -> date | None:
    """The day from which things not logged count as not done: as set, else set-up, or the oldest entry if earlier."""
    if lawn.kept_since is not None:
        return lawn.kept_since
    known = [d for d in (set_up, oldest) if d is not None]
    return min(known) if known else None
