"""People and pets on treated ground: the notice that stands on it, and what is said when it came too late."""

import pytest

from journal.facts.first_aid import help_lines, poison_help
from tests.rules.treated import flags, shed
from tests.scenario import book, judged, level, raised

SPRAYED = "2026-05-04 treat leaf-off 1floz front"
SPREAD = "2026-07-06 treat grub-off 3lb front"


def test_a_spray_is_off_bounds_on_its_day_and_the_notice_goes_by_itself() -> None:
    sprayed = book(SPRAYED, on=shed())
    notice = raised(sprayed, "2026-05-04", "keep-off")
    assert notice is not None
    assert str(notice.level) == "note"
    assert notice.headline == "people and pets off until dry"
    assert "leaf-off since Mon 4 May" in notice.why
    assert "1-800-222-1222" in notice.do
    assert raised(sprayed, "2026-05-05", "keep-off") is None
    assert raised(sprayed, "2026-05-04", "keep-off", "back") is None


def test_seen_dry_takes_the_notice_away_on_the_same_day() -> None:
    assert raised(book(SPRAYED, "2026-05-04 see dry front", on=shed()), "2026-05-04", "keep-off") is None


def test_a_draft_of_any_treatment_shows_the_notice() -> None:
    for line in ("treat leaf-off 1floz front", "treat grub-off 3lb front", "treat unknown by service front"):
        raised_by = {flag.rule for flag in judged(shed(), "2026-05-04", line).raised}
        assert "keep-off" in raised_by, line


def test_a_metric_book_names_no_american_number() -> None:
    metric = book("2026-05-04 treat leaf-off 30ml front", on=shed(None, ("[lawn]", '[lawn]\nunits = "metric"')))
    notice = raised(metric, "2026-05-04", "keep-off")
    assert notice is not None
    assert "1-800" not in notice.do
    assert "1-800" not in help_lines("metric") + poison_help("metric")
    assert "911" in help_lines("us")


def test_granules_never_clear_by_hours_alone() -> None:
    spread = book(SPREAD, on=shed())
    for on in ("2026-07-06", "2026-07-07", "2026-07-20", "2026-09-03"):
        assert level(spread, on, "keep-off") == "note", on
    assert level(spread, "2026-09-04", "keep-off") == ""
    hours = book(SPREAD, on=shed({"grub-off": 'reentry = "24 hours"'}))
    assert level(hours, "2026-07-12", "keep-off") == "note"


def test_granules_are_watered_in_and_dry_before_the_notice_goes() -> None:
    watered = book(SPREAD, "2026-07-08 water 0.3in front", "2026-07-10 water 0.2in front", on=shed())
    assert level(watered, "2026-07-09", "keep-off") == "note"
    assert level(watered, "2026-07-10", "keep-off") == "note"
    assert level(watered, "2026-07-11", "keep-off") == ""
    dried = book("2026-07-10 see dry front", on=watered)
    assert level(dried, "2026-07-10", "keep-off") == ""


def test_seen_dry_before_the_water_frees_no_granules() -> None:
    seen = book(SPREAD, "2026-07-07 see dry front", on=shed())
    assert level(seen, "2026-07-07", "keep-off") == "note"
    assert level(seen, "2026-07-08", "keep-off") == "note"


def test_a_hose_of_unknown_depth_frees_granules_once_they_were_seen_dry() -> None:
    hosed = book(SPREAD, "2026-07-07 water front", on=shed(None, ('rate = "0.6 in/h"\n', "")))
    assert level(hosed, "2026-07-09", "keep-off") == "note"
    assert level(book("2026-07-09 see dry front", on=hosed), "2026-07-09", "keep-off") == ""


def test_weed_and_feed_waits_for_its_rain_free_hours_before_water_counts() -> None:
    fed = book("2026-05-04 treat green-gate 3lb front", on=shed())
    early = book("2026-05-05 water 0.3in front", on=fed)
    late = book("2026-05-06 water 0.3in front", on=fed)
    assert level(early, "2026-05-07", "keep-off") == "note"
    assert level(late, "2026-05-06", "keep-off") == "note"
    assert level(late, "2026-05-07", "keep-off") == ""


def test_the_words_of_the_label_come_first() -> None:
    slow = book(SPRAYED, on=shed({"leaf-off": 'reentry = "until dry, and 48 h for pets"'}))
    notice = raised(slow, "2026-05-06", "keep-off")
    assert notice is not None
    assert "the label says until dry, and 48 h for pets" in notice.why
    assert raised(slow, "2026-05-07", "keep-off") is None
    assert level(book("2026-05-05 see dry front", on=slow), "2026-05-05", "keep-off") == "note"


