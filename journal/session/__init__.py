"""The one place that writes: book, history, undo and the memo of standings."""

from journal.session.clock import Clock
from journal.session.session import HeldBack, Saved, Session
from journal.store.change import NotABook, NotSaved

__all__ = ["Clock", "HeldBack", "NotABook", "NotSaved", "Saved", "Session"]
