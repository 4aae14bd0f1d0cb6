"""TinyDB on the log does what TinyDB does, and does it durably and at the cost of the change."""

from __future__ import annotations

import json
import random
from copy import deepcopy
from pathlib import Path
from typing import Any

import pytest
from tinydb import Query, TinyDB, where
from tinydb.operations import delete, increment
from tinydb.storages import MemoryStorage
from tinydb.table import Document, Table

from journal.store.book import NotSaved
from journal.store.table import ChangeView, JournalDB
from tests.store.rigs import UNSYNCED, Clock, FailingDisk, a_book, log_of, mowing


def a_database(folder: Path, files: Any = UNSYNCED) -> JournalDB:
    a_book(folder).close()
    return JournalDB(folder, "desk-7f3a", Clock(), files)


class TextIds(Table):
    """Stock TinyDB, but for ids that are text and given by the test."""

    document_id_class = str  # type: ignore[assignment]
    given: list[str]

    def _get_next_id(self) -> str:
        return self.given.pop(0)


class OwnCopies(MemoryStorage):
    """Stock storage that shares nothing with its table, as a file would; else half of a failed update would stay."""

    def read(self) -> Any:
        return json.loads(json.dumps(self.memory))


def outcome(call: Any) -> object:
    """What a call returns or raises, to be compared."""
    try:
        result = call()
    except (ValueError, KeyError, TypeError, RuntimeError) as why:
        return type(why)
    if isinstance(result, list):
        result = [(getattr(item, "doc_id", None), item) for item in result]
    elif isinstance(result, Document):
        result = (result.doc_id, result)
    return result


def random_call(chance: random.Random, ids: list[str]) -> Any:
    """A call on a table; `ids` gives the ids of what is inserted."""
    some = [chance.choice(ids) for _ in range(chance.randint(0, 3))]
    doc = {"kind": chance.choice("abc"), "n": chance.randrange(5), "more": {"zones": ["front", chance.randrange(3)]}}
    cond = chance.choice(
        [
            Query().kind == chance.choice("abc"),
            (where("n") > chance.randrange(5)) & (where("kind") != "a"),
            where("more")["zones"].any([chance.randrange(3)]),
            lambda found: found["n"] == 2,
            Query().fragment({"kind": "b"}),
            where("absent").exists(),
        ]
    )

    def spoil(found: dict[str, Any]) -> None:
        found["more"]["zones"].append("spoilt")

    changes = [{"n": 1}, {"n": True}, {"kind": "z", "new": [1]}, increment("n"), delete("kind"), spoil, {}]
    fields = chance.choice(changes)
    own = chance.choice(ids)

    def new() -> dict[str, Any]:
        return deepcopy(doc)  # stock TinyDB would share its lists with the caller

    calls: list[Any] = [
        lambda t: t.insert(new()),
        lambda t: t.insert(Document(new(), own)),
        lambda t: t.insert_multiple([new(), Document({"n": 3}, own), new()]),
        lambda t: t.insert_multiple([new(), "no document"]),
        lambda t: t.update(fields, cond),
        lambda t: t.update(fields, doc_ids=some),
        lambda t: t.update(fields),
        lambda t: t.update_multiple([({"n": 4}, where("n") == 1), (increment("n"), where("n") == 2)]),
        lambda t: t.upsert(new(), cond),
        lambda t: t.upsert(Document({"kind": "up"}, own)),
        lambda t: t.remove(cond),
        lambda t: t.remove(doc_ids=some),
        lambda t: (t.search(cond), t.count(cond), t.contains(cond)),
        lambda t: t.get(cond),
        lambda t: (t.get(doc_id=own), t.get(doc_ids=some), t.contains(doc_id=own)),
        lambda t: t.truncate() if own.endswith("0") else t.all(),
        lambda t: t.remove(),
    ]
    return chance.choice(calls)


