"""The first sheet of a blank workbook: what to do, in ten lines."""

from typing import Any

from openpyxl.workbook.workbook import Workbook
from openpyxl.worksheet.hyperlink import Hyperlink
from openpyxl.worksheet.worksheet import Worksheet

from cards.workbook import look
from cards.workbook.tones import LINK, QUIET

NAME = "Start here"
# Reading knows this sheet by its name and by the first word of this title.
_TITLE = "Fairdeal makes review cards from this workbook"
_DIRECTIONS = "Fill in the sheets you need, and leave the others as they are."
_LINES = (
    ("Vocabulary", "A word and what it means. Each row makes one card."),
    ("Facts", "A sentence with its end left out, and what completes it."),
    ("Questions", "A question, its answer and, if you like, wrong answers."),
    ("Details", "Supporting details and the headings they belong under, to be sorted."),
    ("Teams", "Names and colours. Without any there are four teams, named by colour."),
    ("Exercises", "What to do between questions. Change the list to suit your class."),
    ("Deck", "Paper, size of the cards and other choices. They are good as they stand."),
    ("Blank cells", "Topic, Level, Also right and Team may stay blank. Each heading has a note."),
    ("Check it", 'Save, and type: fairdeal check "{name}". It names every cell to be mended.'),
    ("Build it", 'Then type: fairdeal build "{name}". The deck appears in a folder beside it.'),
)


def write_start_here(book: Workbook, name: str) -> None:
    """Write the sheet into a workbook that has the sheets it speaks of; `name` is the file's."""
    sheet = book.create_sheet(NAME, 0)
    sheet.column_dimensions["A"].width, sheet.column_dimensions["B"].width = 18, 90
    title, quiet = look.font(size=22, bold=True), look.font(size=13, color=QUIET)
    look.write(sheet, (1, 1), _TITLE, font=title, alignment=look.on_one_line())
    look.write(sheet, (2, 1), _DIRECTIONS, font=quiet, alignment=look.on_one_line())
    sheet.row_dimensions[1].height, sheet.row_dimensions[2].height = 42, 34
    for row, (about, line) in enumerate(_LINES, start=3):
        _write_line(sheet, row, about, line.replace("{name}", name))
        if about in book.sheetnames:
            _link(sheet.cell(row, 1), about)
    sheet.sheet_view.showGridLines = False
    look.print_wide(sheet)


def _write_line(sheet: Worksheet, row: int, about: str, line: str) -> None:
    style = {"border": look.hairline(), "alignment": look.wrapped(vertical="center")}
    look.write(sheet, (row, 1), about, font=look.font(bold=True), **style)
    look.write(sheet, (row, 2), line, **style)
    sheet.row_dimensions[row].height = 30


def _link(cell: Any, sheet_name: str) -> None:  # noqa: ANN401 (openpyxl's cells have no common type)
    cell.hyperlink = Hyperlink(ref=cell.coordinate, location=f"'{sheet_name}'!A2")
    cell.font = look.font(bold=True, color=LINK)
