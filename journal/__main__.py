"""`python -m journal` is `swardbook`."""

import gc
import sys

gc.disable()  # nothing made while importing is garbage: looking for it only costs time

from journal.cli import main  # noqa: E402

gc.freeze()
gc.enable()

if __name__ == "__main__":
    sys.exit(main())
