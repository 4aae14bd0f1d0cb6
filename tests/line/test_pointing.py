"""A line that can't be saved says which word is in question, and changes nothing."""

import pytest

from journal.line.read import read
from journal.record.entry import VERBS
from tests.line.lawns import EMPTY_BOOK, METRIC, TODAY, US, a_history, logged, pointed

BOOK = a_history(US)
METRIC_BOOK = a_history(METRIC)

# line, the word pointed at, part of the reason, suggestion
BAD = [
    ("feed oat-hil-starter 12lb", "oat-hil-starter", "no product", "oat-hill-starter"),
    ("feed nowhere 12lb front", "nowhere", "no product", ""),
    ("feed thistle-out 12lb", "thistle-out", "of the kind weed", ""),
    ("feed thistle 12lb", "thistle", "thistle-out is of the kind weed", ""),
    ("treat quiet-lane 12lb", "quiet-lane", "of the kind fertilizer", ""),
    ("seed quiet-lane 12lb", "quiet-lane", "of the kind fertilizer", ""),
    ("treat front wind 4mph", "treat", "which product", ""),
    ("treat thistle-out 3floz +", "+", "after it", ""),
    ("treat + thistle-out", "+", "before it", ""),
    ("mow 300in", "300in", "can't be meant", ""),
    ("mow 0in", "0in", "more than nothing", ""),
    ("mow -3in", "-3in", "below zero", ""),
    ("mow 3", "3", "unit is missing", ""),
    ("mow 3lb", "3lb", "no place after `mow`", ""),
    ("mow 3inn", "3inn", "not a unit", "in"),
    ("mow 3in 4in", "4in", "said already", ""),
    ("mow 3in 3in", "3in", "said already", ""),
    ("mow 1/0in", "1/0in", "divided", ""),
    ("mow 3inn", "3inn", "not a unit", "in"),
    ("mow m", "m", "not understood", ""),
    ("mow front front", "front", "named already", ""),
    ("mow frnt", "frnt", "not understood", "front"),
    ("mow ba 3in", "ba", "back, back-walk", ""),
    ("mow bag return", "return", "said already", ""),
    ("mow on 31 feb", "31 feb", "no such day", ""),
    ("mow feb 30", "feb 30", "no such day", ""),
    ("mow 13/40", "13/40", "no such day", ""),
    ("mow 2027-02-29", "2027-02-29", "no such day", ""),
    ("mow 1066-10-14", "1066-10-14", "1900 to 2199", ""),
    ("mow -9999wk", "-9999wk", "1900 to 2199", ""),
    ("mow tomorrow", "tomorrow", "lies ahead", "intend"),
    ("mow 2027-05-04", "2027-05-04", "lies ahead", "intend"),
    ("rain 1in on 4 may 2027", "4 may 2027", "lies ahead", "intend"),
    ("mow mon tue", "tue", "said already", ""),
    ("mow on", "on", "a date is wanted", ""),
    ("mow on front", "front", "a date is wanted", ""),
    ("mow 25:00", "25:00", "no such time", ""),
    ("mow 13pm", "13pm", "no such time", ""),
    ("mow 40%", "40%", "no place", ""),
    ("mow front 140%", "140%", "between 0 and 100", ""),
    ("mow part 3/2", "3/2", "like 1/2", ""),
    ("mow part", "part", "which part", ""),
    ("mow by hand", "hand", "by service", ""),
    ("mow [red]front[/red]", "[red]front[/red]", "not understood", ""),
    ("see [/", "[/", "not understood", ""),
    ("see", "see", "what was seen", ""),
    ("see red-thred", "red-thred", "not understood", "red-thread"),
    ("see gr", "gr", "write a letter more", ""),
    ("see rust 10% back 20%", "20%", "said already", ""),
    ("count grubs", "count", "how many", ""),
    ("count grubs 4", "4", "unit is missing", ""),
    ("rain", "rain", "how much", ""),
    ("rain 0.6", "0.6", "unit is missing", ""),
    ("rain 1in since tomorrow", "tomorrow", "lies ahead", ""),
    ("rain 1in since 5/1 on 4/1", "since", "begun after", ""),
    ("weather 71F", "weather", "both", ""),
    ("weather 500F 48F", "500F", "can't be meant", ""),
    ("feed quiet-lane 12lb 4lb/k", "4lb/k", "one amount", ""),
    ("feed quiet-lane 12lb 12lb", "12lb", "one amount", ""),
    ("feed oat 1bag 2bag", "2bag", "one amount", ""),
    ("feed oat 12lb 1bag", "1bag", "one amount", ""),
    ("feed oat 1bag 12lb", "12lb", "one amount", ""),
    ("treat thistle 3floz + gate 4lb 1lb/k", "1lb/k", "one amount", ""),
    ("feed quiet-lane 0lb", "0lb", "more than nothing", ""),
    ("feed oat 0bag", "0bag", "more than nothing", ""),
    ("feed quiet-lane 2bag", "2bag", "set quiet-lane bag 48lb", ""),
    ("feed quiet-lane half bag", "half", "set quiet-lane bag 48lb", ""),
    ("treat thistle-out 5.5oz front", "5.5oz", "fluid ounces", "5.5floz"),
    ("treat 5.5 oz thistle-out", "5.5 oz", "fluid ounces", "5.5floz"),
    ("treat thistle-out 1.5oz/k", "1.5oz/k", "fluid ounces", "1.5floz/k"),
    ("treat gate 1lb + thistle-out 2oz + unknown", "2oz", "fluid ounces", "2floz"),
    ("treat thistle-out 3floz 40sqft", "40sqft", "needs `spot`", ""),
    ("treat thistle-out 3floz spot 40", "40", "an area is wanted", ""),
    ("treat thistle-out 3floz spot 0sqft", "0sqft", "an area is wanted", ""),
    ("treat thistle-out wind 4", "4", "unit is missing", ""),
    ("treat thistle-out wind fast", "fast", "not a number", ""),
    ("treat thistle-out wind", "wind", "wanted after it", ""),
    ("treat thistle-out temp 68in", "68in", "wrong kind of unit", ""),
    ("treat thistle-out wind 0mph wind 5mph", "wind", "said already", ""),
    ("water C 20min", "C", "no sprinkler circuit", ""),
    ("water A 20", "20", "unit is missing", ""),
    ("water A 20min A 5min", "A", "named already", ""),
    ("water A 20min 10min", "10min", "for each circuit", ""),
    ("water A 20min back", "back", "has not the circuits", ""),
    ("water 0in", "0in", "more than nothing", ""),
    ("water 3000min", "3000min", "can't be meant", ""),
    ("schedule front 20min from 9/30 to 2027-05-15", "to", "before it begins", ""),
    ("schedule front", "schedule", "how long", ""),
    ("intend seed three 2026-09-05", "2026-09-05", "a day gone by", ""),
    ("intend seed three", "intend", "which day", ""),
    ("intend 9/4", "intend", "to do what", ""),
    ("snooze mow-gap", "snooze", "how long", ""),
    ("snooze 7d", "snooze", "which flag", ""),
    ("snooze mow-gap 99999999d", "99999999d", "at most", ""),
    ("snooze mow-gap yesterday", "yesterday", "gone by", ""),
    ("aside mow-gap", "aside", "a reason", ""),
    ("aside mow-gp -- because", "mow-gp", "no flag of that name", "mow-gap"),
    ("photo", "photo", "which file", ""),
    ("photo a.jpg from Gate!", "Gate!", "a photo point", ""),
    ("photo a\u200bb.jpg", "a\u200bb.jpg", "can't be seen", ""),
    ("soil ph 99", "ph", "between pH 3 and 11", ""),
    ("soil p lw", "lw", "one of", "low"),
    ("soil p 95", "95", "unit is missing", ""),
    ("soil front", "soil", "which figures", ""),
    ("buy quiet-lane tested 2026-13", "2026-13", "not a month", ""),
    ("buy quiet-lane pure 140", "140", "can't be meant", ""),
    ("note", "note", "what?", ""),
    ("d", "d", "write it out", ""),
    ("ra", "ra", "r rain, rak rake", ""),
    ("mwo 3in", "mwo", "no verb", "mow"),
    ("[red] front", "[red]", "no verb", ""),
    ("set", "set", "set what", ""),
    ("set nothing 3", "nothing", "no zone, product", ""),
    ("set front", "front", "what about it", ""),
    ("set front aera 2100sqft", "aera", "not something a zone has", "area"),
    ("set quiet-lane bga 48lb", "bga", "not something a product has", "bag"),
    ("set front area 2100", "2100", "unit is missing", ""),
    ("set front area 0sqft", "0sqft", "more than nothing", ""),
    ("set front sun ful", "ful", "one of", "full"),
    ("set front area 2400sqft area 2500sqft", "area", "said already", ""),
    ("set front circuits A 60% 0.5in/h; B 60% 0.9in/h", "A 60% 0.5in/h; B 60% 0.9in/h", "100", ""),
    ("set front circuits drip 100% 0.5in/h", "drip", "a letter", ""),
    ("set grass kentucky blugrass", "kentucky blugrass", "not a grass", "kentucky bluegrass"),
    ("set mow-gap days 900d", "900d", "may be", ""),
    ("set mow-gap days 12in", "12in", "given like", ""),
    ("set mow-gap dys 12d", "dys", "no number of that name", "days"),
    ("set mow-gap", "mow-gap", "which number", ""),
    ("set last_frost 13-45", "13-45", "not a day of the year", ""),
    ("set last_frost 99999999999-01", "99999999999-01", "not a day of the year", ""),
    ("set quiet-lane slow 20%", "20%", "slow_n 3.6%", ""),
    ("set quiet-lane analysis nan-0-0", "nan-0-0", "three numbers", ""),
    ("set quiet-lane analysis 60-50-0", "60-50-0", "above 100", ""),
    ("set quiet-lane rate 4lb/k 3lb/k", "4lb/k 3lb/k", "low rate comes first", ""),
    ("set quiet-lane rate 4lb/k to_sed 28d", "to_sed", "not something a product has", "to_seed"),
    ("set quiet-lane maker old mill to_sed 28d", "to_sed", "not something a product has", "to_seed"),
    ("set quiet-lane repeat 99999d", "99999d", "at most", ""),
    ("zone mow 10sqft", "mow", "already means something", "my-mow"),
    ("zone monday", "monday", "already means something", "my-monday"),
    ("zone jun", "jun", "already means something", "my-jun"),
    ("zone acre", "acre", "already means something", "my-acre"),
    ("zone bag", "bag", "already means something", "my-bag"),
    ("zone tomorrow", "tomorrow", "already means something", "my-tomorrow"),
    ("zone 3in", "3in", "one word of the letters", ""),
    ("zone a_b", "a_b", "one word of the letters", ""),
    ("zone quiet-lane", "quiet-lane", "something else already", "my-quiet-lane"),
    ("zone mow-gap", "mow-gap", "something else already", "my-mow-gap"),
    ("zone", "zone", "which zone", ""),
    ("product front kind seed", "front", "something else already", "my-front"),
    ("product wind kind seed", "wind", "already means something", "my-wind"),
    ("product dusk-mix", "dusk-mix", "what kind", ""),
    ("product dusk-mix kind sed", "sed", "one of", "seed"),
]  # fmt: skip


