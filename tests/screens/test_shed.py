"""The Shed page: what there is, what is left of it, what its label says, how much of it goes down."""

import re
from dataclasses import replace

import pytest

from journal.facts.safety import LABEL, POISON, SHORT
from journal.line.read import read
from journal.record.fold import keys
from journal.record.product import KINDS, PROTECTS
from journal.screens.page import Size
from journal.screens.shed.contents import contents
from journal.screens.shed.first import first_lines
from journal.screens.shed.label import KEYS
from journal.screens.shed.lines import verb
from tests.scenario import book, lawn
from tests.screens.shed_scenario import (
    BOUGHT,
    SHED,
    TODAY,
    TWO_ZONES,
    at,
    closed_line,
    line,
    picture,
    row_of,
    rows,
    shed,
)


def test_a_row_a_product_by_what_it_is_for() -> None:
    shown = rows(shed(*BOUGHT))
    groups = [row.split("  ")[0].strip() for row in shown if re.match(r" [A-Z]{4}", row)]
    assert groups == ["FEED", "SEED", "AGAINST WEEDS, INSECTS, DISEASE"]
    assert row_of(shown, "amber").startswith("amber 24-0-10 60% slow 2.5-3.75 lb/k 34.0 lb")
    assert row_of(shown, "amber").endswith("2 May")
    assert row_of(shown, "thicket-off").startswith(
        "thicket-off 2,4-d, dicamba, mecoprop-p 1.1-1.5 floz/k 32.0 floz █████"
    )
    assert row_of(shown, "thicket-off").endswith("·")


def test_what_is_in_it_is_said_in_as_many_words_as_fit() -> None:
    blend, spray = (replace(p, name="x") for p in reversed(shed().lawn(TODAY).products[1:]))
    assert [contents(spray, width) for width in (40, 20, 8)] == [
        "2,4-d, dicamba, mecoprop-p",
        "2,4-d, dicamba +1",
        "2,4-d +2",
    ]
    assert contents(blend, 60) == "50 kentucky bluegrass, 50 perennial ryegrass"
    assert contents(blend, 30) == "50 bluegrass, 50 ryegrass"
    assert contents(blend, 16) == "50 blue, 50 rye"
    assert contents(blend, 12) == "50 blue +1"


def test_where_there_is_room_the_amounts_stand_beside_it() -> None:
    wide = Size(130, 40)
    assert " 13.5-20 lb " in row_of(rows(shed(*BOUGHT), wide), "amber")
    assert " 6-9 lb " in row_of(rows(shed(*BOUGHT), wide, zone="front"), "amber")
    assert " 13,600 " in row_of(rows(shed(*BOUGHT), wide), "amber")  # 34 lb at 2.5 lb/k


def test_what_is_left_falls_with_every_use_and_is_at_most_that_where_one_is_unmeasured() -> None:
    fed = shed(*BOUGHT)
    assert " 34.0 lb " in row_of(rows(fed), "amber")
    again = book("2026-06-08 feed amber 13.5lb front back", on=fed)
    assert " 20.5 lb " in row_of(rows(again), "amber")
    splash = book("2026-06-09 feed amber front", on=again)
    assert " <20.5 lb " in row_of(rows(splash), "amber")
    assert row_of(rows(splash), "<") == "< at most: some of it was put down unmeasured"
    assert "1 use of unknown amount" in row_of(rows(splash, row=0, open=True), "BOUGHT")
    assert " · " in row_of(rows(shed()), "amber")


def test_how_much_by_hand() -> None:
    """2.5 lb/k on 2,400 sq ft is 6 lb and brings 0.6 lb N/k, on top of the 0.6 that front has had."""
    shown = rows(shed(*BOUGHT), row=0, open=True)
    low, high = (at for at, row in enumerate(shown) if "HOW MUCH" in row)
    assert row_of(shown[low:high], "all zones") == "all zones 5,400 13.5 lb 0.68 6.75 lb 0.60"
    assert row_of(shown[low:high], "front") == "front 2,400 6.0 lb 0.30 3.00 lb 0.60 1.2 of 2.7"
    assert row_of(shown[low:high], "back") == "back 3,000 7.5 lb 0.38 3.75 lb 0.60 0.6 of 2.7"
    assert row_of(shown[high : high + 5], "front") == "front 2,400 9 lb 0.45 4.5 lb 0.90 1.5 of 2.7"
    one = rows(shed(*BOUGHT), row=0, open=True, zone="back")
    assert not any("all zones " in row and "sq ft" not in row and "Shed" not in row for row in one)
    assert not any(row.strip().startswith("front") for row in one)


