"""What breaks a local rule is harm where its number is confirmed and binds owners, and nothing otherwise."""

from datetime import date

import pytest

from journal.facts.citation import Known
from journal.facts.local_rules_sets import sets
from journal.record.kinds.setting import Setting
from journal.rules.declare import RULES
from journal.rules.judge import flags_of
from journal.season.history import History
from tests.scenario import LAWN, book, later, lawn, level, raised

SETS = sets()
ON = "2026-05-20"

SHED = """
[[product]]
name = "quick-hill"
kind = "fertilizer"
analysis = "24-0-11"
slow = "2% of n"

[[product]]
name = "none-slow"
kind = "fertilizer"
analysis = "24-0-11"
slow = "0% of n"

[[product]]
name = "wet-stone"
kind = "fertilizer"
analysis = "24-0-0"
slow = "2% of n"
form = "liquid"
rate = ["3floz/k", "5floz/k"]
"""


def under(*facts: str) -> History:
    """A book under these facts of the lawn."""
    return lawn(toml=LAWN.replace('name = "North Lane"', "\n".join(('name = "North Lane"', *facts))) + SHED)


def named(key: str) -> History:
    return under(f'local_rules = "{key}"')


BREAKS = {
    "ten pounds at once": f"{ON} feed slow-oak 10lb/k front",
    "0.95 lb, mostly slow": f"{ON} feed slow-oak 3.96lb/k front",
    "0.8 lb, all soluble": f"{ON} feed none-slow 3.34lb/k front",
    "hardly any slow": f"{ON} feed quick-hill 2lb/k front",
    "hardly any slow, a service did not say how much": f"{ON} feed quick-hill by service front",
    "hardly any slow, liquid": f"{ON} feed wet-stone 4floz/k front",
}
MD_PA_NJ = {"us-md", "us-pa", "us-nj"}
BREAKERS = {
    "ten pounds at once": {*MD_PA_NJ, "us-fl-pinellas"},
    "0.95 lb, mostly slow": MD_PA_NJ,
    "0.8 lb, all soluble": {*MD_PA_NJ, "us-vt", "us-fl-pinellas"},
    "hardly any slow": {"us-vt", "us-nj", "us-fl-pinellas"},
    "hardly any slow, a service did not say how much": {"us-vt", "us-nj", "us-fl-pinellas"},
    "hardly any slow, liquid": {"us-vt", "us-nj"},
}


@pytest.mark.parametrize("name", BREAKS)
def test_which_sets_a_feeding_breaks(name: str) -> None:
    harmed = {key for key in SETS if level(book(BREAKS[name], on=named(key)), ON, "feed-dose") == "harm"}
    assert harmed == BREAKERS[name]


YEAR = (
    "2026-01-10 feed oat-hill 9lb front", "2026-05-20 feed quick-hill 20lb front", "2026-07-01 feed oat-hill 6lb front",
    "2026-09-06 seed three-river 9lb front", "2026-09-08 feed oat-hill 20lb front",
    "2026-11-20 feed slow-oak 15lb front",
)  # fmt: skip


@pytest.mark.parametrize("key", SETS)
def test_no_harm_ever_rests_on_a_memory_or_on_what_binds_others(key: str) -> None:
    diary = book(*YEAR, on=named(key))
    rules = SETS[key]
    watched = [rule for rule in RULES.values() if rule.id.startswith(("feed-", "starter-"))]
    assert watched
    for line in YEAR:
        past = diary.on("front", date.fromisoformat(line[:10]))
        for rule in watched:
            for flag in flags_of(rule, past):
                if flag.level != "harm":
                    continue
                assert rules.binds.name == "OWNERS"
                assert flag.basis
                assert {basis.kind for basis in flag.basis} == {Known.PUBLISHED}


def test_the_flag_names_the_place_the_number_and_whom_to_ask() -> None:
    flag = raised(book(BREAKS["0.8 lb, all soluble"], on=named("us-md")), ON, "feed-dose")
    assert flag is not None
    assert flag.headline == "0.802 lb/k of soluble nitrogen at once, more than the local rule allows"
    assert "Maryland" in flag.why
    assert flag.do.endswith("Check with your local authority.")
    assert (flag.numbers["soluble-limit"].words, flag.numbers["soluble-limit"].origin) == ("0.7 lb/k", "local rule")
    assert "Lawn Fertilizer Schedule Table" in flag.basis[0].words()
    assert level(book(BREAKS["0.8 lb, all soluble"], on=named("us-md")), later(ON, 30), "feed-dose") == ""


