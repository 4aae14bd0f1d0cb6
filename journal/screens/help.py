"""Help over the page: keys, lines to type, the drawing language; and help on the word under the cursor."""

from journal.facts.safety import SENTENCES
from journal.line.caution import shows_safety
from journal.line.reading import Reading
from journal.record.entry import VERBS
from journal.screens.examples import examples
from journal.screens.keys import DIGITS, TABLE
from journal.screens.level import LEVEL_INKS
from journal.screens.page import Page, Size
from journal.screens.pages import pages
from journal.screens.paper import Paper
from journal.screens.picture import EMPTY_ROW, Ink, Picture, Row, Span
from journal.screens.rows import left, text, wrapped
from journal.screens.telling import facts_of
from journal.screens.title import day_words
from journal.screens.view import View
from journal.standing import Preflight, Standing

LEGEND: tuple[tuple[str, Ink, str], ...] = (
    ("3 ▆ S A", Ink.DONE, "solid is done: height of cut, feeding, sowing, aerating"),
    ("[=-]", Ink.AHEAD, "hollow is ahead: earliest, best, allowed, latest"),
    ("x", Ink.BARRED, "closed: not yet"),
    ("!", Ink.LATE, "past its latest day"),
    ("░▒▓", Ink.GAP, "too long since: past the usual, past your number, half as long again"),
    ("━─", Ink.FUSE, "a feeding burns down: not yet, then its window is open"),
    ("~ - E", Ink.SEED, "seed: kept damp, young grass, established"),
    ("H L l n", Ink.LATE, "flags: harm, loss, late, note"),
)

LINE_RULES = (
    "Verb first, the rest in any order: mow 3in bag front -1d",
    "Left out: the usual zones, height, clippings, minutes, product; today. Never amounts.",
    "Days: today, yesterday, -3d, mon, 14 jun, 2026-06-14; ~4/15 is about then.",
    "A rate is 4lb/k (per 1,000 sq ft) or 20g/m2, a total 12lb. A remark follows --",
    "A line that would do harm is saved only when it ends in !",
)


def help_picture(page: Page, standing: Standing, view: View, size: Size) -> Picture:
    """Everything one may want to know while looking at this page."""
    paper = Paper(view, size.width)
    wide = size.width >= 110
    _group(paper, f"THIS PAGE: {page.name.upper()}", page.keys, 16)
    paper.add()
    lines = examples(standing.lawn)
    _group(paper, "LINES TO TYPE", lines, min(48 if wide else 34, max(len(line) for line, _ in lines) + 2))
    for rule in LINE_RULES:
        paper.add((Span("   "), Span(rule, Ink.DIM)))
    paper.add()
    paper.heading("KEYS", text(f"{'':13}line empty{'':{34 if wide else 32}}line with text", Ink.DIM))
    for row in TABLE:
        first, second = wrapped(row.on_empty, 44 if wide else 41), wrapped(row.on_text, 52 if wide else 17)
        for at in range(max(len(first), len(second), 1)):
            key = shown(row.shown) if not at else ""
            a, b = (first[at] if at < len(first) else ""), (second[at] if at < len(second) else "")
            paper.add((Span("   "), Span(left(key, 15), Ink.KEY), Span(left(a, 45 if wide else 42)), Span(b, Ink.DIM)))
    paper.add()
    paper.heading("SIGNS")
    for glyphs, ink, says in LEGEND:
        paper.add((Span("   "), Span(left(glyphs, 9), ink), Span(says)))
    paper.add()
    paper.heading("PRODUCTS AGAINST WEEDS, INSECTS, DISEASE")
    for sentence in SENTENCES:
        for line in wrapped(sentence, size.width - 5):
            paper.add((Span("   "), Span(line)))
    return paper.picture(_bar("Help", "Esc closes   Up Down PgUp PgDn scroll", view, size.width), size, view)


def shown(keys: str) -> str:
    """The keys of a row as the help names them: of the digits those that have a page."""
    return " ".join(str(page.number) for page in pages()) if keys == DIGITS else keys


