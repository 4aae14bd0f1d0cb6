"""A set-up file (TOML) or the answers of the guided set-up, as the settings they make. A wrong value writes nothing."""

import re
import tomllib
from collections.abc import Iterator, Mapping
from datetime import date
from typing import Any

from journal.line.name import new_name
from journal.line.settings import check_fact, check_lawn
from journal.record.clean import clean
from journal.record.fold import keys
from journal.record.kinds.setting import Setting
from journal.record.lawn import Lawn
from journal.record.refusal import Refusal, nearest

_SPACED = frozenset({"rate", "temp", "growth"})
_TABLES = ("lawn", "zone", "product")


class SetupProblem(Exception):
    """What is wrong in a set-up file: the key, its line (1 is the first; 0 when there is none), and why."""

    def __init__(self, key: str, line: int, why: str) -> None:
        super().__init__(key, line, why)
        self.key = key
        self.line = line
        self.why = why

    def __str__(self) -> str:
        where = f"line {self.line}, " if self.line else ""
        return f"{where}{self.key}: {self.why}" if self.key else f"{where}{self.why}"


def settings_from_toml(text: str, today: date) -> tuple[Setting, ...]:
    """Every setting of a set-up file. Raises SetupProblem naming key and line; nothing is half read."""
    text = text.removeprefix("\ufeff")
    try:
        document = tomllib.loads(text)
    except (ValueError, RecursionError) as error:
        place = re.search(r" \(at line (\d+), column \d+\)", str(error))
        why = str(error).replace(place[0], "") if place else str(error)
        raise SetupProblem("", int(place[1]) if place else 0, f"not readable as TOML: {why}") from None
    found: list[Setting] = []
    for table in document:
        if table not in _TABLES:
            raise SetupProblem(table, _line(text, "", 0, table), f"not a table of a set-up.{_meant(table, _TABLES)}")
    lawn = document.get("lawn")
    if not isinstance(lawn, dict) or not lawn.get("name"):
        raise SetupProblem("lawn.name", _line(text, "lawn", 0, ""), 'the lawn needs a name: name = "..." under [lawn].')
    found.append(_setting("lawn", "", lawn, text, 0, today))
    try:
        check_lawn(list(found[0].values), Lawn(), today)
    except Refusal as refusal:
        line = _line(text, "lawn", 0, refusal.word)
        raise SetupProblem(f"lawn.{refusal.word}", line, refusal.why) from None
    for what in ("zone", "product"):
        items = document.get(what, [])
        if not isinstance(items, list):
            raise SetupProblem(what, _line(text, what, 0, ""), f"write it with two brackets: [[{what}]].")
        for index, item in enumerate(items):
            if not isinstance(item, dict):
                raise SetupProblem(what, _line(text, what, 0, ""), f"write it with two brackets: [[{what}]].")
            found.append(_named(what, item, text, index, today, found))
    return tuple(found)


def _named(what: str, item: dict[str, Any], text: str, index: int, today: date, before: list[Setting]) -> Setting:
    values = dict(item)
    raw = values.pop("name", None)
    if not isinstance(raw, str) or not raw:
        raise SetupProblem(f"{what}.name", _line(text, what, index, ""), f"this {what} needs a name.")
    try:
        name = new_name(clean(raw))
    except Refusal as refusal:
        raise SetupProblem(f"{what}.name", _line(text, what, index, "name"), f"{raw}: {refusal.why}") from None
    if any(s.name == name for s in before):
        raise SetupProblem(f"{what}.name", _line(text, what, index, "name"), f"{name} is named twice.")
    if what == "product" and not values.get("kind"):
        raise SetupProblem("product.kind", _line(text, what, index, ""), f"what kind of product is {name}?")
    return _setting(what, name, values, text, index, today)


