"""The Ground page: what the book believes, on whose authority, and the line that changes it."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import date, timedelta
from time import perf_counter

import pytest
from rich.cells import cell_len

from journal.facts.local_rules import CHECK
from journal.facts.local_rules_sets import sets
from journal.line.read import Known, read
from journal.record.kinds.weather import Weather
from journal.rules.catalogue import rules
from journal.screens.ground.authority import authors, set_line
from journal.screens.ground.paper import build
from journal.screens.ground.weather import TOLD, proposals
from journal.screens.page import Size
from journal.screens.pages.ground import PAGE, PAPER
from journal.screens.paper import Stop
from journal.screens.picture import plain_text
from journal.screens.view import View
from journal.season.history import History
from journal.standing import Standing, standing
from tests.scenario import book, lawn, typed, weather
from tests.screens.pretend import PretendSession

TODAY = date(2027, 5, 3)
KNOWN = Known(
    tuple(rule.id for rule in rules()),
    frozenset(rule.id for rule in rules() if not rule.can_be_off),
)
US_BOOK = book(
    "2026-03-20 soil ph 5.9 p low k 95ppm om 3.1% front",
    "2026-04-01 set front soil loam near_water 40ft trees yes",
    "2026-04-02 set front area 2510sqft from 2026-04-01 -- the new bed",
    "2026-05-01 set mow-gap slow-days 16d -- July is July",
    "2026-05-01 set starter-missing off",
    "2026-09-06 seed three-river 9lb front",
)
METRIC_LAWN = """
[lawn]
name = "Low Bank"
units = "metric"
latitude = 52.1

[[zone]]
name = "yard"
area = "220 m2"
irrigated = true
soil = "clay"
circuits = [{name="A", share=60, rate="12 mm/h"}, {name="B", share=40, rate="22 mm/h"}]

