"""The one line: text to an entry, an entry to text, and what could come next."""
