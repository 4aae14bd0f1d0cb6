"""The account of the root zone, from a soaking on, in the words of a diary."""

from datetime import timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from journal.facts.irrigation import COOL_SEASON, WARM_SEASON
from journal.reckon.answer import Answer
from journal.reckon.calls import reckonings
from journal.reckon.declare import RECKONINGS
from journal.reckon.evapotranspiration import reference_mm
from journal.reckon.root_zone import ROOT_ZONE, Balance, balance
from journal.record.refusal import Refusal
from journal.season.history import History
from tests.scenario import book, day, later, lawn, weather

LOAM = ("irrigated = true", 'irrigated = true\nsoil = "loam"')
GARDEN = lawn(LOAM)
JULY = "82F 60F 0in"
COOL = "66F 50F 0in"
COOL_USE = reference_mm(10, (66 - 32) / 1.8, 42.3, 185) * COOL_SEASON[6]
USE = reference_mm((60 - 32) / 1.8, (82 - 32) / 1.8, 42.3, 185) * COOL_SEASON[6]
"""What turf uses on 4 July at such weather, in mm; the days about it differ by a hundredth or two."""


def account(history: History, on: str, zone: str = "front") -> Balance:
    """The account of a zone at the end of a day."""
    return balance(history.on(zone, day(on)))


def soaked(*lines: str, on: History = GARDEN, words: str = JULY, days: int = 30) -> History:
    """Weather from 20 June, watered deep on 1 July, and these lines."""
    return book(*weather("2026-06-20", days, words), "2026-07-01 water deep front", *lines, on=on)


def test_it_begins_with_nothing_missing_at_the_soaking() -> None:
    found = account(soaked(), "2026-07-01")
    assert (found.deficit_mm, found.since, found.why) == (0, day("2026-07-01"), "")
    assert found.total_mm == pytest.approx(22.86)
    assert found.allowed_mm == pytest.approx(11.43)
    assert found.et_mm_a_day == pytest.approx(USE, rel=0.08)
    assert found.days_to_water == pytest.approx(11.43 / (found.et_mm_a_day or 0))


def test_each_day_adds_what_turf_used() -> None:
    found = account(soaked(), "2026-07-03")
    assert found.deficit_mm == pytest.approx(2 * USE, rel=0.01)
    assert found.reached is None


def test_it_never_owes_more_than_the_roots_can_draw_and_tells_since_when_half_is_gone() -> None:
    found = account(soaked(), "2026-07-15")
    assert found.deficit_mm == found.total_mm == pytest.approx(22.86)
    assert found.days_to_water == 0
    assert found.reached == day("2026-07-04")


# NDSU Extension, AE792: a heavy rain brings the account to nought, not below
@pytest.mark.parametrize("line", ["2026-07-04 rain 3in", "2026-07-04 water 2in front", "2026-07-04 water deep front"])
def test_a_big_rain_or_watering_brings_it_to_nought(line: str) -> None:
    assert account(soaked(line), "2026-07-04").deficit_mm == 0


def test_a_watering_counts_in_full_and_a_rain_without_its_first_tenth() -> None:
    dry = account(soaked(), "2026-07-03").deficit_mm or 0
    watered = account(soaked("2026-07-03 water 0.2in front"), "2026-07-03")
    rained = account(soaked("2026-07-03 rain 0.3in"), "2026-07-03")
    assert watered.deficit_mm == pytest.approx(dry - 5.08)
    assert rained.deficit_mm == pytest.approx(dry - 5.08)


def test_minutes_count_by_the_rate_of_the_zone() -> None:
    dry = account(soaked(), "2026-07-03").deficit_mm or 0
    assert account(soaked("2026-07-03 water 20min front"), "2026-07-03").deficit_mm == pytest.approx(dry - 5.08)


