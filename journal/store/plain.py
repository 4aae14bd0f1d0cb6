"""What a document may hold: whatever is read can be written again, and the other way round."""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Any

from journal.store.change import JSON

DEEPEST = 8  # levels of lists and objects, the document itself being the first


def fault(document: Mapping[str, Any], depth: int = 1) -> str:
    """Say in words why `document` cannot be kept, naming the field; "" if it can. Text is left to `text_fault`."""
    for key, value in document.items():
        if key.__class__ is not str:
            return f"the field {key!r} is not named by text"
        kind = value.__class__
        if kind is str or kind is int or value is None or isinstance(value, str | int):
            continue
        if isinstance(value, float):
            if not math.isfinite(value):
                return f'"{key}" is not a finite number'
        elif isinstance(value, dict | list | tuple):
            if depth >= DEEPEST:
                return f'"{key}" is nested too deeply (more than {DEEPEST} levels)'
            inside = value if isinstance(value, dict) else {f"{key}[{i}]": item for i, item in enumerate(value)}
            why = fault(inside, depth + 1)
            if why:
                return why
        else:
            return f'"{key}" is a {type(value).__name__}, which cannot be written'
    return ""


def text_fault(value: object, name: str = "the document") -> str:
    """Name the field whose text no file can hold: half a character (a lone surrogate); "" if there is none."""
    if isinstance(value, str):
        try:
            value.encode("utf-8")
        except UnicodeEncodeError:
            return f'"{name}" holds half a character, which cannot be written'
    elif isinstance(value, dict):
        for key, item in value.items():
            why = text_fault(key, "a field's name") or text_fault(item, str(key))
            if why:
                return why
    elif isinstance(value, list | tuple):
        for item in value:
            why = text_fault(item, name)
            if why:
                return why
    return ""


def copied(document: Mapping[str, Any]) -> JSON:
    """A copy that shares no list or object with `document`."""
    return {
        key: _copied(value) if value.__class__ is list or value.__class__ is dict else value
        for key, value in document.items()
    }


def _copied(value: Any) -> Any:
    if isinstance(value, list):
        return [_copied(item) for item in value]
    if isinstance(value, dict):
        return copied(value)
    return value
