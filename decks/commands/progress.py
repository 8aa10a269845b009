"""What a long run is doing, on one line of the terminal, which goes when the run ends."""

import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from threading import Event, Thread
from typing import TextIO

from msgspec import Struct, field

from decks.commands.stopping import heed
from decks.steps import Tell

AFTER = 1.0
"""Seconds until there is anything to be seen; most runs are over by then."""

EVERY = 0.1
"""Seconds between two looks at what is being done."""


@contextmanager
def progress() -> Iterator[Tell]:
    """Yield what tells of the steps in this context, if a person is looking on.

    It also ends the run at the next step after a stop that was lost on its way.
    """
    if not _is_seen(sys.stderr):
        yield lambda _step: heed()
        return
    line = _Line(sys.stderr)
    painting = Thread(target=line.paint, daemon=True)
    painting.start()
    try:
        yield line.tell
    finally:
        line.ended.set()
        painting.join()


def _is_seen(stream: TextIO | None) -> bool:
    """Say whether a stream is a terminal; there is none where it was closed."""
    try:
        return stream is not None and stream.isatty()
    except ValueError:
        return False


class _Line(Struct):
    """The line, painted by a thread of its own so that long steps are seen as well."""

    stream: TextIO
    step: str = ""
    ended: Event = field(default_factory=Event)

    def tell(self, step: str) -> None:
        heed()
        self.step = step

    def paint(self) -> None:
        # a terminal that has gone away must not stop a deck
        with suppress(OSError, ValueError):
            shown = ""
            wait = AFTER
            while not self.ended.wait(wait):
                shown = self._show(self.step, shown)
                wait = EVERY
            self._show("", shown)

    def _show(self, step: str, shown: str) -> str:
        """Write a step over the one that is shown, and return what is seen of it."""
        seen = step[: self._columns() - 1]
        if seen != shown:
            blank = " " * len(shown)
            self.stream.write(f"\r{blank}\r{seen}")
            self.stream.flush()
        return seen

    def _columns(self) -> int:
        with suppress(OSError):
            return os.get_terminal_size(self.stream.fileno()).columns or 80
        return 80