def test_an_inch_in_three_days_begins_it_too() -> None:
    rains = ("2026-07-04 rain 0.5in", "2026-07-05 rain 0.1in", "2026-07-06 rain 0.45in")
    found = account(book(*weather("2026-06-20", 30, JULY), *rains, on=GARDEN), "2026-07-07")
    assert found.since == day("2026-07-06")
    assert found.deficit_mm == pytest.approx(USE, rel=0.01)


def test_a_few_drops_after_an_inch_begin_nothing_anew() -> None:
    rains = ("2026-07-04 rain 1.1in", "2026-07-06 rain 0.05in")
    assert account(book(*weather("2026-06-20", 30, JULY), *rains, on=GARDEN), "2026-07-07").since == day("2026-07-04")


def test_less_than_an_inch_begins_nothing() -> None:
    found = account(book(*weather("2026-06-20", 30, JULY), "2026-07-04 rain 0.8in", on=GARDEN), "2026-07-07")
    assert found.deficit_mm is None
    assert found.days_to_water is None
    assert "no soaking is on file" in found.why


@pytest.mark.parametrize(
    ("changes", "why"),
    [
        ([], "the soil of the zone"),
        ([LOAM, ("latitude = 42.3\n", "")], "latitude"),
    ],
)
def test_it_says_which_fact_of_the_lawn_is_missing(changes: list[tuple[str, str]], why: str) -> None:
    assert why in account(soaked(on=lawn(*changes)), "2026-07-03").why


def test_without_weather_it_says_so() -> None:
    assert account(book("2026-07-01 water deep front", on=GARDEN), "2026-07-03").why == "no temperatures are on file"


def test_where_no_rain_was_ever_written_down_nothing_is_known() -> None:
    never = soaked(words="82F 60F")
    assert account(never, "2026-07-03").why == "no rain is on file, not even a nought"
    once = book("2026-04-20 rain 0in", on=never)
    assert account(once, "2026-07-03").deficit_mm == pytest.approx(2 * USE, rel=0.01)


def test_weather_may_be_three_days_old_and_no_older() -> None:
    history = book(*weather("2026-06-20", 15, COOL), "2026-07-01 water deep front", on=GARDEN)  # to 4 July
    bridged = account(history, "2026-07-07")
    assert bridged.deficit_mm == pytest.approx(5 * COOL_USE, rel=0.02)
    assert (bridged.bridged, bridged.through) == (2, day("2026-07-06"))
    assert account(history, "2026-07-08").why == "the newest temperatures on file are of Sat 4 Jul"


def test_the_running_day_is_not_counted_before_its_weather_is_there() -> None:
    history = book(*weather("2026-06-20", 13, COOL), "2026-07-01 water deep front", on=GARDEN)  # to 2 July
    found = account(history, "2026-07-03")
    assert found.through == day("2026-07-02")
    assert found.deficit_mm == pytest.approx(COOL_USE, rel=0.01)
    assert account(book("2026-07-03 weather " + COOL, on=history), "2026-07-03").through == day("2026-07-03")


def test_a_short_gap_is_bridged_by_the_week_before_and_a_long_one_is_not() -> None:
    def gap(days: int) -> Balance:
        after = later("2026-07-04", days).isoformat()
        early = book(*weather("2026-06-20", 14, COOL), "2026-07-01 water deep front", on=GARDEN)  # to 3 July
        return account(book(*weather(after, 3, COOL), on=early), after)

    whole = gap(3)
    assert whole.bridged == 3
    assert whole.deficit_mm == pytest.approx(6 * COOL_USE, rel=0.02)
    assert "temperatures before Wed 8 Jul are missing" in gap(4).why


def test_a_watering_of_unknown_depth_ends_what_is_known_until_the_next_soaking() -> None:
    hose = soaked("2026-07-03 water front")
    assert account(hose, "2026-07-04").why == "the watering of Fri 3 Jul has no depth"
    assert account(book("2026-07-05 water deep front", on=hose), "2026-07-06").deficit_mm == pytest.approx(
        USE, rel=0.01
    )


