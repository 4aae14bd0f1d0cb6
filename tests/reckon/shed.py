"""Products, and a small lawn to put them on."""

from datetime import date

from journal.facts.factors import g_per_m2
from journal.record.kinds.setting import Setting
from journal.record.lawn import Lawn
from journal.record.product import Product
from journal.season.history import History

LB = 453.59237
SQFT = 0.09290304
lb_per_k = g_per_m2

ZONES = {"front": "2400sqft", "back": "3600sqft", "side": ""}
PRODUCTS = {
    "ridge": {"kind": "fertilizer", "analysis": "24-0-11", "slow": "40% of n"},
    "quick": {"kind": "fertilizer", "analysis": "30-0-0"},
    "coated": {"kind": "fertilizer", "analysis": "20-0-0", "slow": "80% of n"},
    "begin": {"kind": "starter", "analysis": "18-24-6", "slow": "20% of n"},
    "plain": {"kind": "fertilizer"},
    "potash": {"kind": "fertilizer", "analysis": "0-0-50"},
    "chalk": {"kind": "lime"},
    "iron-6": {"kind": "iron", "analysis": "6-0-0"},
    "gluten": {"kind": "pre-emergent", "analysis": "10-0-0"},
    "weeder": {"kind": "weed", "form": "liquid"},
    "both": {"kind": "weed-and-feed", "analysis": "25-0-5"},
    "blend": {"kind": "seed", "mix": "tall fescue 100%"},
}


def book(*entries: object) -> History:
    """The lawn's settings and these entries."""
    on = date(2026, 1, 1)
    made: list[object] = [Setting(id="0", date=on, what="lawn", values=(("grass", "tall fescue"),))]
    for at, (name, area) in enumerate(ZONES.items()):
        values = (("area", area),) if area else ()
        made.append(Setting(id=f"00{at}", date=on, what="zone", name=name, values=values))
    for at, (name, facts) in enumerate(PRODUCTS.items()):
        made.append(Setting(id=f"01{at:02}", date=on, what="product", name=name, values=tuple(facts.items())))
    return History.of([*made, *entries])  # type: ignore[list-item]


def lawn() -> Lawn:
    """The lawn alone."""
    return book().lawn(date(2026, 6, 1))


def product(**facts: object) -> Product:
    """A product of these facts."""
    return Product(name="it", **facts)  # type: ignore[arg-type]
