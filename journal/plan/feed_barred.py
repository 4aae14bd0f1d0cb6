"""What bars the feeding of new grass, in words."""

from journal.plan.stage import said
from journal.reckon.feed_barred import Bar, Barred
from journal.season.history import Past


def barred(past: Past, bar: Bar) -> str:
    """`closed by the local rule`, `a hot day: feed on a cooler one`; with the day where one is known."""
    match bar.why:
        case Barred.FROZEN:
            return "frozen ground: after `see thawed`, or milder days"
        case Barred.DORMANT:
            return "dormant: after `see green`"
        case Barred.SOON if bar.until is not None:
            return f"too soon after the last feeding: from {said(bar.until, past)}"
    return bar.why
