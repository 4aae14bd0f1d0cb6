"""Keys without waiting: the terminal's input is looked at when the key parser asks for it.

A lone Esc can't be told from the start of a longer key until nothing follows. The stock input thread looks only every
100 ms; this one wakes as soon as the wait for the rest is over.
"""

import errno
import os
import selectors
from codecs import getincrementaldecoder

import textual.constants
from textual._xterm_parser import XTermParser
from textual.drivers.linux_driver import LinuxDriver
from textual.events import Key

ESC_WAIT = 0.025
"""Seconds after which an Esc that nothing follows is a key of its own."""

_LOOK = 0.1
_READ = 1 << 16


class QuickDriver(LinuxDriver):
    """The terminal driver for Linux and macOS with a quick Esc and a quick way out."""

    def run_input_thread(self) -> None:
        """Hand over events until the app stops or the terminal is gone."""
        parser = XTermParser(self._debug)
        decode = getincrementaldecoder("utf-8")("replace").decode
        with selectors.SelectSelector() as selector:
            selector.register(self.fileno, selectors.EVENT_READ)
            while not self.exit_event.is_set():
                pending = parser._timeout_time is not None
                if selector.select(ESC_WAIT + 0.001 if pending else _LOOK):
                    data = self._read()
                    if not data:
                        self.process_message(Key("ctrl+q", None))
                        return
                    if words := decode(data):
                        for message in parser.feed(words):
                            self.process_message(message)
                for message in parser.tick():
                    self.process_message(message)

    def _get_terminal_size(self) -> tuple[int, int]:
        """The terminal's own word; a COLUMNS left in the environment would never change."""
        try:
            size = os.get_terminal_size(self.fileno)
        except OSError:
            return super()._get_terminal_size()
        return (size.columns, size.lines) if size.columns and size.lines else super()._get_terminal_size()

    def _read(self) -> bytes:
        """What was typed; nothing when the terminal is gone."""
        try:
            return os.read(self.fileno, _READ)
        except OSError as error:
            if error.errno == errno.EIO:
                return b""
            raise


def hasten() -> None:
    """Let the key parser wait no longer than ESC_WAIT for the rest of a key."""
    textual.constants.ESCAPE_DELAY = ESC_WAIT  # type: ignore[misc]