def test_rain_in_the_next_days_makes_it_wet_again() -> None:
    rained = book(SPRAYED, "2026-05-06 rain 0.4in", on=shed())
    assert level(rained, "2026-05-05", "keep-off") == ""
    notice = raised(rained, "2026-05-06", "keep-off")
    assert notice is not None
    assert "dry again" in notice.headline
    assert level(rained, "2026-05-07", "keep-off") == ""
    assert level(book("2026-05-06 see dry front", on=rained), "2026-05-06", "keep-off") == ""
    assert level(book(SPRAYED, "2026-05-07 rain 0.4in", on=shed()), "2026-05-07", "keep-off") == ""
    longer = book("2026-01-02 set keep-off rain-days 5", SPRAYED, "2026-05-07 rain 0.4in", on=shed())
    assert level(longer, "2026-05-07", "keep-off") == "note"


def test_somebody_on_a_wet_spray_is_harm_with_the_first_aid_line() -> None:
    trodden = book("2026-05-04 treat leaf-off 1floz front 9:00", "2026-05-04 see traffic front 10:00", on=shed())
    flag = raised(trodden, "2026-05-04", "reentry")
    assert flag is not None
    assert str(flag.level) == "harm"
    assert "label's own first aid" in flag.do
    assert "1-800-222-1222" in flag.do
    assert flag.subject == "leaf-off"
    assert level(trodden, "2026-05-17", "reentry") == "harm"
    assert level(trodden, "2026-05-18", "reentry") == ""


def test_without_times_the_order_of_the_day_is_asked_for() -> None:
    unknown = book(SPRAYED, "2026-05-04 see traffic front", on=shed())
    flag = raised(unknown, "2026-05-04", "reentry")
    assert flag is not None
    assert str(flag.level) == "note"
    assert "time" in flag.do


@pytest.mark.parametrize(
    "lines",
    [
        ("2026-05-04 treat leaf-off 1floz front 9:00", "2026-05-04 see traffic front 8:00"),
        ("2026-05-04 treat leaf-off 1floz front", "2026-05-05 see traffic front"),
        ("2026-05-04 treat leaf-off 1floz front 9:00", "2026-05-04 see dry front 12:00",
         "2026-05-04 see traffic front 13:00"),
        ("2026-05-03 see traffic front", "2026-05-04 treat leaf-off 1floz front"),
    ],
)  # fmt: skip
def test_nobody_was_on_a_wet_spray(lines: tuple[str, ...]) -> None:
    assert level(book(*lines, on=shed()), "2026-05-05", "reentry") == ""


def test_a_later_see_dry_takes_nothing_back() -> None:
    trodden = book("2026-05-04 treat leaf-off 1floz front 9:00", "2026-05-04 see traffic front 10:00", on=shed())
    for later in ("2026-05-04 see dry front 15:00", "2026-05-04 see dry front", "2026-05-05 see dry front"):
        assert level(book(later, on=trodden), "2026-05-06", "reentry") == "harm", later


def test_a_child_on_dry_granules_is_harm_days_later() -> None:
    spread = book(SPREAD, "2026-07-09 see traffic front", on=shed())
    flag = raised(spread, "2026-07-09", "reentry")
    assert flag is not None
    assert str(flag.level) == "harm"
    assert "0.5 in of water wanted, none on file" in flag.why


def test_after_water_in_and_a_dry_day_traffic_is_nothing() -> None:
    watered = book(SPREAD, "2026-07-07 water 0.5in front", on=shed())
    assert flags(book("2026-07-07 see traffic front", on=watered), "2026-07-07", "reentry") == {"grub-off": "harm"}
    assert flags(book("2026-07-08 see traffic front", on=watered), "2026-07-08", "reentry") == {}
    dried = book("2026-07-07 see dry front", "2026-07-07 see traffic front", on=watered)
    assert flags(dried, "2026-07-07", "reentry") == {"grub-off": "note"}


def test_the_hours_of_a_label_hold_traffic_too() -> None:
    label = {"leaf-off": 'reentry = "24 h"'}
    next_day = book(SPRAYED, "2026-05-05 see traffic front", on=shed(label))
    assert level(next_day, "2026-05-05", "reentry") == "harm"
    timed = ("2026-05-04 treat leaf-off 1floz front 9:00", "2026-05-05 see traffic front 9:30")
    assert level(book(*timed, on=shed(label)), "2026-05-05", "reentry") == ""
    assert level(book(SPRAYED, "2026-05-06 see traffic front", on=shed(label)), "2026-05-06", "reentry") == ""


def test_striking_the_treatment_ends_it_at_once() -> None:
    trodden = book(SPREAD, "2026-07-09 see traffic front", on=shed())
    entry = next(one for one in trodden.track("front", type(trodden.tracks["front", "treatment"].entries[0])).entries)
    assert level(trodden.minus(entry), "2026-07-09", "reentry") == ""


def test_granules_without_a_depth_wait_for_the_house_number() -> None:
    on = shed()
    fed = book("2026-09-06 feed seed-start 4lb front", "2026-09-07 water 0.2in front", on=on)
    assert level(fed, "2026-09-08", "keep-off") == "note"
    more = book("2026-09-08 water 0.06in front", on=fed)
    assert level(more, "2026-09-09", "keep-off") == ""
    tighter = book("2026-01-02 set reentry depth 0.5in", on=more)
    assert level(tighter, "2026-09-09", "keep-off") == "note"
