"""The parts of the Today page."""
