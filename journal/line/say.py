"""Any entry written back as a line: `read(say(entry))` is that entry again."""

from typing import Any

from journal.line.token import quote
from journal.line.words import doses
from journal.record.day import WEEKDAYS
from journal.record.dose import Dose
from journal.record.entry import Entry, slots
from journal.record.fold import keys
from journal.record.kinds.remark import Remark
from journal.record.kinds.setting import Setting
from journal.record.lawn import Lawn
from journal.record.quantity import write, write_as
from journal.record.slot import Role, Slot, is_said
from journal.record.unit import UNITS, Dimension


def say(entry: Entry, lawn: Lawn) -> str:
    """The full line: every value explicit, the date as year-month-day, in the book's own units."""
    if isinstance(entry, Remark):
        about = "~" if entry.about else ""
        return f"note {about}{entry.date.isoformat()} {entry.text}"
    if isinstance(entry, Setting):
        return _setting(entry)
    words = [_verb(entry), *_doses(entry, lawn)]
    words += _zones(entry, lawn)
    for name, slot in slots(type(entry)).items():
        words += _field(name, slot, getattr(entry, name), lawn, entry)
    words += _common(entry, lawn)
    return _close(" ".join(words), entry)


def _verb(entry: Entry) -> str:
    what = getattr(entry, "what", "")
    return next((verb.name for verb in entry.verbs if verb.what and verb.what == what), entry.verbs[0].name)


def _zones(entry: Entry, lawn: Lawn) -> list[str]:
    words = ["all"] if len(entry.zones) > 1 and entry.zones == lawn.zone_names else list(entry.zones)
    if entry.share is not None:
        words.append(write(entry.share, Dimension.PERCENT, lawn.units))
    return words


def _doses(entry: Entry, lawn: Lawn) -> list[str]:
    words: list[str] = []
    for dose in doses(entry):
        words += (["+"] if words else []) + [dose.product, *_amounts(dose, lawn)]
    alone: str = getattr(entry, "product", "")
    return words or ([alone] if alone else [])


def _amounts(dose: Dose, lawn: Lawn) -> list[str]:
    pairs = (
        (dose.amount_g, Dimension.MASS), (dose.amount_ml, Dimension.VOLUME),
        (dose.rate_g_per_m2, Dimension.MASS_RATE), (dose.rate_ml_per_m2, Dimension.VOLUME_RATE),
    )  # fmt: skip
    return [_amount(value, dimension, dose.product, lawn) for value, dimension in pairs if value is not None]


def _amount(value: float, dimension: Dimension, name: str, lawn: Lawn) -> str:
    """Never in plain ounces for a liquid: there the reader asks whether fluid ounces are meant."""
    text = write(value, dimension, lawn.units)
    product = lawn.product(name)
    if product and product.liquid and text.endswith(("oz", "oz/k")) and "floz" not in text:
        return write_as(value, UNITS["g" if dimension is Dimension.MASS else "g/m2"])
    return text


def _field(name: str, slot: Slot, value: Any, lawn: Lawn, entry: Entry) -> list[str]:
    if not is_said(value) or slot.dose or slot.role is Role.PRESET:
        return []
    key = [slot.keyword] if slot.keyword else []
    match slot.role:
        case Role.MEASURE:
            return [*key, write(value, slot.dimensions[0], lawn.units)]
        case Role.MARK:
            return [] if name == "new" and entry.kind == "equipment" else slot.choices[0].split()
        case Role.WEEKDAYS:
            return [WEEKDAYS[day] for day in value]
        case Role.CIRCUITS:
            return [
                word for circuit, minutes in value for word in (circuit, write(minutes, Dimension.MINUTES, lawn.units))
            ]
        case Role.DAY:
            return [*key, value.isoformat()]
        case Role.MONTH:
            return [*key, f"{value:%Y-%m}"]
        case Role.PATH:
            return [quote(value)]
    return [*key, value]


def _common(entry: Entry, lawn: Lawn) -> list[str]:
    words: list[str] = []
    if entry.spot:
        words += ["spot"] + ([write(entry.spot_m2, Dimension.AREA, lawn.units)] if entry.spot_m2 is not None else [])
    if entry.part:
        words += ["part", entry.part]
    if entry.by_service:
        words += ["by", "service"]
    if entry.cost is not None:
        words.append(write(entry.cost, Dimension.MONEY, lawn.units))
    about = "~" if entry.about else ""
    words += ["on", f"{about}{entry.date.isoformat()}"]
    if entry.time is not None:
        words.append(f"{entry.time:%H:%M}")
    return words


def _close(line: str, entry: Entry) -> str:
    if entry.remark:
        line = f"{line} -- {entry.remark}"
    return f"{line} !" if entry.confirmed else line


def _setting(entry: Setting) -> str:
    words = ["set"] if entry.what in ("lawn", "rule") else [entry.what]
    words += [entry.name] if entry.name else []
    for key, value in entry.values:
        words += [*([] if key == "off" else [key]), *_value(key, value, entry.what)]
    if entry.since:
        words += ["from", entry.since.isoformat()]
    return _close(" ".join([*words, "on", entry.date.isoformat()]), entry)


def _value(key: str, value: str, what: str) -> list[str]:
    """A value whose words could be taken for something else is quoted as one."""
    if key == "off":
        return ["off" if value == "yes" else "on"]
    words = value.split()
    risky = any(w.replace("-", "_").casefold() in (*keys(what), "from", "on", "--", "!") for w in words)
    if risky or " ".join(words) != value or any(w[0] in "\"'" for w in words):
        return [quote(value)]
    return words
