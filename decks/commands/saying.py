"""What a command says, wherever it goes: a terminal, a file, or a reader who has heard enough."""

import os
import sys
from contextlib import suppress
from errno import EINVAL, ENOENT, EPIPE
from io import TextIOWrapper
from typing import TextIO

_GONE = frozenset({EPIPE, EINVAL})
"""What systems say where nobody reads on; Windows has the second for it."""

_UNSEEN = {
    number: f"\\u{number:04x}"
    for number in (*range(0x20), *range(0x7F, 0xA0), *range(0x202A, 0x202F), *range(0x2066, 0x206A))
    if chr(number) not in "\t\n"
}
"""Signs that steer a terminal, or turn round what stands beside them, as JSON writes them."""


def suit_any_terminal() -> None:
    """Let a letter that a terminal lacks be written by its number.

    It must not stop a deck that is already made. A stream that was closed stays silent.
    """
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, TextIOWrapper):
            stream.reconfigure(errors="backslashreplace")


def say(*lines: str) -> None:
    """Print lines, with what steers a terminal by its number: a cell may have held it.

    Where the reader has gone, as `head` does, nobody needs the rest of them.
    """
    try:
        for line in lines:
            _write(sys.stdout, line)
    except OSError as error:
        if error.errno not in _GONE:
            raise
        drop_what_is_unsaid()


def say_last(line: str) -> None:
    """Print a run's last line where errors go; where nothing can be printed the status says it."""
    with suppress(OSError):
        _write(sys.stderr, f"fairdeal: {line}")


def _write(stream: TextIO | None, line: str) -> None:
    """Write a line; there is no stream where it was closed before the run."""
    if stream is not None:
        stream.write(f"{line.translate(_UNSEEN)}\n")
        stream.flush()


def drop_what_is_unsaid() -> None:
    """Lead what is left in standard output into nothing, or Python tries once more in the end."""
    with suppress(OSError, ValueError):
        nowhere = os.open(os.devnull, os.O_WRONLY)
        os.dup2(nowhere, sys.stdout.fileno())
        os.close(nowhere)


def is_about_output(error: OSError) -> bool:
    """Say whether it was what the run says that could not be written: such have no file's name.

    Nor has the folder that the run was started in, where that is gone.
    """
    return error.filename is None


def about_output(error: OSError) -> str:
    """Return what to say of such an error."""
    if error.errno == ENOENT:
        return "The folder that this was started in is gone. Go to another one, and try again."
    return f"What there is to say could not be written ({error.strerror or error})."
