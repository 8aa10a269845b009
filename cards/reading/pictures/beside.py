"""Picture files beside the teacher's file: found there or nowhere, and read in bounds."""

from os.path import lexists
from pathlib import Path, PurePosixPath, PureWindowsPath
from unicodedata import normalize

from cards.finding import UnusablePictureError
from cards.reading.pictures.unusable import too_large

MOST_BYTES = 20_000_000
# Names that are devices to one system, in whatever folder and with whatever ending.
_DEVICES = frozenset(
    ("con", "prn", "aux", "nul", *(f"{port}{n}" for port in ("com", "lpt") for n in range(10)))
)


def is_beside(name: str, folder: Path) -> bool:
    """Say whether a name is that of a file in the folder, or in a folder inside it.

    A name that leads out of the folder, by whatever road, is not.
    """
    return _found(name, folder) is not None


def bytes_beside(name: str, folder: Path) -> bytes | None:
    """Return what a file in the folder holds, or None where `is_beside` says no.

    Raises `UnusablePictureError` if it is too large or may not be read.
    """
    path = _found(name, folder)
    if path is None:
        return None
    try:
        with path.open("rb") as file:
            data = file.read(MOST_BYTES + 1)
    except OSError as error:
        raise UnusablePictureError(
            "picture-unreadable",
            f"may not be read ({error.strerror})",
            "Close it in other programs, see that you may open it, and try again.",
        ) from error
    if len(data) > MOST_BYTES:
        raise too_large(f"has more than {MOST_BYTES // 1_000_000} MB")
    return data


def _found(name: str, folder: Path) -> Path | None:
    """Return where the file really is, every link followed, if that is inside the folder."""
    if not _stays_inside(name):
        return None
    try:
        # Most names are of nothing, and to follow links takes far longer than to see that. Some
        # programs write the accents of a file's name apart; the names of cells are composed.
        names = (spelt for spelt in (name, normalize("NFD", name)) if lexists(folder / spelt))
        spelt = next(names, None)
        if spelt is None:
            return None
        path = (folder / spelt).resolve()
        inside = path.is_relative_to(folder.resolve())
        return path if inside and path.is_file() else None
    except (OSError, ValueError):
        return None


def _stays_inside(name: str) -> bool:
    kinds = (PurePosixPath(name), PureWindowsPath(name))
    return not any(
        path.anchor or ".." in path.parts or any(map(_is_device, path.parts)) for path in kinds
    )


def _is_device(part: str) -> bool:
    return part.partition(".")[0].strip().casefold() in _DEVICES
