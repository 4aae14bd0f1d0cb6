"""When to water, and how much: the step `water`, in the words of a diary."""

from itertools import pairwise

import pytest

from journal.plan.step import State, Step
from journal.plan.steps import due, steps
from journal.season.history import History
from tests.scenario import LAWN, book, day, find, later, lawn, the, typed, weather

LOAM = ("irrigated = true", 'irrigated = true\nsoil = "loam"')
FRONT_ONLY = ('name = "back"\narea = "3100 sqft"\nirrigated = true', 'name = "back"\narea = "3100 sqft"')
GARDEN = lawn(FRONT_ONLY, LOAM)
JULY = "82F 60F 0in"


def july(*lines: str, to: str = "2026-07-20", on: History = GARDEN, words: str = JULY) -> History:
    """Weather from 20 June to that day, watered deep on 1 July, and these lines."""
    days = (day(to) - day("2026-06-20")).days + 1
    return book(*weather("2026-06-20", days, words), "2026-07-01 water deep front", *lines, on=on)


def test_it_waits_for_the_morning_of_the_day_on_which_half_will_be_used() -> None:
    step = the(july(to="2026-07-03"), "2026-07-03", "water")  # 0.4 in used by tonight, 0.45 in allowed
    assert step.state is State.WAITING
    assert step.earliest == day("2026-07-04")
    assert step.best == (day("2026-07-04"), day("2026-07-04"))
    assert step.waits_for == "tomorrow morning, if no rain falls"
    assert step.amount == "40 min (0.4 in)"
    assert step.line == "water 40min front"
    assert step.why == "0.4 in used (estimated with California's figures), 0.45 in allowed; soaked 2 d ago, Wed 1 Jul"


def test_the_same_is_seen_in_the_morning_without_the_weather_of_the_running_day() -> None:
    assert the(july(to="2026-07-02"), "2026-07-03", "water").earliest == day("2026-07-04")


def test_on_that_morning_it_is_open() -> None:
    step = the(july(to="2026-07-03"), "2026-07-04", "water")
    assert (step.state, step.earliest, step.amount) == (State.OPEN, day("2026-07-04"), "40 min (0.4 in)")
    assert step.latest is not None
    assert step.latest >= day("2026-07-04")


def test_it_is_open_once_half_is_used_and_late_once_three_quarters_are() -> None:
    assert the(july(), "2026-07-04", "water").state is State.OPEN
    late = the(july(), "2026-07-06", "water")
    assert (late.state, late.earliest) == (State.LATE, day("2026-07-04"))
    assert late.latest is not None
    assert late.latest < day("2026-07-06")


def test_further_off_it_names_the_day() -> None:
    step = the(july(to="2026-07-01"), "2026-07-01", "water")
    assert (step.state, step.earliest) == (State.WAITING, day("2026-07-04"))
    assert step.waits_for == "about Sat 4 Jul, in the morning, if no rain falls"


def test_logging_the_ready_line_moves_it_on() -> None:
    history = july(to="2026-07-04")
    step = the(history, "2026-07-05", "water")
    after = the(typed(history, f"2026-07-05 {step.line}"), "2026-07-05", "water")
    assert after.state is State.WAITING
    assert after.earliest is not None
    assert after.earliest > day("2026-07-06")


def test_rain_puts_it_off() -> None:
    dry, wet = (the(july(*rain), "2026-07-05", "water") for rain in ((), ("2026-07-04 rain 0.6in",)))
    assert (dry.state, wet.state) == (State.OPEN, State.WAITING)


def test_on_sand_it_does_not_open_again_on_the_day_it_was_watered() -> None:
    sand = lawn(FRONT_ONLY, ("irrigated = true", 'irrigated = true\nsoil = "sand"'))
    history = july(to="2026-07-03", on=sand, words="95F 65F 0in")
    step = the(history, "2026-07-04", "water")
    assert step.state in (State.OPEN, State.LATE)
    after = the(typed(history, f"2026-07-04 {step.line}"), "2026-07-04", "water")
    assert (after.state, after.earliest) == (State.WAITING, day("2026-07-05"))


