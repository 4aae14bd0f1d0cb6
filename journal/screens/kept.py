"""Lines that were not saved when the screen closed, kept for next time outside the book."""

import os
import zlib
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path


@dataclass(frozen=True, slots=True)
class Kept:
    """One small file, readable by its owner only. None keeps nothing."""

    path: Path | None

    def read(self) -> list[str]:
        """The lines, the one that was being typed last."""
        if self.path is None:
            return []
        try:
            return [line for line in self.path.read_text("utf-8", "replace").split("\n") if line]
        except FileNotFoundError:
            return []

    def write(self, lines: Sequence[str]) -> None:
        """Keep the lines; none clears the file. Raises OSError when the disk refuses."""
        if self.path is None:
            return
        if not lines:
            self.path.unlink(missing_ok=True)
            return
        import tempfile  # not before the first paint

        self.path.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
        handle, name = tempfile.mkstemp(dir=self.path.parent, prefix=".line-")  # made 0600
        try:
            with os.fdopen(handle, "w", encoding="utf-8") as file:
                file.write("".join(f"{line}\n" for line in lines))
            Path(name).replace(self.path)
        except OSError:
            Path(name).unlink(missing_ok=True)
            raise


def kept_for(book: Path, folder: Path) -> Kept:
    """Where the line of this book waits: one file a book in the program's state folder."""
    name = f"{zlib.crc32(str(book.absolute()).encode()):08x}"
    return Kept(folder / f"line-{name}.txt")
