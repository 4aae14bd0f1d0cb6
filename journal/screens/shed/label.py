"""The label as the owner copied it: a row a number, the key that sets it, and what stands in for what is blank."""

from functools import partial

from rich.cells import cell_len

from journal.reckon.protection import is_protective
from journal.record.kinds.feeding import FEEDS
from journal.record.lawn import Lawn
from journal.record.product import Product
from journal.screens.paper import Paper
from journal.screens.picture import Ink, Span, Target
from journal.screens.rows import clipped, left
from journal.screens.shed.lines import setting
from journal.screens.shed.stands_in import stands_in, used_this_year
from journal.standing import Standing

MARGIN = "     "

KEYS: dict[str, str] = {
    "kind": "what it is",
    "rate": "low and high rate",
    "analysis": "N, P2O5, K2O in percent",
    "slow": "slow share of the nitrogen",
    "slow_n": "slow nitrogen, % of all",
    "n_source": "where the nitrogen is from",
    "bag": "weight of a bag",
    "bottle": "volume of a bottle",
    "cup": "weight of a cupful",
    "form": "granule or liquid",
    "actives": "active ingredients",
    "mix": "grasses, % of pure seed",
    "purity": "pure seed, %",
    "germination": "germination, %",
    "weed_seed": "weed seed, %",
    "other_crop": "other crop seed, %",
    "inert": "inert matter, %",
    "coated": "whether the seed is coated",
    "rate_basis": "rate in bulk or live seed",
    "maker": "who makes it",
    "tested": "month of the seed test",
    "to_seed": "wait before sowing",
    "after_seed": "age of new grass it needs",
    "repeat": "wait before the next use",
    "max_per_year": "uses in a year at most",
    "max_amount_per_year": "amount in a year at most",
    "temp": "air it is meant for",
    "wind_max": "wind at most",
    "rain_free": "no rain for so long",
    "water_in": "water it in with",
    "water_in_within": "watered in within",
    "mow_before": "not mown for so long before",
    "mow_after": "not mown for so long after",
    "reentry": "keep off until",
    "buffer": "distance from water",
    "spot_counts": "spots count in the year",
    "professional": "for professionals only",
    "site": "where it may be used",
}  # fmt: skip

_FOOD = ("analysis", "slow", "slow_n", "n_source")
_PACK = {False: ("bag", "cup"), True: ("bottle",)}
_SEED = (
    "mix", "purity", "germination", "tested", "weed_seed", "other_crop", "inert", "coated", "rate_basis", "bag",
    "maker",
)  # fmt: skip
_PROTECTION = (
    "to_seed", "after_seed", "repeat", "max_per_year", "max_amount_per_year", "temp", "wind_max", "rain_free",
    "water_in", "water_in_within", "mow_before", "mow_after", "reentry", "buffer", "spot_counts", "professional",
    "site",
)  # fmt: skip
_ONLY_SPRAYED = ("wind_max", "rain_free")
_ONLY_SPREAD = ("water_in", "water_in_within")
_EITHER = {"slow": "slow_n", "slow_n": "slow"}
_SELDOM = ("slow_n", "cup", "n_source", "coated", "rate_basis", "maker", "spot_counts", "professional", "other_crop",
           "inert", "weed_seed")  # fmt: skip
"""Not asked for: shown once they have been entered."""


def entered(product: Product, key: str, lawn: Lawn) -> str:
    """The owner's own words; '' where nothing was entered."""
    return lawn.said.get(("product", product.name, key), "")


def keys(product: Product, lawn: Lawn) -> tuple[str, ...]:
    """What a product of that kind has on its label, and whatever else was entered."""
    wanted = ["kind", "rate", *(_SEED if product.kind == "seed" else _PACK[product.liquid])]
    if product.kind in FEEDS and product.kind != "lime":
        wanted += _FOOD
    if is_protective(product):
        dropped = _ONLY_SPREAD if product.liquid else _ONLY_SPRAYED
        wanted += ["actives", "form", *(key for key in _PROTECTION if key not in dropped)]
    asked = [
        key for key in wanted if key not in _SELDOM and not (key in _EITHER and entered(product, _EITHER[key], lawn))
    ]
    return tuple(key for key in KEYS if key in asked or entered(product, key, lawn))


def targets(product: Product, lawn: Lawn) -> tuple[Target, ...]:
    """A place to stand for every key."""
    return tuple(Target(-1, name=f"{product.name}/{key}") for key in keys(product, lawn))


def draw(paper: Paper, product: Product, standing: Standing) -> None:
    """Key, value, and what the key says, where there is room for it."""
    lawn = standing.lawn
    roomy = paper.width >= 110
    room = paper.width - len(MARGIN) - 1
    for key, target in zip(keys(product, lawn), targets(product, lawn), strict=True):
        value = entered(product, key, lawn)
        said = value or blank(product, key, standing)
        width = max(_VALUE, min(cell_len(said) + 2, room - _KEY - _SAYS)) if roomy else _VALUE
        row = [Span(MARGIN), Span(left(key, _KEY), Ink.KEY)]
        if cell_len(said) < width:
            row += [Span(left(said, width), Ink.PLAIN if value else Ink.DIM), Span(KEYS[key], Ink.DIM)]
        else:
            row.append(Span(clipped(said, room - _KEY)))
        paper.stop(row, target, lit=1, main=False, line=partial(setting, product, key, lawn))
        if key == "max_per_year" and (used := used_this_year(product, standing)):
            paper.add((Span(MARGIN), Span(left("", _KEY)), Span(used, Ink.DIM)))


_KEY, _VALUE, _SAYS = 21, 27, 28


def blank(product: Product, key: str, standing: Standing) -> str:
    """`blank`, with the number that is used as long as it is."""
    used = stands_in(product, key, standing)
    return f"blank, {used} used" if used else "blank"
