"""Hours between two entries, with and without a time of day."""

from datetime import date, time

import pytest

from journal.season.hours import Within, days_of, within_hours

SPRAYED = date(2026, 5, 4)


@pytest.mark.parametrize(
    ("at", "rained", "rained_at", "hours", "found"),
    [
        (time(9), date(2026, 5, 4), time(15), 6, Within.YES),
        (time(9), date(2026, 5, 4), time(15, 1), 6, Within.NO),
        (time(9), date(2026, 5, 4), time(8), 24, Within.NO),
        (time(20), date(2026, 5, 5), time(1), 6, Within.YES),
        (None, date(2026, 5, 4), time(15), 6, Within.PERHAPS),
        (None, date(2026, 5, 5), None, 6, Within.NO),
        (None, date(2026, 5, 5), None, 24, Within.YES),
        (None, date(2026, 5, 6), None, 24, Within.NO),
        (None, date(2026, 5, 6), None, 48, Within.YES),
        (None, date(2026, 5, 7), None, 48, Within.NO),
        (None, date(2026, 5, 3), None, 48, Within.NO),
    ],
)
def test_sprayed_then_rained_on(
    at: time | None, rained: date, rained_at: time | None, hours: float, found: Within
) -> None:
    assert within_hours(SPRAYED, at, rained, rained_at, hours) is found


def test_hours_without_times_reach_whole_days() -> None:
    assert [days_of(hours) for hours in (1, 12, 13, 24, 25, 48)] == [0, 0, 1, 1, 2, 2]
