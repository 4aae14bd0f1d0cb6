"""The format on the disk, from its first day."""

from __future__ import annotations

import hashlib
import json
import shutil
from pathlib import Path
from zlib import crc32

import pytest
from hypothesis import given
from hypothesis import strategies as st

from journal.store.book import Book, NotSaved
from journal.store.change import Part
from journal.store.codec import Misshapen, decode, encode, sealed
from journal.store.plain import copied, fault, text_fault
from tests.store.rigs import Clock, a_book, log_of

FIXTURE = Path(__file__).parent / "fixture" / "book-v1"

RAIN = {
    "kind": "rain", "date": "2026-05-04", "zones": [], "depth_mm": 15.24, "line": "rain 0.6in",
    "remark": "heavy, “sideways” – 2 h",
}  # fmt: skip
WATERING = {
    "kind": "watering", "date": "2026-05-04", "zones": ["front"], "minutes": 30, "line": "water 30min front",
}  # fmt: skip
FEEDING = {
    "kind": "feeding", "date": "2026-05-06", "zones": ["front", "back"], "product": "oat-hill-starter",
    "amount_g": 5443.108, "line": "feed oat-hill-starter 12lb front back",
}  # fmt: skip
FIRST = {"kind": "mowing", "date": "2026-05-03", "zones": ["front"], "height_mm": 76.2, "line": "mow 3in front"}
MOWING = {
    "kind": "mowing", "date": "2026-05-03", "zones": ["front", "back"], "height_mm": 82.55, "clippings": "bag",
    "line": "mow 3.25in bag front back",
}  # fmt: skip


def name(nth: int) -> str:
    return f"01KQMEADOW{nth:016}"


def test_a_book_of_the_first_format_reads_as_it_always_did(tmp_path: Path) -> None:
    shutil.copytree(FIXTURE, tmp_path / "lawn")
    book = Book.open(tmp_path / "lawn", computer="desk-7f3a", clock=Clock(2026, 6, 1))
    assert dict(book.entries()) == {name(1): MOWING, name(2): WATERING, name(4): RAIN, name(5): FEEDING}
    assert book.conflicts() == {name(2): (WATERING | {"minutes": 25, "line": "water 25min front"},)}
    assert book.head(name(3)) == "desk-7f3a.4.c9fa9acb"
    assert not book.read_only
    report = book.check()
    assert (report.problems, report.records) == (False, 9)
    (redoable,) = book.newest_redoable()
    assert (redoable.undoes, redoable.before, redoable.after) == ("desk-7f3a.5.97489330", None, RAIN)
    (newest,) = book.newest_undoable()
    assert newest.version == "desk-7f3a.7.c851d9c0"
    with pytest.raises(NotSaved, match="laptop-91c0"):
        book.undo([newest])
    (settled,) = [book.amend(name(2), WATERING | {"minutes": 28})]
    assert (settled.version.rsplit(".", 1)[0], book.conflicts()) == ("desk-7f3a.8", {})
    assert not book.check().problems


def test_this_fixture_never_changes() -> None:
    files = sorted(path for path in FIXTURE.rglob("*") if path.is_file())
    found = {path.relative_to(FIXTURE).as_posix(): hashlib.sha256(path.read_bytes()).hexdigest() for path in files}
    assert found == {
        "log/2026-desk-7f3a.jsonl": "6276f67e7a6e804f972191bf591f13d390070c2192ff4afdea88fa1b8d1e12cc",
        "log/2026-laptop-91c0.jsonl": "2896db2a796b4004349aae3378a8bf6154765ebae5a48ba5402aaaab791caa9b",
        "READ-ME.txt": "8bf473850d257a041b4693c2800974d417849d7480e13f1eaf9bbf6f6875a946",
    }


