"""NOT YET in few rows: zones that wait for the same day share one, and what lies far ahead is told in a line."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from journal.plan.step import Step
from journal.record.lawn import Lawn

FAR_DAYS = 28
"""What opens later than in so many days is far ahead."""


@dataclass(frozen=True, slots=True)
class Wait:
    """Steps of one name that open on the same day, each of other zones."""

    steps: tuple[Step, ...]

    @property
    def first(self) -> Step:
        """The one whose line and reason are shown."""
        return self.steps[0]

    @property
    def zones(self) -> tuple[str, ...]:
        """Those of all."""
        return tuple(dict.fromkeys(zone for step in self.steps for zone in step.zones))


def waits(steps: Sequence[Step], lawn: Lawn) -> tuple[Wait, ...]:
    """In the order of the steps."""
    found: dict[tuple[str, date | None, object], list[Step]] = {}
    for step in steps:
        found.setdefault((step.title or step.step, step.earliest, step.state), []).append(step)
    order = {name: at for at, name in enumerate(lawn.zone_names)}
    return tuple(
        Wait(tuple(sorted(group, key=lambda step: [order.get(zone, len(order)) for zone in step.zones])))
        for group in found.values()
    )


def parted(found: Sequence[Wait], as_of: date, room: int) -> tuple[tuple[Wait, ...], tuple[Wait, ...]]:
    """Those with a row of their own, and those far ahead where there is no room for all, the nearest first."""
    if len(found) <= room:
        return tuple(found), ()
    far = as_of + timedelta(FAR_DAYS)
    ahead = [wait for wait in found if wait.first.earliest is not None and wait.first.earliest > far]
    near = tuple(wait for wait in found if wait not in ahead)
    return near, tuple(sorted(ahead, key=lambda wait: wait.first.earliest or date.max))
