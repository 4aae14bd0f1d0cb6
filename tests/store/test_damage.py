"""Damage costs what it hit and nothing else, and is named."""

from __future__ import annotations

import os
import random
import sys
from pathlib import Path

import pytest

from journal.store.book import Book, NotSaved
from journal.store.scan import scan
from tests.store.rigs import UNSYNCED, Clock, a_book, log_of, mowing, reopened
from tests.store.test_format import line_of, seal

ZEROS, JUNK = b"\0" * 40, bytes(random.Random(7).randbytes(40))


def rain(nth: int) -> dict[str, object]:
    """A short entry: the shorter, the fewer places there are to cut."""
    return {"kind": "rain", "minutes": nth}


@pytest.fixture
def five(tmp_path: Path) -> tuple[Book, list[str], bytes]:
    """A book of five records, their ids in order, and the log's bytes."""
    book = a_book(tmp_path / "lawn")
    ids = [book.add([rain(n)], [f"id{n}"])[0].id for n in range(5)]
    book.close()
    return book, ids, log_of(book).read_bytes()


def whole(data: bytes, cut: int) -> int:
    """How many records end (newline or not) at or before `cut`."""
    ends = [i - 1 for i, byte in enumerate(data) if byte == 10]
    return sum(end + 1 <= cut for end in ends)


def test_the_end_cut_off_anywhere_and_filled_with_anything(five: tuple[Book, list[str], bytes]) -> None:
    book, ids, data = five
    log = log_of(book)
    old = data[: data.index(b"\n")][-60:-20]
    for cut in range(len(data) + 1):
        kept = whole(data, cut)
        for fill in (b"", ZEROS, JUNK, old):
            log.write_bytes(data[:cut] + fill)
            again = Book.open(book.folder, computer="desk-7f3a", clock=Clock(), files=UNSYNCED)
            assert list(again.entries()) == ids[:kept], (cut, fill)
            (added,) = again.add([mowing(99)])
            again.close()
            found = scan(log.read_bytes())
            assert [version.id for version in found.versions] == [*ids[:kept], added.id], (cut, fill)
            assert log.read_bytes().startswith(data[:cut] + fill)


def test_one_flipped_bit_costs_one_record_and_is_named(five: tuple[Book, list[str], bytes]) -> None:
    book, ids, data = five
    starts = [0] + [i + 1 for i, byte in enumerate(data) if byte == 10]
    log = log_of(book)
    for at in range(starts[1], starts[3]):
        hit = ids[1] if at < starts[2] else ids[2]
        for bit in range(8):
            spoilt = bytearray(data)
            spoilt[at] ^= 1 << bit
            found = scan(bytes(spoilt))
            kept = [version.id for version in found.versions]
            assert all(version.document == rain(ids.index(version.id)) for version in found.versions)
            if data[at] == 10:  # a lost newline costs nothing, a record needs none
                assert kept == ids
            else:
                assert kept == [id for id in ids if id != hit], (at, bit)
            assert len(found.damage) >= 1
            assert min(starts[ids.index(hit)], at) <= found.damage[0].offset <= at
    spoilt = bytearray(data)
    spoilt[starts[2] + 50] ^= 4
    log.write_bytes(bytes(spoilt))
    again = reopened(book.folder)
    report = again.check()
    assert report.damaged == ((f"log/{log.name}", starts[2], "the checksum does not match"),)
    assert report.gaps == {"desk-7f3a": ((3, 3),)}
    assert (report.problems, again.damaged, list(again.entries())) == (True, 1, ids[:2] + ids[3:])
    assert report.as_json()["damaged"][0]["offset"] == starts[2]


def test_damage_after_the_book_was_opened_is_found_by_the_check_alone(five: tuple[Book, list[str], bytes]) -> None:
    book, ids, data = five
    again = reopened(book.folder)
    log_of(book).write_bytes(data.replace(b'"minutes":3', b'"minutes":8'))
    again.refresh()
    report = again.check()
    assert len(again.entries()) == len(ids)
    assert (len(report.damaged), report.vanished) == (1, 1)


def test_damage_within_and_between_records(five: tuple[Book, list[str], bytes]) -> None:
    _book, ids, data = five
    lines = data.split(b"\n")[:-1]
    starts = b'{"v":1,'
    for between in (b"", b"\r", b"\0" * 4096, JUNK, starts, starts * 3000, lines[0][:100], b'"crc":"00000000"}'):
        stretch = between.join(lines)
        assert [version.id for version in scan(stretch).versions] == ids, between
    assert scan(b"\r\n".join(lines) + b"\r\n").damage == []  # somebody's editor
    assert [version.id for version in scan(b"\n\n".join(lines)).versions] == ids
    for tail in (b"", b"\0\0", JUNK):
        assert [version.id for version in scan(data + tail).versions] == ids
        assert bool(scan(data + tail).open_tail) == bool(tail)


def test_lines_that_only_together_make_sense_are_no_records() -> None:
    good = line_of(id="good")
    opened, closed = seal('{"a":{"b":1}'), seal('"c":2}')
    doubled = seal(good.decode() + "," + good.decode())
    for odd in ([seal('1],[{"a":1}')], [opened, closed], [opened, closed, doubled], [seal("[1}")], [seal("}")]):
        found = scan(b"\n".join([good, *odd, good, b""]))
        assert [version.id for version in found.versions] == ["good", "good"], odd
        assert len(found.damage) == len(odd)


