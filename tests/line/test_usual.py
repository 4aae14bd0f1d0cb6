"""What is left out takes the usual, says so, and never more than may be assumed."""

from dataclasses import replace
from datetime import date

import pytest

from journal.line.read import read
from journal.record.entry import KINDS, VERBS, slots
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.sighting import Sighting
from journal.record.kinds.watering import Watering
from journal.record.unit import Dimension
from tests.line.lawns import EMPTY_BOOK, TODAY, US, a_history, drafted, logged, pointed

BOOK = a_history(US)


@pytest.mark.parametrize("line", ["m", "w", "m -1d"])
def test_two_keys_log_the_usual_on_a_book_of_one_minute_ago(line: str) -> None:
    entry = drafted(line, EMPTY_BOOK)
    assert entry.zones == ("lawn",)
    assert "zones" in entry.assumed


def test_a_mowing_on_a_new_book_takes_the_height_of_the_set_up_and_all_zones() -> None:
    entry = drafted("m", a_history(US.replace('units = "us"', 'units = "us"\nheight = "2.5in"')))
    assert isinstance(entry, Mowing)
    assert (entry.height_mm, entry.clippings, entry.minutes) == (63.5, "", None)
    assert entry.zones == ("front", "back", "back-walk")
    assert set(entry.assumed) == {"zones", "height_mm"}


def test_seventeen_pounds_of_the_usual_take_seven_keys() -> None:
    entry = drafted("f 17lb", logged(BOOK, ["feed quiet-lane 10lb front"]))
    assert isinstance(entry, Feeding)
    assert (entry.product, entry.zones, entry.assumed) == ("quiet-lane", ("front",), ("zones", "product"))
    assert entry.amount_g == pytest.approx(17 * 453.59237, rel=1e-15)
    yesterday = drafted("m -1d", logged(BOOK, ["mow 3in front"]))
    assert yesterday.date == date(2027, 5, 2)


def test_a_mowing_takes_zones_height_clippings_and_minutes_of_the_last() -> None:
    history = logged(BOOK, ["mow 3in bag front 40min 5/1"])
    entry = drafted("m", history)
    assert isinstance(entry, Mowing)
    assert (entry.zones, entry.height_mm, entry.clippings, entry.minutes) == (("front",), 76.2, "bag", 40)
    assert set(entry.assumed) == {"zones", "height_mm", "clippings", "minutes"}
    said = drafted("m 2in return 20min back", history)
    assert said.assumed == ()


def test_the_usual_is_that_of_the_zones_named() -> None:
    history = logged(BOOK, ["mow 3in front 40min 5/1", "mow 2.5in back 30min 5/2"])
    front, back = drafted("m front", history), drafted("m back", history)
    assert isinstance(front, Mowing)
    assert isinstance(back, Mowing)
    assert (front.height_mm, front.minutes) == (76.2, 40)
    assert (back.height_mm, back.minutes) == (63.5, 30)


def test_minutes_for_several_zones_are_not_those_for_one() -> None:
    history = logged(BOOK, ["mow 3in front back 70min 5/1"])
    entry = drafted("m back", history)
    assert isinstance(entry, Mowing)
    assert (entry.height_mm, entry.minutes) == (76.2, None)


@pytest.mark.parametrize("line", ["water 0.5in", "water deep", "water 0.5in back", "water A 5min"])
def test_a_depth_a_deep_watering_or_circuits_leave_no_room_for_the_usual_minutes(line: str) -> None:
    entry = drafted(line, logged(BOOK, ["water 20min front back"]))
    assert isinstance(entry, Watering)
    assert entry.minutes is None
    assert "minutes" not in entry.assumed


def test_a_watering_takes_the_last_minutes_or_circuits() -> None:
    history = logged(BOOK, ["water 20min back 5/1"])
    entry = drafted("w", history)
    assert isinstance(entry, Watering)
    assert (entry.minutes, entry.zones) == (20, ("back",))
    by_circuit = drafted("w", logged(history, ["water A 15min B 10min"]))
    assert isinstance(by_circuit, Watering)
    assert (by_circuit.circuits, by_circuit.minutes) == ((("A", 15.0), ("B", 10.0)), None)
    assert by_circuit.zones == ("front",)
    assert set(by_circuit.assumed) == {"zones", "circuits"}


def test_circuits_say_which_zone_is_meant() -> None:
    assert drafted("water A 20min B 12min", BOOK).zones == ("front",)


