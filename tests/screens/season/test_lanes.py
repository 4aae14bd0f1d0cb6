"""What the lanes show of a few plain cases."""

from datetime import date

import pytest

from journal.plan.step import State, Step
from journal.record.entry import Entry
from journal.record.kinds.remark import Remark
from journal.record.kinds.treatment import Treatment
from journal.record.kinds.weather import Rain, Weather
from journal.rules.flag import Level
from journal.screens.picture import Ink
from journal.screens.season.cells import days, weeks
from journal.screens.season.lane import drawn, every_lane
from journal.screens.season.mark import BLANK, Mark, Now
from journal.screens.season.scene import Scene, scene_of
from tests.screens.season.story import (
    ALL,
    BOTH,
    MAY,
    feed,
    flag,
    ground,
    mow,
    numbered,
    see,
    set_,
    sow,
    standing,
    treat,
    water,
)

LANES = {lane.name: lane for lane in every_lane()}


def _scene(*entries: Entry, as_of: date = MAY, zone: str = "front", by_day: bool = True, **given: object) -> Scene:
    found = standing(numbered([*ground(), *entries]), as_of, **given)  # type: ignore[arg-type]
    return scene_of(found, zone, days(as_of) if by_day else weeks(as_of))


def _marks(name: str, scene: Scene) -> tuple[Mark, ...]:
    return drawn(LANES[name], scene).strip.marks


def _row(name: str, scene: Scene) -> str:
    return "".join(mark.drawn(1) for mark in _marks(name, scene))


def _now(name: str, scene: Scene) -> Now:
    return drawn(LANES[name], scene).strip.now


def _words(name: str, scene: Scene, cell: int) -> str:
    return " ".join(said.text for said in LANES[name].words(scene, cell))


def test_a_barrier_closes_to_the_day_before_its_wait_is_over() -> None:
    scene = _scene(treat("2027-04-12", "dock-and-clover", 2, "front"))
    row = _row("Protect", scene)
    assert row[: 36 - 21] == " " * 15
    assert row[15:43] == "W" + "x" * 27
    assert row[43:] == " " * 10
    assert _now("Protect", scene) == Now("7", "d", "no seed", ink=Ink.BARRED)


def test_the_longest_wait_counts() -> None:
    scene = _scene(treat("2027-04-12", "gate-barrier", 2, "front"), treat("2027-04-20", "dock-and-clover", 2, "front"))
    assert _row("Protect", scene)[15:] == "B" + "x" * 7 + "W" + "x" * 29
    assert _now("Protect", scene).number == str((date(2027, 8, 2) - MAY).days)
    assert "until 2 Aug" in _words("Protect", scene, 40)


def test_a_spot_closes_only_itself_and_a_product_not_in_the_shed_waits_as_an_unknown_one() -> None:
    spot = Treatment(date=date(2027, 5, 1), zones=("front",), product="dock-and-clover", spot=True)
    scene = _scene(spot, treat("2027-05-02", "some-bottle", 1, "front"))
    assert _row("Protect", scene)[34:38] == "W?xx"
    assert "itself alone" in _words("Protect", scene, 34)
    assert "seed waits to 28 Nov (210 days, default, label not entered)" in _words("Protect", scene, 35)
    assert _now("Protect", scene).words == "no seed"


def test_another_zone_is_another_matter() -> None:
    scene = _scene(treat("2027-04-12", "gate-barrier", 2, "front"), zone="back")
    assert _row("Protect", scene).strip() == ""


def test_the_fuse_burns_for_42_days_and_the_window_stands_open_to_day_70() -> None:
    fed = feed("2027-05-01", "pond-ridge", 16, *BOTH)
    assert _row("Feed", _scene(fed, as_of=date(2027, 6, 30))) == "━" * 18 + "─" * 19 + " " * 16
    assert _row("Feed", _scene(fed, as_of=date(2027, 7, 20))) == "─" * 27 + "░" * 10 + " " * 16
    assert _row("Feed", _scene(fed, as_of=date(2027, 5, 20))).strip() == "▆" + "━" * 35


def test_a_standing_flag_darkens_the_fuse_from_its_day() -> None:
    late = date(2027, 7, 20)
    risen = flag("feed-overdue", Level.LATE, "2027-07-15", "front")
    row = _row("Feed", _scene(feed("2027-05-01", "pond-ridge", 16, *BOTH), as_of=late, flags=(risen,)))
    assert row[30:37] == "░▒▒▒▒▒▒"


