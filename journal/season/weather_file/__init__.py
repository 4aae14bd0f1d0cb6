"""Files of daily weather as services hand them out: their text made into days, and what became of every value."""
