"""One line of the log <-> the versions it holds: checksum, shape, and nothing else.

A line is one JSON object in UTF-8, at most `LONGEST` bytes without its newline, keys in this order:
v n at by, then t id was put|del undoes (one change) or all (a list of such changes), and crc last.
The crc is CRC-32, eight lower-case hex digits, over every byte before `,"crc":`. Later formats keep that ending.
"""

from __future__ import annotations

import json
import re
from collections.abc import Sequence
from datetime import datetime
from functools import lru_cache
from typing import Any, NoReturn
from zlib import crc32

from journal.store.change import JSON, Part, Version
from journal.store.plain import DEEPEST, fault, text_fault

FORMAT = 1
LONGEST = 1024 * 1024  # bytes in a line
MOST = 200  # changes in a line
LAST_N = 2**53 - 1

_new = tuple.__new__  # a NamedTuple's own constructor takes twice as long
_CRC = b',"crc":"'
_TAIL = len(_CRC) + 8 + 2
_COMPUTER = re.compile(r"[a-z0-9][a-z0-9-]{0,39}")
_WORD = re.compile(r"[0-9A-Za-z_-]{1,64}")
_AT = re.compile(r"[0-9]{4}-[01][0-9]-[0-3][0-9]T[0-2][0-9]:[0-5][0-9]:[0-5][0-9]\.[0-9]{3}Z")
_VERSION = re.compile(r"[a-z0-9][a-z0-9-]{0,39}\.[1-9][0-9]{0,15}\.[0-9a-f]{8}(\.[1-9][0-9]{0,2})?")


class Misshapen(ValueError):
    """The checksum holds, yet the line does not say what a record says."""


class Newer(ValueError):
    """A record of a later format than this program knows."""


def _refuse(word: str) -> NoReturn:
    raise ValueError(f"{word} is not a number")


def _finite(text: str) -> float:
    value = float(text)
    if value - value != 0.0:
        raise ValueError(f"{text} is too large a number")
    return value


_encode = json.JSONEncoder(ensure_ascii=False, allow_nan=False, separators=(",", ":")).encode
_decode = json.JSONDecoder(parse_constant=_refuse, parse_float=_finite).decode


def as_text(value: object) -> str:
    """The exact text `value` has in a line; two documents are the same if this is."""
    return _encode(value)


@lru_cache(maxsize=256)
def is_computer(name: str) -> bool:
    """Whether `name` may name a computer in a record and in a file name."""
    return _COMPUTER.fullmatch(name) is not None


def is_word(name: object) -> bool:
    """Whether `name` may be an entry's id or a table's name: 1 to 64 letters, digits, `-` or `_`."""
    return isinstance(name, str) and _WORD.fullmatch(name) is not None


@lru_cache(maxsize=256)
def is_table(name: str) -> bool:
    """Whether `name` may be a table's name."""
    return is_word(name)


def sealed(line: bytes) -> bool:
    """Whether the line ends in its checksum and the checksum is right."""
    return (
        line[-_TAIL:-10] == _CRC
        and line[-2:] == b'"}'
        and len(line) <= LONGEST
        and b"%08x" % crc32(line[:-_TAIL]) == line[-10:-2]
    )


def encode(n: int, at: str, by: str, parts: Sequence[Part]) -> bytes:
    """The line (without newline) that says `parts`; ValueError (or UnicodeEncodeError) if it cannot be said."""
    record: JSON = {"v": FORMAT, "n": n, "at": at, "by": by}
    if len(parts) == 1:
        _say(record, parts[0])
    else:
        record["all"] = [_say({}, part) for part in parts]
    body = _encode(record)[:-1].encode("utf-8")
    return b'%b,"crc":"%08x"}' % (body, crc32(body))


def _say(record: JSON, part: Part) -> JSON:
    record["t"] = part.table
    record["id"] = part.id
    if part.was:
        record["was"] = part.was
    if part.document is None:
        record["del"] = True
    else:
        record["put"] = part.document
    if part.undoes is not None:
        record["undoes"] = part.undoes
    return record


