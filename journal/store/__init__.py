"""The book on disk: an append-only log of checksummed lines, read and written through TinyDB.

Start at `journal.store.book`; nothing is imported here, so that opening a book costs only what it uses.
"""
