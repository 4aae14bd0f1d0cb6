"""What each key does. The key table names these; nothing else is bound."""

from __future__ import annotations

import os
from collections.abc import Callable

from textual.app import SuspendNotSupported

from journal.line.token import unconfirmed
from journal.screens.answering import clearing_line
from journal.screens.editor import NotEdited, command, edited, remark_of, with_remark
from journal.screens.ink import BARE
from journal.screens.keys import ON_EMPTY, ON_TEXT
from journal.screens.looking import Looking
from journal.screens.picture import Ink, Span
from journal.screens.rows import text
from journal.screens.telling import snooze_line


class Acts(Looking):
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

    # The line

    def do_fetch(self, _: str) -> None:
        """The line of the row under the cursor; an entry's own line is there to be put right.

        A flag has the line of the step that clears it. What has no line opens.
        """
        shell = self.shell
        under = shell.picture.under
        if shell.view.help:
            return
        if under is None:
            self.say(text("  the cursor is on nothing yet: Up, Down or Tab put it on a row", Ink.DIM))
            return
        line = under.line
        if not line and under.flag and shell.standing is not None:
            line = clearing_line(shell.desk.session, shell.standing, under.flag)
        if not line:
            self.do_press("space")
            return
        shell.typed.amends = under.entry
        shell.line.put(unconfirmed(line))

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
        shell.recall.add(unconfirmed(reading.text))
        amends, shell.typed.amends = shell.typed.amends, ""
        shell.line.put("")
        shell.saving += 1
        shell.draw()
        self.write(shell.desk.save(reading), reading.text, amends)

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
        shell.typed.amends = ""
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

    def do_edit(self, _: str) -> None:
        """The remark of the line, in the user's own editor; whatever goes wrong, the line stays as it was."""
        line = self.shell.line
        if line.empty:
            self.say(text("  type the line first; Ctrl+O then writes its remark in your editor", Ink.DIM))
            return
        if self.shell.typed.finding:
            return
        try:
            # The framework hides NO_COLOR from what it starts; who asked for no colour asked it of all programs.
            environ = {**os.environ, **({"NO_COLOR": "1"} if self.shell.palette is BARE else {})}
            words = self._through_editor(remark_of(line.value), command(environ), environ)
        except NotEdited as problem:
            self.say((Span("! ", Ink.LOSS), Span(f"the line is as it was: {problem}")))
            return
        line.put(with_remark(line.value, words))

    def _through_editor(self, words: str, editor: list[str], environ: dict[str, str]) -> str:
        """Hand the terminal over. Raises NotEdited."""
        problem = None
        try:
            with self.shell.suspend():
                # What is raised in here would leave the terminal handed over.
                try:
                    words = edited(words, editor, environ)
                except NotEdited as error:
                    problem = error
        except SuspendNotSupported:
            raise NotEdited("this terminal can't be handed over to an editor") from None
        if problem is not None:
            raise problem
        return words

    # The book

    def do_strike(self, _: str) -> None:
        """Strike the entry under the cursor; on a flag, put the line there that hides it."""
        under, standing = self.shell.picture.under, self.shell.standing
        flags = standing.flags if standing is not None and under is not None and not under.entry else ()
        flag = next((one for one in flags if under is not None and one.id == under.flag), None)
        if flag is not None:
            self.shell.line.put(snooze_line(flag))
            return
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

    # Parts

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
        shell.line.put(unconfirmed(under.line))
