"""Swardbook: a terminal journal for bringing a worn-out cool-season lawn back."""

__version__ = "0.1.0"