def test_what_is_fed_shows_as_high_as_its_nitrogen() -> None:
    scene = _scene(feed("2027-05-01", "pond-ridge", 11, *BOTH))
    mark = _marks("Feed", scene)[34]
    assert mark.texts == ("▄⁵", "▄")
    assert (mark.drawn(1), mark.drawn(2), mark.drawn(3)) == ("▄", "▄⁵", "▄⁵━")
    assert "0.5 lb N/k, 30% slow" in _words("Feed", scene, 34)


def test_lime_is_no_feeding_and_an_amount_not_known_is_asked_for() -> None:
    scene = _scene(feed("2027-04-20", "mill-lime", 40, *BOTH), feed("2027-05-01", "pond-ridge", None, *BOTH))
    assert _row("Feed", scene)[23] == "l"
    assert _row("Feed", scene)[34] == "?"
    assert "nitrogen not known" in _words("Feed", scene, 34)


def test_a_sowing_is_damp_then_young_then_established() -> None:
    cuts = [mow(f"2026-10-{day:02}", 3, "front") for day in (4, 12, 20)]
    sown = [sow("2026-09-06", 9, "front"), see("2026-09-15", "emerged", "front"), *cuts]
    row = _row("Seed", _scene(*sown, by_day=False)).rstrip()
    assert row == " Se~~----E"
    assert _marks("Seed", _scene(*sown, by_day=False))[1].drawn(2) == "S9"


def test_new_grass_that_was_never_cut_is_not_called_established() -> None:
    scene = _scene(sow("2026-09-06", 9, "front"), by_day=False)
    assert "E" not in _row("Seed", scene)
    assert _now("Seed", scene) == Now("239", "d", "new grass")


def test_water_of_unknown_depth_is_a_question_mark() -> None:
    scene = _scene(water("2027-05-01", None, "front"), water("2027-05-02", 1.5, "front"))
    assert _row("Water", scene)[34:36] == "?█"
    assert "depth not known" in _words("Water", scene, 34)


def test_a_flag_of_a_deficit_stands_beside_the_water() -> None:
    risen = flag("water-deficit", Level.LATE, "2027-05-02", "front")
    scene = _scene(water("2027-05-02", 0.3, "front"), flags=(risen,))
    assert [mark.drawn(2) for mark in _marks("Water", scene)[34:37]] == ["  ", "▂!", "! "]


@pytest.mark.parametrize(("inches", "sign"), [(0, "0"), (0.04, "0"), (0.05, "▁"), (1, "▄"), (2, "█"), (5, "█")])
def test_rain_is_as_high_as_it_fell(inches: float, sign: str) -> None:
    scene = _scene(Rain(date=date(2027, 5, 1), depth_mm=inches * 25.4))
    assert _row("Rain", scene)[34] == sign


def test_flags_show_the_gravest_in_the_cell_where_they_rose() -> None:
    raised = (
        flag("seed-over-residue", Level.LOSS, "2027-05-01", "front"),
        flag("photo-gap", Level.NOTE, "2027-05-01", "front"),
        flag("label-rate", Level.HARM, "2027-04-01", "back"),
    )
    scene = _scene(flags=raised)
    assert _row("Flags", scene).strip() == "L"
    assert _marks("Flags", scene)[34].drawn(2) == "L2"
    assert (_now("Flags", scene).unit, _now("Flags", scene).narrow) == ("loss,", "2")
    assert _row("Flags", _scene(flags=raised, zone="")).strip() == "H" + " " * 29 + "L"


@pytest.mark.parametrize(
    ("best", "row"),
    [((8, 10), "[--===--]"), (None, "[-------]"), ((6, 12), "[=======]"), ((5, 7), "[==-----]")],
)
def test_a_window_ahead_is_hollow(best: tuple[int, int] | None, row: str) -> None:
    step = Step(
        step="aerate", zones=("front",), state=State.WAITING, earliest=date(2027, 5, 5), title="aerate",
        best=None if best is None else (date(2027, 5, best[0]), date(2027, 5, best[1])), latest=date(2027, 5, 13),
    )  # fmt: skip
    assert _row("Soil", _scene(steps=(step,)))[38:47] == row
    assert _row("Soil", _scene(steps=(step,))).strip() == row


def test_a_window_that_stands_open_is_hollow_to_its_end() -> None:
    step = Step(
        step="aerate", zones=(), state=State.OPEN, earliest=date(2027, 4, 20), latest=date(2027, 5, 6), title="aerate"
    )
    assert _row("Soil", _scene(steps=(step,))).strip() == "--]"


