"""The blank workbook: sheets with headings, notes and lists."""

from openpyxl import Workbook
from openpyxl.comments import Comment
from openpyxl.formatting.rule import Rule
from openpyxl.styles import Font, PatternFill
from openpyxl.styles.differential import DifferentialStyle
from openpyxl.utils import get_column_letter
from openpyxl.worksheet.worksheet import Worksheet

from cards.exercises import EXERCISES, Rows
from cards.workbook import look, plan
from cards.workbook.example import EXAMPLE
from cards.workbook.lists import offer, without_flags
from cards.workbook.offers import Offers
from cards.workbook.package import packed
from cards.workbook.start_here import write_start_here
from cards.workbook.tones import NEEDED, PANEL, QUIET, letters_on

_ROWS = 500
"""How far down the lists of values reach."""


def blank_workbook(name: str, offers: Offers, *, example: bool = False) -> bytes:
    """Return a workbook to fill in, as the bytes of an .xlsx file; `name` is the file's.

    With `example` every sheet has a few rows. The same call returns the same bytes.
    """
    book = Workbook()
    book.remove(book.worksheets[0])
    filled = EXAMPLE if example else {}
    for content in plan.CONTENT:
        _write_sheet(book, content, filled.get(content.name, ()))
    _write_teams(book, offers, filled.get("Teams", ()))
    _write_sheet(book, plan.EXERCISES, EXERCISES)
    _write_deck(book, offers)
    write_start_here(book, name)
    book.active = 0
    book.properties.creator = "Fairdeal"
    return packed(book, without_flags)


def _write_sheet(book: Workbook, sheet_plan: plan.Plan, rows: Rows) -> Worksheet:
    sheet: Worksheet = book.create_sheet(sheet_plan.name)
    sheet.row_dimensions[1].height = 30
    for number, column in enumerate(sheet_plan.columns, start=1):
        _head(sheet, number, column)
        if column.choices:
            offer(sheet, number, rows=(2, _ROWS + 1), choices=column.choices, hint=column.note)
    for row, cells in enumerate(rows, start=2):
        for number, text in enumerate(cells, start=1):
            if text:
                look.write(sheet, (row, number), text)
    look.keep_in_sight(sheet, row=1)
    look.print_wide(sheet)
    return sheet


def _head(sheet: Worksheet, number: int, column: plan.Column) -> None:
    """Write a heading with its note, and format the whole of its column as text."""
    dimension = sheet.column_dimensions[get_column_letter(number)]
    dimension.width = column.width
    look.dress(dimension)
    cell = look.write(
        sheet,
        (1, number),
        column.heading,
        font=look.font(bold=True),
        fill=look.fill(NEEDED if column.needed else PANEL),
        border=look.hairline(),
        alignment=look.wrapped(vertical="center"),
    )
    cell.comment = Comment(column.note, "Fairdeal", width=260, height=96)


def _write_teams(book: Workbook, offers: Offers, rows: Rows) -> None:
    sheet = _write_sheet(book, plan.TEAMS, rows)
    last = offers.most_teams + 1
    offer(sheet, 2, rows=(2, last), choices=tuple(offers.colours), hint=plan.TEAMS.columns[1].note)
    for word, tone in offers.colours.items():
        argb = f"FF{tone.removeprefix('#')}"
        style = DifferentialStyle(font=Font(color=letters_on(argb)), fill=PatternFill(bgColor=argb))
        rule = Rule("cellIs", operator="equal", formula=[f'"{word}"'], dxf=style)
        sheet.conditional_formatting.add(f"B2:B{last}", rule)


def _write_deck(book: Workbook, offers: Offers) -> None:
    rows = tuple((setting.name, setting.value, f"{setting.what}.") for setting in offers.settings)
    sheet = _write_sheet(book, plan.DECK, rows)
    fonts = (look.font(bold=True), look.font(), look.font(color=QUIET))
    middle = look.wrapped(vertical="center")
    for row, setting in enumerate(offers.settings, start=2):
        sheet.row_dimensions[row].height = 26
        for column, font in enumerate(fonts, start=1):
            cell = sheet.cell(row, column)
            look.dress(cell, font=font, border=look.hairline(), alignment=middle)
        if setting.choices:
            hint = f"{setting.name} can be {setting.expects}."
            offer(sheet, 2, rows=(row, row), choices=setting.choices, hint=hint)