def test_the_bytes_of_a_line(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    (first,) = book.add([FIRST], [name(1)])
    book.amend(name(1), RAIN)
    book.undo([book.strike(name(1))])
    book.add([FIRST, RAIN], [name(2), name(3)])
    lines = log_of(book).read_bytes().split(b"\n")
    assert lines.pop() == b""
    assert lines[0] == (
        b'{"v":1,"n":1,"at":"2026-05-03T14:22:31.123Z","by":"desk-7f3a","t":"entries","id":"01KQMEADOW0000000000000001",'
        b'"put":{"kind":"mowing","date":"2026-05-03","zones":["front"],"height_mm":76.2,"line":"mow 3in front"},'
        b'"crc":"%08x"}' % crc32(lines[0][:-18])
    )
    assert first.version == f"desk-7f3a.1.{lines[0][-10:-2].decode()}"
    keys = [list(json.loads(line)) for line in lines]
    head = ["v", "n", "at", "by"]
    assert keys == [
        [*head, "t", "id", "put", "crc"],
        [*head, "t", "id", "was", "put", "crc"],
        [*head, "t", "id", "was", "del", "crc"],
        [*head, "t", "id", "was", "put", "undoes", "crc"],
        [*head, "all", "crc"],
    ]
    assert "“sideways” –".encode() in lines[1]  # text is written as it is
    for line in lines:
        assert line[-10:-2] == b"%08x" % crc32(line[:-18])


def line_of(**changes: object) -> bytes:
    """A line whose checksum is right, whatever else it says. None leaves a key out."""
    record = {
        "v": 1, "n": 7, "at": "2026-05-03T14:22:31.123Z", "by": "desk-7f3a", "t": "entries", "id": "a",
        "was": ["desk-7f3a.1.0a1b2c3d"], "put": {"kind": "rain"}, "undoes": "desk-7f3a.1.0a1b2c3d.200",
    } | changes  # fmt: skip
    said = {key: value for key, value in record.items() if value is not None}
    return seal(json.dumps(said, separators=(",", ":")))


def seal(text: str) -> bytes:
    body = text[:-1].encode()
    return b'%b,"crc":"%08x"}' % (body, crc32(body))


def test_a_well_shaped_line() -> None:
    (version,) = decode(line_of())
    assert version.name.startswith("desk-7f3a.7.")
    assert (version.document, version.undoes) == ({"kind": "rain"}, "desk-7f3a.1.0a1b2c3d.200")
    group = {"t": None, "id": None, "put": None, "was": None, "undoes": None}
    both = decode(line_of(**group, all=[{"t": "entries", "id": "a", "put": {}}, {"t": "x", "id": "b", "del": True}]))
    assert [(v.name[-2:], v.table, v.document) for v in both] == [(".1", "entries", {}), (".2", "x", None)]


@pytest.mark.parametrize(
    "changes",
    [
        {"v": None}, {"v": True}, {"v": "1"}, {"v": 0}, {"v": 1.0},
        {"n": 0}, {"n": -1}, {"n": 1.0}, {"n": 2**53}, {"n": None}, {"n": True},
        {"at": "2026-05-03T14:22:31Z"}, {"at": "2026-02-30T14:22:31.123Z"}, {"at": "2026-W01-1T14:22:31.123Z"},
        {"at": 7}, {"by": "Desk"}, {"by": "a.b"}, {"by": "x" * 41}, {"by": None},
        {"t": ""}, {"t": None}, {"id": "../a"}, {"id": ""}, {"id": "x" * 65}, {"id": 5}, {"id": None},
        {"was": []}, {"was": "desk-7f3a.1.0a1b2c3d"}, {"was": ["desk-7f3a.1"]}, {"was": [1]},
        {"put": None}, {"put": []}, {"put": "x"}, {"del": True}, {"put": None, "del": 1}, {"put": None, "del": False},
        {"undoes": "x"}, {"undoes": ["desk-7f3a.1.0a1b2c3d"]}, {"more": 1}, {"all": []}, {"all": [{}]},
        {"put": {"a": [[[[[[[[1]]]]]]]]}}, {"put": {"a": "\ud83d"}}, {"put": {"a": ["\udc00"]}},
    ],
)  # fmt: skip
def test_a_sealed_line_of_the_wrong_shape_is_no_record(changes: dict[str, object]) -> None:
    line = line_of(**changes)
    assert sealed(line)
    with pytest.raises(Misshapen):
        decode(line)


@pytest.mark.parametrize("value", ["NaN", "Infinity", "-Infinity", "1e999", "-1e999", "1" * 5000, "[" * 100000])
def test_numbers_and_nesting_that_could_not_be_written_again(value: str) -> None:
    head = '{"v":1,"n":7,"at":"2026-05-03T14:22:31.123Z","by":"desk-7f3a","t":"entries","id":"a","put":{"x":'
    with pytest.raises(Misshapen):
        decode(seal(f"{head}{value}}}}}"))


plain = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(st.characters(exclude_categories=())),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=4), inner, max_size=3),
    max_leaves=8,
)


@given(st.dictionaries(st.text(st.characters(exclude_categories=()), max_size=6), plain, max_size=4))
def test_what_is_written_is_read_and_what_is_read_can_be_written(document: dict[str, object]) -> None:
    part = Part("entries", "a", (), document)
    if fault(document) or text_fault(document):
        with pytest.raises((ValueError, Misshapen)):
            decode(encode(1, "2026-05-03T14:22:31.123Z", "desk", [part]))
        return
    line = encode(1, "2026-05-03T14:22:31.123Z", "desk", [part])
    assert b"\n" not in line
    (version,) = decode(line)
    assert version.document == document == copied(document)
    assert encode(1, "2026-05-03T14:22:31.123Z", "desk", [part._replace(document=version.document)]) == line
