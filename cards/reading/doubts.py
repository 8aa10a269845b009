"""What was found in cells as they come from the file."""

from collections.abc import Iterator, Mapping

from msgspec import Struct

from cards.content import Cell
from cards.finding import Finding, Severity
from cards.place import Place
from cards.quoting import quoted
from cards.reading.columns import Columns
from cards.reading.table import UNREADABLE, Doubt, Row, Table

HIDDEN = "hidden-by-format"
"""The code of what is found where a side of a card seems blank and is not."""


class _Doubtful(Struct, frozen=True):
    """What is to be said of a doubt; `{text}` stands for what the cell shows, `{quoted}` quoted."""

    code: str
    wrong: str
    mend: str
    severity: Severity = Severity.WARNING

    def about(self, cell: Cell) -> Finding:
        wrong = self.wrong.format(text=cell.text, quoted=quoted(cell.text))
        return Finding(self.code, self.severity, cell.place, cell.text, wrong, self.mend)


_OF_TEXTS: Mapping[Doubt, _Doubtful] = {
    Doubt.NO_VALUE: _Doubtful(
        "formula-without-value",
        "This cell holds a formula, but the file does not say what it comes to.",
        "Open the workbook in your spreadsheet program and save it.",
        Severity.ERROR,
    ),
    Doubt.ERROR_VALUE: _Doubtful(
        "error-value",
        "The formula in this cell does not work out: it shows {text}.",
        "Mend the formula, or write the text itself.",
        Severity.ERROR,
    ),
    Doubt.NO_TEXT: _Doubtful(
        "no-text",
        "This cell holds no text and no formula: the file has only {text} for it, as for a picture "
        "placed in a cell, and such cannot be read.",
        "Write the text itself; a picture goes over the cells of its row, or its file's name into "
        "a column headed Picture.",
        Severity.ERROR,
    ),
    Doubt.TOO_NARROW: _Doubtful(
        "column-too-narrow",
        "{quoted} is what spreadsheet programs write of a number or date whose column is too "
        "narrow for it.",
        "Make the column wider in the spreadsheet, and save the file again.",
        Severity.ERROR,
    ),
    Doubt.ERROR_TEXT: _Doubtful(
        "error-value-as-text",
        "{quoted} is what spreadsheet programs show where a formula does not work out.",
        "If a formula has left it here, write the text itself; if it is meant, leave it.",
    ),
    Doubt.DATE: _Doubtful(
        "turned-into-date",
        "This cell holds a date, shown as {quoted}; "
        "spreadsheet programs make dates of such things as 3/4.",
        "If it is not meant as a date, format the cell as text and write it again.",
    ),
    Doubt.CHANGED: _Doubtful(
        "changed-on-saving",
        "{quoted} is how spreadsheet programs write what they take for a date, such as 1/2, or for "
        "a long number.",
        "If you typed something else, format the cell as text, write it again and save the file "
        "as .xlsx.",
    ),
}
_STRUCK = _Doubtful(
    "struck-out",
    "Text in this cell is struck out, and would be printed as if it stood.",
    "Delete it, or take the line away.",
)
_STRUCK_BESIDE = _Doubtful(
    "struck-out",
    "Text in this cell is struck out, and is read as if it stood.",
    "Delete it, or take the line away.",
)
_NO_PICTURE = _Doubtful(
    "picture-by-formula",
    "The picture of this cell comes from a formula or is the cell's own value, "
    "and such cannot be read: the card has none.",
    "Write the name of the picture's file in the cell, or place the picture over the cells.",
)
_OF_FIELDS: Mapping[Doubt, _Doubtful] = {
    Doubt.TORN: _Doubtful(
        "quotation-mark-astray",
        'A field of this row begins with a quotation mark (") that does not end it, '
        "so marks or parts of the text may be lost.",
        'Write two ("") for each mark within a field, or save the file as .xlsx.',
    ),
    Doubt.GUESSED: _Doubtful(
        "encoding-guessed",
        "The file does not say how its letters are written; as Western European they make "
        "{quoted} here.",
        "If that is not what you wrote, save the file as “CSV UTF-8” or .xlsx.",
    ),
    Doubt.SHIFTED: _Doubtful(
        "comma-within-text",
        "This field begins with a blank and a small letter, as after a comma within a text.",
        "If the comma belongs to the text, put the whole text in quotation marks.",
    ),
}


def doubt_findings(table: Table, row: Row, columns: Columns) -> Iterator[Finding]:
    """Yield what may be amiss with the cells of a row that make its item."""
    for column, cell in row.cells.items():
        # a choice stands where its letter did, and its doubt stayed where it was
        doubt = table.doubts.get(cell.place)
        doubtful = _doubtful(doubt, column, columns) if doubt else None
        if doubtful:
            yield doubtful.about(cell)
    yield from _hidden_sides(table, row, columns)


def _doubtful(doubt: Doubt, column: int, columns: Columns) -> _Doubtful | None:
    """Return what is to be said of a doubt in a column, or None where it does not matter there."""
    texts = {columns.prompt, columns.answer, *columns.also_right, *columns.wrong}
    if doubt in UNREADABLE and column == columns.picture:
        return _NO_PICTURE
    if doubt in UNREADABLE and column in {columns.topic, columns.level, columns.team}:
        return _OF_TEXTS[doubt]
    if doubt is Doubt.STRUCK:
        return _STRUCK if column in texts | {columns.topic} else None
    if doubt in _OF_TEXTS:
        return _OF_TEXTS[doubt] if column in texts else None
    if doubt is Doubt.SHIFTED and column > columns.last:
        return None
    return _OF_FIELDS.get(doubt)


def cell_doubt(cell: Cell, doubt: Doubt) -> Iterator[Finding]:
    """Yield what may be amiss with the text of a cell that is read beside the content."""
    if doubt is Doubt.STRUCK:
        yield _STRUCK_BESIDE.about(cell)
    if doubt in _OF_TEXTS:
        yield _OF_TEXTS[doubt].about(cell)


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
