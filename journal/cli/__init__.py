"""The command line. Commands that open no screen load nothing of the screen's library."""

from journal.cli.main import main

__all__ = ["main"]
