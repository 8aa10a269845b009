"""The sheet for a quick tally: how often each card was tried, and how often it was right."""

from itertools import pairwise

from cards.place import column_letters
from decks.deck import Deck
from decks.marks.forms import TALLY_SHEET, TALLY_TITLE, tally_rows
from decks.marks.sheet import cells
from decks.marks.sheet.cells import HEADED
from decks.marks.sheet.styles import SHARE, SUM_LABEL, result
from decks.marks.sheet.writing import Area, Book, Sheet, name_of, span

DIRECTIONS = (
    (
        "Tries: how often the card was answered. Right: how often the answer was right. "
        "Fill in as much as you have; the rest stays blank."
    ),
    "An answer that a team gives together counts once: one try, however many were in the team.",
)
_MORE_RIGHT = "FFF7D4CE"
_TAKEN = {
    "validate": "integer",
    "criteria": ">=",
    "value": 0,
    "error_title": "Not a mark",
    "error_message": "A whole number: 0 or more. Right cannot be more than tries.",
}


def add_tally_sheet(book: Book, deck: Deck) -> None:
    """Add the tally of a deck: a row for each card, or for each item where all have the same."""
    sheet = book.add_sheet(TALLY_SHEET)
    cells.top(sheet, f"{TALLY_TITLE}: {deck.name}", DIRECTIONS)
    headings = [("Card", 9.0), (deck.owner_word.capitalize(), 16.0), ("On the card", 66.0)]
    if deck.has_copies:
        del headings[1]
    for column, (text, width) in enumerate(headings, start=1):
        cells.heading(sheet, column, text, width=width, filled_in=False)
    tries = len(headings) + 1
    for column, text in enumerate(("Tries", "Right"), start=tries):
        cells.heading(sheet, column, text, width=10, filled_in=True)
    cells.heading(sheet, tries + 2, "Share right", width=14, filled_in=False)
    last = _rows(sheet, deck, tries)
    _sums(sheet, tries, last)
    _rules(sheet, (HEADED + 1, tries, last, tries + 1))
    sheet.keep_in_sight(row=HEADED, heads=HEADED)
    sheet.print_wide()


def _rows(sheet: Sheet, deck: Deck, tries: int) -> int:
    """Write the rows and return the number of the last."""
    rows = tally_rows(deck)
    begins = [False, *(one.owner != other.owner for one, other in pairwise(rows))]
    for number, (row, first) in enumerate(zip(rows, begins, strict=True), start=HEADED + 1):
        texts = (row.label, row.owner, row.text) if row.owner else (row.label, row.text)
        for column, text in enumerate(texts, start=1):
            cells.label(sheet, (number, column), text, first=first)
        cells.to_fill_in(sheet, (number, tries), first=first)
        cells.to_fill_in(sheet, (number, tries + 1), first=first)
        share = _share(tries, number)
        cells.figure(sheet, (number, tries + 2), share, result(SHARE), first=first)
        sheet.set_height(number, 20)
    return HEADED + len(rows)


def _share(tries: int, row: int) -> str:
    tried, right = name_of(row, tries), name_of(row, tries + 1)
    return f'=IF(N({tried})>0,N({right})/{tried},"")'


def _sums(sheet: Sheet, tries: int, last: int) -> None:
    row = HEADED - 1
    sheet.write_text((row, tries - 1), "All together", SUM_LABEL)
    for column in (tries, tries + 1):
        summed = span((HEADED + 1, column, last, column))
        cells.total(sheet, (row, column), f"=SUM({summed})")
    cells.figure(sheet, (row, tries + 2), _share(tries, row), result(SHARE, strong=True))
    sheet.set_height(row, 26)


def _rules(sheet: Sheet, filled_in: Area) -> None:
    """Take whole numbers only, and colour what cannot be."""
    first, tries, _last, right = filled_in
    sheet.take_only([filled_in], _TAKEN)
    cannot_be = f"=N(${column_letters(right)}{first})>N(${column_letters(tries)}{first})"
    sheet.tint_where(filled_in, cannot_be, _MORE_RIGHT)
