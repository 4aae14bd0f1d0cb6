"""The last day of a season on which a feeding is of use."""

from datetime import date, timedelta

from journal.reckon.threshold import in_force
from journal.season.growth import Window
from journal.season.history import Past


def last_useful(past: Past, growth: Window) -> date:
    """The last day of the season for a feeding: not in the last three weeks, except by months or if the owner does."""
    if past.lawn.late_fall or past.lawn.feeding == "months":
        return growth[1]
    return growth[1] - timedelta(round(in_force(past.lawn, "feed-overdue", "late-days")))
