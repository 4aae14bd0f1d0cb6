"""Entries of every kind with any mix of fields, as lines can say them."""

from datetime import date, time, timedelta
from typing import Any

from hypothesis import strategies as st

from journal.record.clean import clean
from journal.record.dose import Dose
from journal.record.entry import KINDS, Entry, slots
from journal.record.lawn import Lawn
from journal.record.quantity import parse
from journal.record.slot import Role, Slot
from journal.record.unit import UNITS, unit_for
from tests.line.lawns import TODAY

Values = dict[str, Any]

PARTS = ("1/2", "1/3", "2/3", "3/4")
FLAGS = ("mow-gap", "feed-overdue", "seed-switch", "mow-gap/front")
PATHS = (
    "20270503_142231.jpg", "photos/gate.jpg", "C:\\Pictures\\gate view.jpg", 'the "old" gate.png',
    "it's 5\" high -- x !",
    "20270503", "all", "front", "~/a b", "a''b", "2027-05-03", "3in", '"', "''", "é/ü.jpeg",
)  # fmt: skip
REMARKS = (
    "moles again", "-- twice", "it's \"odd\"", "[/red] [b]", "on 5/4", "wind 4mph", "100 % dry", "🌱 👩‍🌾", "שלום",
    "a!", "!a",
)  # fmt: skip


def numbers(slot: Slot, units: str) -> st.SearchStrategy[float]:
    """Values a slot can hold: round ones in the book's unit, in any unit, and any double at all."""
    dimension = slot.dimensions[0]
    low = slot.low if slot.low is not None else 0.001 if slot.dose else 0.0
    high = min(slot.high if slot.high is not None else 1e5, 1e5)
    shown = [unit_for(dimension, units), *(u for u in UNITS.values() if u.dimension is dimension)]
    tidy = st.builds(lambda n, unit: float(n * unit.factor + unit.offset), st.integers(0,
    4000).map(lambda n: n / 8).map(
        lambda n: parse(f"{n}").value), st.sampled_from(shown)).filter(lambda v: low <= v <= high)  # fmt: skip
    return st.one_of(tidy, st.floats(low, high).map(abs if low >= 0 else float).map(_measurable))


def _measurable(value: float) -> float:
    """Nothing smaller than a billionth was ever measured."""
    return value if abs(value) >= 1e-9 else 0.0


def _texts(examples: tuple[str, ...]) -> st.SearchStrategy[str]:
    made = st.text(max_size=30).map(clean).filter(lambda t: bool(t) and t != "!" and not t.endswith(" !"))
    return st.one_of(st.sampled_from(examples), made)


@st.composite
def entries(draw: st.DrawFn, kind: type[Entry], lawn: Lawn) -> Entry:
    """An entry that could have been saved on this lawn on any day up to today."""
    day = draw(st.dates(date(2025, 1, 1), TODAY))
    values: Values = {"date": day, "id": "e001"}
    if kind.kind == "remark":
        return kind(**values, about=draw(st.booleans()), text=draw(_texts(REMARKS)))
    values |= _common(draw, kind, lawn)
    for name, slot in slots(kind).items():
        value = _slot_value(draw, slot, lawn, kind, day)
        if value is not None:
            values[name] = value
    return kind(**_settled(draw, kind, values, lawn, day))


def _common(draw: st.DrawFn, kind: type[Entry], lawn: Lawn) -> Values:
    picked = draw(st.sets(st.sampled_from(lawn.zone_names)))
    values: Values = {"zones": tuple(zone for zone in lawn.zone_names if zone in picked)}
    rare = {
        "about": st.booleans(), "by_service": st.booleans(), "confirmed": st.booleans(),
        "time": st.times().map(lambda t: time(t.hour, t.minute)),
        "part": st.sampled_from(PARTS), "remark": _texts(REMARKS),
        "cost": st.integers(0, 100000).map(lambda cents: float(f"{cents}") / 100),
    }  # fmt: skip
    for name, strategy in rare.items():
        if draw(st.booleans()):
            values[name] = draw(strategy)
    if values["zones"] and kind.kind != "sighting" and draw(st.booleans()):
        values["share"] = draw(st.floats(0.5, 100))
    if draw(st.booleans()):
        values["spot"] = True
        if draw(st.booleans()):
            values["spot_m2"] = draw(st.floats(0.1, 1000))
    return values