def _setting(what: str, name: str, table: Mapping[str, Any], text: str, index: int, today: date) -> Setting:
    pairs: list[tuple[str, str]] = []
    for inside, key, value in _flat(what, table):
        line = _line(text, inside, index, key)
        if key not in keys(what):
            raise SetupProblem(f"{inside}.{key}", line, f"not something a {what} has.{_meant(key, keys(what))}")
        try:
            words = clean(_words(key, value))
            check_fact(what, key, words)
        except Refusal as refusal:
            raise SetupProblem(f"{inside}.{key}", line, str(refusal)) from None
        pairs.append((key, words))
    return Setting(date=today, what=what, name=name, values=tuple(pairs), line="")


def _flat(what: str, table: Mapping[str, Any]) -> Iterator[tuple[str, str, Any]]:
    """(table, key, value), with the label's own table laid in."""
    for key, value in table.items():
        if what == "product" and key == "label" and isinstance(value, dict):
            yield from (("product.label", inner, found) for inner, found in value.items())
        else:
            yield what, "circuits" if what == "zone" and key == "circuit" else key, value


def _words(key: str, value: Any) -> str:
    """A TOML value as the words that a line would have."""
    match value:
        case bool():
            return "yes" if value else "no"
        case str():
            return value
        case int() | float():  # a bool was met above
            return f"{value:.15g}"
        case date():
            return value.isoformat()
        case list():
            return (" " if key in _SPACED else "; ").join(_item(key, item) for item in value)
    raise Refusal(str(value), "a text, a number, true or false is wanted here.")


def _item(key: str, item: Any) -> str:
    if not isinstance(item, dict):
        return _words(key, item)
    wanted = {"mix": ("grass", "percent"), "actives": ("name",), "circuits": ("name", "share", "rate")}.get(key)
    if wanted is None:
        raise Refusal(key, "a table can't stand here.")
    missing = next((part for part in wanted if part not in item), "")
    if missing:
        raise Refusal(key, f"{missing} is missing in one of its items.")
    extra = {"mix": {"grass", "percent"}, "circuits": {"name", "share", "rate"}}.get(
        key, {"name", "percent", "lb_per_gal"}
    )
    stray = next((part for part in item if part not in extra), "")
    if stray:
        raise Refusal(stray, f"not something an item of {key} has.{_meant(stray, extra)}")
    parts = [_words(wanted[0], item[wanted[0]])]
    for part, unit in (("percent", "%"), ("share", "%"), ("lb_per_gal", "lb/gal"), ("rate", "")):
        if part in item:
            if isinstance(item[part], bool):
                raise Refusal(part, "a number is wanted.")
            words = _words(part, item[part]).replace(" ", "")
            parts.append(f"{words}{unit}" if isinstance(item[part], int | float) else words)
    return " ".join(parts)


def _meant(word: str, names: Any) -> str:
    near = nearest(word, names)
    return f" Did you mean {near}?" if near else ""


_HEAD = re.compile(r"\[\[?\s*([\w.\-]+)\s*\]\]?\s*(#.*)?$")


def _line(text: str, table: str, index: int, key: str) -> int:
    """The line a key stands on, else its table's: in the index-th of that name ('' is the file's own level), or 0."""
    line, head = _find(text, table, index, key)
    outer, dot, _ = table.partition(".")
    if not line and dot:
        line, outer_head = _find(text, outer, index, key)
        line, head = line or _find(text, outer, index, "label")[0], head or outer_head
    return line or head or (_find(text, "", 0, outer)[0] if table else 0)


def _find(text: str, table: str, index: int, key: str) -> tuple[int, int]:
    """The line of the key and that of its table's head; 0 for what is not there."""
    current, head = "", 0
    seen: dict[str, int] = {}
    outer = table.partition(".")[0]
    for number, raw in enumerate(text.split("\n"), 1):
        line = raw.strip()
        if found := _HEAD.match(line):
            current = found[1]
            seen[current] = seen.get(current, -1) + 1
            if not table and current.partition(".")[0] == key:
                return number, 0
            head = number if current == table and seen.get(outer, 0) == index else head
        elif current == table and seen.get(outer, 0) == index and "=" in line and key:
            said = line.partition("=")[0].strip(" \t\"'")
            if key in (said, said.rpartition(".")[2], said.partition(".")[0]):
                return number, head
    return 0, head
