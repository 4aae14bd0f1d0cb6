"""The sign that a local rule asks for: up before a treatment, down when its hours are over."""

from datetime import timedelta

from journal.plan.declare import step
from journal.plan.offer import Offer
from journal.plan.stage import said
from journal.plan.step import State
from journal.reckon.protection import is_protective
from journal.reckon.signs import DOWN, SIGNS, UP, Sign, last_word, sign_wanted
from journal.record.kinds.intention import Intention
from journal.record.kinds.treatment import Treatment
from journal.season.history import Past
from journal.season.local import sign_hours
from journal.season.stand import intentions

AHEAD_DAYS = 1
"""A sign may go up the day before."""


@step("sign", watches=(*SIGNS, Intention, Treatment))
def sign(past: Past) -> Offer | None:
    """Up before what is meant, or what was put down without one; down once its hours are over."""
    hours = sign_hours(past.lawn)
    if hours is None:
        return None
    wanted = sign_wanted(past)
    if wanted is not None:
        return _standing(past, wanted)
    word = last_word(past, past.day)
    up = word is not None and word.subject == UP
    meant = next((one for one in intentions(past, "treat") if _asks(past, one)), None)
    if meant is not None and meant.target is not None and meant.target >= past.date:
        return _before(past, meant, hours, up=up)
    if word is None or not up:
        return None
    return Offer(
        state=State.OPEN, earliest=past.date, title="sign down", why=f"sign up since {said(word.date, past)}",
        verb=f"see {DOWN}",
    )  # fmt: skip


def _asks(past: Past, meant: Intention) -> bool:
    product = past.lawn.product(meant.product) if meant.product else None
    return product is None or is_protective(product)


def _before(past: Past, meant: Intention, hours: float, *, up: bool) -> Offer:
    assert meant.target is not None
    opens = meant.target - timedelta(AHEAD_DAYS)
    waits = past.date < opens
    why = f"{meant.product or 'treatment'} meant for {said(meant.target, past)}; the sign stays for {hours:g} h"
    if up:
        return Offer(state=State.DONE, earliest=opens, latest=meant.target, title="sign up", why=why)
    return Offer(
        state=State.WAITING if waits else State.OPEN,
        earliest=opens,
        latest=meant.target,
        title="sign up",
        why=why,
        waits_for=f"opens {said(opens, past)}" if waits else "",
        verb=f"see {UP}",
    )


def _standing(past: Past, wanted: Sign) -> Offer:
    why = f"{wanted.use.name} {said(wanted.use.date, past)}; the local rule asks for {wanted.hours:g} h"
    if wanted.up is None:
        return Offer(
            state=State.LATE, earliest=wanted.use.date, latest=wanted.use.date, title="sign up", why=why,
            verb=f"see {UP}",
        )  # fmt: skip
    return Offer(
        state=State.WAITING, earliest=wanted.down_from, title="sign down", why=why,
        waits_for=f"its hours: down from {said(wanted.down_from, past)}",
    )  # fmt: skip
