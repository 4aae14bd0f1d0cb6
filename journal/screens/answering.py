"""The line that answers a flag."""

from journal.rules.flag import Flag
from journal.screens.session_like import SessionLike
from journal.standing import Standing


def clearing_line(session: SessionLike, standing: Standing, id: str) -> str:
    """The ready line of the first step that would clear the flag, found by judging it; '' where none would."""
    flag = next((flag for flag in standing.flags if flag.id == id), None)
    if flag is None:
        return ""
    for step in standing.steps:
        if step.line and _meet(step.zones, flag.zones) and _clears(session, step.line, flag):
            return step.line
    return ""


def _clears(session: SessionLike, line: str, flag: Flag) -> bool:
    reading = session.read(line)
    if reading.draft is None:
        return False
    cleared = session.judge(reading).cleared
    return any(one.rule == flag.rule and _meet(one.zones, flag.zones) for one in cleared)


def _meet(some: tuple[str, ...], others: tuple[str, ...]) -> bool:
    """Whether zones have one in common; no zone named is every zone."""
    return not some or not others or bool(set(some) & set(others))
