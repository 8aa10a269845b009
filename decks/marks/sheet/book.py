"""The whole marks workbook, as bytes."""

from msgspec.structs import astuple

from decks.deck import Deck
from decks.lesson import Called

MARKS_FILE = "marks.xlsx"


def marks_workbook(deck: Deck) -> bytes:
    """Return the workbook for a deck's marks, as the bytes of an .xlsx file.

    It has a tally, the papers of the study guides, and the score of called questions, as far as
    the deck has them. The same deck gives the same bytes. Nothing in it is a formula but our own
    sums, and those come to nothing as long as nothing is filled in.
    """
    from decks.marks.sheet.guides import add_guides_sheet  # noqa: PLC0415 (loads XlsxWriter)
    from decks.marks.sheet.score import add_score_sheet  # noqa: PLC0415 (as above)
    from decks.marks.sheet.tally import add_tally_sheet  # noqa: PLC0415 (as above)
    from decks.marks.sheet.writing import Book  # noqa: PLC0415 (as above)

    book = Book()
    add_tally_sheet(book, deck)
    add_guides_sheet(book, deck)
    if isinstance(deck.lesson, Called) and any(astuple(deck.points)):
        add_score_sheet(book, deck, deck.lesson)
    return book.finished()
