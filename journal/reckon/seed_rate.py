"""How much seed went down on each square metre, and what the label or the publications ask for."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date

from journal.facts.grasses import Span, grass
from journal.facts.mixture import Mixture, is_unknown, shares
from journal.reckon.dose import doses, is_spot, mean_g_per_m2, rate_g_per_m2
from journal.reckon.seeding import pure_live_share
from journal.reckon.threshold import in_force
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.stock import Stock
from journal.record.product import Product
from journal.record.unit import Dimension
from journal.season.history import Past
from journal.season.stand import is_dormant, mix_of, sown


@dataclass(frozen=True, slots=True)
class Sowing:
    """One product on one zone on one day, its passes together. Rate and range in g/m2, in the basis of the label.

    `live` where both mean pure live seed; `by_label` where the label's own range was taken; `topped_up` where it
    followed a sowing that it did not replace.
    """

    product: Product
    date: date
    rate: float
    wanted: Span
    live: bool
    by_label: bool
    topped_up: bool
    entries: tuple[Seeding, ...]


def sowings(past: Past, within: int) -> Iterator[Sowing]:
    """Those of the last so many days whose rate and range are known, oldest first."""
    together: dict[tuple[int, str, bool, bool], list[Seeding]] = {}
    for seeding in past[Seeding].within(within):
        together.setdefault((seeding.day, seeding.product, seeding.new, is_spot(seeding)), []).append(seeding)
    for passes in together.values():
        found = _sowing(past, tuple(passes))
        if found is not None:
            yield found


def _sowing(past: Past, passes: tuple[Seeding, ...]) -> Sowing | None:
    first = passes[0]
    lawn = past.history.lawn(first.date)
    product = lawn.product(first.product)
    if product is None:
        return None
    bulk, wanted = _put_down(past, passes), _wanted(past, product, first)
    live = _live_share(past, product, first.date) if product.rate_basis == "pls" else 1.0
    if bulk is None or wanted is None or live is None:
        return None
    whole = sown(past.history.on(past.zone, first.date, past.watches))
    return Sowing(
        product=product,
        date=first.date,
        rate=bulk * live,
        wanted=wanted,
        live=product.rate_basis == "pls",
        by_label=_label_range(product) is not None and not first.new,
        topped_up=not is_spot(first) and (whole is None or whole.date != first.date),
        entries=passes,
    )


def _put_down(past: Past, passes: tuple[Seeding, ...]) -> float | None:
    """Seed from the bag: passes over the whole zone add up, and so do parts of it."""
    lawn = past.history.lawn(passes[0].date)
    if len(passes) == 1 or is_spot(passes[0]):
        return rate_g_per_m2(doses(passes[-1])[0], passes[-1], lawn)
    means = [mean_g_per_m2(doses(one)[0], one, lawn) for one in passes]
    known = [mean for mean in means if mean is not None]
    return sum(known) if len(known) == len(means) else None


def _live_share(past: Past, product: Product, day: date) -> float | None:
    """What of the bag is pure live seed: by the newest lot's own tag, else by the label."""
    lots = past.history.on(past.zone, day, past.watches).lawnwide(Stock)
    lot = lots.picked(f"seed lots of {product.name}", lambda bought: bought.product == product.name).last
    purity = product.purity if lot is None or lot.purity is None else lot.purity
    germination = product.germination if lot is None or lot.germination is None else lot.germination
    return pure_live_share(purity, germination) if purity and germination else None


def _label_range(product: Product) -> Span | None:
    rate = product.rate
    return Span(rate.low, rate.high) if rate is not None and rate.dimension is Dimension.MASS_RATE else None


def _wanted(past: Past, product: Product, seeding: Seeding) -> Span | None:
    """The label's range, else the grasses' own by their shares.

    Bare soil (`new`) has the publications' rates for bare soil beside the label's; of a spot it is not known whether
    it was bare, so that both hold.
    """
    lawn = past.history.lawn(seeding.date)
    mix, label = mix_of(lawn, product.name), _label_range(product)
    spans = [label or overseeding_range(mix)] if not seeding.new else [label, bare_soil_range(mix)]
    if is_spot(seeding) and not seeding.new:
        spans.append(bare_soil_range(mix))
    known = [span for span in spans if span is not None]
    if not known:
        return None
    high = max(span.high for span in known)
    if is_dormant(lawn, seeding):
        high *= in_force(lawn, "seed-rate", "dormant")
    return Span(min(span.low for span in known), high)


def overseeding_range(mix: Mixture) -> Span | None:
    """The published rates over a standing lawn in g/m2, by share; None where a grass of it has none."""
    return _by_share(mix, [grass(name).overseed_rate_g_per_m2 for name in shares(mix)])


def bare_soil_range(mix: Mixture) -> Span | None:
    """The same for bare soil."""
    return _by_share(mix, [grass(name).seed_rate_new_g_per_m2 for name in shares(mix)])


def _by_share(mix: Mixture, spans: Sequence[Span | None]) -> Span | None:
    known = [span for span in spans if span is not None]
    weights = list(shares(mix).values())
    if is_unknown(mix) or len(known) != len(weights):
        return None
    low = sum(weight * span.low for weight, span in zip(weights, known, strict=True))
    high = sum(weight * span.high for weight, span in zip(weights, known, strict=True))
    return Span(low / sum(weights), high / sum(weights))