def decode(line: bytes) -> list[Version]:
    """The versions in one sealed line; Misshapen or Newer if it is not a record of this format."""
    try:
        record = _decode(line.decode("utf-8"))
    except RecursionError:
        raise Misshapen("nested too deeply") from None
    except ValueError as why:
        raise Misshapen(f"not readable as JSON: {why}") from None
    return versions(record, line)


def decode_many(lines: Sequence[bytes]) -> list[Any] | None:
    """The raw records of many sealed lines in one go; None if they must be taken one by one."""
    try:
        records = _decode(b"".join((b"[", b",".join(lines), b"]")).decode("utf-8"))
        # Lines that only together make sense must not be read as records: each has its own line's checksum.
        if "".join([record["crc"] for record in records]).encode() == b"".join([line[-10:-2] for line in lines]):
            return records if len(records) == len(lines) else None
    except (ValueError, RecursionError, TypeError, LookupError):
        pass
    return None


def versions(record: Any, line: bytes) -> list[Version]:
    """The versions a decoded `record` holds. `line` is the sealed line it came from."""
    if type(record) is not dict:
        raise Misshapen("not an object")
    form = record.get("v")
    if form != FORMAT or type(form) is not int:
        if type(form) is int and form > FORMAT:
            raise Newer(f"format {form}")
        raise Misshapen('no format number "v"')
    crc, n, at, by = record.get("crc"), record.get("n"), record.get("at"), record.get("by")
    if type(crc) is not str or crc.encode("utf-8", "replace") != line[-10:-2]:
        raise Misshapen("the checksum is not the record's own")
    if type(n) is not int or not 0 < n <= LAST_N:
        raise Misshapen('"n" is not a number from 1 up')
    if type(at) is not str or not is_stamp(at):
        raise Misshapen('"at" is not a time')
    if type(by) is not str or not is_computer(by):
        raise Misshapen('"by" is not a computer\'s name')
    # Few brackets cannot nest deeply, and only an escape can smuggle half a character into valid UTF-8.
    unsure = b"\\" in line or line.count(b"[") + line.count(b"{") > DEEPEST
    name = f"{by}.{n}.{crc}"
    if "all" not in record:
        return [_version(record, 5, (name, at, by, n, crc, 0), unsure)]
    group = record["all"]
    if type(group) is not list or not 0 < len(group) <= MOST or len(record) != 6:
        raise Misshapen(f'"all" is not a list of 1 to {MOST} changes')
    return [_version(part, 0, (f"{name}.{k}", at, by, n, crc, k), unsure) for k, part in enumerate(group, start=1)]


def _version(part: Any, others: int, source: tuple[str, str, str, int, str, int], unsure: bool) -> Version:
    """One change; `others` is how many keys besides the change's own the object holds, `source` what they say."""
    if type(part) is not dict:
        raise Misshapen("a change is not an object")
    table, entry, document = part.get("t"), part.get("id"), part.get("put")
    if type(table) is not str or type(entry) is not str or not (is_table(table) and is_word(entry)):
        raise Misshapen('"t" or "id" is not a name')
    expected = others + 3
    was: tuple[str, ...] = ()
    if "was" in part:
        expected += 1
        was = _names(part["was"])
    undoes = part.get("undoes")
    if undoes is not None:
        expected += 1
        _names([undoes])
    if len(part) != expected:
        raise Misshapen("a key is missing or unknown")
    if document is None:
        if part.get("del") is not True:
            raise Misshapen('neither "put" nor "del"')
    elif type(document) is not dict:
        raise Misshapen('"put" is not an object')
    elif unsure:
        why = fault(document) or text_fault(document)
        if why:
            raise Misshapen(why)
    name, at, by, n, crc, place = source
    return _new(Version, (name, table, entry, was, document, undoes, at, by, n, crc, place))


def _names(value: Any) -> tuple[str, ...]:
    if type(value) is not list or not value:
        raise Misshapen('"was" is not a list of versions')
    for name in value:
        if type(name) is not str or _VERSION.fullmatch(name) is None:
            raise Misshapen("not the name of a version")
    return tuple(value)


def is_stamp(at: str) -> bool:
    """Whether `at` is a real moment written as 2026-05-03T14:22:31.123Z."""
    if _AT.fullmatch(at) is None:
        return False
    try:
        datetime.fromisoformat(at)
    except ValueError:
        return False
    return True
