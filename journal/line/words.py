"""An entry in words: the row under the line, the toast, the lists."""

from datetime import date
from functools import lru_cache

from journal.record.day import WEEKDAYS, spoken
from journal.record.dose import Dose
from journal.record.entry import Entry, slots
from journal.record.kinds.remark import Remark
from journal.record.kinds.setting import Setting
from journal.record.lawn import Lawn
from journal.record.quantity import in_unit, show
from journal.record.slot import Role, Slot, is_said
from journal.record.unit import Dimension, unit_for

_BEFORE = {"height_mm": "at", "wind_m_s": "wind", "temp_c": "air", "point": "from", "passes": "", "setting": "setting",
           "ph": "pH", "p": "P", "p_ppm": "P", "k": "K", "k_ppm": "K", "om_percent": "organic matter",
           "purity": "pure", "germination": "germinating", "tested": "tested", "since": "from", "until": "to",
           "target": "for"}  # fmt: skip
_PAST = {"bag": "bagged", "return": "clippings returned", "scatter": "clippings scattered"}
USUAL = "(usual)"


def in_words(entry: Entry, lawn: Lawn, today: date) -> str:
    """One sentence: the verb, the product and amount, the zones, the rest, the day; assumed words marked (usual)."""
    if isinstance(entry, Remark):
        return f"note: {entry.text}, {_day(entry, today)}"
    if isinstance(entry, Setting):
        return _setting(entry, today)
    text = ", ".join([_phrase([_verb(entry)], entry, lawn), *_rest(entry, lawn), _day(entry, today)])
    return text + (f" -- {entry.remark}" if entry.remark else "")


def summary(entry: Entry, lawn: Lawn) -> str:
    """The same without verb, day and remark: what a list shows beside the kind."""
    if isinstance(entry, Remark):
        return entry.text
    if isinstance(entry, Setting):
        return f"{entry.name} {', '.join(f'{key} {value}' for key, value in entry.values)}".strip()
    parts = [_phrase([_preset(entry)], entry, lawn), *_rest(entry, lawn)]
    return ", ".join(part for part in parts if part).replace(f" {USUAL}", "")


def _phrase(head: list[str], entry: Entry, lawn: Lawn) -> str:
    return " ".join(part for part in [*head, *_doses(entry, lawn), _zones(entry, lawn)] if part)


def _rest(entry: Entry, lawn: Lawn) -> list[str]:
    fields = [words for name, slot in slots(type(entry)).items() if (words := _field(entry, name, slot, lawn))]
    return [*fields, *_common(entry, lawn)]


def _verb(entry: Entry) -> str:
    what = getattr(entry, "what", "")
    return next((verb.name for verb in entry.verbs if verb.what and verb.what == what), entry.verbs[0].name)


def _preset(entry: Entry) -> str:
    return _verb(entry) if any(verb.what for verb in entry.verbs) else ""


def _day(entry: Entry, today: date) -> str:
    about = "about " if entry.about else ""
    days = (today - entry.date).days
    named = {0: "today", 1: "yesterday"}.get(days, "") if not about else ""
    time = f" {entry.time:%H:%M}" if entry.time else ""
    return f"{about}{named or spoken(entry.date, today)}{time}"


def _mark(entry: Entry, name: str) -> str:
    return f" {USUAL}" if name in entry.assumed else ""


def _zones(entry: Entry, lawn: Lawn) -> str:
    if not entry.zones:
        return ""
    every = len(lawn.zones) > 1 and set(entry.zones) == set(lawn.zone_names)
    names = "all zones" if every else ", ".join(entry.zones)
    share = f" {entry.share:g} %" if entry.share is not None else ""
    return f"{names}{share}{_mark(entry, 'zones')}"


def amount_words(dose: Dose, lawn: Lawn) -> str:
    """`12 lb` or `4 lb/k`; '' when no amount was said."""
    for value, dimension in (
        (dose.amount_g, Dimension.MASS), (dose.amount_ml, Dimension.VOLUME),
        (dose.rate_g_per_m2, Dimension.MASS_RATE), (dose.rate_ml_per_m2, Dimension.VOLUME_RATE),
    ):  # fmt: skip
        if value is not None:
            return neat(value, dimension, lawn.units)
    return ""


@lru_cache(maxsize=2048)
def neat(value: float, dimension: Dimension, units: str) -> str:
    """As few decimals as show what was meant: `3 in`, `0.25 in`; millimetres are whole from ten on: `76 mm`."""
    number = in_unit(value, unit_for(dimension, units))
    places = next((p for p in (0, 1, 2) if abs(number - round(number, p)) < 1e-6 * max(1.0, abs(number))), 2)
    if dimension is Dimension.LENGTH and units == "metric" and abs(number) >= 10:
        places = 0
    if abs(number) >= 100:
        places = min(places, 1)
    return show(value, dimension, units, places=places)


def doses(entry: Entry) -> tuple[Dose, ...]:
    """Each product that an entry put down, with its amount."""
    if not getattr(entry, "product", "") or "amount_g" not in slots(type(entry)):
        return ()
    first = Dose(
        getattr(entry, "product", ""), getattr(entry, "amount_g", None), getattr(entry, "amount_ml", None),
        getattr(entry, "rate_g_per_m2", None), getattr(entry, "rate_ml_per_m2", None),
    )  # fmt: skip
    return (first, *getattr(entry, "also", ()))


def _doses(entry: Entry, lawn: Lawn) -> list[str]:
    said = [f"{amount_words(dose, lawn)} {dose.product}".strip() for dose in doses(entry)]
    if not said:
        product = getattr(entry, "product", "")
        return [f"{product}{_mark(entry, 'product')}"] if product else []
    return [" + ".join(said) + _mark(entry, "product") + (" on" if entry.zones else "")]


def _field(entry: Entry, name: str, slot: Slot, lawn: Lawn) -> str:
    value = getattr(entry, name)
    if not is_said(value) or slot.dose or slot.role is Role.PRESET or name == "file":
        return str(value) if name == "file" and value else ""
    before = _BEFORE.get(name, "")
    match slot.role:
        case Role.MEASURE:
            text = f"{neat(value, slot.dimensions[0], lawn.units)}"
        case Role.CHOICE:
            text = _PAST.get(value, value)
        case Role.MARK:
            text = slot.choices[0]
        case Role.WEEKDAYS:
            text = " ".join(WEEKDAYS[day].title() for day in value)
        case Role.CIRCUITS:
            text = ", ".join(f"{circuit} {minutes:g} min" for circuit, minutes in value)
        case Role.DAY:
            text = f"{WEEKDAYS[value.weekday()].title()} {value.isoformat()}"
        case Role.MONTH:
            text = f"{value:%Y-%m}"
        case _:
            text = str(value)
    return f"{before} {text}{_mark(entry, name)}".strip()


def _common(entry: Entry, lawn: Lawn) -> list[str]:
    parts = []
    if entry.spot:
        area = f" {neat(entry.spot_m2, Dimension.AREA, lawn.units)}" if entry.spot_m2 is not None else ""
        parts.append(f"spot{area}")
    if entry.part:
        parts.append(f"part {entry.part}")
    if entry.by_service:
        parts.append("by service")
    if entry.cost is not None:
        parts.append(f"${entry.cost:,.2f}")
    return parts


def _setting(entry: Setting, today: date) -> str:
    about = entry.name or "the lawn"
    values = ", ".join(f"{key} {value}" for key, value in entry.values)
    since = f", from {spoken(entry.since, today)}" if entry.since else ""
    return f"set {about}: {values}{since}".rstrip(": ")
