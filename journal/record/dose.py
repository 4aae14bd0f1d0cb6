"""How much of one product was put down: a total or a rate, never both."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Dose:
    """Grams or millilitres in all, or per square metre; all None when no amount was said."""

    product: str
    amount_g: float | None = None
    amount_ml: float | None = None
    rate_g_per_m2: float | None = None
    rate_ml_per_m2: float | None = None

    @property
    def said(self) -> bool:
        """Whether any amount or rate was given."""
        return any(v is not None for v in (self.amount_g, self.amount_ml, self.rate_g_per_m2, self.rate_ml_per_m2))
