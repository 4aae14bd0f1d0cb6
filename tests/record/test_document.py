"""Entries to what is kept, and back; what can't be read is said to be so."""

import json
from datetime import date
from typing import Any

import pytest
from hypothesis import given, settings

from journal.record.document import Unknown, from_document, full_document, to_document
from journal.record.dose import Dose
from journal.record.entry import KINDS, Entry
from journal.record.kinds.setting import Setting
from journal.record.kinds.treatment import Treatment
from journal.record.kinds.watering import Schedule, Watering
from journal.store.plain import fault, text_fault
from tests.line.entries import KINDS_ON_A_LINE, entries
from tests.line.lawns import TODAY, US, a_history

LAWN = a_history(US).lawn(TODAY)


def depth(value: Any) -> int:
    """Levels of lists and objects."""
    if isinstance(value, dict | list):
        return 1 + max((depth(item) for item in (value.values() if isinstance(value, dict) else value)), default=0)
    return 0


def kept(entry: Entry) -> None:
    """What holds of every document."""
    document = to_document(entry)
    text = json.dumps(document, allow_nan=False)
    assert from_document(entry.id, json.loads(text)) == entry
    assert not fault(document)
    assert not text_fault(document)
    assert depth(document) <= 4
    assert set(document) >= {"kind", "date"}
    whole = json.loads(json.dumps(full_document(entry), allow_nan=False))
    assert whole["id"] == entry.id
    assert from_document(entry.id, whole) == entry


@pytest.mark.parametrize("kind", KINDS_ON_A_LINE, ids=lambda kind: kind.kind)
def test_every_entry_is_kept_whole(kind: type[Entry]) -> None:
    @settings(max_examples=12)
    @given(entries(kind, LAWN))
    def holds(entry: Entry) -> None:
        kept(entry)

    holds()
    kept(kind(date=TODAY, id="e1"))


def test_a_setting_is_kept_whole() -> None:
    kept(
        Setting(
            id="s1", date=TODAY, what="zone", name="front", values=(("area", "2400sqft"), ("sun", "full")), since=TODAY
        )
    )


def test_what_is_not_said_takes_no_room() -> None:
    assert to_document(Watering(id="w1", date=TODAY)) == {"kind": "watering", "date": "2027-05-03"}
    mixed = Treatment(id="t1", date=TODAY, product="a", also=(Dose("b", amount_ml=0.0), Dose("c")))
    assert to_document(mixed)["also"] == [{"product": "b", "amount_ml": 0.0}, {"product": "c"}]


def test_a_field_of_a_later_version_is_passed_over() -> None:
    entry = from_document("m1", {"kind": "mowing", "date": "2027-05-03", "mood": {"deep": [1]}})
    assert (entry.kind, entry.id, entry.date) == ("mowing", "m1", date(2027, 5, 3))


BAD = [
    ({}, "None"), ({"kind": "planting", "date": "2027-05-03"}, "planting"), ({"kind": ["mowing"]}, "mowing"),
    ({"kind": None}, "None"),
    ({"kind": "mowing"}, "date"), ({"kind": "mowing", "date": "2027-02-29"}, ""),
    ({"kind": "mowing", "date": 20270503}, ""),
    ({"kind": "mowing", "date": None}, ""), ({"kind": "mowing", "time": "25:00"}, ""),
    ({"kind": "mowing", "time": 7}, ""),
    ({"kind": "mowing", "height_mm": "76"}, "number"), ({"kind": "mowing", "height_mm": True}, "number"),
    ({"kind": "mowing", "height_mm": [1]}, "number"),
    ({"kind": "mowing", "height_mm": 10**400}, ""), ({"kind": "mowing", "height_mm": float("inf")}, "number"),
    ({"kind": "mowing", "zones": "front"}, "list"), ({"kind": "mowing", "zones": ["front", 3]}, "text"),
    ({"kind": "mowing", "zones": {"a": 1}}, "list"),
    ({"kind": "mowing", "zones": None}, "list"), ({"kind": "mowing", "clippings": 3}, "text"),
    ({"kind": "mowing", "spot": "yes"}, "true or false"),
    ({"kind": "mowing", "spot": 1}, "true or false"), ({"kind": "mowing", "remark": None}, "text"),
    ({"kind": "mowing", "line": ["mow"]}, "text"),
    ({"kind": "mowing", "assumed": [["zones"]]}, "text"),
    ({"kind": "schedule", "weekdays": [7]}, "weekday"), ({"kind": "schedule", "weekdays": ["mon"]}, "weekday"),
    ({"kind": "schedule", "weekdays": [True]}, "weekday"),
    ({"kind": "schedule", "since": "soon"}, ""), ({"kind": "watering", "circuits": [["A"]]}, "parts"),
    ({"kind": "watering", "circuits": [["A", "x"]]}, "number"),
    ({"kind": "watering", "circuits": ["A5"]}, "list"), ({"kind": "setting", "values": [["area", 3]]}, "text"),
    ({"kind": "setting", "values": {"area": "3"}}, "list"),
    ({"kind": "treatment", "also": [{"amount_g": 3}]}, "text"), ({"kind": "treatment", "also": ["b"]}, "product"),
    ({"kind": "treatment", "also": "b"}, "list"),
    ({"kind": "treatment", "also": [{"product": "b", "amount_g": "3"}]}, "number"),
    ({"kind": "treatment", "also": [{"product": "b", "colour": 3}]}, "colour"),
]  # fmt: skip


@pytest.mark.parametrize(("document", "why"), BAD, ids=[str(document)[:60] for document, _ in BAD])
def test_what_is_no_entry_is_unknown(document: dict[str, Any], why: str) -> None:
    if "kind" in document and len(document) > 1 and "date" not in document:
        document = {"date": "2027-05-03"} | document
    with pytest.raises(Unknown) as caught:
        from_document("x1", document)
    assert why in str(caught.value)


def test_lists_come_back_as_tuples_of_the_right_things() -> None:
    document = {"kind": "schedule", "date": "2027-05-03", "weekdays": [0, 2], "minutes": 20, "time": "06:00:00"}
    entry = from_document("s1", document)
    assert isinstance(entry, Schedule)
    assert (entry.weekdays, entry.minutes, str(entry.time)) == ((0, 2), 20.0, "06:00:00")
    assert hash(entry) == hash(entry)


def test_every_kind_has_a_name_a_verb_and_a_document() -> None:
    for name, kind in KINDS.items():
        assert kind.kind == name
        assert kind.verbs
        assert from_document("x", {"kind": name, "date": "2027-05-03"}) == kind(id="x", date=TODAY)


def test_a_book_from_elsewhere_brings_no_control_characters_in() -> None:
    document = {
        "kind": "mowing",
        "date": "2026-06-01",
        "remark": "red \x1b[31m and \u202edlo\u202c",
        "zones": ["fr\x00ont"],
    }
    entry = from_document("x", document)
    assert entry.remark == "red [31m and dlo"
    assert entry.zones == ("front",)