def help_rows(page: Page, standing: Standing, size: Size) -> int:
    """How far down the help can be scrolled."""
    tall = Size(size.width, 500)
    rows = help_picture(page, standing, View(as_of=standing.as_of), tall).rows
    return _below(rows, size)


def _below(rows: tuple[Row, ...], size: Size) -> int:
    """How many of these rows do not fit the page."""
    used = max(at for at, row in enumerate(rows) if row != EMPTY_ROW) + 1
    return max(0, used - size.height)


def _group(paper: Paper, name: str, pairs: tuple[tuple[str, str], ...], width: int) -> None:
    """Keys or lines in a column of that width, and what they do beside them; a longer one goes on into the other."""
    paper.heading(name)
    for key, says in pairs:
        if len(key) >= width:
            paper.add((Span("   "), Span(key, Ink.KEY), Span(f"  {says}")))
            continue
        for at, line in enumerate(wrapped(says, max(12, paper.width - width - 4)) or [""]):
            paper.add((Span("   "), Span(left(key if not at else "", width), Ink.KEY), Span(line)))


def _bar(words: str, tail: str, view: View, width: int) -> Row:
    """The first row: away from today it says so here too."""
    ink = Ink.AWAY if view.away else Ink.BAR
    words = f"{words} · {day_words(view)}" if view.away else words
    room = max(1, width - len(words) - len(tail) - 2)
    return (Span(f" {words}{' ' * room}{tail} ", ink),)


def word_help_rows(reading: Reading, preflight: Preflight, cursor: int, standing: Standing, size: Size) -> int:
    """How far down the help on the line can be scrolled."""
    view, tall = View(as_of=standing.as_of), Size(size.width, 500)
    return _below(word_help_picture(reading, preflight, cursor, standing, view, tall).rows, size)


def word_help_picture(
    reading: Reading, preflight: Preflight, cursor: int, standing: Standing, view: View, size: Size
) -> Picture:
    """The word at the cursor, the verb's form, and every flag the line would raise, in full; scrolled to view.top."""
    paper = Paper(view, size.width)
    span = next((span for span in reading.spans if span.start <= cursor <= span.end), None)
    if span is not None:
        paper.add()
        word = reading.text[span.start : span.end]
        paper.add((Span(" "), Span(word, Ink.STRONG), Span(f"  taken for: {span.role or 'nothing known'}", Ink.DIM)))
    if reading.problem is not None:
        _said(paper, "problem", str(reading.problem))
    if reading.words:
        _said(paper, "saves", reading.words)
    if reading.verb in VERBS:
        verb, _ = VERBS[reading.verb]
        paper.add()
        paper.heading(verb.name.upper(), text(f"  {verb.says}", Ink.DIM))
        paper.add((Span("   "), Span(verb.example, Ink.KEY)))
        for line, says in examples(standing.lawn):
            if line.split()[0] == verb.name and line != verb.example:
                paper.add((Span("   "), Span(line, Ink.KEY), Span(f"  {says}", Ink.DIM)))
    for flag in preflight.raised:
        paper.add()
        head = (Span(" "), Span(left(flag.level.value, 6), LEVEL_INKS[flag.level]), Span(flag.rule, Ink.STRONG))
        paper.add((*head, Span(f"  {flag.headline}")))
        for name, words in facts_of(flag, standing):
            _said(paper, name, words)
    for flag in preflight.cleared:
        paper.add()
        head = (Span(" "), Span(left("clears", 7), Ink.DONE), Span(flag.rule, Ink.STRONG))
        paper.add((*head, Span(f"  {flag.headline}")))
    if reading.draft is not None and shows_safety(reading.draft, standing.lawn):
        paper.add()
        for sentence in SENTENCES:
            _said(paper, "", sentence)
    bar = _bar("Help on the line", "Esc closes, the text stays   PgUp PgDn", view, size.width)
    return paper.picture(bar, size, view)


def _said(paper: Paper, name: str, words: str) -> None:
    for at, line in enumerate(wrapped(words, max(10, paper.width - 14))):
        paper.add((Span(f"   {left(name if not at else '', 8)} ", Ink.DIM), Span(line)))