[[zone]]
name = "bank"
"""
SOUTHERN = METRIC_LAWN.replace("52.1", "-37.8").replace(
    'latitude', 'last_frost = "10-05"\nfirst_frost = "05-20"\nlatitude'
)  # fmt: skip
BARE = """
[lawn]
name = "x"
"""
BOOKS = {
    "us": US_BOOK,
    "metric": lawn(toml=METRIC_LAWN),
    "southern": lawn(toml=SOUTHERN),
    "bare": lawn(toml=BARE),
    "bare metric": lawn(toml=BARE + 'units = "metric"'),
}
SIZES = [(60, 13), (80, 21), (120, 33), (200, 57)]


def seen(history: History, **view: object) -> tuple[Standing, View]:
    """The book on a day (today, if none is given as `as_of`), and the view of the page."""
    looked = View(page=5, as_of=TODAY, today=TODAY).but(**view)
    return standing(history, looked.as_of), looked


def whole(history: History, width: int = 80, **view: object) -> list[str]:
    """Every row of the page, however many there are."""
    judged, looked = seen(history, **view)
    return [plain_text(row) for row in build(judged, looked, Size(width, 21)).spread(looked).rows]


def stops(history: History, **view: object) -> list[Stop]:
    """Every row to stand on, those inside the zones too."""
    judged, looked = seen(history, **view)
    found = list(build(judged, looked, Size(80, 21)).stops)
    inner = [one for stop in found if stop.within is not None for one in stop.within.paper().stops]
    return [stop for stop in found if stop.holder < 0] + inner


def line_of(stop: Stop) -> str:
    """What Enter would put on the line."""
    return stop.line() if stop.line is not None else stop.target.line


def row(found: list[str], *words: str) -> str:
    """The first row with all these words."""
    return next(line for line in found if all(word in line for word in words))


def opened(history: History, *words: str, width: int = 80) -> str:
    """What the row with these words opens to, and the row: all words with one blank between."""
    judged, looked = seen(history)
    paper = build(judged, looked, Size(width, 21))
    at = next(
        at for at, stop in enumerate(paper.stops)
        if stop.holder < 0 and all(word in plain_text(paper.rows[stop.target.row]) for word in words)
    )  # fmt: skip
    spread = paper.spread(looked.but(row=at, open=True))
    first = spread.targets[at].row
    text = "\n".join(plain_text(one) for one in spread.rows[first : spread.end + 1])
    return " ".join(text.replace("│", " ").split())


# Whose word it is


def test_a_fact_says_who_said_it_and_when() -> None:
    found = whole(US_BOOK)
    assert "● last frost" in row(found, "last frost")
    assert row(found, "last frost").split()[3:] == ["6", "May", "yours"]
    assert "yours, 1 Jan 2026" in opened(US_BOOK, "last frost")
    front = "\n".join(whole(US_BOOK, zone="front"))
    assert "yours, 1 Apr" in next(line for line in front.splitlines() if "near water" in line)
    assert row(found, "height of cut").startswith(" ○")
    assert row(found, "height of cut").rstrip().endswith("default")


def test_the_season_says_whether_it_was_set_or_worked_out() -> None:
    assert "10 Apr to 10 Nov" in row(whole(US_BOOK), "● growing season", "yours")
    frosts = lawn(('growth = ["04-10", "11-10"]', ""))
    assert "15 Apr to 9 Nov" in row(whole(frosts), "≈ growing season", "worked out: frosts")
    assert "21 days before the last frost to 35 after the first" in opened(frosts, "growing season")
    assert "no growing season: no plan, few flags" in row(whole(BOOKS["metric"]), "· growing season")


def test_a_dated_change_is_told_by_its_day_and_its_line_is_dated_too() -> None:
    found = "\n".join(whole(US_BOOK, zone="front"))
    assert "yours from 1 Apr 2026" in found
    corrected = typed(US_BOOK, f"2027-05-03 {_line(US_BOOK, 'front', 'area').replace('2510', '2600')}")
    assert round(corrected.lawn(TODAY).zones[0].area_m2 or 0) == 242


def _line(history: History, zone: str, fact: str) -> str:
    return next(line for line in map(line_of, stops(history, zone=zone)) if line.startswith(f"set {zone} {fact}"))


def test_a_remark_stands_with_the_fact_it_went_with() -> None:
    assert "the new bed" in "\n".join(
        plain_text(line) for stop in stops(US_BOOK, zone="front")[:1] if stop.details for line in stop.details()
    )
    assert "July is July" in opened(US_BOOK, "slow-days")


def test_the_words_last_said_decide_and_not_those_before() -> None:
    later = typed(US_BOOK, "2027-02-01 set last_frost 05-01")
    assert "1 May" in row(whole(later), "● last frost", "1 Feb")
    assert authors(later.ground, TODAY)["lawn", "", "last_frost"].date == date(2027, 2, 1)


def test_a_value_that_could_be_taken_for_a_key_is_quoted() -> None:
    line = set_line("lawn", "", "name", "The feeding place")
    assert read(line, US_BOOK, TODAY, KNOWN).problem is None
    assert typed(US_BOOK, f"2027-05-03 {line}").lawn(TODAY).name == "The feeding place"


# The lines


@pytest.mark.parametrize("name", BOOKS)
def test_every_line_can_be_read_as_it_stands_or_waits_for_its_value(name: str) -> None:
    history = BOOKS[name]
    views = ["", *history.lawn(TODAY).zone_names]
    lines = [line for zone in views for line in map(line_of, stops(history, zone=zone)) if line]
    assert len(lines) > 80
    for line in lines:
        reading = read(line, history, TODAY, KNOWN)
        if line.endswith(" "):
            assert reading.problem is not None, f"{line}: Enter twice would save what nobody said"
            continue
        assert reading.problem is None, f"{line}: {reading.problem}"
        assert reading.draft is not None


def test_every_row_but_a_switch_that_must_stay_has_a_line() -> None:
    steady = {rule.id for rule in rules() if rule.id in KNOWN.steady}
    judged, looked = seen(US_BOOK)
    paper = build(judged, looked, Size(80, 21))
    lacking = [
        plain_text(paper.rows[stop.target.row]).split()[0]
        for stop in paper.stops
        if stop.holder < 0 and not line_of(stop) and not stop.target.name.startswith("family ")
    ]
    assert set(lacking) == steady


@pytest.mark.parametrize("name", ["us", "metric", "southern"])
def test_what_is_said_already_comes_back_unchanged(name: str) -> None:
    history = BOOKS[name]
    lawn_now = history.lawn(TODAY)
    for (what, whose, key), words in lawn_now.said.items():
        if what in ("lawn", "zone", "rule") and key != "off":
            since = authors(history.ground, TODAY)[what, whose, key].since
            again = typed(history, f"2027-05-03 {set_line(what, whose, key, words, since)}").lawn(TODAY)
            assert replace(again, said=lawn_now.said) == lawn_now, (what, whose, key)


def test_examples_fit_the_units_and_the_half_of_the_world() -> None:
    assert "set last_frost 05-06" in opened(BOOKS["metric"], "last frost")
    assert "set height 75mm" in opened(BOOKS["metric"], "height of cut")
    south = lawn(toml=METRIC_LAWN.replace("52.1", "-37.8"))
    assert "set last_frost 10-05" in opened(south, "last frost")
    assert "set first_frost 05-20" in opened(south, "first frost")


async def test_enter_puts_the_line_of_the_row_on_the_line() -> None:
    from tests.screens.driver import opened as running

    async with running(PretendSession()) as app:
        await app.press("5", "tab", "down", "down", "down")
        await app.press("enter")
        assert app.line == "set last_frost 05-06"
        assert "last_frost" in app.reading


# Zones


def test_the_table_has_a_row_a_zone_and_brackets_what_nobody_said() -> None:
    found = whole(US_BOOK)
    front, back = row(found, " front  "), row(found, " back  ")
    assert front.split()[:6] == ["front", "2,510", "(full)", "loam", "0.6", "(none)"]
    assert "40 ft" in front
    assert "yes" in front
    assert back.split()[:4] == ["back", "3,100", "(full)", "·"]


def test_what_is_not_said_is_told_with_what_it_costs() -> None:
    found = whole(BOOKS["metric"])
    assert "no area: no amounts; no soil: no water balance" in "\n".join(found)
    assert "no soil: no water balance" not in row(found, " yard  ")
    assert "no rate: minutes give no depth" in "\n".join(whole(lawn(('rate = "0.6 in/h"', ""))))


def test_space_opens_a_zone_to_its_facts_its_stand_and_its_water() -> None:
    text = opened(US_BOOK, " front  ")
    for words in ("kentucky bluegrass 50 %", "sown 6 Sep 2026, 9 lb three-river, day", "loam", "40 ft", "near water"):
        assert words in text
    assert "not known: no temperatures are on file" in text


def test_the_water_is_a_bar_with_the_mark_beyond_which_it_is_watered() -> None:
    days = weather("2027-04-01", 32, "75F 50F 0in")
    soaked = book("2027-04-20 water front 1.2in", *days, on=US_BOOK)
    text = opened(soaked, " front  ")
    assert "┃" in text
    assert "█" in text
    assert "in may go before it is watered" in text
    assert "counted since the soaking of 20 Apr" in text


def test_the_page_key_shows_one_zone_with_every_fact_to_stand_on() -> None:
    found = whole(US_BOOK, zone="front")
    assert found[0].startswith(" ZONE front")
    assert "PLACE" not in "\n".join(found)
    assert {"set front sun ", "set front slope "} <= {line_of(stop) for stop in stops(US_BOOK, zone="front")}
    assert "set front soil loam" in [line_of(stop) for stop in stops(US_BOOK, zone="front")]


def test_a_book_without_zones_says_how_to_name_one() -> None:
    assert "zone " in [line_of(stop) for stop in stops(BOOKS["bare"])]


# Soil


def test_the_newest_soil_test_of_a_zone_with_the_laboratorys_own_words() -> None:
    test = row(whole(US_BOOK), "20 Mar 2026")
    for words in ("pH 5.9", "P low", "K 95 ppm", "organic 3.1 %"):
        assert words in test
    assert "stale" not in test
    assert "soil ph 6.1 p low k 95ppm om 4.2% back" in row(whole(US_BOOK), "none on file")


def test_a_soil_test_older_than_three_years_is_stale_and_says_who_says_so() -> None:
    old = book("2024-05-03 soil ph 6.4 p medium k high front")
    assert "! stale" in row(whole(old), "3 May 2024")
    assert "Home Lawn - Maintain" in opened(old, "3 May 2024")
    assert "! stale" not in row(whole(old, as_of=date(2027, 5, 2)), "3 May 2024")


# Local rules


def test_none_says_so_and_how_a_set_is_named() -> None:
    found = whole(US_BOOK)
    assert CHECK in row(found, "LOCAL RULES")
    assert "none: name one" in row(found, "local rules")
    assert "us-ma" in row(found, "built in:")


@pytest.mark.parametrize("units", ["us", "metric"])
@pytest.mark.parametrize("name", sets())
def test_what_a_set_says_stands_there_and_can_be_put_in_ones_own_words(name: str, units: str) -> None:
    under = typed(lawn(("[lawn]", f'[lawn]\nunits = "{units}"')), f"2026-01-02 set local_rules {name}")
    found = whole(under, 200)
    assert CHECK in row(found, "LOCAL RULES")
    assert any(line.startswith(" §") for line in found)
    before = under.lawn(TODAY)
    for line in map(line_of, stops(under)):
        if line.startswith("set local_") and not line.endswith(" "):
            assert read(line, under, TODAY, KNOWN).problem is None, line
    assert before.local_rules == name


def test_what_is_known_from_memory_is_marked_so() -> None:
    marked = [
        line
        for name in sets()
        for line in whole(typed(US_BOOK, f"2026-06-01 set local_rules {name}"))
        if line.startswith(" §") and "from memory" in line
    ]
    assert marked


def test_ones_own_number_takes_the_place_of_the_sets() -> None:
    own = book("2026-02-01 set local_rules us-md", "2026-02-02 set local_most_n 0.7lb/k", on=US_BOOK)
    assert "at most 0.7 lb/k" in row(whole(own), "● nitrogen at once", "yours")
    assert "set local_most_n 0.7lb/k" in [line_of(stop) for stop in stops(own)]


# House numbers


def test_a_number_of_ones_own_is_marked_and_the_default_named() -> None:
    found = whole(US_BOOK)
    yours = row(found, "slow-days")
    assert yours.startswith("  ● slow-days")
    assert "16 d  default 14 d" in yours
    assert "1 of " in row(found, "HOUSE NUMBERS")
    assert row(found, "○ dry-days").rstrip().endswith("judgment")
    assert "1 to 60 d" in row(whole(US_BOOK, 120), "slow-days")


def test_an_opened_number_has_its_range_and_every_publication() -> None:
    text = opened(US_BOOK, "once-from-day")
    for words in ("range 1 to 60 d", "published; once a day in week 3", "Throw a lifeline", "set seedbed-dry"):
        assert words in text


def test_enter_puts_a_number_on_the_line_ready_to_edit() -> None:
    lines = [line_of(stop) for stop in stops(US_BOOK)]
    assert {"set mow-gap days 10", "set mow-gap slow-days 16d", "set treat-windy most 8mph"} <= {*lines}
    assert "set treat-windy most 3.58m/s" in [line_of(stop) for stop in stops(BOOKS["metric"])]


def test_a_rule_that_is_switched_off_says_so_and_how_it_comes_back() -> None:
    assert "✗ switched off" in row(whole(US_BOOK), "starter-missing")
    lines = [line_of(stop) for stop in stops(US_BOOK)]
    assert "set starter-missing on" in lines
    assert "set mow-gap " in lines
    assert "set water-unlogged " in lines
    assert not any(line.endswith(" off") for line in lines)
    assert "set mow-gap off" in opened(US_BOOK, "mow-gap  ")
    assert not any(line.startswith("set treat-windy o") for line in lines)


# Weather


def years(first: int, last: int) -> Iterator[Weather]:
    """Days that freeze up to about 28 April and from about 10 October on, later by a day a year."""
    day = date(first, 1, 1)
    while day <= date(last, 12, 31):
        nth = (day - date(day.year, 1, 1)).days
        cold = nth < 118 + (day.year - first) or nth > 283 + (day.year - first)
        yield Weather(
            id=f"9{day.isoformat()}", date=day, high_c=12.0, low_c=-2.0 if cold else 6.0, rain_mm=2.0 if nth % 5 else 0
        )
        day += timedelta(1)


def with_weather(first: int, last: int) -> History:
    """The US book with those years on file."""
    entries = {entry.id: entry for track in US_BOOK.tracks.values() for entry in track.entries}
    return History.of([*entries.values(), *years(first, last)])


def test_the_weather_proposes_frosts_with_the_line_that_accepts_them() -> None:
    history = with_weather(2015, 2026)
    found = whole(history)
    told = row(found, "12 yr ", "half by", "set last_frost 05-0")
    assert told.startswith(" ≈   your weather")
    assert "set last_frost" in row(whole(history, 120), "half by", "of 12 yr")
    lines = [line_of(stop) for stop in stops(history) if "last_frost" in line_of(stop)]
    assert lines[0] == "set last_frost 05-06"
    accepted = typed(history, f"2027-05-03 {lines[1]}")
    assert accepted.lawn(TODAY).last_frost != US_BOOK.lawn(TODAY).last_frost
    assert "of 12 yr, agrees" in row(whole(accepted), "half by")
    assert "a low at or below 32 F" in opened(history, "12 yr ", "half by")


def test_the_weather_proposes_the_months_too() -> None:
    history = with_weather(2015, 2026)
    line = next(line_of(stop) for stop in stops(history) if line_of(stop).startswith("set normals jan 54F 28F"))
    assert len(typed(history, f"2027-05-03 {line}").lawn(TODAY).normals) == 12


def test_few_years_tell_no_chance_and_propose_nothing() -> None:
    history = with_weather(2024, 2026)
    assert "27 Apr 2024, 29 Apr 2025" in row(whole(history), "your weather", "of 3 yr")
    assert "fewer than 10 years tell no chance" in opened(history, "your weather", "of 3 yr")
    assert len([line for line in map(line_of, stops(history)) if "last_frost" in line]) == 1


def test_a_book_without_weather_proposes_nothing() -> None:
    judged, _ = seen(US_BOOK)
    assert proposals(TOLD(US_BOOK, TODAY, 42.3), judged.lawn, TODAY) == {}


def test_thirty_years_of_weather_are_gone_through_once() -> None:
    history = with_weather(1997, 2026)
    first = TOLD(history, TODAY, 42.3)
    assert first.frosts is not None
    mown = typed(history, "2027-05-03 mow 3in front")
    assert TOLD(mown, TODAY, 42.3) is first
    rained = typed(history, "2027-05-03 rain 0.4in")
    assert TOLD(rained, TODAY, 42.3) is not first


# The drawing


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("name", BOOKS)
def test_every_row_fits_and_the_page_is_full(name: str, size: tuple[int, int]) -> None:
    judged, looked = seen(BOOKS[name])
    for zone in ("", *judged.lawn.zone_names):
        for view in (looked, looked.but(row=0, open=True), looked.but(row=40), looked.but(row=40, open=True)):
            picture = PAGE.draw(judged, view.but(zone=zone), Size(*size))
            assert len(picture.rows) == size[1]
            assert all(cell_len(plain_text(line)) <= size[0] for line in picture.rows)


@pytest.mark.parametrize("name", BOOKS)
def test_at_eighty_columns_nothing_runs_over_the_edge(name: str) -> None:
    under = typed(BOOKS[name], "2026-06-01 set local_rules us-md")
    for zone in ("", *under.lawn(TODAY).zone_names):
        assert [line for line in whole(under, zone=zone) if cell_len(line.rstrip()) > 80] == []


@pytest.mark.parametrize("width", [60, 80, 120, 200])
def test_many_zones_with_long_names_and_wide_words_fit(width: int) -> None:
    zones = "\n".join(
        f'[[zone]]\nname = "the-long-bank-by-the-water-number-{at}"\narea = "{at}200 sqft"' for at in range(8)
    )
    history = lawn(toml=f'[lawn]\nname = "芝生の庭"\n{zones}')
    judged, looked = seen(history)
    paper = build(judged, looked, Size(width, 21))
    picture = paper.picture((), Size(width, 200), looked)
    assert all(cell_len(plain_text(line)) <= width for line in picture.rows)
    named = [plain_text(line)[1:16] for line in picture.rows if plain_text(line).startswith(" the-lon")]
    assert len(set(named)) == 8


def test_going_down_shows_every_row_and_builds_the_page_once() -> None:
    judged, view = seen(US_BOOK)
    size = Size(80, 21)
    PAGE.draw(judged, view, size)
    paper = PAPER(judged, view, size)
    shown = [at for at, stop in enumerate(paper.stops) if stop.holder < 0]
    for _ in shown:
        view = PAGE.press("down", judged, view, size) or view
        picture = PAGE.draw(judged, view, size)
        assert picture.under is not None
        assert 1 <= picture.under.row < 21
        assert plain_text(picture.rows[picture.under.row]).startswith("▸")
        assert PAPER(judged, view, size) is paper
    assert view.row == shown[-1]


def test_tab_goes_from_group_to_group_and_then_from_family_to_family() -> None:
    judged, view = seen(US_BOOK)
    size = Size(80, 21)
    paper = PAPER(judged, view, size)
    landed = []
    for _ in range(6):
        view = PAGE.press("tab", judged, view, size) or view
        landed.append(plain_text(paper.rows[paper.stops[view.row].target.row]).split()[0])
    assert landed == ["●", "front", "front", "○", "MOWING", "FEEDING"]


def test_the_year_is_drawn_with_its_season_and_its_frosts() -> None:
    months, season = whole(US_BOOK)[1:3]
    assert months[4 + (TODAY.timetuple().tm_yday - 1) // 7] == "▼"
    assert season[4 + 125 // 7] == "L"
    assert season[4 + 277 // 7] == "F"
    assert season.count("━") > 25
    south = whole(BOOKS["southern"])[2]
    assert south[4] == "━"
    assert south[4 + 26] == "·"


def test_what_could_not_be_read_is_said_first() -> None:
    broken = replace(standing(US_BOOK, TODAY), lawn=replace(US_BOOK.lawn(TODAY), problems=("zone front area: xx",)))
    _, looked = seen(US_BOOK)
    assert "zone front area: xx" in plain_text(build(broken, looked, Size(80, 21)).rows[0])


def test_a_page_of_a_full_book_is_built_in_no_time() -> None:
    """The bound lies far above what was measured: it catches weather gone through anew, on a busy machine too."""
    judged, looked = seen(with_weather(1997, 2026))
    build(judged, looked, Size(80, 21))
    began = perf_counter()
    build(judged, looked, Size(80, 21))
    assert perf_counter() - began < 0.25
