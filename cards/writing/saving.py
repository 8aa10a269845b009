"""Putting a new file beside others: whole or not at all, and never over one that is there."""

import os
import re
from collections.abc import Iterable, Iterator
from errno import ENAMETOOLONG
from itertools import count
from pathlib import Path

from cards.finding import UnusableFileError
from cards.writing.aside import patiently, settle, unfinished
from cards.writing.refusing import refusal

_MARKED = re.compile(r" marked( \d+)?$")


class FileTakenError(UnusableFileError):
    """There is a file of this name already."""


def marked_paths(file: Path) -> Iterator[Path]:
    """Yield the names for a marked copy of a file: beside it, `Shore marked.xlsx`.

    Where that is taken it is `Shore marked 2.xlsx`, and so on; a marked copy of a marked copy
    does not get a longer name.
    """
    stem = _MARKED.sub("", file.stem)
    for n in count(1):
        yield file.with_name(f"{stem} marked{f' {n}' if n > 1 else ''}.xlsx")


def save_first(paths: Iterable[Path], data: bytes) -> Path:
    """Write a file by the first of endless names that is not taken, and return its path.

    Raises `UnusableFileError` if it cannot be written; nothing is left behind then.
    """
    for path in paths:
        try:
            save_new(path, data)
        except FileTakenError:
            continue
        return path
    raise AssertionError  # there is no end of names


def save_new(path: Path, data: bytes) -> None:
    """Write a file that is not there yet.

    Raises `FileTakenError` if it is there, and `UnusableFileError` if it cannot be written;
    nothing is left behind then.
    """
    if os.path.lexists(path):
        raise FileTakenError(_taken(path))
    try:
        if not path.parent.is_dir():
            raise UnusableFileError(
                f"There is no folder {path.parent}. Make it first, or choose another."
            )
        _write_and_name(path, data)
    except FileExistsError as error:
        raise FileTakenError(_taken(path)) from error
    except OSError as error:
        why, mend = refusal(error)
        raise UnusableFileError(
            f"{path.name} could not be written: {why}. {mend}, or choose another folder."
        ) from error


def holds(path: Path, data: bytes) -> bool:
    """Say whether there is a file that holds just this.

    Raises `UnusableFileError` if it may not be read.
    """
    try:
        return path.is_file() and path.read_bytes() == data
    except OSError as error:
        if error.errno == ENAMETOOLONG:
            return False
        raise UnusableFileError(
            f"{path.name} may not be read. Close it in other programs, and try again."
        ) from error


def _taken(path: Path) -> str:
    return f"{path.name} is there already and was left as it is. Choose another name."


def _write_and_name(path: Path, data: bytes) -> None:
    with unfinished(path.parent) as aside:
        whole = aside / path.name
        whole.write_bytes(data)
        settle([whole])
        try:
            # Unlike renaming, this never replaces a file that has come into being meanwhile.
            os.link(whole, path)
        except FileExistsError:
            raise
        except OSError:
            # Some drives have no links.
            patiently(lambda: whole.rename(path))
