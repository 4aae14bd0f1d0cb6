"""What is loaded before the first paint: no more than it needs."""

import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
LATER = ("journal.standing", "journal.line.read", "journal.record.entry", "journal.screens.pages", "journal.session",
         "pendulum", "tinydb", "PIL", "markdown_it", "pygments")  # fmt: skip


def test_the_first_paint_waits_for_nothing_it_does_not_show() -> None:
    code = "import sys, journal.app; print(*sys.modules, sep='\\n')"
    ran = subprocess.run([sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, check=True, timeout=60)
    loaded = set(ran.stdout.split())
    assert "journal.screens.shell" in loaded
    assert [name for name in LATER if name in loaded] == []