FULL = [
    "mow 3in bag front 40min 7:30 $30 by service part 1/2 spot 40sqft 5/1 -- dry",
    "water 20min back 6:00 5/1",
    "feed quiet-lane 12lb front light setting 4 $9 5/1",
    "treat thistle-out 3floz front wind 4mph temp 68F edge kept rtu 5/1",
    "seed three 9lb front new slit 5/1",
    "aerate 2x 3in front rental $85 5/1",
    "height 3.6in front 5/1",
    "see rust 10% front 5/1",
    "count grubs 4/sqft front 5/1",
    "soil ph 6.1 p low k 95ppm om 4% front 5/1",
    "photo a.jpg from gate front 5/1",
    "buy quiet-lane 2x 48lb $31 5/1",
    "rain 0.6in 5/1",
    "weather 71F 48F 0.2in 5/1",
    "schedule front 20min mon 5/1",
    "intend seed three 9/5 front",
]
MAY_BE_USUAL = {"zones", "height_mm", "clippings", "minutes", "product", "circuits"}


def test_only_zones_height_clippings_minutes_and_product_are_ever_assumed() -> None:
    history = logged(BOOK, FULL)
    seen = set()
    for verb in VERBS:
        for rest in ("", "front", "12lb", "3floz", "three 12lb", "3.5in", "ph 6", "rust", "mow 2027-09-09", "20min"):
            draft = read(f"{verb} {rest}".strip(), history, TODAY).draft
            if draft is None:
                continue
            seen |= set(draft.assumed)
            assert set(draft.assumed) <= MAY_BE_USUAL
            assert draft.time is None
            assert draft.cost is None
            assert (draft.share, draft.spot_m2) == (None, None)
            assert (draft.part, draft.spot, draft.by_service) == ("", False, False)
            assert draft.date == TODAY
            assert not draft.about
            assert not draft.remark
    assert seen == MAY_BE_USUAL - {"circuits"}


def test_no_slot_for_an_amount_a_rate_or_the_weather_is_declared_usual() -> None:
    never = {Dimension.MASS, Dimension.VOLUME, Dimension.MASS_RATE, Dimension.VOLUME_RATE, Dimension.SPEED,
             Dimension.TEMPERATURE, Dimension.PERCENT, Dimension.MONEY}  # fmt: skip
    for kind in KINDS.values():
        usual = {name for name, slot in slots(kind).items() if slot.usual}
        assert usual <= MAY_BE_USUAL
        for slot in slots(kind).values():
            assert not (slot.usual and never & set(slot.dimensions))


def test_a_treatment_never_assumes_its_product() -> None:
    history = logged(BOOK, ["treat thistle-out 3floz front"])
    assert pointed(read("treat 3floz", history, TODAY)) == "treat"
    assert pointed(read("buy 2x", logged(history, ["buy quiet-lane 1x"]), TODAY)) == "buy"


def test_the_only_product_of_its_kind_is_usual_at_once() -> None:
    assert drafted("seed 9lb", BOOK).assumed == ("zones", "product")
    assert pointed(read("feed 12lb", BOOK, TODAY)) == "feed"


def test_sightings_and_heights_take_all_zones_whatever_was_last() -> None:
    history = logged(BOOK, ["see rust front", "height 3in back"])
    entry = drafted("see dry", history)
    assert isinstance(entry, Sighting)
    assert entry.zones == ("front", "back", "back-walk")
    assert drafted("height 4in", history).zones == ("front", "back", "back-walk")


def test_entries_after_today_never_feed_the_usual() -> None:
    history = logged(BOOK, ["mow 2in bag front"], today=date(2027, 6, 1))
    entry = drafted("m", history, date(2027, 5, 3))
    assert isinstance(entry, Mowing)
    assert (entry.height_mm, entry.clippings, entry.zones) == (76.2, "", ("front", "back", "back-walk"))


def test_a_spot_does_not_make_its_zone_the_usual_one() -> None:
    entry = drafted("m", logged(BOOK, ["mow 3in front spot 40sqft"]))
    assert entry.zones == ("front", "back", "back-walk")


def test_every_assumed_word_is_marked_in_words_and_no_other() -> None:
    history = logged(BOOK, FULL)
    lines = ("m", "w", "f 17lb", "seed 9lb", "see dry", "m front 3in", "mow 3in bag front 40min", "height 3in front")
    for line in lines:
        reading = read(line, history, TODAY)
        assert reading.draft is not None
        assert reading.words.count("(usual)") == len(reading.draft.assumed), reading.words


def test_one_odd_mowing_does_not_change_what_is_usual() -> None:
    """Three times the whole lawn, once the side alone: `m` is the whole lawn."""
    history = a_history(US)
    for n, line in enumerate(
        ("mow 3in all", "mow 3in all", "mow 3in all", f"mow 3in {history.lawn(TODAY).zone_names[-1]}")
    ):
        history = history.plus(replace(drafted(line, history), id=f"u{n}"))
    assert drafted("m", history).zones == history.lawn(TODAY).zone_names
