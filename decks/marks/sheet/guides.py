"""The sheet for marked study guides: a column for each blank, a row for each paper."""

from openpyxl import Workbook
from openpyxl.utils import get_column_letter
from openpyxl.worksheet.datavalidation import DataValidation
from openpyxl.worksheet.worksheet import Worksheet

from cards.workbook import look
from decks.bank import Guide
from decks.deck import Deck
from decks.marks.forms import Blank, blank_heading, blanks_of, columns_of, papers_for
from decks.marks.sheet import cells
from decks.marks.sheet.cells import COUNT, HEADED, MEAN, SHARE

GUIDES = "Study guides"
EVERY = "all"
"""What stands in place of a paper's number in the row of sums."""

DIRECTIONS = (
    (
        "1 right, 0 wrong or left out, blank not marked. A column is a blank, numbered as on the "
        "guide; a row is a paper. Fill in as many as you have."
    ),
    (
        "Papers have numbers here, no names, in any order: what students got right can then be "
        "kept and passed on, and says nothing about any one of them."
    ),
)
_HINT = "1 if it is right, 0 if it is not; leave it blank where it was not marked."


def add_guides_sheet(book: Workbook, deck: Deck) -> None:
    """Add the sheet for a deck's study guides; none where the deck has none."""
    if not deck.guides:
        return
    sheet: Worksheet = book.create_sheet(GUIDES)
    cells.top(sheet, f"Marked study guides: {deck.name}", DIRECTIONS)
    teams = any(guide.team is not None for guide in deck.guides)
    first = _headings(sheet, deck, teams=teams)
    row, ranges = HEADED + 1, []
    for guide in deck.guides:
        row, filled = _guide(sheet, deck, guide, row, first)
        ranges += filled
    one_or_nought = DataValidation("list", formula1='"1,0"', allow_blank=True)
    cells.only(sheet, ranges, one_or_nought, _HINT)
    look.keep_in_sight(sheet, row=HEADED)
    sheet.freeze_panes = f"{get_column_letter(first)}{HEADED + 1}"
    look.print_wide(sheet)
    sheet.sheet_view.showGridLines = False


def _headings(sheet: Worksheet, deck: Deck, *, teams: bool) -> int:
    """Write the headings and return the column of the first blank."""
    told = [*([("Team", 16.0)] if teams else []), ("Paper", 9.0), ("Right", 9.0)]
    for column, (text, width) in enumerate(told, start=1):
        cells.heading(sheet, column, text, width=width, filled_in=False)
    first = len(told) + 1
    parts = any(len(guide.parts) > 1 for guide in deck.guides)
    for column, blank in enumerate(columns_of(deck), start=first):
        text = blank_heading(blank, parts=parts)
        cells.heading(sheet, column, text, width=8.5 if parts else 6.0, filled_in=True)
    sheet.row_dimensions[HEADED].height = 36 if parts else 24
    return first


def _guide(
    sheet: Worksheet, deck: Deck, guide: Guide, row: int, first: int
) -> tuple[int, list[str]]:
    """Write the rows of a guide from `row` on; return the next row, and the cells to fill in."""
    columns, own = columns_of(deck), blanks_of(guide)
    last = row + papers_for(deck)
    _sums(sheet, guide, (row, last), first, columns)
    for number in range(1, last - row + 1):
        at = row + number
        _names(sheet, at, guide, str(number))
        across = [get_column_letter(n) for n in (first, first + len(columns) - 1)]
        span = f"{across[0]}{at}:{across[1]}{at}"
        score = f'=IF(COUNT({span})=0,"",SUM({span}))'
        cells.formula(sheet, (at, first - 1), score, COUNT)
        for column, blank in enumerate(columns, start=first):
            dressed = cells.to_fill_in if blank in own else cells.none_here
            dressed(sheet, (at, column))
    ranges = [
        f"{get_column_letter(column)}{row + 1}:{get_column_letter(column)}{last}"
        for column, blank in enumerate(columns, start=first)
        if blank in own
    ]
    return last + 1, ranges


def _names(sheet: Worksheet, row: int, guide: Guide, paper: str, *, line: bool = False) -> None:
    texts = [paper] if guide.team is None else [guide.team, paper]
    for column, text in enumerate(texts, start=1):
        cells.label(sheet, (row, column), text, first=line)


def _sums(
    sheet: Worksheet, guide: Guide, rows: tuple[int, int], first: int, columns: tuple[Blank, ...]
) -> None:
    """Write the row above a guide's papers: the mean score, and the share right of each blank."""
    row, last = rows
    _names(sheet, row, guide, EVERY, line=True)
    own = blanks_of(guide)
    for column, blank in enumerate([None, *columns], start=first - 1):
        letter = get_column_letter(column)
        span = f"{letter}{row + 1}:{letter}{last}"
        mean = f'=IF(COUNT({span})=0,"",AVERAGE({span}))'
        if blank is None or blank in own:
            shape = SHARE if blank else MEAN
            cells.formula(sheet, (row, column), mean, shape, strong=True, first=True)
        else:
            cells.none_here(sheet, (row, column), first=True)
