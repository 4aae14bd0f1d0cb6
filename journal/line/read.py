"""Text to a reading. Total: every text gives one, and nothing is guessed that is not marked as usual."""

from dataclasses import dataclass
from datetime import date
from typing import Any

from journal.line.fit import fit_all
from journal.line.fit_pack import fit_packs
from journal.line.fitting import DOSE, Fitting
from journal.line.locate import locate
from journal.line.reading import Problem, Reading, Span
from journal.line.settings import RULES, read_facts
from journal.line.token import Cut, Token, cut, words
from journal.line.usual import usual_values, usual_zones
from journal.line.verb import OTHER_WORDS, VerbFound, find_verb, shortest
from journal.line.when import Phrase, Reckoning, When, find_date
from journal.line.words import in_words
from journal.record.clean import LONGEST_LINE, clean, control_at
from journal.record.dose import Dose
from journal.record.entry import VERBS, Entry, Verb
from journal.record.fold import OFF
from journal.record.kinds.remark import Remark
from journal.record.kinds.setting import Setting
from journal.record.lawn import Lawn
from journal.record.refusal import Refusal, nearest
from journal.record.slot import is_said
from journal.season.history import History


@dataclass(frozen=True, slots=True)
class Known:
    """What the reader can't know of itself: the ids of all rules, and how longer date phrases are read.

    `steady` rules warn of more than something late or worth a note, and can't be switched off.
    """

    rules: tuple[str, ...] = RULES
    steady: frozenset[str] = frozenset()
    phrase: Phrase | None = None


PLAIN = Known()


def read(text: str, history: History, today: date, known: Known = PLAIN) -> Reading:
    """Read a line as typed today. What is left out takes the usual; the reading says which words were assumed."""
    return _read(text, history, history.lawn(today), today, known, None)


def read_change(text: str, old: Entry, history: History, today: date, known: Known = PLAIN) -> Reading:
    """Read a line that replaces `old`: nothing is assumed; date, time, zones and product stay if left out."""
    return _read(text, history, history.lawn(today), today, known, old)


def _read(text: str, history: History, lawn: Lawn, today: date, known: Known, old: Entry | None) -> Reading:
    early = _unreadable(text)
    if early:
        return Reading(text, problem=early)
    pieces = cut(text)
    if not pieces.tokens or not pieces.tokens[0].text:
        return Reading(
            text, problem=Problem(0, len(text), "", "Nothing typed yet: begin with a verb, like mow or water.")
        )
    head = pieces.tokens[0]
    found = find_verb(head.word)
    if not found.name:
        return Reading(text, problem=_no_verb(head, found), spans=(Span(head.start, head.end, "problem"),))
    verb, kind = VERBS[found.name]
    fit: Fitting | None = None
    try:
        if not found.full and not verb.bare and len(pieces.tokens) == 1 and not pieces.remark:
            raise Refusal(head.text, f"{verb.name}: write it out, or add a word, like {verb.example}.")
        if kind is Remark:
            return _note(text, verb, lawn, today, known, old)
        if kind is Setting:
            return _settings(text, pieces, verb, lawn, today, known, old)
        fit = Fitting(kind, tuple(map(_uncomma, pieces.tokens)), lawn, today, known.rules, known.phrase, old)
        return _entry(text, pieces, verb, fit, history)
    except Refusal as refusal:
        return _refused(text, pieces.tokens, verb, refusal, fit)


def _uncomma(token: Token) -> Token:
    """A comma behind a word parts it from the next as a blank does: `mow 3in, 24 may`."""
    bare = token.text.rstrip(",")
    return (
        token if token.quoted or bare == token.text or not bare else Token(bare, token.start, token.start + len(bare))
    )


def _unreadable(text: str) -> Problem | None:
    at = control_at(text)
    if at is not None:
        return Problem(at, at + 1, "", f"A control character stands at place {at + 1}; it can't be kept. Delete it.")
    if len(text) > LONGEST_LINE:
        why = f"The line has {len(text):,} characters; {LONGEST_LINE:,} is the most."
        return Problem(LONGEST_LINE, len(text), "", why)
    return None


def _no_verb(head: Token, found: VerbFound) -> Problem:
    if found.options:
        choices = ", ".join(f"{shortest(verb)} {verb}" for verb in found.options)
        return Problem(head.start, head.end, head.text, f"could be {choices}.")
    near = OTHER_WORDS.get(head.word) or nearest(head.word, VERBS)
    known = "" if near else f" The verbs are {', '.join(sorted(VERBS))}."
    return Problem(head.start, head.end, head.text, f"no verb begins so.{known}", near)


def _refused(text: str, tokens: tuple[Token, ...], verb: Verb, refusal: Refusal, fit: Fitting | None) -> Reading:
    """Point at the word the refusal quotes, or at the value of the field it names, or at the verb."""
    head, word = tokens[0], refusal.word
    found = locate(text, tokens, word, fit.at if fit else 1) if word not in ("", verb.name) else None
    place = fit.places.get(word) if fit and not found else None
    if place:
        found, word = (place.start, place.end), text[place.start : place.end]
    start, end = found or (head.start, head.end)
    problem = Problem(start, end, word, refusal.why, refusal.suggestion)
    return Reading(text, problem=problem, spans=(Span(start, end, "problem"),), verb=verb.name)


