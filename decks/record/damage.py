"""Records that cannot be read, and what to do then."""

from pathlib import Path

from cards.finding import UnreadableFileError

PUT_BACK = (
    "Put it back from a copy, or build the deck again: the same workbook with the same seed gives "
    "the same deck."
)


class DamagedRecordError(UnreadableFileError):
    """A record, or a picture of its, that is damaged, missing or not ours; it is left alone.

    `wrong` goes on from the file's name: “is damaged”.
    """

    def __init__(self, path: Path, wrong: str, mend: str = PUT_BACK) -> None:
        super().__init__(f"{path} {wrong}. {mend}")
        self.path = path
        self.wrong = wrong
        self.mend = mend


class WrongValueError(ValueError):
    """A value in a record that cannot be."""