def test_too_much_is_said_in_words() -> None:
    fed = shed(*BOUGHT, "2026-05-20 feed amber 9lb front", "2026-06-01 feed amber 12lb front")
    shown = "\n".join(rows(fed, row=0, open=True))
    assert "3.3 of 2.7 !" in shown
    assert "! takes the year over its limit of 2.7 lb N/k: front" in shown
    assert "! 0.5 lb more than what is left" in shown
    quick = shed(*BOUGHT, "2026-05-20 set amber slow 0% of n")
    assert "! more than 0.7 lb N/k soluble at once" in "\n".join(rows(quick, row=0, open=True))


def test_a_year_with_a_feeding_that_nobody_measured_is_at_least_that() -> None:
    shown = rows(shed(*BOUGHT, "2026-06-05 feed amber back"), row=0, open=True)
    assert row_of(shown[:9], "back").endswith(">0.6 of 2.7")
    assert row_of(shown[:9], "front").endswith(" 1.2 of 2.7")
    assert "! a feeding of this year has no amount, so the year's may be more: back" in "\n".join(shown)


def test_a_liquid_with_a_rate_by_weight_is_asked_about() -> None:
    odd = shed("2026-05-01 set thicket-off rate 1lb/k 2lb/k")
    assert line(odd, "thicket-off/how much") == "set thicket-off rate 1lb/k 2lb/k"


def test_seed_by_live_weight_needs_its_tag() -> None:
    tagged = "\n".join(rows(shed(*BOUGHT), row=at(shed(*BOUGHT), "live-blend"), open=True))
    assert "95 % pure x 80 % germinating = 76.0 % of the bag" in tagged
    assert "95 % pure, 80 % germinating, tested Jun 2025, 12 months ago" in tagged
    bare = shed()
    assert line(bare, "live-blend/how much") == "set live-blend purity "
    assert closed_line(bare, "live-blend") == "set live-blend purity "


def test_without_a_rate_it_is_said_what_to_set() -> None:
    bare = shed(toml=TWO_ZONES + '[[product]]\nname = "old-sack"\nkind = "lime"\n')
    shown = "\n".join(rows(bare, row=0, open=True))
    assert "set old-sack rate  first: low and high, by weight" in shown
    assert "nothing on file" in shown


def test_a_zone_without_area_gets_a_rate_and_the_line_that_gives_it_one() -> None:
    open_end = shed(*BOUGHT, toml=(TWO_ZONES + SHED).replace('area = "2400 sqft"\n', ""))
    assert "area not known: set front area 2400sqft" in "\n".join(rows(open_end, row=0, open=True))
    assert line(open_end, "amber/low rate/front") == "feed amber 2.5lb/k front"
    assert closed_line(open_end, "amber") == "feed amber 2.5lb/k all"


def test_the_uses_of_the_year_stand_below_the_labels_count() -> None:
    used = shed(*BOUGHT, "2026-05-04 treat thicket-off 2floz front", "2025-10-04 treat thicket-off 2floz back")
    opened = rows(used, row=at(used, "thicket-off"), open=True)
    assert row_of(opened, "this year") == "this year: front 1"
    unused = shed(*BOUGHT)
    assert not [row for row in rows(unused, row=at(unused, "thicket-off"), open=True) if "this year:" in row]


