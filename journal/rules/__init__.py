"""Flags: what is missed or unsafe. One decorated function a rule, one file a section of the trade."""
