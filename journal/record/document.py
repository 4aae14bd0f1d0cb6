"""Entries to and from the flat JSON documents that are kept and that scripts read."""

import dataclasses
import math
from collections.abc import Callable, Mapping
from datetime import date, time
from typing import Any, get_type_hints

from journal.record.clean import clean
from journal.record.dose import Dose
from journal.record.entry import KINDS, Entry

Document = dict[str, Any]
_Convert = Callable[[Any], Any]


class Unknown(ValueError):
    """A document that this version can't read as an entry; the message says why."""


_FIELDS: dict[str, dict[str, tuple[Any, _Convert]]] = {}


def _fields(cls: type[Entry]) -> dict[str, tuple[Any, _Convert]]:
    """Field -> (default, how its JSON is read), for every field of a kind but the id, which is the document's own."""
    found = _FIELDS.get(cls.kind)
    if found is None:
        hints = get_type_hints(cls)
        found = {f.name: (f.default, _converter(str(hints[f.name]))) for f in dataclasses.fields(cls) if f.name != "id"}
        _FIELDS[cls.kind] = found
    return found


def to_document(entry: Entry) -> Document:
    """What is stored: the kind, the date, and every field that is not at its default."""
    document: Document = {"kind": entry.kind}
    for name, (default, _) in _fields(type(entry)).items():
        value = getattr(entry, name)
        if value != default:
            document[name] = _plain(value)
    return document


def full_document(entry: Entry) -> Document:
    """What scripts read: the id and every field of the kind, also those not said."""
    document: Document = {"id": entry.id, "kind": entry.kind}
    document |= {name: _plain(getattr(entry, name)) for name in _fields(type(entry))}
    return document


def from_document(id: str, document: Mapping[str, Any]) -> Entry:
    """The entry a stored document stands for. Raises Unknown for a kind or a value that can't be read."""
    kind = document.get("kind")
    cls = KINDS.get(kind) if isinstance(kind, str) else None
    if cls is None:
        raise Unknown(f"an entry of the kind {kind!r} is not known to this version")
    fields = _fields(cls)
    try:
        values = {name: fields[name][1](value) for name, value in document.items() if name in fields}
        return cls(id=id, **values)
    except (TypeError, ValueError, OverflowError) as error:
        raise Unknown(f"a {kind} that can't be read: {error}") from None


def _plain(value: Any) -> Any:
    """JSON's own types: dates as ISO text, tuples as lists, small frozen values as objects."""
    match value:
        case date() | time():
            return value.isoformat()
        case tuple():
            return [_plain(item) for item in value]
        case Dose():
            named = {f.name: getattr(value, f.name) for f in dataclasses.fields(value)}
            return {name: item for name, item in named.items() if item is not None}
    return value


def _converter(words: str) -> _Convert:
    """How a value is read back, by the name of its type."""
    optional = "None" in words
    if "datetime.date" in words:
        convert: _Convert = date.fromisoformat
    elif "datetime.time" in words:
        convert = time.fromisoformat
    elif "Dose" in words:
        convert = _doses
    elif words in _ITEMS:
        convert = _items(*_ITEMS[words])
    elif words.startswith("float"):
        convert = _number
    else:
        convert = {"<class 'str'>": _text, "<class 'bool'>": _truth}[words]
    return (lambda value: None if value is None else convert(value)) if optional else convert


def _doses(value: Any) -> tuple[Dose, ...]:
    return tuple(_dose(item) for item in _list(value))


def _dose(item: Any) -> Dose:
    if not isinstance(item, dict):
        raise ValueError(f"{item!r} is not a product and its amount")
    amounts = {name: _number(amount) for name, amount in item.items() if name != "product"}
    return Dose(_text(item.get("product")), **amounts)


def _items(*parts: _Convert) -> _Convert:
    """Reads a list: of values when one converter is given, of lists that hold one value for each when several are."""

    def one(item: Any) -> Any:
        if len(parts) == 1:
            return parts[0](item)
        if len(_list(item)) != len(parts):
            raise ValueError(f"{item!r} has not {len(parts)} parts")
        return tuple(convert(value) for convert, value in zip(parts, item, strict=True))

    return lambda value: tuple(one(item) for item in _list(value))


def _list(value: Any) -> list[Any]:
    if not isinstance(value, list):
        raise ValueError(f"{value!r} is not a list")
    return value


def _number(value: Any) -> float:
    if isinstance(value, bool) or not isinstance(value, int | float) or not math.isfinite(value):
        raise ValueError(f"{value!r} is not a number")
    return float(value)


def _weekday(value: Any) -> int:
    if isinstance(value, bool) or not isinstance(value, int) or not 0 <= value <= 6:
        raise ValueError(f"{value!r} is not a weekday")
    return value


def _text(value: Any) -> str:
    if not isinstance(value, str):
        raise ValueError(f"{value!r} is not text")
    return value if value.isascii() and value.isprintable() else clean(value)  # a book may come from elsewhere


def _truth(value: Any) -> bool:
    if not isinstance(value, bool):
        raise ValueError(f"{value!r} is not true or false")
    return value


_ITEMS: dict[str, tuple[_Convert, ...]] = {
    "tuple[str, ...]": (_text,),
    "tuple[int, ...]": (_weekday,),
    "tuple[tuple[str, float], ...]": (_text, _number),
    "tuple[tuple[str, str], ...]": (_text, _text),
}
"""How the items of a list are read, by the name of its type."""
