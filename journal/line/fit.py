"""Fitting words to the slots of a kind, in one fixed order: pair, quantity, date, keyword, zone, product, subject."""

from collections.abc import Callable

from journal.line.fit_number import fit_bags, fit_circuit, fit_quantity, fit_time
from journal.line.fit_pair import fit_common_pair, fit_keyed, fit_plus
from journal.line.fit_word import fit_date, fit_loose, fit_name, fit_path, fit_word, unknown_word
from journal.line.fitting import Fitting
from journal.line.token import Token

Step = Callable[[Fitting, Token], int]
"""Takes as many words as it understands at this place, and says how many; 0 leaves them to the next."""

ORDER: tuple[Step, ...] = (
    fit_path, fit_plus, fit_common_pair, fit_keyed, fit_bags, fit_time, fit_circuit, fit_date, fit_quantity, fit_word,
    fit_name, fit_loose,
)  # fmt: skip
QUOTED: tuple[Step, ...] = (fit_path, fit_name, fit_loose)
"""A word in quotes is a name, never a number, a date or a keyword."""


def fit_all(fit: Fitting) -> None:
    """Fit every word behind the verb. Raises Refusal naming the word in question; `fit.at` stands near it."""
    while fit.at < len(fit.tokens):
        token = fit.tokens[fit.at]
        used = next((n for step in (QUOTED if token.quoted else ORDER) if (n := step(fit, token))), 0)
        if not used:
            raise unknown_word(fit, token)
        fit.at += used
