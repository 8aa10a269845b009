"""The folder beside the workbook that holds its decks, one numbered folder each.

A deck's folder appears whole or not at all: it is filled under another name beside its place and
then renamed. A folder that is there is never touched.
"""

import tempfile
from collections.abc import Mapping
from contextlib import suppress
from pathlib import Path

from cards.finding import UnreadableFileError


def shelf_of(workbook: Path, out: Path | None = None) -> Path:
    """Return the folder for a workbook's decks: beside it, or in the folder `out`."""
    return (out or workbook.parent) / f"{workbook.stem} decks"


def next_number(shelf: Path) -> int:
    """Return one more than the highest number that anything on the shelf has."""
    if not shelf.is_dir():
        return 1
    taken = [int(entry.name) for entry in shelf.iterdir() if entry.name.isdecimal()]
    return max(taken, default=0) + 1


def put(shelf: Path, number: int, files: Mapping[str, bytes]) -> Path:
    """Put a deck's files on the shelf and return its folder.

    Raises `UnreadableFileError` where they cannot be written or the number has been taken in the
    meantime; nothing is left behind then.
    """
    place = shelf / f"{number:02}"
    new_shelf = not shelf.exists()
    try:
        shelf.mkdir(parents=True, exist_ok=True)
        _fill_and_rename(place, files)
    except OSError as error:
        if new_shelf:
            with suppress(OSError):
                shelf.rmdir()
        reason = error.strerror or str(error)
        raise UnreadableFileError(
            f"The deck could not be written to {place}: {reason}. Nothing was left behind. Make "
            "room or choose another folder with --out."
        ) from error
    return place


def _fill_and_rename(place: Path, files: Mapping[str, bytes]) -> None:
    with tempfile.TemporaryDirectory(
        dir=place.parent, prefix=f".{place.name}-", ignore_cleanup_errors=True
    ) as unfinished:
        folder = Path(unfinished) / place.name
        folder.mkdir()
        for name, content in files.items():
            (folder / name).write_bytes(content)
        if place.exists():
            raise FileExistsError(17, "a deck of this number has just been made; build again")
        folder.rename(place)
