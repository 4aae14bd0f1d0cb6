"""The one place that writes: book, history, undo and the memo of standings."""
