"""One watering deeper than soil and slope take up.

Two or three short cycles are advised: Texas A&M Water University, Irrigation: Cycle and Soak. Intake and storage of the
soils are design values from memory.
"""

from tests.scenario import book, later, lawn, level, raised

CLAY = lawn(("irrigated = true", 'irrigated = true\nsoil = "clay"\nslope = "steep"'))
"""At 0.6 in/h: 60 x 0.1 / (0.6 - 0.1) = 12 min at a time, 36 min in three cycles."""


def test_more_than_three_cycles_hold_is_a_note() -> None:
    assert level(book("2026-07-01 water 36min front", on=CLAY), "2026-07-01", "water-runoff") == ""
    note = raised(book("2026-07-01 water 40min front", on=CLAY), "2026-07-01", "water-runoff")
    assert note is not None
    assert note.headline == "0.4 in at once is more than the soil takes up"
    assert "from memory" in note.why


def test_a_depth_counts_at_the_zone_s_rate() -> None:
    assert level(book("2026-07-01 water 0.5in front", on=CLAY), "2026-07-01", "water-runoff") == "note"
    assert level(book("2026-07-01 water 0.3in front", on=CLAY), "2026-07-01", "water-runoff") == ""


def test_it_stands_seven_days() -> None:
    much = book("2026-07-01 water 60min front", on=CLAY)
    assert level(much, later("2026-07-01", 6), "water-runoff") == "note"
    assert level(much, later("2026-07-01", 7), "water-runoff") == ""


def test_on_level_loam_and_where_nothing_is_known_of_the_soil() -> None:
    loam = lawn(("irrigated = true", 'irrigated = true\nsoil = "loam"'))
    assert level(book("2026-07-01 water 60min front", on=loam), "2026-07-01", "water-runoff") == ""
    assert level(book("2026-07-01 water 300min front", on=loam), "2026-07-01", "water-runoff") == "note"
    assert level(book("2026-07-01 water 300min front"), "2026-07-01", "water-runoff") == ""


def test_circuits_run_off_one_by_one() -> None:
    circuits = 'circuits = [{name="A", share=60, rate="0.3 in/h"}, {name="B", share=40, rate="1 in/h"}]'
    garden = lawn(("irrigated = true", f'irrigated = true\nsoil = "clay"\n{circuits}'))
    assert level(book("2026-07-01 water A 90min B 20min front", on=garden), "2026-07-01", "water-runoff") == ""
    assert level(book("2026-07-01 water A 90min B 60min front", on=garden), "2026-07-01", "water-runoff") == "note"


def test_lines_of_one_morning_stand_for_themselves() -> None:
    cycles = book(*["2026-07-01 water 20min front"] * 3, on=CLAY)
    assert level(cycles, "2026-07-01", "water-runoff") == ""


def test_the_owners_own_days() -> None:
    own = book("2026-05-01 set water-runoff stands-days 3", "2026-07-01 water 60min front", on=CLAY)
    assert level(own, later("2026-07-01", 3), "water-runoff") == ""
