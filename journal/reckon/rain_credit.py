"""How much of a day's rain reaches the roots."""

from journal.facts.irrigation import RAIN_FULL_MM, RAIN_LOST_MM, RAIN_MOST_MM, RAIN_SHARE_ABOVE


def effective_mm(rain_mm: float) -> float:
    """What counts of one day's rain, in mm: the first 0.1 in is lost, between 1 and 2 in two thirds count.

    Nothing above 2 in counts. Of single days or single rains only, never of a sum over days. Texas A&M University,
    TexasET, Effective Rainfall.
    """
    most = max(0.0, min(rain_mm, RAIN_FULL_MM) - RAIN_LOST_MM)
    return most + RAIN_SHARE_ABOVE * max(0.0, min(rain_mm, RAIN_MOST_MM) - RAIN_FULL_MM)
