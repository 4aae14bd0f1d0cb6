"""Dates, keywords and names: zones, products, things seen."""

import re

from journal.line.complete import possible_words
from journal.line.fitting import Fitting
from journal.line.name import ALL, find_name
from journal.line.token import Token
from journal.line.when import Lean, find_date
from journal.line.words import doses
from journal.record.clean import unseen
from journal.record.day import name_weekday
from journal.record.kinds.treatment import UNKNOWN, Treatment
from journal.record.refusal import Refusal, nearest
from journal.record.slot import Role
from journal.record.unit import UNITS, Dimension


def fit_date(fit: Fitting, token: Token) -> int:
    """A date: of the entry, or first the day that a plan is for. Only that one may lie ahead."""
    if _fraction(fit, token):
        return 0
    target = fit.target if fit.values.get(fit.target) is None else ""
    found = find_date(fit.tokens, fit.at, fit.dates(Lean.AHEAD if target else Lean.BACK))
    if found is None:
        return 0
    if weekdays := _weekday(fit, token):
        return weekdays
    if target:
        return fit.put(target, found.date, token, "date", found.used)
    if found.date > fit.today:
        typed = " ".join(token.text for token in fit.tokens[fit.at : fit.at + found.used])
        raise Refusal(typed, f"lies ahead. Only plans may: intend ... {found.date}.", "intend")
    if found.about:
        fit.values["about"] = True
    return fit.put("date", found.date, token, "date", found.used)


def _fraction(fit: Fitting, token: Token) -> bool:
    """Whether this is the number of a quantity that the kind takes: `1/4 in` of topdressing, `1/2 bag` of a feeding."""
    after = fit.after()
    if after is None or after.word not in UNITS or not re.fullmatch(r"\d+/\d+", token.text):
        return False
    dimension = UNITS[after.word].dimension
    taken = {d for slot in fit.slots.values() if not slot.keyword for d in slot.dimensions}
    return dimension in taken or (dimension is Dimension.BAGS and "amount_g" in fit.slots)


def _weekday(fit: Fitting, token: Token) -> int:
    name = next((n for n, s in fit.slots.items() if s.role is Role.WEEKDAYS), "")
    weekday = name_weekday(token.word)
    if not name or weekday is None:
        return 0
    fit.values[name] = tuple(sorted({*fit.values.get(name, ()), weekday}))
    fit.mark("date")
    return 1


def fit_word(fit: Fitting, token: Token) -> int:
    """A word that is one of the kind's own: `bag`, `deep`, `edge kept`."""
    for name, slot in fit.slots.items():
        if slot.role is Role.CHOICE and not slot.keyword and token.word in slot.choices:
            return fit.put(name, token.word, token, "keyword")
        if slot.role is Role.MARK:
            for choice in slot.choices:
                said = choice.split()
                if [t.word for t in fit.tokens[fit.at : fit.at + len(said)] if not t.quoted] == said:
                    return fit.put(name, True, token, "keyword", len(said))
    return 0


def fit_name(fit: Fitting, token: Token) -> int:
    """A zone, then a product, in full or cut short."""
    if token.word == ALL and not token.quoted:
        fit.zones = list(fit.lawn.zone_names)
        fit.mark("zone")
        return 1
    shed = _shed(fit)
    exact = token.word in shed and token.word not in fit.zone_names
    zone = "" if exact else find_name(token.text, fit.zone_names)
    if zone:
        if zone in fit.zones:
            raise Refusal(token.text, "this zone has been named already.")
        fit.zones.append(zone)
        fit.mark("zone")
        return 1
    product = find_name(token.text, shed) if shed else ""
    return fit.put("product", product, token, "product") if product else 0


def _shed(fit: Fitting) -> tuple[str, ...]:
    slot = fit.slots.get("product")
    if slot is None:
        return ()
    names = tuple(product.name for product in fit.lawn.products if product.kind in slot.kinds)
    if fit.old is not None and type(fit.old) is fit.kind:
        names += tuple(dose.product for dose in doses(fit.old) if dose.product not in names)
    return (*names, UNKNOWN) if fit.kind is Treatment else names


def fit_loose(fit: Fitting, token: Token) -> int:
    """What was seen, a flag, a file."""
    for name, slot in fit.slots.items():
        if slot.role is Role.SUBJECT and not fit.values.get(name):
            found = find_name(token.text, slot.choices)
            return fit.put(name, found, token, "subject") if found else 0
        if slot.role is Role.RULE and not fit.values.get(name):
            return _put_flag(fit, name, token)
        if slot.role is Role.PATH and not fit.values.get(name):
            return _put_path(fit, name, token)
    return 0


def _put_flag(fit: Fitting, name: str, token: Token) -> int:
    """A rule's id, or one flag's: `mow-gap/front`."""
    head, slash, tail = token.word.partition("/")
    found = find_name(head, fit.rules)
    if not found:
        return 0
    stray = next((z for z in tail.partition("/")[0].split("+") if slash and z not in fit.zone_names), "")
    if stray:
        raise Refusal(stray, "no zone of that name.", nearest(stray, fit.zone_names))
    return fit.put(name, found + slash + tail, token, "flag")


_FILE_NAME = re.compile(r"\.[a-z][a-z0-9]{1,4}$|[/\\].*[a-z]|[a-z].*[/\\]", re.IGNORECASE)


def fit_path(fit: Fitting, token: Token) -> int:
    """A file's name where one is wanted: in quotes, or one that looks it (20270503.jpg is neither number nor date)."""
    name = next((name for name, slot in fit.slots.items() if slot.role is Role.PATH), "")
    if not name or fit.values.get(name) or not (token.quoted or _FILE_NAME.search(token.text)):
        return 0
    return _put_path(fit, name, token)


def _put_path(fit: Fitting, name: str, token: Token) -> int:
    if unseen(token.text):
        raise Refusal(token.text, "the file's name holds a character that can't be seen; rename the file.")
    return fit.put(name, token.text, token, "path")


def unknown_word(fit: Fitting, token: Token) -> Refusal:
    """The Refusal for a word that fitted nothing, with what was probably meant."""
    suggestion = nearest(token.text, possible_words(fit.kind, fit.lawn, fit.rules))
    verb = fit.tokens[0].text
    if "product" in fit.slots and not fit.values.get("product"):
        name = find_name(token.word, tuple(product.name for product in fit.lawn.products))
        other = fit.lawn.product(name)
        if other:
            what = f"of the kind {other.kind}" if other.kind else "of no kind yet"
            full = "" if name == token.word else f" {name}"
            return Refusal(token.text, f"the product{full} is {what}; `{verb}` doesn't put that down.")
        if re.fullmatch(r"[\w-]+", token.text):
            more = "" if suggestion else f" A new product is put into the shed by: product {token.word} kind ..."
            return Refusal(token.text, f"no product, zone or word of that name here.{more}", suggestion)
    if any(slot.role is Role.RULE and not fit.values.get(name) for name, slot in fit.slots.items()):
        return Refusal(token.text, "no flag of that name.", nearest(token.word, fit.rules))
    return Refusal(token.text, "not understood here.", suggestion)
