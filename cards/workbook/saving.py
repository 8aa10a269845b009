"""Putting a new file beside others: whole or not at all, and never over one that is there."""

import os
import re
import tempfile
from itertools import count
from pathlib import Path

from cards.finding import UnreadableFileError

_MARKED = re.compile(r" marked( \d+)?$")


def marked_path(file: Path) -> Path:
    """Return the place for the next marked copy of a file: beside it, `Shore marked.xlsx`.

    Where that is taken it is `Shore marked 2.xlsx`, and so on; a marked copy of a marked copy
    does not get a longer name.
    """
    stem = _MARKED.sub("", file.stem)
    names = (f"{stem} marked{f' {n}' if n > 1 else ''}.xlsx" for n in count(1))
    return next(place for name in names if not os.path.lexists(place := file.with_name(name)))


def save_new(path: Path, data: bytes) -> None:
    """Write a file that is not there yet.

    Raises `UnreadableFileError` if it is there, or cannot be written; nothing is left behind then.
    """
    if os.path.lexists(path):
        raise UnreadableFileError(_taken(path))
    if not path.parent.is_dir():
        raise UnreadableFileError(
            f"There is no folder {path.parent}. Make it first, or choose another."
        )
    try:
        _write_and_name(path, data)
    except FileExistsError as error:
        raise UnreadableFileError(_taken(path)) from error
    except OSError as error:
        raise UnreadableFileError(
            f"{path.name} could not be written ({error.strerror or error}). "
            "Make room, or choose another folder."
        ) from error


def _taken(path: Path) -> str:
    return f"{path.name} is there already and was left as it is. Choose another name."


def _write_and_name(path: Path, data: bytes) -> None:
    with tempfile.TemporaryDirectory(dir=path.parent, prefix=".fairdeal-") as unfinished:
        whole = Path(unfinished) / path.name
        whole.write_bytes(data)
        try:
            # Unlike renaming, this never replaces a file that has come into being meanwhile.
            os.link(whole, path)
        except FileExistsError:
            raise
        except OSError:
            # Some drives have no links.
            whole.rename(path)
