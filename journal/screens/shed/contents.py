"""What is in a product, in as many words as there is room for."""

from collections.abc import Sequence

from rich.cells import cell_len

from journal.record.product import Product


def contents(product: Product, width: int) -> str:
    """Analysis and slow share, the grasses of a mix, or the actives; else what kind of product it is."""
    if product.mix:
        return _mix(product, width)
    parts = []
    if product.analysis:
        parts.append("-".join(f"{part:g}" for part in product.analysis))
        if product.slow is not None:
            parts.append(f"{100 * product.slow:.0f}% slow")
    if product.actives:
        parts.append(_counted([content.name for content in product.actives], width - cell_len(" ".join(parts)) - 1))
    elif not product.analysis:
        parts.append(product.kind)
    return _joined(parts, width)


def _joined(parts: Sequence[str], width: int) -> str:
    """All of them, or the first ones that fit."""
    while len(parts) > 1 and cell_len(" ".join(parts)) > width:
        parts = parts[:-1]
    return " ".join(parts)


def _counted(names: Sequence[str], width: int) -> str:
    """As many names as fit, and how many more there are: `2,4-d +2`."""
    words = ""
    for count in range(len(names), 0, -1):
        more = f" +{len(names) - count}" if count < len(names) else ""
        words = f"{', '.join(names[:count])}{more}"
        if cell_len(words) <= width:
            break
    return words


def _mix(product: Product, width: int) -> str:
    """`55 kentucky bluegrass, 45 perennial ryegrass`, with shorter names where there is little room."""
    parts = sorted(product.mix, key=lambda part: -part[1])
    for short in (str, _kin, _nickname):
        words = ", ".join(f"{share:g} {short(name)}" for name, share in parts)
        if cell_len(words) <= width:
            return words
    return _counted([f"{share:g} {_nickname(name)}" for name, share in parts], width)


def _kin(name: str) -> str:
    """The last word, which names the kin: bluegrass, ryegrass, fescue."""
    return name.rpartition(" ")[2]


def _nickname(name: str) -> str:
    """`blue`, `rye`, `fescue`."""
    return _kin(name).removesuffix("grass")