def _entry(text: str, pieces: Cut, verb: Verb, fit: Fitting, history: History) -> Reading:
    kind, old, lawn, today = fit.kind, fit.old, fit.lawn, fit.today
    fit.spans.append(Span(pieces.tokens[0].start, pieces.tokens[0].end, "verb"))
    if verb.what:
        fit.values["what"] = verb.what
    fit_all(fit)
    values = fit.values
    zones, assumed = _zones(fit, history)
    _groups(fit)
    if old is None:
        usual = usual_values(kind, values, zones, history, lawn, today)
        assumed = (*assumed, *usual)
        values |= usual
    elif type(old) is kind and not values.get("product") and "product" in fit.slots:
        values["product"] = getattr(old, "product", "")
    fit_packs(fit)
    values["remark"] = clean(pieces.remark)
    if old and "date" not in values:
        values["about"] = old.about
    values.setdefault("date", old.date if old else today)
    if old:
        values.setdefault("time", old.time)
    _shed_has_one(fit)
    kind.settle(values)
    draft = kind(
        **values, zones=zones, confirmed=pieces.confirmed, assumed=assumed,
        line=clean(text), id=old.id if old else "",
    )  # fmt: skip
    return Reading(text, draft, None, tuple(fit.spans), verb.name, in_words(draft, lawn, today))


def _shed_has_one(fit: Fitting) -> None:
    """Raise Refusal saying how a product is put into the shed when it holds none that this verb puts down."""
    slot = fit.slots.get("product")
    if slot is None or is_said(fit.values.get("product")) or not fit.kind.applies:
        return
    if not any(product.kind in slot.kinds for product in fit.lawn.products):
        raise Refusal(
            fit.tokens[0].text, f"the shed holds nothing for it yet. Begin with: product NAME kind {slot.kinds[0]}"
        )


def _zones(fit: Fitting, history: History) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """The zones, and what of them is assumed. Circuits that are named say of themselves which zone is meant."""
    circuits = tuple(name for name, _ in fit.values.get("circuits", ()))
    having = tuple(z.name for z in fit.lawn.zones if circuits and {*circuits} <= {c.name for c in z.circuits})
    if fit.zones:
        zones = tuple(zone for zone in fit.zone_names if zone in fit.zones)
        if circuits and not having and fit.old is None:
            raise Refusal(circuits[-1], "no zone has all these circuits.")
        stray = next((zone for zone in zones if circuits and zone not in having and fit.old is None), "")
        if stray:
            raise Refusal(stray, f"has not the circuits named; {', '.join(having)} has.")
        return zones, ()
    if fit.old is not None:
        return fit.old.zones, ()
    if circuits and not having:
        raise Refusal(circuits[-1], "no zone has all these circuits.")
    zones = having or usual_zones(fit.kind, history, fit.lawn, fit.today)
    return zones, ("zones",) if zones else ()


def _groups(fit: Fitting) -> None:
    """The first product of a tank mix is the entry's own; the others stand in `also`."""
    if not fit.groups:
        return
    if not fit.values.get("product"):
        raise Refusal("+", "name the product after it.")
    fit_packs(fit)
    rest = [*fit.groups[1:], {name: fit.values.pop(name, None) for name in DOSE}]
    fit.values |= {name: value for name, value in fit.groups[0].items() if value is not None}
    fit.values["also"] = tuple(Dose(**group) for group in rest)


def _note(text: str, verb: Verb, lawn: Lawn, today: date, known: Known, old: Entry | None) -> Reading:
    """All words after `note`, save a date right behind it, are the text."""
    tokens = words(text)
    how = Reckoning(today, lawn.units == "us", known.phrase)
    values: dict[str, Any] = {}
    begin = 2 if len(tokens) > 2 and tokens[1].word == "on" and _note_date(tokens, 2, how) else 1
    found = _note_date(tokens, begin, how) if len(tokens) > begin else None
    if found and found.date > today:
        raise Refusal(" ".join(token.text for token in tokens[begin : begin + found.used]), "lies ahead.")
    if found:
        values["date"], values["about"] = found.date, found.about
        begin += found.used
    body = clean(text[tokens[begin].start :]) if begin < len(tokens) else ""
    values["text"] = body
    Remark.settle(values)
    if old and not found:
        values["about"] = old.about
    values.setdefault("date", old.date if old else today)
    draft = Remark(**values, line=clean(text), id=old.id if old else "")
    return Reading(
        text, draft, None, (Span(tokens[0].start, tokens[0].end, "verb"),), verb.name, in_words(draft, lawn, today)
    )


def _note_date(tokens: tuple[Token, ...], at: int, how: Reckoning) -> When | None:
    """The date at that word. What only looks like one (1/2 bag, 31 feb) is part of the text."""
    if at == 1 and tokens[at].text in ("1/2", "1/3", "2/3", "1/4", "3/4"):
        return None
    try:
        return find_date(tokens, at, how)
    except Refusal:
        return None


def _settings(text: str, pieces: Cut, verb: Verb, lawn: Lawn, today: date, known: Known, old: Entry | None) -> Reading:
    facts = read_facts(verb.what, pieces.tokens[1:], lawn, today, known.rules, known.phrase)
    if (OFF, "yes") in facts.values and facts.name in known.steady:
        raise Refusal(OFF, f"{facts.name} warns of loss or harm and stays on; `aside {facts.name} -- reason` hides it.")
    draft = Setting(
        what=facts.what, name=facts.name, values=tuple((key, clean(value)) for key, value in facts.values),
        since=facts.since, date=facts.date or (old.date if old else today), remark=clean(pieces.remark),
        confirmed=pieces.confirmed, line=clean(text), id=old.id if old else "",
    )  # fmt: skip
    head = Span(pieces.tokens[0].start, pieces.tokens[0].end, "verb")
    return Reading(text, draft, None, (head, *facts.spans), verb.name, in_words(draft, lawn, today))
