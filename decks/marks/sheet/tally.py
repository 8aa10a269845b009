"""The sheet for a quick tally: how often each card was tried, and how often it was right."""

from itertools import pairwise

from openpyxl import Workbook
from openpyxl.formatting.rule import Rule
from openpyxl.styles import PatternFill
from openpyxl.styles.differential import DifferentialStyle
from openpyxl.utils import get_column_letter
from openpyxl.worksheet.datavalidation import DataValidation
from openpyxl.worksheet.worksheet import Worksheet

from cards.workbook import look
from decks.deck import Deck
from decks.marks.forms import has_same_cards, owner_word, tally_rows
from decks.marks.sheet import cells
from decks.marks.sheet.cells import COUNT, HEADED, SHARE

TALLY = "Tally"
DIRECTIONS = (
    (
        "Tries: how often the card was answered. Right: how often the answer was right. "
        "Fill in as much as you have; the rest stays blank."
    ),
    "An answer that a team gives together counts once: one try, however many were in the team.",
)
_MORE_RIGHT = "FFF7D4CE"
_HINT = "A whole number: 0 or more. Right cannot be more than tries."


def add_tally_sheet(book: Workbook, deck: Deck) -> None:
    """Add the tally of a deck: a row for each card, or for each item where all have the same."""
    sheet: Worksheet = book.create_sheet(TALLY)
    cells.top(sheet, f"What was right: {deck.name}", DIRECTIONS)
    headings = [("Card", 9.0), (owner_word(deck), 16.0), ("On the card", 66.0)]
    if has_same_cards(deck):
        del headings[1]
    for column, (text, width) in enumerate(headings, start=1):
        cells.heading(sheet, column, text, width=width, filled_in=False)
    tries = len(headings) + 1
    for column, text in enumerate(("Tries", "Right"), start=tries):
        cells.heading(sheet, column, text, width=10, filled_in=True)
    cells.heading(sheet, tries + 2, "Share right", width=14, filled_in=False)
    last = _rows(sheet, deck, tries)
    _sums(sheet, tries, last)
    _rules(sheet, tries, last)
    look.keep_in_sight(sheet, row=HEADED)
    look.print_wide(sheet)
    sheet.sheet_view.showGridLines = False


def _rows(sheet: Worksheet, deck: Deck, tries: int) -> int:
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
        cells.formula(sheet, (number, tries + 2), share, SHARE, first=first)
        sheet.row_dimensions[number].height = 20
    return HEADED + len(rows)


def _share(tries: int, row: int) -> str:
    tried, right = (f"{get_column_letter(column)}{row}" for column in (tries, tries + 1))
    return f'=IF(N({tried})>0,N({right})/{tried},"")'


def _sums(sheet: Worksheet, tries: int, last: int) -> None:
    row = HEADED - 1
    bold = look.font(bold=True)
    look.write(sheet, (row, tries - 1), "All together", font=bold, alignment=_to_the_right())
    for column in (tries, tries + 1):
        letter = get_column_letter(column)
        total = f"=SUM({letter}{HEADED + 1}:{letter}{last})"
        cells.formula(sheet, (row, column), total, COUNT, strong=True)
    cells.formula(sheet, (row, tries + 2), _share(tries, row), SHARE, strong=True)
    sheet.row_dimensions[row].height = 26


def _to_the_right() -> object:
    return look.wrapped(horizontal="right", vertical="center")


def _rules(sheet: Worksheet, tries: int, last: int) -> None:
    """Take whole numbers only, and colour what cannot be."""
    first = HEADED + 1
    left, right = get_column_letter(tries), get_column_letter(tries + 1)
    filled = f"{left}{first}:{right}{last}"
    whole = DataValidation("whole", operator="greaterThanOrEqual", formula1="0", allow_blank=True)
    cells.only(sheet, [filled], whole, _HINT)
    tint = DifferentialStyle(fill=PatternFill(bgColor=_MORE_RIGHT))
    cannot_be = [f"N(${right}{first})>N(${left}{first})"]
    sheet.conditional_formatting.add(filled, Rule("expression", formula=cannot_be, dxf=tint))
