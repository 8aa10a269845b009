"""The command line: it begins and ends here, and can be stopped from its first moment."""

import atexit
import gc
import os
import sys

from cards.finding import FairdealError, UnusableFileError
from decks.commands.saying import (
    about_output,
    drop_what_is_unsaid,
    is_about_output,
    say_last,
    suit_any_terminal,
)
from decks.commands.stopping import Stopped, stoppable


def main() -> None:
    """Run the command line; an expected failure ends in one line and a status.

    0 done, 1 the content has errors, 2 the call is wrong, 3 a file could not be read or written;
    130 or 143 where the run was stopped.
    """
    # Hardly anything of what a run makes goes out of use in circles, which is what Python would
    # look for a hundred times: it takes a fourteenth of the run and frees no memory worth the name.
    gc.set_threshold(20_000, 50, 1_000)
    # In the end Python would look through all of it once more, which takes as long again.
    atexit.register(gc.freeze)
    suit_any_terminal()
    # reportlab would write it into every PDF, and the same content is to give the same bytes
    os.environ.pop("SOURCE_DATE_EPOCH", None)
    try:
        with stoppable():
            from decks.commands.app import app  # noqa: PLC0415 (it takes long enough to be stopped)

            app()
    except Stopped as stop:
        say_last(str(stop))
        sys.exit(stop.status)
    except FairdealError as error:
        say_last(str(error))
        sys.exit(status_of(error))
    except MemoryError:
        say_last(
            "There is not memory enough. Close other programs, or use fewer rows and pictures."
        )
        sys.exit(3)
    except OSError as error:
        if not is_about_output(error):
            raise
        drop_what_is_unsaid()
        say_last(about_output(error))
        sys.exit(3)


def status_of(error: FairdealError) -> int:
    """Return the exit status for an expected failure."""
    from decks.settings import UsageError  # noqa: PLC0415 (loaded by then, or there is none)

    if isinstance(error, UsageError):
        return 2
    return 3 if isinstance(error, UnusableFileError) else 1
