"""Numbers with a unit, bags, circuit times and the time of day."""

import re
from datetime import date

from journal.line.fitting import DOSE, Fitting
from journal.line.token import Token
from journal.line.when import find_time
from journal.line.words import neat
from journal.record.quantity import Quantity, looks_like_quantity, parse, parse_as
from journal.record.refusal import Refusal
from journal.record.slot import Role, Slot
from journal.record.term import LONGEST_WAIT
from journal.record.unit import UNITS, Dimension

_HALVES = {"half": 0.5, "quarter": 0.25, "a": 1.0}


def fit_bags(fit: Fitting, token: Token) -> int:
    """`half bag`, `a bag`."""
    after = fit.after()
    if "amount_g" not in fit.slots or token.word not in _HALVES or after is None or after.word not in ("bag", "bags"):
        return 0
    one_amount(fit, token.text)
    fit.bags = (_HALVES[token.word], token)
    fit.mark("quantity", 2)
    return 2


def fit_time(fit: Fitting, token: Token) -> int:
    """`7:30`, `7am`."""
    found = find_time(token.word)
    return 0 if found is None else fit.put("time", found, token, "date")


def fit_circuit(fit: Fitting, token: Token) -> int:
    """`A 20min` where the kind has circuits and the letter names one."""
    after = fit.after()
    if "circuits" not in fit.slots or after is None or not re.fullmatch(r"[A-Za-z][A-Za-z0-9]?", token.text):
        return 0
    name = token.text.upper()
    names = {c.name for zone in fit.lawn.zones for c in zone.circuits}
    names |= {circuit for circuit, _ in getattr(fit.old, "circuits", ())}
    if not looks_like_quantity(after.text) or (name not in names and len(name) > 1):
        return 0
    if name not in names:
        known = ", ".join(sorted(names)) or "none yet: set ZONE circuits A 60% 0.5in/h; B 40% 0.9in/h"
        raise Refusal(token.text, f"no sprinkler circuit of that name ({known}).")
    before = fit.values.get("circuits", ())
    if any(name == circuit for circuit, _ in before):
        raise Refusal(token.text, "this circuit has been named already.")
    text, used = quantity_words(fit, fit.at + 1)
    minutes = bounded(fit, fit.slots["minutes"], parse_as(text, Dimension.MINUTES), text)
    fit.values["circuits"] = (*before, (name, minutes))
    fit.mark("quantity", used + 1)
    return used + 1


def fit_quantity(fit: Fitting, token: Token) -> int:
    """`3in`, `12lb`, `4lb/k`: into the first slot that takes it, or what any line may have."""
    if not looks_like_quantity(token.text):
        return 0
    text, used = quantity_words(fit, fit.at)
    quantity = parse(text)
    cups = quantity.unit.name == "cup" and "amount_g" in fit.slots  # by volume or by weight: the product decides
    for name, slot in fit.slots.items():
        fits = slot.role is Role.MEASURE and not slot.keyword and quantity.dimension in slot.dimensions and not cups
        if not fits or (fit.values.get(name) is not None and not slot.dose):
            continue
        if slot.dose:
            one_amount(fit, text)
            fit.ounces = (text, token) if quantity.unit.name in ("oz", "oz/k") else None
        return fit.put(name, bounded(fit, slot, quantity, text), token, "quantity", used)
    return _common_quantity(fit, quantity, text, token, used)


_BARE = re.compile(r"([+-]?[\d./]+)(fl|sq)?$", re.IGNORECASE)


def quantity_words(fit: Fitting, at: int) -> tuple[str, int]:
    """The text of a quantity that begins at a word, and how many words it takes: `3in`, `3 in`, `2400 sq ft`."""
    token = fit.tokens[at]
    after = fit.tokens[at + 1].text if at + 1 < len(fit.tokens) and not fit.tokens[at + 1].quoted else ""
    if token.text.isascii() and token.text.isdecimal() and re.match(r"[1-9]\d*/[1-9]\d*\D", after):
        return f"{token.text} {after}", 2
    bare = _BARE.match(token.text)
    for more in (2, 1) if bare else ():
        tail = fit.tokens[at + 1 : at + 1 + more]
        unit = "".join(((bare and bare[2]) or "", *(t.text for t in tail))).casefold()
        if len(tail) == more and unit in UNITS and not any(t.quoted for t in tail):
            return " ".join((token.text, *(t.text for t in tail))), more + 1
    return token.text, 1


def one_amount(fit: Fitting, text: str) -> None:
    """Raises Refusal when an amount of this product has been said."""
    if fit.bags or fit.cups or any(fit.values.get(name) is not None for name in DOSE[1:]):
        raise Refusal(text, "give one amount: a total like 12lb, or a rate like 4lb/k.")


def _common_quantity(fit: Fitting, quantity: Quantity, text: str, token: Token, used: int) -> int:
    own_percent = any(Dimension.PERCENT in s.dimensions and not s.keyword for s in fit.slots.values())
    match quantity.dimension:
        case Dimension.MONEY:
            return fit.put("cost", quantity.value, token, "quantity", used)
        case Dimension.PERCENT if fit.zones and not own_percent:
            if not 0 < quantity.value <= 100:
                raise Refusal(text, "a share of a zone lies between 0 and 100 %.")
            return fit.put("share", quantity.value, token, "quantity", used)
        case Dimension.BAGS if "amount_g" in fit.slots:
            one_amount(fit, text)
            fit.bags = (_some(quantity.value, text), token)
        case Dimension.VOLUME if quantity.unit.name == "cup" and "amount_g" in fit.slots:
            one_amount(fit, text)
            fit.cups = (_some(quantity.value, text) / float(UNITS["cup"].factor), token)
        case Dimension.AREA:
            raise Refusal(text, f"an area needs `spot` before it: spot {text}.")
        case Dimension.DAYS if fit.target:
            if quantity.value > LONGEST_WAIT:
                raise Refusal(text, f"at most {LONGEST_WAIT} days ahead can be meant.")
            ahead = date.fromordinal(fit.today.toordinal() + int(quantity.value))
            return fit.put(fit.target, ahead, token, "date", used)
        case Dimension.NUMBER:
            raise Refusal(text, "a unit is missing, like 3in, 12lb or 20min.")
        case _:
            taken = any(quantity.dimension in s.dimensions and not s.keyword for s in fit.slots.values())
            why = (
                "an amount of that kind has been said already."
                if taken
                else f"has no place after `{fit.tokens[0].text}`."
            )
            raise Refusal(text, why)
    fit.mark("quantity", used)
    return used


def _some(value: float, text: str) -> float:
    if value <= 0:
        raise Refusal(text, "more than nothing is wanted here.")
    return value


def bounded(fit: Fitting, slot: Slot, quantity: Quantity, text: str) -> float:
    """The value, when it can have been meant in this slot. Raises Refusal quoting `text`."""
    low, high = slot.low, slot.high
    if slot.dose or (low is not None and low > 0):
        _some(quantity.value, text)
    if (low is not None and quantity.value < low) or (high is not None and quantity.value > high):
        ends = [neat(v, quantity.dimension, fit.lawn.units).strip() for v in (low or 0.0, high or 0.0)]
        wanted = f"{ends[0]} to {ends[1]}" if high is not None else f"{ends[0]} or more"
        raise Refusal(text, f"can't be meant here: {wanted} is possible.")
    return quantity.value
