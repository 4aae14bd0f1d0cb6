"""The flag and the step read one number: what the owner allows at once is never exceeded by the offer."""

from dataclasses import replace
from datetime import date

import pytest

from journal.facts.factors import g_per_m2
from journal.plan.feed_dose import dose
from journal.record.kinds.setting import Setting
from tests.scenario import SET_UP, lawn

JUDGED = date(2026, 6, 10)
GROWTH = (date(2026, 4, 10), date(2026, 11, 10))


def test_the_owners_own_most_bounds_what_the_step_offers() -> None:
    usual = lawn()
    setting = Setting(date=SET_UP, what="rule", name="feed-dose", values=(("most", "0.4lb/k"),))
    tight = usual.plus(replace(setting, id="zz-most"))
    by_default, by_own = (dose(history.on("front", JUDGED), None, JUDGED, GROWTH) for history in (usual, tight))
    assert by_default is not None
    assert by_own is not None
    assert by_own.n_g_per_m2 == pytest.approx(g_per_m2(0.4))
    assert by_default.n_g_per_m2 > by_own.n_g_per_m2
