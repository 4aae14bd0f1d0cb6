"""After a product that nobody knows: it is taken for what waits longest, and weed products wait 28 days for it."""

from datetime import date, timedelta

from journal.facts.actives import fallback
from journal.reckon.uses import Use, uses
from journal.season.history import Past

SEED_DAYS = fallback("pre-emergent").seed_wait_days or 0
MOWINGS = fallback("pre-emergent").new_grass_mowings
AGAIN_DAYS = fallback("weed").repeat_days


def unknown_uses(past: Past, since: int) -> list[Use]:
    """Those of the zone from that day (an ordinal) on, oldest first; spots are none."""
    return [use for use in uses(past, since) if use.product is None and not use.spot]


def too_soon_after(past: Past, unknown: Use) -> list[Use]:
    """Weed products put down on it before the 28 days were over."""
    last = unknown.day + AGAIN_DAYS - 1
    later = (use for use in uses(past, unknown.day + 1) if use.against_weeds and not use.spot)
    return [use for use in later if use.product is not None and use.day <= last]


def free_of_unknown(past: Past) -> tuple[date, Use] | None:
    """The first day on which a weed product may follow, and what it waits for; None where nothing waits."""
    held = unknown_uses(past, past.day - AGAIN_DAYS + 1)
    return (held[-1].date + timedelta(AGAIN_DAYS), held[-1]) if held else None
