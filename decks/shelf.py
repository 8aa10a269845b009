"""The folder beside the workbook that holds its decks, one numbered folder each.

A deck's folder appears whole or not at all: it is filled under another name beside its place and
then renamed. A folder that is there is never touched.
"""

import tempfile
from collections.abc import Iterator, Mapping
from contextlib import contextmanager, suppress
from pathlib import Path

from cards.finding import UnreadableFileError


class NumberTakenError(UnreadableFileError):
    """A deck of this number has been made in the meantime."""


def shelf_of(workbook: Path, out: Path | None = None) -> Path:
    """Return the folder for a workbook's decks: beside it, or in the folder `out`."""
    return (out or workbook.parent) / f"{workbook.stem} decks"


def next_number(shelf: Path) -> int:
    """Return one more than the highest number that anything on the shelf has.

    Raises `UnreadableFileError` where the shelf may not be looked into.
    """
    with _told(shelf):
        if not shelf.exists():
            return 1
        taken = [int(entry.name) for entry in shelf.iterdir() if entry.name.isdecimal()]
        return max(taken, default=0) + 1


def put(shelf: Path, number: int, files: Mapping[str, bytes]) -> Path:
    """Put a deck's files on the shelf and return its folder.

    A name may lead into a folder of the deck's: `pictures/crab.png`.
    Raises `NumberTakenError` where the number has been taken in the meantime, and
    `UnreadableFileError` where the files cannot be written; nothing is left behind then.
    """
    place = shelf / f"{number:02}"
    with (
        _told(shelf),
        _made(shelf),
        tempfile.TemporaryDirectory(
            dir=shelf, prefix=f".{place.name}-", ignore_cleanup_errors=True
        ) as unfinished,
    ):
        folder = Path(unfinished) / place.name
        folder.mkdir()
        for name, content in files.items():
            (folder / name).parent.mkdir(exist_ok=True)
            (folder / name).write_bytes(content)
        _rename(folder, place)
    return place


def _rename(folder: Path, place: Path) -> None:
    taken = f"Deck {place.name} has just been made by another build. Build again."
    if place.exists():
        raise NumberTakenError(taken)
    try:
        folder.rename(place)
    except OSError as error:
        if place.exists():
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
def _told(shelf: Path) -> Iterator[None]:
    """Turn what the system says into a line that says what to do."""
    try:
        yield
    except (FileExistsError, NotADirectoryError) as error:
        raise UnreadableFileError(
            f"A file is in the way of the folder “{shelf.name}” in {shelf.parent}. Move it, or "
            "choose another folder with --out. Nothing was left behind."
        ) from error
    except OSError as error:
        raise UnreadableFileError(
            f"No deck could be written in {shelf}: {error.strerror or error}. Make room there or "
            "choose another folder with --out. Nothing was left behind."
        ) from error
