"""`deck.json`: everything that is needed to print a deck, or one card of it, again."""

from decks.record.damage import DamagedRecordError
from decks.record.finding_it import RECORD, folder_of
from decks.record.pictures import picture_files, with_pictures
from decks.record.reading import read_record
from decks.record.writing import FORMAT, Colophon, write

__all__ = [
    "FORMAT",
    "RECORD",
    "Colophon",
    "DamagedRecordError",
    "folder_of",
    "picture_files",
    "read_record",
    "with_pictures",
    "write",
]
