"""Lines for an empty shed, in the units of the book."""

from journal.record.lawn import Lawn


def first_lines(lawn: Lawn) -> tuple[tuple[str, str], ...]:
    """(line, what it is); every line can be read as it stands."""
    if lawn.units == "metric":
        bag, rate, sown, sprayed = "20kg", "15g/m2 20g/m2", "15g/m2 20g/m2", "0.35ml/m2 0.48ml/m2"
    else:
        bag, rate, sown, sprayed = "48lb", "3lb/k 4lb/k", "3lb/k 4lb/k", "1.1floz/k 1.5floz/k"
    return (
        (f"product oat-hill kind fertilizer analysis 24-0-10 slow 60% of n bag {bag} rate {rate}", "a fertilizer"),
        (f"product three-river kind seed mix kentucky bluegrass 50%, fine fescue 50% rate {sown}", "a seed mix"),
        (f"product well-field kind weed actives 2,4-d form liquid rate {sprayed}", "against weeds"),
    )
