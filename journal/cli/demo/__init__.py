"""The demo book: an invented lawn and what its owner typed about it, day by day."""

from datetime import date

OPENS = date(2027, 5, 3)
"""The day on which the demo book is opened: everything in it lies before."""
