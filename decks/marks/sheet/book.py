"""The whole marks workbook, as bytes."""

from dataclasses import astuple
from typing import TYPE_CHECKING

from decks.deck import Deck
from decks.lesson import Called

if TYPE_CHECKING:
    from openpyxl import Workbook

MARKS_FILE = "marks.xlsx"

_NOTHING = {True: ("n", "0"), False: ("str", "")}
"""What a formula of ours comes to as long as nothing is filled in: a sum, or anything else."""


def marks_workbook(deck: Deck) -> bytes:
    """Return the workbook for a deck's marks, as the bytes of an .xlsx file.

    It has a tally, the papers of the study guides, and the score of called questions, as far as
    the deck has them. The same deck gives the same bytes. Nothing in it is a formula but our own
    sums.
    """
    from openpyxl import Workbook  # noqa: PLC0415 (it takes long to load)

    from cards.workbook.package import packed  # noqa: PLC0415 (as above)
    from cards.workbook.results import putting  # noqa: PLC0415 (as above)
    from decks.marks.sheet.guides import add_guides_sheet  # noqa: PLC0415 (as above)
    from decks.marks.sheet.tally import add_tally_sheet  # noqa: PLC0415 (as above)

    book = Workbook()
    book.remove(book.worksheets[0])
    add_tally_sheet(book, deck)
    add_guides_sheet(book, deck)
    results = {sheet.title: _while_blank(book, sheet.title) for sheet in book.worksheets}
    results |= _score(book, deck)
    book.active = 0
    book.properties.creator = "Fairdeal"
    return packed(book, putting(results, book.sheetnames))


def _while_blank(book: "Workbook", name: str) -> dict[str, tuple[str, str]]:
    """Return what the formulas of a sheet come to, for programs that do not reckon."""
    return {
        cell.coordinate: _NOTHING[str(cell.value).startswith("=SUM")]
        for row in book[name].iter_rows()
        for cell in row
        if cell.data_type == "f"
    }


def _score(book: "Workbook", deck: Deck) -> dict[str, dict[str, tuple[str, str]]]:
    """Add the sheet that adds up points, where questions are called for points."""
    if not isinstance(deck.lesson, Called) or not any(astuple(deck.recipe.points)):
        return {}
    from decks.marks.score import NAME, add_score_sheet  # noqa: PLC0415 (as above)

    return {NAME: add_score_sheet(book, deck, deck.lesson)}