def _slot_value(draw: st.DrawFn, slot: Slot, lawn: Lawn, kind: type[Entry], day: date) -> Any:
    if slot.role is not Role.PRODUCT and not draw(st.booleans()):
        return None
    match slot.role:
        case Role.MEASURE if not slot.dose:
            return draw(numbers(slot, lawn.units))
        case Role.CHOICE | Role.SUBJECT:
            return draw(st.sampled_from(slot.choices))
        case Role.MARK:
            return True
        case Role.PRODUCT:
            known = [product.name for product in lawn.products if product.kind in slot.kinds]
            return draw(st.sampled_from([*known, *(["unknown"] if kind.kind == "treatment" else [])]))
        case Role.WEEKDAYS:
            return tuple(sorted(draw(st.sets(st.integers(0, 6), min_size=1))))
        case Role.CIRCUITS:
            return draw(st.sampled_from([(("A", 20.0),), (("B", 12.5), ("A", 1 / 3))]))
        case Role.RULE:
            return draw(st.sampled_from(FLAGS))
        case Role.POINT:
            return draw(st.sampled_from(("gate", "n-corner", "p2")))
        case Role.PATH:
            return draw(st.sampled_from(PATHS))
        case Role.MONTH:
            return date(day.year, 3, 1)
        case Role.DAY:
            return day + timedelta(draw(st.integers(1, 700) if slot.ahead else st.integers(-60, 0)))
    return None


def _dose(draw: st.DrawFn, kind: type[Entry], lawn: Lawn) -> Values:
    names = [name for name, slot in slots(kind).items() if slot.dose and slot.role is Role.MEASURE]
    name = draw(st.sampled_from([*names, ""]))
    return {name: draw(numbers(slots(kind)[name], lawn.units))} if name else {}


def _settled(draw: st.DrawFn, kind: type[Entry], values: Values, lawn: Lawn, day: date) -> Values:
    """With what the kind can't do without, and without what it can't have together."""
    must: Values = {
        "rain": {"depth_mm": 12.7}, "height": {"height_mm": 91.44}, "photo": {"file": draw(st.sampled_from(PATHS))},
        "sighting": {"subject": "rust"}, "count": {"subject": "grubs", "per_m2": 43.0}, "soil-test": {"ph": 6.1},
        "intention": {"what": "seed", "target": day}, "snooze": {"flag": "mow-gap", "until": day + timedelta(7)},
        "aside": {"flag": "mow-gap", "remark": "as it should be"},
    }.get(kind.kind, {})  # fmt: skip
    values = must | values
    match kind.kind:
        case "feeding" | "seeding":
            values |= _dose(draw, kind, lawn)
        case "treatment":
            others = draw(st.lists(st.sampled_from(["thistle-out", "gate-barrier", "unknown"]), max_size=2))
            values |= _dose(draw, kind, lawn)
            values["also"] = tuple(Dose(name, **_dose(draw, kind, lawn)) for name in others)
        case "cultivation":
            values["what"] = draw(st.sampled_from([verb.what for verb in kind.verbs]))
        case "equipment":
            what = draw(st.sampled_from(["sharpen", "blade new"]))
            values |= {"what": what, "new": what == "blade new"}
        case "watering" if values.get("circuits"):
            values.pop("minutes", None)
            values["zones"] = ("front",)
        case "schedule" if not any(values.get(name) for name in ("minutes", "depth_mm", "off")):
            values["minutes"] = 20.0
        case "weather":
            high, low = sorted((values.pop("high_c", 0.0), values.pop("low_c", -3.5)), reverse=True)
            values |= {"high_c": high, "low_c": low}
        case "soil-test" if "ph" in values:
            values["ph"] = 3 + values["ph"] % 8
    if values.get("since") and values.get("until"):
        values["since"], values["until"] = sorted((values["since"], values["until"]))
    return values


KINDS_ON_A_LINE = tuple(kind for name, kind in sorted(KINDS.items()) if name != "setting")
