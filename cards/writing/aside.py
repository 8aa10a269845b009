"""Files on their way to their place: written aside, and moved there when they are whole.

What is written aside lies in a folder that is held while its writer lives. A writer that was
killed holds nothing any more, so that the next one can clear away what it left; the computer's
clock is not asked.
"""

import os
import shutil
import sys
import tempfile
import time
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager, suppress
from errno import EACCES, EAGAIN, EDEADLK
from pathlib import Path

if sys.platform == "win32":
    import msvcrt

    def _lock(descriptor: int) -> None:
        msvcrt.locking(descriptor, msvcrt.LK_NBLCK, 1)
else:
    import fcntl

    def _lock(descriptor: int) -> None:
        fcntl.flock(descriptor, fcntl.LOCK_EX | fcntl.LOCK_NB)


_PREFIX = ".fairdeal-"
"""What an unfinished folder's name begins with; it is hidden where a dot hides."""

_HOLD = "being-written"
"""The file in an unfinished folder that is locked while its writer lives."""

_TRIES = 20
_PAUSE = 0.1
"""Seconds between two tries; all of them are the two seconds that a virus scanner may need."""

_DENIED = 5
_IN_USE = frozenset({32, 33})
"""What Windows says where another program has a file open: sharing and lock violation. While a
folder is renamed it says no more than that access is denied (Microsoft, System Error Codes 0 to
499)."""


@contextmanager
def unfinished(beside: Path) -> Iterator[Path]:
    """Yield a new folder to write into, in the folder `beside`; it is removed in the end.

    What killed writers left there goes as well. Raises `OSError` where it cannot be made.
    """
    _clear(beside)
    folder, hold = _begun(beside)
    try:
        yield folder
    finally:
        _remove(folder, hold)


def settle(files: Iterable[Path]) -> None:
    """Wait until files are on the disk, so that a power cut leaves them whole.

    All are waited for at once, as a disk writes many nearly as soon as one. Raises `OSError`.
    """
    from concurrent.futures import ThreadPoolExecutor  # noqa: PLC0415 (only where files are made)

    with ThreadPoolExecutor() as waiting:
        list(waiting.map(_settle_one, files))


def _settle_one(file: Path) -> None:
    with file.open("r+b") as written:
        os.fsync(written.fileno())


def patiently(move: Callable[[], object]) -> None:
    """Move something, with a few more tries while Windows says that another program reads it."""
    for _ in range(_TRIES - 1):
        try:
            move()
        except OSError as error:
            if not may_pass(error):
                raise
            time.sleep(_PAUSE)
        else:
            return
    move()


def is_in_use(error: OSError) -> bool:
    """Say whether another program has the file open; only Windows minds."""
    return getattr(error, "winerror", None) in _IN_USE


def may_pass(error: OSError) -> bool:
    """Say whether it may work in a moment; only Windows refuses what others do just then."""
    return is_in_use(error) or getattr(error, "winerror", None) == _DENIED


def lock(hold: int, *, if_no_locks: bool) -> bool:
    """Lock an open file and say whether it worked; `if_no_locks` where the drive knows none."""
    try:
        _lock(hold)
    except OSError as error:
        return if_no_locks and error.errno not in {EACCES, EAGAIN, EDEADLK}
    return True


def taken(file: Path) -> int | None:
    """Return a file, open and locked, or None where another holds it or has just removed it.

    Raises `OSError` if it cannot be opened, or not be looked at.
    """
    hold, is_ours = os.open(file, os.O_RDWR | os.O_CREAT), False
    try:
        is_ours = lock(hold, if_no_locks=True) and is_there(file, hold)
    finally:
        if not is_ours:
            os.close(hold)
    return hold if is_ours else None


def is_there(file: Path, hold: int) -> bool:
    """Say whether an open file is still the one of this name."""
    with suppress(FileNotFoundError):
        return os.path.samestat(os.fstat(hold), file.stat())
    return False


def _begun(beside: Path) -> tuple[Path, int]:
    """Make a folder and hold it; another writer may have taken it for one that was left."""
    for _ in range(_TRIES):
        folder = Path(tempfile.mkdtemp(dir=beside, prefix=_PREFIX))
        with suppress(FileNotFoundError):
            hold = taken(folder / _HOLD)
            if hold is not None:
                return folder, hold
    raise FileNotFoundError


def _clear(beside: Path) -> None:
    """Remove the folders whose writers hold them no more; one without a hold, only if empty."""
    with suppress(OSError):
        for folder in sorted(beside.glob(f"{_PREFIX}*")):
            with suppress(OSError):
                _clear_one(folder)


def _clear_one(folder: Path) -> None:
    if folder.is_symlink():
        return
    try:
        hold = os.open(folder / _HOLD, os.O_RDWR)
    except FileNotFoundError:
        folder.rmdir()
        return
    if lock(hold, if_no_locks=False):
        _remove(folder, hold)
    else:
        os.close(hold)


def _remove(folder: Path, hold: int) -> None:
    """Remove a folder that is held, and let go of it.

    Windows removes no file that is open, so that the last one goes after that.
    """
    shutil.rmtree(folder, ignore_errors=True)
    os.close(hold)
    shutil.rmtree(folder, ignore_errors=True)
