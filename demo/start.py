"""Open Swardbook on the demo book: `python3 demo/start.py`.

Makes what it needs in .env/ the first time. Everything but `--check` is passed on to `swardbook demo`.
This file keeps to what Python 3.6 can read, so that an old Python can say that it is too old.
"""

import argparse
import os
import subprocess
import sys
from typing import List

import environment


def main() -> int:
    """Make the environment ready and open the demo in it, or with `--check` only show that it would open."""
    parser = argparse.ArgumentParser(
        description="Open Swardbook on the demo book. Other arguments go to `swardbook demo`.",
        allow_abbrev=False,
    )
    parser.add_argument("--check", action="store_true", help="do all but open the screen")
    ours, passed_on = parser.parse_known_args()
    try:
        environment.require_python("demo/start.py")
        python = environment.ready("demo")
    except environment.Trouble as trouble:
        print(trouble, file=sys.stderr)
        return 1
    if ours.check:
        installed = environment.command_of(python.parent.parent, "swardbook")
        return subprocess.call([str(installed), "--version"], env=environment.clean_environ())
    return hand_over([str(python), "-I", "-m", "journal", "demo", *passed_on])


def hand_over(command: List[str]) -> int:
    """Give the terminal to `command`; on POSIX this process becomes it, so signals reach it alone."""
    sys.stdout.flush()
    if os.name == "posix":
        os.execv(command[0], command)
    with subprocess.Popen(command) as process:
        while True:
            try:
                return process.wait()
            except KeyboardInterrupt:
                continue  # the screen answers Ctrl+C itself


if __name__ == "__main__":
    try:
        sys.exit(main())
    except KeyboardInterrupt:
        print("\nStopped. The next start takes it up again.", file=sys.stderr)
        sys.exit(130)