def test_clay_takes_it_in_cycles_and_says_that_its_intake_is_from_memory() -> None:
    clay = lawn(FRONT_ONLY, ("irrigated = true", 'irrigated = true\nsoil = "clay"\nslope = "steep"'))
    step = the(july(on=clay), "2026-07-04", "water")  # 0.6 in; 60 x 0.1 / (0.6 - 0.1) = 12 min at most
    assert step.amount == (
        "3 cycles of 12 min, 60 min apart today, the rest on other mornings "
        "(0.36 in of 0.6 in; soil intake from memory)"
    )
    assert step.line == "water 36min front"


def test_one_watering_is_an_inch_at_most() -> None:
    clay = lawn(FRONT_ONLY, ("irrigated = true", 'irrigated = true\nsoil = "clay"'), ("0.6 in/h", "0.1 in/h"))
    step = the(july(on=clay), "2026-07-15", "water")  # all 1.2 in that the roots can draw is used
    assert step.why.startswith("600 min: 1.2 in used")
    assert step.line == "water 600min front"


SPRING = ("2026-03-20", 60, "56F 34F 0in")


def spring(*lines: str, on: History = GARDEN) -> History:
    """Two dry months from 20 March, nothing soaked; growth from 10 April, last frost on 6 May on average."""
    return book(*weather(*SPRING), *lines, on=on)


def test_it_counts_from_the_first_day_of_growth_as_full_and_waits_for_the_last_frost() -> None:
    step = the(spring(), "2026-05-03", "water")
    assert (step.state, step.earliest, step.line) == (State.WAITING, day("2026-05-06"), "")
    assert step.waits_for == "the average last frost; water then, if no rain falls"
    assert "taken as full when growth began" in step.why
    assert "(judgment)" in step.why


def test_it_is_not_late_on_the_first_day_it_shows() -> None:
    assert the(spring(), "2026-05-06", "water").state is State.OPEN
    assert the(spring(), "2026-05-07", "water").state is State.OPEN
    assert the(spring(), "2026-05-08", "water").state is State.LATE


def test_a_soaking_later_on_wins_over_the_first_day_of_growth() -> None:
    assert "soaked 2 d ago, Tue 5 May" in the(spring("2026-05-05 water deep front"), "2026-05-07", "water").why


def test_nothing_is_watered_on_frozen_ground() -> None:
    assert find(spring("2026-05-08 see frozen front"), "2026-05-09", "water") is None


@pytest.mark.parametrize(("hours", "opens"), [("24h", "2026-07-06"), ("6h", "2026-07-05")])
def test_it_waits_while_a_label_keeps_water_off(hours: str, opens: str) -> None:
    label = f'\n[[product]]\nname = "clear-row"\nkind = "weed"\nrain_free = "{hours}"\n'
    history = july("2026-07-04 treat clear-row 2floz/k front", on=lawn(FRONT_ONLY, LOAM, toml=LAWN + label))
    step = the(history, "2026-07-04", "water")
    assert (step.state, step.earliest, step.line) == (State.WAITING, day(opens), "")
    assert step.waits_for.startswith("clear-row is to stay dry by its label, to ")
    assert the(history, opens, "water").state in (State.OPEN, State.LATE)


def test_circuits_have_minutes_of_their_own() -> None:
    circuits = 'circuits = [{name="A", share=60, rate="0.5 in/h"}, {name="B", share=40, rate="1 in/h"}]'
    history = july(on=lawn(FRONT_ONLY, ("irrigated = true", f'irrigated = true\nsoil = "loam"\n{circuits}')))
    step = the(history, "2026-07-04", "water")
    assert step.line == "water A 72min B 36min front"
    assert step.amount == "A 72 min, B 2 cycles of 18 min, 35 min apart (0.6 in; soil intake from memory)"
    after = the(typed(history, f"2026-07-04 {step.line}"), "2026-07-04", "water")
    assert after.why.startswith("0 in used")


def test_without_a_rate_only_the_depth_is_said() -> None:
    no_rate = lawn(FRONT_ONLY, (f'{LOAM[0]}\nrate = "0.6 in/h"', LOAM[1]))
    step = the(july(on=no_rate), "2026-07-04", "water")
    assert (step.amount, step.line) == ("0.6 in", "water 0.6in front")


