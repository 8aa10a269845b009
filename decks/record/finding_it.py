"""Where the record of a deck is, and its bytes, within bounds."""

from pathlib import Path

from cards.folders import is_folder
from decks.record.damage import PUT_BACK, DamagedRecordError

RECORD = "deck.json"

MOST_BYTES = 32 << 20
"""Far more than a record of twelve teams with a thousand cards each: some fifty thousand cards."""

TOO_LARGE = "is far larger than it can be"


def folder_of(named: Path) -> Path:
    """Return a deck's folder, be it named itself or by its record or another file in it."""
    try:
        in_it = named.name == RECORD or (named.is_file() and (named.parent / RECORD).is_file())
    except OSError:
        # whoever reads the record will say what is wrong with the name
        return named
    return named.parent if in_it and not is_folder(named) else named


def bytes_of(path: Path) -> bytes:
    """Return the bytes of a file of a deck's.

    Raises `DamagedRecordError` where it is no file, too large, or may not be read.
    """
    try:
        if not path.is_file():
            raise DamagedRecordError(path, "is missing", _mend(path))
        if path.stat().st_size > MOST_BYTES:
            raise DamagedRecordError(path, TOO_LARGE)
        return path.read_bytes()
    except (OSError, ValueError) as error:
        why = getattr(error, "strerror", None) or error
        wrong = f"could not be read ({why})"
        raise DamagedRecordError(path, wrong, "Let it be read, or copy it to here.") from error


def _mend(path: Path) -> str:
    if path.name != RECORD:
        return PUT_BACK
    return "Name the folder of a deck, such as “Saltmarsh week decks/01”, which has its record."
