"""The plan: what to do next and what not yet, each step with a line ready to be saved. Never reads a flag."""