def test_the_timer_waters_too() -> None:
    timer = soaked("2026-07-01 schedule front 20min mon wed fri 6:00")
    dry = account(soaked(), "2026-07-03").deficit_mm or 0
    assert account(timer, "2026-07-03").deficit_mm == pytest.approx(dry - 5.08)


def test_a_spot_watered_by_hand_changes_nothing() -> None:
    assert account(soaked("2026-07-03 water 1in front spot"), "2026-07-03") == account(soaked(), "2026-07-03")


def test_tall_fescue_draws_deeper_and_warm_season_grass_uses_less() -> None:
    names = 'grass = ["kentucky bluegrass", "perennial ryegrass"]'
    fescue = account(soaked(on=lawn(LOAM, (names, 'grass = ["tall fescue"]'))), "2026-07-03")
    assert fescue.total_mm == pytest.approx(22.86 * 8 / 6)
    bermuda = account(soaked(on=lawn(LOAM, (names, 'grass = ["bermudagrass"]'))), "2026-07-03")
    bluegrass = account(soaked(), "2026-07-03")
    share = WARM_SEASON[6] / COOL_SEASON[6]
    assert bermuda.deficit_mm == pytest.approx(share * (bluegrass.deficit_mm or 0))
    mixed = account(soaked(on=lawn(LOAM, (names, 'grass = ["tall fescue", "kentucky bluegrass"]'))), "2026-07-03")
    assert mixed.total_mm == pytest.approx(22.86)


def test_the_south_has_summer_in_january() -> None:
    south = lawn(
        LOAM, ("latitude = 42.3", "latitude = -42.3"), ('growth = ["04-10", "11-10"]\n', ""),
        ("05-06", "11-06"), ("10-05", "04-05"), set_up="2025-07-01",
    )  # fmt: skip
    lines = (*weather("2025-12-20", 30, JULY), "2026-01-01 water deep front")
    found = account(book(*lines, on=south), "2026-01-03").deficit_mm
    use = reference_mm((60 - 32) / 1.8, (82 - 32) / 1.8, -42.3, 3) * COOL_SEASON[6]
    assert found == pytest.approx(2 * use, rel=0.01)


def test_it_looks_at_no_more_than_it_declares() -> None:
    watches = frozenset(kind.kind for kind in ROOT_ZONE)
    assert balance(soaked().on("front", day("2026-07-03"), watches)) == account(soaked(), "2026-07-03")


def test_without_a_soaking_it_counts_from_the_first_day_of_growth_as_full() -> None:
    found = account(book(*weather("2026-04-01", 30, COOL), on=GARDEN), "2026-04-20")
    assert found.assumed
    assert found.since is not None
    assert found.since <= day("2026-04-10")
    later_on = account(book(*weather("2026-04-01", 30, COOL), "2026-04-15 water deep front", on=GARDEN), "2026-04-20")
    assert (later_on.assumed, later_on.since) == (False, day("2026-04-15"))
    assert account(book(*weather("2026-05-01", 30, COOL), on=GARDEN), "2026-05-20").why.startswith("no soaking")


# Two properties, over any summer

DRY_DAYS = 14
RAIN = st.lists(st.floats(0, 60), min_size=DRY_DAYS, max_size=DRY_DAYS)
HIGHS = st.lists(st.integers(50, 105), min_size=DRY_DAYS, max_size=DRY_DAYS)


def summer(rain: list[float], highs: list[int]) -> History:
    """Two weeks from 1 July, watered deep on the day before."""
    days = [
        f"{day('2026-07-01') + timedelta(at)} weather {high}F {high - 18}F {mm:.2f}mm"
        for at, (mm, high) in enumerate(zip(rain, highs, strict=True))
    ]
    return book("2026-06-30 weather 80F 60F 0in", "2026-06-30 water deep front", *days, on=GARDEN)


