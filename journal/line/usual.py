"""What is left out takes the usual: what the last entries of that kind said."""

from datetime import date
from typing import Any

from journal.record.entry import Entry, slots
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.watering import Watering
from journal.record.lawn import Lawn
from journal.record.slot import Role, is_said
from journal.season.history import History
from journal.season.track import order

LATELY = 5
"""So many entries tell what is usual: one odd day doesn't change it."""


def last_of(kind: type[Entry], history: History, zones: tuple[str, ...], today: date) -> Entry | None:
    """The newest entry of a kind in any of these zones, up to today."""
    found = [history.on(zone, today)[kind].last for zone in zones]
    return max((entry for entry in found if entry is not None), key=order, default=None)


def usual_zones(kind: type[Entry], history: History, lawn: Lawn, today: date) -> tuple[str, ...]:
    """The zones that most of the last five entries of that kind named, the newest where none leads; else all."""
    if kind.lawnwide:
        return ()
    if kind.everywhere:
        return lawn.zone_names
    named: dict[tuple[str, ...], int] = {}
    for entry in _lately(kind, history, lawn.zone_names, today):
        zones = tuple(zone for zone in lawn.zone_names if zone in entry.zones)
        if zones and not entry.spot:
            named[zones] = named.get(zones, 0) + 1
    return max(named, key=lambda zones: named[zones], default=lawn.zone_names)


def _lately(kind: type[Entry], history: History, zones: tuple[str, ...], today: date) -> list[Entry]:
    """The last five entries of a kind in any of these zones, newest first."""
    found = {entry.id: entry for zone in zones for entry in history.on(zone, today)[kind].newest(LATELY)}
    return sorted(found.values(), key=order, reverse=True)[:LATELY]


def usual_values(
    kind: type[Entry], given: dict[str, Any], zones: tuple[str, ...], history: History, lawn: Lawn, today: date
) -> dict[str, Any]:
    """Values for the slots that may be left out and were. Never an amount, a rate, a date, wind or temperature."""
    last = _alike(kind, history, zones, today) or last_of(kind, history, zones or ("",), today)
    found: dict[str, Any] = {}
    for name, slot in slots(kind).items():
        if not slot.usual or is_said(given.get(name)):
            continue
        value = getattr(last, name) if last is not None else None
        if kind is Mowing and name == "minutes" and last is not None and last.zones != zones:
            continue  # the time it took to mow other zones, or more of them, says nothing of these
        if slot.role is Role.PRODUCT:
            value = _usual_product(value, slot.kinds, lawn)
        if is_said(value):
            found[name] = value
    if kind is Mowing and "height_mm" not in found and given.get("height_mm") is None:
        found["height_mm"] = lawn.height_mm
    if kind is Watering:
        found = _usual_watering(found, given, last)
    return found


def _alike(kind: type[Entry], history: History, zones: tuple[str, ...], today: date) -> Entry | None:
    """The newest entry of exactly these zones among the last few: another zone's height is not theirs."""
    return next((entry for entry in _lately(kind, history, zones, today) if entry.zones == zones), None)


def _usual_product(value: Any, kinds: tuple[str, ...], lawn: Lawn) -> str:
    fitting = [product.name for product in lawn.products if product.kind in kinds]
    if value in fitting:
        return str(value)
    return fitting[0] if len(fitting) == 1 else ""


def _usual_watering(found: dict[str, Any], given: dict[str, Any], last: Entry | None) -> dict[str, Any]:
    """The timer's minutes, by circuit where they were given so; a stated depth leaves no room for them."""
    if given.get("depth_mm") is not None or given.get("deep") or given.get("circuits"):
        return {}
    if isinstance(last, Watering) and last.circuits and given.get("minutes") is None:
        return {"circuits": last.circuits}
    return found
