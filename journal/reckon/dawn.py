"""Whether an hour on the clock lies near sunrise or sunset, where only the latitude is known."""

from datetime import date, time

from journal.reckon.evapotranspiration import daylight

NOON = (12.0, 13.5)
"""Hours on the clock between which the sun is highest, with summer time and the width of a time zone: judgment."""

UNKNOWN_HOURS = 12.0
"""Of daylight, where not even the latitude is known: the mean over the year."""


def near_dawn_or_dusk(day: date, at: time, latitude: float | None, hours: float) -> bool:
    """Whether it may be before so many hours after sunrise, or after so many hours before sunset.

    The clock is not known to the hour, so that whichever noon is worse counts.
    """
    light = UNKNOWN_HOURS if latitude is None else daylight(latitude, day.timetuple().tm_yday)
    clock = at.hour + at.minute / 60
    earliest, latest = NOON
    return clock < latest - light / 2 + hours or clock > earliest + light / 2 - hours
