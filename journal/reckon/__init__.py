"""Arithmetic: doses, plant food, seed. Metric throughout; nothing is rounded but to be shown."""
