"""A private Python environment for this project, made from pyproject.toml and made again when it goes stale.

Standard library only. Old Pythons have to get as far as `require_python` to say what they lack, so this file
keeps to what Python 3.6 can read.
"""

import contextlib
import hashlib
import importlib.util
import json
import os
import re
import shutil
import subprocess
import sys
import time
from pathlib import Path
from typing import IO, Dict, Iterator, List

ROOT = Path(__file__).resolve().parent.parent
"""The folder that holds pyproject.toml."""

OLDEST = (3, 11)
"""The oldest Python that can run the project: `requires-python` in pyproject.toml."""

OTHER_PYTHONS = ("python3.13", "python3.12", "python3.11", "python3.14")
"""Names to look for when this Python is too old, the best tried first."""

SHOWN_LINES = 15
"""How much of a failed step's own output is worth reading."""


class Trouble(Exception):
    """Something that keeps the environment from being made: what happened and what to do about it."""


def require_python(command: str) -> None:
    """Raise Trouble if this Python is too old for `command`, naming a newer one if this computer has one."""
    if sys.version_info[:2] >= OLDEST:
        return
    needed, mine = (".".join(str(part) for part in version) for version in (OLDEST, sys.version_info[:3]))
    words = f"Swardbook needs Python {needed} or newer; this is Python {mine} ({sys.executable})."
    newer = [name for name in OTHER_PYTHONS if _runs(name)]
    if newer:
        raise Trouble(f"{words}\nThis computer has a newer one. Type:  {newer[0]} {command}")
    raise Trouble(
        f"{words}\nInstall a newer Python (https://www.python.org/downloads/ or your system's packages), "
        "then type the command again."
    )


def ready(name: str, extra: str = "") -> Path:
    """Return the Python of environment `name`, with the project and its `extra` installed in it.

    Made on first use; made again when pyproject.toml, this Python or the folder's place has changed, when its
    Python is gone, or when the last attempt did not finish. Raises Trouble.
    """
    folder = ROOT / ".env" / name
    try:
        folder.parent.mkdir(exist_ok=True)
        with _alone(folder):
            if not is_current(folder, extra):
                _make(folder, extra)
    except OSError as error:
        raise Trouble(f"Could not make the environment in {folder}: {error}") from error
    return python_of(folder)


def python_of(folder: Path) -> Path:
    """Return where the Python of the environment in `folder` stands."""
    return folder / "Scripts" / "python.exe" if os.name == "nt" else folder / "bin" / "python"


def command_of(folder: Path, command: str) -> Path:
    """Return where the installed `command` of the environment in `folder` stands."""
    return folder / "Scripts" / (command + ".exe") if os.name == "nt" else folder / "bin" / command


def is_current(folder: Path, extra: str) -> bool:
    """Tell whether the environment in `folder` was finished, and from what stands here now."""
    try:
        kept = json.loads((folder / "made-from.json").read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return False
    return bool(kept == _made_from(extra)) and python_of(folder).exists()


def clean_environ() -> Dict[str, str]:
    """Return the process environment without what would make pip or Python look outside the environment."""
    stray = {"PYTHONHOME", "PYTHONPATH", "PIP_TARGET", "PIP_PREFIX", "PIP_ROOT", "__PYVENV_LAUNCHER__"}
    kept = {name: value for name, value in os.environ.items() if name not in stray}
    kept["PIP_USER"] = "0"
    return kept


def _runs(name: str) -> bool:
    found = shutil.which(name)
    if found is None:
        return False
    test = "import sys; sys.exit(sys.version_info[:2] < ({}, {}))".format(*OLDEST)
    quiet = subprocess.DEVNULL
    return subprocess.call([found, "-c", test], stdout=quiet, stderr=quiet) == 0


def _made_from(extra: str) -> Dict[str, str]:
    return {
        "project": hashlib.sha256((ROOT / "pyproject.toml").read_bytes()).hexdigest(),
        "folder": str(ROOT),
        "python": sys.version,
        "extra": extra,
    }


def _make(folder: Path, extra: str) -> None:
    made_from = _made_from(extra)
    require_venv()
    where = folder.relative_to(ROOT).as_posix()
    _say(f"Making a private Python environment in {where} (once; a minute or so).")
    if folder.is_symlink() or folder.is_file():
        folder.unlink()
    elif folder.exists():
        shutil.rmtree(str(folder))
    _step(
        [sys.executable, "-I", "-m", "venv", str(folder)],
        "Python could not make the environment.",
        "Check that the folder can be written to and the disk is not full, then type the command again.",
    )
    _say("Installing Swardbook and what it needs.")
    project = f".[{extra}]" if extra else "."
    pip = [str(python_of(folder)), "-I", "-m", "pip", "install", "--no-input", "--progress-bar", "off"]
    _step(
        [*pip, "--disable-pip-version-check", "--editable", project],
        "pip could not install what Swardbook needs.",
        "This step needs the internet: pypi.org, or the index or proxy that pip is set up for. Check the\n"
        "connection, then type the command again. No file outside the project's folder was changed.",
    )
    (folder / "made-from.json").write_text(json.dumps(made_from), encoding="utf-8")
    _say("Ready.")


def require_venv() -> None:
    """Raise Trouble, saying what to install, if this Python lacks the parts that make environments."""
    missing = [name for name in ("venv", "ensurepip") if importlib.util.find_spec(name) is None]
    if not missing:
        return
    version = ".".join(str(part) for part in sys.version_info[:2])
    if shutil.which("apt-get"):
        cure = f"Type:  sudo apt-get install python{version}-venv"
    else:
        cure = f"Install the rest of Python {version}: a package named like python3-venv or python3-pip."
    raise Trouble(
        f"This Python ({sys.executable}) comes without {' and '.join(missing)}, so it cannot make an "
        f"environment.\n{cure}\nThen type the command again."
    )


def _step(command: List[str], failed: str, cure: str) -> None:
    """Run one command in the project's folder, telling what it fetches; raise Trouble with its last lines."""
    lines: List[str] = []
    with subprocess.Popen(
        command,
        cwd=str(ROOT),
        env=clean_environ(),
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        encoding="utf-8",
        errors="replace",
    ) as process:
        assert process.stdout is not None
        for line in process.stdout:
            lines.append(line.rstrip())
            fetched = re.match(r"Collecting ([\w.-]+)", line)
            if fetched:
                _say("  fetching " + fetched.group(1))
            elif line.startswith("Installing collected packages"):
                _say("  installing")
    if process.returncode != 0:
        last = "\n".join("  | " + line for line in lines[-SHOWN_LINES:])
        raise Trouble(f"{failed} It said:\n{last}\n{cure}")


@contextlib.contextmanager
def _alone(folder: Path) -> Iterator[None]:
    """Hold the environment, so that two commands started together do not make it over each other."""
    with folder.with_suffix(".lock").open("a+", encoding="utf-8") as lock:
        if not _locked(lock):
            _say("Another command is at work on this environment; waiting for it.")
            while not _locked(lock):
                time.sleep(0.5)
        yield


def _locked(lock: "IO[str]") -> bool:
    """Try to lock an open file until it is closed; the system lets go of it if this process is killed."""
    try:
        if sys.platform == "win32":
            import msvcrt

            lock.seek(0)
            msvcrt.locking(lock.fileno(), msvcrt.LK_NBLCK, 1)
        else:
            import fcntl

            fcntl.flock(lock, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except (BlockingIOError, PermissionError):
        return False
    return True


def _say(words: str) -> None:
    print(words, flush=True)
