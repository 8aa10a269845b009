"""What was found in cells as they come from the file."""

from collections.abc import Callable, Iterator, Mapping

from cards.content import Cell
from cards.finding import Finding, Severity
from cards.place import Place
from cards.quoting import quoted
from cards.reading.columns import Columns
from cards.reading.table import UNREADABLE, Doubt, Row, Table

HIDDEN = "hidden-by-format"
"""The code of what is found where a side of a card seems blank and is not."""


def doubt_findings(table: Table, row: Row, columns: Columns) -> Iterator[Finding]:
    """Yield what may be amiss with the cells of a row that make its item."""
    texts = {columns.prompt, columns.answer, *columns.also_right, *columns.wrong}
    others = {columns.topic, columns.level, columns.team} - {None}
    for column, cell in row.cells.items():
        # a choice stands where its letter did, and its doubt stayed where it was
        doubt = table.doubts.get(cell.place)
        if doubt is None:
            continue
        if doubt in UNREADABLE and column in texts | others:
            yield from cell_doubt(cell, doubt)
        elif doubt in UNREADABLE and column == columns.picture:
            yield _no_picture(cell)
        elif doubt is Doubt.DATE and column in texts:
            yield _date(cell)
        elif doubt is Doubt.TORN:
            yield _torn(cell)
        elif doubt is Doubt.GUESSED:
            yield _guessed(cell)
        elif doubt is Doubt.SHIFTED and column <= columns.last:
            yield _shifted(cell)
        elif doubt is Doubt.STRUCK and column in texts | {columns.topic}:
            yield _struck(cell)
    yield from _hidden_sides(table, row, columns)


def cell_doubt(cell: Cell, doubt: Doubt) -> Iterator[Finding]:
    """Yield what may be amiss with the text of a cell that is read."""
    if doubt in _OF_TEXTS:
        yield _OF_TEXTS[doubt](cell)


def _hidden_sides(table: Table, row: Row, columns: Columns) -> Iterator[Finding]:
    for column in (columns.prompt, columns.answer):
        place = Place(table.name, row.number, column)
        if table.doubts.get(place) is Doubt.HIDDEN:
            yield _hidden(place)


def _hidden(place: Place) -> Finding:
    return Finding(
        HIDDEN,
        Severity.ERROR,
        place,
        "",
        "This cell is not blank, but its number format shows nothing of what it holds.",
        "Give the cell another number format, such as General, so that it shows.",
    )


def _no_value(cell: Cell) -> Finding:
    return Finding(
        "formula-without-value",
        Severity.ERROR,
        cell.place,
        cell.text,
        "This cell holds a formula, but the file does not say what it comes to.",
        "Open the workbook in your spreadsheet program and save it.",
    )


def _error_value(cell: Cell) -> Finding:
    return Finding(
        "error-value",
        Severity.ERROR,
        cell.place,
        cell.text,
        f"The formula in this cell does not work out: it shows {cell.text}.",
        "Mend the formula, or write the text itself.",
    )


def _no_picture(cell: Cell) -> Finding:
    return Finding(
        "picture-by-formula",
        Severity.WARNING,
        cell.place,
        cell.text,
        "The picture of this cell comes from a formula or is the cell's own value, "
        "and such cannot be read: the card has none.",
        "Write the name of the picture's file in the cell, or place the picture over the cells.",
    )


def _date(cell: Cell) -> Finding:
    return Finding(
        "turned-into-date",
        Severity.WARNING,
        cell.place,
        cell.text,
        f"This cell holds a date, shown as {quoted(cell.text)}; "
        "spreadsheet programs make dates of such things as 3/4.",
        "If it is not meant as a date, format the cell as text and write it again.",
    )


_OF_TEXTS: Mapping[Doubt, Callable[[Cell], Finding]] = {
    Doubt.NO_VALUE: _no_value,
    Doubt.ERROR_VALUE: _error_value,
    Doubt.DATE: _date,
}


def _shifted(cell: Cell) -> Finding:
    return Finding(
        "comma-within-text",
        Severity.WARNING,
        cell.place,
        cell.text,
        "This field begins with a blank and a small letter, as after a comma within a text.",
        "If the comma belongs to the text, put the whole text in quotation marks.",
    )


def _struck(cell: Cell) -> Finding:
    return Finding(
        "struck-out",
        Severity.WARNING,
        cell.place,
        cell.text,
        "Text in this cell is struck out, and would be printed as if it stood.",
        "Delete it, or take the line away.",
    )


def _torn(cell: Cell) -> Finding:
    return Finding(
        "quotation-mark-astray",
        Severity.WARNING,
        cell.place,
        cell.text,
        'A field of this row begins with a quotation mark (") that does not end it, '
        "so marks or parts of the text may be lost.",
        'Write two ("") for each mark within a field, or save the file as .xlsx.',
    )


def _guessed(cell: Cell) -> Finding:
    return Finding(
        "encoding-guessed",
        Severity.WARNING,
        cell.place,
        cell.text,
        f"The file does not say how its letters are written; as Western European they make "
        f"{quoted(cell.text)} here.",
        "If that is not what you wrote, save the file as “CSV UTF-8” or .xlsx.",
    )
