"""Records that cannot be read, and what to do then."""

from pathlib import Path

from cards.finding import UnusableFileError

PUT_BACK = (
    "Put it back from a copy, or build the deck again: the same workbook with the same seed gives "
    "the same deck."
)


class DamagedRecordError(UnusableFileError):
    """A record, or a picture of its, that is damaged, missing or not ours; it is left alone.

    `wrong` goes on from the file's name: “is damaged”.
    """

    def __init__(self, path: Path, wrong: str, mend: str = PUT_BACK) -> None:
        super().__init__(f"{path} {wrong}. {mend}")
        self.path = path
        self.wrong = wrong
        self.mend = mend


class WrongValueError(ValueError):
    """A value in a record that cannot be, or that is lacking.

    `where` leads to it from outside: names of fields, and numbers of entries from 1. It holds no
    text of the record, which may be anything.
    """

    where: tuple[str | int, ...] = ()


DAMAGE = (
    ValueError,
    TypeError,
    KeyError,
    AttributeError,
    IndexError,
    OverflowError,
    RecursionError,
)
"""What a value that cannot be there leads to, wherever in a record it stands."""


def met_at(place: str | int, error: Exception) -> WrongValueError:
    """Return what was wrong, told as wrong at a place of the record."""
    wrong = WrongValueError(place)
    wrong.where = (place, *getattr(error, "where", ()))
    return wrong


def damaged(error: Exception) -> str:
    """Return what is wrong with a record, going on from the file's name."""
    where = getattr(error, "where", ())
    told = " ".join(f"“{one}”" if isinstance(one, str) else str(one) for one in where)
    return f"is damaged{f' at {told}' if told else ''} and was left as it is"