@settings(max_examples=40)
@given(RAIN, HIGHS)
def test_what_is_missing_lies_between_nothing_and_all(rain: list[float], highs: list[int]) -> None:
    history = summer(rain, highs)
    for at in range(DRY_DAYS):
        found = balance(history.on("front", day("2026-07-01") + timedelta(at)))
        assert found.deficit_mm is not None
        assert found.total_mm is not None
        assert 0 <= found.deficit_mm <= found.total_mm


@settings(max_examples=40)
@given(RAIN, HIGHS, st.integers(0, DRY_DAYS - 1), st.floats(0, 60))
def test_more_rain_never_leaves_more_missing(rain: list[float], highs: list[int], on: int, more: float) -> None:
    wetter = [mm + more if at == on else mm for at, mm in enumerate(rain)]
    last = day("2026-07-01") + timedelta(DRY_DAYS - 1)
    dry, wet = (balance(summer(fell, highs).on("front", last)).deficit_mm for fell in (rain, wetter))
    assert dry is not None
    assert wet is not None
    assert wet <= dry + 1e-9


# The same, asked for on the command line


def asked(words: str, history: History, today: str) -> Answer:
    """The answer to the options as they are typed on that day."""
    assert reckonings()
    answer = RECKONINGS["balance"].read(words.split()).answer(history, day(today))
    assert isinstance(answer, Answer)
    return answer


def test_the_sums_of_the_days_asked_for() -> None:
    history = soaked("2026-07-02 rain 0.3in", "2026-07-03 water 20min front")
    answer = asked("--from 2026-07-02 --to 2026-07-04 --zone FRONT", history, "2026-07-06")
    stands = account(history, "2026-07-04")
    assert answer.as_json() == {
        "et_mm": pytest.approx(3 * USE, rel=0.01), "rain_mm": pytest.approx(7.62), "irrigation_mm": pytest.approx(5.08),
        "deficit_mm": pytest.approx(stands.deficit_mm), "days_to_water": pytest.approx(stands.days_to_water),
    }  # fmt: skip
    assert any("soaking of Wed 1 Jul" in note for note in answer.notes)
    assert any("Turfgrass Crop Coefficients" in note for note in answer.notes)


def test_what_is_not_known_is_told_and_not_made_up() -> None:
    history = book(*weather("2026-07-01", 3, "82F 60F"), "2026-07-02 water front", on=GARDEN)
    answer = asked("--from 2026-07-01 --to 2026-07-05 --zone front", history, "2026-07-05")
    found = answer.as_json()
    assert (found["deficit_mm"], found["days_to_water"]) == (None, None)
    said = " ".join(answer.notes)
    for words in (
        "on file for 3 of 5 days",
        "Rain is on file for 0 of 5",
        "without a depth, not in the sum: 1",
        "no rain is on file",
    ):
        assert words in said


def test_where_nothing_is_on_file_there_are_no_sums() -> None:
    found = asked("--from 2025-07-01 --to 2025-07-05 --zone front", soaked(), "2026-07-05").as_json()
    assert (found["et_mm"], found["rain_mm"], found["irrigation_mm"]) == (None, None, None)


@pytest.mark.parametrize(
    ("words", "at_fault"),
    [
        ("--from 2026-07-05 --to 2026-07-01 --zone front", "--to"),
        ("--from 2026-07-01 --to 2026-07-09 --zone front", "--to"),
        ("--from 2001-07-01 --to 2026-07-05 --zone front", "--from"),
        ("--from 2026-07-01 --to 2026-07-05 --zone frnt", "--zone frnt"),
        ("--from 2026-07-01 --to 2026-07-05", "--zone"),
    ],
)
def test_what_cannot_be_meant_is_refused_by_name(words: str, at_fault: str) -> None:
    with pytest.raises(Refusal) as refused:
        asked(words, GARDEN, "2026-07-06")
    assert refused.value.word == at_fault
