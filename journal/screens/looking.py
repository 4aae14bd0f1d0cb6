"""What changes the view and not the book: pages, days, the cursor, the help, the mouse."""

from __future__ import annotations

from contextlib import suppress
from datetime import timedelta

from journal.screens.drawing import LEAST_HEIGHT, LEAST_WIDTH
from journal.screens.help import help_rows, word_help_rows
from journal.screens.pages import page_numbered, pages
from journal.screens.picture import EMPTY_ROW, Ink
from journal.screens.rows import text
from journal.screens.view import View
from journal.screens.writing import Writing


class Looking(Writing):
    """The part of the acts that only looks."""

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
        self.shell.word_help, self.shell.word_top = not self.shell.word_help, 0
        self.shell.draw()

    def do_redraw(self, _: str) -> None:
        """Send everything to the terminal again."""
        self.shell.refresh(layout=True, repaint=True)
        self.shell.canvas.refresh()
        self.shell.foot.refresh()

    def clicked(self, x: int, y: int, *, twice: bool) -> None:
        """The cursor goes to what was clicked, to the very cell where there are cells; twice is Enter."""
        shell = self.shell
        if shell.standing is None or shell.view.help or shell.word_help:
            return
        for row, target in enumerate(shell.picture.targets):
            if target.row == y and target.left <= x < (target.right or shell.room.width):
                cell = target.cell_at(x)
                shell.look(shell.view.but(row=row) if cell < 0 else shell.view.but(row=row, cell=cell))
                if twice and shell.line.empty:
                    shell.acts.do("fetch")
                return

    def wheeled(self, way: int) -> None:
        """Three rows of the page or of the help; a cell of the season."""
        shell = self.shell
        if shell.standing is None or self._too_small() or shell.typed.finding:
            return
        if shell.view.help or shell.word_help:
            for _ in range(3):
                self._scroll_help("down" if way > 0 else "up")
            return
        view = shell.page.press("wheeldown" if way > 0 else "wheelup", shell.standing, shell.view, shell.room)
        if view is not None:
            shell.look(view)

    def _too_small(self) -> bool:
        room = self.shell.room
        return room.width < LEAST_WIDTH or room.height < LEAST_HEIGHT

    def _scroll_help(self, key: str) -> None:
        shell = self.shell
        if shell.standing is None:
            return
        typed, room = shell.typed, shell.room
        if shell.word_help:
            last = word_help_rows(typed.reading, typed.preflight, shell.line.cursor_position, shell.standing, room)
        else:
            last = help_rows(shell.page, shell.standing, room)
        steps = {"up": -1, "down": 1, "pageup": 2 - room.height, "pagedown": room.height - 2,
                 "home": -last, "end": last}  # fmt: skip
        if key not in steps:
            return
        if shell.word_help:
            shell.word_top = max(0, min(last, shell.word_top + steps[key]))
            shell.draw()
        else:
            shell.look(shell.view.but(top=max(0, min(last, shell.view.top + steps[key]))))

    def _judge_at(self, view: View) -> None:
        shell = self.shell
        shell.toast = EMPTY_ROW
        standing = shell.desk.session.standing(view.as_of)
        shell.view = view
        shell.show(standing)


def _at_top(view: View) -> View:
    return view.but(row=-1, cell=-1, top=0, open=False, help=False)
