"""The folder beside the workbook that holds its decks, one numbered folder each.

A deck's folder appears whole or not at all: it is filled under another name beside its place and
then renamed. A folder that is there is never touched.
"""

import os
from collections.abc import Iterator, Mapping
from contextlib import contextmanager, suppress
from pathlib import Path

from cards.finding import UnusableFileError
from cards.writing.aside import patiently, settle, unfinished
from cards.writing.refusing import refusal

LONGEST_NUMBER = 4
"""How many digits the number of a deck may have; a longer name is a date, or chance."""


class NumberTakenError(UnusableFileError):
    """A deck of this number has been made in the meantime."""


def shelf_of(workbook: Path, out: Path | None = None) -> Path:
    """Return the folder for a workbook's decks: beside it, or in `out`; `~` is the user's own."""
    if out and out.parts[:1] == ("~",):
        out = out.expanduser()
    return (out or workbook.parent) / f"{workbook.stem} decks"


def is_number(name: str) -> bool:
    """Say whether a folder of this name is called as a deck is."""
    return name.isdecimal() and len(name) <= LONGEST_NUMBER


def next_number(shelf: Path, after: int = 0) -> int:
    """Return one more than the highest number that anything on the shelf has, and than `after`.

    Raises `UnusableFileError` where the shelf may not be looked into.
    """
    with _explained(shelf):
        names = {entry.name for entry in shelf.iterdir()} if shelf.exists() else set()
    taken = [int(name) for name in names if is_number(name)]
    number = max([*taken, after]) + 1
    while _name(number) in names:
        number += 1
    return number


def put(shelf: Path, number: int, files: Mapping[str, bytes]) -> Path:
    """Put a deck's files on the shelf and return its folder.

    A name may lead into a folder of the deck's: `pictures/crab.png`.
    Raises `NumberTakenError` where the number has been taken in the meantime, and
    `UnusableFileError` where the files cannot be written; nothing is left behind then.
    """
    place = shelf / _name(number)
    with _explained(shelf), _made(shelf), unfinished(shelf) as aside:
        folder = aside / place.name
        folder.mkdir()
        for name, content in files.items():
            (folder / name).parent.mkdir(exist_ok=True)
            (folder / name).write_bytes(content)
        settle(folder / name for name in files)
        _rename(folder, place)
    return place


def _name(number: int) -> str:
    return f"{number:02}"


def _rename(folder: Path, place: Path) -> None:
    taken = f"Deck {place.name} has just been made by another build. Build again."
    if os.path.lexists(place):
        raise NumberTakenError(taken)
    try:
        patiently(lambda: folder.rename(place))
    except OSError as error:
        if os.path.lexists(place):
            raise NumberTakenError(taken) from error
        raise


@contextmanager
def _made(shelf: Path) -> Iterator[None]:
    """Make the shelf and the folders above it; if all fails, remove those that were made."""
    missing = [folder for folder in (shelf, *shelf.parents) if not folder.exists()]
    try:
        shelf.mkdir(parents=True, exist_ok=True)
        yield
    except BaseException:
        for folder in missing:
            with suppress(OSError):
                folder.rmdir()
        raise


@contextmanager
def _explained(shelf: Path) -> Iterator[None]:
    """Turn what the system says into a line that says what to do."""
    try:
        yield
    except (FileExistsError, NotADirectoryError) as error:
        raise UnusableFileError(
            f"A file is in the way of the folder “{shelf.name}” in "
            f"“{shelf.resolve().parent.name}”. Move it, or choose another folder with --out. "
            "Nothing was left behind."
        ) from error
    except OSError as error:
        why, mend = refusal(error)
        raise UnusableFileError(
            f"No deck could be written in {shelf}: {why}. {mend}, or choose another folder with "
            "--out. Nothing was left behind."
        ) from error
