"""Worked checks in print that a rule answers, each with its publication beside it."""

import pytest

from tests.scenario import LAWN, book, lawn, level, raised

PRODIAMINE = "Univ. of Delaware Cooperative Extension, Kent County, 2008: four to seven months by rate"
GLYPHOSATE = "The Mercury, 2020: seven days before seeding on most labels"

WAITS = 'name = "spring-wall"\nkind = "pre-emergent"\nactives = ["prodiamine"]\nform = "granule"\n'
SHED = f"""{LAWN}
[[product]]
name = "bare-ground"
kind = "nonselective"
actives = ["glyphosate"]
form = "liquid"
"""


def test_prodiamine_in_march_and_seed_on_the_first_of_september() -> None:
    # 160 days: inside the 210 that are assumed, past a label of 120; PRODIAMINE
    lines = ("2026-03-25 treat spring-wall 3lb/k front", "2026-09-01 seed three-river 9lb front")
    flag = raised(book(*lines), "2026-09-01", "seed-over-residue")
    assert flag is not None
    assert (flag.numbers["wait"].words, flag.numbers["wait"].origin) == ("210 d", "default"), PRODIAMINE
    assert "160" in f"{flag.headline} {flag.why}"
    labelled = lawn((WAITS, f'{WAITS}[product.label]\nto_seed = "120 d"\n'))
    assert level(book(*lines, on=labelled), "2026-09-01", "seed-over-residue") == ""


@pytest.mark.parametrize(("sown", "raises"), [("2026-09-10", True), ("2026-09-11", True), ("2026-09-12", False)])
def test_glyphosate_counts_from_the_last_spray(sown: str, raises: bool) -> None:
    # sprayed 15 August and 5 September: five days on the 10th, over on the seventh; GLYPHOSATE
    diary = book(
        "2026-08-15 treat bare-ground 2floz front", "2026-09-05 treat bare-ground 2floz front",
        f"{sown} seed three-river 9lb front", on=lawn(toml=SHED),
    )  # fmt: skip
    flag = raised(diary, sown, "seed-over-residue")
    assert (flag is not None) is raises, GLYPHOSATE
    if flag is not None:
        assert str(flag.clears_on) == "2026-09-12"
        assert flag.numbers["wait"].words == "7 d"
