"""The lines that Enter takes from the Shed: put it down, set a number of its label, buy more of it."""

from collections.abc import Callable
from datetime import date

from journal.line.say import say
from journal.reckon.put_down import PutDown
from journal.record.kinds.feeding import FEEDS
from journal.record.kinds.setting import Setting
from journal.record.kinds.treatment import TREATMENTS
from journal.record.lawn import Lawn
from journal.record.product import Product
from journal.record.quantity import write
from journal.record.unit import Dimension
from journal.screens.shed.amounts import line_rate, measured_out, poured


def verb(product: Product) -> str:
    """`feed`, `treat` or `seed`; '' for a product whose kind is not known."""
    if product.kind == "seed":
        return "seed"
    if product.kind in FEEDS:
        return "feed"
    return "treat" if product.kind in TREATMENTS else ""


def putting(product: Product, dose: PutDown, dimension: Dimension, lawn: Lawn, how: Callable[[float], int]) -> str:
    """`feed amber-field 6.3lb front`: the total of these zones, or the rate where an area is not known."""
    liquid = dimension is Dimension.VOLUME_RATE
    names = tuple(portion.zone for portion in dose.portions)
    where = "all" if len(names) > 1 and names == lawn.zone_names else " ".join(names)
    if dose.amount is None:
        amount = line_rate(dose.rate, dimension, lawn)
    else:
        amount = poured(measured_out(dose, lawn, how, liquid=liquid), lawn, liquid=liquid, gap="")
    return f"{verb(product)} {product.name} {amount} {where}".rstrip()


def setting(product: Product, key: str, lawn: Lawn) -> str:
    """`set amber-field bag 20 lb`; where nothing was entered the line ends with the key, for the owner to go on."""
    words = lawn.said.get(("product", product.name, key))
    if words is None:
        return f"set {product.name} {key} "
    day = date.min
    said = say(Setting(date=day, what="product", name=product.name, values=((key, words),)), lawn)
    return f"set {said.removeprefix('product ').removesuffix(f' on {day.isoformat()}')}"


def buying(product: Product, lawn: Lawn) -> str:
    """`buy amber-field 1x 20lb`; without a size where the label's is not known."""
    pack = (product.bottle_ml, Dimension.VOLUME) if product.liquid else (product.bag_g, Dimension.MASS)
    size = "" if pack[0] is None else f"1x {write(pack[0], pack[1], lawn.units)}"
    return f"buy {product.name} {size}"