@pytest.mark.parametrize(("line", "word", "why", "suggestion"), BAD, ids=[row[0] for row in BAD])
def test_the_word_in_question_is_pointed_at(line: str, word: str, why: str, suggestion: str) -> None:
    reading = read(line, BOOK, TODAY)
    assert pointed(reading) == word
    assert reading.problem is not None
    assert why in reading.problem.why
    assert reading.problem.suggestion == suggestion


@pytest.mark.parametrize(
    ("line", "start"), [("mow 3in 3in", 8), ("mow front 3in front", 14), ("feed quiet 12lb front 12lb", 22)]
)
def test_of_two_alike_the_second_is_pointed_at(line: str, start: int) -> None:
    problem = read(line, BOOK, TODAY).problem
    assert problem is not None
    assert problem.start == start


def test_the_word_is_found_whatever_letters_stand_before_it() -> None:
    for line in ("mow straße zzz", "mow İ zzz", "mow ﬀ zzz"):
        problem = read(line, BOOK, TODAY).problem
        assert problem is not None
        assert line[problem.start : problem.end] == problem.word


@pytest.mark.parametrize("line", ["", "   ", "\t", "-- only a remark", "!", '""', "''"])
def test_an_empty_line_says_how_to_begin(line: str) -> None:
    reading = read(line, BOOK, TODAY)
    assert reading.problem is not None
    assert "Nothing typed yet" in reading.problem.why