def test_a_window_within_one_week_is_both_brackets_where_they_fit() -> None:
    day = date(2027, 5, 10)
    step = Step(step="aerate", zones=(), state=State.OPEN, earliest=day, best=(day, day), latest=day, title="aerate")
    mark = _marks("Soil", _scene(steps=(step,), by_day=False))[37]
    assert [mark.drawn(width) for width in (1, 2, 3)] == ["=", "[]", "[=]"]


def test_what_is_done_or_missed_or_elsewhere_is_not_ahead() -> None:
    day = date(2027, 5, 10)
    gone = [
        Step(step="aerate", zones=zones, state=state, earliest=day, latest=day)
        for zones, state in ((("front",), State.DONE), (("front",), State.MISSED), (("back",), State.OPEN))
    ]
    assert _row("Soil", _scene(steps=tuple(gone))).strip() == ""


def test_two_cuts_in_one_week_stand_out() -> None:
    scene = _scene(mow("2027-04-24", 3, "front"), mow("2027-04-27", 2.5, "front"), by_day=False)
    assert _marks("Mow", scene)[35].ink is Ink.STRONG
    assert _marks("Mow", scene)[35].texts == ("2⁵", "2⁵", "3", "+")


def test_a_height_is_shown_as_it_was_meant() -> None:
    scene = _scene(mow("2027-05-01", 2.25, "front"))
    mark = _marks("Mow", scene)[34]
    assert [mark.drawn(width) for width in (1, 2, 3)] == ["2", "2³", "2²⁵"]
    assert _now("Mow", scene).words == "since 2.25"


def test_the_worst_zone_shows() -> None:
    cuts = [mow("2027-04-24", 3, *ALL), mow("2027-05-01", 2.5, "front"), mow("2027-05-01", 3, "back")]
    scene = _scene(*cuts, zone="")
    assert _row("Mow", scene)[34] == "3"
    assert _marks("Mow", scene)[34].texts[0] == "2⁵"
    assert _row("Mow", scene)[36] == "░"
    assert [row.label for row in drawn(LANES["Mow"], scene).zones] == ["front", "back", "verge"]


def test_a_metric_book_counts_millimetres() -> None:
    scene = _scene(set_("lawn", "", units="metric"), mow("2027-05-01", 3, "front"), mow("2027-05-02", 4.2, "front"))
    strip = drawn(LANES["Mow"], scene).strip
    assert strip.label == "Mow mm"
    assert [mark.drawn(2) for mark in strip.marks[34:36]] == ["7⁶", "11"]
    assert [mark.drawn(1) for mark in strip.marks[34:36]] == ["8", "+"]
    assert [mark.drawn(3) for mark in strip.marks[34:36]] == ["76 ", "107"]


def test_weather_is_left_out_where_there_is_none() -> None:
    assert not LANES["Rain"].on_file(_scene())
    assert not LANES["High"].on_file(_scene(Rain(date=date(2027, 5, 1), depth_mm=3.0)))
    assert LANES["Rain"].on_file(_scene(Rain(date=date(2027, 5, 1), depth_mm=3.0)))


def test_ahead_stand_the_highs_that_the_owner_accepted() -> None:
    warm = Weather(date=date(2027, 5, 1), high_c=20.0, low_c=9.0)
    may = set_("lawn", "", normals="may 66F 45F 3in, jun 75F 55F 3in")
    scene = _scene(warm, may, by_day=False)
    marks = _marks("High", scene)
    assert marks[scene.now + 1].texts == ("66", "6")
    assert marks[scene.now + 6].texts == ("75", "7")
    assert marks[scene.now + 1].ink is Ink.AHEAD
    assert marks[-1] == BLANK  # nothing was accepted for August
    assert _marks("High", _scene(warm, by_day=False))[scene.now + 1] == BLANK
    assert "66 F in most years" in LANES["High"].words(scene, scene.now + 1)[0].text


def test_nothing_after_the_date_judged_is_seen() -> None:
    cut, fed, sown = mow("2027-05-04", 3, "front"), feed("2027-05-05", "pond-ridge", 16, "front"), sow("2027-05-06", 9)
    with_it, without = _scene(cut, fed, sown), _scene()
    for lane in ("Mow", "Feed", "Seed", "Protect", "Soil", "Water", "Look"):
        assert _row(lane, with_it) == _row(lane, without)


def test_an_owners_own_full_stop_is_not_doubled() -> None:
    scene = _scene(Remark(date=date(2027, 5, 2), text="Moles along the fence."))
    assert _row("Look", scene)[35] == '"'
    assert _words("Look", scene, 35) == "Moles along the fence."
