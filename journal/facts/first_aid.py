"""What to do when somebody, or an animal, has come into touch with a product: the label's own first aid first."""

from journal.facts.citation import Basis, Known
from journal.facts.safety import EMERGENCY
from journal.facts.sources import cite

BASIS = Basis(
    Known.PUBLISHED,
    (EMERGENCY, cite("first-aid-label"), cite("npic-yardspray")),
    "the label's own first aid goes first",
)

ROUTES = (
    "On skin: clothes off, rinse 15 to 20 min; in the eyes: rinse gently 15 to 20 min, lenses out after the first 5; "
    "swallowed: no vomiting unless told; breathed in: fresh air"
)
"""As printed on labels of lawn products."""


def help_lines(units: str) -> str:
    """Whom to call from a book that uses `us` or `metric` units."""
    if units == "metric":
        return "unconscious, fits or trouble breathing: your emergency number; else your country's poison helpline"
    return "unconscious, fits or trouble breathing: 911; else poison help: 1-800-222-1222, day and night"


def poison_help(units: str) -> str:
    """The helpline alone."""
    return "your country's poison helpline" if units == "metric" else "poison help in the US: 1-800-222-1222"
