"""The sheet for marked study guides: a column for each blank, a row for each paper."""

from itertools import groupby

from decks.bank import Guide
from decks.deck import Deck
from decks.marks.forms import GUIDES_TITLE, Blank, blank_heading, blanks_of, columns_of, papers_for
from decks.marks.sheet import cells
from decks.marks.sheet.cells import HEADED
from decks.marks.sheet.styles import COUNT, MEAN, SHARE, result
from decks.marks.sheet.writing import Area, Book, Sheet, span

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
_TAKEN = {
    "validate": "list",
    "source": ["1", "0"],
    "error_title": "Not a mark",
    "error_message": "1 if it is right, 0 if it is not; leave it blank where it was not marked.",
}


def add_guides_sheet(book: Book, deck: Deck) -> None:
    """Add the sheet for a deck's study guides; none where the deck has none."""
    if not deck.guides:
        return
    sheet = book.add_sheet(GUIDES)
    cells.top(sheet, f"{GUIDES_TITLE}: {deck.name}", DIRECTIONS)
    columns = columns_of(deck)
    first = _headings(sheet, deck, columns)
    row, papers = HEADED + 1, papers_for(deck)
    filled_in: list[Area] = []
    for guide in deck.guides:
        filled_in += _guide(sheet, guide, (row, row + papers), first, columns)
        row += papers + 1
    if filled_in:
        sheet.take_only(filled_in, _TAKEN)
    sheet.keep_in_sight(row=HEADED, column=first - 1, heads=HEADED)
    sheet.print_wide()


def _headings(sheet: Sheet, deck: Deck, columns: tuple[Blank, ...]) -> int:
    """Write the headings and return the column of the first blank."""
    teams = any(guide.team is not None for guide in deck.guides)
    told = [*([("Team", 16.0)] if teams else []), ("Paper", 9.0), ("Right", 9.0)]
    for column, (text, width) in enumerate(told, start=1):
        cells.heading(sheet, column, text, width=width, filled_in=False)
    first = len(told) + 1
    parts = any(len(guide.parts) > 1 for guide in deck.guides)
    for column, blank in enumerate(columns, start=first):
        text = blank_heading(blank, parts=parts)
        cells.heading(sheet, column, text, width=8.5 if parts else 6.0, filled_in=True)
    sheet.set_height(HEADED, 36 if parts else 24)
    return first


def _guide(
    sheet: Sheet, guide: Guide, rows: tuple[int, int], first: int, columns: tuple[Blank, ...]
) -> list[Area]:
    """Write a guide's rows, the sums in the first of `rows`; return the cells to fill in."""
    above, last = rows
    own = blanks_of(guide)
    has = [(column, blank in own) for column, blank in enumerate(columns, start=first)]
    _sums(sheet, guide, rows, first, has)
    for row in range(above + 1, last + 1):
        _names(sheet, row, guide, str(row - above))
        marks = span((row, first, row, first + len(columns) - 1))
        score = f'=IF(COUNT({marks})=0,"",SUM({marks}))'
        cells.figure(sheet, (row, first - 1), score, result(COUNT))
        for column, asked in has:
            dressed = cells.to_fill_in if asked else cells.none_here
            dressed(sheet, (row, column))
    return _areas(has, above + 1, last)


def _areas(has: list[tuple[int, bool]], first: int, last: int) -> list[Area]:
    """Return the cells of the columns that a guide has, those side by side as one area."""
    runs = (
        [column for column, _asked in run]
        for asked, run in groupby(has, key=lambda each: each[1])
        if asked
    )
    return [(first, run[0], last, run[-1]) for run in runs]


def _names(sheet: Sheet, row: int, guide: Guide, paper: str, *, line: bool = False) -> None:
    texts = [paper] if guide.team is None else [guide.team, paper]
    for column, text in enumerate(texts, start=1):
        cells.label(sheet, (row, column), text, first=line)


def _sums(
    sheet: Sheet, guide: Guide, rows: tuple[int, int], first: int, has: list[tuple[int, bool]]
) -> None:
    """Write the row above a guide's papers: the mean score, and the share right of each blank."""
    row, last = rows
    _names(sheet, row, guide, EVERY, line=True)
    for column, asked in [(first - 1, True), *has]:
        if not asked:
            cells.none_here(sheet, (row, column), first=True)
            continue
        marks = span((row + 1, column, last, column))
        shape = SHARE if column >= first else MEAN
        mean = f'=IF(COUNT({marks})=0,"",AVERAGE({marks}))'
        cells.figure(sheet, (row, column), mean, result(shape, strong=True), first=True)
