"""The sign that a local rule asks for around a treatment."""

import pytest

from journal.facts.local_words import rows
from journal.record.lawn import Lawn
from journal.record.refusal import Refusal
from journal.record.term import terms
from journal.season.history import History
from journal.season.local import local_rules, sign_hours
from tests.rules.treated import flags, shed
from tests.scenario import book, day, find, judged, raised, the

SPRAYED = "2026-05-04 treat leaf-off 1floz front"


def _town(hours: str = "48h") -> History:
    return shed(None, ('name = "North Lane"', f'name = "North Lane"\nlocal_sign = "{hours}"'))


def test_no_sign_is_asked_for_where_no_local_rule_is_entered() -> None:
    assert flags(book(SPRAYED, on=shed()), "2026-05-04", "sign") == {}
    assert find(book(SPRAYED, on=shed()), "2026-05-04", "sign") is None


def test_the_hours_are_entered_in_hours_or_days_and_told_with_the_other_local_rules() -> None:
    read = terms(Lawn)["local_sign"][1].read
    assert (read("48h"), read("2d"), read("24h")) == (48, 48, 24)
    for wrong in ("0h", "11d", "48", "soon"):
        with pytest.raises(Refusal):
            read(wrong)
    ground = _town("24h").lawn(day("2026-05-04"))
    assert sign_hours(ground) == 24
    rules = local_rules(ground)
    assert rules is not None
    assert "stands for 24 h after a treatment" in [row.says for row in rows(rules, "us")]


def test_a_treatment_without_a_sign_is_a_note_until_the_hours_are_over() -> None:
    sprayed = book(SPRAYED, on=_town())
    assert flags(sprayed, "2026-05-04", "sign") == {"up": "note"}
    assert flags(sprayed, "2026-05-06", "sign") == {"up": "note"}
    assert flags(sprayed, "2026-05-07", "sign") == {}
    assert flags(book(SPRAYED, on=_town("24h")), "2026-05-06", "sign") == {}


def test_a_sign_of_before_or_after_it_clears_it() -> None:
    for put_up in ("2026-05-03 see sign front", "2026-05-04 see sign front"):
        assert flags(book(SPRAYED, put_up, on=_town()), "2026-05-04", "sign") == {}
    late = book(SPRAYED, "2026-05-05 see sign front", on=_town())
    assert flags(late, "2026-05-04", "sign") == {"up": "note"}
    assert flags(late, "2026-05-05", "sign") == {}
    gone = book("2026-05-01 see sign front", "2026-05-02 see sign-down front", SPRAYED, on=_town())
    assert flags(gone, "2026-05-04", "sign") == {"up": "note"}


def test_a_sign_taken_down_within_its_hours_breaks_the_rule() -> None:
    signed = book("2026-05-04 see sign front", SPRAYED, on=_town())
    early = book("2026-05-06 see sign-down front", on=signed)
    assert flags(early, "2026-05-06", "sign") == {"down": "harm"}
    flag = raised(early, "2026-05-12", "sign")
    assert flag is not None
    assert flag.numbers["hours"].origin == "local rule"
    assert flags(early, "2026-05-13", "sign") == {}
    assert flags(book("2026-05-07 see sign-down front", on=signed), "2026-05-07", "sign") == {}


def test_on_the_day_itself_the_times_are_asked_for() -> None:
    signed = book("2026-05-03 see sign front", SPRAYED, "2026-05-04 see sign-down front", on=_town())
    assert flags(signed, "2026-05-04", "sign") == {"down": "note"}
    timed = book(
        "2026-05-03 see sign front", "2026-05-04 treat leaf-off 1floz front 9:00",
        "2026-05-06 see sign-down front 9:30", on=_town(),
    )  # fmt: skip
    assert flags(timed, "2026-05-06", "sign") == {}


def test_spots_need_none() -> None:
    assert flags(book("2026-05-04 treat leaf-off spot rtu front", on=_town()), "2026-05-04", "sign") == {}


def test_the_step_goes_up_before_what_is_meant_and_comes_down_after() -> None:
    meant = book("2026-04-28 intend treat leaf-off 2026-05-04 front", on=_town())
    assert str(the(meant, "2026-04-28", "sign").state) == "waiting"
    up = the(meant, "2026-05-03", "sign")
    assert (str(up.state), up.title, up.line) == ("open", "sign up", "see sign front")
    posted = book(f"2026-05-03 {up.line}", on=meant)
    assert str(the(posted, "2026-05-03", "sign").state) == "done"
    assert "sign" not in {flag.rule for flag in judged(posted, "2026-05-04", "treat leaf-off 1floz front").raised}
    used = book(SPRAYED, on=posted)
    assert str(the(used, "2026-05-06", "sign").state) == "waiting"
    down = the(used, "2026-05-07", "sign")
    assert (str(down.state), down.line) == ("open", "see sign-down front")
    assert judged(used, "2026-05-07", down.line).raised == ()
    assert find(book(f"2026-05-07 {down.line}", on=used), "2026-05-07", "sign") is None


def test_a_treatment_without_a_sign_makes_the_step_late() -> None:
    late = the(book(SPRAYED, on=_town()), "2026-05-04", "sign")
    assert (str(late.state), late.line) == ("late", "see sign front")
    assert find(book(SPRAYED, on=_town()), "2026-05-04", "sign", "back") is None