def test_a_line_too_long_is_refused_whole_and_kept() -> None:
    line = "mow -- " + "x" * 10_000
    reading = read(line, BOOK, TODAY)
    assert reading.text == line
    assert reading.problem is not None
    assert (reading.problem.start, reading.problem.end) == (1000, len(line))
    assert "10,007" in reading.problem.why


@pytest.mark.parametrize("bad", ["\x1b[31m", "\x00", "\x9b", "\x7f"])
def test_a_control_character_is_refused_in_any_place(bad: str) -> None:
    for line in (f"mow 3in -- wet {bad}", f"note {bad}x", f"{bad}mow", f"zone {bad}"):
        assert pointed(read(line, BOOK, TODAY)) == bad[0]


def test_brackets_and_other_marks_are_kept_in_a_remark() -> None:
    reading = read("mow -- [red] see [/ 100% \\[", BOOK, TODAY)
    assert reading.draft is not None
    assert reading.draft.remark == "[red] see [/ 100% \\["
    assert reading.words.endswith("-- [red] see [/ 100% \\[")


def test_a_metric_book_refuses_a_date_with_slashes() -> None:
    reading = read("mow 6/7", METRIC_BOOK, TODAY)
    assert pointed(reading) == "6/7"
    assert "14 jun" in str(reading.problem)
    assert pointed(read("set front area 200m2 from 6/7", METRIC_BOOK, TODAY)) == "6/7"


def test_bounds_are_told_in_the_book_s_own_units() -> None:
    assert "mm" in str(read("mow 900mm", METRIC_BOOK, TODAY).problem)
    assert "in" in str(read("mow 900mm", BOOK, TODAY).problem)


def test_bare_abbreviations_save_only_a_mowing_or_a_watering() -> None:
    for verb, (declared, _) in VERBS.items():
        reading = read(verb[:1], EMPTY_BOOK, TODAY)
        if reading.draft is not None:
            assert reading.verb in ("mow", "water")
        assert declared.bare == (verb in ("mow", "water"))


def test_a_verb_typed_in_full_may_stand_alone() -> None:
    for line in ("sharpen", "aerate", "rake", "blade", "dethatch"):
        assert read(line, BOOK, TODAY).draft is not None


def test_usual_product_of_one_kind_is_not_taken_for_two() -> None:
    history = logged(BOOK, ["product dusk-mix kind seed", "product dawn-mix kind seed"])
    reading = read("seed da 3lb", history, TODAY)
    assert reading.draft is not None
    assert pointed(read("seed d 3lb", history, TODAY)) == "d"