def test_a_metric_book_speaks_in_millimetres() -> None:
    metric = lawn(
        FRONT_ONLY, LOAM, ('name = "North Lane"', 'name = "North Lane"\nunits = "metric"'), ("0.6 in/h", "15 mm/h"),
    )  # fmt: skip
    step = the(july(on=metric, words="28C 16C 0mm"), "2026-07-04", "water")
    assert step.amount == "61 min (15 mm)"
    assert step.line == "water 61min front"
    assert (
        step.why == "61 min: 15 mm used (estimated with California's figures), 11 mm allowed; soaked 3 d ago, Wed 1 Jul"
    )


def test_in_the_south_it_waters_in_january_and_rests_in_july() -> None:
    south = lawn(
        FRONT_ONLY, LOAM, ("latitude = 42.3", "latitude = -42.3"), ('growth = ["04-10", "11-10"]\n', ""),
        ("05-06", "11-06"), ("10-05", "04-05"), set_up="2025-07-01",
    )  # fmt: skip
    summer = book(*weather("2025-12-20", 16, JULY), "2026-01-01 water deep front", on=south)
    assert the(summer, "2026-01-04", "water").state is State.OPEN
    winter = book(*weather("2026-06-20", 20, "50F 36F 0in"), "2026-07-01 water deep front", on=south)
    assert find(winter, "2026-07-08", "water") is None


@pytest.mark.parametrize(
    ("lines", "on"),
    [
        (("2026-07-02 see dormant front",), "2026-07-05"),
        (("2026-06-10 seed three-river 9lb front",), "2026-07-05"),
    ],
    ids=["at rest", "new grass"],
)
def test_it_keeps_silent(lines: tuple[str, ...], on: str) -> None:
    assert find(july(*lines), on, "water") is None


def test_it_keeps_silent_out_of_season_and_where_nobody_irrigates() -> None:
    winter = book(*weather("2026-11-20", 20, "50F 36F 0in"), "2026-12-01 water deep front", on=GARDEN)
    assert find(winter, "2026-12-08", "water") is None
    assert (
        find(july(on=lawn(FRONT_ONLY, ("irrigated = true", 'irrigated = false\nsoil = "loam"'))), "2026-07-05", "water")
        is None
    )
    assert find(july(), "2026-07-05", "water", "back") is None


def lacking(history: History, on: str) -> Step:
    """The step that only says what is missing."""
    step = the(history, on, "water")
    assert (step.state, step.earliest, step.line, step.amount) == (State.WAITING, None, "", "")
    return step


def test_an_owner_who_keeps_temperatures_is_told_what_is_missing() -> None:
    assert "no soaking is on file" in lacking(book(*weather("2026-06-20", 16, JULY), on=GARDEN), "2026-07-05").waits_for
    assert "soil" in lacking(july(on=lawn(FRONT_ONLY)), "2026-07-05").waits_for
    assert lacking(july("2026-07-03 water front"), "2026-07-05").waits_for == "the watering of Fri 3 Jul has no depth"
    assert lacking(july(to="2026-07-02"), "2026-07-06").waits_for.endswith("are of Thu 2 Jul")


def test_what_is_missing_is_due_without_a_date() -> None:
    today = day("2026-07-05")
    soon = due(steps(july("2026-07-03 water front"), today), today, 7)
    (told,) = [one for one in soon if one.step == "water"]
    assert (told.state, told.earliest, told.waits_for) == (
        State.WAITING, None, "the watering of Fri 3 Jul has no depth",
    )  # fmt: skip


def test_one_who_does_not_is_left_alone() -> None:
    now_and_then = book("2026-06-25 weather " + JULY, "2026-07-01 water deep front", on=GARDEN)
    assert find(now_and_then, "2026-07-05", "water") is None
    assert find(book("2026-07-01 water deep front", on=GARDEN), "2026-07-05", "water") is None
    assert find(july(to="2026-06-24"), later("2026-06-24", 14), "water") is None


def test_an_owner_who_waters_when_told_is_never_late_and_waters_every_few_days() -> None:
    history = july(to="2026-06-30")
    watered = []
    for at in range(30):
        today = later("2026-07-02", at)
        history = typed(history, f"{later(today, -1)} weather {JULY}")
        step = the(history, today, "water")
        assert step.state is not State.LATE
        if step.state is State.OPEN:
            history = typed(history, f"{today} {step.line}")
            watered.append(at)
            assert the(history, today, "water").state is State.WAITING
    assert {later - earlier for earlier, later in pairwise(watered)} <= {2, 3}
