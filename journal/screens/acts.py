"""What each key does. The key table names these; nothing else is bound."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import suppress
from datetime import timedelta

from journal.screens.drawing import LEAST_HEIGHT, LEAST_WIDTH
from journal.screens.help import help_rows
from journal.screens.keys import ON_EMPTY, ON_TEXT
from journal.screens.pages import page_numbered, pages
from journal.screens.picture import EMPTY_ROW, Ink
from journal.screens.rows import text
from journal.screens.view import View
from journal.screens.writing import Writing


class Acts(Writing):
    """One method a deed, `do_` and its name; what stands behind the name in the key table is its argument."""

    def answer(self, key: str) -> bool:
        """Whether the key was used up here; what was not is text or editing."""
        shell = self.shell
        if shell.setup is not None:
            return self.set_up_key(key)
        act = (ON_EMPTY if shell.line.empty else ON_TEXT).get(key)
        if act is None:
            return False
        if shell.standing is None and act.partition(" ")[0] not in ("quit", "redraw", "how_to_quit"):
            return True
        return self.do(act)

    def do(self, act: str) -> bool:
        """Do what the key table says; False leaves the key to editing."""
        name, _, argument = act.partition(" ")
        deed: Callable[[str], bool | None] = getattr(self, f"do_{name}")
        return deed(argument) is not False

    # Looking

    def do_press(self, key: str) -> None:
        """A key of the page; of the help while that is open."""
        shell = self.shell
        if shell.view.help or shell.word_help:
            self._scroll_help(key)
            return
        if shell.standing is None or self._too_small():
            return
        view = shell.page.press(key, shell.standing, shell.view, shell.room)
        if view is not None:
            shell.toast = EMPTY_ROW
            shell.look(view)

    def do_page(self, digit: str) -> None:
        """That page; on it already, its own meaning or the next zone."""
        shell, number = self.shell, int(digit)
        shell.toast = EMPTY_ROW
        if page_numbered(number) is None:
            self.say(text(f"  there is no page {digit}", Ink.DIM))
        elif number != shell.view.page or shell.view.help:
            shell.look(_at_top(shell.view.but(page=number)))
        elif shell.standing is not None:
            view = shell.page.press(digit, shell.standing, shell.view, shell.room)
            names = ("", *shell.standing.lawn.zone_names)
            at = names.index(shell.view.zone) if shell.view.zone in names else 0
            shell.look(view or _at_top(shell.view.but(zone=names[(at + 1) % len(names)])))

    def do_turn(self, way: str) -> None:
        """The page before or after this one."""
        numbers = [page.number for page in pages()]
        at = numbers.index(self.shell.page.number)
        self.shell.look(_at_top(self.shell.view.but(page=numbers[(at + int(way)) % len(numbers)])))

    def do_as_of(self, days: str) -> None:
        """Judge another day; 0 is today."""
        view = self.shell.view
        if view.today is None:
            return
        with suppress(OverflowError):
            as_of = view.as_of + timedelta(int(days)) if days != "0" else view.today
            self._judge_at(view.but(as_of=as_of))

    def do_leave(self, _: str) -> None:
        """Close what is open, then drop the cursor, then come back to today."""
        shell, view = self.shell, self.shell.view
        shell.toast = EMPTY_ROW
        if shell.word_help:
            shell.word_help = False
            shell.draw()
        elif view.help:
            shell.look(view.but(help=False, top=0))
        elif view.open:
            shell.look(view.but(open=False))
        elif view.row >= 0 or view.cell >= 0:
            shell.look(view.but(row=-1, cell=-1, top=0))
        elif view.away:
            self.do_as_of("0")
        else:
            shell.look(view.but(top=0))

    def do_help(self, _: str) -> None:
        """Open or close the help over the page."""
        view = self.shell.view
        self.shell.look(view.but(help=not view.help, top=0))

    def do_word_help(self, _: str) -> None:
        """Open or close the help on the line."""
        self.shell.word_help = not self.shell.word_help
        self.shell.draw()

    def do_redraw(self, _: str) -> None:
        """Send everything to the terminal again."""
        self.shell.refresh(layout=True, repaint=True)
        self.shell.canvas.refresh()
        self.shell.foot.refresh()

    # The line

    def do_fetch(self, _: str) -> None:
        """The line of the row under the cursor; an entry's own line is there to be put right."""
        under = self.shell.picture.under
        if under is None or self.shell.view.help:
            return
        if not under.line:
            self.do_press("space")
            return
        self.shell.typed.amends = under.entry
        self.shell.line.put(under.line)

    def do_save(self, _: str) -> None:
        """Save what was read; a search takes what was found; a line found wanting stays."""
        shell = self.shell
        if shell.typed.finding:
            self._take_found()
            return
        shell.typed.update(shell.desk.session, shell.line.value, shell.line.cursor_position)
        reading = shell.typed.reading
        if reading.problem is not None or reading.draft is None or shell.typed.held_back:
            shell.typed.refused = True
            shell.draw()
            return
        shell.word_help = False
        shell.failure = ""
        shell.recall.add(reading.text)
        shell.line.put("")
        shell.saving += 1
        shell.draw()
        self.write(shell.desk.save(reading), reading.text)

    def do_put_aside(self, _: str) -> None:
        """Put the line on top of the older ones; first close the help on it."""
        shell = self.shell
        if shell.word_help:
            self.do_word_help("")
            return
        if not shell.typed.finding:
            shell.recall.add(shell.line.value)
            self.say(text("  put aside; Up brings it back", Ink.DIM))
        shell.failure = ""
        shell.view = shell.view.but(row=-1, open=False)
        shell.line.put("")
        self.give_back()

    def do_older(self, _: str) -> None:
        """An older line; in a search, the row above."""
        self._recall(self.shell.recall.older, "up")

    def do_newer(self, _: str) -> None:
        """A newer line; in a search, the row below."""
        self._recall(self.shell.recall.newer, "down")

    def do_take_right(self, _: str) -> bool:
        """At the end of the text take the ghost; elsewhere Right is Right."""
        line = self.shell.line
        if line.cursor_position < len(line.value) or not line.ghost:
            return False
        line.put(line.value + line.ghost)
        return True

    def do_complete(self, way: str) -> None:
        """Take the ghost word, then the next candidate."""
        line = self.shell.line
        taken = self.shell.typed.tab(line.value, line.cursor_position, int(way))
        if taken is not None:
            line.swap(*taken)

    # The book

    def do_strike(self, _: str) -> None:
        """Strike the entry under the cursor."""
        under = self.shell.picture.under
        if under is None or not under.entry:
            self.say(text("  the cursor is on no entry", Ink.DIM))
            return
        self.write(self.shell.desk.strike(under.entry))

    def do_undo(self, _: str) -> None:
        """Take back this window's newest change."""
        self.write(self.shell.desk.undo())

    def do_redo(self, _: str) -> None:
        """Do it again."""
        self.write(self.shell.desk.redo())

    # Leaving

    def do_how_to_quit(self, _: str) -> bool:
        """Copy what is marked; else say how to leave."""
        if not self.shell.line.selection.is_empty:
            return False
        self.say(text("  Ctrl+Q quits; a line not saved is kept for next time", Ink.DIM))
        return True

    def do_quit(self, _: str) -> None:
        """Leave once nothing is being written."""
        self.shell.run_worker(self.quit(), group="quit")

    # The mouse

    def clicked(self, x: int, y: int, *, twice: bool) -> None:
        """The cursor goes to what was clicked; twice is Enter on the empty line."""
        shell = self.shell
        if shell.standing is None or shell.view.help or shell.word_help:
            return
        for row, target in enumerate(shell.picture.targets):
            if target.row == y and target.left <= x < (target.right or shell.room.width):
                shell.look(shell.view.but(row=row))
                if twice and shell.line.empty:
                    self.do_fetch("")
                return

    def wheeled(self, way: int) -> None:
        """Three rows of the page, or of the help."""
        shell = self.shell
        if shell.standing is not None and not self._too_small():
            shell.look(shell.view.but(row=-1, top=max(0, shell.view.top + 3 * way)))

    # Parts

    def _too_small(self) -> bool:
        room = self.shell.room
        return room.width < LEAST_WIDTH or room.height < LEAST_HEIGHT

    def _scroll_help(self, key: str) -> None:
        shell = self.shell
        if shell.standing is None or shell.word_help:
            return
        last = help_rows(shell.page, shell.standing, shell.room)
        steps = {"up": -1, "down": 1, "pageup": 2 - shell.room.height, "pagedown": shell.room.height - 2,
                 "home": -last, "end": last}  # fmt: skip
        if key in steps:
            shell.look(shell.view.but(top=max(0, min(last, shell.view.top + steps[key]))))

    def _judge_at(self, view: View) -> None:
        shell = self.shell
        shell.toast = EMPTY_ROW
        standing = shell.desk.session.standing(view.as_of)
        shell.view = view
        shell.show(standing)

    def _recall(self, walk: Callable[[str], str | None], key: str) -> None:
        shell = self.shell
        if shell.typed.finding:
            rows = len(shell.picture.targets)
            at = shell.view.row + (1 if key == "down" else -1)
            shell.look(shell.view.but(row=max(0, min(rows - 1, at)) if rows else -1))
            return
        line = walk(shell.line.value)
        if line is not None:
            shell.walking = True
            shell.line.put(line)
            shell.walking = False

    def _take_found(self) -> None:
        shell = self.shell
        under = shell.picture.under or next(iter(shell.picture.targets), None)
        if under is None:
            return
        shell.view = shell.view.but(row=-1)
        shell.line.put("")
        shell.typed.amends = under.entry
        shell.line.put(under.line)


def _at_top(view: View) -> View:
    return view.but(row=-1, cell=-1, top=0, open=False, help=False)