@pytest.mark.parametrize("seed", range(12))
def test_the_same_calls_give_the_same_as_stock_tinydb(
    tmp_path: Path, seed: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    chance = random.Random(seed)
    ours = a_database(tmp_path / "lawn")
    plain = TextIds(OwnCopies(), "entries")
    ids = [f"id{n}" for n in range(12)]
    fresh = (f"fresh{n}" for n in range(10**6))
    for _ in range(120):
        given = [next(fresh) for _ in range(4)]
        plain.given = list(given)
        monkeypatch.setattr(type(ours.table("entries")), "_get_next_id", lambda _self, given=given: given.pop(0))
        call = random_call(chance, ids + [doc.doc_id for doc in plain.all()[:4]])
        assert outcome(lambda call=call: call(ours)) == outcome(lambda call=call: call(plain))
        assert by_id(ours) == by_id(plain)
        assert len(ours) == len(plain)
    again = JournalDB(tmp_path / "lawn", "desk-7f3a", Clock())
    assert by_id(again) == by_id(plain)


def by_id(table: Any) -> dict[str, str]:
    return {doc.doc_id: repr(sorted(doc.items())) for doc in table}


def test_a_stock_table_on_our_storage_works_too(tmp_path: Path) -> None:
    ours = a_database(tmp_path / "lawn")
    stock = TextIds(ours.storage, "entries")
    stock.given = ["a", "b", "c"]
    ours.insert(Document({"n": 0}, "zero"))
    stock.insert_multiple([{"n": 1}, {"n": 2, "zones": ["x"]}])
    stock.update({"n": 9}, where("n") == 1)
    stock.remove(doc_ids=["zero"])  # type: ignore[list-item]
    other = JournalDB(tmp_path / "lawn", "laptop-91c0", Clock())
    assert by_id(other) == by_id(ours) == by_id(stock)
    data = ours.storage.read()
    assert data is not None
    data["entries"]["b"]["zones"].append("spoilt")
    assert ours.get(doc_id="b") == {"n": 2, "zones": ["x"]}
    other.insert(Document({"n": 3}, "theirs"))  # between our read and our write
    del data["entries"]["a"]
    ours.storage.write(data)
    assert by_id(ours).keys() == {"b", "theirs"}
    assert ours.get(doc_id="b") == {"n": 2, "zones": ["x", "spoilt"]}


def test_tables_come_and_go(tmp_path: Path) -> None:
    ours = a_database(tmp_path / "lawn")
    ours.insert({"n": 1})
    ours.table("products").insert({"name": "oat-hill-starter"})
    ours.table("products", cache_size=5)
    assert ours.tables() == {"entries", "products"}
    ours.drop_table("products")
    assert ours.tables() == {"entries"}
    ours.insert_multiple({"n": n} for n in range(450))  # more than a line holds
    ours.drop_tables()
    assert (len(ours), ours.tables()) == (0, set())
    assert len(JournalDB(tmp_path / "lawn", "laptop-91c0", Clock())) == 0


def test_what_tinydb_returns_is_the_callers_own(tmp_path: Path) -> None:
    ours = a_database(tmp_path / "lawn")
    mine = {"zones": ["front"]}
    id = ours.insert(mine)
    mine["zones"].append("spoilt")
    for found in (ours.get(doc_id=id), ours.search(where("zones").exists())[0], ours.all()[0], next(iter(ours))):
        found["zones"].append("spoilt")
    assert ours.search(where("zones").exists()) == [{"zones": ["front"]}]


def test_a_table_may_be_changed_while_it_is_walked_over(tmp_path: Path) -> None:
    ours = a_database(tmp_path / "lawn")
    ours.insert_multiple({"n": n} for n in range(3))
    for doc in ours:
        ours.insert({"n": doc["n"] + 10})
    assert sorted(doc["n"] for doc in ours) == [0, 1, 2, 10, 11, 12]


def test_each_call_is_one_record_of_what_it_changed(tmp_path: Path) -> None:
    ours = a_database(tmp_path / "lawn")
    log = tmp_path / "lawn" / "log" / "2026-desk-7f3a.jsonl"

    def added(call: Any) -> int:
        before = log.read_bytes() if log.exists() else b""
        call()
        assert log.read_bytes().startswith(before)
        return log.read_bytes()[len(before) :].count(b"\n")

    assert added(lambda: ours.insert_multiple({"n": n} for n in range(50))) == 1
    assert added(lambda: ours.update({"n": 7}, where("n") > 40)) == 1
    assert added(lambda: ours.update({"n": 7}, where("n") == 7)) == 0  # nothing changed
    assert added(lambda: ours.update({"n": 1}, where("n") > 900)) == 0
    assert added(lambda: ours.upsert({"n": 901}, where("n") == 900)) == 1
    assert added(lambda: ours.remove(where("n") == 7)) == 1


def test_a_change_copies_no_more_than_it_changes(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    ours = a_database(tmp_path / "lawn")
    ids = ours.insert_multiple({"n": n} for n in range(150))
    seen: list[int] = []
    changes = ChangeView.changes

    def counting(self: ChangeView, table: str) -> Any:
        seen.append(len(self._now))
        return changes(self, table)

    monkeypatch.setattr(ChangeView, "changes", counting)
    ours.insert({"n": 1000})
    ours.update({"n": 2000}, doc_ids=ids[:2])
    ours.update({"n": 3000}, where("n") == 2000)
    ours.remove(where("n") == 1000)
    assert seen == [1, 2, 2, 1]


def test_a_failed_call_changes_nothing(tmp_path: Path) -> None:
    disk = FailingDisk()
    ours = a_database(tmp_path / "lawn", disk)
    ours.insert(Document({"n": 1}, "a"))
    disk.room = 10
    for call in (
        lambda: ours.insert({"n": 2}),
        lambda: ours.update({"n": 2}),
        lambda: ours.remove(doc_ids=["a"]),
        ours.truncate,
        ours.drop_tables,
    ):
        with pytest.raises(NotSaved):
            call()
        assert by_id(ours) == {"a": "[('n', 1)]"}
    disk.room = None
    with pytest.raises(ZeroDivisionError):
        ours.update(lambda doc: doc.update(n=1 / 0))
    assert by_id(ours) == {"a": "[('n', 1)]"}


def test_the_book_is_a_tinydb_database(tmp_path: Path) -> None:
    book = a_book(tmp_path / "lawn")
    (change,) = book.add([mowing(20)])
    assert isinstance(book.db, TinyDB)
    assert book.db.search((where("kind") == "mowing") & (where("minutes") > 10)) == [mowing(20)]
    book.db.update({"minutes": 25}, doc_ids=[change.id])
    assert book.entries()[change.id] == mowing(20) | {"minutes": 25}
    (undone,) = book.undo(book.newest_undoable())
    assert undone.after == mowing(20)
    assert len(log_of(book).read_bytes().splitlines()) == 3
