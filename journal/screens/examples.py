"""Lines to type, made from this lawn's own zones and products."""

from collections.abc import Iterable

from journal.record.kinds.feeding import FEEDS
from journal.record.kinds.treatment import TREATMENTS
from journal.record.lawn import WHOLE, Lawn
from journal.record.product import Product
from journal.record.quantity import write
from journal.record.unit import Dimension

Example = tuple[str, str]
"""(line, what it says)."""


def examples(lawn: Lawn) -> tuple[Example, ...]:
    """Every line here can be read as it stands."""
    names = [name for name in lawn.zone_names if name != WHOLE]
    first, last = (f" {names[0]}", f" {names[-1]}") if names else ("", "")
    us = lawn.units != "metric"
    return (
        ("m", "mowed: the usual height in the usual zones"),
        (f"mow {'3in' if us else '75mm'} bag{first} -1d", "yesterday, clippings bagged"),
        (f"water 20min{last}", "a sprinkler for 20 minutes"),
        (f"rain {'0.4in' if us else '10mm'}", "rain today"),
        *_put_down("feed", FEEDS, lawn, first, ""),
        *_put_down("treat", TREATMENTS, lawn, last, f" wind {'4mph' if us else '2m/s'}"),
        *_put_down("seed", ("seed",), lawn, first, ""),
        (f"see crabgrass 10%{last}", "something seen"),
        (f"height {'3.6in' if us else '90mm'}{first}", "grass height before a cut"),
        (f"aerate 2x{first}", "cores pulled, two passes"),
        ("sharpen", "the mower's blade"),
        ("note moles along the fence", "anything else"),
        *_missing(lawn, us=us),
    )


def _put_down(verb: str, kinds: Iterable[str], lawn: Lawn, zone: str, tail: str) -> tuple[Example, ...]:
    product = next((product for product in lawn.products if product.kind in kinds), None)
    if product is None:
        return ()
    words = {"feed": "fed at the label's low rate", "treat": "treated", "seed": "sown"}[verb]
    return ((f"{verb} {product.name}{_rate(product, lawn)}{zone}{tail}", words),)


def _rate(product: Product, lawn: Lawn) -> str:
    if product.rate is None:
        return ""
    return f" {write(product.rate.low, product.rate.dimension, lawn.units)}"


def _missing(lawn: Lawn, *, us: bool) -> tuple[Example, ...]:
    """How to name what the book does not know yet."""
    found: list[Example] = []
    if not lawn.products:
        rate = "rate 3lb/k 4lb/k" if us else "rate 15g/m2 20g/m2"
        found.append((f"product oat-hill-starter kind starter analysis 18-24-6 {rate}", "a bag, as its label says"))
    for zone in lawn.zones:
        if zone.area_m2 is None and zone.name != WHOLE:
            area = write(2400 * 0.09290304, Dimension.AREA, "us") if us else "220m2"
            found.append((f"set {zone.name} area {area}", "so that amounts can be worked out"))
            break
    if lawn.last_frost is None and lawn.growth is None:
        found.append(("set last_frost 05-06", "average last frost of spring: tells when the grass grows"))
        found.append(("set first_frost 10-05", "average first frost of autumn"))
    return tuple(found)
