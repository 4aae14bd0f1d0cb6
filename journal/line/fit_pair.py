"""Words that come in pairs: `wind 4mph`, `spot 40sqft`, `on 6/14`, and the `+` of a tank mix."""

import re
from datetime import date
from typing import Any

from journal.line.fit_number import bounded, quantity_words
from journal.line.fit_pack import fit_packs
from journal.line.fit_word import fit_date
from journal.line.fitting import DOSE, Fitting
from journal.line.token import Token
from journal.line.when import Lean, find_date
from journal.record.day import parse_month
from journal.record.kinds.treatment import Treatment
from journal.record.quantity import looks_like_quantity, parse, parse_as
from journal.record.refusal import Refusal, nearest
from journal.record.slot import Role, Slot
from journal.record.unit import Dimension


def fit_plus(fit: Fitting, token: Token) -> int:
    """`+` between two products of one tank mix."""
    if token.text != "+" or fit.kind is not Treatment:
        return 0
    if not fit.values.get("product"):
        raise Refusal("+", "name the first product before it.")
    fit_packs(fit)
    fit.groups.append({name: fit.values.pop(name, None) for name in DOSE})
    fit.mark("keyword")
    return 1


def fit_common_pair(fit: Fitting, token: Token) -> int:
    """`spot 40sqft`, `part 1/2`, `by service`, `on 6/14`."""
    match token.word:
        case "spot":
            return _spot(fit, token)
        case "part":
            after = fit.needed(token, "which part, like 1/2,")
            if not re.fullmatch(r"[1-9]/[1-9]", after.text) or after.text[0] > after.text[2]:
                raise Refusal(after.text, "a part is written like 1/2.")
            return fit.put("part", after.text, token, "keyword", 2)
        case "by":
            after = fit.needed(token, "`service`")
            if after.word != "service":
                raise Refusal(after.text, "write `by service`.")
            return fit.put("by_service", True, token, "keyword", 2)
        case "on":
            fit.needed(token, "a date")
            fit.at += 1
            used = fit_date(fit, fit.tokens[fit.at])
            fit.at -= 1
            if not used:
                raise Refusal(fit.tokens[fit.at + 1].text, "a date is wanted after `on`.")
            return used + 1
    return 0


def _spot(fit: Fitting, token: Token) -> int:
    """`spot 40sqft`, or `spot` alone when nobody measured it."""
    after = fit.after()
    if fit.values.get("spot"):
        raise Refusal(token.text, "spot has been said already.")
    fit.values["spot"] = True
    if after and not after.quoted and looks_like_quantity(after.text):
        text, used = quantity_words(fit, fit.at + 1)
        quantity = parse(text)
        if quantity.dimension is Dimension.AREA and quantity.value > 0:
            return fit.put("spot_m2", quantity.value, token, "keyword", used + 1)
        if quantity.dimension in (Dimension.AREA, Dimension.NUMBER, Dimension.LENGTH):
            raise Refusal(text, "an area is wanted after `spot`, like 40sqft or 4m2.")
    fit.mark("keyword")
    return 1


def fit_keyed(fit: Fitting, token: Token) -> int:
    """A keyword of the kind with its value: `wind 4mph`, `from gate`."""
    mine = [(name, slot) for name, slot in fit.slots.items() if slot.keyword and slot.keyword == token.word]
    if not mine:
        return 0
    after = fit.needed(token, "a value")
    refusal: Refusal | None = None
    for name, slot in mine:
        try:
            used, value = _keyed_value(fit, slot, after)
        except Refusal as found:
            refusal = refusal if refusal and not looks_like_quantity(after.text) else found
            continue
        if used:
            return fit.put(name, value, token, "keyword", used + 1)
    raise refusal or Refusal(after.text, f"can't stand after `{token.text}`.")


def _keyed_value(fit: Fitting, slot: Slot, after: Token) -> tuple[int, Any]:
    match slot.role:
        case Role.MEASURE:
            text, used = quantity_words(fit, fit.at + 1)
            if Dimension.NUMBER in slot.dimensions and not text.endswith("%"):
                text, used = after.text, 1
            return used, bounded(fit, slot, parse_as(text, *slot.dimensions), text)
        case Role.CHOICE:
            if after.word in slot.choices:
                return 1, after.word
            raise Refusal(after.text, f"one of {', '.join(slot.choices)} is wanted.", nearest(after.word, slot.choices))
        case Role.MONTH:
            return 1, parse_month(after.text)
        case Role.POINT:
            point = after.word
            if not re.fullmatch(r"[a-z][a-z0-9-]*", point):
                raise Refusal(after.text, "a photo point is a word of letters, digits and hyphens.")
            return 1, point
        case Role.DAY:
            return _keyed_date(fit, slot, after)
    return 0, None


def _keyed_date(fit: Fitting, slot: Slot, after: Token) -> tuple[int, date]:
    lean = Lean.THIS_YEAR if slot.this_year else Lean.AHEAD if slot.ahead else Lean.BACK
    base = _begun(fit, slot.follows) if slot.follows else None
    found = find_date(fit.tokens, fit.at + 1, fit.dates(lean, base))
    if found is None:
        raise Refusal(after.text, "a date is wanted here.")
    if not slot.ahead and found.date > fit.today:
        raise Refusal(after.text, "lies ahead.")
    return found.used, found.date


def _begun(fit: Fitting, name: str) -> date | None:
    """The day said in another field, whether it stands before this word or behind it."""
    said: date | None = fit.values.get(name)
    keyword = fit.slots[name].keyword
    at = next((i for i, t in enumerate(fit.tokens[:-1]) if i > fit.at and t.word == keyword and not t.quoted), None)
    if said is not None or at is None:
        return said
    found = find_date(fit.tokens, at + 1, fit.dates(Lean.THIS_YEAR))
    return found.date if found else None