def test_the_label_is_shown_key_by_key_and_what_stands_in_for_a_blank() -> None:
    fed = shed(*BOUGHT)
    opened = rows(fed, row=at(fed, "thicket-off"), open=True)
    assert row_of(opened, "rate ") == "rate 1.1 floz/k 1.5 floz/k low and high rate"
    assert row_of(opened, "to_seed") == "to_seed blank, 28 d used wait before sowing"
    assert row_of(opened, "wind_max") == "wind_max blank, 8 mph used wind at most"
    assert row_of(opened, "after_seed") == "after_seed blank, 3 mowings used age of new grass it needs"
    assert row_of(opened, "repeat") == "repeat blank, 28 d used wait before the next use"
    assert row_of(opened, "max_per_year") == "max_per_year blank, 2 used uses in a year at most"
    assert row_of(opened, "temp ") == "temp blank, 50 F to 85 F used air it is meant for"
    assert row_of(opened, "rain_free") == "rain_free blank, 24 h used no rain for so long"
    assert row_of(opened, "mow_after") == "mow_after blank, 3 d used not mown for so long after"
    copied = book("2026-05-01 set thicket-off to_seed 21d", on=fed)
    assert row_of(rows(copied, row=at(copied, "thicket-off"), open=True), "to_seed") == "to_seed 21d wait before sowing"
    assert line(copied, "thicket-off/to_seed") == "set thicket-off to_seed 21d"
    assert line(fed, "thicket-off/to_seed") == "set thicket-off to_seed "


def test_every_key_of_a_product_has_words_and_every_kind_a_verb() -> None:
    assert set(KEYS) == set(keys("product"))
    assert {verb(replace(shed().lawn(TODAY).products[0], kind=kind)) for kind in KINDS} == {"feed", "treat", "seed"}


@pytest.mark.parametrize("size", [Size(80, 21), Size(120, 33), Size(200, 57)])
def test_the_safety_words_stand_once(size: Size) -> None:
    fed = shed(*BOUGHT)
    closed = "\n".join(rows(fed, size))
    assert closed.count(SHORT) == 1
    opened = " ".join(" ".join(rows(fed, size, row=at(fed, "thicket-off"), open=True)).split())
    assert (opened.count(LABEL), opened.count(POISON), opened.count(SHORT)) == (1, 1, 0)
    assert opened.index(LABEL) < opened.index("HOW MUCH")
    other = "\n".join(rows(fed, Size(120, 90), row=at(fed, "amber"), open=True))
    assert (other.count(LABEL), other.count(SHORT)) == (0, 1)


@pytest.mark.parametrize("kind", KINDS)
def test_the_safety_words_go_with_the_kinds_they_are_for(kind: str) -> None:
    one = shed(toml=TWO_ZONES + f'[[product]]\nname = "old-sack"\nkind = "{kind}"\n')
    assert any(SHORT in row for row in rows(one)) == (kind in PROTECTS)
    assert any(LABEL[:20] in row for row in rows(one, row=0, open=True)) == (kind in PROTECTS)


@pytest.mark.parametrize("units", ["us", "metric"])
def test_an_empty_shed_says_what_to_type(units: str) -> None:
    bare = lawn(('name = "North Lane"', f'name = "North Lane"\nunits = "{units}"'), toml=TWO_ZONES)
    lines = first_lines(bare.lawn(TODAY))
    shown = rows(bare, Size(120, 30))
    for words, _ in lines:
        assert any(words in row for row in shown)
        assert read(words, bare, TODAY).problem is None
    assert [target.line for target in picture(bare).targets] == ["product "] * len(lines)  # nothing invented is saved


def test_a_metric_book_has_kilograms_and_grams() -> None:
    metric = lawn(('name = "North Lane"', 'name = "North Lane"\nunits = "metric"'), toml=TWO_ZONES + SHED)
    shown = rows(book("2026-04-01 buy amber 1x 9kg", on=metric), row=0, open=True)
    assert " 9.00 kg " in row_of(shown, "amber")
    assert row_of(shown[:9], "front") == "front 223 2.75 kg 0.30 1.375 kg 2.9 2.9 of 13.2"
    assert "g N/m2" in "\n".join(shown)
    assert "Know your poison helpline" in "\n".join(rows(metric))
