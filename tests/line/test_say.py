"""Whatever was saved can be written as a line, and the line says it again."""

from dataclasses import replace
from datetime import date

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from journal.line.read import read, read_change
from journal.line.say import say
from journal.record.dose import Dose
from journal.record.entry import Entry
from journal.record.kinds.cultivation import Cultivation
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.photo import Photo
from journal.record.kinds.sighting import Count, Sighting
from journal.record.kinds.treatment import Treatment
from journal.record.kinds.weather import Rain, Weather
from journal.season.history import History
from tests.line.entries import KINDS_ON_A_LINE, entries
from tests.line.lawns import METRIC, TODAY, US, a_history, drafted, logged

HISTORIES = {"us": a_history(US), "metric": a_history(METRIC)}
CASES = [(units, kind) for units in HISTORIES for kind in KINDS_ON_A_LINE]


def again(entry: Entry, history: History, today: date = TODAY) -> Entry:
    """What reading the entry's own line gives, in place of an entry of which only the id is kept."""
    bare = type(entry)(id=entry.id, date=date(2024, 1, 1))
    line = say(entry, history.lawn(today))
    reading = read_change(line, bare, history, today)
    assert reading.draft is not None, f"{line!r}: {reading.problem}"
    return replace(reading.draft, line="", assumed=())


@pytest.mark.parametrize(("units", "kind"), CASES, ids=[f"{units}-{kind.kind}" for units, kind in CASES])
def test_reading_what_is_said_gives_the_entry_again(units: str, kind: type[Entry]) -> None:
    history = HISTORIES[units]

    @settings(max_examples=12)
    @given(entries(kind, history.lawn(TODAY)))
    def said(entry: Entry) -> None:
        assert again(entry, history) == entry

    said()


@pytest.mark.parametrize(
    "entry",
    [
        Weather(date=TODAY, high_c=0.0, low_c=0.0, rain_mm=0.0),
        Rain(date=TODAY, depth_mm=0.0),
        Sighting(date=TODAY, subject="weeds", percent=0.0),
        Count(date=TODAY, subject="grubs", per_m2=0.0),
        Treatment(date=TODAY, product="unknown", wind_m_s=0.0, temp_c=0.0),
    ],
)
def test_nought_is_said_and_not_dropped(entry: Entry) -> None:
    assert again(entry, HISTORIES["us"]) == entry
    assert again(entry, HISTORIES["metric"]) == entry


def test_a_liquid_weighed_in_ounces_is_said_in_grams() -> None:
    entry = Treatment(date=TODAY, product="thistle-out", amount_g=77.961784, zones=("front",))
    assert "oz" not in say(entry, HISTORIES["us"].lawn(TODAY))
    assert again(entry, HISTORIES["us"]) == entry


def test_a_tank_mix_keeps_each_amount_with_its_product() -> None:
    entry = drafted("treat thistle 3floz + gate 4oz/k + unknown front", HISTORIES["us"])
    assert isinstance(entry, Treatment)
    assert (entry.product, [dose.product for dose in entry.also]) == ("thistle-out", ["gate-barrier", "unknown"])
    assert entry.amount_ml == pytest.approx(88.72, abs=0.01)
    assert entry.also[0].rate_g_per_m2 == pytest.approx(1.2206, abs=1e-4)
    assert entry.also[1] == Dose("unknown")


def test_bags_of_each_product_of_a_mix_are_weighed_by_its_own_bag() -> None:
    history = logged(HISTORIES["us"], ["set gate-barrier bag 20lb", "set thistle form granule bag 10lb"])
    entry = drafted("treat thistle 1bag + gate half bag front", history)
    assert isinstance(entry, Treatment)
    assert entry.amount_g == pytest.approx(4535.9237)
    assert entry.also[0].amount_g == pytest.approx(4535.9237)


def test_the_examples_of_all_verbs_can_be_read() -> None:
    history = logged(HISTORIES["us"], ["zone side 1200sqft"])
    names = {"feed": "quiet-lane", "treat": "thistle-out", "seed": "three-river-blend", "buy": "quiet-lane",
             "intend": "three-river-blend", "product": "new-one"}  # fmt: skip
    for kind in (*KINDS_ON_A_LINE, type(history.ground.always[0])):
        for verb in kind.verbs:
            line = verb.example.replace("PRODUCT", names.get(verb.name, ""))
            assert read(line, history, date(2026, 5, 3)).problem is None, line


def test_a_changed_line_keeps_what_it_leaves_out_and_assumes_nothing() -> None:
    history = logged(HISTORIES["us"], ["mow 3in bag 40min front"])
    old = Mowing(id="e1", date=date(2027, 4, 20), about=True, zones=("back",), height_mm=60.0, clippings="return")
    changed = read_change("mow 2in", old, history, TODAY).draft
    assert changed == Mowing(id="e1", date=old.date, about=True, zones=("back",), height_mm=50.8, line="mow 2in")
    fed = Feeding(id="e2", date=date(2027, 4, 20), product="quiet-lane", zones=("back",), amount_g=100.0)
    other = read_change("feed 4lb/k", fed, history, TODAY).draft
    assert isinstance(other, Feeding)
    assert (other.product, other.amount_g, other.zones) == ("quiet-lane", None, ("back",))


def test_an_entry_of_a_zone_and_product_that_are_gone_can_still_be_changed() -> None:
    entry = Feeding(id="e1", date=TODAY, product="old-mix", amount_g=500.0, zones=("meadow",))
    line = say(entry, HISTORIES["us"].lawn(TODAY))
    assert read_change(line, entry, HISTORIES["us"], TODAY).draft == replace(entry, line=line)


def test_a_photo_s_path_is_kept_to_the_letter() -> None:
    composed, apart = "caf\u00e9.jpg", "cafe\u0301.jpg"
    for path in (composed, apart):
        assert again(Photo(date=TODAY, file=path), HISTORIES["us"]) == Photo(date=TODAY, file=path)


@given(st.sampled_from(Cultivation.verbs))
def test_each_verb_of_cultivation_says_itself(verb: object) -> None:
    what = verb.what  # type: ignore[attr-defined]
    entry = Cultivation(date=TODAY, what=what)
    assert say(entry, HISTORIES["us"].lawn(TODAY)).startswith(f"{what} ")
    assert again(entry, HISTORIES["us"]) == entry