def test_a_torn_end_is_named_until_it_is_complete(five: tuple[Book, list[str], bytes]) -> None:
    book, ids, data = five
    log = log_of(book)
    log.write_bytes(data[:-30])  # half of it has arrived from the other computer
    again = reopened(book.folder)
    assert list(again.entries()) == ids[:4]
    assert [why for _, _, why in again.check().damaged] == ["cut short: the record at the end is not complete"]
    with log.open("ab") as file:
        file.write(data[-30:])
    assert [change.id for change in again.refresh()] == ids[4:]
    assert not again.check().problems


@pytest.mark.parametrize("form", [2, 17])
def test_a_record_of_a_later_format_closes_the_book_for_writing(tmp_path: Path, form: int) -> None:
    book = a_book(tmp_path / "lawn")
    (kept,) = book.add([mowing(1)])
    later = tmp_path / "lawn" / "log" / "2031-attic-0001.jsonl"
    later.write_bytes(line_of(v=form, mood="new") + b"\n")
    for opened in (book, reopened(tmp_path / "lawn")):
        opened.refresh()
        assert opened.read_only
        assert "newer version of the program (2031-attic-0001.jsonl)" in opened.why_read_only
        assert dict(opened.entries()) == {kept.id: mowing(1)}
        for attempt in (
            lambda opened=opened: opened.add([mowing(2)]),
            lambda opened=opened: opened.amend(kept.id, mowing(2)),
            lambda opened=opened: opened.strike(kept.id),
            lambda opened=opened: opened.undo([kept]),
        ):
            with pytest.raises(NotSaved, match="newer version"):
                attempt()
        report = opened.check()
        assert (report.newer, report.problems, report.damaged) == (("2031-attic-0001.jsonl",), True, ())
    later.write_bytes(line_of(v=form).replace(b"rain", b"hail"))  # damaged: then nobody knows what it was
    assert not reopened(tmp_path / "lawn").read_only


def test_a_later_format_noticed_while_writing(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    book.add([mowing(1)])
    (tmp_path / "lawn" / "log" / "2026-attic-0001.jsonl").write_bytes(line_of(v=2) + b"\n")
    with pytest.raises(NotSaved, match="newer version"):
        book.add([mowing(2)])
    assert len(log_of(book).read_bytes().splitlines()) == 1


@pytest.mark.skipif(sys.platform == "win32", reason="makes links and pipes")
def test_what_is_named_like_a_log_and_is_none(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    (kept,) = book.add([mowing(1)])
    log = tmp_path / "lawn" / "log"
    secret = tmp_path / "secret.jsonl"
    secret.write_bytes(line_of(id="secret") + b"\n")
    (log / "a-link.jsonl").symlink_to(secret)
    (log / "b-folder.jsonl").mkdir()
    os.mkfifo(log / "c-pipe.jsonl")
    with (log / "d-huge.jsonl").open("wb") as file:
        file.truncate(2**40)
    (log / "e-import.jsonl.part").write_bytes(line_of(id="part") + b"\n")
    (log / "f-packed.jsonl.gz").write_bytes(b"\x1f\x8b")
    (log / ".g-hidden.jsonl.tmp").write_bytes(line_of(id="hidden") + b"\n")
    (log / "notes.txt").write_bytes(line_of(id="notes") + b"\n")
    (log / "2026-desk-7f3a.sync-conflict-20260504-101112-ABCDEFG.jsonl").write_bytes(line_of(id="copy") + b"\n")
    (log / "2026-desk-7f3a.jsonl (Ann's copy)").write_bytes(line_of(id="copy2", n=8) + b"\n")
    again = reopened(tmp_path / "lawn")
    assert sorted(again.entries()) == sorted([kept.id, "copy", "copy2"])
    report = again.check()
    assert report.ignored == (
        ("a-link.jsonl", "a link, not a file"),
        ("b-folder.jsonl", "a folder, not a file"),
        ("c-pipe.jsonl", "not an ordinary file"),
    )
    assert (report.oversize, report.problems, again.damaged) == (("d-huge.jsonl",), True, 4)
    assert report.waiting == (".g-hidden.jsonl.tmp", "e-import.jsonl.part", "f-packed.jsonl.gz")


@pytest.mark.skipif(sys.platform == "win32", reason="makes links")
def test_a_link_in_place_of_the_own_log_is_not_followed(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    victim = tmp_path / "victim"
    victim.write_bytes(b"precious")
    log_of(book).symlink_to(victim)
    with pytest.raises(NotSaved, match="a link stands where the log should be"):
        book.add([mowing(1)])
    assert (victim.read_bytes(), dict(book.entries())) == (b"precious", {})
    log_of(book).unlink()
    book.add([mowing(1)])
    (tmp_path / "lawn" / ".lock-desk-7f3a").unlink()
    (tmp_path / "lawn" / ".lock-desk-7f3a").symlink_to(victim)
    book.add([mowing(2)])  # without the lock there is still a file of one's own
    assert victim.read_bytes() == b"precious"
    assert len(reopened(tmp_path / "lawn").entries()) == 2
