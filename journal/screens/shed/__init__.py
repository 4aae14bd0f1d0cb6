"""The parts of the Shed page."""
