"""Being stopped from outside: by Ctrl-C, by a closed window, by the system.

Until a file is put in its place a stop ends the run where it is. From then on it is too late: what
remains is a moment's work, and the run goes on to say what it has made.
"""

import signal
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from types import FrameType
from typing import Any

from msgspec import Struct

_SIGNALS = ("SIGINT", "SIGTERM", "SIGHUP", "SIGBREAK")
"""Not every system has all of them; the last is Ctrl-Break on Windows."""

_SIGNALLED = 128
"""What shells add to the number of a signal for the status of what it ended (POSIX.1-2017, Shell
Command Language, 2.8.2: greater than 128)."""


Handler = Callable[[int, FrameType | None], Any] | int | None


class Stopped(BaseException):
    """The run was stopped before anything was written.

    No expected failure and no mistake, so that nothing on the way takes it for one.
    """

    def __init__(self, number: int) -> None:
        super().__init__("Stopped. Nothing was written, and nothing is left behind.")
        self.status = _SIGNALLED + number


class _Run(Struct):
    """Whether this run has been asked to stop, by which signal, and whether that is too late."""

    asked: int | None = None
    late: bool = False


_run = _Run()


@contextmanager
def stoppable() -> Iterator[None]:
    """Let signals raise `Stopped` in this context, other than those that are being ignored."""
    _run.asked, _run.late = None, False
    before = dict(_taken_over())
    try:
        yield
    except Exception:
        # until Python 3.12 a class that is being made turns whatever is raised into an error
        heed()
        raise
    finally:
        for number, handler in before.items():
            signal.signal(number, handler)


def heed() -> None:
    """Raise `Stopped` if a stop was asked for that came to nothing where it arrived."""
    if _run.asked is not None and not _run.late:
        raise Stopped(_run.asked)


@contextmanager
def finishing() -> Iterator[None]:
    """Put files in their place in this context; once they are there a stop is too late.

    Raises `Stopped` instead of beginning, where it was asked for.
    """
    heed()
    _run.late = True
    try:
        yield
    except BaseException:
        _run.late = False
        raise


def _taken_over() -> Iterator[tuple[int, Handler]]:
    for name in _SIGNALS:
        number = getattr(signal, name, None)
        # a background job, or one that is to outlive its window, must go on being left alone
        if number is None or signal.getsignal(number) in {signal.SIG_IGN, None}:
            continue
        try:
            yield number, signal.signal(number, _stop)
        except ValueError:
            # only the main thread of a program hears signals
            return


def _stop(number: int, _frame: FrameType | None) -> None:
    again = _run.asked is not None
    _run.asked = number
    if not _run.late:
        raise Stopped(number)
    if again:
        # whoever insists need not wait for a reader of what is told
        signal.signal(number, signal.SIG_DFL)
        signal.raise_signal(number)
