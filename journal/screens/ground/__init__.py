"""The parts of the Ground page."""
