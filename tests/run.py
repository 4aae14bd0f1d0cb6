"""Run every check of the project: `python3 tests/run.py`.

Makes what it needs in .env/ the first time. The last line is always `N passed, M failed`: tests that passed;
tests that failed, and one more for each other check that failed. This file keeps to what Python 3.6 can read.
"""

import argparse
import os
import subprocess
import sys
import tempfile
import time
import xml.etree.ElementTree as ET
from pathlib import Path
from typing import Dict, List, NamedTuple, Tuple

sys.path.insert(0, str(Path(__file__).resolve().parent.parent / "demo"))

import environment

MOST_WORKERS = 8
"""More test processes than this only cost memory."""


class Outcome(NamedTuple):
    """What one check came to, in words and seconds; `passed` and `failed` go into the last line."""

    check: str
    passed: int
    failed: int
    words: str
    seconds: float


def main() -> int:
    """Run the checks, print one table and the count, and return 0 only if all passed and tests did run."""
    parser = argparse.ArgumentParser(description="Run every check of the project.", allow_abbrev=False)
    parser.add_argument("--fast", action="store_true", help="only the tests: no lint, format or types")
    parser.add_argument("-k", metavar="WORDS", help="only tests whose names match, as pytest's -k")
    asked = parser.parse_args()
    try:
        environment.require_python("tests/run.py")
        python = str(environment.ready("tests", extra="test"))
    except environment.Trouble as trouble:
        print(trouble, file=sys.stderr, flush=True)
        return report([Outcome("environment", 0, 1, "could not be made", 0.0)])
    outcomes = []
    if not asked.fast:
        outcomes.append(tool("lint", [python, "-m", "ruff", "check", "."]))
        outcomes.append(tool("format", [python, "-m", "ruff", "format", "--check", "."]))
        outcomes.append(tool("types", [python, "-m", "mypy"]))
    outcomes.append(tests(python, asked.k))
    return report(outcomes)


def tool(check: str, command: List[str]) -> Outcome:
    """Run a tool that says all in its exit code."""
    code, seconds = run(check, command)
    return Outcome(check, 0, int(code != 0), "failed" if code else "passed", seconds)


def tests(python: str, chosen: "str | None") -> Outcome:
    """Run the tests, over all cores unless only some were asked for, and count what came of them."""
    command = [python, "-m", "pytest", "-q"]
    command += ["-k", chosen] if chosen else ["-n", str(workers())]
    with tempfile.TemporaryDirectory() as folder:
        results = Path(folder) / "results.xml"
        code, seconds = run("tests", [*command, "--junitxml", str(results)])
        return judge(code, count(results), seconds)


def workers() -> int:
    """Return how many test processes suit this computer."""
    return min(os.cpu_count() or 1, MOST_WORKERS)


def run(check: str, command: List[str]) -> Tuple[int, float]:
    """Run `command` in the project's folder with its output shown; return its exit code and the seconds."""
    print("--- " + check, flush=True)
    start = time.monotonic()
    code = subprocess.call(command, cwd=str(environment.ROOT), env=environment.clean_environ())
    return code, time.monotonic() - start


def count(results: Path) -> Dict[str, int]:
    """Count a JUnit file's tests by passed, skipped, failed; one that also fails to clean up counts once."""
    if not results.exists():
        return {}
    worst: Dict[Tuple[str, str], str] = {}
    rank = ["passed", "skipped", "failed"]
    for case in ET.parse(str(results)).iter("testcase"):
        kinds = {child.tag for child in case}
        state = "failed" if kinds & {"failure", "error"} else "skipped" if "skipped" in kinds else "passed"
        key = (case.get("classname", ""), case.get("name", ""))
        worst[key] = max(worst.get(key, state), state, key=rank.index)
    states = list(worst.values())
    return {state: states.count(state) for state in rank}


def judge(code: int, counts: Dict[str, int], seconds: float) -> Outcome:
    """Turn pytest's exit code and its counts into an outcome; what cannot be right counts as a failure."""
    passed, failed = counts.get("passed", 0), counts.get("failed", 0)
    words = ", ".join(f"{n} {state}" for state, n in counts.items() if n) or "no test ran"
    if not passed and not failed:
        failed = 1
    elif code != 0 and not failed:
        failed, words = 1, f"{words}; pytest stopped with code {code}"
    return Outcome("tests", passed, failed, words, seconds)


def report(outcomes: List[Outcome]) -> int:
    """Print the closing table and the count; return the exit code."""
    wide = max(len(outcome.words) for outcome in outcomes)
    print(f"\n{'Check':<12} {'Result':<{wide}} {'Seconds':>8}")
    for outcome in outcomes:
        print(f"{outcome.check:<12} {outcome.words:<{wide}} {outcome.seconds:>8.1f}")
    passed, failed = (sum(counts) for counts in zip(*((one.passed, one.failed) for one in outcomes)))
    print(f"\n{passed} passed, {failed} failed", flush=True)
    return int(failed > 0)


if __name__ == "__main__":
    try:
        sys.exit(main())
    except KeyboardInterrupt:
        print("\nStopped.", file=sys.stderr)
        sys.exit(130)
