"""One at a time: who reads, changes and writes again holds a file beside it, and others wait."""

import os
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from cards.writing.aside import may_pass, taken

_TRIES = 250
_PAUSE = 0.02
"""Seconds between two tries; all of them are five seconds."""


@contextmanager
def held(file: Path) -> Iterator[None]:
    """Hold a file that is made for it, and removed in the end.

    The system lets go of it for a process that was killed. Raises `TimeoutError` where others hold
    it for too long, and another `OSError` where it cannot be made.
    """
    hold = _awaited(file)
    try:
        yield
    finally:
        _let_go(file, hold)


def _awaited(file: Path) -> int:
    for left in reversed(range(_TRIES)):
        try:
            hold = taken(file)
        except OSError as error:
            if not left or not may_pass(error):
                raise
        else:
            if hold is not None:
                return hold
        time.sleep(_PAUSE)
    raise TimeoutError


def _let_go(file: Path, hold: int) -> None:
    """Remove a file that is held, and let go of it.

    Windows removes no file that is open: there it goes after that, if no other has it open then.
    """
    removed = _removed(file)
    os.close(hold)
    if not removed:
        _removed(file)


def _removed(file: Path) -> bool:
    try:
        file.unlink()
    except OSError:
        return False
    return True