def test_two_percent_slow_is_too_little_in_vermont() -> None:
    # 10 V.S.A. s.1266b: at least 15 % of the nitrogen
    flag = raised(book(BREAKS["hardly any slow"], on=named("us-vt")), ON, "feed-dose")
    assert flag is not None
    assert flag.headline == "2 % of the nitrogen slow, less than the local rule asks"
    assert flag.numbers["slow-least"].words == "15 %"
    enough = book(f"{ON} feed slow-oak 2lb/k front", on=named("us-vt"))
    assert level(enough, ON, "feed-dose") == ""
    silent = book(f"{ON} feed pond-ridge 2lb/k front", on=named("us-vt"))
    assert level(silent, ON, "feed-dose") == ""  # the product does not say how much of it is slow


def test_ones_own_number_goes_before_the_sets() -> None:
    line = f"{ON} feed slow-oak 3.96lb/k front"
    assert level(book(line, on=under('local_rules = "us-md"', 'local_most_n = "1.2lb/k"')), ON, "feed-dose") == "note"
    assert level(book(line, on=under('local_most_n = "0.9lb/k"')), ON, "feed-dose") == "harm"
    assert level(book(line, on=under('local_rules = "us-il"', 'local_slow = "70%"')), ON, "feed-dose") == "harm"
    assert level(book(line, on=under('local_rules = "us-il"')), ON, "feed-dose") == "note"


SOWN = "2026-09-06"
SEED = f"{SOWN} seed three-river 9lb front"
PLAIN = f"{later(SOWN, 1)} feed pond-ridge 5lb front"


def test_plain_nitrogen_serves_where_overseeding_is_no_reason_for_phosphorus() -> None:
    assert level(book(SEED, PLAIN, on=named("us-ny")), later(SOWN, 20), "starter-missing") == ""
    assert level(book(f"{SEED} new", PLAIN, on=named("us-ny")), later(SOWN, 20), "starter-missing") == "late"
    assert level(book(SEED, PLAIN, on=named("us-md")), later(SOWN, 20), "starter-missing") == "late"
    assert level(book(SEED, PLAIN, on=named("us-il")), later(SOWN, 20), "starter-missing") == "late"


@pytest.mark.parametrize(("tested", "says"), [("2025-04-01", "late"), ("2025-02-01", "")])
def test_a_soil_test_that_shows_the_need_is_a_reason_for_18_months_in_vermont(tested: str, says: str) -> None:
    diary = book(f"{tested} soil p low", SEED, PLAIN, on=lawn(
        toml=LAWN.replace('name = "North Lane"', 'name = "North Lane"\nlocal_rules = "us-vt"'), set_up="2025-01-01"
    ))  # fmt: skip
    assert level(diary, later(SOWN, 20), "starter-missing") == says


def test_a_name_that_comes_close_is_suggested_and_what_is_built_in_is_listed() -> None:
    def note(words: str) -> str:
        said = Setting(date=date.fromisoformat(ON), what="lawn", name="", values=(("local_rules", words),), line="")
        diary = book().plus(said)
        flag = raised(diary, ON, "local-rules-unknown")
        assert flag is not None
        return f"{flag.why}. {flag.do}"

    assert "set local_rules us-ma, if that is meant" in note("massachusets")
    assert "us-fl-pinellas" in note("massachusets")
    assert "if that is meant" not in note("us-de")
    assert "built in are us-ma" in note("us-de")
    assert "built in" not in note("our-town").partition("nothing of it is watched")[2]
    assert "local authority" in note("our-town")
    own = book(f"{ON} set local_rules our-town", f"{ON} set local_slow 20%")
    flag = raised(own, ON, "local-rules-unknown")
    assert flag is not None
    assert "only your own local_... numbers are watched" in flag.why
